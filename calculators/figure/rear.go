package figure

import (
	"math"

	"plumbline/calculators/drawing"
	"plumbline/calculators/geometry"
)

// The rear suspension as drawn, mm and degrees: a swing arm with a pivot above the
// bottom bracket, a rocker on the seat tube, and an upright shock in the main frame. No
// chart states them and nothing is measured on them; they show that something moves.
const (
	pivotUp, pivotBack   = 58, 18
	rockerAt             = 0.66 // of the seat tube
	rockerBack, backward = 74.0, 172.0
	rockerFront, forward = 58.0, -12.0
	shockAt              = 0.26 // of the down tube
	shockBody            = 0.56 // of the shock's length when nothing presses it
)

// links are the joints of the rear suspension where the axle now is.
type links struct {
	axle, pivot, rocker, stay, shock, mount Point
	body                                    float64 // the shock's outer tube is that long
}

// linked turns the rocker to where the swing arm holds it: with its stay as long as it is
// before anything presses the bike down.
func (b Build) linked() (l links, ok bool) {
	if b.RearTravel <= 0 {
		return l, false
	}
	foot, up := b.seatLine()
	_, head := b.headEnds()
	l.axle = At(b.Bike.Rear)
	l.pivot = foot.Along(up, pivotUp).Plus(Point{X: -pivotBack})
	l.rocker = foot.Along(b.seatTop().Minus(foot), rockerAt)
	l.mount = head.Times(shockAt).Along(head.Unit().Left(), halfDownTube+4)
	arm := l.axle.Minus(l.pivot)
	rise := math.Asin(max(-0.9, min(0.9, b.RearSunk/max(arm.Length(), 1)))) * 180 / math.Pi
	unpressed := l.pivot.Plus(drawing.Polar(arm.Angle()+rise, arm.Length()))
	stay := l.rocker.Plus(drawing.Polar(backward, rockerBack))
	length, way := stay.Minus(unpressed).Length(), l.axle.Minus(l.rocker)
	if d := way.Length(); d >= length+rockerBack || d <= math.Abs(length-rockerBack) {
		return l, false
	}
	turned := way.Angle() - corner(rockerBack, way.Length(), length)*180/math.Pi
	l.stay = l.rocker.Plus(drawing.Polar(turned, rockerBack))
	turn := math.Mod(turned-backward+540, 360) - 180
	l.shock = l.rocker.Plus(drawing.Polar(forward+turn, rockerFront))
	l.body = shockBody * l.rocker.Plus(drawing.Polar(forward, rockerFront)).Minus(l.mount).Length()
	return l, true
}

// swingArm returns the moving stays, which lie behind the main frame.
func (l links) swingArm() []drawing.Mark {
	return []drawing.Mark{
		drawing.Limb{Role: drawing.Ink, Fill: drawing.Sheet, A: l.axle, B: l.stay, Ra: 9, Rb: 9},
		drawing.Limb{Role: drawing.Ink, Fill: drawing.Sheet, A: l.axle, B: l.pivot, Ra: 11, Rb: 16},
		drawing.Circle{Role: drawing.Ink, Fill: drawing.Sheet, Centre: l.axle, Radius: 19},
	}
}

// shockAndRocker returns what lies over the main frame.
func (l links) shockAndRocker() []drawing.Mark {
	way := l.shock.Minus(l.mount)
	end := l.mount.Along(way.Unit(), min(l.body, 0.95*way.Length()))
	marks := []drawing.Mark{
		drawing.Tube{Role: drawing.Ink, Fill: drawing.Sheet, A: end, B: l.shock, Ra: 7, Rb: 7},
		drawing.Tube{Role: drawing.Ink, Fill: drawing.Sheet, A: l.mount, B: end, Ra: 15, Rb: 15},
		drawing.Line{Role: drawing.Ink, Fill: drawing.Sheet, Closed: true, Points: []Point{
			l.stay, l.rocker.Along(l.stay.Minus(l.rocker).Unit().Left(), -14), l.shock,
			l.rocker.Along(l.stay.Minus(l.rocker).Unit().Left(), 14)}},
	}
	for _, p := range [5]Point{l.stay, l.rocker, l.shock, l.mount, l.pivot} {
		marks = append(marks, drawing.Circle{Role: drawing.Ink, Fill: drawing.Sheet, Centre: p, Radius: 8})
	}
	return marks
}

// Sunk returns how far the rear axle has risen in the frame from one attitude of a bike
// to another, mm.
func Sunk(before, after geometry.Bike) float64 {
	rear := At(after.Rear)
	return drawing.Polar(rear.Angle()+after.HeadAngle-before.HeadAngle, rear.Length()).Y - before.Rear.Y
}
