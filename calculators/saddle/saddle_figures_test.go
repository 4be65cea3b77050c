package saddle

import (
	"testing"

	"github.com/stretchr/testify/require"

	"plumbline/calculators"
	"plumbline/calculators/calctest"
	"plumbline/calculators/drawing"
)

// Right is inside the marks with the whole clamp, wrong is not, and ends on the bend.
func TestTheClampIsDrawnInsideAndOutsideTheMarks(t *testing.T) {
	f := RailsAndClamp().Figure(nil, nil)
	require.Len(t, f.Frames, 2)
	for i, frame := range f.Frames {
		var clamp drawing.Tube
		var marks []float64
		for _, m := range frame.Marks {
			switch m := m.(type) {
			case drawing.Tube:
				if m.A.Y == m.B.Y {
					clamp = m
				}
			case drawing.Line:
				if m.Role == drawing.Hot && len(m.Points) == 2 {
					marks = append(marks, m.Points[0].X)
				}
			}
		}
		require.Len(t, marks, 2)
		require.Equal(t, i == 0, clamp.A.X >= marks[0] && clamp.B.X <= marks[1])
		require.Equal(t, i == 1, clamp.B.X > railAhead)
	}
}

// The bolt that is tightened stands at the end that goes down: in front where the nose
// does (levers: a tightened bolt gets shorter).
func TestTheTightenedBoltPullsItsEndDown(t *testing.T) {
	for i, front := range []string{"tighten", "slacken"} {
		for _, m := range TwoBolts().Figure(nil, nil).Frames[i].Marks {
			if l, ok := m.(drawing.Label); ok && l.At.X > 0 {
				require.Equal(t, front, l.Text.Say(nil))
			}
		}
	}
	var clamp drawing.Tube
	for _, m := range boltsBelow(bent) {
		if c, ok := m.(drawing.Tube); ok && c.Ra == 10 {
			clamp = c
		}
	}
	require.Less(t, clamp.B.Y, clamp.A.Y, "the front is lower where the nose is down")
}

// The bones and the saddles are as far across as they say; upright the right width is that of Lin and others
// 2023, 10 mm beyond the outer edges: 121 + 35 = 156 between those, 166. Leaning, the saddle is as wide as they
// are apart, as the calculator has it.
func TestSitBonesOnThreeWidths(t *testing.T) {
	for leaning, right := range map[string]float64{"upright": 166, "leaning": 156, "": 156} {
		f := BonesOnSaddles().Figure([]calculators.Pair{{Key: "sit-bone-width", Typed: "121"},
			{Key: "sit-bone-read", Typed: "centres"}, {Key: "leaning", Typed: leaning}}, nil)
		require.Len(t, f.Frames, 3)
		for i, width := range []float64{right - 45, right, right + 45} {
			for _, m := range f.Frames[i].Marks {
				if d, ok := m.(drawing.Dimension); ok {
					want := 156.0
					if d.Role == drawing.Hot {
						want = width
					}
					require.InDelta(t, want, d.B.X-d.A.X, 1e-9, leaning)
				}
			}
		}
	}
}

// The thread's words say on which side of the spindle the knee is.
func TestTheKneesThreadSaysWhichSide(t *testing.T) {
	for typed, said := range map[string]string{"": "behind the spindle",
		" cleat-behind-ball=60": "ahead of the spindle"} {
		r := calctest.Answer(t, Setback(), onTheChart+typed)
		require.Contains(t, r.Figure.SVG("a", nil, 930), said)
	}
}
