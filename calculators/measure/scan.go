package measure

import (
	"math"
	"strconv"
	"strings"
)

// amountRead is a number as scanned, before any quantity has a say in it.
type amountRead struct {
	number  float64 // in unit, or inches behind feet
	feet    float64
	hasFeet bool
	unit    *Unit // nil where none was typed
}

// vulgar are the fractions that have a character of their own.
var vulgar = strings.NewReplacer("½", " 1/2", "¼", " 1/4", "¾", " 3/4", "⅛", " 1/8", "⅜", " 3/8", "⅝", " 5/8", "⅞", " 7/8", "⅓", " 1/3", "⅔", " 2/3", "⁄", "/")

// spaces are the many ways to leave a gap; minus signs become the ASCII one.
var spaces = strings.NewReplacer("\u00a0", " ", "\u202f", " ", "\u2009", " ", "\t", " ", "\n", " ", "\r", " ", "−", "-", "‐", "-", "–", "-")

// tidy brings what was typed into one spelling.
func tidy(typed string) string {
	return strings.TrimSpace(strings.ToLower(vulgar.Replace(spaces.Replace(typed))))
}

// cutMargin splits a value from the ± behind it.
func cutMargin(s string) (value, margin string, has bool) {
	for _, sign := range []string{"±", "+/-", "+-"} {
		if v, m, ok := strings.Cut(s, sign); ok {
			return strings.TrimSpace(v), strings.TrimSpace(m), true
		}
	}
	return s, "", false
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
		feet, ok := readNumber(strings.TrimSpace(f))
		if !ok || feet < 0 {
			return amountRead{}, false
		}
		inches, ok := readNumber(strings.TrimSpace(in))
		return amountRead{number: inches, feet: feet, hasFeet: true, unit: Inch}, ok && inches >= 0
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
	return strings.TrimSpace(s[:len(s)-longest]), best
}

// readNumber reads "832", "83,2", "32 3/4", "3/4" and "8.3e2".
func readNumber(s string) (float64, bool) {
	whole, fraction, mixed := strings.Cut(s, " ")
	if fraction = strings.TrimSpace(fraction); mixed && strings.Contains(fraction, "/") {
		w, ok1 := readDecimal(whole)
		f, ok2 := readFraction(fraction)
		if math.Signbit(w) {
			f = -f
		}
		return w + f, ok1 && ok2 && w == math.Trunc(w)
	}
	if strings.Contains(s, "/") {
		return readFraction(s)
	}
	return readDecimal(s)
}

// readFraction reads "3/4"; a fraction of nothing is no number.
func readFraction(s string) (float64, bool) {
	top, bottom, _ := strings.Cut(s, "/")
	t, ok1 := readDecimal(strings.TrimSpace(top))
	b, ok2 := readDecimal(strings.TrimSpace(bottom))
	if !ok1 || !ok2 || b <= 0 {
		return 0, false
	}
	return t / b, true
}

// readDecimal reads a decimal number with a point or a comma. It is stricter
// than strconv: no hexadecimal, no underscores, no names of infinity.
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
	x, err := strconv.ParseFloat(strings.Replace(s, ",", ".", 1), 64)
	return x, err == nil && !math.IsInf(x, 0) && !math.IsNaN(x)
}
