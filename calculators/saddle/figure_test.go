package saddle

import (
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"plumbline/calculators"
	"plumbline/calculators/calctest"
	"plumbline/calculators/drawing"
)

// drawn is what a figure's dimension lines and angles are as drawn, by what they say:
// mm and degrees. A figure is to scale, so it has to be what is said.
type drawn map[string]float64

func drawnBy(t *testing.T, c *calculators.Calculator, typed string) drawn {
	t.Helper()
	lengths := drawn{}
	r := calctest.Answer(t, c, typed)
	for _, m := range r.Figure.Marks {
		switch m := m.(type) {
		case drawing.Dimension:
			way := m.B.Minus(m.A)
			length := way.Length()
			if along := m.Along.Length(); along > 0 {
				length = math.Abs(way.Dot(m.Along)) / along
			}
			lengths[m.Text.Say(nil)] = length
		case drawing.Angle:
			lengths[m.Text.Say(nil)] = m.To - m.From
		}
	}
	return lengths
}

// has wants a line or an angle that says a text to be drawn with a size.
func (d drawn) has(t *testing.T, says string, size float64) {
	t.Helper()
	says = strings.ReplaceAll(says, " ", "\u00a0")
	for text, got := range d {
		if strings.ReplaceAll(text, " ", "\u00a0") == says {
			require.InDelta(t, size, got, 0.01, says)
			return
		}
	}
	require.Fail(t, "not drawn", "%q in %v", says, d)
}

// The lengths are those of the hand calculation in dropper_cases_test.go; 37 mm of room
// are left below the collar.
func TestThePostIsDrawnToScale(t *testing.T) {
	d := drawnBy(t, Dropper(), roomyFrame)
	d.has(t, "saddle 738 mm", 738)
	d.has(t, "seat tube 417 mm", 417)
	d.has(t, "free 262 mm", 262)
	d.has(t, "collar 29 mm", 29)
	d.has(t, "travel 185 mm", 185)
	d.has(t, "head 24 mm", 24)
	d.has(t, "46 mm", 46)
	d.has(t, "37 mm", 37)
	d.has(t, "inside 188 mm", 188)
	// On the tight frame the post stands on its collar, and the saddle 50 mm too high.
	d = drawnBy(t, Dropper(), tightFrame)
	d.has(t, "saddle 750 mm", 750)
	d.has(t, "travel 210 mm", 210)
	d.has(t, "inside 247 mm", 247)
	// With no post on the bench, the longest that fits: 655 − 401 − 48 − 28 − 26.
	d = drawnBy(t, Dropper(), "saddle-height=655 seat-tube-length=401")
	d.has(t, "saddle 655 mm", 655)
	d.has(t, "travel 152 mm", 152)
}

// The post's parts meet: its ends, from the obstacle's side, for the roomy frame. The
// actuator's end is 222 below the edge, the outer tube's 188, and the post's mark 112
// above that; the frame's minimum is 97 below the edge.
func TestThePartsOfThePostMeet(t *testing.T) {
	tubes := map[[2]float64]bool{}
	lines := map[float64]bool{}
	for _, m := range calctest.Answer(t, Dropper(), roomyFrame).Figure.Marks {
		switch m := m.(type) {
		case drawing.Tube:
			tubes[[2]float64{math.Round(m.A.X), math.Round(m.B.X)}] = true
		case drawing.Line:
			if len(m.Points) == 2 {
				lines[math.Round(m.Points[0].X)] = true
			}
		}
	}
	for _, ends := range [][2]float64{{-417, 0}, {-222, -188}, {-188, 66}, {37, 66}, {66, 251}, {251, 275}} {
		require.True(t, tubes[ends], "%v in %v", ends, tubes)
	}
	for _, x := range []float64{-262, 112 - 188, -97} {
		require.True(t, lines[x], "%v in %v", x, lines)
	}
}

func TestTheLegIsDrawnToScale(t *testing.T) {
	d := drawnBy(t, Height(), fiveMethods)
	d.has(t, "723 ± 9 mm", 723.080)
	d.has(t, "885", 885.080)
	bend := bottomBend(fiveLeg, 723.080)
	angles := 0
	for _, m := range calctest.Answer(t, Height(), fiveMethods).Figure.Marks {
		if a, ok := m.(drawing.Angle); ok {
			angles++
			require.InDelta(t, bend, math.Abs(a.To-a.From), 1e-6)
		}
	}
	require.Equal(t, 1, angles)
	d = drawnBy(t, Knee(), ownLengths)
	d.has(t, "707 ± 4 mm", 707)

	back := chartLine.setback()
	for text, size := range drawnBy(t, Setback(), onTheChart) {
		switch {
		case strings.Contains(text, "±"):
			require.InDelta(t, back, size, 1e-6)
		case strings.Contains(text, "mm"):
			require.InDelta(t, math.Abs(kneeAheadOf(chartLeg, 741, back)), size, 1e-6)
		}
	}
}

// The knee at the bottom is marked in the plot where the axes have it.
func TestTheKneesPlot(t *testing.T) {
	r := calctest.Answer(t, Knee(), ownLengths)
	var crosses []drawing.Cross
	for _, m := range r.Figure.Marks {
		if c, ok := m.(drawing.Cross); ok && c.Role == drawing.Body {
			crosses = append(crosses, c)
		}
	}
	require.NotEmpty(t, crosses)
	// The plot begins 430 mm ahead of the bottom bracket and is 1.25 times as wide as
	// high: from one crank below it to the saddle height. It shows 0 to 360 degrees of
	// the crank, and 0 to 140 of the knee.
	high := 707.0 + 162
	at := crosses[len(crosses)-1].At
	require.InDelta(t, 430+(90+74.3)/360*1.25*high, at.X, 0.01)
	require.InDelta(t, -162+bottomBend(ownLeg, 707)/140*high, at.Y, 0.01)
}

func TestTheSaddlesAreDrawnToScale(t *testing.T) {
	down := unlike.pitch() + slopeOf(13) - 1.7
	angles := []float64{}
	for _, m := range calctest.Answer(t, Tilt(), unlikeWheels).Figure.Marks {
		if a, ok := m.(drawing.Angle); ok {
			angles = append(angles, a.To-a.From)
		}
	}
	require.InDeltaSlice(t, []float64{-1.7, down}, angles, 1e-6)

	d := drawnBy(t, Width(), betweenCentres)
	d.has(t, "141 ± 10 mm", 141)
	d.has(t, "edges 151 mm", 151)
	d.has(t, "centres 118 mm", 118)
}
