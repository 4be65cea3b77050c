package frame

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"

	"plumbline/calculators"
	"plumbline/calculators/calctest"
)

// The tests' own bike: points on paper, found by sliding and turning them until they
// fit (halving an interval), and none of the calculators' closed forms. Lengths in
// mm, angles in degrees, the bottom bracket at (0, 0), x forward, y up.

type vec struct{ x, y float64 }

func (a vec) plus(b vec) vec      { return vec{a.x + b.x, a.y + b.y} }
func (a vec) minus(b vec) vec     { return vec{a.x - b.x, a.y - b.y} }
func (a vec) times(k float64) vec { return vec{k * a.x, k * a.y} }
func (a vec) dot(b vec) float64   { return a.x*b.x + a.y*b.y }
func (a vec) length() float64     { return math.Sqrt(a.dot(a)) }
func towards(degrees float64) vec { return vec{math.Cos(rad(degrees)), math.Sin(rad(degrees))} }
func rad(degrees float64) float64 { return degrees * math.Pi / 180 }
func (a vec) turned(deg float64) vec {
	c := towards(deg)
	return vec{c.x*a.x - c.y*a.y, c.y*a.x + c.x*a.y}
}

// root halves an interval until it holds the zero of f, which has unlike signs at the
// ends.
func root(low, high float64, f func(float64) float64) float64 {
	below := f(low) < 0
	for range 80 {
		if middle := (low + high) / 2; (f(middle) < 0) == below {
			low = middle
		} else {
			high = middle
		}
	}
	return (low + high) / 2
}

// paper is a chart: what is drawn.
type paper struct {
	reach, stack, head, seat, stay, drop, offset float64
	front, rear                                  float64 // radii
	// level is where the seat angle is read, tube the tube's own angle; 0 for none.
	level, tube float64
}

// drawn is a bike on paper.
type drawn struct {
	top         vec // of the head tube
	axis        vec // a point of the steering axis
	foot        vec // of the square from the front axle on the steering axis
	front, rear vec // axles
	head        float64
	rF, rR      float64
	seat        float64
	low, high   vec // two points of the seat tube's line
}

// draw finds the bike whose wheels stand on one level ground with the bottom bracket
// as far below the line between the axles as the chart says.
func draw(p paper) drawn {
	d := drawn{top: vec{p.reach, p.stack}, axis: vec{p.reach, p.stack}, head: p.head, rF: p.front, rR: p.rear,
		seat: p.seat}
	height := root(0, 800, func(h float64) float64 {
		d.place(p, h)
		share := (0 - d.rear.x) / (d.front.x - d.rear.x)
		return d.rear.y + share*(d.front.y-d.rear.y) - p.drop // falls as h grows
	})
	d.place(p, height)
	level, tube := p.level, p.tube
	if level == 0 {
		level = p.stack
	}
	read := towards(180 - p.seat)
	d.high = read.times(level / read.y)
	d.low = vec{}
	if tube > 0 {
		d.low = d.high.minus(towards(180 - tube).times(level))
	}
	return d
}

// place puts the axles where a height of the bottom bracket asks for them.
func (d *drawn) place(p paper, height float64) {
	down, ahead := towards(-p.head), towards(90-p.head)
	s := root(-2000, 3000, func(s float64) float64 {
		return p.front - height - d.top.plus(down.times(s)).plus(ahead.times(p.offset)).y
	})
	d.foot = d.top.plus(down.times(s))
	d.front = d.foot.plus(ahead.times(p.offset))
	up := p.rear - height
	d.rear = vec{root(-p.stay, 0, func(x float64) float64 { return p.stay - vec{x, up}.length() }), up}
}

func (d drawn) ground() float64    { return d.rear.y - d.rR }
func (d drawn) height() float64    { return -d.ground() }
func (d drawn) wheelbase() float64 { return d.front.x - d.rear.x }

