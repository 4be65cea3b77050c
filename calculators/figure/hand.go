package figure

import (
	"math"
	"slices"

	"plumbline/calculators/drawing"
)

// HandOnGrip is a hand that holds a grip, with one finger on the brake lever or none. It
// is a right hand, drawn from the rider's right or from above. Lengths are mm.
type HandOnGrip struct {
	Grip    Point   // the middle of the grip
	Thick   float64 // the grip's diameter
	Length  float64 // the hand's
	Finger  float64 // the index finger's
	Reach   float64 // front of the grip to the blade's outer face; 0 leaves the lever out
	Forearm float64 // how much of it is drawn
	Inner   float64 // how much of the bar is drawn from the middle of the grip inwards
	// Held is drawn in the hand, seen from above, instead of a plain bar and grip.
	Held []drawing.Mark
	// Turn is the direction in which the lever lies from the grip, seen from the side, or
	// in which the bar's end points, seen from above: degrees anticlockwise from forward
	// on the page. The hand goes with it.
	Turn float64
	// Bend turns the forearm away from the hand's own line: degrees anticlockwise.
	Bend float64
}

// blade is half the thickness of a brake lever's blade, mm.
const blade = 4.5

// The share of the index finger up to its middle joint and between its two outer ones:
// bones of 39.8, 22.4 and 15.8 mm (Buryanov and Kotiuk 2010, from memory).
const fingerFirst, fingerSecond = 0.51, 0.29

// local returns the place at x along the hand's own axis and y to its left.
func (h HandOnGrip) local() func(x, y float64) Point {
	along := drawing.Polar(h.Turn, 1)
	return func(x, y float64) Point { return h.Grip.Along(along, x).Along(along.Left(), y) }
}

// scale is the hand's size against the one that the outlines were drawn for.
func (h HandOnGrip) scale() float64 { return or(h.Length, 185) / 185 }

// Wrist returns the middle of the wrist, seen from the side.
func (h HandOnGrip) Wrist() Point {
	s, r := h.scale(), h.Thick/2
	return h.local()(-r-58*s, 0.3*r+12*s)
}

// Face returns where the lever is pulled: the middle of the blade's outer face.
func (h HandOnGrip) Face() Point { return h.local()(h.Thick/2+h.Reach, 0) }

// finger returns the joints of the index finger from its knuckle to its tip: the last
// one bends round the blade where the finger is long enough.
func (h HandOnGrip) finger(knuckle, joint, tip Point) []Point {
	length := or(h.Finger, 0.38*or(h.Length, 185))
	a, b := fingerFirst*length, fingerSecond*length
	way := joint.Minus(knuckle)
	d := way.Length()
	if longest := 0.998 * (a + b); d > longest {
		end := knuckle.Along(way.Unit(), longest)
		return []Point{
			knuckle,
			knuckle.Along(way.Unit(), 0.998*a),
			end,
			end.Along(tip.Minus(knuckle).Unit(), length-a-b),
		}
	}
	bend := corner(a, max(d, a-b+1), b)
	middle := knuckle.Plus(drawing.Polar(way.Angle()+degrees(bend), a))
	return []Point{knuckle, middle, joint, joint.Along(tip.Minus(joint).Unit(), length-a-b)}
}

// chain draws the parts of a finger, each a little thinner than the one before.
func chain(thick float64, joints ...Point) (marks []drawing.Mark) {
	for i := len(joints) - 2; i >= 0; i-- {
		marks = append(marks, drawing.Limb{Role: drawing.Body, Pen: drawing.Thin, Fill: drawing.Hatch,
			A: joints[i], B: joints[i+1], Ra: thick * (1 - 0.08*float64(i)), Rb: thick * (0.92 - 0.08*float64(i))})
	}
	return marks
}

// forearm draws the forearm, cut off where the picture ends.
func (h HandOnGrip) forearm(wrist Point, toElbow, from, to float64) []drawing.Mark {
	way := drawing.Polar(toElbow, or(h.Forearm, 130))
	across := way.Unit().Left()
	side := func(share, half float64) Point { return wrist.Along(way, share).Along(across, half) }
	edge := func(sign float64) []Point {
		return []Point{
			side(0, sign*from),
			side(0.25, sign*1.03*from),
			side(0.6, sign*(0.5*(from+to)+2)),
			side(1, sign*to),
		}
	}
	one, other := edge(1), edge(-1)
	area := slices.Clone(other)
	slices.Reverse(area)
	return []drawing.Mark{
		drawing.Line{
			Role:   drawing.Body,
			Pen:    drawing.NoPen,
			Fill:   drawing.Hatch,
			Closed: true,
			Points: append(area, one...),
		},
		drawing.Line{Role: drawing.Body, Smooth: true, Points: one},
		drawing.Line{Role: drawing.Body, Smooth: true, Points: other},
	}
}

