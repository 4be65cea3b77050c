package measure

import (
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
	case '\u00a0', '\u202f', '\t', '\n', '\r':
		return " "
	case '−', '‐', '‑', '–':
		return "-"
	case '′', '’', '‘', '´':
		return "'"
	case '″', '”', '“':
		return `"`
	}
	if c >= '\u2000' && c <= '\u200a' { // the typographer's spaces, from broad to a hair
		return " "
	}
	return ""
}

// tidy brings what was typed into one spelling: small letters, plain characters.
func tidy(typed string) string {
	var b strings.Builder
	for _, c := range typed {
		if s := plainly(c); s != "" {
			b.WriteString(s)
		} else {
			b.WriteRune(c)
		}
	}
	s := strings.TrimSpace(strings.ToLower(b.String()))
	// An abbreviation or a sentence that was pasted with its full stop: "83 cm.".
	if n := len(s) - 2; n >= 0 && s[n+1] == '.' && s[n] >= 'a' && s[n] <= 'z' {
		s = s[:n+1]
	}
	return s
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

// readFeet reads `5 ft 10 in`, `5'10"`, `5 ft. 10`, `5'` and the draughtsman's
// `5'-10"`.
func readFeet(s string, unit *Unit) (amountRead, bool) {
	if unit != nil && unit != Inch {
		return amountRead{}, false
	}
	for _, mark := range []string{"feet", "foot", "ft.", "ft", "'-", "'"} {
		f, in, ok := strings.Cut(s, mark)
		if !ok {
			continue
		}
		feet, ok := readCount(strings.TrimSpace(f))
		if !ok {
			return amountRead{}, false
		}
		inches, ok := readNumber(strings.TrimSpace(in))
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
	return strings.TrimSpace(s[:len(s)-longest]), best
}

// readNumber reads "832", "83,2", "32 3/4", "32-3/4", "3/4", "-3/4" and "8.3e2".
func readNumber(s string) (float64, bool) {
	top, bottom, fraction := strings.Cut(s, "/")
	if !fraction {
		return readDecimal(s)
	}
	whole, sign := 0.0, 1.0
	top, minus := strings.CutPrefix(strings.TrimSpace(top), "-")
	if top = strings.TrimSpace(top); minus {
		sign = -1
	} else {
		top = strings.TrimPrefix(top, "+")
	}
	if i := strings.IndexAny(top, " -"); i >= 0 { // "32 - 3/4" is refused: it may be a difference
		w, t := top[:i], top[i+1:]
		var ok bool
		if whole, ok = readCount(w); !ok {
			return 0, false
		}
		top = strings.TrimSpace(t)
	}
	t, ok1 := readCount(top)
	b, ok2 := readCount(strings.TrimSpace(bottom))
	// Beside a whole number a fraction is less than one, or something else was meant.
	if !ok1 || !ok2 || b == 0 || (whole != 0 && t >= b) {
		return 0, false
	}
	return sign * (whole + t/b), true
}

// readCount reads digits and nothing else: the parts of a fraction.
func readCount(s string) (float64, bool) {
	if strings.Trim(s, "0123456789") != "" {
		return 0, false
	}
	x, err := strconv.ParseFloat(s, 64)
	return x, err == nil
}

// readDecimal reads a decimal number with a point or a comma. Unlike the library it
// takes no hexadecimal, no underscores and no names of infinity.
func readDecimal(s string) (float64, bool) {
	if strings.Trim(s, "0123456789e-+.,") != "" || strings.Count(s, ".")+strings.Count(s, ",") > 1 {
		return 0, false
	}
	x, err := strconv.ParseFloat(strings.Replace(s, ",", ".", 1), 64)
	return x, err == nil
}
