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

// floorBelow is the floor below a spot.
func floorBelow(s Spot) Spot {
	return Spot{"the floor", func(b Build) Point { return Point{X: s.At(b).X, Y: b.Bike.Ground()} }}
}

// wholeBike is the bike from the side, the cranks level.
var wholeBike = Scenery{Name: "A bike from the side, upright on level ground, front wheel straight",
	Marks: func(b Build) []drawing.Mark {
		b.CrankAngle = 90
		return Scene(b, nil)
	}}

// around is a part of the whole bike, with its steering axis and the line between the
// axles.
func around(frame func(Build) (low, high Point)) Scenery {
	part := wholeBike
	part.Frame = frame
	part.Marks = func(b Build) []drawing.Mark {
		return append(wholeBike.Marks(b), SteeringAxis(b), drawing.Axis{Role: drawing.Soft, A: At(b.Bike.Rear),
			B: At(b.Bike.Front)})
	}
	return part
}

// onBike makes a plate of one span on the whole bike.
func onBike(q *measure.Quantity, way Way, from, to Spot, beside float64) Plate {
	return Plate{q, wholeBike, []Span{{From: from, To: to, Way: way, Beside: beside}}}
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
	drop.Spans[0].Label = "Drop"
	offset := onBike(measure.ForkOffset, Straight, axisFoot, frontAxle, 70)
	offset.On = around(func(b Build) (low, high Point) {
		at := At(b.Bike.Front)
		return at.Plus(Point{X: -230, Y: -130}), at.Plus(Point{X: 190, Y: 170})
	})
	offset.Spans[0].Label = "Offset"
	grips := aboveFloor(measure.GripFloor, gripMiddle, 150)
	grips.Spans[0].Label = "Grips"
	seat := aboveFloor(measure.SaddleFloor, saddleTop, 160)
	seat.Spans[0].Label = "Saddle"
	back.Spans = append(back.Spans, Span{From: saddleTip, To: saddleTop, Way: LevelWay, Beside: -110,
		Label: "plus this"})
	return []Plate{
		onBike(measure.Reach, Plumbed, crankAxle, headTop, 90),
		onBike(measure.Stack, UprightWay, crankAxle, headTop, -300),
		onBike(measure.HeadAngle, Tilt, axisFloor, axisTop, 260),
		onBike(measure.SeatAngle, Tilt, crankAxle, postMiddle, 230),
		onBike(measure.SeatTubeAngle, Tilt, tubeFoot, tubeTop, 230),
		onBike(measure.SeatTubeLength, Straight, crankAxle, tubeTop, 130),
		aboveFloor(measure.StandOver, straddle, 0),
		onBike(measure.Chainstay, Straight, crankAxle, rearAxle, -130),
		drop,
		aboveFloor(measure.BBHeight, crankAxle, -130),
		onBike(measure.Wheelbase, Plumbed, rearAxle, frontAxle, 90),
		onBike(measure.FrontCentre, Straight, crankAxle, frontAxle, -120),
		onBike(measure.EffectiveTopTube, LevelWay, headTop, postMiddle, 90),
		onBike(measure.BBToHeadTube, Straight, crankAxle, headTop, -130),
		onBike(measure.RearAxleToHeadTube, Straight, rearAxle, headTop, 0),
		aboveFloor(measure.FrontAxleHeight, frontAxle, -110),
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
		onBike(measure.NoseToGrip, Plumbed, saddleTip, gripMiddle, 90),
		onBike(measure.ForkLength, Straight, crownSeat, frontAxle, 140),
		offset,
		onBike(measure.CrankLength, Straight, crankAxle, spindle, -130),
		onBike(measure.COMForward, Plumbed, contact, balance, 90),
		aboveFloor(measure.COMHeight, balance, 0),
	}
}
