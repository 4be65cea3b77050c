package colour

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

func parsed(t testing.TB, s string) Colour {
	t.Helper()
	c, err := Parse(s)
	require.NoError(t, err)
	return c
}

// TestContrastIsThatOfTheStandard compares with values that are published. W3C, WCAG 2.2:
// 21 is the contrast of black and white. W3C, Understanding 1.4.3: #777777 on white has
// 4.48 and fails, #767676 is the grey that just passes (4.54). W3C, technique G18 in its
// formula; the ratios of pure red (3.998), green (1.372) and blue (8.592) on white follow
// from its three factors alone: 1.05/(0.2126+0.05), 1.05/(0.7152+0.05), 1.05/(0.0722+0.05).
func TestContrastIsThatOfTheStandard(t *testing.T) {
	white := parsed(t, "#ffffff")
	for text, want := range map[string]float64{
		"#000000": 21, "#777777": 4.48, "#767676": 4.54, "#fff": 1,
		"#ff0000": 1.05 / 0.2626, "#00ff00": 1.05 / 0.7652, "#0000ff": 1.05 / 0.1222,
	} {
		assert.InDelta(t, want, Contrast(parsed(t, text), white), 0.005, text)
		assert.InDelta(t, want, Contrast(white, parsed(t, text)), 0.005, text)
	}
}

func TestWhatIsNoColour(t *testing.T) {
	for _, s := range []string{"", "red", "#12", "#12345", "#1234567", "123456", "#12345g", "rgb(1,2,3)"} {
		_, err := Parse(s)
		assert.Error(t, err, s)
	}
	assert.Equal(t, "#aabbcc", parsed(t, " #ABC ").String())
}

// TestTheNearestColourPassesAndKeepsItsHue tries any colour on any ground. Black or
// white passes on every ground (W3C, Understanding 1.4.3), so there is always one.
func TestTheNearestColourPassesAndKeepsItsHue(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		any := func(name string) Colour {
			b := rapid.SliceOfN(rapid.Float64Range(0, 1), 3, 3).Draw(t, name)
			var c Colour
			c.c.R, c.c.G, c.c.B = b[0], b[1], b[2]
			return rounded(c.c)
		}
		c, ground := any("colour"), any("ground")
		passes := func(c Colour) bool { return Contrast(c, ground) >= Text }
		near, ok := c.Nearest(passes)
		require.True(t, ok)
		require.True(t, passes(near))
		read, err := Parse(near.String())
		require.NoError(t, err)
		require.InDelta(t, Contrast(near, ground), Contrast(read, ground), 1e-9, "what is written is what was checked")
		l, strength, hue := near.c.OkLch()
		_, was, before := c.c.OkLch()
		if was > 0.08 && strength > 0.08 && l > 0.2 {
			turn := math.Abs(math.Mod(hue-before+540, 360) - 180)
			require.Less(t, turn, 8.0)
		}
	})
}

// TestTheNearestColourIsNotFurtherThanNeeded: a grey that fails by a hair moves by a hair.
func TestTheNearestColourIsNotFurtherThanNeeded(t *testing.T) {
	white := parsed(t, "#ffffff")
	near, ok := parsed(t, "#777777").Nearest(func(c Colour) bool { return Contrast(c, white) >= Text })
	require.True(t, ok)
	assert.Contains(t, []string{"#767676", "#757575"}, near.String())
	_, ok = parsed(t, "#777777").Nearest(func(Colour) bool { return false })
	assert.False(t, ok)
}
