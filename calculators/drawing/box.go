package drawing

import "math"

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
	ux, uy := math.Abs(p.u.X), math.Abs(p.u.Y)
	return float64(ux*w.hw) + float64(uy*w.hh), float64(uy*w.hw) + float64(ux*w.hh)
}

// box returns the corners of the upright box round the label at this place.
func (p *place) box(w *want) (low, high Point) {
	x, y := p.reach(w)
	return Point{p.at.X - x, p.at.Y - y}, Point{p.at.X + x, p.at.Y + y}
}

// turned returns a displacement as seen from the label: along its letters and
// across.
func (p *place) turned(x, y float64) (float64, float64) {
	return float64(x*p.u.X) + float64(y*p.u.Y), float64(y*p.u.X) - float64(x*p.u.Y)
}

// crosses tells whether the straight line from a to b runs through the label.
func crosses(w *want, p *place, a, b Point) bool {
	ax, ay, bx, by := a.X-p.at.X, a.Y-p.at.Y, b.X-p.at.X, b.Y-p.at.Y
	if p.u != level {
		ax, ay = p.turned(ax, ay)
		bx, by = p.turned(bx, by)
	}
	t0, t1 := 0.0, 1.0
	return clip(ax, bx-ax, w.hw, &t0, &t1) && clip(ay, by-ay, w.hh, &t0, &t1)
}

// clip narrows [t0, t1] to where |from + t·way| < half, and tells whether
// anything is left.
func clip(from, way, half float64, t0, t1 *float64) bool {
	if way == 0 {
		return math.Abs(from) < half
	}
	a, b := (-half-from)/way, (half-from)/way
	*t0, *t1 = max(*t0, min(a, b)), min(*t1, max(a, b))
	return *t0 < *t1
}

// touches tells whether a circle's line runs through the label.
func touches(w *want, p *place, r ring) bool {
	x, y := r.centre.X-p.at.X, r.centre.Y-p.at.Y
	if p.u != level {
		x, y = p.turned(x, y)
	}
	x, y = math.Abs(x), math.Abs(y)
	nearX, nearY := max(x-w.hw, 0), max(y-w.hh, 0)
	farX, farY := x+w.hw, y+w.hh
	square := r.radius * r.radius
	return float64(nearX*nearX)+float64(nearY*nearY) < square && float64(farX*farX)+float64(farY*farY) > square
}

// overlap tells whether two labels share any ground (separating axes).
func overlap(a *want, p *place, b *want, q *place) bool {
	ax, ay := p.reach(a)
	bx, by := q.reach(b)
	d := q.at.Minus(p.at)
	if math.Abs(d.X) >= ax+bx || math.Abs(d.Y) >= ay+by {
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
	reach := float64(math.Abs(along)*other.hw) + float64(math.Abs(across)*other.hh)
	gap := d.Dot(axis)
	return math.Abs(gap) >= half+reach
}

// box returns the corners of the upright box round two points.
func box(p, q Point) (low, high Point) {
	return Point{min(p.X, q.X), min(p.Y, q.Y)}, Point{max(p.X, q.X), max(p.Y, q.Y)}
}

// misses tells whether the line from p to q lies wholly on one side of an upright box.
func misses(low, high, p, q Point) bool {
	return p.X <= low.X && q.X <= low.X || p.X >= high.X && q.X >= high.X ||
		p.Y <= low.Y && q.Y <= low.Y || p.Y >= high.Y && q.Y >= high.Y
}
