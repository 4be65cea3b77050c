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
	Same          bool    // there is no difference, or it is within what repeating the measurement gives
}

// Differences compares what two records say, in the order of the later one. A change of
// a length counts where it is more than the repeat error of both together at k = 2
// (JCGM 100:2008, 5.1.2 and 6.2.1).
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
			d.Same = math.Abs(b.Value-a.Value) <= 2*measure.Quadrature(a.SD(), b.SD())
		case measure.Pick:
			from, _, _ := b.Quantity.Pick(a.Text)
			to, _, _ := b.Quantity.Pick(b.Text)
			d.Before, d.After, d.Same = float64(from), float64(to), from == to
		default:
			continue
		}
		list = append(list, d)
	}
	return list
}
