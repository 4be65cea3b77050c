package drawing

import "slices"

// segment is a straight piece of something drawn; weight is how bad it is for a
// label to stand on it.
type segment struct {
	p, q     Point
	weight   float64
	col, row uint8 // its first cell in the grid
}

// box returns the corners of the upright box round the segment.
func (g *segment) box() (low, high Point) {
	return Point{min(g.p.X, g.q.X), min(g.p.Y, g.q.Y)}, Point{max(g.p.X, g.q.X), max(g.p.Y, g.q.Y)}
}

// near tells whether the upright box round the segment meets another.
func (g *segment) near(low, high Point) bool {
	return min(g.p.X, g.q.X) < high.X && max(g.p.X, g.q.X) > low.X &&
		min(g.p.Y, g.q.Y) < high.Y && max(g.p.Y, g.q.Y) > low.Y
}

// ring is a circle's line.
type ring struct {
	centre Point
	radius float64
	weight float64
}

// A label that falls on another is refused; all other costs are weighed
// against each other.
const (
	refused      = 1e6
	costOfLeader = 30.0 // a leader line over a label
	costOfGrowth = 0.9  // each letter's height that the frame has to grow
	goodEnough   = 3.0  // below this no leader line is tried
)

// weigh returns how bad it is for a label to stand on a line.
func weigh(role Role, pen Pen, fill Fill) float64 {
	switch {
	case fill == Solid:
		return 7
	case pen == NoPen:
		return 0
	case role == Hot:
		return 7
	case pen == Wide || pen == Heavy:
		return 6
	case role == Soft && pen == Thin:
		return 1.5
	case pen == Thin:
		return 3
	default:
		return 2.5
	}
}

// gather breaks the shapes into segments and rings.
func (s *sheet) gather() {
	if need := 2 * len(s.points); cap(s.segments) < need {
		s.segments = make([]segment, 0, need)
	}
	for _, h := range s.shapes {
		weight := max(h.guard, weigh(h.role, h.pen, h.fill))
		if weight == 0 {
			continue
		}
		p := s.pointsOf(h)
		n := len(p)
		switch h.kind {
		case kindOpen, kindClosed:
			for i := 1; i < n; i++ {
				s.obstruct(p[i-1], p[i], weight)
			}
			if h.kind == kindClosed && n > 2 {
				s.obstruct(p[n-1], p[0], weight)
			}
		case kindCurve, kindClosedCurve:
			s.obstructCurve(p, h.kind == kindClosedCurve, weight)
		case kindCircle:
			s.rings = append(s.rings, ring{p[0], h.a, weight})
		case kindArc:
			last := arcPoint(p[0], h.a, p[1], 0)
			for i := 1; i <= arcSteps; i++ {
				next := arcPoint(p[0], h.a, p[1], i)
				s.obstruct(last, next, weight)
				last = next
			}
		case kindLimb:
			if t, ok := limbTangents(p[0], p[1], h.a, h.b); ok {
				s.obstruct(t[0], t[1], weight)
				s.obstruct(t[2], t[3], weight)
			}
			s.rings = append(s.rings, ring{p[0], h.a, weight / 2}, ring{p[1], h.b, weight / 2})
		}
	}
}

func (s *sheet) obstruct(p, q Point, weight float64) {
	s.segments = append(s.segments, segment{p: p, q: q, weight: weight})
}

// obstructCurve cuts each piece of a smooth curve in two at its middle, unless
// it is so short that its chord will do.
func (s *sheet) obstructCurve(p []Point, closed bool, weight float64) {
	pieces := len(p) - 1
	if closed {
		pieces = len(p)
	}
	for i := range pieces {
		a, b, c, d := neighbours(p, i, closed)
		if way := c.Minus(b); way.Dot(way) < float64(s.em*s.em)*2.5 {
			s.obstruct(b, c, weight)
			continue
		}
		e, f := bezier(a, b, c, d)
		middle := b.Plus(c).Plus(e.Plus(f).Times(3)).Times(1.0 / 8)
		s.obstruct(b, middle, weight)
		s.obstruct(middle, c, weight)
	}
}

