package feet

import (
	"math"
	"slices"
	"testing"

	"github.com/stretchr/testify/require"

	"plumbline/calculators"
	"plumbline/calculators/calctest"
	"plumbline/calculators/drawing"
)

// drawnLengths are what the dimension lines of a figure span, mm, along their own
// direction where they have one.
func drawnLengths(t *testing.T, c *calculators.Calculator, typed string) (lengths []float64) {
	t.Helper()
	for _, m := range calctest.Answer(t, c, typed).Figure.Marks {
		if d, ok := m.(drawing.Dimension); ok {
			length := d.B.Minus(d.A).Length()
			if along := d.Along.Length(); along > 0 {
				length = math.Abs(d.B.Minus(d.A).Dot(d.Along)) / along
			}
			lengths = append(lengths, length)
		}
	}
	return lengths
}

// Every dimension line spans the length that it says: the hand calculations are those
// of the calculators' own tests.
func TestFiguresAreToScale(t *testing.T) {
	stands := drawnLengths(t, Stance(), "q-factor=171 foot-offset=53 hip-width=163")
	require.InDeltaSlice(t, []float64{163, 171, 277}, stands, 1e-9)
	shoes := drawnLengths(t, Shoe(), "foot-length=262 other-foot=268.5")
	require.InDeltaSlice(t, []float64{268.5, 262}, shoes, 1e-9)
	require.InDeltaSlice(t, []float64{168, 19}, drawnLengths(t, Cleat(), bothJoints), 1e-9)
	cranks := drawnLengths(t, Crank(), wholeBike)
	require.InDeltaSlice(t, []float64{162, whole.clearance(162)}, cranks, 1e-6)
}

// The crank's figure shows knee and hip as they were solved.
func TestTheLegAtTheTopIsDrawnAsSolved(t *testing.T) {
	_, knee, hip := onCrankOf(whole.rider, 731, 162)
	var angles []float64
	for _, m := range calctest.Answer(t, Crank(), wholeBike).Figure.Marks {
		if a, ok := m.(drawing.Angle); ok {
			turn := math.Abs(math.Mod(a.To-a.From, 360))
			angles = append(angles, math.Min(turn, 360-turn))
		}
	}
	slices.Sort(angles)
	want := []float64{knee, hip}
	slices.Sort(want)
	require.InDeltaSlice(t, want, angles, 1e-6)
}

// The hips and feet stand where the widths have them, the same on both sides, and the
// knee half-way between.
func TestTheLegsFromTheFrontMeet(t *testing.T) {
	var axes []drawing.Axis
	for _, m := range calctest.Answer(t, Stance(),
		"q-factor=171 foot-offset=53 hip-width=163 inseam=846 sex=m").Figure.Marks {
		if a, ok := m.(drawing.Axis); ok {
			axes = append(axes, a)
		}
	}
	require.Len(t, axes, 2)
	for i, side := range []float64{-1, 1} {
		require.InDelta(t, side*163/2, axes[i].A.X, 1e-9)
		require.InDelta(t, side*277/2, axes[i].B.X, 1e-9)
		require.InDelta(t, 0, axes[i].B.Y, 1e-9)
		require.InDelta(t, 0.45*900.97, axes[i].A.Y, 0.01, "the leg is drawn short: 77.9 + 0.9729·846 = 900.97")
	}
}

// The difference's bar is as wide as its ±, on a ruler of 320 mm from the lower of
// −5 mm and the bar's end to the higher of 15 mm and its other end.
func TestTheDifferenceOnItsRuler(t *testing.T) {
	at := func(x, from, to float64) float64 { return 320 * (x - from) / (to - from) }
	for typed, want := range map[string][3]float64{
		"4±1 ": {2, 6, 15}, "12±2.5 ": {7, 17, 17}, "2±4 ": {-6, 10, 15},
	} {
		from := math.Min(want[0], -5)
		var band []float64
		r := calctest.Answer(t, Difference(), "difference-found=blocks warning-sign=none leg-difference="+typed)
		for _, m := range r.Figure.Marks {
			if l, ok := m.(drawing.Line); ok && l.Fill == drawing.Hatch {
				for _, p := range l.Points {
					band = append(band, p.X)
				}
			}
		}
		require.NotEmpty(t, band, typed)
		require.InDelta(t, at(want[0], from, want[2]), slices.Min(band), 1e-6, typed)
		require.InDelta(t, at(want[1], from, want[2]), slices.Max(band), 1e-6, typed)
	}
}

// Inside 0 to 6.99 of heel past the crank's face the sentence says how far, by hand:
// TestStanceByHand has −7.43 mm.
func TestTheHeelPastTheCrankIsSaid(t *testing.T) {
	r := calctest.Answer(t, Stance(), "q-factor=171 foot-offset=53 hip-width=163 toe-out=8 sex=m foot-length=271.2 "+
		"cleat-behind-ball=11")
	require.True(t, calctest.Says(r, "the heel reaches 7\u00a0mm past"))
}
