package frame

import (
	"math"

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

// climbFigure draws the seated rider on the bike as it rests on the grade, on the slope
// itself: the plumb line of the weight, the line through the rear contact, where the front
// lifts, and the loads of both wheels as arrows to scale.
func climbFigure(v calculators.Values, r *calculators.Result) *drawing.Figure {
	b, pose, at := climbScene(v)
	f := &drawing.Figure{Title: words.Of("The weight on both wheels")}
	f.Add(figure.Scene(b, pose)...)
	bike := b.Bike
	load, lift := r.At(frontLoad), r.At(liftGrade)
	grade := measure.Percentage(v.Of(measure.Grade))
	if !load.Exists() {
		f.Description = words.Of("The bike at sag, without a rider: no seated rider of these lengths reaches both " +
			"pedals and the grips.")
		return f
	}
	slope := geometry.SlopeAngle(v.Of(measure.Grade))
	tilt := words.Of("{0} above the horizontal", measure.Degrees(slope))
	if slope < 0 {
		tilt = words.Of("downhill, {0} below the horizontal", measure.Degrees(-slope))
	}
	f.Description = words.Of("A rider seated on the bike on a slope of {0}, {5}, as the suspension "+
		"settles there. Arrows under the wheels are as long as the loads are large: the front wheel carries {1} of "+
		"both, the rear the rest. The centre of mass lies {2} ahead of the rear contact and {3} up. Its plumb line "+
		"meets the ground between the wheels as long as both carry; on a grade of {4} it passes the rear contact and "+
		"the front lifts.",
		grade, load.Uncertain(), r.At(comForward).Uncertain(), r.At(comHeight).Uncertain(), lift.Uncertain(),
		tilt)
	w := weightsOf(v, bike, at.Balance, float64(load.Value)/100)
	onSlope := words.English("Weight")
	if v.Is(measure.Riding, "rolling") {
		onSlope = "Weight as you feel it, rolling freely"
	}
	under := func(wheel drawing.Point, share float64, side float64, text words.Text) drawing.Mark {
		return drawing.Label{Role: drawing.Ink, At: wheel.Plus(drawing.Point{Y: -max(share, 0.05) * fullForce / 2}),
			Side: drawing.Point{X: side}, Text: text, Priority: 2}
	}
	f.Add(w.marks()...)
	f.Add(
		drawing.Label{Role: drawing.Hot, At: w.down, Side: drawing.Point{X: 1, Y: -0.6}, Leader: true,
			Text: words.Of(onSlope)},
		drawing.Label{Role: drawing.Ink, At: w.centre.Along(w.rear.Minus(w.centre), 0.55),
			Side: drawing.Point{X: -1, Y: 0.4}, Leader: true, Text: words.Of("Front lifts: {0}", lift.Amount())},
		under(w.front, w.share, 1, words.Of("{0}", load.Amount())),
		under(w.rear, 1-w.share, -1, words.Of("{0}", measure.Amount{Value: 100 - float64(load.Value),
			Unit: measure.Percent, Extra: 1})),
	)
	f.Marks = figure.Turned(slope, drawing.Point{}, f.Marks...)
	if slope != 0 {
		f.Add(level(bike, slope, words.Of("Slope {0}", grade))...)
	}
	return f
}

// weights is where the weight of bike and rider acts, as the bike sees it: all is drawn
// that way and then turned with the slope.
type weights struct {
	rear, front  drawing.Point // where the wheels stand
	centre, down drawing.Point // of all mass, and where its plumb line meets the ground
	share        float64       // of the load that the front wheel carries
}

func weightsOf(v calculators.Values, bike geometry.Bike, balance geometry.Balance, share float64) weights {
	ground := bike.Ground()
	w := weights{rear: figure.At(bike.RearContact()), front: figure.At(bike.FrontContact()), share: share}
	// The wheelbase of the picture may be a stand-in: keep the share right.
	w.centre = drawing.Point{X: w.rear.X + balance.Ahead*bike.Wheelbase()/balance.Wheelbase,
		Y: ground + balance.Height}
	pull := 0.0
	if !v.Is(measure.Riding, "rolling") {
		pull = geometry.SlopeAngle(v.Of(measure.Grade))
	}
	// Gravity leans back for the bike, so that it is plumb on the sheet.
	u := drawing.Polar(-90-pull, 1)
	w.down = w.centre.Along(u, (w.centre.Y-ground)/-u.Y)
	return w
}

// marks draws the line past which the front lifts, the plumb line, the loads as arrows and
// the centre of mass.
func (w weights) marks() []drawing.Mark {
	marks := []drawing.Mark{
		drawing.Line{Role: drawing.Soft, Pen: drawing.Hidden, Points: []drawing.Point{w.centre, w.rear}},
		drawing.Line{Role: drawing.Hot, Pen: drawing.Heavy, Points: []drawing.Point{w.centre, w.down}},
	}
	marks = append(marks, force(w.front, w.share)...)
	marks = append(marks, force(w.rear, 1-w.share)...)
	return append(marks,
		drawing.Circle{Role: drawing.Body, Fill: drawing.Sheet, Centre: w.centre, Radius: 24},
		drawing.Cross{Role: drawing.Body, At: w.centre, Size: 24})
}

// level draws the horizontal that the slope rises from, behind the rear wheel.
func level(bike geometry.Bike, slope float64, said words.Text) []drawing.Mark {
	start := drawing.Point{X: bike.RearContact().X - bike.RearRadius - 20, Y: bike.Ground()}
	along := drawing.Polar(slope, 1)
	from := drawing.Point{}.Along(along, start.X).Along(along.Left(), start.Y)
	length := bike.Wheelbase() + bike.RearRadius
	to := from.Plus(drawing.Point{X: length})
	return []drawing.Mark{
		drawing.Line{Role: drawing.Soft, Pen: drawing.Thin, Points: []drawing.Point{from, to}},
		drawing.Angle{Role: drawing.Hot, Vertex: from, From: 0, To: slope, Radius: 0.92 * length},
		drawing.Label{Role: drawing.Hot, At: from.Plus(drawing.Point{X: 0.92 * length}), Side: drawing.Point{X: -0.5,
			Y: -math.Copysign(1, slope)}, Text: said, Priority: 3},
	}
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

// climbScene returns the bike at rest on the chosen grade and, where the model seats
// one, the rider; and how it settled there. A reader who weighed and gave no bike sees
// a stand-in.
func climbScene(v calculators.Values) (figure.Build, *figure.Pose, fit.Settled) {
	at, ok := onGrade(v)
	bike, p := fit.Ride(v)
	if p != nil {
		b := figure.Demo(830, 0)
		b.CrankAngle = 90
		return b, nil, at
	}
	if rest, err := geometry.Settle(bike.Level, geometry.Change{FrontSag: at.FrontSag,
		RearSag: at.RearSag}); ok && err == nil {
		bike.Sagged, bike.Tilt = rest, rest.HeadAngle-bike.Level.HeadAngle
	}
	b := figure.Build{Bike: bike.Level, FrontRim: v.Of(measure.FrontRim), RearRim: v.Of(measure.RearRim),
		Crank: v.Of(measure.CrankLength), CrankAngle: 90}
	if v.Has(measure.RearTravel) {
		b.RearTravel = v.Of(measure.RearTravel)
	}
	if v.Has(measure.GripX) && v.Has(measure.GripY) {
		b = b.Holding(geometry.Point{X: v.Of(measure.GripX), Y: v.Of(measure.GripY)})
	}
	b = b.Sagging(bike.Sagged)
	c, fits := climberOn(v, bike)
	if !fits || weighed(v) && !v.Has(measure.SaddleHeight) {
		return b, nil, at
	}
	b.Saddle = c.saddle.Length()
	if on, ok := bike.Sagged.SaddlePoint(b.Saddle); ok {
		b.Back = on.X - c.saddle.X
	}
	b.SeatTube = min(0.68*bike.Level.Stack(), b.Saddle-150)
	s, ok := c.sit()
	if !ok {
		return b, nil, at
	}
	b.PedalAngle, b.FarPedalAngle = s.Near.HeelUp, s.Far.HeelUp
	pose := figure.Legs(s.Near, &s.Far, s.SoleHeight).Hold(s.Trunk.Shoulder, s.Elbow, s.Grip)
	return b, &pose, at
}

// onGrade returns how bike and rider settle on the chosen grade.
func onGrade(v calculators.Values) (fit.Settled, bool) {
	springs, b, ok := loaded(v)
	if !ok {
		return fit.Settled{}, false
	}
	return springs.On(b, geometry.SlopeAngle(v.Of(measure.Grade)), v.Is(measure.Riding, "rolling"))
}

// loaded returns the springs and the balance of the seated rider on the level, weighed
// or by the body model.
func loaded(v calculators.Values) (fit.Springs, geometry.Balance, bool) {
	if weighed(v) {
		springs, b, p := weighedOn(v)
		return springs, b, p == nil
	}
	c, ok, p := climberOf(v)
	if p != nil || !ok {
		return fit.Springs{}, geometry.Balance{}, false
	}
	b, _, ok := c.seatedBalance(v)
	if !ok {
		return fit.Springs{}, b, false
	}
	springs, ok := fit.NewSprings(v, c.bike.Level, b)
	return springs, b, ok
}
