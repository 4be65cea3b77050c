package figure

import (
	"math"

	"plumbline/calculators/drawing"
	"plumbline/calculators/measure"
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
	own.Low, own.High = low, high
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
		step("Turned over: the same number is negative", low, high, turned...),
	}
}

// onFaceplate shows the mark by which a roll is seen, from the front.
func onFaceplate(own drawing.Frame, p Plate, b Build) []drawing.Frame {
	own.Low, own.High = within(barMiddle.At(b), 190, 150)
	own.Caption = words.Of("What it is: the bar turns in the stem")
	low, high := Point{X: -130, Y: -75}, Point{X: 190, Y: 125}
	line := func(roll float64) []drawing.Mark {
		up := barHalf * math.Sin(roll*math.Pi/180)
		m := []drawing.Mark{tube(-130, 0, 190, 0, barHalf, barHalf), tube(-26, 0, 26, 0, 26, 26)}
		for _, at := range [4]Point{{X: -17, Y: -19}, {X: 17, Y: -19}, {X: -17, Y: 19}, {X: 17, Y: 19}} {
			m = append(m, drawing.Circle{Role: drawing.Ink, Pen: drawing.Thin, Centre: at, Radius: 4})
		}
		m = append(m, strip(2, 25.5, 0), strip(26.5, 62, up))
		return append(m, drawing.Line{Role: drawing.Hot, Pen: drawing.Heavy, Points: []Point{{X: 6}, {X: 25}}},
			drawing.Line{Role: drawing.Hot, Pen: drawing.Heavy, Points: []Point{{X: 27, Y: up}, {X: 58, Y: up}}})
	}
	pencil := drawing.Limb{
		Role: drawing.Ink,
		Fill: drawing.Sheet,
		A:    Point{X: 59, Y: 2},
		B:    Point{X: 112, Y: 60},
		Ra:   1.5,
		Rb:   4,
	}
	before := append(append(line(0), pencil), Grasp{At: Point{X: 78, Y: 23}, Way: 218, Role: drawing.Body, Over: true}.
		Pinch()...)
	root, tip := leverRoot.At(b).Plus(Point{X: 8}), leverTip.At(b)
	on, way := root.Plus(tip).Times(0.5), tip.Minus(root)
	phone := append(p.On.Marks(b), Phone(on, way)...)
	hand := Grasp{At: on.Along(way.Unit().Left(), 12), Way: way.Angle() - 70, Role: drawing.Body}
	return []drawing.Frame{own,
		step("From the front: tape, and one line over both", low, high, before...),
		step("Rolled: the two halves of the line are apart", low, high, line(drawnRoll)...),
		step("How far: a phone on the lever, before and after", own.Low, own.High, append(phone, hand.Pinch()...)...)}
}

// barHalf is half the bar's thickness at the clamp, mm: 31.8, the usual size (common practice).
const barHalf = 15.9

// strip is a piece of masking tape on the bar, seen from the front.
func strip(from, to, y float64) drawing.Mark {
	return drawing.Tube{Role: drawing.Ink, Pen: drawing.Thin, Fill: drawing.Wash, A: Point{X: from, Y: y},
		B: Point{X: to, Y: y}, Ra: 8, Rb: 8}
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
			Details: []drawing.Detail{{At: middle, Radius: 85, Caption: words.Of("the middle of one grip")}}}
	}
	ruler := append(Ruler(Point{X: 30, Y: -27}, Point{X: 30}, -1), finger(Point{X: 44, Y: 52}, 250)...)
	ruler = append(ruler, p.Spans[0].marks(b, drawing.Hot, words.Of("read here"))...)
	return []drawing.Frame{lay(words.Of("Right: {0}", words.Of("across the middles of both grips")), -27, ruler...),
		lay(words.Of("Wrong: {0}", words.Of("on the ends of the grips")), -35)}
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

// onPaper shows how the angle of a foot is taken on card: drawn round, a line, a set square.
func onPaper(own drawing.Frame, _ Plate, b Build) []drawing.Frame {
	const length = 266
	toe := pointing(outline(length), leftHeel, drawnLeftOut, true)
	low, high := Point{X: -50, Y: -210}, Point{X: 380, Y: 210}
	feet := []drawing.Mark{onCard.Marks(b)[0], onCard.Marks(b)[1]}
	for _, side := range [2]float64{1, -1} {
		turn, heel := drawnLeftOut-heelAndToe(), leftHeel
		foot := bareFoot(length)
		if side > 0 {
			foot, turn = Flipped(foot...), drawnLeftOut+heelAndToe()
		} else {
			heel, turn = rightHeel, -drawnRightOut-heelAndToe()
		}
		feet = append(feet, Turned(turn, heel, foot...)...)
	}
	tip := toe.Points[8]
	feet = append(feet, drawing.Limb{Role: drawing.Ink, Fill: drawing.Sheet, A: tip.Plus(Point{X: 3, Y: 3}),
		B: tip.Plus(Point{X: 42, Y: 62}), Ra: 1.5, Rb: 4})
	feet = append(feet, Grasp{At: tip.Plus(Point{X: 18, Y: 24}), Way: 236, Role: drawing.Before, Over: true}.Pinch()...)
	own.Caption = words.Of("2. Heel to second toe: draw the line")
	return []drawing.Frame{step("1. Stop with closed eyes; a helper draws round both feet", low, high, feet...), own,
		step("3. Set square on a parallel: read the angle", Point{X: -190, Y: -20}, high, setSquare()...)}
}

// setSquare is a set square with a scale of degrees, on a parallel through the heel of the
// left foot's outline, and the hand that holds it.
func setSquare() []drawing.Mark {
	const half = 120
	m := []drawing.Mark{rectangle(drawing.Sheet, Point{X: -40, Y: -200}, Point{X: 370, Y: 200}),
		drawing.Line{Role: drawing.Ink, Points: []Point{{X: -20}, {X: 350}}},
		pointing(outline(drawnSole.Length), leftHeel, drawnLeftOut, true)}
	ends := [2]Point{leftHeel.Plus(drawing.Polar(drawnLeftOut, 280)), leftHeel.Plus(Point{X: 280})}
	m = append(m, drawing.Line{Role: drawing.Ink, Pen: drawing.Thin, Points: []Point{leftHeel, ends[1]}},
		drawing.Line{Role: drawing.Hot, Closed: true, Points: []Point{leftHeel.Plus(Point{X: -half}),
			leftHeel.Plus(Point{X: half}), leftHeel.Plus(Point{Y: half})}},
		drawing.Line{Role: drawing.Hot, Pen: drawing.Thin, Points: []Point{leftHeel, ends[0]}})
	for a := 10.0; a < 180; a += 10 {
		// The scale runs along the square's two short sides.
		way := drawing.Polar(a, 1)
		side := half / (math.Abs(way.X) + way.Y)
		m = append(m, drawing.Line{Role: drawing.Hot, Pen: drawing.Thin,
			Points: []Point{leftHeel.Along(way, side), leftHeel.Along(way, side-9)}})
	}
	hand := Grasp{At: leftHeel.Plus(Point{X: -46, Y: 62}), Way: -52, Role: drawing.Body}
	m = append(m, hand.Pinch()...)
	return append(m, drawing.Angle{Role: drawing.Hot, Vertex: leftHeel, From: 0, To: drawnLeftOut, Radius: 205,
		ArmFrom: 205, ArmTo: 205, Text: words.Of(measure.ToeOut.Label), Priority: 2})
}
