package frame

import (
	"plumbline/calculators"
	"plumbline/calculators/drawing"
	"plumbline/calculators/figure"
	"plumbline/calculators/fit"
	"plumbline/calculators/geometry"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// fullForce is how long the arrow of the whole weight would be, mm on the drawing.
const fullForce = 520

// climbFigure draws the seated rider on the bike at sag, with the bike level and
// gravity leaning back instead: the line of the weight on the chosen grade, the
// one that passes the rear contact, where the front lifts, and the forces at both
// wheels to scale.
func climbFigure(v calculators.Values, r *calculators.Result) *drawing.Figure {
	b, pose := climbScene(v)
	f := &drawing.Figure{Title: words.Of("The weight on both wheels")}
	f.Add(figure.Scene(b, pose)...)
	bike := b.Bike
	load, lift := r.At(frontLoad), r.At(liftGrade)
	grade := measure.Percentage(v.Of(measure.Grade))
	if !load.Exists() {
		f.Description = words.Of("The bike at sag, without a rider: no seated rider of these lengths reaches both pedals and the grips.")
		return f
	}
	f.Description = words.Of("A rider seated on the bike, drawn level while gravity leans back. On a grade of {0} the front wheel carries {1} of both wheel loads and the rear the rest, drawn to scale under the wheels. The centre of mass lies {2} ahead of the rear contact and {3} up; on a grade of {4} its plumb line passes the rear contact and the front lifts.",
		grade, load.Uncertain(), r.At(comForward).Uncertain(), r.At(comHeight).Uncertain(), lift.Uncertain())
	balance := weightOn(r, bike.Wheelbase())
	ground, rear, front := bike.Ground(), bike.RearContact(), bike.FrontContact()
	if weighed(v) {
		// The wheelbase of the picture may be a stand-in: keep the share right.
		if w, p := weighedBalance(v); p == nil {
			balance.Ahead *= bike.Wheelbase() / w.Wheelbase
		}
	}
	centre := drawing.Point{X: rear.X + balance.Ahead, Y: ground + balance.Height}
	slope := geometry.SlopeAngle(v.Of(measure.Grade))
	down := func(angle, beyond float64) drawing.Point {
		// Gravity as the bike feels it on a slope: it leans back going up.
		u := drawing.Polar(-90-angle, 1)
		return centre.Along(u, (centre.Y-ground+beyond)/-u.Y)
	}
	f.Add(drawing.Line{Role: drawing.Soft, Pen: drawing.Hidden, Points: []drawing.Point{centre, figure.At(rear)}},
		drawing.Line{Role: drawing.Hot, Points: []drawing.Point{centre, down(slope, 0)}})
	share := geometry.Balance{Ahead: balance.Ahead, Height: balance.Height,
		Wheelbase: bike.Wheelbase()}.FrontShare(v.Of(measure.Grade))
	f.Add(force(figure.At(front), share)...)
	f.Add(force(figure.At(rear), 1-share)...)
	f.Add(
		drawing.Circle{Role: drawing.Body, Fill: drawing.Sheet, Centre: centre, Radius: 24},
		drawing.Cross{Role: drawing.Body, At: centre, Size: 24},
		drawing.Label{Role: drawing.Hot, At: down(slope, 0), Side: drawing.Point{X: 1, Y: 0.6}, Leader: true,
			Text: words.Of("Weight on {0}", grade)},
		drawing.Label{Role: drawing.Ink, At: centre.Along(figure.At(rear).Minus(centre), 0.55),
			Side: drawing.Point{X: -1, Y: 0.4}, Leader: true, Text: words.Of("Front lifts: {0}", lift.Amount())},
		drawing.Label{Role: drawing.Ink, At: figure.At(front).Plus(drawing.Point{Y: -max(share, 0.05) * fullForce / 2}),
			Side: drawing.Point{X: 1}, Text: words.Of("{0}", load.Amount())},
		drawing.Label{Role: drawing.Ink, At: figure.At(rear).Plus(drawing.Point{Y: -(1 - max(share,
			0)) * fullForce / 2}), Side: drawing.Point{X: 1},
			Text: words.Of("{0}", measure.Amount{Value: 100 - float64(load.Value), Unit: measure.Percent, Extra: 1})},
	)
	return f
}

// force draws the ground's push at a wheel as an arrow from below, its length the
// share of the weight; a wheel in the air has none.
func force(at drawing.Point, share float64) []drawing.Mark {
	length := share * fullForce
	if length < 4 {
		return nil
	}
	const half, head = 11, 46
	tip := min(length, head)
	return []drawing.Mark{
		drawing.Line{Role: drawing.Ink, Pen: drawing.Heavy,
			Points: []drawing.Point{at.Plus(drawing.Point{Y: -length}), at.Plus(drawing.Point{Y: -tip})}},
		drawing.Line{Role: drawing.Ink, Fill: drawing.Solid, Closed: true,
			Points: []drawing.Point{at, at.Plus(drawing.Point{X: half, Y: -tip}),
				at.Plus(drawing.Point{X: -half, Y: -tip})}},
	}
}

// climbScene returns the bike at sag and, where the model seats one, the rider.
// A reader who weighed and gave no bike sees a stand-in.
func climbScene(v calculators.Values) (figure.Build, *figure.Pose) {
	bike, p := fit.Ride(v)
	if p != nil {
		b := figure.Demo(830, 0)
		b.CrankAngle = 90
		return b, nil
	}
	b := figure.Build{Bike: bike.Level, FrontRim: v.Of(measure.FrontRim), RearRim: v.Of(measure.RearRim),
		Crank: v.Of(measure.CrankLength), CrankAngle: 90}
	if v.Has(measure.GripX) && v.Has(measure.GripY) {
		b = b.Holding(geometry.Point{X: v.Of(measure.GripX), Y: v.Of(measure.GripY)})
	}
	b = b.Sagging(bike.Sagged)
	c, ok, p := climberOf(v)
	if p != nil || !ok || weighed(v) && !v.Has(measure.SaddleHeight) {
		return b, nil
	}
	b.Saddle = c.saddle.Length()
	if on, ok := bike.Sagged.SaddlePoint(b.Saddle); ok {
		b.Back = on.X - c.saddle.X
	}
	b.SeatTube = min(0.68*bike.Level.Stack(), b.Saddle-150)
	s, ok := c.sit()
	if !ok {
		return b, nil
	}
	b.PedalAngle, b.FarPedalAngle = s.Near.HeelUp, s.Far.HeelUp
	pose := figure.Legs(s.Near, &s.Far, s.SoleHeight).Hold(s.Trunk.Shoulder, s.Elbow, s.Grip)
	return b, &pose
}
