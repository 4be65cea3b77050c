package saddle

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"plumbline/calculators"
	"plumbline/calculators/calctest"
	"plumbline/calculators/calctest/leg"
)

const (
	fiveMethods = "inseam=812±4 crank-length=162±1 pedals=flat pedal-height=11±1 sole-height=13±2" +
		" cleat-behind-ball=14±3" +
		" target-knee=33 sex=f trochanter-height=848±6 seat-angle=74.3±0.4"
	shortLeg = "inseam=716±5 crank-length=157.5±0.5 sex=m"
)

// fiveLeg and shortLegs are the same riders for the independent solve; what the short
// one left out is what is usual for clipped shoes (common practice).
var (
	fiveLeg = leg.Rider{Inseam: 812, Trochanter: 848, Sex: "f", Crank: 162, Pedal: 11, Sole: 13, Cleat: 14, Seat: 74.3}
	short   = leg.Rider{Inseam: 716, Sex: "m", Crank: 157.5, Pedal: 15, Sole: 15, Cleat: 0, Seat: 76}
)

// All five methods, by hand from the published factors (Peveler et al. 2005;
// Ferrer-Roca et al. 2012; Nordeen-Snyder 1977):
//
//	factor        0.883·812 + 172.5 − 162               = 727.496
//	hundred-nine  1.09·812 − 162 = 885.08 − 162         = 723.080
//	regression    221 + 0.896·812 − 1.5·33 − 162
//	              = 221 + 727.552 − 49.5 − 162          = 737.052
//	trochanteric  848 − 162                             = 686.000
//
// The factor was made with cranks of 170 to 175 mm, so it moves with the others. The
// leg model lies between 109 % and the trochanter, so 109 % is the middle one, 686 is
// the lowest and 737.052 the highest.
//
// The short leg has no trochanter and the regression does not count:
//
//	factor        0.883·716 + 172.5 − 157.5             = 647.228
//	hundred-nine  1.09·716 − 157.5 = 780.44 − 157.5     = 622.940
//	regression    221 + 0.896·716 − 1.5·35 − 157.5
//	              = 221 + 641.536 − 52.5 − 157.5        = 652.536
//
// and without it three are left.
func TestHeightCases(t *testing.T) {
	model := fiveLeg.HeightFor(33)
	require.True(t, 686 < model && model < 723.080, "the order that the comment says: %v", model)
	bottom, _ := fiveLeg.At(723.080, 90+74.3)
	modelOfShort := short.HeightFor(35)
	ofThree := middleOfThree(647.228, 622.940, modelOfShort)
	shortBottom, _ := short.At(ofThree, 90+76)
	calctest.Cases(t, Height(),
		calctest.Case{Typed: fiveMethods, Source: "published factors by hand; the leg solved in calctest/leg",
			Want: []calctest.Want{
				calctest.Is(byFactor, 727.496, 1e-9),
				calctest.Is(byHundredNine, 723.080, 1e-9),
				calctest.Is(byRegression, 737.052, 1e-9),
				calctest.Is(byTrochanteric, 686, 1e-9),
				calctest.Is(byModel, model, 1e-6),
				calctest.Is(saddleHeight, 723.080, 1e-9),
				calctest.Is(pedalToSaddle, 885.080, 1e-9),
				calctest.Is(methodSpread, 51.052, 1e-9),
				calctest.Is(kneeBend, bottom.Bend(), 1e-6),
				calctest.Cell("methods", 0, "saddle-height", 727.496, 0.51),
				calctest.Cell("methods", 0, "uncertainty", 7.342, 1), // rounded up for people
			}},
		calctest.Case{Typed: shortLeg, Source: "published factors by hand; the leg solved in calctest/leg",
			Want: []calctest.Want{
				calctest.Is(byFactor, 647.228, 1e-9),
				calctest.Is(byHundredNine, 622.940, 1e-9),
				calctest.Is(byRegression, 652.536, 1e-9),
				calctest.None(byTrochanteric),
				calctest.Is(byModel, modelOfShort, 1e-6),
				calctest.Is(saddleHeight, ofThree, 1e-6),
				calctest.Is(pedalToSaddle, ofThree+157.5, 1e-6),
				calctest.Is(methodSpread, max(647.228, modelOfShort)-min(622.940, modelOfShort), 1e-6),
				calctest.Is(kneeBend, shortBottom.Bend(), 1e-6),
			}},
	)
	cells(t, Height(), fiveMethods, "methods", "saddle-height", 1e-6, 727.496, 723.080, 737.052, 686, model)
}

