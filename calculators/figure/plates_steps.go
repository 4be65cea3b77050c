package figure

import (
	"plumbline/calculators/drawing"
	"plumbline/calculators/words"
)

// step is one frame of a plate that shows how something is taken, one thing after the other.
func step(caption words.English, low, high Point, marks ...drawing.Mark) drawing.Frame {
	return drawing.Frame{Caption: words.Of(caption), Low: low, High: high, Marks: marks}
}

// within returns the corners of a view of a middle: how far it reaches to either side, up
// and down, mm.
func within(middle Point, half, high float64) (Point, Point) {
	reach := Point{X: half, Y: high}
	return middle.Minus(reach), middle.Plus(reach)
}

// print is a sticker or what is stamped on a part, as lines that nobody has to read: it lies
// along a way, half as long and half as wide as given, mm.
func print(role drawing.Role, middle, way Point, long, wide float64) []drawing.Mark {
	u := way.Unit()
	m := []drawing.Mark{
		drawing.Tube{Role: role, Fill: drawing.Sheet, A: middle.Along(u, -long), B: middle.Along(u, long),
			Ra: wide, Rb: wide},
	}
	for _, share := range [2]float64{-0.3, 0.3} {
		at := middle.Along(u.Left(), share*wide)
		m = append(m, drawing.Line{Role: role, Pen: drawing.Thin,
			Points: []Point{at.Along(u, -0.7*long), at.Along(u, 0.7*long)}})
	}
	return m
}

// pointing at something: the reader's hand, its forefinger along a way, degrees.
func finger(at Point, way float64) []drawing.Mark {
	return Grasp{At: at, Way: way, Role: drawing.Body, Over: way > 90 && way < 270}.Point()
}

// onSticker shows where a fork's offset is read: no tape is fine enough for it.
func onSticker(own drawing.Frame, p Plate, b Build) []drawing.Frame {
	down := At(b.Bike.AxisDown())
	at := At(b.Bike.Front).Along(down, -205).Along(At(b.Bike.AxisAhead()), -6)
	marks := append(p.On.Marks(b), print(drawing.Hot, at, down, 34, 13)...)
	own.Caption = words.Of("What it is: from axis to axle")
	low, high := within(At(b.Bike.Front).Plus(Point{X: 50, Y: 110}), 260, 230)
	return []drawing.Frame{own, step("Read it off the fork’s sticker", low, high,
		append(marks, finger(at.Plus(Point{X: 18}), 190)...)...)}
}

// onStem shows where a stem's angle is read, and when it counts as negative.
func onStem(own drawing.Frame, p Plate, b Build) []drawing.Frame {
	middle := steererMiddle.At(b)
	low, high := within(middle.Plus(Point{X: 40, Y: 20}), 190, 140)
	own.Low, own.High = low, high.Minus(Point{Y: 40})
	own.Caption = words.Of("Turned to point up: it counts as positive")
	way := barMiddle.At(b).Minus(middle)
	at := middle.Along(way, 0.5)
	found := append(p.On.Marks(b), print(drawing.Hot, at, way, 15, 8)...)
	down := b
	down.Cockpit.StemAngle = -drawnStemAngle
	turned := append(p.On.Marks(down), p.Spans[0].marks(down, drawing.Hot, words.Of("negative"))...)
	return []drawing.Frame{
		step("Find the number on the stem", low, high, append(found, finger(at.Plus(Point{X: 4, Y: 8}),
			-112)...)...),
		own,
		step("Turned over: the same number is negative", low, high.Minus(Point{Y: 65}), turned...),
	}
}

// acrossGrips shows the straightedge on the grips and the ruler up to the clamp, and where
// people lay it by mistake.
func acrossGrips(_ drawing.Frame, p Plate, b Build) []drawing.Frame {
	middle := Point{X: 315, Y: -27}
	low, high := Point{X: -480, Y: -150}, Point{X: 400, Y: 130}
	lay := func(caption words.Text, y float64, more ...drawing.Mark) drawing.Frame {
		m := append(p.On.Marks(b), tube(-400, y-11, 400, y-11, 11, 11), Landmark(middle, 9))
		m = append(m, Grasp{At: Point{X: -372, Y: y - 18}, Way: 62, Role: drawing.Body}.Pinch()...)
		return drawing.Frame{Caption: caption, Low: low, High: high, Marks: append(m, more...),
			Details: []drawing.Detail{{At: middle, Radius: 85, Apart: 8, Caption: words.Of("the middle of one grip")}}}
	}
	ruler := append(Ruler(Point{X: 30, Y: -27}, Point{X: 30}, -1), finger(Point{X: 44, Y: 52}, 250)...)
	ruler = append(ruler, p.Spans[0].marks(b, drawing.Hot, words.Of("read here"))...)
	return []drawing.Frame{lay(words.Of("Right: {0}", words.Of("across the middles of both grips")), -27, ruler...),
		lay(words.Of("Wrong: {0}", words.Of("on the ends of the grips")), -35)}
}

