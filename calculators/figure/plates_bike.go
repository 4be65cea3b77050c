package figure

import (
	"plumbline/calculators/drawing"
	"plumbline/calculators/measure"
)

// The spots of a whole bike seen from the side.
var (
	crankAxle = Spot{"the centre of the crank axle", func(Build) Point { return Point{} }}
	rearAxle  = Spot{"the centre of the rear axle", func(b Build) Point { return At(b.Bike.Rear) }}
	frontAxle = Spot{"the centre of the front axle", func(b Build) Point { return At(b.Bike.Front) }}
	headTop   = Spot{"the middle of the head tube’s upper edge", func(b Build) Point { return At(b.Bike.HeadTop) }}
	saddleTop = Spot{"the saddle’s top above the middle of its rails", func(b Build) Point { return b.SaddleTop() }}
	saddleTip = Spot{"the tip of the saddle’s nose",
		func(b Build) Point { return b.SaddleTop().Plus(Point{X: or(b.Nose, 155), Y: -9}) }}
	gripMiddle = Spot{"the middle of the grips", func(b Build) Point { return b.Grip() }}
	spindle    = Spot{"the centre of the pedal’s spindle", func(b Build) Point { return b.Spindle() }}
	tubeTop    = Spot{"the seat tube’s top edge", func(b Build) Point { return b.seatTop() }}
	postMiddle = Spot{"the middle of the seat post", func(b Build) Point {
		y := b.Bike.HeadTop.Y
		return Point{X: b.Bike.SeatLineX(y), Y: y}
	}}
	crownSeat = Spot{"the crown’s seat under the lower bearing", func(b Build) Point { return b.crown() }}
	axisFoot  = Spot{"the steering axis, square to it", func(b Build) Point { return At(b.Bike.AxleFoot()) }}
	axisTop   = Spot{"the head tube", func(b Build) Point { return At(b.Bike.HeadTop) }}
	axisFloor = Spot{"the steering axis on the floor", func(b Build) Point { return At(b.Bike.AxisGround()) }}
	axleLine  = Spot{"the line between the axles", func(b Build) Point { return Point{Y: b.Bike.Rear.Y} }}
	straddle  = Spot{"the top of the top tube", func(b Build) Point {
		head, seat := At(b.Bike.HeadTop), b.seatTop()
		return seat.Along(head.Minus(seat), 0.45).Plus(Point{Y: 8})
	}}
	tubeFoot = Spot{"the seat tube’s lower end", func(b Build) Point { foot, _ := b.seatLine(); return foot }}
	balance  = Spot{"the centre of mass of bike and rider", func(b Build) Point { return Point{X: 60, Y: 690} }}
	contact  = Spot{"where the rear wheel touches the ground", func(b Build) Point { return At(b.Bike.RearContact()) }}
)

// What is taken for the head tube's edge, and how a hand gets there past stem and bar.
var (
	notCover = []Spot{{"the bearing cover", func(b Build) Point {
		return cover.At(b).Along(At(b.Bike.AxisAhead()), 34)
	}}}
	fromBehind = [2]float64{0, -24}
)

// Places where a tape goes wrong.
var (
	topTubeLow = Spot{"the top tube at the seat tube", func(b Build) Point {
		head, seat := At(b.Bike.HeadTop), b.seatTop()
		return seat.Along(head.Minus(seat), 0.1).Plus(Point{Y: -12})
	}}
	downTubeLow = Spot{"the down tube’s lower side", func(b Build) Point {
		_, bottom := b.headEnds()
		return bottom.Times(0.56).Along(bottom.Unit().Left(), -46)
	}}
	forkFloor = Spot{"the floor in line with the fork", func(b Build) Point {
		at, down := At(b.Bike.Front), At(b.Bike.AxisDown())
		return at.Along(down, (b.Bike.Ground()-at.Y)/down.Y)
	}}
	seatFloor = Spot{"the floor in line with the seat", func(b Build) Point {
		top := b.SaddleTop()
		return top.Times(b.Bike.Ground() / top.Y)
	}}
)

// onForkLeg lays the phone along the straight front of a fork leg.
func onForkLeg(b Build) (middle, way Point) {
	up, ahead := At(b.Bike.AxisDown()).Times(-1), At(b.Bike.AxisAhead())
	return At(b.Bike.Front).Along(up, 190).Along(ahead, 8), up.Times(-1)
}

// floorBelow is the floor below a spot.
func floorBelow(s Spot) Spot {
	return Spot{"the floor", func(b Build) Point { return Point{X: s.At(b).X, Y: b.Bike.Ground()} }}
}

