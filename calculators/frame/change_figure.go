package frame

import (
	"math"

	"plumbline/calculators"
	"plumbline/calculators/drawing"
	"plumbline/calculators/figure"
	"plumbline/calculators/geometry"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// changeFigure draws the bike after the change over the bike before it, both
// with the bottom bracket in one place, as the rider's feet would see it.
func changeFigure(v calculators.Values, r *calculators.Result) *drawing.Figure {
	before, after, p := beforeAfter(v)
	if p != nil {
		return nil
	}
	head, height, reach := r.At(afterChange.headAngle), r.At(afterChange.bbHeight), r.At(afterChange.reach)
	f := &drawing.Figure{
		Title: words.Of("The bike after the change, over the bike before"),
		Description: words.Of("Two bikes from the side with the crank axle in one place, the earlier one in "+
			"thin lines. The head angle goes from {0} to {1}, the bottom bracket from {2} to {3} above the ground, "+
			"the reach from {4} to {5}.",
			r.At(beforeChange.headAngle).Amount(), head.Uncertain(), r.At(beforeChange.bbHeight).Amount(),
			height.Uncertain(), r.At(beforeChange.reach).Amount(), reach.Uncertain()),
	}
	drawOver(f, v, before, after, changesParts(v), head.Amount(), height.Amount())
	f.Add(changed(r, after, build(v, after).Grip(), hotIf(changesParts(v)))...)
	return f
}

// hotIf is the role of a number that the reader sets.
func hotIf(set bool) drawing.Role {
	if set {
		return drawing.Hot
	}
	return drawing.Ink
}

// drawOver draws a bike over an earlier one, with the two numbers that are seen
// best.
func drawOver(f *drawing.Figure, v calculators.Values, before, after geometry.Bike, parts bool, head,
	height measure.Amount) {
	was, is := build(v, before), build(v, after)
	is.Saddle, is.SeatTube = was.Saddle, was.SeatTube
	is.RearSunk = figure.Sunk(before, after)
	if parts && v.Declares(measure.NewFrontRim) {
		if v.Has(measure.NewFrontRim) {
			is.FrontRim = v.Of(measure.NewFrontRim)
		}
		if v.Has(measure.NewRearRim) {
			is.RearRim = v.Of(measure.NewRearRim)
		}
	}
	is.FrontRim, is.RearRim = min(is.FrontRim, 2*after.FrontRadius-40), min(is.RearRim, 2*after.RearRadius-40)
	f.Add(drawing.Line{Role: drawing.Before, Pen: drawing.Thin, Points: []drawing.Point{
		{X: before.Rear.X - before.RearRadius - 20, Y: before.Ground()},
		{X: before.Front.X + before.FrontRadius + 20, Y: before.Ground()}}})
	f.Add(figure.Over(was, is)...)
	f.Add(figure.SteeringAxis(is),
		figure.HeadAngle(is, hotIf(parts), words.Of("{0}", head)),
		figure.BBHeight(is, drawing.Ink, words.Of("{0}", height)),
	)
	if f.Details = enlarged(before, after); len(f.Details) > 0 {
		return // they say which is which
	}
	f.Add(
		drawing.Label{Role: drawing.Before, At: drawing.Point{X: before.Front.X - 0.71*before.FrontRadius,
			Y: before.Front.Y + 0.71*before.FrontRadius}, Side: drawing.Point{X: -0.4, Y: 1}, Leader: true,
			Text: words.Of("before")},
		drawing.Label{Role: drawing.Ink, At: drawing.Point{X: after.Front.X + 0.71*after.FrontRadius,
			Y: after.Front.Y +
				0.71*after.FrontRadius}, Side: drawing.Point{X: 1, Y: 1}, Leader: true, Text: words.Of("after")},
	)
}

// changed are arrows with the change written on them: which way the head tube's top, the
// bottom bracket and the front wheel went. They all have one length, because a few mm would
// not be seen; what has hardly changed has none.
func changed(r *calculators.Result, after geometry.Bike, grip drawing.Point, role drawing.Role) (marks []drawing.Mark) {
	const long, head = 130.0, 55.0
	top, front := figure.At(after.HeadTop), figure.At(after.FrontContact())
	for _, c := range [4]struct {
		of        *calculators.Output
		said      words.English
		at        drawing.Point // the arrow's middle
		way, side drawing.Point // when it grows; where the words stand
	}{
		{changeBy.reach, "Reach {0}", at(top.X, grip.Y+110), at(1, 0), at(0, 1)},
		{changeBy.stack, "Stack {0}", at(top.X+150, top.Y+40), at(0, 1), at(1, 0)},
		{changeBy.bbHeight, "Bottom bracket {0}", at(-110, 0.5*after.Ground()), at(0, 1), at(-1, 0)},
		{changeBy.wheelbase, "Wheelbase {0}", at(0.6*front.X, front.Y-130), at(1, 0), at(0, -1)},
	} {
		by := r.At(c.of)
		if !by.Exists() || math.Abs(float64(by.Value)) < 0.5 {
			continue
		}
		half := c.way.Times(math.Copysign(long/2, float64(by.Value)))
		marks = append(append(marks, figure.Arrow(role, c.at.Minus(half), c.at.Plus(half), head)...),
			drawing.Label{Role: role, At: c.at.Along(c.side, 25), Side: c.side, Priority: 2,
				Text: words.Of(c.said, measure.Difference{Amount: by.Amount()})})
	}
	return marks
}

// enlarged are the places where a change of a degree or of a few mm is lost in the whole:
// the lower end of the head tube, and the ground under the bottom bracket.
func enlarged(before, after geometry.Bike) (details []drawing.Detail) {
	add := func(was, is drawing.Point, radius float64, caption words.Text) {
		if apart := is.Minus(was).Length(); apart > 0.3 {
			details = append(details, drawing.Detail{At: was.Plus(is).Times(0.5), Radius: max(radius, 2*apart),
				Caption: caption, Apart: apart, Marks: []drawing.Mark{
					drawing.Label{Role: drawing.Before, At: was, Text: words.Of("before"), Leader: true},
					drawing.Label{Role: drawing.Ink, At: is, Text: words.Of("after"), Leader: true}}})
		}
	}
	add(figure.At(before.HeadBottom), figure.At(after.HeadBottom), 60, words.Of("the lower end of the head tube"))
	add(drawing.Point{Y: before.Ground()}, drawing.Point{Y: after.Ground()}, 24,
		words.Of("the ground under the crank axle"))
	return details
}
