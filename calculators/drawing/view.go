package drawing

import "math"

// view is what is drawn in one cell: marks, and the corners of what has to be seen.
type view struct {
	low, high Point
	marks     []Mark
}

// margin is kept round the marks at least, in heights of the letters; steps is into
// how many parts of that height the frame's edges go.
const (
	margin = 0.4
	steps  = 2.0
)

// How often a larger height of letters is tried until all fits, and then a smaller one
// again.
const rounds, backwards = 14, 3

// tooFar is by how much marks are made smaller at most to make room for their labels.
const tooFar = 2.2

// lay draws the view on the sheet and settles the labels. Room is the size of its cell
// in heights of letters; em is that height in mm, 0 for the one at which marks and
// labels fill the room. It returns the frame in mm, which is at least as wide as the
// room.
func (s *sheet) lay(v *view, room Point, em float64) bounds {
	if em > 0 {
		frame, _ := s.try(v, room, em)
		return frame
	}
	box, fixed := v.fixed()
	if !fixed {
		s.draw(v, 0)
		box = s.extent()
	}
	spare := 2*margin + 1/steps
	em = lettering(max((box.high.X-box.low.X)/(room.X-spare), (box.high.Y-box.low.Y)/(room.Y-spare), 0.01))
	frame, goal := s.try(v, room, em)
	first, tight := em, em // letters that were too small, so that the marks were too large
	for range rounds {
		if goal == 0 || em > tooFar*first {
			break
		}
		// The way there is gone in parts, because labels find other places on it.
		tight, em = em, lettering(max(em+float64(0.5*(goal-em)), 1.03*em))
		frame, goal = s.try(v, room, em)
	}
	tried := em
	for range backwards {
		between := lettering((tight + em) / 2)
		if goal > 0 || between >= em || em <= 1.05*tight {
			break
		}
		var over float64
		if frame, over = s.try(v, room, between); over > 0 {
			tight = between
		} else {
			em = between
		}
		tried = between
	}
	if tried != em {
		frame, _ = s.try(v, room, em)
	}
	return frame
}

// try lays the view out with letters of this height. Where it does not fit, it returns
// the height at which the marks would, if the labels added what they do now; else 0.
func (s *sheet) try(v *view, room Point, em float64) (frame bounds, goal float64) {
	s.draw(v, em)
	box, fixed := v.fixed()
	if !fixed {
		box = s.extent()
		box.addAround(box.low, margin*em)
		box.addAround(box.high, margin*em)
	}
	size := box.high.Minus(box.low)
	most := Point{math.Floor(room.X*steps) / steps, room.Y}
	frame = s.settle(box.filled(most.X*em, em/steps))
	frame.widen(em / steps)
	if frame.high.X-frame.low.X > most.X*em {
		// What sticks out on one side takes the empty paper of the other.
		for i := range s.wants {
			if w := &s.wants[i]; w.placed {
				box.addBox(w, edgeRoom*s.em)
			}
		}
		box.widen(em / steps)
		frame.low.X, frame.high.X = box.low.X, box.high.X
	}
	goal = max(grown(size.X, em, (frame.high.X-frame.low.X)/em, most.X),
		grown(size.Y, em, (frame.high.Y-frame.low.Y)/em, most.Y))
	return frame.filled(room.X*em, em/steps), goal
}

// fixed returns the corners of what has to be seen, if they are given.
func (v *view) fixed() (box bounds, ok bool) {
	if v.low == v.high || !drawable(v.low, v.high) {
		return box, false
	}
	box.add(v.low)
	box.add(v.high)
	return box, true
}

// grown returns the height of letters at which marks of this size, with what the labels
// now add to it, fit into room; 0 where they do now.
func grown(size, em, now, room float64) float64 {
	if now <= room+1e-6 {
		return 0
	}
	labels := now - size/em
	return min(size/max(room-labels, room/4), 1.5*em)
}

// lettering rounds the height of letters up in steps of some 2 %. Together with
// bounds.widen it makes a figure keep still while somebody tries numbers: what a
// number does not move stays where it was, and so does the page below.
func lettering(em float64) float64 {
	step := 1.0
	for em > 64*step {
		step *= 2
	}
	for em <= 32*step {
		step /= 2
	}
	return math.Ceil(em/step) * step
}

// filled returns the rectangle, made as wide as width to both sides if it is narrower;
// its left edge goes in steps.
func (b bounds) filled(width, step float64) bounds {
	if !b.some {
		b.add(Point{})
	}
	if spare := width - (b.high.X - b.low.X); spare > 0 {
		b.low.X = math.Floor((b.low.X-spare/2)/step+0.5) * step
		b.high.X = b.low.X + width
	}
	return b
}

// draw puts the view's marks on the sheet with letters of the given height.
func (s *sheet) draw(v *view, em float64) {
	s.reset(em)
	for _, m := range v.marks {
		if m != nil {
			m.draw(s)
		}
	}
}
