package figure

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"plumbline/calculators/drawing"
	"plumbline/calculators/measure"
)

// A hand's fingertips lie on both ends of a tape, whichever way the tape runs: within the
// thickness of two fingers, 20 mm (common practice: the hand is drawn, never measured).
func TestHandsHoldTheEnds(t *testing.T) {
	b := Demo(812, 690)
	held := 0
	for _, p := range Plates() {
		if !p.On.Held || p.Spans[0].Way == Tilt {
			continue
		}
		held++
		s := p.span()
		marks := p.held(b)
		for i, end := range [2]Point{s.From.At(b), s.To.At(b)} {
			switch {
			case i == 1 && s.Way == LevelWay:
				end.Y = s.From.At(b).Y
			case i == 1 && s.Way == UprightWay:
				end.X = s.From.At(b).X
			}
			nearest := 1e9
			for _, m := range marks {
				if l, ok := m.(drawing.Limb); ok && l.Role == drawing.Body {
					nearest = min(nearest, l.B.Minus(end).Length())
				}
			}
			assert.Less(t, nearest, 20.0, "%s, end %d", p.Of.Key, i)
		}
	}
	require.Greater(t, held, 20)
}

// The wrong way is another way: its tape is longer or shorter than the right one by more
// than three readings of one length differ.
func TestAWrongWayReadsSomethingElse(t *testing.T) {
	b := Demo(812, 690)
	wrong := 0
	for _, p := range Plates() {
		w := p.Wrong
		if w == nil {
			continue
		}
		wrong++
		length := func(list []Spot) (sum float64) {
			for i := range len(list) - 1 {
				sum += list[i+1].At(b).Minus(list[i].At(b)).Length()
			}
			return sum
		}
		s := p.Spans[0]
		right := s.To.At(b).Minus(s.From.At(b))
		ought := right.Length()
		switch {
		case w.On != nil:
			ought = length(w.Well)
		case s.Way == LevelWay:
			ought = max(right.X, -right.X)
		case s.Way == UprightWay:
			ought = max(right.Y, -right.Y)
		}
		assert.Greater(t, max(length(w.Tape)-ought, ought-length(w.Tape)), p.Of.Repeat, p.Of.Key)
		assert.Len(t, p.Draw(b).Frames, 2+btoi(w.On != nil), p.Of.Key)
	}
	require.Greater(t, wrong, 6)
	// A tape to the front of the grip and one to its back differ by the grip, 34 mm as drawn.
	p := plateOf(t, measure.LeverReach)
	tape := p.Wrong.Tape
	assert.InDelta(t, 34, tape[1].At(b).Y-tape[0].At(b).Y-57, 1e-9)
}

func btoi(b bool) int {
	if b {
		return 1
	}
	return 0
}

// A ruler's scale begins at the length's beginning and has a stroke for each centimetre.
func TestARulersScale(t *testing.T) {
	marks := Ruler(Point{X: 3, Y: 7}, Point{X: 103, Y: 7}, -1)
	body := marks[0].(drawing.Line)
	assert.Equal(t, Point{X: 3, Y: 7}, body.Points[0])
	assert.InDelta(t, -15, body.Points[3].Y, 1e-9)
	for i := 1; i <= 10; i++ {
		assert.InDelta(t, 3+10*float64(i), marks[i].(drawing.Line).Points[0].X, 1e-9)
	}
}
