package saddle

import (
	"plumbline/calculators"
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

// Places of the picture: the letters' height, the card's width, and where the words
// beside it begin.
const letter, cardWide, besideCard = 20.0, 314.0, 340.0

// annotated draws the first answer of a calculator's worked example.
func annotated(c *calculators.Calculator) *drawing.Figure {
	r, most := example(c), calculators.Influence{}
	for _, i := range r.Influence {
		if i.Share > most.Share {
			most = i
		}
	}
	x := &r.Answers[0]
	f := &drawing.Figure{TextSize: letter, Title: words.Of("How to read a result"),
		Description: words.Of("A result with a word beside each part. {0}: {1}. The ± is how far your tape may "+
			"have missed, nineteen times out of twenty. It is measured between two named points: {2}. What moves "+
			"it most is named, {3}, so measure that again first. A caution belongs to it, and is to be read "+
			"before you ride.",
			x.Label, x.Uncertain(), x.Between, words.Of(most.Quantity.Label))}
	p := &card{f: f}
	p.line(drawing.Soft, x.Label, "what you set")
	p.line(drawing.Hot, words.Of("{0}", x.Amount()), "the number")
	p.line(drawing.Ink, words.Of("± {0}", measure.Error{Amount: x.Margin()}), "what your tape leaves open")
	p.broken(drawing.Ink, x.Between, "measured between these")
	p.broken(drawing.Ink, words.Of("What moves the answer most: {0}", words.Of(most.Quantity.Label)),
		"measure this again first")
	p.caution(words.Of(c.Cautions[0].Title), "read it before you ride")
	p.frame()
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

// card is a result as it is written from the top downwards.
type card struct {
	f *drawing.Figure
	y float64
}

// broken writes a text that takes two or three lines on the card, and what it is beside the card.
func (p *card) broken(role drawing.Role, text words.Text, is string) {
	p.y -= letter
	p.line(role, text, is)
	p.y -= letter
}

// line writes a line on the card, and what it is beside the card, with a leader between.
func (p *card) line(role drawing.Role, text words.Text, is string) {
	p.y -= 1.75 * letter
	p.f.Add(drawing.Label{Role: role, At: on(letter, p.y), Side: drawing.Point{X: 1}, Text: text, Fixed: true},
		drawing.Line{Role: drawing.Soft, Pen: drawing.Thin, Points: []drawing.Point{on(cardWide-0.6*letter, p.y),
			on(besideCard-6, p.y)}},
		drawing.Circle{Role: drawing.Soft, Fill: drawing.Solid, Centre: on(cardWide-0.6*letter, p.y), Radius: 3},
		drawing.Label{Role: drawing.Ink, At: on(besideCard, p.y), Side: drawing.Point{X: 1}, Text: words.Of(is),
			Fixed: true})
}

// caution writes a caution's heading on a tinted strip.
func (p *card) caution(title words.Text, is string) {
	p.y -= letter
	top := p.y
	p.f.Add(drawing.Line{Role: drawing.Ink, Pen: drawing.Thin, Fill: drawing.Hatch, Closed: true,
		Points: []drawing.Point{on(0.6*letter, top), on(cardWide-0.6*letter, top),
			on(cardWide-0.6*letter, top-2*letter), on(0.6*letter, top-2*letter)}})
	p.y += 0.75 * letter
	p.line(drawing.Hot, words.Of("Caution: {0}", title), is)
}

// frame draws the card's outline around what was written.
func (p *card) frame() {
	low := p.y - 1.6*letter
	p.f.Add(drawing.Line{Role: drawing.Ink, Closed: true, Points: []drawing.Point{on(0, 0), on(cardWide, 0),
		on(cardWide, low), on(0, low)}})
}