// settle places every label: the important ones first, each at its cheapest
// place; then those that came off badly are asked again, now that all the
// others stand. It returns the frame, grown where a label needs it.
func (s *sheet) settle(frame bounds) bounds {
	if len(s.wants) == 0 {
		return frame
	}
	s.gather()
	s.grid.sortIn(s.segments, frame, s.em)
	order := make([]int, len(s.wants))
	for i := range order {
		order[i] = i
	}
	slices.SortStableFunc(order, func(i, j int) int {
		a, b := &s.wants[i], &s.wants[j]
		if a.fixed != b.fixed {
			if a.fixed {
				return -1
			}
			return 1
		}
		return b.priority - a.priority
	})
	for _, i := range order {
		s.choose(&s.wants[i], frame)
	}
	for _, i := range order {
		if w := &s.wants[i]; !w.fixed && w.cost > goodEnough {
			w.placed = false
			s.choose(w, frame)
		}
	}
	for _, i := range order {
		w := &s.wants[i]
		if w.placed {
			frame.addBox(w, 0.15*s.em)
		} else if !w.fixed {
			s.banish(w, &frame)
		}
	}
	return frame
}

// choose puts a label at its cheapest place. It leaves the label unplaced if
// every place falls on another label.
func (s *sheet) choose(w *want, frame bounds) {
	w.cost = refused
	for _, p := range s.places[w.first:w.last] {
		s.consider(w, p, frame)
	}
	if w.cost > goodEnough && !w.fixed {
		w.leaders(s.em, Point{}, goodEnough, func(p place) bool {
			s.consider(w, p, frame)
			// Places farther off only cost more.
			return p.cost < w.cost+0.3
		})
	}
	w.placed = w.cost < refused
}

// consider takes place p if it costs less than the best one so far.
func (s *sheet) consider(w *want, p place, frame bounds) {
	if p.cost < w.cost {
		if cost := s.judge(w, &p, frame); cost < w.cost {
			w.cost, w.chosen = cost, p
		}
	}
}

// banish puts a label for which there was no place below everything else, with
// a leader line, and grows the frame round it.
func (s *sheet) banish(w *want, frame *bounds) {
	at := Point{w.anchor.X, frame.low.Y - w.hh - 0.2*s.em}
	w.chosen = place{at: at, u: level, leads: true, tail: w.anchor}
	w.chosen.tip, w.chosen.pin = w.edge(at, w.anchor)
	w.placed = true
	frame.addBox(w, 0.15*s.em)
}

// addBox grows the frame round a placed label.
func (b *bounds) addBox(w *want, room float64) {
	x, y := w.chosen.reach(w)
	b.add(w.chosen.at.Plus(Point{x + room, y + room}))
	b.add(w.chosen.at.Minus(Point{x + room, y + room}))
}

// reach returns half the width and height of the upright box round the label
// at this place.
func (p *place) reach(w *want) (x, y float64) {
	if p.u == level {
		return w.hw, w.hh
	}
	ux, uy := max(p.u.X, -p.u.X), max(p.u.Y, -p.u.Y)
	return float64(ux*w.hw) + float64(uy*w.hh), float64(uy*w.hw) + float64(ux*w.hh)
}

