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
	for _, m := range append(framed(r), r.Figure.Marks...) {
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
	d.has(t, "rail to top 46 mm", 46)
	d.has(t, "spare 37 mm", 37)
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
			tubes[[2]float64{math.Round(m.A.Y), math.Round(m.B.Y)}] = true
		case drawing.Line:
			if len(m.Points) == 2 { // square across the tube
				require.InDelta(t, m.Points[0].Y, m.Points[1].Y, 1e-9)
				require.InDelta(t, m.Points[0].X, -m.Points[1].X, 1e-9)
				lines[math.Round(m.Points[0].Y)] = true
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

// What belongs to the limit that binds is hot, and nothing else: the room on the roomy
// frame, the depth once there is less of it than of room.
func TestWhatBindsIsHot(t *testing.T) {
	hot := func(typed string) (texts []string) {
		for _, m := range calctest.Answer(t, Dropper(), typed).Figure.Marks {
			switch m := m.(type) {
			case drawing.Dimension:
				if m.Role == drawing.Hot {
					texts = append(texts, strings.Fields(strings.ReplaceAll(m.Text.Say(nil), "\u00a0", " "))[0])
				}
			case drawing.Label:
				if m.Role == drawing.Hot {
					texts = append(texts, m.Text.Say(nil))
				}
			}
		}
		return texts
	}
	require.Equal(t, []string{"collar", "travel", "head", "spare"}, hot(roomyFrame))
	require.Equal(t, []string{"free"}, hot(roomyFrame+" free-depth=230"))
	require.Equal(t, []string{"post’s mark"}, hot(roomyFrame+" insertion-post=180"))
	require.Equal(t, []string{"frame’s minimum"}, hot(roomyFrame+" insertion-frame=180"))
	require.Empty(t, hot("saddle-height=655 seat-tube-length=401 free-depth=255"), "no limit is known")
	// A frame's minimum is drawn where no post is known, a post's mark is not.
	r := calctest.Answer(t, Dropper(), "saddle-height=655 seat-tube-length=401 insertion-post=110 insertion-frame=95")
	svg := r.Figure.SVG("a", nil, 530)
	require.Contains(t, svg, "frame’s minimum")
	require.NotContains(t, svg, "post’s mark")
	require.Contains(t, r.Figure.Description.Say(nil), "not known yet")
	r = calctest.Answer(t, Dropper(), "saddle-height=655 seat-tube-length=401 post-length=470 insertion-post=110")
	require.Contains(t, r.Figure.SVG("a", nil, 530), "post’s mark")
	require.NotContains(t, r.Figure.SVG("a", nil, 530), "frame’s minimum")
	require.Contains(t, r.Figure.Description.Say(nil), "not known yet", "the free depth is missing")
}

func TestTheLegIsDrawnToScale(t *testing.T) {
	d := drawnBy(t, Height(), fiveMethods)
	d.has(t, "723 ± 9 mm", 723.080)
	d.has(t, "885 mm", 885.080)
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

// Both legs are drawn where the independent solve has them, the feet half a turn apart. A
// shank is drawn as an outline that begins and ends beside its upper end, as far to each
// side: the middle is on the line from ankle to knee, not far from the knee.
func TestBothLegsAreDrawn(t *testing.T) {
	var outlines [][]drawing.Point
	for _, m := range calctest.Answer(t, Height(), fiveMethods).Figure.Marks {
		if l, ok := m.(drawing.Line); ok && l.Role == drawing.Body && l.Closed {
			outlines = append(outlines, l.Points)
		}
	}
	for _, crank := range []float64{90 + 74.3, 270 + 74.3} {
		j, ok := fiveLeg.At(723.080, crank)
		require.True(t, ok)
		knee, ankle := drawing.Point{X: real(j.Knee), Y: imag(j.Knee)}, drawing.Point{X: real(j.Ankle),
			Y: imag(j.Ankle)}
		drawn := false
		for _, o := range outlines {
			off := o[0].Plus(o[len(o)-1]).Times(0.5).Minus(knee)
			beside := math.Abs(off.Dot(knee.Minus(ankle).Left().Unit()))
			drawn = drawn || beside < 1e-3 && off.Length() < 100
		}
		require.True(t, drawn, "the knee with the crank at %v", crank)
	}
}

// The knee at the bottom is marked in the plot where the axes have it.
func TestTheKneesPlot(t *testing.T) {
	r := calctest.Answer(t, Knee(), ownLengths)
	var crosses []drawing.Cross
	for _, m := range r.Figure.Frames[1].Marks {
		if c, ok := m.(drawing.Cross); ok && c.Role == drawing.Body {
			crosses = append(crosses, c)
		}
	}
	require.NotEmpty(t, crosses)
	// The plot is 900 wide and 800 high. It shows 0 to 360 degrees of the crank, and 0 to
	// 140 of the knee.
	at := crosses[len(crosses)-1].At
	require.InDelta(t, (90+74.3)/360*900, at.X, 0.01)
	require.InDelta(t, bottomBend(ownLeg, 707)/140*800, at.Y, 0.01)
}

// The reader's own reading stands in the plot with its ±, k = 2: a moving one of 29 ± 3
// as it is, one of 26 ± 4 held still as 31 with 2·5 degrees between riders added (Bini and
// Hume 2016), which is √(4² + 10²) = 10.770. The label
// points at the lower end.
func TestTheOwnReadingInThePlot(t *testing.T) {
	for _, k := range []struct {
		typed, says string
		lower       float64
	}{
		{ownLengths, "the reading, 29°", 29 - 3},
		{fewLengths, "the reading, about 31° moving", 31 - 10.770},
	} {
		var found, low bool
		for _, m := range calctest.Answer(t, Knee(), k.typed).Figure.Frames[1].Marks {
			if l, ok := m.(drawing.Label); ok && l.Text.Say(nil) == k.says {
				found = true
				require.InDelta(t, k.lower/140*800, l.At.Y, 0.01)
			}
			if l, ok := m.(drawing.Line); ok && l.Role == drawing.Ink && len(l.Points) == 2 {
				low = low || math.Abs(k.lower/140*800-l.Points[0].Y) < 0.01
			}
		}
		require.True(t, low, "the lower end of the reading")
		require.True(t, found, k.says)
	}
}

func TestTheSaddlesAreDrawnToScale(t *testing.T) {
	down := unlike.pitch() + unlike.tip(slopeOf(13), usualWeight(unlike)) + slopeOf(13) - 1.7
	angles := []float64{}
	for _, m := range framed(calctest.Answer(t, Tilt(), unlikeWheels)) {
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

// framed returns the marks of all views of a result's figure.
func framed(r *calculators.Result) (marks []drawing.Mark) {
	for _, f := range r.Figure.Frames {
		marks = append(marks, f.Marks...)
	}
	return marks
}

// The ground under the bike on the climb rises as the climb does.
func TestTheClimbIsDrawn(t *testing.T) {
	for _, m := range framed(calctest.Answer(t, Tilt(), unlikeWheels)) {
		if g, ok := m.(drawing.Ground); ok {
			way := g.B.Minus(g.A)
			require.InDelta(t, 0.13, way.Y/way.X, 1e-9)
			return
		}
	}
	require.Fail(t, "no ground")
}

// The saddle is as wide as the answer, on both sides alike, and the bones' centres and
// outer edges are as far apart as was measured: 118 and 151 mm. Where nobody measured
// the centres they are drawn 35 mm nearer together than the edges.
func TestTheBonesOnTheSaddle(t *testing.T) {
	for typed, want := range map[string][3]float64{
		betweenCentres: {141, 118, 151},
		"sit-bone-width=149 sit-bone-read=edges leaning=upright": {159, 114, 149},
	} {
		var widest, narrowest float64
		var bones []drawing.Limb
		for _, m := range calctest.Answer(t, Width(), typed).Figure.Marks {
			switch m := m.(type) {
			case drawing.Line:
				require.Len(t, m.Points, 24)
				for i, p := range m.Points {
					widest, narrowest = max(widest, p.Y), min(narrowest, p.Y)
					other := m.Points[len(m.Points)-1-i] // the same place on the other side
					require.InDelta(t, p.X, other.X, 1e-9)
					require.InDelta(t, -p.Y, other.Y, 1e-9)
				}
			case drawing.Limb:
				bones = append(bones, m)
			}
		}
		require.InDelta(t, want[0], 2*widest, 1e-9)
		require.InDelta(t, want[0], -2*narrowest, 1e-9)
		require.Len(t, bones, 2)
		for i, side := range []float64{-1, 1} {
			require.InDelta(t, want[1], 2*side*bones[i].A.Y, 1e-9)
			require.InDelta(t, want[2], 2*(side*bones[i].A.Y+bones[i].Ra), 1e-9)
		}
	}
}
