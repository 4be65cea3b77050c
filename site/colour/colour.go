// Package colour computes the contrast of two colours as WCAG 2.2 defines it, and finds
// the nearest colour that has enough of it.
package colour

import (
	"fmt"
	"math"
	"strings"

	"github.com/lucasb-eyer/go-colorful"
)

// Text is the contrast that text needs: WCAG 2.2, success criterion 1.4.3, level AA.
const Text = 4.5

// Colour is an opaque sRGB colour.
type Colour struct{ c colorful.Color }

// Parse reads a colour as style sheets write it: # and three or six hexadecimal digits.
func Parse(s string) (Colour, error) {
	h := strings.ToLower(strings.TrimSpace(s))
	if len(h) != 4 && len(h) != 7 || h[0] != '#' || strings.Trim(h[1:], "0123456789abcdef") != "" {
		return Colour{}, fmt.Errorf("“%s” is no colour", s)
	}
	c, err := colorful.Hex(h)
	return Colour{c}, err
}

// String is the colour as a style sheet writes it.
func (c Colour) String() string { return c.c.Hex() }

// Luminance is the relative luminance (WCAG 2.2, “relative luminance”): 0 for black, 1
// for white.
func (c Colour) Luminance() float64 {
	r, g, b := c.c.LinearRgb()
	return 0.2126*r + 0.7152*g + 0.0722*b
}

// Contrast is the contrast ratio of two colours (WCAG 2.2, “contrast ratio”), from 1 to 21.
func Contrast(a, b Colour) float64 {
	x, y := a.Luminance(), b.Luminance()
	return (max(x, y) + 0.05) / (min(x, y) + 0.05)
}

// Tinted is a ground with a little of a colour in it, from 0 for none to 1.
func Tinted(ground, with Colour, share float64) Colour {
	return rounded(ground.c.BlendOkLab(with.c, share))
}

// Nearest returns the colour that passes and differs least in lightness from c. It keeps
// the hue, and as much of the strength as the screen can show. ok is false where no
// lightness passes.
func (c Colour) Nearest(passes func(Colour) bool) (near Colour, ok bool) {
	if passes(c) {
		return c, true
	}
	const step = 0.004 // finer than one of the 256 steps of a grey
	l, strength, hue := c.c.OkLch()
	for away := step; away <= 1; away += step {
		for _, to := range []float64{l - away, l + away} {
			if to < 0 || to > 1 {
				continue
			}
			if near = shown(to, strength, hue); passes(near) {
				return near, true
			}
		}
	}
	return Colour{}, false
}

// shown is a colour of that lightness and hue, paler where the screen cannot show it.
func shown(l, strength, hue float64) Colour {
	for !colorful.OkLch(l, strength, hue).IsValid() && strength > 0.001 {
		strength *= 0.97
	}
	return rounded(colorful.OkLch(l, strength, hue))
}

// rounded is a colour as it is written in a style sheet: what is checked is what is shown.
func rounded(c colorful.Color) Colour {
	c = c.Clamped()
	step := func(x float64) float64 { return math.Round(x*255) / 255 }
	return Colour{colorful.Color{R: step(c.R), G: step(c.G), B: step(c.B)}}
}

// RGBA is the colour as package image wants it.
func (c Colour) RGBA() (r, g, b, a uint32) { return c.c.RGBA() }