// judge returns what it costs to put w at p. It stops counting where p cannot
// be the cheapest place any more.
func (s *sheet) judge(w *want, p *place, frame bounds) float64 {
	cost := p.cost
	rx, ry := p.reach(w)
	low, high := Point{p.at.X - rx, p.at.Y - ry}, Point{p.at.X + rx, p.at.Y + ry}
	grow := max(0, frame.low.X-low.X) + max(0, high.X-frame.high.X) +
		max(0, frame.low.Y-low.Y) + max(0, high.Y-frame.high.Y)
	if cost += costOfGrowth * grow / s.em; cost >= w.cost {
		return cost
	}
	for i := range s.wants {
		o := &s.wants[i]
		if !o.placed || o == w {
			continue
		}
		if overlap(w, p, o, &o.chosen) {
			return refused
		}
		if o.chosen.leads && crosses(w, p, o.chosen.tail, o.chosen.tip) {
			cost += costOfLeader
		}
		if p.leads && crosses(o, &o.chosen, p.tail, p.tip) {
			cost += costOfLeader
		}
		if cost >= w.cost {
			return cost
		}
	}
	if cost += s.crossing(w, p, low, high, w.cost-cost); cost >= w.cost {
		return cost
	}
	for _, r := range s.rings {
		if touches(w, p, r) {
			cost += r.weight
		}
	}
	if p.leads && cost < w.cost {
		cost += s.crossed(p)
	}
	return cost
}

// crossed returns a small cost for each line that a leader line crosses.
func (s *sheet) crossed(p *place) (cost float64) {
	low := Point{min(p.tail.X, p.tip.X), min(p.tail.Y, p.tip.Y)}
	high := Point{max(p.tail.X, p.tip.X), max(p.tail.Y, p.tip.Y)}
	for i := range s.segments {
		g := &s.segments[i]
		if g.near(low, high) {
			cost += 0.08 * g.weight
		}
	}
	return cost
}

// inBox returns q as seen from the label at p: along its letters and across.
func (p *place) inBox(q Point) (x, y float64) {
	d := q.Minus(p.at)
	if p.u == level {
		return d.X, d.Y
	}
	return d.Dot(p.u), d.Dot(p.u.Left())
}

// crosses tells whether the straight line from a to b runs through the label.
func crosses(w *want, p *place, a, b Point) bool {
	ax, ay := p.inBox(a)
	bx, by := p.inBox(b)
	t0, t1 := 0.0, 1.0
	return clip(ax, bx-ax, w.hw, &t0, &t1) && clip(ay, by-ay, w.hh, &t0, &t1)
}

// clip narrows [t0, t1] to where |from + t·way| < half, and tells whether
// anything is left.
func clip(from, way, half float64, t0, t1 *float64) bool {
	if way == 0 {
		return from > -half && from < half
	}
	a, b := (-half-from)/way, (half-from)/way
	if a > b {
		a, b = b, a
	}
	*t0, *t1 = max(*t0, a), min(*t1, b)
	return *t0 < *t1
}

// touches tells whether a circle's line runs through the label.
func touches(w *want, p *place, r ring) bool {
	x, y := p.inBox(r.centre)
	x, y = max(x, -x), max(y, -y)
	nearX, nearY := max(0, x-w.hw), max(0, y-w.hh)
	farX, farY := x+w.hw, y+w.hh
	square := r.radius * r.radius
	return float64(nearX*nearX)+float64(nearY*nearY) < square && float64(farX*farX)+float64(farY*farY) > square
}

// overlap tells whether two labels share any ground (separating axes).
func overlap(a *want, p *place, b *want, q *place) bool {
	ax, ay := p.reach(a)
	bx, by := q.reach(b)
	d := q.at.Minus(p.at)
	if max(d.X, -d.X) >= ax+bx || max(d.Y, -d.Y) >= ay+by {
		return false
	}
	if p.u == level && q.u == level {
		return true
	}
	return !apart(d, p.u, a.hw, q.u, b) && !apart(d, p.u.Left(), a.hh, q.u, b) &&
		!apart(d, q.u, b.hw, p.u, a) && !apart(d, q.u.Left(), b.hh, p.u, a)
}

// apart tells whether two boxes a displacement d apart are parted by a line
// square to axis: half is the one box's reach along it, the other lies along u.
func apart(d, axis Point, half float64, u Point, other *want) bool {
	along, across := axis.Dot(u), axis.Dot(u.Left())
	reach := float64(max(along, -along)*other.hw) + float64(max(across, -across)*other.hh)
	gap := d.Dot(axis)
	return max(gap, -gap) >= half+reach
}