// bottomBend is the knee's bend at the bottom at a saddle height.
func bottomBend(l leg.Rider, height float64) float64 {
	j, _ := l.At(height, 90+l.Seat)
	return j.Bend()
}

// middleOfThree is the one that is neither the smallest nor the largest.
func middleOfThree(a, b, c float64) float64 { return a + b + c - min(a, b, c) - max(a, b, c) }

// Between the inside legs of the regression, and without a trochanter, four methods
// count, and the middle is half-way between the second and the third (the definition
// of a median).
func TestHeightOfFourMethods(t *testing.T) {
	const typed = "inseam=884 crank-length=172.5 sex=m"
	// 0.883·884 = 780.572; 1.09·884 − 172.5 = 791.06; 221 + 0.896·884 − 52.5 − 172.5 = 788.064.
	model := leg.Rider{Inseam: 884, Sex: "m", Crank: 172.5, Pedal: 15, Sole: 15, Seat: 76}.HeightFor(35)
	lowest, highest := min(780.572, model), max(791.06, model)
	want := (780.572 + 791.06 + 788.064 + model - lowest - highest) / 2
	r := calctest.Answer(t, Height(), typed)
	require.InDelta(t, want, calctest.Value(r, saddleHeight), 1e-6)
	require.InDelta(t, lowest, float64(r.At(saddleHeight).Low), 1e-6)
	require.InDelta(t, highest, float64(r.At(saddleHeight).High), 1e-6)
	require.Contains(t, meaning(r, methodSpread), "4 methods")
}

// On flat pedals the usual is a pedal of 10 ± 2 mm, a sole of 12 ± 3, and a spindle 20 ± 5
// behind the ball: common practice.
func TestHeightOnFlatPedals(t *testing.T) {
	flats := leg.Rider{Inseam: 861, Sex: "f", Crank: 168, Pedal: 10, Sole: 12, Cleat: 20, Seat: 77}
	const typed = "inseam=861 sex=f crank-length=168 seat-angle=77 pedals=flat"
	r := calctest.Answer(t, Height(), typed)
	require.InDelta(t, flats.HeightFor(35), calctest.Value(r, byModel), 1e-6)
	assumed(t, Height(), typed, map[string][2]float64{
		"pedal-height": {10, 4}, "sole-height": {12, 6}, "cleat-behind-ball": {20, 10}})
}

