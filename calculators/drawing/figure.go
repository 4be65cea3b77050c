// Package drawing is a figure as data and its one SVG writer. It knows lines,
// limbs, dimensions and labels; it does not know what a bicycle is.
//
// A figure is laid out in mm and written at a fixed size of lettering: letters
// are 20 units high in every figure and a figure is about 640 units wide, so one
// style sheet serves them all, and at the width of a phone letters are still
// 11 pixels high. What things look like is left to the style sheet: the SVG has
// classes only.
package drawing

import (
	"math"

	"plumbline/calculators/words"
)

// Figure is a drawing with a title and a description that states its numbers.
type Figure struct {
	Title, Description words.Text
	// Low and High are the corners of the frame, mm; where both are zero the
	// frame is fitted to the marks. It grows where a label needs room.
	Low, High Point
	// Marks are drawn in order, later ones over earlier ones; labels come last.
	Marks []Mark
	// TextSize is the height of the letters, mm; zero is 1/32 of the width.
	TextSize float64
}

const (
	lettersAcross = 32.0 // a figure's width in heights of its letters
	lettersDown   = 40.0 // the height from which a tall figure gets larger letters
	unitsPerEm    = 20.0 // the height of the letters in the SVG's units
	margin        = 0.4  // round the marks at least, in heights of the letters
)

// Add puts marks on the drawing, over those that are there.
func (f *Figure) Add(marks ...Mark) { f.Marks = append(f.Marks, marks...) }

// SVG writes the figure. Every id in it begins with id, which has to be unique
// in the page; all words are said to r.
func (f *Figure) SVG(id string, r *words.Reader) string { return string(f.AppendSVG(nil, id, r)) }

// AppendSVG appends to b what SVG writes.
func (f *Figure) AppendSVG(b []byte, id string, r *words.Reader) []byte {
	s := &sheet{reader: r}
	frame := f.layOut(s)
	w := writer{b: b, sheet: s, id: id, low: frame.low, high: frame.high, scale: unitsPerEm / s.em}
	return w.figure(f)
}

// layOut draws the marks on the sheet and settles the labels.
func (f *Figure) layOut(s *sheet) bounds {
	fixed := f.Low != f.High && drawable(f.Low, f.High)
	em := f.TextSize
	given := em > 0 && finite(em)
	var content bounds
	if fixed {
		content.add(f.Low)
		content.add(f.High)
	}
	if !given {
		box := content
		if !fixed {
			f.draw(s, 0)
			box = s.extent()
		}
		across, down := box.high.X-box.low.X, box.high.Y-box.low.Y
		em = lettering(max(across/(lettersAcross-2*margin), down/(lettersDown-2*margin), 0.01))
	}
	for round := 0; ; round++ {
		f.draw(s, em)
		frame := content
		if !fixed {
			frame = s.extent()
			frame.addAround(frame.low, margin*em)
			frame.addAround(frame.high, margin*em)
		}
		frame = s.settle(frame)
		across := (frame.high.X - frame.low.X) / em
		if given || round == 1 || across <= lettersAcross+1 {
			if !fixed {
				frame.widen(em)
			}
			return frame
		}
		// Labels made the figure wider: larger letters keep it readable.
		em = lettering(em * min(across/lettersAcross, 1.3))
	}
}

// lettering rounds the height of letters up in steps of some 2 %. Together with
// bounds.widen it makes a figure keep still while somebody tries numbers: what a
// number does not move stays where it was, and so does the page below.
func lettering(em float64) float64 {
	step := 1.0
	for em > 64*step {
		step *= 2
	}
	for em <= 32*step {
		step /= 2
	}
	return math.Ceil(em/step) * step
}

// draw puts the marks on the sheet with letters of the given height.
func (f *Figure) draw(s *sheet, em float64) {
	s.reset(em)
	for _, m := range f.Marks {
		if m != nil {
			m.draw(s)
		}
	}
}
