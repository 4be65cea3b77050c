package measure

import (
	"math"
	"strconv"
	"strings"

	"plumbline/calculators/words"
)

// Given is a number as somebody typed it, read into base units.
type Given struct {
	Value float64 // base units
	Error float64 // one standard deviation, base units; NaN where none was typed
	Unit  *Unit   // the unit that was typed, or the one a bare number is in

	// Suggest is what a refused text most likely meant, as one would type it: "83 cm".
	// It is what the refusal says behind "Did you mean"; "" where it asks nothing. An
	// unusual number without a unit has one too, where another unit makes it usual.
	Suggest string
}

// longest is the most bytes of a number that are looked at.
const longest = 64

// Parse reads what a person typed for q; bare is the unit of a bare number (nil:
// the base unit). It reads "83 cm", "832,5", "32 3/4 in", "5 ft 10", "832 ± 3"
// "32-3/4\"", "Inseam: 83 cm", "83 cm (inside leg)" and "83 cm ± 5 mm". A typed ± is one
// standard deviation. What cannot be read, or is not possible for q, comes back as a
// sentence that says what was read, what is allowed and the likely slip.
func (q *Quantity) Parse(typed string, bare *Unit) (Given, words.Text, bool) {
	if bare == nil || bare.Kind != q.Unit.Kind {
		bare = q.Unit
	}
	g := Given{Error: math.NaN(), Unit: bare}
	if len(typed) > longest {
		return g, words.Of("“{0}” is too long for a number.", Quoted(typed)), false
	}
	value, margin, has := cutMargin(q.unnamed(tidy(typed)))
	v, ok := readAmount(value)
	if !ok {
		if g.Suggest = q.among(typed, bare); g.Suggest != "" {
			return g, words.Of("“{0}” has other words beside the number for {1}. Did you mean {2}?", Quoted(typed),
				q.Named(), AsTyped(g.Suggest)), false
		}
		return g, q.unreadable(typed), false
	}
	var m amountRead
	if has {
		if m, ok = readAmount(margin); !ok || m.number < 0 {
			return g, words.Of("“{0}” after ± is not a number. Write a ± as in {1} ± {2}.", Quoted(margin),
				words.Name(strconv.Itoa(int(q.Low))), words.Name(Exact(max(q.Repeat, 1)))), false
		}
	}
	unit, why := q.unitOf(v, m, bare)
	if unit == nil {
		return g, why, false
	}
	g.Unit, g.Value = unit, v.in(unit)
	if has {
		of := unit
		if m.unit != nil {
			of = m.unit
		}
		g.Error = m.in(of)
	}
	if !q.Possible(g.Value) {
		x, u := q.slip(typed, v, g)
		if u != nil {
			g.Suggest = Typed(x, u)
			if has && (m.unit != nil || u == g.Unit) { // a bare ± would change with the unit
				g.Suggest += " ± " + margin
			}
		}
		return g, q.refuse(typed, g, x, u), false
	}
	if !q.Plausible(g.Value) && v.unit == nil && m.unit == nil && !has {
		if u := q.otherUnit(v, g); u != nil {
			g.Suggest = Typed(v.number, u)
		}
	}
	if has && g.Error > q.Most-q.Least {
		return g, words.Of("± {0} is more than {1} can vary at all.", Quoted(margin), q.Named()), false
	}
	return g, words.Text{}, true
}

// unitOf decides which unit the number is in: the typed one, else the one typed
// behind the ±, else the bare one. It answers nil and a sentence if the typed
// unit measures something else.
func (q *Quantity) unitOf(v, m amountRead, bare *Unit) (*Unit, words.Text) {
	unit := bare
	if m.unit != nil {
		unit = m.unit
	}
	if v.unit != nil {
		unit = v.unit
	}
	for _, u := range []*Unit{unit, m.unit} {
		switch {
		case u == nil || u.Kind == q.Unit.Kind:
		case q.Unit.Kind == Plain:
			return nil, words.Of("{0} is a number without a unit, not one in {1}.", q.Named(), words.Name(u.Symbol))
		default:
			return nil, words.Of("{0} is given in {1}, not in {2}.", q.Named(), words.Name(q.accepted()),
				words.Name(u.Symbol))
		}
	}
	if unit.Symbol == q.Unit.Symbol {
		unit = q.Unit
	}
	return unit, words.Text{}
}

