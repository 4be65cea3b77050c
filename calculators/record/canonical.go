package record

import (
	"math"
	"strconv"
	"strings"

	"plumbline/calculators"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// Canonical writes what was typed for q in base units, as it stands in a record:
// "831.85", "830±3", "830;834;829", a choice's key, a list's rows. Bare numbers
// are in the units that bare reads. It tells whether everything could be read.
func Canonical(q *measure.Quantity, typed string, bare *words.Reader) (string, bool) {
	switch q.Is() {
	case measure.Pick:
		i, _, ok := q.Pick(typed)
		if !ok {
			return "", false
		}
		return q.Choices[i].Key, true
	case measure.List:
		rows, ok := calculators.Rows(q, typed, bare)
		return q.Table.Write(q, rows, nil, Exactly), ok
	}
	g, _, ok := q.ParseFor(typed, bare)
	if !ok {
		return "", false
	}
	return written(q, g), true
}

// written is the canonical form of a number with its readings and its ±.
func written(q *measure.Quantity, g measure.Repeated) string {
	return Repeated(g, q.Unit, ";", "±", Exactly)
}

// Repeated writes a number, or its readings, and its ± in a unit. Number writes
// one number of base units.
func Repeated(g measure.Repeated, u *measure.Unit, between, margin string, number func(float64,
	*measure.Unit) string) string {
	s := ""
	for i, x := range g.Readings {
		if i > 0 {
			s += between
		}
		s += number(x, u)
	}
	if len(g.Readings) == 0 {
		s = number(g.Value, u)
	}
	if !math.IsNaN(g.Error) {
		s += margin + number(g.Error, u)
	}
	return s
}

// Exactly writes x base units in u to a millionth, which takes off what binary
// numbers add to 32.75 × 25.4 and loses nothing that anybody measured.
func Exactly(x float64, u *measure.Unit) string { return Decimals(x/u.Base, 6) }

// Roughly writes x base units in u with two decimals at most, for form fields. Inches
// are written in sixteenths, as a rule shows them, where that loses no more than a tape
// does: from two inches on, or where the number is one.
func Roughly(x float64, u *measure.Unit) string {
	if n := x / u.Base; u == measure.Inch && math.Abs(n) < 1e6 {
		if math.Abs(n) >= 2 || math.Abs(n*16-math.Round(n*16)) < 0.08 {
			return measure.Sixteenths(n)
		}
	}
	return Decimals(x/u.Base, 2)
}

// Decimals writes x with up to n decimals, without idle zeros or minus zero.
func Decimals(x float64, n int) string {
	s := strconv.FormatFloat(x, 'f', max(n, 1), 64)
	s = strings.TrimRight(strings.TrimRight(s, "0"), ".")
	if s == "-0" || s == "" {
		return "0"
	}
	return s
}
