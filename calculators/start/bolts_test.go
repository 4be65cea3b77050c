package start

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"plumbline/calculators/drawing"
)

// After each bolt comes the one across the middle or the one above, never the neighbour
// beside it; the numbers 1 to 4 stand each at the corner of its bolt.
func TestBoltsAreTurnedInACross(t *testing.T) {
	f := BoltsInACross().Figure(nil, nil)
	require.Len(t, f.Frames, 4)
	var ways []drawing.Point
	numbers := map[string]drawing.Point{}
	for _, m := range f.Frames[0].Marks {
		switch m := m.(type) {
		case drawing.Line:
			if m.Role == drawing.Hot && m.Pen == drawing.Heavy {
				ways = append(ways, m.Points[1].Minus(m.Points[0]))
			}
		case drawing.Label:
			numbers[m.Text.Say(nil)] = drawing.Point{X: math.Copysign(1, m.At.X), Y: math.Copysign(1, m.At.Y)}
		}
	}
	assert.Equal(t, map[string]drawing.Point{"1": {X: -1, Y: 1}, "2": {X: 1, Y: -1}, "3": {X: 1, Y: 1},
		"4": {X: -1, Y: -1}}, numbers)
	require.Len(t, ways, 3)
	assert.True(t, ways[0].X > 0 && ways[0].Y < 0, "across, down")
	assert.True(t, ways[1].X == 0 && ways[1].Y > 0, "straight up")
	assert.True(t, ways[2].X < 0 && ways[2].Y < 0, "across, down")
}

// gaps measures how far the plate's edge stands from the stem's above and below the bar.
func gaps(marks []drawing.Mark) (above, below float64) {
	var edges [2][2]drawing.Point // of stem and plate: upper and lower end of the face
	n := 0
	for _, m := range marks {
		if l, ok := m.(drawing.Line); ok && l.Closed && len(l.Points) > 12 {
			edges[n] = [2]drawing.Point{l.Points[0], l.Points[14]}
			n++
		}
	}
	return edges[0][0].X - edges[1][0].X, edges[0][1].X - edges[1][1].X
}

// Right, both gaps are 4 mm; wrong, the upper one is shut and the lower one twice as wide.
func TestTheGapOfTheFacePlate(t *testing.T) {
	f := BoltsInACross().Figure(nil, nil)
	above, below := gaps(f.Frames[1].Marks)
	assert.InDelta(t, 4, above, 1e-9)
	assert.InDelta(t, 4, below, 1e-9)
	above, below = gaps(f.Frames[2].Marks)
	assert.InDelta(t, 0, above, 0.05)
	assert.InDelta(t, 8, below, 0.05)
}

// Pushed at its left and pulled at its right, a loose bar turns anticlockwise as seen from
// above by nine degrees, as drawn; the wheel does not.
func TestTheBarTurnsTheWayItIsTwisted(t *testing.T) {
	f := TwistTest().Figure(nil, nil)
	require.Len(t, f.Frames, 2)
	for i, turn := range []float64{0, 9} {
		var pushes []drawing.Point
		var bar, wheel float64
		for _, m := range f.Frames[i].Marks {
			switch m := m.(type) {
			case drawing.Line:
				if m.Role == drawing.Hot && m.Pen == drawing.Heavy {
					pushes = append(pushes, m.Points[1].Minus(m.Points[0]))
				}
				if m.Role == drawing.Ink && m.Closed && len(m.Points) == 8 {
					bar = m.Points[6].Minus(m.Points[1]).Angle()
				}
			case drawing.Limb:
				if m.Role == drawing.Ink && m.Ra == 30 {
					wheel = m.B.Minus(m.A).Angle()
				}
			case drawing.Angle:
				assert.Equal(t, "9°", m.Text.Say(nil))
				assert.InDelta(t, turn, m.To-m.From, 1e-9)
			}
		}
		require.Len(t, pushes, 2)
		assert.True(t, pushes[0].Y < 0 && pushes[1].Y > 0)
		assert.InDelta(t, turn, bar, 1e-9)
		assert.InDelta(t, 90, wheel, 1e-9)
	}
}

// Right-hand threads are tightened clockwise (ISO 261 threads, from memory): seen from the
// bolt, each point of the arrow lies further clockwise than the one before.
func TestTheWrenchTightens(t *testing.T) {
	f := BoltsInACross().Figure(nil, nil)
	turned := 0
	for _, m := range f.Frames[3].Marks {
		l, ok := m.(drawing.Line)
		if !ok || l.Role != drawing.Hot || !l.Smooth {
			continue
		}
		for i := 1; i < len(l.Points); i++ {
			a, b := l.Points[i-1].Minus(boltOrder[2]), l.Points[i].Minus(boltOrder[2])
			assert.Negative(t, a.X*b.Y-a.Y*b.X)
			turned++
		}
	}
	assert.Positive(t, turned)
}