// drawnRound shows how the angle of a foot is taken on card: drawn round, a line, a set square.
func drawnRound(own drawing.Frame, p Plate, b Build) []drawing.Frame {
	length := drawnSole.Length
	low, high := Point{X: -50, Y: -210}, Point{X: 380, Y: 210}
	card := p.On.Marks(b)
	feet := card[:2:2]
	for i, heel := range [2]Point{leftHeel, rightHeel} {
		turn, foot := -drawnRightOut-heelAndToe(), bareFoot(length)
		if i == 0 {
			turn, foot = drawnLeftOut+heelAndToe(), Flipped(foot...)
		}
		feet = append(feet, Turned(turn, heel, foot...)...)
	}
	tip := pointing(outline(length), leftHeel, drawnLeftOut, true).Points[8]
	feet = append(feet, drawing.Limb{Role: drawing.Ink, Fill: drawing.Sheet, A: tip.Plus(Point{X: 3, Y: 3}),
		B: tip.Plus(Point{X: 42, Y: 62}), Ra: 1.5, Rb: 4})
	feet = append(feet, Grasp{At: tip.Plus(Point{X: 18, Y: 24}), Way: 236, Role: drawing.Before, Over: true}.Pinch()...)
	lined := append(card, drawing.Line{Role: drawing.Hot,
		Points: []Point{leftHeel, leftHeel.Plus(drawing.Polar(drawnLeftOut, 280))}},
		drawing.Line{Role: drawing.Hot, Points: []Point{rightHeel, rightHeel.Plus(drawing.Polar(-drawnRightOut, 280))}})
	own.Caption = words.Of("3. Set square on a parallel: read the angle")
	return []drawing.Frame{step("1. Stop with closed eyes; a helper draws round both feet", low, high, feet...),
		step("2. Heel to second toe: draw the line", low, high, lined...), own}
}

// lessTheCrank shows what a drop comes to by two heights above the floor.
func lessTheCrank(own drawing.Frame, p Plate, b Build) []drawing.Frame {
	own.Caption = words.Of("What it is: below the line between the axles")
	axle, crank := aboveFloor(p.Of, rearAxle, 130), aboveFloor(p.Of, crankAxle, -140)
	marks := append(wholeBike.Marks(b), axle.held(b)...)
	marks = append(marks, crank.held(b)...)
	marks = append(marks, axle.Spans[0].marks(b, drawing.Hot, words.Of("this"))...)
	marks = append(marks, crank.Spans[0].marks(b, drawing.Ink, words.Of("less this"))...)
	return []drawing.Frame{own, step("How: one height less the other",
		Point{X: b.Bike.Rear.X - b.Bike.RearRadius - 20, Y: b.Bike.Ground() - 60}, Point{X: 330, Y: 330}, marks...)}
}

// onArm shows where a crank's length is stamped.
func onArm(own drawing.Frame, _ Plate, _ Build) []drawing.Frame {
	own.Caption = words.Of("What it is: from centre to centre")
	arm := []drawing.Mark{
		drawing.Limb{Role: drawing.Ink, Fill: drawing.Sheet, A: Point{}, B: Point{X: 170}, Ra: 24, Rb: 16},
		drawing.Circle{Role: drawing.Ink, Fill: drawing.Sheet, Radius: 14},
		drawing.Circle{Role: drawing.Ink, Fill: drawing.Sheet, Centre: Point{X: 170}, Radius: 8},
	}
	at := Point{X: 132}
	arm = append(arm, print(drawing.Hot, at, Point{X: 1}, 15, 9)...)
	return []drawing.Frame{
		own,
		step("Read it on the inner side of the arm", Point{X: -50, Y: -50}, Point{X: 300, Y: 190},
			append(arm, finger(at.Plus(Point{X: 4, Y: 8}), 240)...)...),
	}
}

// squared is the set square along the line that an angle is counted from, on the side of
// the angle.
func (s Span) squared(b Build) []drawing.Mark {
	from := s.From.At(b)
	way := s.Against.At(b).Minus(from)
	if s.To.At(b).Minus(from).Dot(way.Left()) < 0 {
		way = way.Times(-1)
	}
	return setSquare(from, way)
}

// setSquare is a set square with a scale of degrees, its long edge along a way and its
// middle at a heel, and the hand that holds it.
func setSquare(heel, way Point) []drawing.Mark {
	const half = 120
	u := way.Unit()
	at := func(x, y float64) Point { return heel.Along(u, x).Along(u.Left(), y) }
	m := []drawing.Mark{drawing.Line{Role: drawing.Ink, Closed: true,
		Points: []Point{at(-half, 0), at(half, 0), at(0, half)}}}
	for a := 10.0; a < 180; a += 10 { // the scale runs along its two short sides
		p := drawing.Polar(a, 1)
		side := half / (max(p.X, -p.X) + p.Y)
		end := p.Times(side - 9)
		p = p.Times(side)
		m = append(m, drawing.Line{Role: drawing.Ink, Pen: drawing.Thin,
			Points: []Point{at(p.X, p.Y), at(end.X, end.Y)}})
	}
	return append(m, Grasp{At: at(-46, 62), Way: u.Angle() - 52, Role: drawing.Body}.Pinch()...)
}
