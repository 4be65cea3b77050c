package figure

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"plumbline/calculators/drawing"
	"plumbline/calculators/words"
)

// A plot is a straight map of both axes: corners to corners, middle to middle.
func TestPlotMapsCornersToCorners(t *testing.T) {
	p := Plot{Low: Point{X: 100, Y: -50}, High: Point{X: 500, Y: 150}, From: Point{X: 0, Y: 20}, To: Point{X: 360,
		Y: 120}}
	require.Equal(t, p.Low, p.At(0, 20))
	require.Equal(t, p.High, p.At(360, 120))
	require.Equal(t, Point{X: 300, Y: 50}, p.At(180, 70))
}

// Every tick is said on the sheet, and nothing of a plot without extent is a
// number that is none.
func TestPlotSheetSaysItsTicks(t *testing.T) {
	tick := func(x float64, s words.English) Tick { return Tick{At: x, Text: words.Of(s)} }
	f := &drawing.Figure{Title: words.Of("t"), Description: words.Of("d")}
	p := Plot{High: Point{X: 600, Y: 300}, To: Point{X: 10, Y: 10}}
	f.Add(p.Sheet([]Tick{tick(0, "left"), tick(10, "right")}, []Tick{tick(5, "half")})...)
	f.Add(p.Range(drawing.Ink, 5, 2, 4, 6)...)
	svg := f.SVG("x", nil, 530)
	for _, s := range []string{"left", "right", "half"} {
		require.Contains(t, svg, s)
	}
	f.Add(Plot{}.Sheet([]Tick{tick(1, "a")}, nil)...)
	require.False(t, strings.Contains(f.SVG("x", nil, 530), "NaN"))
}

// The other foot is the first one turned over: the inner joint lies as far on the
// other side of its middle.
func TestTheOtherFootIsTurnedOver(t *testing.T) {
	s := Sole{Length: 260, Inner: 192}
	plan := FootPlan(s)
	cross, ok := Mirrored(plan[len(plan)-1], 100).(drawing.Cross)
	require.True(t, ok)
	require.Equal(t, Point{X: 192, Y: 100 - s.InnerJoint().Y}, cross.At)
}
