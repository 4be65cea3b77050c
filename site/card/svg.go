package card

import (
	"encoding/xml"
	"errors"
	"fmt"
	"image/color"
	"image/draw"
	"io"
	"slices"
	"strconv"
	"strings"

	"golang.org/x/image/font"
	"golang.org/x/image/font/gofont/gobold"
	"golang.org/x/image/font/gofont/goregular"
)

// letterSize is the height of a drawing's letters in its own units, and widths are those
// of its lines, by their classes (templates/style/figure.css).
const letterSize = 13

var widths = map[string]float64{"heavy": 2.25, "thin": 0.75, "hidden": 0.75, "centre": 0.75, "wide": 1.5}

// painter paints the elements of a drawing onto a picture.
type painter struct {
	Card
	img   draw.Image
	scale float64
	x, y  float64 // where the drawing begins
}

// drawing paints the SVG as large as it fits, in the middle of a box.
func (c Card) drawing(img draw.Image, left, top, width, height float64) error {
	p := &painter{Card: c, img: img}
	d := xml.NewDecoder(strings.NewReader(c.SVG))
	aside := 0 // elements around this one that are not painted: definitions, title, description
	var text *xml.StartElement
	for {
		t, err := d.Token()
		switch {
		case errors.Is(err, io.EOF):
			return nil
		case err != nil:
			return fmt.Errorf("the drawing cannot be read: %w", err)
		}
		switch t := t.(type) {
		case xml.StartElement:
			name := t.Name.Local
			switch {
			case aside > 0 || name == "defs" || name == "title" || name == "desc":
				aside++
			case name == "svg":
				box := strings.Fields(value(t, "viewBox"))
				if len(box) != 4 {
					return errors.New("the drawing has no size")
				}
				w, _ := strconv.ParseFloat(box[2], 64)
				h, _ := strconv.ParseFloat(box[3], 64)
				if w <= 0 || h <= 0 {
					return errors.New("the drawing has no size")
				}
				p.scale = min(width/w, height/h)
				p.x, p.y = left+(width-w*p.scale)/2, top+(height-h*p.scale)/2
			case name == "path" || name == "circle":
				if err := p.shape(t); err != nil {
					return err
				}
			case name == "text":
				one := t.Copy()
				text = &one
			}
		case xml.EndElement:
			if aside > 0 {
				aside--
			}
			text = nil
		case xml.CharData:
			if text != nil && aside == 0 {
				if err := p.text(*text, string(t)); err != nil {
					return err
				}
			}
		}
	}
}

func value(e xml.StartElement, name string) string {
	for _, a := range e.Attr {
		if a.Name.Local == name {
			return a.Value
		}
	}
	return ""
}

// colour is that of an element's role.
func (p *painter) colour(classes []string) color.Color {
	for _, role := range []string{"hot", "body", "soft"} {
		if slices.Contains(classes, role) {
			return p.Colours[role]
		}
	}
	if slices.Contains(classes, "before") {
		return p.Colours["soft"]
	}
	return p.Colours["ink"]
}

// shape paints a path or a circle: first what is within, then its line.
func (p *painter) shape(e xml.StartElement) error {
	outlines, err := courses(e)
	if err != nil {
		return err
	}
	for _, o := range outlines {
		for i := range o {
			o[i] = point{p.x + o[i].x*p.scale, p.y + o[i].y*p.scale}
		}
	}
	classes := strings.Fields(value(e, "class"))
	has := func(class string) bool { return slices.Contains(classes, class) }
	switch {
	case has("sheet"):
		fill(p.img, outlines, p.Colours["paper"])
	case has("wash"), has("hatch"):
		fill(p.img, outlines, p.Colours["wash"])
	case has("solid"):
		fill(p.img, outlines, p.colour(classes))
	}
	if has("nopen") {
		return nil
	}
	width := 1.5
	for class, w := range widths {
		if has(class) {
			width = w
		}
	}
	if has("hidden") || has("centre") {
		outlines = dashed(outlines, 5*p.scale, 3*p.scale)
	}
	stroke(p.img, outlines, max(width*p.scale*0.8, 1), p.colour(classes))
	return nil
}

// text writes a label on a ground of paper, so that lines below it do not cross it.
func (p *painter) text(e xml.StartElement, said string) error {
	classes := strings.Fields(value(e, "class"))
	ttf := goregular.TTF
	if slices.Contains(classes, "hot") || slices.Contains(classes, "caption") {
		ttf = gobold.TTF
	}
	f, err := face(ttf, letterSize*p.scale)
	if err != nil {
		return err
	}
	x, err := strconv.ParseFloat(value(e, "x"), 64)
	if err != nil {
		return fmt.Errorf("a label of the drawing has no place: %w", err)
	}
	y, err := strconv.ParseFloat(value(e, "y"), 64)
	if err != nil {
		return fmt.Errorf("a label of the drawing has no place: %w", err)
	}
	x, y = p.x+x*p.scale, p.y+y*p.scale
	wide := float64(font.MeasureString(f, said)) / 64
	switch {
	case slices.Contains(classes, "start"):
	case slices.Contains(classes, "end"):
		x -= wide
	default:
		x -= wide / 2
	}
	high := letterSize * p.scale
	if !slices.Contains(classes, "caption") {
		left, right, top, foot := x, x+wide, y-high/2, y+high/2
		box := []point{{left, top}, {right, top}, {right, foot}, {left, foot}, {left, top}}
		fill(p.img, [][]point{box}, p.Colours["paper"])
	}
	write(p.img, said, f, p.colour(classes), x, y+high*0.36)
	return nil
}
