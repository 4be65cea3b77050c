package measure_test

import (
	"encoding/json"
	"math"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

var (
	inches = &words.Reader{Units: "in"}
	comma  = &words.Reader{Units: "cm", Language: &words.Language{Tag: "de", Decimal: ","}}
)

func TestAnAmountIsSaidInTheReadersUnit(t *testing.T) {
	for _, c := range []struct {
		a    measure.Amount
		r    *words.Reader
		said string
	}{
		{measure.Millimetres(832), nil, "832\u00a0mm"},
		{measure.Millimetres(832.4), nil, "832\u00a0mm"},
		{measure.Millimetres(832), comma, "83,2\u00a0cm"},
		// 832/25.4 = 32.756; × 16 is 524.1 sixteenths, 32 wholes and 12 sixteenths.
		{measure.Millimetres(832), inches, "32\u00a03/4\u00a0in"},
		{measure.Millimetres(25.4), inches, "1\u00a0in"},
		{measure.Millimetres(-26.9875), inches, "−1\u00a01/16\u00a0in"}, // 17/16 × 25.4
		{measure.Millimetres(-3.175), inches, "−1/8\u00a0in"},           // an eighth, without a whole
		{measure.Millimetres(-0.7), inches, "0\u00a0in"},                // less than half a sixteenth, 0.79 mm
		{measure.Millimetres(0.9), inches, "1/16\u00a0in"},
		{measure.Millimetres(25), inches, "1\u00a0in"}, // 15.7 sixteenths
		{measure.Millimetres(math.NaN()), inches, "–\u00a0in"},
		{measure.Millimetres(math.Inf(1)), inches, "–\u00a0in"},
		{measure.Millimetres(25.4e12), inches, "1000000000000\u00a0in"},
		{measure.Amount{Value: 31.6, Unit: measure.Mm, Extra: 1}, inches, "1.244\u00a0in"}, // finer than a rule
		{measure.Amount{Value: 832.44, Unit: measure.Mm, Extra: 1}, nil, "832.4\u00a0mm"},
		{measure.Degrees(-6.04), nil, "−6.0°"},
		{measure.Degrees(64.5), comma, "64,5°"},
		{measure.Amount{Value: 72.5, Unit: measure.Kg}, nil, "72.5\u00a0kg"},
		{measure.Amount{Value: 72.5, Unit: measure.Kg}, inches, "160\u00a0lb"}, // 159.8
		{measure.Percentage(25.4), inches, "25\u00a0%"},
		{measure.Millimetres(-0.4), nil, "0\u00a0mm"},
		{measure.Millimetres(math.NaN()), nil, "–\u00a0mm"},
		{measure.Millimetres(math.Inf(-1)), nil, "–\u00a0mm"},
		{measure.Amount{Value: 42.4, Unit: measure.One, Extra: 1}, nil, "42.4"},
		{measure.Amount{Value: 0.71, Unit: measure.Gravity}, nil, "0.71\u00a0g"},
	} {
		assert.Equal(t, c.said, c.a.Say(c.r))
	}
}

func TestAMarginIsNeverPrintedSmallerThanItIs(t *testing.T) {
	assert.Equal(t, "4", measure.Millimetres(3.01).Margin(nil))
	// A constant 0.1 + 0.2 would be added without any error.
	tenth := 0.1
	assert.Equal(t, "0.3", measure.Degrees(tenth+0.2).Margin(nil)) // 0.30000000000000004
	rapid.Check(t, func(t *rapid.T) {
		x := rapid.Float64Range(0, 1e4).Draw(t, "x")
		for _, r := range []*words.Reader{nil, inches} {
			a := measure.Millimetres(x)
			printed := sum(t, a.Margin(r))
			assert.GreaterOrEqual(t, printed*measure.Mm.ReadIn(r).Base, x-1e-4)
		}
	})
}

// A value and its ± share one unit; without a ± the value stands alone.
func TestAValueIsSaidWithItsMargin(t *testing.T) {
	say := func(plus float64, r *words.Reader) string {
		return measure.Uncertain{Amount: measure.Millimetres(736.6), Plus: plus}.Say(r)
	}
	assert.Equal(t, "737\u00a0±\u00a022\u00a0mm", say(21.2, nil))
	assert.Equal(t, "29\u00a0±\u00a07/8\u00a0in", say(21.2, inches)) // 736.6/25.4 = 29; 0.835 rounded up
	assert.Equal(t, "737\u00a0mm", say(0, nil))
	assert.Equal(t, "737\u00a0mm", say(math.NaN(), nil))
}

// sum adds the parts of what is written as a decimal or as "1 3/16".
func sum(t require.TestingT, written string) (x float64) {
	for part := range strings.SplitSeq(written, "\u00a0") {
		top, bottom, fraction := strings.Cut(part, "/")
		n, err := strconv.ParseFloat(top, 64)
		require.NoError(t, err)
		if fraction {
			d, err := strconv.ParseFloat(bottom, 64)
			require.NoError(t, err)
			require.Contains(t, []float64{2, 4, 8, 16}, d, "what a rule has")
			require.Equal(t, 1.0, math.Mod(n, 2), "reduced")
			require.Less(t, n, d)
			n /= d
		}
		x += n
	}
	return x
}

// What is said in inches lies within half a sixteenth of the amount, and is read back
// as it was said.
func TestInchesAreSaidInSixteenths(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		x := rapid.Float64Range(275, 1575).Draw(t, "x")
		said := measure.Millimetres(x).Number(inches)
		assert.InDelta(t, x, sum(t, said)*25.4, 25.4/32+1e-9, said)
		g, why, ok := measure.Inseam.Parse(said+"\u00a0in", nil)
		if ok || x > 276 && x < 1574 {
			require.True(t, ok, why.Say(nil))
			assert.InDelta(t, sum(t, said)*25.4, g.Value, 1e-9)
		}
	})
}

