// Package measure holds every measurable thing of the guide once: its key,
// label, unit, plausible and possible range, usual repeat error and how to take
// it. It also reads what people type and writes amounts the way they read.
package measure

import "plumbline/calculators/words"

// Kind tells which units can stand for one another.
type Kind string

// The kinds of unit.
const (
	Lengths Kind = "length"
	Angles  Kind = "angle"
	Masses  Kind = "mass"
	Shares  Kind = "share"
	Plain   Kind = "number"
)

// Unit is a unit of measurement and how many base units one of it is. The base
// units are mm, deg, kg, % and 1.
type Unit struct {
	Symbol string   // as written behind a number
	Kind   Kind     // units of one kind convert into each other
	Base   float64  // base units in one of this unit; exact
	Digits int      // decimals that people are shown; inches are said in sixteenths (Amount.Number)
	Typed  []string // other spellings that people type, lower case
}

// The units that people type and read. An inch is exactly 25.4 mm and a pound
// exactly 0.45359237 kg (international yard and pound agreement of 1959, from
// memory; ISO 80000-3 and 80000-4 give the same).
var (
	Mm = &Unit{Symbol: "mm", Kind: Lengths, Base: 1, Typed: []string{"millimetre", "millimetres",
		"millimeter", "millimeters"}}
	Cm = &Unit{Symbol: "cm", Kind: Lengths, Base: 10, Digits: 1, Typed: []string{"centimetre", "centimetres",
		"centimeter", "centimeters"}}
	Metre = &Unit{Symbol: "m", Kind: Lengths, Base: 1000, Digits: 3, Typed: []string{"metre", "metres", "meter",
		"meters"}}
	Inch = &Unit{Symbol: "in", Kind: Lengths, Base: 25.4, Digits: 2, Typed: []string{"inch", "inches", "zoll", `"`,
		"″", "”", "''"}}
	Foot = &Unit{Symbol: "ft", Kind: Lengths, Base: 304.8, Digits: 2, Typed: []string{"foot", "feet", "'", "′",
		"’"}}
	Deg = &Unit{Symbol: "deg", Kind: Angles, Base: 1, Digits: 1, Typed: []string{"°", "º", "degree", "degrees", "grad"}}
	Kg  = &Unit{Symbol: "kg", Kind: Masses, Base: 1, Digits: 1, Typed: []string{"kilo", "kilos", "kilogram",
		"kilograms"}}
	Pound = &Unit{Symbol: "lb", Kind: Masses, Base: 0.45359237, Digits: 0, Typed: []string{"lbs", "pound",
		"pounds"}}
	Percent = &Unit{Symbol: "%", Kind: Shares, Base: 1, Digits: 0, Typed: []string{"percent", "per cent", "pct"}}
	One     = &Unit{Symbol: "", Kind: Plain, Base: 1, Digits: 0}
	Gravity = &Unit{Symbol: "g", Kind: Plain, Base: 1, Digits: 2}
)

// SoldInMm are millimetres that stay so for whoever reads all else in centimetres or
// inches: for what is sold, and marked on the part, in millimetres everywhere. A shop
// has a crank of 170 mm for nobody in sixteenths of an inch. What is taken with a tape
// is never among it. Inches can still be typed.
var SoldInMm = &Unit{Symbol: Mm.Symbol, Kind: Lengths, Base: 1}

// units are those that a person may type, longest spellings matched first.
var units = []*Unit{Mm, Cm, Metre, Inch, Foot, Deg, Kg, Pound, Percent}

// UnitNamed returns the unit with that symbol or spelling, or nil.
func UnitNamed(symbol string) *Unit {
	for _, u := range units {
		if u.Symbol == symbol {
			return u
		}
		for _, t := range u.Typed {
			if t == symbol {
				return u
			}
		}
	}
	return nil
}

// ReadIn returns the unit in which r reads amounts of u: lengths in the unit
// that r chose, masses in pounds for whoever reads inches, all else as it is.
// Metres, feet, SoldInMm and units that a caller chose on purpose are kept.
func (u *Unit) ReadIn(r *words.Reader) *Unit {
	switch u {
	case Mm, Cm, Inch:
		if chosen := UnitNamed(r.LengthUnit()); chosen != nil {
			return chosen
		}
	case Kg:
		if r.LengthUnit() == Inch.Symbol {
			return Pound
		}
	}
	return u
}
