package figure

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"plumbline/calculators/drawing"
	"plumbline/calculators/measure"
)

// Each step says what is done, and readers who see no picture are told all of them.
func TestStepsAreSaid(t *testing.T) {
	b := Demo(812, 690)
	stepped := 0
	for _, p := range Plates() {
		if p.Steps == nil {
			continue
		}
		stepped++
		f := p.Draw(b)
		require.Greater(t, len(f.Frames), 1, p.Of.Key)
		for _, frame := range f.Frames {
			assert.NotEmpty(t, frame.Caption.Say(nil), p.Of.Key)
			assert.Contains(t, f.Description.Say(nil), frame.Caption.Say(nil), p.Of.Key)
			assert.Greater(t, len(frame.Marks), 3, "%s: %s", p.Of.Key, frame.Caption.Say(nil))
		}
	}
	require.Equal(t, 7, stepped)
}

// hotEnds are the ends of the heavy hot lines of a frame.
func hotEnds(f drawing.Frame) (ends []Point) {
	for _, m := range f.Marks {
		if l, ok := m.(drawing.Line); ok && l.Role == drawing.Hot && l.Pen == drawing.Heavy {
			ends = append(ends, l.Points...)
		}
	}
	return ends
}

// A bar of 31.8 mm that is rolled by 20 degrees takes its half of the line along by
// 15.9 mm · sin 20° = 5.44 mm, by hand; before, both halves are one line.
func TestTheLineOnTheFaceplateShowsTheRoll(t *testing.T) {
	frames := BarRolled(Demo(812, 690)).Frames
	require.Len(t, frames, 3)
	for i, apart := range map[int]float64{0: 0, 1: 5.44} {
		ends := hotEnds(frames[i])
		require.Len(t, ends, 4)
		assert.InDelta(t, apart, ends[2].Y-ends[0].Y, 0.01, "frame %d", i+1)
	}
}

// The same stem turned over ends as far below the square to the steering axis as it ended
// above it.
func TestAStemTurnedOverIsNegative(t *testing.T) {
	p := plateOf(t, measure.StemAngle)
	up := p.On.Fit(Demo(812, 690))
	down := up
	down.Cockpit.StemAngle = -drawnStemAngle
	above := func(b Build) float64 {
		return barMiddle.At(b).Minus(steererMiddle.At(b)).Angle() - At(b.Bike.AxisAhead()).Angle()
	}
	assert.InDelta(t, 12, above(up), 1e-6)
	assert.InDelta(t, -12, above(down), 1e-6)
}

// The mark of the wrong straightedge is off its edge by more than three readings differ.
func TestTheWrongStraightedgeReadsMore(t *testing.T) {
	frames := plateOf(t, measure.BarSweep).Draw(Demo(812, 690)).Frames
	require.Len(t, frames, 2)
	var edges []float64
	for _, f := range frames {
		for _, m := range f.Marks {
			if l, ok := m.(drawing.Tube); ok && l.B.X-l.A.X == 800 {
				edges = append(edges, l.A.Y+l.Ra)
			}
		}
	}
	require.Len(t, edges, 2)
	assert.Greater(t, math.Abs(edges[0]-edges[1]), 2*measure.BarSweep.Repeat)
}
