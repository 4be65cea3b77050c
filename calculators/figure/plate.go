package figure

import (
	"plumbline/calculators/drawing"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// Plate is the standing figure of how something is measured on a bike, as data: what
// is drawn, and which lengths and angles are shown on it. The first span is what the
// figure is named after; the others are drawn with it.
type Plate struct {
	Of *measure.Quantity
	// Title is said in place of the span, where several quantities share the plate.
	Title words.English
	On    Scenery
	Spans []Span
	// Not are places that are taken for the right one by mistake: crossed out where the
	// nearer end is shown larger.
	Not []Spot
	// Wrong is drawn beside the right way, where people go wrong.
	Wrong *Mistake
	// Steps sets frames before, after or in place of the plate's own: where to find the
	// number, how the tool lies, what is read.
	Steps func(own drawing.Frame, p Plate, b Build) []drawing.Frame
	Hold
}

// Mistake is a wrong way: what both frames are called, and through which places the tape
// runs in the second.
type Mistake struct {
	Right, Wrong words.English
	Tape         []Spot
	// On is another view, where the mistake cannot be seen in the plate's own: Well is the
	// tape's way there as it should be.
	On   *Scenery
	Well []Spot
}

// frames returns the right way and the wrong one.
func (m Mistake) frames(p Plate, b Build, f *drawing.Figure, marks []drawing.Mark) []drawing.Frame {
	right, wrong := words.Of("Right: {0}", words.Of(m.Right)), words.Of("Wrong: {0}", words.Of(m.Wrong))
	if m.On == nil {
		return []drawing.Frame{{Caption: right, Low: f.Low, High: f.High, Marks: marks},
			{Caption: wrong, Low: f.Low, High: f.High, Marks: append(p.On.Marks(b), tape(b, m.Tape, p.On.Ruled)...)}}
	}
	frames := []drawing.Frame{{Caption: words.Of("From the side"), Low: f.Low, High: f.High, Marks: marks},
		{Caption: right, Marks: append(m.On.Marks(b), tape(b, m.Well, false)...)},
		{Caption: wrong, Marks: append(m.On.Marks(b), tape(b, m.Tape, p.On.Ruled)...)}}
	for i := range 2 {
		if m.On.Frame != nil {
			frames[i+1].Low, frames[i+1].High = m.On.Frame(b)
		}
	}
	return frames
}

// Scenery is what a plate is drawn over: a name for readers who cannot see it, and
// the marks. Fit, where given, changes the build so that there is something to see,
// and Frame cuts the drawing down to what matters.
type Scenery struct {
	Name  words.English
	Marks func(Build) []drawing.Mark
	Fit   func(Build) Build
	Frame func(Build) (low, high Point)
	// Held says that tape, thread and hands are drawn, and both ends shown larger; Ruled
	// that a ruler lies beside the part.
	Held, Ruled bool
}

// Spot is a place to which a tape, a thread or a phone is put, with what it is called.
type Spot struct {
	Name words.English
	At   func(Build) Point
}

// Way is how a span is measured.
type Way int

// Straight runs from point to point. Plumbed is level, between plumb marks on the
// floor. LevelWay and UprightWay are the level and the upright part of the way. Tilt is the
// angle of the way above the horizontal, or from the way to Against.
const (
	Straight Way = iota
	Plumbed
	LevelWay
	UprightWay
	Tilt
)

// Span is a length or an angle between two spots. Beside is how far the dimension
// line stands from the first, mm, to the left of the way; the radius of a Tilt.
type Span struct {
	From, To Spot
	Way      Way
	Beside   float64
	Label    words.English // "" for the label of the plate's quantity
	Against  Spot
}

// said names each way inside a sentence.
var said = [...]words.English{"straight from {0} to {1}", "level, between plumb marks on the floor, from {0} to {1}",
	"level from {0} to {1}", "straight up or down from {0} to {1}", "as an angle, along the line from {0} to {1}"}

// Draw returns the plate over a build.
func (p Plate) Draw(b Build) *drawing.Figure {
	label := words.Of(p.Of.Label)
	f := &drawing.Figure{}
	if p.On.Fit != nil {
		b = p.On.Fit(b)
	}
	if p.On.Frame != nil {
		f.Low, f.High = p.On.Frame(b)
	}
	first := p.Spans[0]
	f.Title = words.Of("{0}: {1} to {2}", label, words.Of(first.From.Name), words.Of(first.To.Name))
	if p.Title != "" {
		f.Title = words.Of(p.Title)
	}
	f.Description = words.Of("{0}. {1} is measured {2}.", words.Of(p.On.Name), label,
		words.Of(said[first.Way], words.Of(first.From.Name), words.Of(first.To.Name)))
	marks := p.On.Marks(b)
	if p.On.Held || p.Phone != nil {
		marks = append(marks, p.held(b)...)
	}
	if p.Square {
		marks = append(marks, first.squared(b)...)
	}
	if p.On.Ruled {
		marks = append(marks, p.Spans[0].ruled(b)...)
	}
	for i, s := range p.Spans {
		role := drawing.Hot
		if i > 0 {
			role = drawing.Ink
		}
		text := label
		if s.Label != "" {
			text = words.Of(s.Label)
		}
		marks = append(marks, s.marks(b, role, text)...)
	}
	if w := p.Wrong; w != nil {
		f.Frames = w.frames(p, b, f, marks)
		f.Least, f.Apart = 24, w.On != nil
		if f.Apart {
			f.Least = 12
		}
		f.Description = words.Of("{0} The second picture shows a wrong way: {1}.", f.Description, words.Of(w.Wrong))
		return f
	}
	if p.Steps != nil {
		f.Frames = p.Steps(drawing.Frame{Low: f.Low, High: f.High, Marks: marks}, p, b)
		f.Least, f.Apart = 20, true
		for _, frame := range f.Frames {
			f.Description = words.Of("{0} {1}.", f.Description, frame.Caption)
		}
		return f
	}
	f.Marks = marks
	if p.On.Held {
		f.Details = p.ends(b)
	}
	return f
}

// marks returns the span with what it is measured with.
func (s Span) marks(b Build, role drawing.Role, text words.Text) []drawing.Mark {
	from, to := s.From.At(b), s.To.At(b)
	size := 0.045 * to.Minus(from).Length()
	size = max(5, min(24, size))
	ends := []drawing.Mark{Landmark(from, size), Landmark(to, size)}
	dimension := drawing.Dimension{Role: role, A: from, B: to, Offset: s.Beside, Text: text, Priority: 2}
	switch s.Way {
	case Plumbed:
		ground := b.Bike.Ground()
		dimension.Along, dimension.Offset, dimension.Bare = Point{X: 1}, ground-s.Beside-from.Y, true
		return append(append(plumbLine(from, ground), plumbLine(to, ground)...), append(ends, dimension)...)
	case LevelWay:
		dimension.Along = Point{X: 1}
	case UprightWay:
		dimension.Along = Point{Y: 1}
	case Tilt:
		way := to.Minus(from)
		if s.Against.At != nil {
			base := s.Against.At(b).Minus(from).Angle()
			return append(ends, drawing.Angle{Role: role, Vertex: from, From: min(base, way.Angle()),
				To:     max(base, way.Angle()),
				Radius: s.Beside, ArmFrom: s.Beside, ArmTo: s.Beside, Text: text, Priority: 2})
		}
		return append(ends, drawing.Line{Role: drawing.Hot, Pen: drawing.Thin, Points: []Point{from, to}},
			angle(role, from, way, s.Beside, text))
	}
	return append(ends, dimension)
}

// angle dimensions a way's angle above the horizontal, on the side where it is less
// than a right angle.
func angle(role drawing.Role, vertex, way Point, radius float64, text words.Text) drawing.Mark {
	a := drawing.Angle{Role: role, Vertex: vertex, From: 0, To: way.Angle(), Radius: radius, Text: text, Priority: 2}
	if a.To < 0 {
		a.From, a.To, a.ArmTo = a.To, 0, radius
		return a
	}
	a.ArmFrom = radius
	if a.To > 90 {
		a.From, a.To, a.ArmFrom, a.ArmTo = a.To, 180, 0, radius
	}
	return a
}

// plumbLine returns a thread that hangs from a point to the floor, with its weight.
func plumbLine(from Point, floor float64) []drawing.Mark {
	foot := Point{X: from.X, Y: floor}
	return []drawing.Mark{
		drawing.Line{Role: drawing.Hot, Pen: drawing.Thin, Points: []Point{from, foot}},
		drawing.Limb{Role: drawing.Ink, Fill: drawing.Sheet, A: Point{X: from.X, Y: floor + 44},
			B: Point{X: from.X, Y: floor + 12}, Ra: 11, Rb: 3},
	}
}
