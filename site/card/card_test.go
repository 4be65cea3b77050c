package card

import (
	"bytes"
	"image"
	"image/color"
	"image/png"
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

var colours = map[string]color.Color{"paper": color.White, "sheet": color.White, "ink": color.Black,
	"soft": color.Gray{120}, "hot": color.RGBA{200, 0, 0, 255}, "body": color.RGBA{0, 0, 200, 255},
	"wash": color.RGBA{220, 230, 255, 255}}

func painted(t *testing.T, c Card) image.Image {
	t.Helper()
	c.Colours = colours
	b, err := c.PNG()
	require.NoError(t, err)
	img, err := png.Decode(bytes.NewReader(b))
	require.NoError(t, err)
	return img
}

func isAt(t *testing.T, img image.Image, x, y int, want color.Color) {
	t.Helper()
	r, g, b, _ := img.At(x, y).RGBA()
	wr, wg, wb, _ := want.RGBA()
	assert.Equal(t, [3]uint32{wr >> 8, wg >> 8, wb >> 8}, [3]uint32{r >> 8, g >> 8, b >> 8}, "at %d, %d", x, y)
}

// TestShapesStandWhereTheyAre paints a drawing without words, whose unit is then a known
// number of pixels: 1072 by 502 are left of the edges, and 200 by 100 fit at a scale of 5.02.
func TestShapesStandWhereTheyAre(t *testing.T) {
	img := painted(t, Card{SVG: `<svg viewBox="0 0 200 100"><title>x</title>` +
		`<defs><path class="ink solid" d="M0 0L200 0L200 100Z"/></defs>` +
		`<circle class="hot nopen solid" cx="50" cy="50" r="20"/>` +
		`<path class="ink wide" d="M100 10L100 90"/>` +
		`<path class="body nopen wash" d="M120 20L180 20L180 80L120 80Z"/></svg>`})
	left := (Width - 200*5.02) / 2
	at := func(x, y float64) (int, int) { return int(left + x*5.02), int(edge + y*5.02) }
	x, y := at(50, 50)
	isAt(t, img, x, y, colours["hot"])
	x, y = at(50+21, 50)
	isAt(t, img, x, y, colours["paper"])
	x, y = at(100, 50)
	isAt(t, img, x, y, colours["ink"])
	x, y = at(150, 50)
	isAt(t, img, x, y, colours["wash"])
	x, y = at(190, 50)
	isAt(t, img, x, y, colours["paper"]) // what is only defined is not painted
}

// TestArcs compares arcs with the four that SVG 1.1 (8.3.8) shows from one point to another:
// small and large, each way round.
func TestArcs(t *testing.T) {
	for _, c := range []struct {
		d      string
		middle point
	}{
		// A half circle of radius 10 round 10,10: clockwise on the screen it runs over the top.
		{"M0 10A10 10 0 0 1 20 10", point{10, 0}},
		{"M0 10A10 10 0 0 0 20 10", point{10, 20}},
		// A quarter from the left to the top, and the other three quarters.
		{"M0 10A10 10 0 0 1 10 0", point{10 - 10*math.Sqrt2/2, 10 - 10*math.Sqrt2/2}},
		{"M0 10A10 10 0 1 0 10 0", point{10 + 10*math.Sqrt2/2, 10 + 10*math.Sqrt2/2}},
	} {
		list, err := course(c.d)
		require.NoError(t, err)
		near := math.Inf(1)
		for _, p := range list[0] {
			near = min(near, math.Hypot(p.x-c.middle.x, p.y-c.middle.y))
		}
		assert.Less(t, near, 0.7, c.d)
	}
}

// TestCurves: at its middle a cubic is at (a + 3b + 3c + d)/8, and S mirrors the control
// point before it.
func TestCurves(t *testing.T) {
	list, err := course("M0 0C0 8 8 8 8 0S16 -8 16 0")
	require.NoError(t, err)
	assert.Contains(t, list[0], point{4, 6})
	assert.Contains(t, list[0], point{12, -6})
}

func TestWhatCannotBePaintedIsSaid(t *testing.T) {
	for _, svg := range []string{`<svg viewBox="0 0 0 0"></svg>`, `<svg><path d="M0 0"/></svg>`,
		`<svg viewBox="0 0 9 9"><path d="M0 0Q1 1 2 2"/></svg>`, `<svg viewBox="0 0 9 9"><path d="L0 0"/></svg>`,
		`<svg viewBox="0 0 9 9"><path d="M0 x"/></svg>`, `<svg viewBox="0 0 9 9"><circle cx="1"/></svg>`,
		`<svg viewBox="0 0 9 9"><text>a</text></svg>`, `<svg`} {
		_, err := Card{SVG: svg, Colours: colours}.PNG()
		assert.Error(t, err, svg)
	}
}

// TestANameInOtherLettersIsLeftOut: the letters at hand have none for it, and boxes say
// nothing.
func TestANameInOtherLettersIsLeftOut(t *testing.T) {
	assert.True(t, Card{Name: "Zweirad Bäuml & Söhne", Tagline: "Łódź – Ωμέγα – Велосипед"}.canBeWritten())
	assert.False(t, Card{Name: "自転車"}.canBeWritten())
	img := painted(t, Card{Name: "Brook End Bikes", Tagline: "Fitted by hand.", SVG: `<svg viewBox="0 0 9 9"></svg>`})
	dark := 0
	for x := edge; x < edge+column; x++ {
		for y := range Height {
			if r, _, _, _ := img.At(x, y).RGBA(); r < 0x4000 {
				dark++
			}
		}
	}
	assert.Greater(t, dark, 2000, "the name is written")
}

// A path says the same with places as they are and with places seen from the last (SVG 1.1, 8.3.1).
func TestSmallLettersAreSeenFromTheLastPlace(t *testing.T) {
	for large, small := range map[string]string{
		"M10 20L30 20 30 50Z":               "M10 20l20 0 0 30Z",
		"M10 20C11 22 14 25 20 26S30 9 9 8": "M10 20c1 2 4 5 10 6s10-17-11-18",
		"M5 5A10 10 0 0 1 15 15L0 0":        "M5 5a10 10 0 0 1 10 10l-15-15",
	} {
		want, err := course(large)
		require.NoError(t, err)
		got, err := course(small)
		require.NoError(t, err)
		require.Equal(t, want, got, small)
	}
}
