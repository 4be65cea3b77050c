package start

import (
	"math"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"plumbline/calculators"
	"plumbline/calculators/calctest"
	"plumbline/calculators/measure"
)

// run answers a calculator for "key=value" texts, and fails on a problem.
func run(t testing.TB, c *calculators.Calculator, typed ...string) *calculators.Result {
	t.Helper()
	r, problems := c.Run(typedPairs(typed), nil)
	if len(problems) > 0 {
		t.Fatalf("%s: %s", problems[0].Input, problems[0].Text.Say(nil))
	}
	return r
}

func typedPairs(typed []string) (list []calculators.Pair) {
	for _, s := range typed {
		for i := range s {
			if s[i] == '=' {
				list = append(list, calculators.Pair{Key: s[:i], Typed: s[i+1:]})
				break
			}
		}
	}
	return list
}

// TestTheMiddleReadingIsKept uses pairs of the worked example of the technical
// error of measurement in Anthropometry, Apparel Sizing and Design, equation 2.2:
// a single pair repeats to |d|/√2.
func TestTheMiddleReadingIsKept(t *testing.T) {
	r := run(t, Repeat(), "quantity=inseam", "first=832", "second=824", "third=829")
	require.InDelta(t, 829, calctest.Value(r, medianReading), 0)
	require.InDelta(t, 8, calctest.Value(r, readingsApart), 0)
	require.Same(t, measure.Inseam, r.At(medianReading).Feeds)
	pair := run(t, Repeat(), "quantity=inseam", "first=846", "second=842")
	require.InDelta(t, 4/math.Sqrt2, calctest.Value(pair, technicalError), 1e-12)
	require.InDelta(t, 844, calctest.Value(pair, medianReading), 0)
}

// TestReadingsThatDisagreeAreTakenAgain: the inside leg tolerates 10 mm (common
// practice, and the limit that the chapter prints).
func TestReadingsThatDisagreeAreTakenAgain(t *testing.T) {
	for third, again := range map[string]bool{"third=834": false, "third=835": true} {
		r := run(t, Repeat(), "quantity=inseam", "first=824", "second=830", third)
		said := r.At(readingsApart).Meaning.Say(nil)
		require.Equal(t, again, r.Notes[len(r.Notes)-2].Kind == calculators.CheckNote, said)
	}
	_, problems := Repeat().Run(typedPairs([]string{"quantity=inseam", "first=83", "second=84", "third=83"}), nil)
	require.Len(t, problems, 1)
	require.Equal(t, "first", problems[0].Input)
}

// TestHelpHalvesTheSharedError: 10 mm alone and 5 mm with help are one standard deviation
// of the inside leg. Three equal readings add nothing of their own.
func TestHelpHalvesTheSharedError(t *testing.T) {
	alone := run(t, Repeat(), "quantity=inseam", "first=830", "second=830", "third=830", "helped=alone")
	help := run(t, Repeat(), "quantity=inseam", "first=830", "second=830", "third=830", "helped=help")
	require.InDelta(t, 20, float64(alone.At(medianReading).Uncertainty), 1e-9)
	require.InDelta(t, 10, float64(help.At(medianReading).Uncertainty), 1e-9)
}

// TestTheReadingsOwnScatterCounts: three equal readings, and three that lie far apart,
// are no longer given the same ±. By hand (JCGM 100:2008, 4.2, 5.1.2 and G.4.1), for an
// inside leg measured alone, whose shared error is 10 mm:
//
//	829; 829; 829   no scatter: ± 2 · 10 = 20
//	800; 829; 860   s = 30.006, the middle one's standard error 0.6698 · s = 20.098,
//	                u = √(20.098² + 10²) = 22.448, ν = 2/(20.098/22.448)⁴ = 3.113,
//	                t₉₅ = 3.125: ± 70.15
func TestTheReadingsOwnScatterCounts(t *testing.T) {
	same := run(t, Repeat(), "quantity=inseam", "first=829", "second=829", "third=829")
	apart := run(t, Repeat(), "quantity=inseam", "first=800", "second=829", "third=860")
	require.InDelta(t, 20, float64(same.At(medianReading).Uncertainty), 1e-9)
	require.InDelta(t, 70.15, float64(apart.At(medianReading).Uncertainty), 0.3)
	// With help the shared error is 5: u = √(20.098² + 25) = 20.711, ν = 2.255, t₉₅ = 3.863.
	helped := run(t, Repeat(), "quantity=inseam", "first=800", "second=829", "third=860", "helped=help")
	require.InDelta(t, 3.863*20.711, float64(helped.At(medianReading).Uncertainty), 0.4)
}

// TestTheFieldAndTheCalculatorAgree: readings typed into one field, parted by semicolons,
// get the median and the ± that the calculator makes of them.
func TestTheFieldAndTheCalculatorAgree(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		q := rapid.SampledFrom(measure.RiderLengths).Draw(t, "length")
		middle := (q.Low + q.High) / 2
		x := rapid.SliceOfN(rapid.Float64Range(middle-20, middle+20), 2, 3).Draw(t, "readings")
		typed, field := "quantity="+q.Key, ""
		for i, name := range []string{" first=", " second=", " third="}[:len(x)] {
			typed += name + measure.Exact(x[i])
			field += measure.Exact(x[i]) + ";"
		}
		r, problems := Repeat().Run(calctest.Pairs(typed), nil)
		if len(problems) > 0 {
			return // beside the range of this length
		}
		g, why, ok := q.ParseRepeated(field, nil)
		require.True(t, ok, why.Say(nil))
		require.InDelta(t, g.Value, calctest.Value(r, medianReading), 1e-9)
		if reach := 5 * q.SD(g); g.Value-reach < q.Least || g.Value+reach > q.Most {
			return // so near to what is impossible that some errors have no answer
		}
		require.InDelta(t, 2*q.SD(g), float64(r.At(medianReading).Uncertainty), 1e-6)
	})
}

