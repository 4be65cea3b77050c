package intake

import (
	"math"

	"plumbline/calculators/measure"
	"plumbline/calculators/record"
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
		d := Difference{Quantity: b.Quantity}
		switch b.Quantity.Is() {
		case measure.Number:
			d.Before, d.After = a.Value, b.Value
			d.Margin = Margin(a, b)
			d.Same = math.Abs(b.Value-a.Value) <= d.Margin
		case measure.Pick:
			from, _, _ := b.Quantity.Pick(a.Text)
			to, _, _ := b.Quantity.Pick(b.Text)
			d.Before, d.After, d.Same, d.Margin = float64(from), float64(to), from == to, math.NaN()
		default:
			continue
		}
		list = append(list, d)
	}
	return list
}