// trail slides down the steering axis to the ground.
func (d drawn) trail() float64 {
	down := towards(-d.head)
	s := root(0, 5000, func(s float64) float64 { return d.ground() - d.axis.plus(down.times(s)).y })
	return d.axis.plus(down.times(s)).x - d.front.x
}

// square returns how far the front contact lies behind the steering axis, square to it.
func (d drawn) square() float64 {
	return -vec{d.front.x, d.ground()}.minus(d.axis).dot(towards(90 - d.head))
}

// seatAt slides along the seat tube's line until far(point) is 0.
func (d drawn) seatAt(far func(vec) float64) vec {
	way := d.high.minus(d.low).times(1 / d.high.minus(d.low).length())
	return d.low.plus(way.times(root(0, 3000, func(s float64) float64 { return far(d.low.plus(way.times(s))) })))
}

func (d drawn) topTube() float64 {
	return d.top.x - d.seatAt(func(p vec) float64 { return p.y - d.top.y }).x
}

// saddle returns the point of the seat line at a distance from the bottom bracket.
func (d drawn) saddle(height float64) vec {
	return d.seatAt(func(p vec) float64 { return p.length() - height })
}

// moved is what is changed about a bike, as geometry names it.
type moved struct{ fork, offset, front, rear, sagFront, sagRear, headset, pivot float64 }

// settled moves the axles in the frame, and turns the bike about the bottom bracket
// until both wheels stand on one level.
func (d drawn) settled(m moved) drawn {
	along := d.foot.minus(d.axis).length()
	off := d.front.minus(d.foot).dot(towards(90 - d.head))
	centre := d.axis.plus(towards(-d.head).times(m.pivot))
	d.head += m.headset
	down, ahead := towards(-d.head), towards(90-d.head)
	d.axis = centre.minus(down.times(m.pivot))
	d.foot = d.axis.plus(down.times(along + m.fork - m.sagFront))
	d.front = d.foot.plus(ahead.times(off + m.offset))
	d.rear.y += m.sagRear
	d.rF += m.front
	d.rR += m.rear
	tilt := root(-30, 30, func(deg float64) float64 {
		return d.rear.turned(-deg).y - d.rR - (d.front.turned(-deg).y - d.rF)
	})
	for _, p := range []*vec{&d.top, &d.axis, &d.foot, &d.front, &d.rear, &d.low, &d.high} {
		*p = p.turned(-tilt)
	}
	d.head += tilt
	d.seat += tilt
	return d
}

// eight are the numbers of bikeOutputs, in the order of its list.
func (d drawn) eight() [8]float64 {
	return [8]float64{d.head, d.seat, d.height(), d.top.x, d.top.y, d.trail(), d.wheelbase(), d.topTube()}
}

// wantEight wants a group of outputs to be eight numbers.
func wantEight(o bikeOutputs, want [8]float64) (list []calctest.Want) {
	for i, one := range o.list() {
		list = append(list, calctest.Is(one, want[i], 1e-7))
	}
	return list
}

func minusEight(a, b [8]float64) [8]float64 {
	for i := range a {
		a[i] -= b[i]
	}
	return a
}

// expanded is the law of propagation of uncertainty at k = 2 (JCGM 100:2008, 5.1.2)
// with slopes by differences of one standard uncertainty each way.
func expanded(f func(x []float64) float64, x, sd []float64) float64 {
	sum := 0.0
	for i, u := range sd {
		up, down := append([]float64{}, x...), append([]float64{}, x...)
		up[i] += u
		down[i] -= u
		half := (f(up) - f(down)) / 2
		sum += half * half
	}
	return 2 * math.Sqrt(sum)
}

// wantMargin wants the ± of an answer.
func wantMargin(t *testing.T, r *calculators.Result, o *calculators.Output, want float64) {
	t.Helper()
	assert.InEpsilon(t, want, float64(r.At(o).Uncertainty), 1e-6, "the ± of %s", o.Name)
}
