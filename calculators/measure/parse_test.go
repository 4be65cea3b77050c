package measure_test

import (
	"math"
	"strconv"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"plumbline/calculators/calctest"
	"plumbline/calculators/measure"
)

// The exact conversions of the international yard and pound agreement of 1959
// (from memory): an inch is 25.4 mm, a foot twelve of them, a pound 0.45359237 kg.
const (
	inch  = 25.4
	foot  = 304.8
	pound = 0.45359237
)

func TestPeopleTypeNumbersInManyWays(t *testing.T) {
	for _, c := range []struct {
		q     *measure.Quantity
		bare  *measure.Unit
		typed string
		value float64
		unit  *measure.Unit
	}{
		{measure.Inseam, nil, "832", 832, measure.Mm},
		{measure.Inseam, nil, "  832 mm ", 832, measure.Mm},
		{measure.Inseam, nil, "832\u00a0mm", 832, measure.Mm},
		{measure.Inseam, nil, "832\u202fmm", 832, measure.Mm},
		{measure.Inseam, nil, "832 Millimetres", 832, measure.Mm},
		{measure.Inseam, nil, "83cm", 830, measure.Cm},
		{measure.Inseam, nil, "83,2 CM", 832, measure.Cm},
		{measure.Inseam, nil, "0.832 m", 832, measure.Metre},
		{measure.Inseam, nil, ".832m", 832, measure.Metre},
		{measure.Inseam, nil, "8.32e2", 832, measure.Mm},
		{measure.Inseam, measure.Cm, "83,2", 832, measure.Cm},
		{measure.Inseam, measure.Inch, "32.75", 32.75 * inch, measure.Inch},
		{measure.Inseam, measure.Inch, "832 mm", 832, measure.Mm},
		{measure.Inseam, measure.Kg, "832", 832, measure.Mm}, // a bare unit of another kind is passed over
		{measure.Inseam, nil, "32 3/4 in", 32.75 * inch, measure.Inch},
		{measure.Inseam, nil, "32  3 / 4 inches", 32.75 * inch, measure.Inch},
		{measure.Inseam, nil, `32¾"`, 32.75 * inch, measure.Inch},
		{measure.Inseam, nil, "32⅝″", 32.625 * inch, measure.Inch},
		{measure.Inseam, nil, "32 3⁄4''", 32.75 * inch, measure.Inch},
		{measure.Inseam, nil, "131/4 in", 32.75 * inch, measure.Inch},
		{measure.Inseam, nil, "2 ft 8", 2*foot + 8*inch, measure.Inch},
		{measure.Inseam, nil, "2'8 3/4\"", 2*foot + 8.75*inch, measure.Inch},
		{measure.Inseam, nil, "2.75 ft", 2.75 * foot, measure.Foot},
		{measure.Stature, nil, "5 ft 10", 5*foot + 10*inch, measure.Inch},
		{measure.Stature, nil, "5ft10in", 5*foot + 10*inch, measure.Inch},
		{measure.Stature, nil, "5 feet 10 inches", 5*foot + 10*inch, measure.Inch},
		{measure.Stature, nil, `5'10"`, 5*foot + 10*inch, measure.Inch},
		{measure.Stature, nil, `5′10″`, 5*foot + 10*inch, measure.Inch},
		{measure.Stature, nil, `5’10½”`, 5*foot + 10.5*inch, measure.Inch},
		{measure.Stature, nil, "6'", 6 * foot, measure.Foot},
		{measure.Stature, nil, "1,78 m", 1780, measure.Metre},
		{measure.Mass, nil, "72.5", 72.5, measure.Kg},
		{measure.Mass, nil, "72,5 kilos", 72.5, measure.Kg},
		{measure.Mass, nil, "160 lb", 160 * pound, measure.Pound},
		{measure.Mass, measure.Pound, "160", 160 * pound, measure.Pound},
		{measure.HeadAngle, nil, "64,5", 64.5, measure.Deg},
		{measure.HeadAngle, nil, "64.5°", 64.5, measure.Deg},
		{measure.HeadAngle, nil, "64 1/2 degrees", 64.5, measure.Deg},
		{measure.StemAngle, nil, "−6°", -6, measure.Deg},
		{measure.StemAngle, nil, "-½°", -0.5, measure.Deg},
		{measure.StemAngle, nil, "+6", 6, measure.Deg},
		{measure.RailShift, nil, "–5 mm", -5, measure.Mm},
		{measure.RailShift, nil, "- 1/4 in", -inch / 4, measure.Inch},
		{measure.SagFront, nil, "25 %", 25, measure.Percent},
		{measure.SagFront, nil, "25 per cent", 25, measure.Percent},
		{measure.Grade, nil, "-12%", -12, measure.Percent},
		{measure.ShoeSize, nil, "42,5", 42.5, measure.One},
	} {
		g, why, ok := c.q.Parse(c.typed, c.bare)
		if assert.True(t, ok, "%s %q: %s", c.q.Key, c.typed, why.Say(nil)) {
			assert.InDelta(t, c.value, g.Value, 1e-9, "%s %q", c.q.Key, c.typed)
			assert.Same(t, c.unit, g.Unit, "%s %q", c.q.Key, c.typed)
			assert.True(t, math.IsNaN(g.Error), "%s %q has a ± from nowhere", c.q.Key, c.typed)
			assert.True(t, why.None())
		}
	}
}

