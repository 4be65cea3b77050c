package measure

import (
	"math"
	"strings"

	"plumbline/calculators/words"
)

// readCell reads a cell of a chart, bare numbers in u: NaN where it says that there is
// none. A remark behind the number is left out; a thousand may be parted off where
// the number is possible in no other reading.
func readCell(cell string, q *Quantity, u *Unit) (float64, words.Text) {
	if isMissing(cell) {
		return math.NaN(), words.Text{}
	}
	cell = number(cell)
	g, why, ok := q.Parse(cell, u)
	switch x := q.twice(cell, u); {
	case !math.IsNaN(x):
		return x, words.Text{}
	case strings.Contains(cell, "/") && g.Unit != Inch: // a fraction of a millimetre is none in a chart
		return math.NaN(), words.Of("“{0}” is not one number for {1}.", Quoted(cell), q.Named())
	case ok:
		return g.Value, words.Text{}
	}
	if whole := ungrouped(cell); whole != "" {
		if g, _, ok := q.Parse(whole, u); ok && q.Plausible(g.Value) {
			return g.Value, words.Text{}
		}
	}
	return math.NaN(), why
}

// twice reads a length that a cell says in two units, such as "431 mm / 17.0 in"; NaN for
// anything else. The second is rounded, to a tenth of an inch or to a centimetre.
func (q *Quantity) twice(cell string, u *Unit) float64 {
	first, second, two := strings.Cut(cell, "/")
	a, _, ok := q.Parse(first, u)
	b, _, same := q.Parse(second, u)
	if !two || !ok || !same || a.Unit == b.Unit || math.Abs(a.Value-b.Value) > Cm.Base/2 {
		return math.NaN()
	}
	return a.Value
}

// number takes off a cell what stands behind its number: a footnote's mark, a remark.
func number(cell string) string {
	for _, mark := range []string{"(", "[", "@", " at ", " bei "} {
		if s, _, ok := strings.Cut(cell, mark); ok && strings.TrimSpace(s) != "" {
			cell = s
		}
	}
	return strings.TrimRight(cell, "*†‡¹²³ ")
}

// ungrouped joins the thousands of "1,215 mm", "1.215" and "1 215"; "" for anything
// else.
func ungrouped(cell string) string {
	s := tidy(cell)
	digits := func(s string) int { return len(s) - len(strings.TrimLeft(s, "0123456789")) }
	n := digits(s)
	if n < 1 || n > 3 || n == len(s) || !strings.ContainsRune(",. ", rune(s[n])) || digits(s[n+1:]) != 3 {
		return ""
	}
	return s[:n] + s[n+1:]
}

// rimOf finds the bead-seat diameter, in mm, by what a wheel size is called (ISO 5775-2
// for the diameters; the names are common practice).
var rimOf = map[string]float64{"29": 622, "28": 622, "700": 622, "622": 622, "27.5": 584, "650b": 584, "650": 584,
	"584": 584, "26": 559, "559": 559, "24": 507, "507": 507, "20": 406, "406": 406}

// readWheel reads a wheel size: "29\"", "27,5 in", "650b", "29/27.5" and "mullet" with
// the front wheel first. k picks the wheel.
func readWheel(cell string, q *Quantity, u *Unit, k int) (float64, words.Text) {
	if isMissing(cell) {
		return math.NaN(), words.Text{}
	}
	s := strings.ReplaceAll(tidy(number(cell)), ",", ".")
	if s == "mullet" || s == "mx" {
		s = "29/27.5"
	}
	front, rear, two := strings.Cut(s, "/")
	if !two {
		rear = front
	}
	s = [2]string{front, rear}[k]
	for _, end := range []string{"inches", "inch", "in", `"`, "er", "c", "mm"} {
		s = strings.TrimSpace(strings.TrimSuffix(s, end))
	}
	if x := rimOf[s]; x > 0 {
		return x, words.Text{}
	}
	if two {
		return math.NaN(), words.Of("“{0}” is not a wheel size that is known.", Quoted(cell))
	}
	return readCell(cell, q, u)
}
