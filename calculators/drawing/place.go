package drawing

import (
	"cmp"
	"slices"
)

// A label that falls on another is refused; all other costs are weighed
// against each other.
const (
	refused        = 1e6
	costOfLeader   = 30.0  // a leader line over a label
	costOfCrossing = 0.065 // a leader line over a line, as a share of its weight
	costOfDistance = 0.8   // each letter's height that a leader line is long
	costOfGrowth   = 0.9   // each letter's height that the frame has to grow
	goodEnough     = 3.0   // below this no leader line is tried
	muchUnder      = 5.0   // from this on the whole paper is searched for a place
	leastLeader    = 0.8   // how long a leader line is at least, in heights of letters
)

// edgeRoom is kept between a label and the edge of the frame, in heights of its letters.
const edgeRoom = 0.15

// settle places every label: the important ones first, each at its cheapest
// place; then those that came off badly are asked again, now that all the
// others stand. It returns the frame, grown where a label needs it.
func (s *sheet) settle(frame bounds) bounds {
	if len(s.wants) == 0 {
		return frame
	}
	s.gather()
	order := s.order()
	for _, i := range order {
		s.choose(&s.wants[i], &frame)
	}
	for _, i := range order {
		if w := &s.wants[i]; !w.fixed && w.cost > goodEnough {
			w.placed = false
			s.choose(w, &frame)
			s.seek(w, &frame)
		}
	}
	for _, i := range order {
		w := &s.wants[i]
		if w.placed {
			frame.addBox(w, edgeRoom*s.em)
		} else if !w.optional {
			s.banish(w, &frame)
		}
	}
	return frame
}

// order returns the labels in the order in which they are placed: the fixed ones,
// then by priority; equal ones as they came.
func (s *sheet) order() []int {
	order := make([]int, len(s.wants))
	for i := range order {
		order[i] = i
	}
	slices.SortStableFunc(order, func(i, k int) int {
		a, b := &s.wants[i], &s.wants[k]
		switch {
		case a.fixed == b.fixed:
			return cmp.Compare(b.priority, a.priority)
		case a.fixed:
			return -1
		}
		return 1
	})
	return order
}

// choose puts a label at its cheapest place; a fixed one leaves the place it is fixed to
// only where another label stands there. It leaves the label unplaced if every place
// falls on another label.
func (s *sheet) choose(w *want, frame *bounds) {
	w.cost = refused
	for i := w.first; i < w.last; i++ {
		s.consider(w, &s.places[i], frame)
	}
	if w.cost > goodEnough && !w.fixed || w.cost == refused && !w.optional {
		for _, p := range w.leaders(s.em, Point{}, goodEnough) {
			s.consider(w, &p, frame)
		}
	}
	w.placed = w.cost < refused
}

// consider takes place p if it costs less than the best one so far.
func (s *sheet) consider(w *want, p *place, frame *bounds) {
	if p.cost < w.cost {
		if cost := s.judge(w, p, frame); cost < w.cost {
			w.cost, w.chosen = cost, *p
		}
	}
}

// seek looks for a better place for a label that came off badly: more of them along its
// dimension line, then all over the paper, with a leader line, and once more in finer
// steps where it would still stand on a strong line.
func (s *sheet) seek(w *want, frame *bounds) {
	if w.cost < muchUnder {
		return
	}
	for _, p := range w.alongside(s.em) {
		s.consider(w, &p, frame)
	}
	for _, step := range [2]float64{1.2, 0.5} {
		if s.roam(w, frame, Point{step * s.em, step * s.em / 1.5}); w.cost < strong {
			break
		}
	}
	w.placed = w.cost < refused
}

// roam tries places all over the paper, a step apart: those nearest to the anchor first,
// until what is farther off can cost no less than the best so far.
func (s *sheet) roam(w *want, frame *bounds, step Point) {
	low := Point{frame.low.X + w.hw + edgeRoom*s.em, frame.low.Y + w.hh + edgeRoom*s.em}
	high := Point{frame.high.X - w.hw - edgeRoom*s.em, frame.high.Y - w.hh - edgeRoom*s.em}
	far := func(off, half float64) bool { return 1+costOfDistance*(off-half)/s.em >= w.cost }
	for down := 0.0; down <= high.Y-low.Y && !far(down, w.hh); down += step.Y {
		for back := 0.0; back <= high.X-low.X && !far(back, w.hw); back += step.X {
			for _, at := range [4]Point{{back, down}, {-back, down}, {back, -down}, {-back, -down}} {
				at = at.Plus(w.anchor)
				if at.X < low.X || at.X > high.X || at.Y < low.Y || at.Y > high.Y {
					continue
				}
				p := w.led(at, 1)
				if off := p.tip.Minus(p.tail).Length() / s.em; off >= leastLeader {
					p.cost += costOfDistance * off
					s.consider(w, &p, frame)
				}
			}
		}
	}
}

// banish puts a label for which there was no place below everything else, with
// a leader line, and grows the frame round it.
func (s *sheet) banish(w *want, frame *bounds) {
	side := min(w.hw+edgeRoom*s.em, (frame.high.X-frame.low.X)/2)
	at := Point{min(max(w.anchor.X, frame.low.X+side), frame.high.X-side), frame.low.Y - w.hh - 0.2*s.em}
	w.chosen = w.led(at, 0)
	w.placed = true
	frame.addBox(w, edgeRoom*s.em)
}

// judge returns what it costs to put w at p. It stops counting where p cannot
// be the cheapest place any more.
func (s *sheet) judge(w *want, p *place, frame *bounds) float64 {
	low, high := p.box(w)
	grow := max(frame.low.X-low.X, 0) + max(high.X-frame.high.X, 0)
	if s.level {
		grow = max(frame.low.X-low.X+edgeRoom*s.em, 0) + max(high.X-frame.high.X+edgeRoom*s.em, 0)
		grow *= 3 // a phone has more room below than beside
	}
	grow += max(frame.low.Y-low.Y, 0) + max(high.Y-frame.high.Y, 0)
	cost := p.cost + costOfGrowth*grow/s.em
	for i := range s.wants {
		o := &s.wants[i]
		if !o.placed || o == w {
			continue
		}
		q := &o.chosen
		if overlap(w, p, o, q) {
			return refused
		}
		if q.leads && crosses(w, p, q.tail, q.tip) {
			cost += costOfLeader
		}
		if p.leads && crosses(o, q, p.tail, p.tip) {
			cost += costOfLeader
		}
	}
	ledLow, ledHigh := box(p.tail, p.tip)
	under, led := 0.0, 0.0 // weights of the lines under the label and its leader line
	for _, l := range s.segments {
		if cost+under >= w.cost {
			return cost + under
		}
		if !misses(low, high, l.p, l.q) && crosses(w, p, l.p, l.q) {
			under += l.weight
		}
		if p.leads && !misses(ledLow, ledHigh, l.p, l.q) {
			led += l.weight
		}
	}
	for _, r := range s.rings {
		if touches(w, p, r) {
			under += r.weight
		}
	}
	return cost + under + costOfCrossing*led
}
