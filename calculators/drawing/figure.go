// Package drawing is a figure as data, its label placement and its one SVG writer.
// It knows lines, limbs, dimensions and labels; it does not know what a bicycle is.
//
// Marks are given in mm. How wide the picture will stand is told to SVG: one unit of
// the SVG is one pixel at that width, letters have their fixed height in pixels, and
// the marks are scaled to the room that the labels leave. So a phone gets its own
// drawing and not a small copy of a large one. What things look like is left to the
// style sheet: the SVG has classes only.
package drawing

import "plumbline/calculators/words"

// Figure is a drawing with a title and a description that states its numbers. It is
// one view, its Marks, or several views beside or below one another, its Frames.
type Figure struct {
	Title, Description words.Text
	// Low and High are the corners of what has to be in the picture, mm; where both
	// are zero, that is all marks. The picture grows where a label needs room.
	Low, High Point
	// Marks are drawn in order, later ones over earlier ones; labels come last.
	Marks []Mark
	// Details are circles of this view, drawn larger beside it.
	Details []Detail
	// Frames take the place of Marks where there are several views.
	Frames []Frame
	// Least is the width, in heights of letters, below which a frame is not set
	// beside another but below it; zero is 12.5, some 160 pixels. Of three frames there are
	// never two beside one another and one below.
	Least float64
	// Apart draws each frame as large as it can be, where frames have nothing to do
	// with each other's size. Otherwise all have the scale of the smallest.
	Apart bool
	// Upright is for a subject that is taller than wide: it may take a picture half
	// as high again.
	Upright bool
	// Highest is the most that a frame may be high, in heights of letters, where several
	// rows have to be seen in one window; zero leaves it to the width.
	Highest float64
	// Lay returns the marks of a figure that is mostly words, which have to be laid out
	// anew for each width. Their unit is then the height of the letters, and across is
	// how many of them the picture is wide. It takes the place of Marks.
	Lay func(across float64) []Mark
}

// Frame is one view of several: a state, a step, a wrong way beside the right one.
type Frame struct {
	Caption   words.Text // below the view
	Low, High Point      // as in Figure
	Marks     []Mark
	Details   []Detail // circles of this view, drawn larger below it
	Broad     bool     // has a row of its own, as wide as the picture
}

// Add puts marks on the drawing, over those that are there.
func (f *Figure) Add(marks ...Mark) { f.Marks = append(f.Marks, marks...) }

// Frame adds a view with its caption. Once there is one, Marks are not drawn.
func (f *Figure) Frame(caption words.Text, marks ...Mark) {
	f.Frames = append(f.Frames, Frame{Caption: caption, Marks: marks})
}

// SVG writes the figure for a place of the given width in pixels, or for Anywhere or a
// Small place. Every id in it begins with id, which has to be unique in the page; all
// words are said to r.
func (f *Figure) SVG(id string, r *words.Reader, width float64) string {
	return string(f.AppendSVG(nil, id, r, width))
}

// AppendSVG appends to b what SVG writes.
func (f *Figure) AppendSVG(b []byte, id string, r *words.Reader, width float64) []byte {
	if width > 0 && finite(width) {
		w := writer{b: b, id: id, reader: r}
		return w.figure(f, min(max(width, leastWidth), mostWidth))
	}
	w := writer{b: b, id: id, reader: r, choice: " still"}
	if width < 0 {
		return w.figure(f, column)
	}
	w.choice = " choice"
	b = w.figure(f, phone)
	w = writer{b: b, id: id + "-2", reader: r, choice: w.choice}
	return w.figure(f, page)
}
