package drawing

// A label that falls on another is refused; all other costs are weighed
// against each other.
const (
	refused        = 1e6
	costOfLeader   = 30.0 // a leader line over a label
	costOfCrossing = 0.08 // a leader line over a line, as a share of its weight
	costOfGrowth   = 0.9  // each letter's height that the frame has to grow
	goodEnough     = 3.0  // below this no leader line is tried
)

// settle places every label: the important ones first, each at its cheapest
// place; then those that came off badly are asked again, now that all the
// others stand. It returns the frame, grown where a label needs it.
func (s *sheet) settle(frame bounds) bounds {
	if len(s.wants) == 0 {
		return frame
	}
	s.gather()
	s.grid.sortIn(s.segments, frame, s.em)
	order := s.order()
	for _, i := range order {
		s.choose(&s.wants[i], &frame)
	}
	moved := false
	for _, i := range order {
		w := &s.wants[i]
		// The labels that came later only make places dearer. So where none has moved
		// that stood already, the place that costs what it did is still the cheapest.
		if w.fixed || w.cost <= goodEnough || !moved && s.judge(w, &w.chosen, &frame) == w.cost {
			continue
		}
		at := w.chosen.at
		w.placed = false
		s.choose(w, &frame)
		moved = moved || w.chosen.at != at || !w.placed
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

// order returns the labels in the order in which they are placed: the fixed ones,
// then by priority; equal ones as they came. There are a dozen, so each is simply
// moved forward to its place.
func (s *sheet) order() []int {
	order := make([]int, len(s.wants))
	for i := range order {
		k := i
		for ; k > 0 && s.wants[i].before(&s.wants[order[k-1]]); k-- {
			order[k] = order[k-1]
		}
		order[k] = i
	}
	return order
}

// before tells whether w is placed before o, which came earlier.
func (w *want) before(o *want) bool {
	if w.fixed != o.fixed {
		return w.fixed
	}
	return w.priority > o.priority
}

// choose puts a label at its cheapest place. It leaves the label unplaced if
// every place falls on another label.
func (s *sheet) choose(w *want, frame *bounds) {
	w.cost = refused
	for i := w.first; i < w.last; i++ {
		s.consider(w, &s.places[i], frame)
	}
	if w.cost > goodEnough && !w.fixed {
		w.leaders(s.em, Point{}, goodEnough, func(p *place) bool {
			s.consider(w, p, frame)
			// Places farther off only cost more.
			return p.cost < w.cost+0.3
		})
	}
	if w.placed = w.cost < refused; w.placed {
		w.low, w.high = w.chosen.box(w)
	}
}

// consider takes place p if it costs less than the best one so far.
func (s *sheet) consider(w *want, p *place, frame *bounds) {
	if p.cost < w.cost {
		if cost := s.judge(w, p, frame); cost < w.cost {
			w.cost, w.chosen = cost, *p
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

// judge returns what it costs to put w at p. It stops counting where p cannot
// be the cheapest place any more.
func (s *sheet) judge(w *want, p *place, frame *bounds) float64 {
	cost := p.cost
	low, high := p.box(w)
	if low.X < frame.low.X || low.Y < frame.low.Y || high.X > frame.high.X || high.Y > frame.high.Y {
		grow := past(frame.low.X, low.X) + past(high.X, frame.high.X) +
			past(frame.low.Y, low.Y) + past(high.Y, frame.high.Y)
		if cost += costOfGrowth * grow / s.em; cost >= w.cost {
			return cost
		}
	}
	// Hundreds of places are judged for a figure, and most lie far from most of what
	// could be in their way: that takes no call to see.
	var from, to Point // the leader line's box
	if p.leads {
		from, to = box(p.tail, p.tip)
	}
	for i := range s.wants {
		o := &s.wants[i]
		if !o.placed || o == w {
			continue
		}
		q := &o.chosen
		if o.low.X < high.X && o.high.X > low.X && o.low.Y < high.Y && o.high.Y > low.Y && overlap(w, p, o, q) {
			return refused
		}
		if q.leads && crosses(w, p, q.tail, q.tip) {
			cost += costOfLeader
		}
		if p.leads && o.low.X < to.X && o.high.X > from.X && o.low.Y < to.Y && o.high.Y > from.Y && crosses(o, q, p.tail, p.tip) {
			cost += costOfLeader
		}
		if cost >= w.cost {
			return cost
		}
	}
	if cost += s.weigh(low, high, w, p, w.cost-cost); cost >= w.cost {
		return cost
	}
	for i := range s.rings {
		r := &s.rings[i]
		if low.X < r.centre.X+r.radius && high.X > r.centre.X-r.radius && low.Y < r.centre.Y+r.radius && high.Y > r.centre.Y-r.radius && touches(w, p, r) {
			cost += r.weight
		}
	}
	if p.leads && cost < w.cost {
		cost += costOfCrossing * s.weigh(from, to, nil, nil, (w.cost-cost)/costOfCrossing)
	}
	return cost
}
