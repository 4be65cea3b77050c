package feet

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"plumbline/calculators"
	"plumbline/calculators/drawing"
)

// A right-hand helix along x is (pt, cos t, sin t), the reader looking from where z is
// large: in front, from t = 0 to π, y falls from 1 to −1 while x grows (the definition of a
// right-hand thread, ISO 5408, from memory). A left-hand one is its mirror image.
func TestOnlyTheLeftPedalHasALeftHandThread(t *testing.T) {
	for _, side := range []float64{1, -1} {
		turns := 0
		for _, m := range thread(at(0, 0), side) {
			l, ok := m.(drawing.Line)
			if !ok {
				continue
			}
			turns++
			way := l.Points[1].Minus(l.Points[0])
			assert.Positive(t, way.X)
			assert.Equal(t, side > 0, way.Y < 0, "side %v", side)
		}
		assert.Equal(t, threadTurns, turns)
	}
}

// On both sides the arrow ends nearer the front wheel than it begins, and above the pedal.
func TestBothPedalsTightenTowardsTheFrontWheel(t *testing.T) {
	f := threads(calculators.Values{})
	require.Len(t, f.Frames, 2)
	for i, ahead := range []float64{1, -1} {
		var arrow []drawing.Point
		for _, m := range f.Frames[i].Marks {
			if l, ok := m.(drawing.Line); ok && l.Role == drawing.Hot && l.Pen == drawing.Heavy {
				arrow = l.Points
			}
		}
		require.NotEmpty(t, arrow)
		first, last := arrow[0], arrow[len(arrow)-1]
		assert.Positive(t, ahead*(last.X-first.X))
		assert.Greater(t, min(first.Y, last.Y), 100.0)
	}
}