// accepted lists the units that q can be typed in.
func (q *Quantity) accepted() string {
	s := ""
	for _, u := range units {
		if u.Kind != q.Unit.Kind {
			continue
		}
		if s != "" {
			s += ", "
		}
		s += u.Symbol
	}
	return s
}

// unreadable says why a text is no number, and how one is written.
func (q *Quantity) unreadable(typed string) words.Text {
	number := strings.TrimFunc(typed, func(c rune) bool { return c < '0' || c > '9' })
	if strings.Contains(number, ".") && strings.Contains(number, ",") && strings.Trim(number, "0123456789.,") == "" {
		return words.Of("“{0}” has both a point and a comma. Write it without a thousands separator.", Quoted(typed))
	}
	return words.Of("“{0}” is not a number for {1}. Write a number, with a unit if you like: {2}.",
		Quoted(typed), q.Named(), q.example())
}

// example writes a plausible value of q in two units where it has two.
func (q *Quantity) example() words.Text {
	mid := math.Round((q.Low + q.High) / 2)
	if q.Unit.Symbol == Mm.Symbol && mid >= 100 {
		return words.Of("{0}, {1} or {2}", In{Exact(mid), Mm}, In{Decimal(mid/10, 1, nil), Cm},
			In{Decimal(mid/25.4, 1, nil), Inch})
	}
	return words.Of("{0}", Amount{Value: mid, Unit: q.Unit})
}

// refuse says what was read, what is possible, and the slip that would explain it:
// x in u, where u is not nil.
func (q *Quantity) refuse(typed string, g Given, x float64, u *Unit) words.Text {
	read := words.Sayer(In{Decimal(g.Value/g.Unit.Base, readDigits(g), nil), g.Unit})
	if math.Abs(g.Value) >= 1e9 { // a row of zeros, or infinite, tells nobody anything
		read = words.Of("“{0}”", Quoted(typed))
	}
	least, most := q.Amount(q.Least), q.Amount(q.Most)
	if u != nil {
		return words.Of("{0} is not possible for {1}; {2} to {3} is. Did you mean {4}?", read, q.Named(), least,
			most, meant(x, u))
	}
	return words.Of("{0} is not possible for {1}; {2} to {3} is.", read, q.Named(), least, most)
}

// Typed writes x of u as one would type it, so that Parse reads it back.
func Typed(x float64, u *Unit) string {
	number := Exact(x)
	if u == Inch && x*16 == math.Round(x*16) {
		number = Sixteenths(x)
	}
	return strings.TrimSpace(number + " " + u.Symbol)
}

// meant says x of u as Typed writes it.
func meant(x float64, u *Unit) In {
	if u == Inch && x*16 == math.Round(x*16) {
		return In{sixteenths(x * 16), u}
	}
	return In{Exact(x), u}
}

// readDigits keeps as many decimals as were worth typing.
func readDigits(g Given) int {
	x := g.Value / g.Unit.Base
	digits := 0
	for scale := 1.0; digits < 3; scale, digits = scale*10, digits+1 {
		// Feet and inches come back from millimetres with a last bit too many.
		if off := x*scale - math.Round(x*scale); math.Abs(off) < 1e-9*math.Max(1, math.Abs(x)) {
			break
		}
	}
	return digits
}

// otherUnit is a unit that makes the number usual, nil for none.
func (q *Quantity) otherUnit(v amountRead, g Given) *Unit {
	for _, u := range units {
		if u.Symbol != g.Unit.Symbol && u.Kind == q.Unit.Kind && q.Plausible(v.number*u.Base) {
			return u
		}
	}
	return nil
}

// slip looks for the reading that would make the number plausible: another unit,
// a thousands comma, a zero too many or too few. It answers with a number and its
// unit, nil for none.
func (q *Quantity) slip(typed string, v amountRead, g Given) (float64, *Unit) {
	if v.hasFeet || math.IsInf(v.number, 0) {
		return 0, nil
	}
	if u := q.otherUnit(v, g); u != nil {
		return v.number, u
	}
	tries := make([]float64, 0, 6)
	if strings.Contains(typed, ",") { // 1,756 is read with a decimal comma
		tries = append(tries, math.Round(v.number*1e6)/1e3)
	}
	if v.number != 0 {
		for _, f := range []float64{10, 0.1, 100, 0.01} {
			tries = append(tries, math.Round(v.number*f*1e6)/1e6)
		}
	}
	for _, x := range append(tries, -v.number) {
		if q.Plausible(x * g.Unit.Base) {
			return x, g.Unit
		}
	}
	return 0, nil
}
