package figure

import (
	"math"

	"plumbline/calculators/drawing"
	"plumbline/calculators/words"
)

// Hold is how a plate's first span is held: what differs from a hand at each end.
type Hold struct {
	// Along is the span that the tape runs along, where that is not the first one.
	Along *Span
	// Ways are the directions in which the hands at both ends point, degrees; zero leaves
	// them to the span.
	Ways [2]float64
	// Phone is where a phone lies, and the way that it lies along.
	Phone func(Build) (middle, way Point)
	// Board is the length of a straight board under the phone, mm; zero is none.
	Board float64
	// Square lays a set square to where the first span begins.
	Square bool
}

// boardHalf is half the thickness of such a board, mm.
const boardHalf = 6.0

// tilted is how far a hand leans from the tape, so that it hides neither tape nor number.
const tilted = 42

// span returns the span that the tape or the threads are held along.
func (p Plate) span() Span {
	if p.Along != nil {
		return *p.Along
	}
	return p.Spans[0]
}

// held returns tape or threads with the hands that hold them, and the phone.
func (p Plate) held(b Build) (marks []drawing.Mark) {
	if p.Phone != nil {
		middle, way := p.Phone(b)
		u := way.Unit()
		if p.Board > 0 {
			marks = append(marks, drawing.Tube{Role: drawing.Ink, Fill: drawing.Sheet, A: middle.Along(u, -p.Board/2),
				B: middle.Along(u, p.Board/2), Ra: boardHalf, Rb: boardHalf})
			middle = middle.Along(u.Left(), boardHalf)
		}
		hand := Grasp{At: middle.Along(u.Left(), 12), Way: u.Angle() - 90 + 20, Role: drawing.Body}
		return append(append(marks, Phone(middle, way)...), hand.Pinch()...)
	}
	s := p.span()
	from, to := s.From.At(b), s.To.At(b)
	ground := b.Bike.Ground()
	ways := [2]float64{}
	switch s.Way {
	case Plumbed:
		left, right := Point{X: min(from.X, to.X), Y: ground - 9}, Point{X: max(from.X, to.X), Y: ground - 9}
		marks = append(Tape(left, right), masking(left), masking(right))
		ways = [2]float64{-28, 208}
		if from.X > to.X {
			ways = [2]float64{208, -28}
		}
	case Tilt:
		return nil
	default:
		switch s.Way {
		case LevelWay:
			to.Y = from.Y
		case UprightWay:
			to.X = from.X
		}
		marks = Tape(from, to)
		u := to.Minus(from).Angle()
		side := math.Copysign(tilted, s.Beside)
		ways = [2]float64{u + side, u + 180 - side}
		if from.Y < ground+1 { // nobody's hand goes under the floor
			ways[0] = 90 + math.Copysign(110, s.Beside)
		}
	}
	for i, end := range [2]Point{from, to} {
		if p.Ways[i] != 0 {
			ways[i] = p.Ways[i]
		}
		g := Grasp{At: end, Way: ways[i], Role: drawing.Body}
		g.Over = math.Cos(g.Way*math.Pi/180) < 0 // the thumb is below on either side
		marks = append(marks, g.Pinch()...)
	}
	return marks
}

// ruled returns a ruler that lies beside a part, along the span and between the part and
// the dimension line, with the hand that holds its far end.
func (s Span) ruled(b Build) []drawing.Mark {
	from, to := s.From.At(b), s.To.At(b)
	switch s.Way {
	case LevelWay:
		to.Y = from.Y
	case UprightWay:
		to.X = from.X
	case Straight:
	default:
		return nil
	}
	way := to.Minus(from)
	side := math.Copysign(1, s.Beside)
	edge := way.Unit().Left().Times(s.Beside - side*36)
	if way.Length() == 0 || math.Abs(s.Beside) < 50 {
		return nil
	}
	end := to.Plus(edge).Along(way.Unit(), Beyond(way.Length())-8).Along(edge.Unit(), 16)
	back := edge.Unit().Times(0.8).Plus(way.Unit().Times(0.6))
	hand := Grasp{At: end, Way: back.Times(-1).Angle(), Role: drawing.Body, Over: back.X > 0}
	return append(Ruler(from.Plus(edge), to.Plus(edge), side), hand.Pinch()...)
}

// masking returns a piece of masking tape on the floor, with its pencilled mark.
func masking(at Point) drawing.Mark {
	return drawing.Tube{Role: drawing.Ink, Pen: drawing.Thin, Fill: drawing.Wash, A: at.Plus(Point{X: -34, Y: -14}),
		B: at.Plus(Point{X: 34, Y: -14}), Ra: 9, Rb: 9}
}

// shown is the radius of what is shown larger at each end, mm.
const shown = 92

// ends returns both ends of what is held, larger.
func (p Plate) ends(b Build) []drawing.Detail {
	s := p.span()
	said := [2]words.English{"begin here ({0})", "read here ({0})"}
	if s.Way == Plumbed {
		said = [2]words.English{"the thread hangs from here ({0})", "and from here ({0})"}
	}
	if s.Way == Tilt {
		return nil
	}
	list := make([]drawing.Detail, 0, 2)
	for i, spot := range [2]Spot{s.From, s.To} {
		at := spot.At(b)
		if s.Way == LevelWay && i == 1 {
			at.Y = list[0].At.Y
		}
		name := words.Of(spot.Name)
		d := drawing.Detail{At: at, Radius: shown, Caption: words.Of(said[i], name)}
		for _, no := range p.Not {
			if wrong := no.At(b); wrong.Minus(at).Length() < shown {
				d.Caption = words.Of("{0}; wrong where it is crossed out ({1})", d.Caption, words.Of(no.Name))
				for _, slant := range [2]float64{45, 135} {
					half := drawing.Polar(slant, 13)
					d.Marks = append(d.Marks, drawing.Line{Role: drawing.Ink, Pen: drawing.Heavy,
						Points: []Point{wrong.Minus(half), wrong.Plus(half)}})
				}
			}
		}
		list = append(list, d)
	}
	return list
}

// tape returns a tape or a ruler through places, the first and the last of them marked.
func tape(b Build, through []Spot, ruled bool) (marks []drawing.Mark) {
	for i := range max(0, len(through)-1) {
		from, to := through[i].At(b), through[i+1].At(b)
		if ruled {
			marks = append(marks, Ruler(from, to, -1)...)
		} else {
			marks = append(marks, Tape(from, to)...)
		}
	}
	for i, s := range through {
		if i == 0 || i == len(through)-1 {
			marks = append(marks, Landmark(s.At(b), 24))
		}
	}
	return marks
}