// wholeBike is the bike from the side, the cranks level.
var wholeBike = Scenery{Name: "A bike from the side, upright on level ground, front wheel straight", Held: true,
	Marks: func(b Build) []drawing.Mark {
		b.CrankAngle = 90
		return Scene(b, nil)
	}}

// around is a part of the whole bike, with its steering axis and the line between the
// axles.
func around(frame func(Build) (low, high Point)) Scenery {
	part := wholeBike
	part.Held = false
	part.Frame = frame
	part.Marks = func(b Build) []drawing.Mark {
		return append(wholeBike.Marks(b), SteeringAxis(b), drawing.Axis{Role: drawing.Soft, A: At(b.Bike.Rear),
			B: At(b.Bike.Front)})
	}
	return part
}

// onBike makes a plate of one span on the whole bike.
func onBike(q *measure.Quantity, way Way, from, to Spot, beside float64) Plate {
	return Plate{Of: q, On: wholeBike, Spans: []Span{{From: from, To: to, Way: way, Beside: beside}}}
}

// aboveFloor makes a plate of a spot's height above the floor.
func aboveFloor(q *measure.Quantity, s Spot, beside float64) Plate {
	return onBike(q, UprightWay, floorBelow(s), s, beside)
}

// bikePlates are the lengths and angles of a whole bike.
func bikePlates() []Plate {
	above := aboveFloor(measure.GripY, gripMiddle, 150)
	above.Spans = append(above.Spans, Span{From: floorBelow(crankAxle), To: crankAxle, Way: UprightWay,
		Beside: 120, Label: "less this"})
	above.Spans[0].Label = "this"
	back := onBike(measure.SaddleSetback, Plumbed, saddleTip, crankAxle, 90)
	back.Spans[0].Label = "this"
	drop := onBike(measure.BBDrop, UprightWay, crankAxle, axleLine, 110)
	drop.On = around(func(b Build) (low, high Point) {
		return Point{X: b.Bike.Rear.X - 60, Y: -110}, Point{X: 220,
			Y: 190}
	})
	drop.Spans[0].Label, drop.Steps = "Drop", lessTheCrank
	offset := onBike(measure.ForkOffset, Straight, axisFoot, frontAxle, 70)
	offset.On = around(func(b Build) (low, high Point) {
		at := At(b.Bike.Front)
		return at.Plus(Point{X: -230, Y: -130}), at.Plus(Point{X: 190, Y: 170})
	})
	offset.Spans[0].Label = "Offset"
	offset.Steps = onSticker
	fork := onBike(measure.ForkMeasure, Straight, crownSeat, frontAxle, 90)
	fork.On = around(func(b Build) (low, high Point) {
		at, top := At(b.Bike.Front), At(b.Bike.HeadTop)
		return Point{X: top.X - 170, Y: at.Y - 60}, Point{X: at.X + 230, Y: top.Y - 60}
	})
	fork.Spans = append(fork.Spans, Span{From: crownSeat, To: axisFoot, Way: Straight, Beside: -90,
		Label: "along the axis"})
	fork.Spans[0].Label = "straight"
	grips := aboveFloor(measure.GripFloor, gripMiddle, 150)
	grips.Spans[0].Label = "Grips"
	seat := aboveFloor(measure.SaddleFloor, saddleTop, 160)
	seat.Spans[0].Label = "Saddle"
	back.Spans = append(back.Spans, Span{From: saddleTip, To: saddleTop, Way: LevelWay, Beside: -110,
		Label: "plus this"})
	reach := onBike(measure.Reach, Plumbed, crankAxle, headTop, 90)
	reach.Not, reach.Ways = notCover, fromBehind
	stack := onBike(measure.Stack, UprightWay, crankAxle, headTop, -300)
	stack.Along, stack.Not = &Span{From: floorBelow(headTop), To: headTop, Way: UprightWay, Beside: -1}, notCover
	stack.Spans = append(stack.Spans, Span{From: floorBelow(crankAxle), To: crankAxle, Way: UprightWay, Beside: -130,
		Label: "less this"})
	stack.Spans[0].Label = "Stack"
	toHead := onBike(measure.BBToHeadTube, Straight, crankAxle, headTop, -130)
	toHead.Not = notCover
	head := onBike(measure.HeadAngle, Tilt, axisFloor, axisTop, 260)
	head.Phone = onForkLeg
	seatAngle := onBike(measure.SeatAngle, Tilt, crankAxle, postMiddle, 230)
	seatAngle.Phone = func(b Build) (Point, Point) {
		to := postMiddle.At(b)
		return to.Times(0.5), to
	}
	tubeAngle := onBike(measure.SeatTubeAngle, Tilt, tubeFoot, tubeTop, 230)
	tubeAngle.Phone = func(b Build) (Point, Point) {
		foot, top := tubeFoot.At(b), tubeTop.At(b)
		way := top.Minus(foot)
		return foot.Along(way, 0.62).Along(way.Unit().Left(), halfSeatTube), way
	}
	over := aboveFloor(measure.StandOver, straddle, 60)
	over.Wrong = &Mistake{Right: "where you straddle the bike", Wrong: "at the seat tube, where the top tube is lower",
		Tape: []Spot{floorBelow(topTubeLow), topTubeLow}}
	tube := onBike(measure.EffectiveTopTube, LevelWay, headTop, postMiddle, 90)
	tube.Ways = [2]float64{-150, -25}
	tube.Wrong = &Mistake{Right: "level", Wrong: "along the top tube, which slopes", Tape: []Spot{headTop, tubeTop}}
	front := onBike(measure.FrontCentre, Straight, crankAxle, frontAxle, -120)
	front.Wrong = &Mistake{Right: "straight from centre to centre", Wrong: "the tape bends round the frame",
		Tape: []Spot{crankAxle, downTubeLow, frontAxle}}
	axle := aboveFloor(measure.FrontAxleHeight, frontAxle, -110)
	axle.Wrong = &Mistake{Right: "straight down to the floor", Wrong: "the tape leans with the fork",
		Tape: []Spot{forkFloor, frontAxle}}
	seat.Wrong = &Mistake{Right: "the tape hangs plumb", Wrong: "the tape leans along the seat tube",
		Tape: []Spot{seatFloor, saddleTop}}
	tubeLong := onBike(measure.SeatTubeLength, Straight, crankAxle, tubeTop, 130)
	tubeLong.Not = []Spot{{"the seat clamp", func(b Build) Point {
		_, up := b.seatLine()
		return b.seatTop().Along(up, 8).Along(up.Left(), -26)
	}}}
	stays := onBike(measure.Chainstay, Straight, crankAxle, rearAxle, -130)
	stays.On.Frame = func(b Build) (low, high Point) {
		return Point{X: b.Bike.Rear.X - 250, Y: b.Bike.Ground() + 60}, Point{X: 260, Y: 330}
	}
	rear := rearAbove(Point{X: -190, Y: -520}, Point{X: 190, Y: 70})
	stays.Wrong = &Mistake{Right: "from above, the tape runs beside the bike and parallel to it",
		Wrong: "from above, the tape runs slantwise from end to end", On: &rear,
		Well: []Spot{spot("beside the crank axle", -112, 0), spot("beside the rear axle", -112, -437)},
		Tape: []Spot{spot("the crank axle’s end", -42, 0), spot("the rear axle’s end", -112, -437)}}
	nose := onBike(measure.NoseToGrip, Plumbed, saddleTip, gripMiddle, 90)
	// The length is stamped on the arm, so one picture of it is enough.
	cranks := onBike(measure.CrankLength, Straight, crankAxle, spindle, -130)
	cranks.On.Held, cranks.Steps = false, onArm
	// Nobody can lay a tape on a centre of mass: it is weighed.
	forward, height := onBike(measure.COMForward, Plumbed, contact, balance, 90),
		aboveFloor(measure.COMHeight, balance, 0)
	forward.On.Held, height.On.Held = false, false
	return []Plate{
		reach, stack, head, seatAngle, tubeAngle, tubeLong, over,
		stays, drop,
		aboveFloor(measure.BBHeight, crankAxle, -130),
		onBike(measure.Wheelbase, Plumbed, rearAxle, frontAxle, 90),
		front, tube, toHead,
		onBike(measure.RearAxleToHeadTube, Straight, rearAxle, headTop, 0),
		axle,
		aboveFloor(measure.RearAxleHeight, rearAxle, 110),
		aboveFloor(measure.FrontRadius, frontAxle, -110),
		aboveFloor(measure.RearRadius, rearAxle, 110),
		onBike(measure.SaddleHeight, Straight, crankAxle, saddleTop, 120),
		back,
		onBike(measure.NoseSetback, Plumbed, saddleTip, crankAxle, 90),
		seat,
		onBike(measure.GripX, Plumbed, crankAxle, gripMiddle, 90),
		above,
		grips,
		nose,
		onBike(measure.ForkLength, Straight, crownSeat, frontAxle, 140),
		offset, fork,
		cranks,
		forward, height,
	}
}
