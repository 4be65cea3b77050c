package cockpit

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"plumbline/calculators"
	"plumbline/calculators/calctest"
	"plumbline/calculators/drawing"
)

const rolledBar = "bar-roll=7 bar-rise=34±1 bar-sweep=46±2 back-sweep=9±0.5"

// By hand: with the bar's middle as origin, the middle of the grips lies 46 mm behind it
// and 34 mm above it, and a roll of ρ forward turns it clockwise:
//
//	ahead = 46 − 46·cos ρ + 34·sin ρ,  up = 46·sin ρ + 34·cos ρ − 34
//	7°: 0.343 + 4.144 = 4.486 and 5.606 − 0.253 = 5.353
//
// The grip's direction (cos 9°, −0.15643, 0) gets 0.15643·sin 7° = 0.019065 of height:
// 1.0924°.
func TestRollCases(t *testing.T) {
	const source = "plane and space geometry, by hand"
	calctest.Cases(t, Roll(), calctest.Case{Typed: rolledBar, Source: source, Want: []calctest.Want{
		calctest.Is(rollAhead, 4.486435, 1e-6),
		calctest.Is(rollUp, 5.352559, 1e-6),
		calctest.Is(rollTips, 1.092385, 1e-6),
		calctest.Is(rollBackMuch.ahead, -2.788251, 1e-6),
		calctest.Is(rollBackMuch.up, -4.138544, 1e-6),
		calctest.Is(rollBackMuch.tips, -0.781204, 1e-6),
		calctest.Is(rollBackOne.ahead, -0.586376, 1e-6),
		calctest.Is(rollBackOne.up, -0.807989, 1e-6),
		calctest.Is(rollBackOne.tips, -0.156427, 1e-6),
		calctest.Is(rollOne.ahead, 0.600388, 1e-6),
		calctest.Is(rollOne.up, 0.797632, 1e-6),
		calctest.Is(rollOne.tips, 0.156427, 1e-6),
		calctest.Is(rollMuch.ahead, 3.138339, 1e-6),
		calctest.Is(rollMuch.up, 3.879784, 1e-6),
		calctest.Is(rollMuch.tips, 0.781204, 1e-6),
		calctest.Cell("rolls", 0, "ahead", -2.788251, 0.05),
		calctest.Cell("rolls", 0, "up", -4.138544, 0.05),
		calctest.Cell("rolls", 3, "tips", 0.781204, 0.005),
	}})
}

// What the picture of the roll says is where it is drawn: the lever and the grip's end
// turn by the roll about the clamp, and the sweep is the sweep.
func TestTheRollIsDrawnAsLargeAsItIs(t *testing.T) {
	r := calctest.Answer(t, Roll(), rolledBar)
	var angles []drawing.Angle
	for _, f := range r.Figure.Frames {
		for _, m := range f.Marks {
			if a, ok := m.(drawing.Angle); ok {
				angles = append(angles, a)
			}
		}
	}
	require.Len(t, angles, 2)
	require.InDelta(t, 7, angles[0].From-angles[0].To, 1e-9, "rolled clockwise, seen from the right")
	require.InDelta(t, math.Atan2(34, -46)*180/math.Pi, angles[0].From, 1e-9)
	require.InDelta(t, 9, angles[1].To-angles[1].From, 1e-9)
	require.Contains(t, r.Figure.Description.Say(nil), "after 7.0° forward")
	back := calctest.Answer(t, Roll(), "bar-roll=-4 bar-rise=20")
	require.Contains(t, back.Figure.Description.Say(nil), "after 4.0° back")
	still := calctest.Answer(t, Roll(), "bar-roll=0 bar-rise=20")
	require.Zero(t, calctest.Value(still, rollTips))
}

// Turning the bar by a quarter makes its sweep point up, wherever it starts.
func TestRolledByAQuarterTheSweepPointsUp(t *testing.T) {
	require.InDelta(t, 9, RollTips(9, 90), 1e-9)
	require.InDelta(t, -9, RollTips(9, -90), 1e-9)
	require.Zero(t, RollTips(0, 30))
}

// The wrists are bent by what the captions and the published limits say: 21.8° to the
// thumb, 14.5° to the little finger, 32.7° back (Keir 2007), and the
// straight one not at all.
func TestWristsAreBentAsTheySay(t *testing.T) {
	for name, want := range map[string][]float64{"wrists-above": {21.8, -14.5}, "wrists-side": {32.7, -30}} {
		for _, s := range Wrists() {
			if s.Name != name {
				continue
			}
			f := s.Figure([]calculators.Pair{{Key: "hand-length", Typed: "171"}}, nil)
			require.Len(t, f.Frames, 3)
			var bends []float64
			for i, frame := range f.Frames {
				for _, m := range frame.Marks {
					if a, ok := m.(drawing.Angle); ok {
						require.NotZero(t, i, "the straight wrist has no angle")
						bends = append(bends, a.To-a.From)
					}
				}
			}
			require.InDeltaSlice(t, want, bends, 1e-9)
		}
	}
}

// The lever's picture: blade, ruler and clamp stand where the answers say.
func TestTheHandPullsTheLeverWhereItIsSet(t *testing.T) {
	r := calctest.Answer(t, Lever(), "hand-length=179 grip-diameter=33 inseam=830 stature=1740 lever-length=66 "+
		"grip-length=126 grip-x=460 grip-y=728 reach=460 stack=625 head-angle=65.5")
	require.NotNil(t, r.Figure)
	require.Len(t, r.Figure.Frames, 2)
	lengths := map[drawing.Role][]float64{}
	for _, f := range r.Figure.Frames {
		for _, m := range f.Marks {
			if d, ok := m.(drawing.Dimension); ok {
				lengths[d.Role] = append(lengths[d.Role], d.B.Minus(d.A).Length())
			}
		}
	}
	require.InDeltaSlice(
		t,
		[]float64{calctest.Value(r, leverReach), calctest.Value(r, leverInset)},
		lengths[drawing.Hot],
		1e-9,
	)
	require.InDeltaSlice(t, []float64{calctest.Value(r, leverReach) + 33}, lengths[drawing.Ink], 1e-9)
}
