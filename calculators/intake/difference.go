package intake

import (
	"math"

	"plumbline/calculators/measure"
	"plumbline/calculators/record"
	"plumbline/calculators/words"
)

// Difference is one value that two records both have.
type Difference struct {
	Quantity      *measure.Quantity
	Before, After float64 // base units; of a choice its index

	// Margin is how far the difference may be off by the errors of both measurements, at
	// 95 %; of a choice NaN.
	Margin float64
	Same   bool // there is no difference, or it is within Margin
}

// Margin is how far the difference of two values of one quantity may be off by the errors
// of both, in base units: their repeat errors together at k = 2 (JCGM 100:2008, 5.1.2 and
// 6.2.1). A larger difference counts as a change.
func Margin(a, b *record.Entry) float64 { return 2 * measure.Quadrature(a.SD(), b.SD()) }

// Differences compares what two records say, in the order of the later one.
func Differences(before, after *record.Record) (list []Difference) {
	for i := range after.Entries {
		b := &after.Entries[i]
		if b.Quantity == nil || !b.Read() {
			continue
		}
		a := before.Of(b.Quantity)
		if a == nil || !a.Read() {
			continue
		}
		if is := b.Quantity.Is(); is == measure.Number || is == measure.Pick {
			list = append(list, DifferenceOf(a, b))
		}
	}
	return list
}

// DifferenceOf compares two numbers, or two choices, of one quantity.
func DifferenceOf(a, b *record.Entry) Difference {
	d := Difference{Quantity: b.Quantity, Before: a.Value, After: b.Value}
	if b.Quantity.Is() == measure.Pick {
		from, _, _ := b.Quantity.Pick(a.Text)
		to, _, _ := b.Quantity.Pick(b.Text)
		d.Before, d.After, d.Same, d.Margin = float64(from), float64(to), from == to, math.NaN()
		return d
	}
	d.Margin = Margin(a, b)
	d.Same = math.Abs(b.Value-a.Value) <= d.Margin
	return d
}

// Values says both values.
func (d Difference) Values() (before, after words.Sayer) {
	return ValueOf(d.Quantity, d.Before), ValueOf(d.Quantity, d.After)
}

// By says how much larger the second value is, with its error; nothing of a choice.
func (d Difference) By() words.Sayer {
	if d.Quantity.Is() != measure.Number {
		return words.Name("")
	}
	by := d.After - d.Before
	return Signed{by, measure.Uncertain{Amount: d.Quantity.Amount(math.Abs(by)), Plus: d.Margin}}
}

// Explained says whether the errors of both measurements explain the difference.
func (d Difference) Explained() words.Text {
	if d.Same {
		return words.Of("within the error of measuring")
	}
	return words.Of("more than the error of measuring")
}

// Signed says an amount with the sign of By.
type Signed struct {
	By     float64
	Amount words.Sayer
}

// Say writes the sign and the amount.
func (s Signed) Say(r *words.Reader) string {
	if s.By < 0 {
		return "−" + s.Amount.Say(r)
	}
	return "+" + s.Amount.Say(r)
}

// ValueOf says a measured number with the decimals that it has, or a choice by its index.
func ValueOf(q *measure.Quantity, x float64) words.Sayer {
	if q.Is() != measure.Pick {
		return Exactly{x, q.Unit}
	}
	if i := int(x); i >= 0 && i < len(q.Choices) {
		return words.Of(q.Choices[i].Label)
	}
	return words.Name("")
}

// Exactly is a measured value, which is said with the decimals that it has, up to two.
type Exactly struct {
	Value float64 // base units
	Unit  *measure.Unit
}

// Say writes the value in the reader's unit.
func (e Exactly) Say(r *words.Reader) string {
	u := e.Unit.ReadIn(r)
	return measure.WithUnit(measure.Written(record.Decimals(e.Value/u.Base, 2), r), u, r)
}
