package start

import (
	"math"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
	"gonum.org/v1/gonum/optimize"
	"pgregory.net/rapid"

	"plumbline/calculators/calctest"
	"plumbline/calculators/geometry"
)

// threeBikes are the bikes A, B and C whose every length was confirmed by an
// independent solve from pairwise distances (least squares, differences under a
// hundred-millionth of a millimetre).
var threeBikes = map[string]geometry.Chart{
	"A": {Reach: 475, Stack: 630, HeadAngle: 65, SeatAngle: 77, ForkOffset: 44, Chainstay: 435, Drop: 35,
		FrontRadius: 372, RearRadius: 372},
	"B": {Reach: 440, Stack: 605, HeadAngle: 67, SeatAngle: 74.5, ForkOffset: 51, Chainstay: 430, Drop: 60,
		FrontRadius: 364, RearRadius: 364},
	"C": {Reach: 470, Stack: 635, HeadAngle: 64, SeatAngle: 78, ForkOffset: 44, Chainstay: 438, BBHeight: 338,
		FrontRadius: 372, RearRadius: 353},
}

// distances returns what a perfect tape would read on a bike.
func distances(b geometry.Bike) []string {
	say := func(key string, x float64) string { return key + "=" + strconv.FormatFloat(x, 'f', 9, 64) }
	o := geometry.Point{}
	return []string{
		say("bb-to-head-tube", b.HeadTop.Distance(o)), say("rear-axle-to-head-tube", b.HeadTop.Distance(b.Rear)),
		say("chainstay", b.Rear.Distance(o)), say("front-centre", b.Front.Distance(o)), say("wheelbase",
			b.Front.Distance(b.Rear)),
		say("rear-axle-height", b.RearRadius), say("front-axle-height", b.FrontRadius), say("bb-height", b.BBHeight()),
		say("head-angle", b.HeadAngle),
	}
}

func TestATapeFindsTheThreeBikesAgain(t *testing.T) {
	for name, c := range threeBikes {
		b, err := c.Solve()
		require.NoError(t, err)
		r := run(t, Tape(), distances(b)...)
		require.InDelta(t, b.Reach(), calctest.Value(r, tapedReach), 1e-5, name)
		require.InDelta(t, b.Stack(), calctest.Value(r, tapedStack), 1e-5, name)
		require.InDelta(t, b.Drop(), calctest.Value(r, tapedDrop), 1e-5, name)
		require.InDelta(t, b.FrontCentre(), calctest.Value(r, tapedFrontCentre), 1e-5, name)
		require.InDelta(t, c.ForkOffset, calctest.Value(r, tapedForkOffset), 1e-5, name)
	}
}

// TestATapeAgreesWithLeastSquares places the head tube and both axles by
// minimising the squared misfit of every distance and height at once, without any
// closed form, from a start that is 60 mm off.
func TestATapeAgreesWithLeastSquares(t *testing.T) {
	for name, c := range threeBikes {
		b, err := c.Solve()
		require.NoError(t, err)
		head, rear, o := b.HeadTop, b.Rear, geometry.Point{}
		square := func(x float64) float64 { return x * x }
		problem := optimize.Problem{Func: func(x []float64) float64 {
			h, r, f := geometry.Point{X: x[0], Y: x[1]}, geometry.Point{X: x[2], Y: x[3]}, geometry.Point{X: x[4],
				Y: x[5]}
			return square(h.Distance(o)-head.Distance(o)) + square(h.Distance(r)-head.Distance(rear)) +
				square(r.Distance(o)-rear.Distance(o)) + square(f.Distance(o)-b.Front.Distance(o)) +
				square(f.Distance(r)-b.Front.Distance(rear)) +
				square(r.Y-(b.RearRadius-b.BBHeight())) + square(f.Y-(b.FrontRadius-b.BBHeight()))
		}}
		found, err := optimize.Minimize(problem, []float64{head.X - 60, head.Y + 50, rear.X + 40, 0,
			b.Front.X - 60, 0},
			&optimize.Settings{FuncEvaluations: 200000, MajorIterations: 100000,
				Converger: &optimize.FunctionConverge{Absolute: 1e-16, Iterations: 3000}}, &optimize.NelderMead{})
		require.NoError(t, err)
		r := run(t, Tape(), distances(b)...)
		require.InDelta(t, found.X[0], calctest.Value(r, tapedReach), 0.01, name)
		require.InDelta(t, found.X[1], calctest.Value(r, tapedStack), 0.01, name)
		require.InDelta(t, math.Hypot(found.X[4], found.X[5]), calctest.Value(r, tapedFrontCentre), 0.01, name)
	}
}

// TestASlipOfTheTapeIsNoticed: axle to axle 30 mm off, as with the wheel turned.
func TestASlipOfTheTapeIsNoticed(t *testing.T) {
	b, err := threeBikes["A"].Solve()
	require.NoError(t, err)
	typed := distances(b)
	warned := func(wheelbase float64) bool {
		r := run(t, Tape(), append(typed, "wheelbase="+strconv.FormatFloat(wheelbase, 'f', 3, 64))...)
		for _, n := range r.Notes {
			if strings.Contains(n.Text.Say(nil), "points straight ahead") {
				return true
			}
		}
		return false
	}
	require.False(t, warned(b.Front.Distance(b.Rear)+4))
	require.True(t, warned(b.Front.Distance(b.Rear)-30))
}

// TestDistancesThatDoNotMeetAreAProblem names the reading, not the rider.
func TestDistancesThatDoNotMeetAreAProblem(t *testing.T) {
	_, problems := Tape().Run(typedPairs([]string{"bb-to-head-tube=560", "rear-axle-to-head-tube=1300",
		"chainstay=437", "front-centre=779", "rear-axle-height=372", "front-axle-height=372", "bb-height=340"}), nil)
	require.Len(t, problems, 1)
	require.Equal(t, "bb-to-head-tube", problems[0].Input)
}

func TestMoreHeightIsMoreDrop(t *testing.T) {
	b, err := threeBikes["B"].Solve()
	require.NoError(t, err)
	typed := distances(b)
	rapid.Check(t, func(t *rapid.T) {
		up := rapid.IntRange(1, 30).Draw(t, "up")
		r, problems := Tape().Run(typedPairs(append(append([]string{}, typed...),
			"bb-height="+strconv.FormatFloat(b.BBHeight()+float64(up), 'f', 6, 64))), nil)
		if len(problems) > 0 || calctest.Value(r, tapedDrop) >= b.Drop() {
			t.Fatal("a higher crank axle hangs lower below the axles")
		}
	})
}

func BenchmarkTape(b *testing.B) {
	typed := typedPairs([]string{"bb-to-head-tube=776", "rear-axle-to-head-tube=1074", "chainstay=437",
		"front-centre=779", "rear-axle-height=372", "front-axle-height=372", "bb-height=340", "wheelbase=1215",
		"head-angle=65.4"})
	for b.Loop() {
		Tape().Run(typed, nil)
	}
}
