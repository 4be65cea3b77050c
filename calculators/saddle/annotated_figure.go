package saddle

import (
	"plumbline/calculators"
	"plumbline/calculators/caution"
	"plumbline/calculators/drawing"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// AnnotatedResult is a picture of how a result is read: the first answer of the worked
// example of Height, with a word beside each of its parts. It is solved and not written
// down, so it is the number that the example shows.
func AnnotatedResult() *calculators.Illustration {
	return &calculators.Illustration{Name: "annotated-result",
		Draw: func(calculators.Values) *drawing.Figure { return annotated(Height()) }}
}

// Places of the picture, in heights of its letters: the card's width, and where the words
// beside it begin. Where there is no room beside it they stand below each line.
const cardWide, besideCard, needed = 16.6, 17.9, 33.0

// annotated draws the first answer of a calculator's worked example.
func annotated(c *calculators.Calculator) *drawing.Figure {
	r, most := example(c), calculators.Influence{}
	for _, i := range r.Influence {
		if i.Share > most.Share {
			most = i
		}
	}
	x := &r.Answers[0]
	f := &drawing.Figure{Title: words.Of("How to read a result"),
		Description: words.Of("A result with a word beside each part. {0}: {1}. The ± is how far your tape may "+
			"have missed, nineteen times out of twenty. It is measured between two named points: {2}. What moves "+
			"it most is named, {3}, so measure that again first. A caution belongs to it, and is to be read "+
			"before you ride.",
			x.Label, x.Uncertain(), x.Between, words.Of(most.Quantity.Label))}
	f.Lay = func(across float64) []drawing.Mark {
		p := &card{wide: cardWide, below: across < needed}
		if p.below {
			p.wide = across - 1
		}
		p.line(drawing.Soft, x.Label, "what you set")
		p.line(drawing.Hot, words.Of("{0}", x.Amount()), "the number")
		p.line(drawing.Ink, words.Of("± {0}", measure.Error{Amount: x.Margin()}), "what your tape leaves open")
		p.broken(drawing.Ink, x.Between, "measured between these")
		p.broken(drawing.Ink, words.Of("What moves the answer most: {0}", words.Of(most.Quantity.Label)),
			"measure this again first")
		p.caution(c.Cautions[0], "read it before you ride")
		p.frame()
		return p.marks
	}
	return f
}

// example runs the worked example of c.
func example(c *calculators.Calculator) *calculators.Result {
	var typed []calculators.Pair
	for _, in := range c.Inputs {
		typed = append(typed, calculators.Pair{Key: in.Key, Typed: in.Example})
	}
	r, _ := c.Run(typed, nil)
	return r
}

// card is a result as it is written from the top downwards, its unit the height of the
// letters.
type card struct {
	marks   []drawing.Mark
	wide, y float64
	below   bool // what a line is stands below it
}

func (p *card) add(marks ...drawing.Mark) { p.marks = append(p.marks, marks...) }

// broken writes a text that takes two or three lines on the card, and what it is.
func (p *card) broken(role drawing.Role, text words.Text, is words.English) {
	p.y--
	p.text(role, text)
	at := p.y
	p.y -= 0.8
	p.note(is, at)
	p.y -= 0.2
}

// line writes a line on the card, and what it is.
func (p *card) line(role drawing.Role, text words.Text, is words.English) {
	p.text(role, text)
	p.note(is, p.y)
}

func (p *card) text(role drawing.Role, text words.Text) {
	p.y -= 1.75
	p.add(drawing.Label{Role: role, At: on(1, p.y), Side: drawing.Point{X: 1}, Text: text, Fixed: true})
}

// note writes what the line at this height is, at the end of a thin line.
func (p *card) note(is words.English, y float64) {
	at, line := on(besideCard, y), []drawing.Point{on(p.wide-0.6, y), on(besideCard-0.3, y)}
	if p.below {
		p.y -= 1.4
		at, line = on(3, p.y), []drawing.Point{on(1.6, p.y+0.75), on(1.6, p.y), on(2.7, p.y)}
	}
	p.add(drawing.Line{Role: drawing.Soft, Pen: drawing.Thin, Points: line},
		drawing.Circle{Role: drawing.Soft, Fill: drawing.Solid, Centre: line[0], Radius: 0.15},
		drawing.Label{Role: drawing.Body, At: at, Side: drawing.Point{X: 1}, Text: words.Of(is), Fixed: true})
}

// caution writes a caution's grade and heading on a tinted strip.
func (p *card) caution(k *caution.Caution, is words.English) {
	p.y--
	top := p.y
	p.add(drawing.Line{Role: drawing.Ink, Pen: drawing.Thin, Fill: drawing.Hatch, Closed: true,
		Points: []drawing.Point{on(0.6, top), on(p.wide-0.6, top), on(p.wide-0.6, top-2), on(0.6, top-2)}})
	p.y += 0.75
	p.text(drawing.Hot, words.Of("{0}: {1}", words.Of(k.Grade.Label()), words.Of(k.Title)))
	at := p.y
	if p.below {
		p.y -= 0.5
	}
	p.note(is, at)
}

// frame draws the card's outline around what was written.
func (p *card) frame() {
	low := p.y - 1.6
	p.add(drawing.Line{Role: drawing.Ink, Closed: true, Points: []drawing.Point{on(0, 0), on(p.wide, 0),
		on(p.wide, low), on(0, low)}})
}

// on is a place on the picture.
func on(x, y float64) drawing.Point { return drawing.Point{X: x, Y: y} }