func TestARepeatErrorMayBeTypedBehindTheValue(t *testing.T) {
	for _, c := range []struct {
		q            *measure.Quantity
		bare         *measure.Unit
		typed        string
		value, error float64
	}{
		{measure.Inseam, nil, "832 ± 3", 832, 3},
		{measure.Inseam, nil, "832±3", 832, 3},
		{measure.Inseam, nil, "832 +/- 3", 832, 3},
		{measure.Inseam, nil, "832 +/− 3", 832, 3},
		{measure.Inseam, nil, "832+-3mm", 832, 3},
		{measure.Inseam, nil, "83 cm ± 5 mm", 830, 5},
		{measure.Inseam, nil, "83 cm ± 0,5", 830, 5},
		{measure.Inseam, nil, "83 ± 0.5 cm", 830, 5},
		{measure.Inseam, measure.Inch, "32¾ ± ⅛", 32.75 * inch, inch / 8},
		{measure.Inseam, nil, `32 3/4" ± 3 mm`, 32.75 * inch, 3},
		{measure.Stature, nil, "5 ft 10 ± 1/4", 5*foot + 10*inch, inch / 4},
		{measure.Stature, nil, "1.78 m ± 1'1\"", 1780, foot + inch},
		{measure.Mass, nil, "160 ± 2 lb", 160 * pound, 2 * pound},
		{measure.HeadAngle, nil, "64.5° ± 0.3", 64.5, 0.3},
		{measure.StemAngle, nil, "-6 ± 1°", -6, 1},
		{measure.SagRear, nil, "28 % ± 2 %", 28, 2},
		{measure.Inseam, nil, "832 ± 0", 832, 0},
	} {
		g, why, ok := c.q.Parse(c.typed, c.bare)
		if assert.True(t, ok, "%q: %s", c.typed, why.Say(nil)) {
			assert.InDelta(t, c.value, g.Value, 1e-9, c.typed)
			assert.InDelta(t, c.error, g.Error, 1e-9, c.typed)
		}
	}
}

func TestMinusZeroIsZero(t *testing.T) {
	g, _, ok := measure.RailShift.Parse("-0", nil)
	require.True(t, ok)
	assert.False(t, math.Signbit(g.Value))
}

// text draws what people and machines type: plain noise, or pieces of numbers.
func text() *rapid.Generator[string] {
	pieces := rapid.SampledFrom([]string{"0", "1", "83", "1e309", ".", ",", "-", "−", "+", "±", "+/-", " ",
		"\u00a0", "/", "¾", "in", `"`, "'", "ft", "mm", "cm", "m", "kg", "lb", "°", "%", "e", "x", "NaN", "inf",
		"_", "\x00", "\xff"})
	return rapid.OneOf(rapid.String(), rapid.Custom(func(t *rapid.T) string {
		s := ""
		for _, p := range rapid.SliceOfN(pieces, 0, 12).Draw(t, "pieces") {
			s += p
		}
		return s
	}))
}