func TestNothingIsEverWrittenAsMinusZero(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		x := rapid.OneOf(rapid.Float64Range(-1, 1), rapid.Float64(), rapid.Just(math.Copysign(0, -1))).Draw(t, "x")
		for digits := -1; digits < 5; digits++ {
			for _, r := range []*words.Reader{nil, comma} {
				s := measure.Decimal(x, digits, r)
				rest, minus := strings.CutPrefix(s, "−")
				assert.False(t, minus && strings.Trim(rest, "0.,") == "", s)
				assert.NotContains(t, s, "-")
			}
		}
		assert.NotEqual(t, "-0", measure.Exact(x))
	})
	assert.Equal(t, "0", measure.Exact(math.Copysign(0, -1)))
}

func TestExactReadsBackAsItself(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		x := rapid.Float64().Draw(t, "x")
		back, err := strconv.ParseFloat(measure.Exact(x), 64)
		require.NoError(t, err)
		assert.True(t, back == x, "%v", x)
	})
}

func TestAnAmountInJSONIsItsFullNumberInBaseUnits(t *testing.T) {
	for _, c := range []struct {
		x    float64
		want string
	}{{736.25, "736.25"}, {1.0 / 3, "0.3333333333333333"}, {math.NaN(), "null"}, {math.Inf(1), "null"}, {1e21,
		"1e+21"}} {
		got, err := json.Marshal(measure.Millimetres(c.x))
		require.NoError(t, err)
		assert.Equal(t, c.want, string(got))
	}
}

func TestUnitsAreFoundBySymbolAndSpelling(t *testing.T) {
	for s, u := range map[string]*measure.Unit{"mm": measure.Mm, "cm": measure.Cm, "in": measure.Inch,
		`"`: measure.Inch, "ft": measure.Foot, "lbs": measure.Pound, "°": measure.Deg, "%": measure.Percent} {
		assert.Same(t, u, measure.UnitNamed(s), s)
	}
	assert.Nil(t, measure.UnitNamed("furlong"))
	assert.Nil(t, measure.UnitNamed(""))
	assert.Equal(t, "°", measure.Deg.Mark())
	assert.Equal(t, "mm", measure.Mm.Mark())
	assert.Same(t, measure.Foot, measure.Foot.ReadIn(inches))
	assert.Same(t, measure.Mm, measure.Mm.ReadIn(&words.Reader{Units: "furlong"}))
}

func TestADifferenceCarriesItsSign(t *testing.T) {
	for _, c := range []struct {
		x    measure.Amount
		in   string
		want string
	}{
		{measure.Millimetres(12.4), "mm", "+12\u00a0mm"},
		{measure.Millimetres(-12.4), "mm", "−12\u00a0mm"},
		{measure.Millimetres(0.2), "mm", "0\u00a0mm"},
		{measure.Degrees(3.44), "mm", "+3.4°"},
		{measure.Millimetres(25.4), "in", "+1\u00a0in"},
	} {
		if got := (measure.Difference{Amount: c.x}).Say(&words.Reader{Units: c.in}); got != c.want {
			t.Errorf("got %q, want %q", got, c.want)
		}
	}
}

// A ± is rounded up and a value to the nearest, and the ends follow what is written: else
// 10.9 ± 0.4 would be 11 ± 1 "between 11 and 11". The sums by hand.
func TestEndsFollowWhatIsWritten(t *testing.T) {
	for _, c := range []struct {
		amount    measure.Amount
		plus      float64
		r         *words.Reader
		low, high string
	}{
		{measure.Millimetres(10.9), 0.4, nil, "10", "12"},
		{measure.Millimetres(173.6), 4.2, nil, "169", "179"},
		{measure.Amount{Value: 2.26, Unit: measure.Mm, Extra: 1}, 0.31, nil, "1.9", "2.7"},
		{measure.Degrees(-1.2), 0.5, nil, "−1.7", "−0.7"},
		{measure.Millimetres(737.3), 19.2, inches, "28\u00a03/16", "29\u00a013/16"}, // 464 and 13 sixteenths
	} {
		low, high := c.amount.Ends(c.plus, c.r)
		assert.Equal(t, []string{c.low, c.high}, []string{low.Number(c.r), high.Number(c.r)})
	}
}
