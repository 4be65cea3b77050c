package drawing

import (
	"math"
	"slices"

	"plumbline/calculators/words"
)

// cell is one view laid out: its sheet and frame, and where it stands in the picture.
type cell struct {
	sheet   *sheet
	frame   bounds  // mm
	scale   float64 // pixels per mm
	x, y    float64 // its upper left corner in the picture, pixels
	caption []string
	lacking bool    // the reader’s language has no words for it
	round   *Detail // what it enlarges, nil for a view
	cut     bool    // marks reach beyond the frame of one view among several
}

func (c *cell) width() float64  { return (c.frame.high.X - c.frame.low.X) * c.scale }
func (c *cell) height() float64 { return (c.frame.high.Y - c.frame.low.Y) * c.scale }

// picture is all cells of a figure in the height of letters that they share.
type picture struct {
	cells         []cell
	letter        float64 // pixels
	width, height float64 // pixels
	enlarged      int     // details that stand in it
}

// arrange lays the figure out for a width.
func (f *Figure) arrange(r *words.Reader, width float64) *picture {
	p := &picture{letter: letters(width), width: width}
	level := width < narrowBelow
	switch {
	case len(f.Frames) > 0:
		f.rows(p, r, level)
	case f.Lay != nil:
		c := cell{sheet: newSheet(r, level)}
		v := view{marks: f.Lay(width / p.letter)}
		c.sheet.longest = longest(width)
		c.frame, c.scale = c.sheet.lay(&v, Point{width / p.letter, math.Inf(1)}, 1), p.letter
		p.put(c)
	default:
		f.single(p, r, level)
	}
	return p
}

func newSheet(r *words.Reader, level bool) *sheet { return &sheet{reader: r, level: level} }

// put sets a cell below what is there.
func (p *picture) put(c cell) {
	c.y = p.height
	p.width = max(p.width, c.width())
	p.height += c.height()
	p.cells = append(p.cells, c)
}

// lay lays a view out in a room of so many pixels.
func (p *picture) lay(c *cell, v *view, width, height, em float64) {
	c.frame = c.sheet.lay(v, Point{width / p.letter, height / p.letter}, em)
	c.scale = p.letter / c.sheet.em
}

// columns returns how many frames stand side by side: as many as have room, in rows of
// about one length.
func (f *Figure) columns(p *picture) int {
	least := f.Least
	if least <= 0 {
		least = leastFrame
	}
	n := 0
	for i := range f.Frames {
		if !f.Frames[i].Broad {
			n++
		}
	}
	most := int((p.width/p.letter + between) / (least + between))
	most = max(1, min(most, n))
	if n == 3 && most == 2 {
		return 1 // two and one look as if the third were of another kind
	}
	rows := (n + most - 1) / most
	return (n + rows - 1) / rows
}

// room returns the width of a frame where n stand side by side, and how high it may be.
func (f *Figure) room(g *Frame, p *picture, n int) (wide, high float64) {
	wide, high = f.share(g, p, n)
	if f.Highest > 0 {
		high = min(high, f.Highest*p.letter)
	}
	return wide, high
}

// share is that room by the picture's width alone.
func (f *Figure) share(g *Frame, p *picture, n int) (wide, high float64) {
	if g.Broad {
		return p.width, 200 + 0.4*p.width
	}
	wide = (p.width - between*p.letter*float64(n-1)) / float64(n)
	high = min(f.tallest(p.width), 1.3*wide)
	if n == 1 && len(f.Frames) > 1 {
		high = min(high, 0.75*wide)
	}
	if f.Upright {
		high = min(f.tallest(p.width), max(high, 1.15*wide))
		if n > 1 {
			high = min(f.tallest(p.width), 2.1*wide)
		}
	}
	return wide, high
}