// sound checks what must hold for whatever Parse accepts or refuses.
func sound(t interface{ Fatalf(string, ...any) }, q *measure.Quantity, typed string, bare *measure.Unit) {
	g, why, ok := q.Parse(typed, bare)
	switch {
	case !ok && why.None():
		t.Fatalf("%s refuses %q without a word", q.Key, typed)
	case !ok:
		if len(why.Say(nil)) > 600 {
			t.Fatalf("%s says too much to %q: %s", q.Key, typed, why.Say(nil))
		}
	case math.IsNaN(g.Value) || math.IsInf(g.Value, 0) || !q.Possible(g.Value):
		t.Fatalf("%s reads %q as %v", q.Key, typed, g.Value)
	case g.Error < 0 || math.IsInf(g.Error, 0):
		t.Fatalf("%s reads %q with ± %v", q.Key, typed, g.Error)
	case g.Unit == nil || g.Unit.Kind != q.Unit.Kind:
		t.Fatalf("%s reads %q in %v", q.Key, typed, g.Unit)
	}
}

func number(t *rapid.T) *measure.Quantity {
	return rapid.SampledFrom(measure.All()).
		Filter(func(q *measure.Quantity) bool { return q.Is() == measure.Number }).Draw(t, "quantity")
}

func TestNoTextBreaksParse(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		bare := rapid.SampledFrom([]*measure.Unit{nil, measure.Mm, measure.Cm, measure.Inch, measure.Pound,
			measure.Deg}).Draw(t, "bare")
		sound(t, number(t), text().Draw(t, "typed"), bare)
	})
}

func FuzzParse(f *testing.F) {
	for _, s := range []string{"832", "83,2 cm", "32 3/4 in", "5'10\"", "83 cm ± 5 mm", "1e309", "-0", "0x10",
		"NaN", "½", "1/0", "\x00", "\xff\xfe", "± ± ±", "5 ft -3"} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, typed string) {
		calctest.Bounded(t, func() {
			for _, q := range []*measure.Quantity{measure.Inseam, measure.RailShift, measure.Mass, measure.HeadAngle,
				measure.Grade, measure.ShoeSize} {
				sound(t, q, typed, nil)
				sound(t, q, typed, measure.Inch)
			}
		})
	})
}

func TestTheUnitMakesNoDifference(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		q := number(t)
		x := rapid.Float64Range(q.Low, q.High).Draw(t, "x")
		others := map[*measure.Unit][]*measure.Unit{
			measure.Mm: {measure.Mm, measure.Cm, measure.Metre, measure.Inch,
				measure.Foot}, measure.Kg: {measure.Kg, measure.Pound},
		}[q.Unit]
		for _, u := range others {
			typed := strconv.FormatFloat(x/u.Base, 'g', -1, 64)
			named, why, ok := q.Parse(typed+" "+u.Symbol, nil)
			if !ok && (x == q.Least || x == q.Most) {
				continue // the last bit of a unit may fall outside the very end
			}
			require.True(t, ok, why.Say(nil))
			bare, _, ok := q.Parse(typed, u)
			require.True(t, ok)
			assert.InDelta(t, x, named.Value, 1e-9)
			assert.InDelta(t, x, bare.Value, 1e-9)
		}
	})
}

func TestEveryQuantityReadsItsOwnPlausibleEnds(t *testing.T) {
	for _, q := range measure.All() {
		if q.Is() != measure.Number {
			continue
		}
		for _, x := range []float64{q.Low, q.High, q.Least, q.Most} {
			g, why, ok := q.Parse(measure.Exact(x), nil)
			if assert.True(t, ok, "%s: %s", q.Key, why.Say(nil)) {
				assert.Equal(t, x, g.Value, q.Key)
			}
		}
	}
}
