package measure

// exactPowers are the powers of ten that a float64 holds exactly.
var exactPowers = [23]float64{1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15, 1e16, 1e17, 1e18, 1e19, 1e20, 1e21, 1e22}

// readFloat reads a decimal number with an optional sign, point and exponent. Up
// to 15 digits and 22 powers of ten the result is the nearest float64, because one
// exact number is multiplied or divided by another (Clinger 1990, from memory);
// beyond, which nobody measures, it may be off in its last digits. It is false for
// anything else and for what is too large. It stands in for strconv.ParseFloat,
// whose errors bring tables of all printable characters into the engine.
func readFloat(s string) (float64, bool) {
	s, minus := sign(s)
	digits, power, scale := uint64(0), 0, 0
	seen, point := false, false
	i := 0
	for ; i < len(s) && s[i] != 'e'; i++ {
		switch c := s[i]; {
		case c == '.' && !point:
			point = true
			continue
		case c < '0' || c > '9':
			return 0, false
		case digits < 1e17:
			digits = digits*10 + uint64(c-'0')
		default: // a digit too many only counts as a place
			scale++
		}
		seen = true
		if point {
			scale--
		}
	}
	if i < len(s) {
		var ok bool
		if power, ok = exponent(s[i+1:]); !ok {
			return 0, false
		}
	}
	x := scaled(float64(digits), power+scale)
	if minus {
		x = -x
	}
	return x, seen && x-x == 0
}

// sign takes a sign off the front and tells whether it was a minus.
func sign(s string) (string, bool) {
	if s != "" && (s[0] == '-' || s[0] == '+') {
		return s[1:], s[0] == '-'
	}
	return s, false
}

// exponent reads what stands behind an e. More than any float64 has is cut off.
func exponent(s string) (int, bool) {
	s, minus := sign(s)
	n := 0
	for i := range len(s) {
		if s[i] < '0' || s[i] > '9' {
			return 0, false
		}
		n = min(n*10+int(s[i]-'0'), 1e6)
	}
	if minus {
		n = -n
	}
	return n, s != ""
}

// scaled multiplies x by a power of ten.
func scaled(x float64, power int) float64 {
	if x == 0 {
		return 0
	}
	const most = len(exactPowers) - 1
	for ; power > most && x-x == 0; power -= most {
		x *= exactPowers[most]
	}
	for ; power < -most && x != 0; power += most {
		x /= exactPowers[most]
	}
	switch {
	case power > most || power < -most: // already infinite, or nothing
		return x
	case power < 0:
		return x / exactPowers[-power]
	}
	return x * exactPowers[power]
}

// Ascending sorts a short list in place. It stands in for slices.Sort, which is
// larger than the lists of readings and methods that are sorted here.
func Ascending(list []float64) {
	for i := 1; i < len(list); i++ {
		for k := i; k > 0 && list[k] < list[k-1]; k-- {
			list[k], list[k-1] = list[k-1], list[k]
		}
	}
}
