package cockpit

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"plumbline/calculators"
	"plumbline/calculators/calctest"
	"plumbline/calculators/drawing"
	"plumbline/calculators/figure"
)

// Saddle and grips of both bikes coincide, and the frames do not: the scenario's reach 460
// and 475, head angles 65.5 and 64.5.
func TestTwoPointsCoincideOnTwoBikes(t *testing.T) {
	before, after, off := twoBikes()
	require.InDelta(t, 0, after.SaddleTop().Minus(before.SaddleTop()).Length(), 1e-9)
	require.InDelta(t, off, after.Grip().Minus(before.Grip()).Length(), 1e-6)
	require.Less(t, off, 5.0, "within what parts on sale can do")
	require.InDelta(t, -172, before.SaddleTop().X, 1e-9)
	require.InDelta(t, 460, before.Bike.HeadTop.X, 1e-9)
	require.InDelta(t, 475, after.Bike.HeadTop.X, 1e-9)
	require.Greater(t, figure.At(after.Bike.Front).Minus(figure.At(before.Bike.Front)).Length(), 10.0)
	f := TwoPoints().Figure(nil, nil)
	for _, m := range f.Marks {
		if c, ok := m.(drawing.Circle); ok && c.Role == drawing.Hot {
			near := math.Min(c.Centre.Minus(before.SaddleTop()).Length(), c.Centre.Minus(before.Grip()).Length())
			require.InDelta(t, 0, near, 1e-9)
		}
	}
}

// From the top: cap and bolt, then the parts with nothing between them, the steerer 3 mm
// below the top of the uppermost spacer; 5 + 40 + 5 + 10 + 10 = 70 mm of them.
func TestTheStackIsWhole(t *testing.T) {
	f := StackOrder().Figure(nil, nil)
	require.Len(t, f.Frames, 2)
	var top float64
	steerer := math.NaN()
	for _, m := range f.Frames[1].Marks {
		switch m := m.(type) {
		case drawing.Tube:
			if m.Ra >= halfRing && m.Ra == m.Rb {
				top = math.Max(top, m.B.Y)
			}
		case drawing.Line:
			if m.Pen == drawing.Heavy {
				steerer = m.Points[1].Y
			}
		}
	}
	require.InDelta(t, 70, top, 1e-9)
	require.InDelta(t, 67, steerer, 1e-9)
}

// Elbows bend as far as the picture says, and the arms keep their length, bent or locked.
func TestElbowsFromAboveBendAsTheySay(t *testing.T) {
	f := Elbows().Figure([]calculators.Pair{{Key: "bar-width", Typed: "790"}}, nil)
	for i, want := range []float64{60, 2} {
		for _, m := range f.Frames[i].Marks {
			l, ok := m.(drawing.Line)
			if !ok || l.Pen != drawing.Centre {
				continue
			}
			upper, fore := l.Points[1].Minus(l.Points[0]), l.Points[2].Minus(l.Points[1])
			require.InDelta(t, want, math.Acos(upper.Unit().Dot(fore.Unit()))*180/math.Pi, 1e-6)
			require.InDelta(t, 610, upper.Length()+fore.Length(), 1e-6)
			require.InDelta(t, (790-130)/2, math.Abs(l.Points[2].X), 1e-6, "the middle of the grip")
			if i == 0 {
				require.Greater(t, math.Abs(l.Points[1].X), math.Abs(l.Points[2].X), "the elbow points outwards")
			}
		}
	}
}

// Grip and lever move in together, the bar stays.
func TestControlsMoveInByWhatIsSaid(t *testing.T) {
	f := ControlsIn().Figure(nil, nil)
	for i, in := range []float64{0, 5, 10} {
		for _, m := range f.Frames[i].Marks {
			if tube, ok := m.(drawing.Tube); ok && tube.Role == drawing.Hot {
				require.InDelta(t, -in, tube.B.X, 1e-9)
			}
			if d, ok := m.(drawing.Dimension); ok {
				require.InDelta(t, in, d.B.X-d.A.X, 1e-9)
			}
		}
	}
}

// Each arrow of the detail ends where the table's step puts the grips.
func TestStepsAreDrawnAsFarAsTheyGo(t *testing.T) {
	r := calctest.Answer(t, Grip(), "reach=451 stack=617 head-angle=64.7 spacers=17 stem-length=47 stem-angle=-4 "+
		"bar-rise=27 bar-sweep=36")
	require.Len(t, r.Figure.Details, 1)
	ways := map[string]drawing.Point{}
	labels := []string{}
	var arrows []drawing.Point
	for _, m := range r.Figure.Details[0].Marks {
		switch m := m.(type) {
		case drawing.Line:
			arrows = append(arrows, m.Points[1].Minus(m.Points[0]))
		case drawing.Label:
			labels = append(labels, m.Text.Say(nil))
		}
	}
	for i, l := range labels {
		ways[l] = arrows[i]
	}
	// A rise of 10 mm lifts the grips by 10, a sweep of 10 takes them back by 10.
	require.InDelta(t, 10, ways["Bar rise"].Y, 1e-9)
	require.InDelta(t, -10, ways["Bar sweep"].X, 1e-9)
	require.InDelta(t, calctest.Value(r, gripSpacer.ahead), ways["Spacers"].X, 1e-9)
	require.InDelta(t, calctest.Value(r, gripSpacer.up), ways["Spacers"].Y, 1e-9)
	require.InDelta(t, calctest.Value(r, gripStem.ahead), ways["Stem"].X, 1e-9)
}
