package drawing

import (
	"math"

	"plumbline/calculators/words"
)

// want is a label that is still to be placed.
type want struct {
	role     Role
	lines    []string
	lacking  bool    // the reader’s language has no words for it
	hw, hh   float64 // half its width and height, mm, with the room it keeps free
	anchor   Point   // where a leader line would point
	priority int
	fixed    bool
	optional bool
	p, q     Point // the ends of the dimension line that it belongs to, if to one
	first    int   // its places are sheet.places[first:last], the likeliest first
	last     int
	chosen   place
	cost     float64
	placed   bool
}

// pin is where a label is held, so that it stays beside what it labels when the
// style sheet makes the letters smaller.
type pin int

const (
	atMiddle pin = iota
	atStart
	atEnd
)

// place is one place where a label could stand.
type place struct {
	at   Point // the middle of the label
	u    Point // the direction its letters run in, a unit vector
	cost float64
	pin  pin
	// A line leads from tail to tip where leads is true.
	leads     bool
	tail, tip Point
}

// level is the direction of text that is not turned.
var level = Point{1, 0}

// Room round a label, in heights of its letters: its line height is 1.2 and a
// little is kept free at both ends.
const (
	lineHeight = 1.2
	endRoom    = 0.2
	labelGap   = 0.12
)

// steep is the sine of a dimension line's slope from which a number past its end is
// written level.
const steep = 0.5

// newWant measures a label.
func (s *sheet) newWant(role Role, priority int, text words.Text, anchor Point) want {
	if role == Hot {
		priority += 100
	}
	broken, width := broken(text.Say(s.reader), role == Hot, s.longest)
	return want{
		role: role, lines: broken, lacking: s.reader.Lacks(text), priority: priority, anchor: anchor,
		hw:    (width/2 + endRoom) * s.em,
		hh:    float64(len(broken)) * lineHeight / 2 * s.em,
		first: len(s.places),
	}
}

func (s *sheet) offer(at, u Point, cost float64) {
	s.places = append(s.places, place{at: at, u: u, cost: cost})
}

// offerBeside offers a level place that lies in direction d from what it labels.
func (s *sheet) offerBeside(at, d Point, cost float64) {
	s.places = append(s.places, place{at: at, u: level, cost: cost, pin: pinned(d.X)})
}

// pinned returns the end at which a label is held that stands ahead of, over or
// behind what it labels.
func pinned(ahead float64) pin {
	switch {
	case ahead > 0.55:
		return atStart
	case ahead < -0.55:
		return atEnd
	}
	return atMiddle
}

// keep ends the list of a label's places.
func (s *sheet) keep(w want) {
	w.last = len(s.places)
	s.wants = append(s.wants, w)
}

// support returns how far a level box reaches from its middle along d.
func (w *want) support(d Point) float64 {
	x, y := d.X*w.hw, d.Y*w.hh
	return math.Abs(x) + math.Abs(y)
}

// wantAlong wants a label on the dimension line from p to q, which runs along
// the unit vector d: along it, beside it, or past one of its ends.
func (s *sheet) wantAlong(role Role, priority int, text words.Text, p, q, d Point) {
	middle := p.Along(q.Minus(p), 0.5)
	w := s.newWant(role, priority, text, middle)
	w.p, w.q = p, q
	span := q.Minus(p).Length()
	arrow := arrowLength * s.em
	gap, em := labelGap*s.em, s.em
	// Text is read from below or from the right, never upside down.
	u := d
	if u.X < -1e-9 || (u.X < 1e-9 && u.Y < 0) {
		u = u.Times(-1)
	}
	above := u.Left()
	room := span/2 - w.hw - 0.8*arrow
	turned := s.level && math.Abs(u.Y) > 1e-6
	if room >= 0 && !turned {
		for i, t := range [9]float64{0, -0.25, 0.25, -0.5, 0.5, -0.75, 0.75, -1, 1} {
			at := middle.Along(u, t*room)
			extra := 0.3 * float64((i+1)/2)
			s.offer(at.Along(above, w.hh+gap), u, extra)
			s.offer(at.Along(above, -w.hh-gap), u, 0.6+extra)
		}
	}
	if math.Abs(u.Y) > 0.5 || turned {
		for i, t := range [5]float64{0, -0.22, 0.22, -0.4, 0.4} {
			at := middle.Along(d, t*span)
			extra := 1.2 + 0.4*float64((i+1)/2)
			s.offerBeside(at.Along(above, w.support(above)+gap), above, extra)
			s.offerBeside(at.Along(above, -w.support(above)-gap), above.Times(-1), extra+0.2)
		}
	}
	if room < 0 && !turned {
		s.offer(middle.Along(above, w.hh+gap), u, 1.5)
		s.offer(middle.Along(above, -w.hh-gap), u, 2)
	}
	// Past the ends: the dimension line is drawn on to the number.
	for i, end := range [2]Point{q, p} {
		way := d
		if i == 1 {
			way = d.Times(-1)
		}
		tail := end
		start := 0.0
		if span < 2.6*arrow {
			tail = end.Along(way, 2*arrow)
			start = 2 * arrow
		}
		// A number that could stand level is easier to read than one that is turned.
		if !turned && math.Abs(u.Y) < steep {
			s.places = append(s.places, place{
				at: end.Along(way, start+w.hw+gap), u: u, cost: 2.4 + 0.2*float64(i),
				leads: true, tail: tail, tip: tail.Along(way, gap), pin: pinned(way.Dot(u)),
			})
		}
		if math.Abs(way.Y) > 0.3 || turned {
			at := end.Along(way, start+w.support(way)+gap)
			s.offerBeside(at, way, 2.2+0.2*float64(i))
			s.offerBeside(at.Plus(Point{-0.25 * w.hw, 0}), way, 2.4+0.2*float64(i))
			s.offerBeside(at.Plus(Point{0.25 * w.hw, 0}), way, 2.4+0.2*float64(i))
			// Where a mark stands at the end, or the ground, the line is drawn on over it.
			off := at.Along(way, em)
			s.places = append(s.places, place{
				at: off, u: level, cost: 3 + 0.2*float64(i), leads: true, tail: tail,
				tip: tail.Along(way, gap+em), pin: pinned(way.X),
			})
		}
	}
	s.keep(w)
}

