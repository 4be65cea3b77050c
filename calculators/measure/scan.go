package measure

import (
	"strings"
	"unicode/utf8"
)

// amountRead is a number as scanned, before any quantity has a say in it.
type amountRead struct {
	number  float64 // in unit, or inches behind feet
	feet    float64
	hasFeet bool
	unit    *Unit // nil where none was typed
}

// in returns the amount in base units, the number counted in u.
func (a amountRead) in(u *Unit) float64 {
	return float64(a.number*u.Base) + float64(a.feet*Foot.Base) // the feet, zero or more, turn -0 into 0
}

// plainly spells a character that people type in many ways: the fractions that
// have one of their own, the gaps, the minus signs. It returns "" for all others.
func plainly(c rune) string {
	switch c {
	case '½':
		return " 1/2"
	case '¼':
		return " 1/4"
	case '¾':
		return " 3/4"
	case '⅛':
		return " 1/8"
	case '⅜':
		return " 3/8"
	case '⅝':
		return " 5/8"
	case '⅞':
		return " 7/8"
	case '⅓':
		return " 1/3"
	case '⅔':
		return " 2/3"
	case '⁄':
		return "/"
	case '\u00a0', '\u202f', '\u2009', '\t', '\n', '\r':
		return " "
	case '−', '‐', '–':
		return "-"
	}
	return ""
}

// tidy brings what was typed into one spelling.
func tidy(typed string) string {
	b := make([]byte, 0, len(typed)+8)
	done := 0 // what of typed is spelt
	for i, c := range typed {
		if s := plainly(c); s != "" {
			b = append(append(b, typed[done:i]...), s...)
			done = i + utf8.RuneLen(c)
		}
	}
	return Trim(Lower(string(append(b, typed[done:]...))))
}

// Lower writes the letters A to Z small, which is all that keys, labels and units
// need; the library's way brings the letters of every script into the engine.
func Lower(s string) string {
	b := []byte(s)
	for i, c := range b {
		if c >= 'A' && c <= 'Z' {
			b[i] = c + 'a' - 'A'
		}
	}
	return string(b)
}

// cutMargin splits a value from the ± behind it.
func cutMargin(s string) (value, margin string, has bool) {
	for _, sign := range []string{"±", "+/-", "+-"} {
		if v, m, ok := strings.Cut(s, sign); ok {
			return Trim(v), Trim(m), true
		}
	}
	return s, "", false
}

// readPlain reads digits with at most one point: what records hold, and what is
// read many times over. Anything else is left to readAmount.
func readPlain(s string) (amountRead, bool) {
	points := 0
	for i := range len(s) {
		switch {
		case s[i] >= '0' && s[i] <= '9':
		case s[i] == '.' && i > 0 && points == 0:
			points++
		default:
			return amountRead{}, false
		}
	}
	if len(s) == points {
		return amountRead{}, false
	}
	x, ok := readFloat(s)
	return amountRead{number: x}, ok
}

// readAmount reads a number with or without a unit, or feet and inches.
func readAmount(s string) (amountRead, bool) {
	number, unit := cutUnit(s)
	if a, ok := readFeet(number, unit); ok {
		return a, true
	}
	x, ok := readNumber(number)
	return amountRead{number: x, unit: unit}, ok
}

// readFeet reads `5 ft 10 in`, `5'10"`, `5 ft 10` and `5'`.
func readFeet(s string, unit *Unit) (amountRead, bool) {
	if unit != nil && unit != Inch {
		return amountRead{}, false
	}
	for _, mark := range []string{"feet", "foot", "ft", "'", "′", "’"} {
		f, in, ok := strings.Cut(s, mark)
		if !ok {
			continue
		}
		feet, ok := readCount(Trim(f))
		if !ok {
			return amountRead{}, false
		}
		inches, ok := readNumber(Trim(in))
		return amountRead{number: inches, feet: feet, hasFeet: true, unit: Inch}, ok && inches >= 0 && inches < 12
	}
	return amountRead{}, false
}

// cutUnit takes the longest unit spelling off the end of s.
func cutUnit(s string) (string, *Unit) {
	var best *Unit
	longest := 0
	for _, u := range units {
		for i := -1; i < len(u.Typed); i++ {
			spelling := u.Symbol
			if i >= 0 {
				spelling = u.Typed[i]
			}
			if len(spelling) > longest && strings.HasSuffix(s, spelling) {
				best, longest = u, len(spelling)
			}
		}
	}
	return Trim(s[:len(s)-longest]), best
}

// readNumber reads "832", "83,2", "32 3/4", "3/4", "-3/4" and "8.3e2".
func readNumber(s string) (float64, bool) {
	top, bottom, fraction := strings.Cut(s, "/")
	if !fraction {
		return readDecimal(s)
	}
	whole, sign := 0.0, 1.0
	top, minus := strings.CutPrefix(Trim(top), "-")
	if top = Trim(top); minus {
		sign = -1
	}
	if w, t, mixed := strings.Cut(top, " "); mixed {
		var ok bool
		if whole, ok = readCount(w); !ok {
			return 0, false
		}
		top = Trim(t)
	}
	t, ok1 := readCount(top)
	b, ok2 := readCount(Trim(bottom))
	// Beside a whole number a fraction is less than one, or something else was meant.
	if !ok1 || !ok2 || b == 0 || (whole != 0 && t >= b) {
		return 0, false
	}
	return sign * (whole + t/b), true
}

// readCount reads digits and nothing else: the parts of a fraction.
func readCount(s string) (float64, bool) {
	for i := range len(s) {
		if s[i] < '0' || s[i] > '9' {
			return 0, false
		}
	}
	return readFloat(s)
}

// readDecimal reads a decimal number with a point or a comma. It knows
// no hexadecimal, no underscores, no names of infinity.
func readDecimal(s string) (float64, bool) {
	signs := 0
	for i := range len(s) {
		switch c := s[i]; {
		case c >= '0' && c <= '9', c == 'e', c == '-', c == '+':
		case c == '.' || c == ',':
			signs++
		default:
			return 0, false
		}
	}
	if signs > 1 {
		return 0, false
	}
	if i := strings.IndexByte(s, ','); i >= 0 {
		s = s[:i] + "." + s[i+1:]
	}
	return readFloat(s)
}
