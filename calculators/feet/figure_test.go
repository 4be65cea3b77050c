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

// The hips and feet stand where the widths have them, the same on both sides, one foot down
// and one up on cranks that meet at the axle, the knee on the line between.
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
		require.InDelta(t, side*170, axes[i].B.Y, 1e-9, "one foot down, one up on a crank of 170")
		require.InDelta(t, 0.94*900.97-170, axes[i].A.Y, 0.01, "the leg is 77.9 + 0.9729·846 = 900.97, a little bent")
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

// A shoe that turns about its cleat by less than half the float stays in the jaw; the heel
// goes outwards, to the right, and comes off only past the float.
func TestTheHeelTurnsOutwards(t *testing.T) {
	f := FlatAndClipped().Figure([]calculators.Pair{{Key: "pedal-float", Typed: "9"}}, nil)
	require.Len(t, f.Frames, 4)
	for i, want := range []float64{0, 4.5, 18.5} {
		for _, m := range f.Frames[i+1].Marks {
			if l, ok := m.(drawing.Line); ok && l.Role == drawing.Hot && l.Closed && len(l.Points) == 8 {
				way := l.Points[4].Plus(l.Points[5]).Minus(l.Points[0]).Minus(l.Points[1]) // nose to tail
				require.InDelta(t, -90+want, way.Angle(), 1e-9, "frame %d: the tail, and the heel with it", i+2)
			}
		}
	}
	require.Contains(t, f.Description.Say(nil), "opens the jaw")
}

// The cleat goes 2 mm towards the heel, which lies at the left, and the dimension beside
// says so.
func TestTheCleatGoesOneStepBack(t *testing.T) {
	f := CleatOnTheSole().Figure([]calculators.Pair{{Key: "foot-length", Typed: "251"}}, nil)
	var cleats []float64
	for _, m := range f.Marks {
		if l, ok := m.(drawing.Line); ok && l.Closed && len(l.Points) == 8 {
			cleats = append(cleats, l.Points[0].X)
		}
	}
	require.Len(t, cleats, 2)
	require.InDelta(t, -2, cleats[0]-cleats[1], 1e-9, "after minus before")
	d := f.Details[0].Marks[0].(drawing.Dimension)
	require.InDelta(t, 2, d.B.X-d.A.X, 1e-9)
	require.Equal(t, "2\u00a0mm", d.Text.Say(nil))
}

// With the cleat's nose turned in by 11 degrees on the shoe, the pedal turns the shoe out by
// as much: the two angles are alike and lie on different sides of straight ahead. The sector
// is as wide as the float, with the foot in its middle.
func TestTheShoeTurnsAgainstTheCleat(t *testing.T) {
	f := CleatTurns().Figure([]calculators.Pair{{Key: "toe-out-right", Typed: "11"}, {Key: "pedal-float",
		Typed: "5"}}, nil)
	require.Len(t, f.Frames, 3)
	cleatAndFoot := func(i int) (cleat, foot float64, sector []float64) {
		for _, m := range f.Frames[i].Marks {
			switch m := m.(type) {
			case drawing.Axis:
				foot = m.B.Minus(m.A).Angle()
			case drawing.Line:
				switch {
				case m.Role == drawing.Hot && m.Pen == drawing.Thin && len(m.Points) == 2:
					cleat = m.Points[1].Minus(m.Points[0]).Angle()
				case m.Role == drawing.Hot && len(m.Points) == 10:
					sector = []float64{m.Points[1].Angle(), m.Points[9].Angle()}
				}
			}
		}
		return cleat, foot, sector
	}
	cleat, foot, _ := cleatAndFoot(0)
	require.InDeltaSlice(t, []float64{90, 90}, []float64{cleat, foot}, 1e-9)
	cleat, foot, _ = cleatAndFoot(1)
	require.InDeltaSlice(
		t,
		[]float64{101, 90},
		[]float64{cleat, foot},
		1e-9,
		"the nose to the left, where the bike is",
	)
	cleat, foot, sector := cleatAndFoot(2)
	require.InDeltaSlice(t, []float64{90, 79}, []float64{cleat, foot}, 1e-9, "the toes to the right")
	require.InDeltaSlice(t, []float64{-101 - 2.5, -101 + 2.5}, sector, 1e-9)
}

// A shoe with one finger behind the heel is a finger longer inside than one without, one
// with two is two longer; the foot is the same.
func TestAFingerIsRoomInTheShoe(t *testing.T) {
	f := FingerBehindTheHeel().Figure([]calculators.Pair{{Key: "foot-length", Typed: "249"}}, nil)
	var room [3]float64
	for i, frame := range f.Frames {
		wall, heel := 0.0, 0.0
		for _, m := range frame.Marks {
			if l, ok := m.(drawing.Line); ok {
				for _, p := range l.Points {
					if l.Role == drawing.Body {
						heel = math.Min(heel, p.X)
					}
				}
				if l.Role == drawing.Ink && l.Pen == drawing.Heavy {
					wall = l.Points[0].X
				}
			}
		}
		require.InDelta(t, -249, heel, 1e-9)
		room[i] = heel - wall - 1.5
	}
	require.InDeltaSlice(t, []float64{14, 0, 28}, room[:], 1e-9)
}

// With legs of one length, or a board as thick as the difference, the crests are level; a
// leg shorter by 16 drops its hip joint by 16.
func TestThePelvisTiltsByTheDifference(t *testing.T) {
	f := PelvisLevel().Figure([]calculators.Pair{{Key: "leg-difference", Typed: "16"}}, nil)
	require.Len(t, f.Frames, 3)
	for i, drop := range []float64{0, 16, 0} {
		for _, m := range f.Frames[i].Marks {
			if l, ok := m.(drawing.Line); ok && l.Role == drawing.Hot {
				way := l.Points[1].Minus(l.Points[0])
				require.InDelta(t, -drop/168, way.Y/way.X, 1e-9, "over hip joints 168 apart")
			}
		}
	}
	require.Contains(t, f.Description.Say(nil), "16\u00a0mm")
}

// On a longer crank the leg before is drawn too: its pedal as high as the present crank.
func TestTheCrankBeforeLiesOverTheNewOne(t *testing.T) {
	var ghost []float64
	for _, m := range calctest.Answer(t, Crank(), wholeBike).Figure.Marks {
		if l, ok := m.(drawing.Limb); ok && l.Role == drawing.Before {
			ghost = append(ghost, l.B.Y)
		}
	}
	require.Equal(t, []float64{172.5}, ghost)
}
