package measure

import (
	"math"
	"strconv"
	"strings"

	"plumbline/calculators/words"
)

// Amount is a number in base units together with the base unit itself. It is
// said in the unit its reader chose.
type Amount struct {
	Value float64 // base units
	Unit  *Unit   // the base unit
	Extra int     // decimals beyond the usual ones
}

// Millimetres makes an amount of length.
func Millimetres(x float64) Amount { return Amount{Value: x, Unit: Mm} }

// Sold makes an amount of SoldInMm.
func Sold(x float64) Amount { return Amount{Value: x, Unit: SoldInMm} }

// Degrees makes an amount of an angle.
func Degrees(x float64) Amount { return Amount{Value: x, Unit: Deg} }

// Percentage makes an amount of percent.
func Percentage(x float64) Amount { return Amount{Value: x, Unit: Percent} }

// Say writes the amount as r reads it, for example "832 mm" or "32 3/4 in".
func (a Amount) Say(r *words.Reader) string {
	return WithUnit(a.Number(r), a.Unit.ReadIn(r), r)
}

// ReadIn is the unit in which Say writes the amount for r.
func (a Amount) ReadIn(r *words.Reader) *Unit { return a.Unit.ReadIn(r) }

// Number writes the amount without its unit.
func (a Amount) Number(r *words.Reader) string {
	u := a.Unit.ReadIn(r)
	if u == Inch && a.Extra == 0 {
		return sixteenths(math.Round(a.Value / u.Base * 16))
	}
	return Decimal(a.Value/u.Base, u.Digits+a.Extra, r)
}

// Sixteenths writes inches as one would type them: "32 3/4", "-1/16", "0".
func Sixteenths(inches float64) string {
	return strings.NewReplacer("\u00a0", " ", "−", "-").Replace(sixteenths(math.Round(inches * 16)))
}

// sixteenths writes a whole number of sixteenths as a rule of inches is read: "32 3/4",
// "−1/16", "0".
func sixteenths(n float64) string {
	if math.IsNaN(n) || math.Abs(n) >= 1e9 { // far beyond any rule
		return Decimal(n/16, 0, nil)
	}
	all := int64(math.Abs(n))
	whole, part, of := all/16, all%16, int64(16)
	for part%2 == 0 && part > 0 {
		part, of = part/2, of/2
	}
	s := ""
	if n < 0 {
		s = "−"
	}
	if whole > 0 || part == 0 {
		s += strconv.FormatInt(whole, 10)
	}
	if part == 0 {
		return s
	}
	if whole > 0 {
		s += "\u00a0"
	}
	return s + strconv.FormatInt(part, 10) + "/" + strconv.FormatInt(of, 10)
}

// Margin writes the amount as the ± behind a value: never rounded down, so that
// what is printed is never better than what was found.
func (a Amount) Margin(r *words.Reader) string {
	step := a.step(r)
	a.Value = math.Ceil(a.Value/step-hair) * step
	return a.Number(r)
}

// hair is taken off before something is rounded up, or 0.1 + 0.2 would become 0.4.
const hair = 1e-6

// step is by how much two amounts differ at least that are written differently, in base
// units.
func (a Amount) step(r *words.Reader) float64 {
	u := a.Unit.ReadIn(r)
	if u == Inch && a.Extra == 0 {
		return u.Base / 16
	}
	step := u.Base
	for range u.Digits + a.Extra {
		step /= 10
	}
	return step
}

// Ends are the ends of the amount's interval as its value and its ± in base units are
// written: 173.6 ± 4.2 mm are written 174 ± 5, so that they are 169 and 179.
func (a Amount) Ends(plus float64, r *words.Reader) (low, high Amount) {
	step := a.step(r)
	at, by := math.Round(a.Value/step)*step, math.Ceil(plus/step-hair)*step
	low, high = a, a
	low.Value, high.Value = at-by, at+by
	return low, high
}

// Uncertain is an amount with its ±, said with one unit: "737 ± 22 mm".
type Uncertain struct {
	Amount
	Plus float64 // expanded uncertainty, base units
}

// Say writes value, ± and unit; where there is no ± it writes the value alone.
func (u Uncertain) Say(r *words.Reader) string { return WithUnit(u.Number(r), u.Unit.ReadIn(r), r) }