// rows lays the frames out in rows.
func (f *Figure) rows(p *picture, r *words.Reader, level bool) {
	n, gap := f.columns(p), between*p.letter
	cells := make([]cell, len(f.Frames))
	views := make([]view, len(f.Frames))
	var em float64
	lay := func() {
		em = 0
		for i := range f.Frames {
			wide, high := f.room(&f.Frames[i], p, n)
			cells[i].sheet = newSheet(r, level)
			cells[i].sheet.longest = longest(wide / p.letter)
			p.lay(&cells[i], &views[i], wide, high, 0)
			em = max(em, cells[i].sheet.em)
		}
		// In the scale of the smallest, labels find other places, and one may stick out.
		for again := 0; !f.Apart && again < 8; again++ {
			out := false
			for i := range cells {
				wide, high := f.room(&f.Frames[i], p, n)
				if c := &cells[i]; c.sheet.em != em {
					p.lay(c, &views[i], wide, high, em)
				}
				out = out || cells[i].width() > wide+0.5
			}
			if !out {
				break
			}
			em = lettering(1.04 * em)
		}
	}
	for i := range f.Frames {
		g := &f.Frames[i]
		views[i] = view{g.Low, g.High, g.Marks}
		if wide, _ := f.room(g, p, n); !g.Caption.None() {
			cells[i].lacking = r.Lacks(g.Caption)
			cells[i].caption = captioned(g.Caption.Say(r), wide/p.letter-0.5)
		}
	}
	lay()
	details, ringed := make([][]*Detail, len(f.Frames)), 0
	for i := range f.Frames {
		g := &f.Frames[i]
		if details[i] = needed(g.Details, cells[i].scale); len(details[i]) > 0 {
			views[i].marks = append(g.Marks[:len(g.Marks):len(g.Marks)], rings(details[i], ringed)...)
			ringed += len(details[i])
		}
	}
	if ringed > 0 {
		lay()
	}
	for i := range cells {
		c := &cells[i]
		c.sheet.inside = len(c.sheet.shapes)
		_, fixed := views[i].fixed()
		c.cut = fixed && !c.frame.holds(c.sheet.extent())
	}
	apart := n > 1 || ringed < 2 || slices.ContainsFunc(details, func(l []*Detail) bool { return len(l) > 1 })
	for first, last := 0, 0; first < len(cells); first = last {
		wide, _ := f.room(&f.Frames[first], p, n)
		for last = first + 1; last < len(cells) && last < first+n && !f.Frames[first].Broad; last++ {
			if f.Frames[last].Broad {
				break
			}
		}
		p.row(cells[first:last], gap, !f.Apart)
		if apart {
			p.enlargements(cells[first:last], details[first:last], f.Frames[first:last], r, level, wide)
		}
	}
	if !apart {
		p.abreast(cells, details, f.Frames, r, level)
	}
	p.height -= gap
}

// abreast sets details of frames that stand below one another, one of each, two and two
// below all frames: under its frame each would leave half of its row empty.
func (p *picture) abreast(cells []cell, details [][]*Detail, frames []Frame, r *words.Reader, level bool) {
	top, bottom, gap, n := p.height, p.height, between*p.letter, 0
	across := min((p.width-gap)/2, 10*p.letter)
	for i, list := range details {
		for _, d := range list {
			if n%2 == 0 {
				top = bottom
			}
			p.height = top
			p.enlarge(d, frames[i].Marks, r, level, spot{float64(n%2) * (p.width + gap) / 2, across, across},
				cells[i].scale)
			bottom = max(bottom, p.height+gap)
			n++
		}
	}
	p.height = bottom
}

// enlargements sets the details of a row of frames below it, each below its frame.
func (p *picture) enlargements(row []cell, details [][]*Detail, frames []Frame, r *words.Reader, level bool,
	wide float64) {
	top, bottom, gap := p.height, p.height, between*p.letter
	for i, list := range details {
		across := min((wide-gap*float64(len(list)-1))/float64(max(1, len(list))), 10*p.letter)
		for j, d := range list {
			p.height = top
			p.enlarge(d, frames[i].Marks, r, level, spot{row[i].x + float64(j)*(across+gap), across, across},
				row[i].scale)
			bottom = max(bottom, p.height+gap)
		}
	}
	p.height = bottom
}

// row sets cells side by side below what is there: those of one scale at one level,
// others on one floor.
func (p *picture) row(row []cell, gap float64, alike bool) {
	if alike {
		low, high := row[0].frame.low.Y, row[0].frame.high.Y
		for i := range row {
			low, high = min(low, row[i].frame.low.Y), max(high, row[i].frame.high.Y)
		}
		for i := range row {
			row[i].frame.low.Y, row[i].frame.high.Y = low, high
		}
	}
	tall, lines, x := 0.0, 0, 0.0
	for i := range row {
		tall, lines = max(tall, row[i].height()), max(lines, len(row[i].caption))
	}
	for i := range row {
		c := &row[i]
		c.x, c.y = x, p.height+tall-c.height()
		x += c.width() + gap
	}
	p.cells = append(p.cells, row...)
	p.width = max(p.width, x-gap)
	p.height += tall + gap
	if lines > 0 {
		p.height += (captionRoom + captionLine*float64(lines)) * p.letter
	}
}
