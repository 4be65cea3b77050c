package measure

import "plumbline/calculators/words"

// Instruction says how a quantity is taken. It is written once, beside the quantity:
// chapters, forms, the preparation of a fitting and the command's help all show it
// from here. A choice, or a number that is read or wished for and not measured, has a
// Text alone.
type Instruction struct {
	Text    words.English // what to do or what it means, full sentences in English
	Why     words.English // where another way is common: why this one
	Slip    words.English // what usually goes wrong, and what it does to the number
	Who     Hands         // who is needed
	Take    words.English // what to have at hand, such as "tape measure, plumb line"
	Minutes int           // about how long three readings take; 0 where nothing is taken
	Figure  string        // name of the standing figure that shows it; "" for none
}

// Hands says who is needed to take a measurement.
type Hands int

// Alone needs nobody else; Eased is easier with a helper; Helper cannot be done well
// without one.
const (
	Alone Hands = iota
	Eased
	Helper
)

// Taken tells whether there is something to take, with a tool and in a time.
func (i *Instruction) Taken() bool { return i.Minutes > 0 }

// Needs says who and what is needed and how long three readings take, in one line;
// words.Text's zero value where nothing is taken.
func (i *Instruction) Needs() words.Text {
	if !i.Taken() {
		return words.Text{}
	}
	take, minutes := words.Of(i.Take), Amount{Value: float64(i.Minutes), Unit: One}
	switch i.Who {
	case Helper:
		return words.Of("With a helper. You need: {0}. About {1} min.", take, minutes)
	case Eased:
		return words.Of("Alone; easier with a helper. You need: {0}. About {1} min.", take, minutes)
	}
	return words.Of("Alone. You need: {0}. About {1} min.", take, minutes)
}

// Brief says who is needed and how long three readings take, as the name of the fold
// that tells the rest; words.Text's zero value where nothing is taken.
func (i *Instruction) Brief() words.Text {
	if !i.Taken() {
		return words.Text{}
	}
	minutes := Amount{Value: float64(i.Minutes), Unit: One}
	switch i.Who {
	case Helper:
		return words.Of("How: with a helper, {0} min", minutes)
	case Eased:
		return words.Of("How: alone, easier with a helper, {0} min", minutes)
	}
	return words.Of("How: alone, {0} min", minutes)
}

// Within is how far from their mean nineteen of twenty readings of one person lie at
// most, in base units: two standard deviations, the usual coverage factor (JCGM
// 100:2008, 6.3).
func (q *Quantity) Within() float64 { return 2 * q.Repeat }