// wantAtArc wants a label at an arc: outside it, inside it, or past its ends.
func (s *sheet) wantAtArc(role Role, priority int, text words.Text, vertex Point, radius, from, to float64) {
	middle := vertex.Plus(Polar((from+to)/2, radius))
	w := s.newWant(role, priority, text, middle)
	gap := labelGap * s.em
	span := to - from
	for i, t := range [5]float64{0.5, 0.3, 0.7, 0.1, 0.9} {
		d := Polar(from+float64(t*span), 1)
		extra := 0.3 * float64((i+1)/2)
		reach := w.support(d) + gap
		s.offerBeside(vertex.Along(d, radius+reach), d, extra)
		if radius > 2*reach {
			s.offerBeside(vertex.Along(d, radius-reach), d.Times(-1), 0.5+extra)
		}
	}
	turn := 2 * arrowLength * s.em / radius * 57.3
	for i, angle := range [2]float64{to + turn, from - turn} {
		// A leader line, because such a label would be taken for another arc's.
		d, end := Polar(angle, 1), [2]float64{to, from}[i]
		p := place{u: level, cost: 2.2 + 0.2*float64(i), leads: true}
		p.tail = vertex.Plus(Polar(end+0.4*((from+to)/2-end), radius))
		p.at = vertex.Along(d, radius).Along(d, w.support(d)+gap)
		p.tip, p.pin = w.edge(p.at, p.tail)
		s.places = append(s.places, p)
	}
	s.keep(w)
}

// compass holds sixteen directions, in the order in which they are tried.
var compass = func() (d [16]Point) {
	for i, angle := range [16]float64{0, 180, 90, 270, 30, 150, 330, 210, 60, 120, 300, 240, 345, 195, 315, 225} {
		d[i] = Polar(angle, 1)
	}
	return d
}()

// wantAt wants a label beside a place.
func (s *sheet) wantAt(m Label) {
	w := s.newWant(m.Role, m.Priority, m.Text, m.At)
	gap := labelGap * s.em
	w.optional = m.Optional
	side := m.Side.Unit()
	switch {
	case m.Fixed:
		w.fixed = true
		at := m.At
		if side != (Point{}) {
			at = at.Along(side, w.support(side)+gap)
		}
		s.offerBeside(at, side, 0)
	case m.Leader:
		s.places = append(s.places, w.leaders(s.em, side, 1)...)
	default:
		if side != (Point{}) {
			s.offerBeside(m.At.Along(side, w.support(side)+gap), side, 0)
			s.offerBeside(m.At.Along(side, w.support(side)+0.6*s.em), side, 0.3)
		}
		for _, d := range compass {
			cost := 0.5
			if side != (Point{}) {
				cost = 1.5 - d.Dot(side)
			}
			s.offerBeside(m.At.Along(d, w.support(d)+gap), d, cost)
		}
	}
	s.keep(w)
}

// leaders returns places all round at growing distances, with a leader line back to
// the anchor. Cost is what any of them costs at least.
func (w *want) leaders(em float64, side Point, cost float64) (places []place) {
	for _, distance := range []float64{0.8, 1.3, 1.9, 2.6, 3.4, 4.4, 6, 8} {
		for i, d := range compass {
			turned := 0.02 * float64(i)
			if side != (Point{}) {
				turned += 1.2 * (1 - d.Dot(side))
			}
			at := w.anchor.Along(d, float64(distance*em)+w.support(d))
			places = append(places, w.led(at, cost+costOfDistance*distance+turned))
		}
	}
	return places
}

// led is a place with a leader line back to the anchor.
func (w *want) led(at Point, cost float64) place {
	p := place{at: at, u: level, cost: cost, leads: true, tail: w.anchor}
	p.tip, p.pin = w.edge(at, w.anchor)
	return p
}

// alongside returns more level places beside a label's dimension line, in steps of half the
// letters' height.
func (w *want) alongside(em float64) (places []place) {
	way := w.q.Minus(w.p)
	span := way.Length()
	if span == 0 {
		return nil
	}
	side := way.Times(1 / span).Left()
	for along := 0.5 * em; along < 0.48*span; along += 0.5 * em {
		for _, t := range [2]float64{along, -along} {
			at := w.anchor.Along(way, t/span)
			for i, d := range [2]Point{side, side.Times(-1)} {
				places = append(places, place{
					at: at.Along(d, w.support(d)+labelGap*em), u: level, pin: pinned(d.X),
					cost: 1.2 + 2*along/span + 0.2*float64(i),
				})
			}
		}
	}
	return places
}

// edge returns where a leader line meets a level label, and the end at which the
// label is then held: at the middle of an end, or above or below where the label
// stands right over its anchor.
func (w *want) edge(at, anchor Point) (Point, pin) {
	switch way := anchor.Minus(at); {
	case way.X > w.hw:
		return Point{at.X + w.hw, at.Y}, atEnd
	case way.X < -w.hw:
		return Point{at.X - w.hw, at.Y}, atStart
	case way.Y > 0:
		return Point{anchor.X, at.Y + w.hh}, atMiddle
	default:
		return Point{anchor.X, at.Y - w.hh}, atMiddle
	}
}