// Side draws the hand from the rider's right, the grip end-on: forward is to the right.
func (h HandOnGrip) Side() []drawing.Mark {
	s, r, at := h.scale(), h.Thick/2, h.local()
	var marks []drawing.Mark
	knuckle := at(0.31*(r+11*s), 0.95*(r+11*s))
	if h.Reach > 0 {
		x := r + h.Reach - blade
		marks = append(marks, drawing.Limb{Role: drawing.Ink, Fill: drawing.Sheet, A: at(0.4*r, -0.2*r), B: at(x, 0),
			Ra: 9, Rb: 5})
		marks = append(marks, chain(9.5*s, h.finger(knuckle, at(x+2, 5+blade+8*s), at(x+10, 0))...)...)
		marks = append(
			marks,
			drawing.Limb{Role: drawing.Hot, Fill: drawing.Sheet, A: at(x, 5), B: at(x, -5), Ra: blade,
				Rb: blade},
		)
	}
	round := func(angle, off float64) Point { return h.Grip.Plus(drawing.Polar(h.Turn+angle, r+off*s)) }
	wrist := h.Wrist()
	along := drawing.Polar(h.Turn, 1)
	up := along.Left()
	marks = append(marks, h.forearm(wrist, h.Turn+180+h.Bend, 18*s, 31*s)...)
	marks = append(
		marks,
		drawing.Circle{Role: drawing.Ink, Fill: drawing.Sheet, Centre: h.Grip, Radius: r},
		drawing.Circle{
			Role:   drawing.Soft,
			Pen:    drawing.Thin,
			Fill:   drawing.Sheet,
			Centre: h.Grip,
			Radius: min(11.1, 0.8*r),
		},
	)
	marks = append(marks, chain(10*s, knuckle, round(-8, 10), round(-85, 9), round(-135, 8))...)
	return append(marks,
		drawing.Line{Role: drawing.Body, Fill: drawing.Hatch, Closed: true, Smooth: true, Points: []Point{
			wrist.Along(up, 18*s), at(-r-24*s, 0.3*r+35*s), knuckle.Along(up, 10*s).Along(along, -4*s),
			knuckle.Along(
				along,
				10*s,
			), knuckle.Along(up, -10*s).Along(along, 2*s), at(-0.55*r, 0.86*r), at(-0.98*r, 0.1*r),
			at(-r-8*s, -0.4*r), at(-r-30*s, -0.3*r-2*s), wrist.Along(up, -18*s), wrist.Along(along, -10*s),
		}})
}

// WristAbove returns the middle of the wrist, seen from above.
func (h HandOnGrip) WristAbove() Point { return h.local()(2*h.scale(), -h.Thick/2-60*h.scale()) }

// Above draws the same hand from above: the bar's end is to the right, forward is up.
func (h HandOnGrip) Above() []drawing.Mark {
	s, r, at := h.scale(), h.Thick/2, h.local()
	wrist := h.WristAbove()
	marks := h.forearm(wrist, h.Turn-90+h.Bend, 26*s, 36*s)
	// The thumb goes under the grip.
	marks = append(marks, chain(12*s, at(-36*s, -r-24*s), at(-52*s, -r+6*s), at(-50*s, r+4*s))...)
	if h.Held != nil {
		marks = append(marks, h.Held...)
	} else {
		marks = append(marks,
			drawing.Tube{Role: drawing.Ink, Fill: drawing.Sheet, A: at(-h.Inner, 0), B: at(-64, 0), Ra: 11, Rb: 11},
			drawing.Tube{Role: drawing.Ink, Fill: drawing.Sheet, A: at(-64, 0), B: at(66, 0), Ra: r, Rb: r})
	}
	tips := [4]Point{{X: -32, Y: 24}, {X: -11, Y: 29}, {X: 11, Y: 26}, {X: 31, Y: 18}}
	for i, tip := range tips {
		if i == 0 && h.Reach > 0 {
			y := r + h.Reach - blade
			// It arches upwards, so from above it is straight.
			marks = append(
				marks,
				chain(9.5*s, at(-32*s, r-4), at(-33*s, r-4+0.6*(y-r+4)), at(-34*s, y-1), at(-34*s, y+9))...)
			continue
		}
		marks = append(marks, drawing.Limb{Role: drawing.Body, Pen: drawing.Thin, Fill: drawing.Hatch,
			A: at(tip.X*s, r-6*s), B: at(tip.X*s, r-4*s+(tip.Y-16)*s), Ra: 9.6 * s, Rb: 8.8 * s})
	}
	outline := []Point{{X: -26, Y: -60}, {X: -44, Y: -26}, {X: -44, Y: 2}, {X: -33, Y: 14}, {X: -22, Y: 10},
		{X: -11, Y: 17}, {X: 0, Y: 11}, {X: 11, Y: 14}, {X: 21, Y: 6}, {X: 31, Y: 6}, {X: 41, Y: -10}, {X: 40, Y: -34},
		{X: 29, Y: -60}, {X: 24, Y: -72}, {X: 2, Y: -76}, {X: -20, Y: -72}}
	for i, p := range outline {
		y := p.Y * s
		if p.Y < 0 {
			y -= r - 8
		} else {
			y += r - 16
		}
		outline[i] = at(p.X*s, y)
	}
	return append(
		marks,
		drawing.Line{Role: drawing.Body, Fill: drawing.Hatch, Closed: true, Smooth: true, Points: outline},
	)
}

func degrees(radians float64) float64 { return radians * 180 / math.Pi }
