package drawing

import (
	"math"
	"slices"
	"strconv"

	"plumbline/calculators/words"
)

// Detail is a circle of a view, drawn larger beside it (ISO 128-3): for a before and an
// after that lie closer together than the eye can part at the size of the whole.
type Detail struct {
	At     Point   // the middle of what is enlarged, mm
	Radius float64 // of the circle, mm
	// Caption says what is seen there; how many times as large is added to it.
	Caption words.Text
	// Marks are drawn over the enlarged part and not in the view, such as the dimension
	// of what has changed.
	Marks []Mark
	// Of is what is enlarged, where that is not the whole view.
	Of []Mark
	// Apart is how far before and after are apart, mm. The detail is left out where the
	// view shows that well enough by itself; with zero it is always there.
	Apart float64
}

// plain is how far apart two lines are, in pixels, to be seen as two without help:
// three line widths.
const plain = 4.5

// single lays out the figure's one view, and its details beside or below it.
func (f *Figure) single(p *picture, r *words.Reader, level bool) {
	v := view{f.Low, f.High, f.Marks}
	main := cell{sheet: newSheet(r, level)}
	high := f.tallest(p.width)
	main.sheet.longest = longest(p.width / p.letter)
	p.lay(&main, &v, p.width, high, 0)
	list := needed(f.Details, main.scale)
	if len(list) == 0 {
		p.put(main)
		return
	}
	gap := between * p.letter
	aside := p.width >= broadFrom
	abreast := min(len(list), 3)
	if level {
		abreast = min(abreast, 2)
	}
	wide, across := p.width, min((p.width-gap*float64(abreast-1))/float64(abreast), 14*p.letter)
	if aside {
		abreast, across = p.beside(len(list), main.height()/main.width(), high)
		wide -= float64(abreast) * (across + gap)
	}
	v.marks = append(f.Marks[:len(f.Marks):len(f.Marks)], rings(list, 0)...)
	main.sheet.longest = longest(wide / p.letter)
	p.lay(&main, &v, wide, high, 0)
	p.put(main)
	if aside {
		bottom := p.height
		top := make([]float64, abreast)
		for i, d := range list {
			k := i % abreast
			p.height = top[k]
			p.enlarge(d, f.Marks, r, level, spot{wide + gap + float64(k)*(across+gap), across, across}, main.scale)
			top[k] = p.height + gap
		}
		p.height = max(slices.Max(top)-gap, bottom)
		p.width = max(p.width, wide+float64(abreast)*(gap+across))
		return
	}
	for len(list) > 0 {
		top, bottom := p.height+gap, 0.0
		for i, d := range list[:min(abreast, len(list))] {
			p.height = top
			at := spot{float64(i) * (across + gap), across, across}
			if abreast == 1 {
				at.words = wide
			}
			p.enlarge(d, f.Marks, r, level, at, main.scale)
			bottom = max(bottom, p.height)
		}
		p.height = bottom
		list = list[min(abreast, len(list)):]
	}
}

// beside returns how many of n details stand abreast at the side of a view, and how wide each
// is, pixels: below one another and large, unless that leaves a flat view with much empty
// paper under it. The view is so many times as high as wide, and at most so high.
func (p *picture) beside(n int, flat, high float64) (abreast int, across float64) {
	column := min(0.36*p.width, high/float64(n))
	if n < 2 {
		return 1, column
	}
	gap, words := between*p.letter, 5*captionLine*p.letter
	row := 0.21 * p.width
	tall := func(columns int, across float64) float64 {
		rows := (n + columns - 1) / columns
		return max(min(high, flat*(p.width-float64(columns)*(across+gap))), float64(rows)*(across+words+gap)-gap)
	}
	if tall(1, column) > 1.25*tall(2, row) {
		return 2, row
	}
	return 1, column
}

// needed returns the details of which a view at a scale, in pixels per mm, shows too little.
func needed(details []Detail, scale float64) (list []*Detail) {
	for i := range details {
		d := &details[i]
		if drawable(d.At) && d.Radius > 0 && finite(d.Radius) && !(d.Apart*scale >= plain) {
			list = append(list, d)
		}
	}
	return list
}

// rings are the circles round what is enlarged, each with its letter; before is how many
// letters are taken.
func rings(details []*Detail, before int) []Mark {
	marks := make([]Mark, 0, 2*len(details))
	for i, d := range details {
		marks = append(
			marks,
			Circle{Role: Soft, Centre: d.At, Radius: d.Radius},
			Label{
				Role:     Ink,
				At:       d.At.Plus(Polar(60, d.Radius)),
				Text:     letterOf(before + i),
				Side:     Polar(60, 1),
				Priority: 3,
			},
		)
	}
	return marks
}

func letterOf(i int) words.Text { return words.Of("{0}", words.Name(string(rune('A'+i)))) }

// spot is where a detail stands: how far from the left, how wide, and how wide the words
// below it may run, all in pixels.
type spot struct{ x, across, words float64 }

// enlarge puts a detail below what is there, of a view at a scale.
func (p *picture) enlarge(d *Detail, marks []Mark, r *words.Reader, level bool, at spot, whole float64) {
	c := p.circle(d, marks, r, level, at, at.across)
	// Words on both sides of a lone one may want more than the picture's width: then it is smaller.
	for across, n := at.across, 0; at.words > at.across && c.width() > at.words && n < 3; n++ {
		across = max(across-(c.width()-at.words)-0.5*p.letter, 4*p.letter)
		c = p.circle(d, marks, r, level, at, across)
	}
	times := c.scale / whole
	said := words.Of("{0}: {1}, {2} times as large", letterOf(p.enlarged), d.Caption,
		words.Name(strconv.FormatFloat(math.Round(times), 'f', -1, 64)))
	c.lacking = r.Lacks(d.Caption)
	c.caption = captioned(said.Say(r), at.words/p.letter-0.5)
	p.height += c.height() + (captionRoom+captionLine*float64(len(c.caption)))*p.letter
	p.cells = append(p.cells, c)
	p.enlarged++
}

// circle lays a detail out, so many pixels wide, with its labels round it.
func (p *picture) circle(d *Detail, marks []Mark, r *words.Reader, level bool, at spot, across float64) cell {
	c := cell{sheet: newSheet(r, level), round: d, x: at.x, y: p.height}
	s := c.sheet
	s.longest = longest(across / p.letter)
	c.scale = across / (2.04 * d.Radius)
	s.reset(p.letter / c.scale)
	s.bare = true
	if d.Of != nil {
		marks = d.Of
	}
	for _, m := range marks {
		if m != nil {
			m.draw(s)
		}
	}
	s.keepNear(d.At, d.Radius)
	s.bare = false
	s.inside = len(s.shapes)
	s.shape(Soft, Wide, Open, kindCircle, d.Radius, 0, d.At)
	for _, m := range d.Marks {
		if m != nil {
			m.draw(s)
		}
	}
	var room bounds
	room.addAround(d.At, 1.02*d.Radius)
	c.frame = s.settle(room)
	return c
}

// keepNear leaves out shapes that lie wholly off a circle.
func (s *sheet) keepNear(centre Point, radius float64) {
	kept := s.shapes[:0]
	for i := range s.shapes {
		one := sheet{points: s.points, shapes: s.shapes[i : i+1]}
		box := one.extent()
		if box.low.X <= centre.X+radius && box.high.X >= centre.X-radius &&
			box.low.Y <= centre.Y+radius && box.high.Y >= centre.Y-radius {
			kept = append(kept, s.shapes[i])
		}
	}
	s.shapes = kept
}
