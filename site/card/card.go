// Package card paints the picture that others show beside a link to the guide (Open Graph):
// its name, its tagline and one of its own drawings.
//
// The drawing is the SVG that package drawing writes, which has paths of five letters,
// circles, letters and one hatching. Painting that needs no library for SVG as a whole.
package card

import (
	"bytes"
	"image"
	"image/color"
	"image/draw"
	"image/png"
	"strings"

	"golang.org/x/image/font"
	"golang.org/x/image/font/gofont/gobold"
	"golang.org/x/image/font/gofont/goregular"
	"golang.org/x/image/font/opentype"
	"golang.org/x/image/math/fixed"
)

// Width and Height are those that the sites which show such pictures ask for.
const (
	Width  = 1200
	Height = 630
)

const (
	edge   = 64  // round everything
	column = 430 // of the words, wide
	gap    = 40  // between words and drawing
)

// Card is what is on the picture.
type Card struct {
	Name, Tagline string
	SVG           string                 // the drawing, as package drawing writes it
	Colours       map[string]color.Color // by the names of the style sheet: paper, sheet, ink, soft, hot, body, wash
}

// PNG paints the card.
func (c Card) PNG() ([]byte, error) {
	img := image.NewRGBA(image.Rect(0, 0, Width, Height))
	draw.Draw(img, img.Bounds(), image.NewUniform(c.Colours["paper"]), image.Point{}, draw.Src)
	left := float64(edge)
	if c.canBeWritten() {
		if err := c.words(img); err != nil {
			return nil, err
		}
		left += column + gap
	}
	if err := c.drawing(img, left, edge, Width-edge-left, Height-2*edge); err != nil {
		return nil, err
	}
	var b bytes.Buffer
	err := (&png.Encoder{CompressionLevel: png.BestCompression}).Encode(&b, img)
	return b.Bytes(), err
}

// canBeWritten tells whether the letters at hand have all that the words need: they know
// Latin, Greek and Cyrillic. Words with other letters are left out, as the page itself has
// them beside the picture.
func (c Card) canBeWritten() bool {
	f, err := opentype.Parse(goregular.TTF)
	if err != nil {
		return false
	}
	for _, r := range c.Name + c.Tagline {
		if i, err := f.GlyphIndex(nil, r); err != nil || i == 0 {
			return false
		}
	}
	return strings.TrimSpace(c.Name) != ""
}

// face returns letters of a size in pixels.
func face(ttf []byte, size float64) (font.Face, error) {
	f, err := opentype.Parse(ttf)
	if err != nil {
		return nil, err
	}
	return opentype.NewFace(f, &opentype.FaceOptions{Size: size, DPI: 72, Hinting: font.HintingNone})
}

// words writes name and tagline, the name in the largest letters in which its longest
// word fits and it takes four lines at most.
func (c Card) words(img draw.Image) error {
	var name []string
	var bold font.Face
	size := 60.0
	for ; ; size -= 4 {
		var err error
		if bold, err = face(gobold.TTF, size); err != nil {
			return err
		}
		var fits bool
		if name, fits = lines(c.Name, bold, column); fits && len(name) <= 4 || size < 20 {
			break
		}
	}
	regular, err := face(goregular.TTF, 27)
	if err != nil {
		return err
	}
	tagline, _ := lines(c.Tagline, regular, column)
	tagline = tagline[:min(len(tagline), 5)]
	y := (Height - float64(len(name))*size*1.15 - float64(len(tagline))*36 - 44) / 2
	for _, line := range name {
		y += size * 1.15
		write(img, line, bold, c.Colours["ink"], edge, y-size*0.2)
	}
	y += 22
	draw.Draw(img, image.Rect(edge, int(y), edge+96, int(y)+6), image.NewUniform(c.Colours["hot"]), image.Point{},
		draw.Src)
	y += 22
	for _, line := range tagline {
		y += 36
		write(img, line, regular, c.Colours["soft"], edge, y-8)
	}
	return nil
}

// lines breaks a text; fits is false where a word is wider than a line.
func lines(text string, f font.Face, wide int) (list []string, fits bool) {
	fits = true
	for word := range strings.FieldsSeq(text) {
		if font.MeasureString(f, word).Ceil() > wide {
			fits = false
		}
		if n := len(list); n > 0 && font.MeasureString(f, list[n-1]+" "+word).Ceil() <= wide {
			list[n-1] += " " + word
		} else {
			list = append(list, word)
		}
	}
	return list, fits
}

// write writes a line that begins at x; y is its base line.
func write(img draw.Image, text string, f font.Face, c color.Color, x, y float64) {
	d := font.Drawer{Dst: img, Src: image.NewUniform(c), Face: f,
		Dot: fixed.Point26_6{X: fixed.Int26_6(x * 64), Y: fixed.Int26_6(y * 64)}}
	d.DrawString(text)
}
