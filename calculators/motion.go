package calculators

import (
	"math"
	"slices"

	"plumbline/calculators/drawing"
	"plumbline/calculators/measure"
	"plumbline/calculators/uncertainty"
	"plumbline/calculators/words"
)

// Motion is a figure that moves: one number is swept, and the rest of the calculator's
// inputs stay as they are. In the page it has a slider and a button that plays it
// (templates/page/move.js); the states stand beside one another where nothing can move.
// What is swept never reaches the reader's record.
type Motion struct {
	Name               string // of the figure
	Title, Description words.Text
	Label              words.English // of the slider, English: "Turn the cranks"
	Unit               *measure.Unit
	From, To, Step     float64   // of the slider, base units
	States             []float64 // those that stand beside one another, base units
	Least              float64   // as in drawing.Figure, and so is Upright
	Upright            bool
	// Swept are the inputs that the number is put into; none where it is a state of the
	// picture alone, such as how far the cranks have turned.
	Swept []*measure.Quantity
	// Draw draws one moment. Its numbers carry no ±, because nothing but the figure is
	// wanted of them. Low and High are the same at every moment, so that the picture
	// keeps still. The caption states the moment's numbers.
	Draw func(v Values, r *Result, at float64) drawing.Frame
	// Beside is what stands beside a single moment and not with the states, nil for
	// nothing. Its caption is not shown.
	Beside func(v Values, r *Result, at float64) drawing.Frame
}

// Moving returns the figure of c that moves, to be listed among the standing figures of
// its section.
func (c *Calculator) Moving(m *Motion) *Illustration {
	return &Illustration{Name: m.Name, Inputs: c.Inputs, Motion: m, of: c}
}

// Example returns what the worked example types, in base units.
func (c *Calculator) Example() []Pair {
	var pairs []Pair
	for _, in := range c.Inputs {
		if in.Example != "" {
			pairs = append(pairs, Pair{Key: in.Key, Typed: in.Example})
		}
	}
	return pairs
}

// Moment draws a figure that moves at one moment, and says what is seen there; nil for a
// figure that does not. Numbers that do not compute give way to the worked example's,
// all of them, so that two people's never mix.
func (s *Illustration) Moment(typed []Pair, in *words.Reader, at float64) (*drawing.Figure, words.Text) {
	m := s.Motion
	if m == nil || !(at >= m.From && at <= m.To) {
		return nil, words.Text{}
	}
	v, r, ok := s.solved(typed, in, at)
	if !ok {
		return nil, words.Text{}
	}
	one := m.Draw(v, r, at)
	f := &drawing.Figure{Title: m.Title, Description: words.Of("{0} {1}.", m.Description, one.Caption),
		Low: one.Low, High: one.High, Marks: one.Marks, Upright: m.Upright}
	if m.Beside != nil {
		more := m.Beside(v, r, at)
		f.Low = drawing.Point{X: min(f.Low.X, more.Low.X), Y: min(f.Low.Y, more.Low.Y)}
		f.High = drawing.Point{X: max(f.High.X, more.High.X), Y: max(f.High.Y, more.High.Y)}
		f.Add(more.Marks...)
	}
	// Whole millimetres, so that no rounding error makes one moment larger than the next.
	f.Low = drawing.Point{X: math.Round(f.Low.X), Y: math.Round(f.Low.Y)}
	f.High = drawing.Point{X: math.Round(f.High.X), Y: math.Round(f.High.Y)}
	return f, one.Caption
}

// states draws the states of a figure that moves beside one another.
func (s *Illustration) states(typed []Pair, in *words.Reader) *drawing.Figure {
	m := s.Motion
	f := &drawing.Figure{Title: m.Title, Description: m.Description, Least: m.Least, Upright: m.Upright}
	for _, at := range m.States {
		if v, r, ok := s.solved(typed, in, at); ok {
			f.Frames = append(f.Frames, m.Draw(v, r, at))
		}
	}
	for _, state := range f.Frames {
		f.Description = words.Of("{0} {1}.", f.Description, state.Caption)
	}
	return f
}

// solved computes with the number swept to a place, at the reader's numbers or else at
// the worked example's.
func (s *Illustration) solved(typed []Pair, in *words.Reader, at float64) (Values, *Result, bool) {
	if v, r, ok := s.swept(typed, in, at); ok {
		return v, r, true
	}
	return s.swept(s.of.Example(), nil, at)
}

func (s *Illustration) swept(typed []Pair, in *words.Reader, at float64) (Values, *Result, bool) {
	typed = slices.Clone(typed)
	for _, q := range s.Motion.Swept {
		typed = append(typed, Pair{Key: q.Key, Typed: measure.Exact(at), In: &words.Reader{}})
	}
	c := s.of
	v, _, problems := c.read(typed, in)
	if problems != nil {
		return v, nil, false
	}
	out := c.numbers()
	if c.Solve(v, out) != nil {
		return v, nil, false
	}
	without := uncertainty.Effects{Expanded: make([]float64, len(out.x))}
	return v, &Result{Calculator: c.Name, values: v, Answers: answers(c.Answers, out, without),
		Workings: answers(c.Workings, out, without)}, true
}
