package drawing

import "plumbline/calculators/words"

// Two widths for places that nobody has measured. Anywhere writes a figure twice, for a
// phone and for a page; the style sheet shows the one that fits, and makes the letters
// of the larger one smaller where it stands wider still. Small writes it once, for a
// column on paper, and the style sheet makes its letters smaller where it stands wider, as
// on a phone.
const (
	Anywhere = 0.0
	Small    = -1.0
)

// phone, page and column are the widths, in pixels, that those are drawn for: nearly the
// least at which the style sheet shows them. On paper a column is 50 mm wide, so that its
// letters are 7 points high.
const phone, page, column = 320, 480, 260

// A picture is never drawn for less or more than this many pixels.
const leastWidth, mostWidth = 240, 1600

// Below these widths, in pixels, a figure is narrow, or not broad. No label of a narrow
// one is turned: nobody turns a head, or a phone, for a number.
const narrowBelow, broadFrom = 460, 760

// class names a width for the style sheet, which sets the letters by it.
func class(width float64) string {
	switch {
	case width < narrowBelow:
		return "narrow"
	case width < broadFrom:
		return "middle"
	}
	return "broad"
}

// letters is the height of letters, in pixels, at a width.
func letters(width float64) float64 {
	if width < broadFrom {
		return 13
	}
	return 14
}

// tallest returns how high a view of that width may be, in pixels: on a phone it leaves
// room for the field below it.
func (f *Figure) tallest(width float64) float64 {
	height := 200 + 0.4*width
	if width >= narrowBelow {
		height += 70
	}
	if f.Upright {
		height = min(1.5*height, 720)
	}
	return height
}

// Long reports whether the figure, drawn for a phone, takes several screens there: it then
// stands below the fields of its calculator.
func (f *Figure) Long(r *words.Reader) bool { return f.arrange(r, phone).long() }

func (p *picture) long() bool { return p.height > 2*p.width }

// Between and below views, in heights of letters.
const (
	between     = 1.2
	captionLine = 1.3
	captionRoom = 0.5
	leastFrame  = 12.5
)
