package drawing

import (
	"math"

	"plumbline/calculators/words"
)

// kind tells how a shape's points are joined.
type kind uint8

const (
	kindOpen kind = iota
	kindClosed
	kindCurve
	kindClosedCurve
	kindCircle // one point, radius a
	kindArc    // one point, radius a, then a point (from, to) in degrees
	kindLimb   // two points, radii a and b
)

// shape is a mark broken down to what SVG knows.
type shape struct {
	role  Role
	pen   Pen
	fill  Fill
	kind  kind
	a, b  float64
	guard float64 // how bad it is for a label to stand on it, where above 0
	first int     // its points are sheet.points[first:first+count]
	count int
}

// sheet is where marks are laid out before they are written: what they are made
// of, what stands in a label's way, and the labels still to be placed. One
// sheet serves one figure once.
type sheet struct {
	em      float64 // height of the letters, mm; 0 while only sizes are taken
	reader  *words.Reader
	level   bool    // no label is turned
	longest float64 // how long a label runs before it is broken, in heights of letters
	bare    bool    // dimensions, angles and labels are left out

	points []Point
	shapes []shape
	hatch  bool // whether any shape is hatched
	inside int  // shapes before this one are cut off at the edge of a detail

	links    []Link
	wants    []want
	places   []place
	segments []segment
	rings    []ring
}

// shape adds one shape, or nothing if it cannot be drawn.
func (s *sheet) shape(role Role, pen Pen, fill Fill, k kind, a, b float64, points ...Point) bool {
	if len(points) == 0 || !drawable(points...) || !finite(a) || !finite(b) || a < 0 || b < 0 {
		return false
	}
	if k == kindCircle && a == 0 {
		return false
	}
	if pen == "" {
		pen = Wide
	}
	s.shapes = append(s.shapes, shape{
		role: role, pen: pen, fill: fill, kind: k, a: a, b: b, first: len(s.points), count: len(points),
	})
	s.points = append(s.points, points...)
	s.hatch = s.hatch || fill == Hatch
	return true
}

// guardLast keeps labels off the shape that was added last, as they keep off a
// strong line.
func (s *sheet) guardLast() {
	if n := len(s.shapes); n > 0 {
		s.shapes[n-1].guard = strong
	}
}

// arc adds an arc. A whole turn or more becomes a circle.
func (s *sheet) arc(role Role, pen Pen, centre Point, radius, from, to float64) {
	if math.Abs(to-from) >= 359.9 {
		s.shape(role, pen, Open, kindCircle, radius, 0, centre)
		return
	}
	if radius > 0 && finite(from) && finite(to) {
		s.shape(role, pen, Open, kindArc, radius, 0, centre, Point{from, to})
	}
}

// pointsOf returns the points of h.
func (s *sheet) pointsOf(h *shape) []Point { return s.points[h.first : h.first+h.count] }

// reset empties the sheet for another layout with letters of the given height.
func (s *sheet) reset(em float64) {
	s.em = em
	s.points, s.shapes = s.points[:0], s.shapes[:0]
	s.wants, s.places = s.wants[:0], s.places[:0]
	s.links = s.links[:0]
	s.segments, s.rings = s.segments[:0], s.rings[:0]
	s.hatch = false
}

// limbTangents returns the four points where a limb's sides meet its ends, in
// order round the outline: A left, B left, B right, A right of the way from A
// to B. It reports false when one circle holds the other.
func limbTangents(a, b Point, ra, rb float64) (p [4]Point, ok bool) {
	way := b.Minus(a)
	d := way.Length()
	if d <= math.Abs(ra-rb) || d == 0 {
		return p, false
	}
	u := way.Times(1 / d)
	n := u.Left()
	// The tangents lean by the angle whose sine is (ra − rb)/d.
	sin := (ra - rb) / d
	cos := math.Sqrt(1 - float64(sin*sin))
	left := u.Times(sin).Along(n, cos)
	right := u.Times(sin).Along(n, -cos)
	return [4]Point{a.Along(left, ra), b.Along(left, rb), b.Along(right, rb), a.Along(right, ra)}, true
}

// bounds is a growing rectangle.
type bounds struct {
	low, high Point
	some      bool
}

func (b *bounds) add(p Point) {
	if !b.some {
		b.low, b.high, b.some = p, p, true
		return
	}
	b.low = Point{min(b.low.X, p.X), min(b.low.Y, p.Y)}
	b.high = Point{max(b.high.X, p.X), max(b.high.Y, p.Y)}
}

func (b *bounds) addAround(p Point, r float64) {
	b.add(Point{p.X - r, p.Y - r})
	b.add(Point{p.X + r, p.Y + r})
}

// holds tells whether another rectangle lies inside.
func (b *bounds) holds(o bounds) bool {
	return o.low.X >= b.low.X && o.low.Y >= b.low.Y && o.high.X <= b.high.X && o.high.Y <= b.high.Y
}

// widen moves the edges out to the next whole multiples of a length.
func (b *bounds) widen(step float64) {
	b.low = Point{math.Floor(b.low.X/step) * step, math.Floor(b.low.Y/step) * step}
	b.high = Point{math.Ceil(b.high.X/step) * step, math.Ceil(b.high.Y/step) * step}
}

// extent returns the rectangle that holds every shape; curves and arcs are held
// by their points and full circles, which is enough for a frame with a margin.
func (s *sheet) extent() bounds {
	var box bounds
	for i := range s.shapes {
		h := &s.shapes[i]
		points := s.pointsOf(h)
		switch h.kind {
		case kindCircle:
			box.addAround(points[0], h.a)
		case kindArc:
			for i := range arcSteps + 1 {
				box.add(arcPoint(points[0], h.a, points[1], i))
			}
		case kindLimb:
			box.addAround(points[0], h.a)
			box.addAround(points[1], h.b)
		default:
			for _, p := range points {
				box.add(p)
			}
		}
	}
	return box
}

// arcSteps is into how many straight pieces an arc is cut where only its rough
// course matters.
const arcSteps = 8

// arcPoint is the i-th of arcSteps + 1 points along an arc.
func arcPoint(centre Point, radius float64, fromTo Point, i int) Point {
	t := float64(i) / arcSteps
	return centre.Plus(Polar(fromTo.X+float64(t*(fromTo.Y-fromTo.X)), radius))
}

// bezier returns the two inner control points of the piece from b to c of the
// smooth curve a, b, c, d (uniform Catmull–Rom).
func bezier(a, b, c, d Point) (Point, Point) {
	const sixth = 1.0 / 6
	return Point{b.X + float64(sixth*(c.X-a.X)), b.Y + float64(sixth*(c.Y-a.Y))},
		Point{c.X - float64(sixth*(d.X-b.X)), c.Y - float64(sixth*(d.Y-b.Y))}
}

// neighbours returns the points before, at, after and two after the i-th of a
// smooth curve.
func neighbours(points []Point, i int, closed bool) (a, b, c, d Point) {
	before, after, second, n := i-1, i+1, i+2, len(points)
	switch {
	case !closed:
		before, after, second = max(before, 0), min(after, n-1), min(second, n-1)
	case before < 0 || second >= n:
		before, after, second = (before+n)%n, after%n, second%n
	}
	return points[before], points[i], points[after], points[second]
}