// The ±, k = 2, by the law of propagation (JCGM 100:2008):
//
//	factor        2·√((0.883·4)² + 1²)      = 2·√13.475 024 = 7.341 669
//	hundred-nine  2·√((1.09·4)² + 1²)       = 2·√20.0096 = 8.946 418
//	regression    2·√((0.896·4)² + 1²)      = 2·√13.845 056 = 7.441 789
//	trochanteric  2·√(6² + 1²)              = 2·√37 = 12.165 525
//	from the pedal, 109 % and one crank more, in which the crank cancels:
//	              2·1.09·4                  = 8.72
//
//	the spread, regression less trochanteric, in which the crank cancels:
//	              2·√((0.896·4)² + 6²)      = 2·√48.845 056 = 13.977 848
//
// and for the leg model by differences of the independent solve.
func TestHeightUncertainty(t *testing.T) {
	model := leg.Expanded(
		func(off float64) float64 { l := fiveLeg; l.Inseam += 4 * off; return l.HeightFor(33) },
		func(off float64) float64 { l := fiveLeg; l.Crank += off; return l.HeightFor(33) },
		func(off float64) float64 { l := fiveLeg; l.Pedal += off; return l.HeightFor(33) },
		func(off float64) float64 { l := fiveLeg; l.Sole += 2 * off; return l.HeightFor(33) },
		func(off float64) float64 { l := fiveLeg; l.Cleat += 3 * off; return l.HeightFor(33) },
		func(off float64) float64 { l := fiveLeg; l.Trochanter += 6 * off; return l.HeightFor(33) },
		func(off float64) float64 { l := fiveLeg; l.Seat += 0.4 * off; return l.HeightFor(33) },
	)
	cells(t, Height(), fiveMethods, "methods", "uncertainty", 1e-4, 7.341669, 8.946418, 7.441789, 12.165525, model)
	onLeg := func(off float64) float64 {
		l := fiveLeg
		l.Inseam += 4 * off
		return bottomBend(l, 723.080+1.09*4*off)
	}
	knee := leg.Expanded(onLeg,
		func(off float64) float64 { l := fiveLeg; l.Crank += off; return bottomBend(l, 723.080-off) },
		func(off float64) float64 { l := fiveLeg; l.Pedal += off; return bottomBend(l, 723.080) },
		func(off float64) float64 { l := fiveLeg; l.Sole += 2 * off; return bottomBend(l, 723.080) },
		func(off float64) float64 { l := fiveLeg; l.Cleat += 3 * off; return bottomBend(l, 723.080) },
		func(off float64) float64 { l := fiveLeg; l.Trochanter += 6 * off; return bottomBend(l, 723.080) },
		func(off float64) float64 { l := fiveLeg; l.Seat += 0.4 * off; return bottomBend(l, 723.080) },
	)
	margins(t, Height(), fiveMethods, 1e-5, map[*calculators.Output]float64{
		saddleHeight: 8.946418, pedalToSaddle: 8.72, methodSpread: 13.977848, kneeBend: knee})

	// What is assumed of a rider who gave the least, with its own errors: a crank of
	// 170 ± 2.5 mm, pedal 15 ± 2, sole 15 ± 3, cleat 0 ± 5, seat line 76 ± 1 (common
	// practice), a trochanter by the survey's line with its residual: 15.9 mm in women,
	// 19.3 in men, the mean square of both and half the lines' distance for nobody in
	// particular.
	const usual = "inseam=861±5"
	l := leg.Rider{Inseam: 861, Crank: 170, Pedal: 15, Sole: 15, Seat: 76}
	half := (77.9 + 0.9729*861 - (113.7 + 0.9352*861)) / 2
	trochanter := math.Sqrt((15.9*15.9+19.3*19.3)/2 + half*half)
	model = leg.Expanded(
		func(off float64) float64 { l := l; l.Inseam += 5 * off; return l.HeightFor(35) },
		func(off float64) float64 { l := l; l.Crank += 2.5 * off; return l.HeightFor(35) },
		func(off float64) float64 { l := l; l.Pedal += 2 * off; return l.HeightFor(35) },
		func(off float64) float64 { l := l; l.Sole += 3 * off; return l.HeightFor(35) },
		func(off float64) float64 { l := l; l.Cleat += 5 * off; return l.HeightFor(35) },
		func(off float64) float64 { l := l; l.TrochanterOff = trochanter * off; return l.HeightFor(35) },
		func(off float64) float64 { l := l; l.Seat += off; return l.HeightFor(35) },
	)
	cells(t, Height(), usual, "methods", "uncertainty", 1e-4,
		2*math.Hypot(0.883*5, 2.5), 2*math.Hypot(1.09*5, 2.5), 2*math.Hypot(0.896*5, 2.5), model)
	cells(t, Height(), usual, "methods", "saddle-height", 1e-6,
		0.883*861+2.5, 1.09*861-170, 221+0.896*861-1.5*35-170, l.HeightFor(35))
}

// A crank changes the saddle by one answer, whether the height is computed anew or the
// change by itself (crank-length): what the neutral height of the leg changes by.
func TestOneAnswerForACrank(t *testing.T) {
	for _, next := range []float64{155, 165, 180} {
		for _, inseam := range []float64{780, 846, 905} {
			at := func(crank float64) float64 {
				return numbersOf(t, Height(), "inseam=%v crank-length=%v sex=m", inseam, crank)(saddleHeight)
			}
			l := leg.Rider{Inseam: inseam, Sex: "m", Crank: 170, Pedal: 15, Sole: 15, Seat: 76}
			before := l.Neutral()
			l.Crank = next
			require.InDelta(t, l.Neutral()-before, at(next)-at(170), 0.5, "%v mm on a leg of %v", next, inseam)
		}
	}
}
