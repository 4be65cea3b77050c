package start

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"plumbline/calculators/drawing"
)

// Right, there is room between blade and grip; wrong, the blade's inner face touches it: a
// lever that comes to the grip is no brake (common practice).
func TestTheLeverStopsBeforeTheGrip(t *testing.T) {
	f := LeverStop().Figure(nil, nil)
	require.Len(t, f.Frames, 2)
	for i, room := range []float64{23, 0} {
		var gap float64
		for _, m := range f.Frames[i].Marks {
			if l, ok := m.(drawing.Limb); ok && l.Role == drawing.Hot {
				gap = l.A.X - l.Ra - stopGrip/2
			}
		}
		assert.InDelta(t, room, gap, 1e-9, "frame %d", i+1)
	}
}

// The still says nothing of a reader's own post.
func TestThePostInTheFrameIsNobodysOwn(t *testing.T) {
	f := PostInTheFrame().Figure(nil, nil)
	require.Len(t, f.Frames, 2)
	for _, frame := range f.Frames {
		assert.NotContains(t, frame.Caption.Say(nil), "yours")
	}
	assert.Contains(t, f.Description.Say(nil), "are an example")
}