func TestTheOrderOfReadingsDoesNotMatter(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		x := rapid.SliceOfN(rapid.IntRange(700, 950), 3, 3).Draw(t, "readings")
		a, b, c := strconv.Itoa(x[0]), strconv.Itoa(x[1]), strconv.Itoa(x[2])
		one, _ := Repeat().Run(typedPairs([]string{"quantity=inseam", "first=" + a, "second=" + b, "third=" + c}), nil)
		two, _ := Repeat().Run(typedPairs([]string{"quantity=inseam", "first=" + c, "second=" + a, "third=" + b}), nil)
		for i := range one.Answers {
			if math.Abs(float64(one.Answers[i].Value-two.Answers[i].Value)) > 1e-9 {
				t.Fatalf("%s depends on the order", one.Answers[i].Name)
			}
		}
	})
}

// TestEstimatesComeFromTheSurvey checks against ANSUR II, computed from the public
// table: predictions at 1750 mm, and the residual that an inside leg from stature
// carries (23.9 and 23.6 mm, so ±47 mm at 1.96).
func TestEstimatesComeFromTheSurvey(t *testing.T) {
	for _, c := range []struct {
		sex, quantity string
		want, sd      float64
	}{
		{"m", "inseam", 842.31, 23.878}, {"f", "inseam", 854.06, 23.583},
		{"m", "arm-span", 1807.84, 48.065}, {"m", "hand-length", 192.67, 7.356}, {"f", "foot-length", 263.29, 8.604},
	} {
		r := run(t, Missing(), "quantity="+c.quantity, "stature=1750±0", "sex="+c.sex)
		require.InDelta(t, c.want, calctest.Value(r, estimated), 0.01, c.quantity)
		require.InDelta(t, 2*c.sd, float64(r.At(estimated).Uncertainty), 0.01, c.quantity)
		require.True(t, r.At(estimated).Output.Guess)
	}
	trochanter := run(t, Missing(), "quantity=trochanter-height", "stature=1750", "sex=m", "inseam=846±0")
	require.InDelta(t, 77.9+0.9729*846, calctest.Value(trochanter, estimated), 1e-9)
	require.InDelta(t, 2*19.3, float64(trochanter.At(estimated).Uncertainty), 1e-9)
}

// TestWhatNoSurveyKnowsIsRefused: sit bones, press-up width, outer ball and leg
// difference are refused with the reason, never guessed.
func TestWhatNoSurveyKnowsIsRefused(t *testing.T) {
	answered := 0
	for _, q := range measure.RiderLengths {
		r := run(t, Missing(), "quantity="+q.Key, "stature=1700", "sex=f")
		x := r.At(estimated)
		require.NotEmpty(t, x.Meaning.Say(nil), q.Key)
		if x.Exists() {
			answered++
			require.True(t, q.Plausible(float64(x.Value)), "%s: %v", q.Key, x.Value)
			continue
		}
		require.NotContains(t, x.Meaning.Say(nil), "no such length", q.Key)
	}
	require.Equal(t, 12, answered)
}

func TestAnUnusualHeightIsSaidToExtrapolate(t *testing.T) {
	for stature, beyond := range map[string]bool{"stature=1480": true, "stature=1550": true, "stature=1700": false,
		"stature=2000": true} {
		r := run(t, Missing(), "quantity=hand-length", stature, "sex=m")
		said := false
		for _, n := range r.Notes {
			said = said || n.Kind == calculators.CheckNote
		}
		require.Equal(t, beyond, said, stature)
	}
}

func TestAnInsideLegFromHeightWarnsOfTheSaddle(t *testing.T) {
	r := run(t, Missing(), "quantity=inseam", "stature=1740")
	require.True(t, slices.ContainsFunc(r.Notes, func(n calculators.Note) bool {
		return strings.Contains(n.Text.Say(nil), "Do not set a saddle by this")
	}))
}

func BenchmarkMissing(b *testing.B) {
	typed := typedPairs([]string{"quantity=trochanter-height", "stature=1740", "inseam=830"})
	for b.Loop() {
		Missing().Run(typed, nil)
	}
}

// What repeating cannot cure is said as a ±, that is as twice the standard uncertainty of the length: the
// usual error alone, half of it with a helper.
func TestRepeatSaysTheUsualErrorAsAMargin(t *testing.T) {
	usual := measure.ArmLength.Repeat
	for typed, sd := range map[string]float64{"": usual, " helped=help": usual / 2} {
		r := calctest.Answer(t, Repeat(), "quantity=arm-length first=636 second=641 third=633"+typed)
		want := "± " + measure.Error{Amount: measure.ArmLength.Amount(2 * sd)}.Say(nil)
		require.Contains(t, r.At(technicalError).Meaning.Say(nil), want+".")
	}
}