// Number writes value and ± without the unit.
func (u Uncertain) Number(r *words.Reader) string {
	if !(u.Plus > 0) {
		return u.Amount.Number(r)
	}
	margin := Amount{Value: u.Plus, Unit: u.Unit, Extra: u.Extra}
	return u.Amount.Number(r) + "\u00a0±\u00a0" + margin.Margin(r)
}

// Bare is an amount said without its unit, for a scale in a drawing on which another
// dimension names it.
type Bare struct{ Amount }

// Say writes the number alone.
func (b Bare) Say(r *words.Reader) string { return b.Number(r) }

// Numeric is a cell of a table whose unit stands in the column's head.
type Numeric interface {
	Number(r *words.Reader) string
	ReadIn(r *words.Reader) *Unit
}

// Error is a ± on its own, as a cell of a table: never rounded down.
type Error struct{ Amount }

// Say writes the ± with its unit.
func (e Error) Say(r *words.Reader) string { return WithUnit(e.Margin(r), e.Unit.ReadIn(r), r) }

// Number writes the ± without its unit.
func (e Error) Number(r *words.Reader) string { return e.Margin(r) }

// MarshalJSON gives in base units at full precision; the column
// or reading that holds it names the unit. A number that is not finite is null.
func (a Amount) MarshalJSON() ([]byte, error) {
	if math.IsNaN(a.Value) || math.IsInf(a.Value, 0) {
		return []byte("null"), nil
	}
	return strconv.AppendFloat(nil, a.Value, 'g', -1, 64), nil
}

// WithUnit puts a unit behind a written number: a degree sign follows without a
// space, every other symbol after the one that r's language has there.
func WithUnit(number string, u *Unit, r *words.Reader) string {
	switch u {
	case Deg:
		return number + "°"
	case One:
		return number
	}
	return number + r.UnitSpace() + u.Symbol
}

// Mark is the unit as written beside a form field or in a table head.
func (u *Unit) Mark() string {
	if u == Deg {
		return "°"
	}
	return u.Symbol
}

// Decimal writes x with the given decimals and r's decimal sign. It is the one
// way by which a number reaches a reader: minus zero is written as zero, a minus
// sign is a real one, and what is not finite is a dash.
func Decimal(x float64, digits int, r *words.Reader) string {
	if math.IsNaN(x) || math.IsInf(x, 0) {
		return "–"
	}
	s := strconv.FormatFloat(x, 'f', max(digits, 0), 64)
	if rest, minus := strings.CutPrefix(s, "-"); minus {
		if s = rest; strings.Trim(rest, "0.") != "" {
			s = "−" + rest
		}
	}
	return Written(s, r)
}

// Written puts r's decimal sign into numbers that are written with a point.
func Written(numbers string, r *words.Reader) string {
	if sign := r.DecimalSign(); sign != "." {
		return strings.ReplaceAll(numbers, ".", sign)
	}
	return numbers
}

// AsTyped fills a hole with numbers as one types them.
type AsTyped string

// Say writes them with r's decimal sign.
func (t AsTyped) Say(r *words.Reader) string { return Written(string(t), r) }

// In is a number that is said in one unit, whatever its reader’s is: what was typed.
type In struct {
	Number string // with a point
	Unit   *Unit
}

// Say writes number and unit.
func (x In) Say(r *words.Reader) string { return WithUnit(Written(x.Number, r), x.Unit, r) }

// Exact writes x in the shortest form that reads back as x: what goes into
// fields, addresses and records. It uses a plain hyphen-minus and a point.
func Exact(x float64) string {
	if x == 0 {
		return "0"
	}
	return strconv.FormatFloat(x, 'f', -1, 64)
}

// Difference is an amount by which something changes: said with a plus or a minus
// in front, so that nobody takes it for the thing itself. What rounds to zero has
// no sign.
type Difference struct{ Amount }

// Say writes the difference with its unit.
func (d Difference) Say(r *words.Reader) string { return WithUnit(d.Number(r), d.Unit.ReadIn(r), r) }

// Number writes the difference without its unit.
func (d Difference) Number(r *words.Reader) string {
	s := d.Amount.Number(r)
	if d.Value > 0 && strings.ContainsAny(s, "123456789") {
		return "+" + s
	}
	return s
}
