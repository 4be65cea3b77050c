package figure

import (
	"math"

	"plumbline/calculators/drawing"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// BarRolled shows the mark by which a roll is seen, from the front, and the phone that tells
// how far the bar was rolled.
func BarRolled(b Build) *drawing.Figure {
	b = headSide.Fit(b)
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
	f := &drawing.Figure{Title: words.Of("One line over bar and faceplate shows the roll"), Least: 20, Apart: true,
		Description: words.Of("The middle of a bar in its stem from the front. A strip of masking tape lies on the " +
			"faceplate and the bar, with one line over both. After the bar was rolled the two halves of the line are " +
			"apart. A phone on a brake lever, read before and after, shows by how much.")}
	marks := append(headSide.Marks(b), Plate{Hold: Hold{Phone: onLever}}.held(b)...)
	around, beyond := within(barMiddle.At(b), 190, 150)
	f.Frames = []drawing.Frame{
		step("1. From the front: tape, and one line over both", low, high, before...),
		step("2. Rolled: the two halves of the line are apart", low, high, line(drawnRoll)...),
		step("3. How far: a phone on the lever, before and after", around, beyond, marks...)}
	return f
}

// barHalf is half the bar's thickness at the clamp, mm: 31.8, the usual size (common practice).
const barHalf = 15.9

// strip is a piece of masking tape on the bar, seen from the front.
func strip(from, to, y float64) drawing.Mark {
	return drawing.Tube{Role: drawing.Ink, Pen: drawing.Thin, Fill: drawing.Wash, A: Point{X: from, Y: y},
		B: Point{X: to, Y: y}, Ra: 8, Rb: 8}
}

// FeetOnCard shows how the angle of a foot is taken on card: drawn round, a line, a set square.
func FeetOnCard(b Build) *drawing.Figure {
	const length = 266
	toe := pointing(outline(length), leftHeel, drawnLeftOut, true)
	low, high := Point{X: -50, Y: -210}, Point{X: 380, Y: 210}
	feet := []drawing.Mark{onCard.Marks(b)[0], onCard.Marks(b)[1]}
	for _, side := range [2]float64{1, -1} {
		turn, heel, foot := drawnLeftOut+heelAndToe(), leftHeel, bareFoot(length)
		if side > 0 {
			foot = Flipped(foot...)
		} else {
			turn, heel = -drawnRightOut-heelAndToe(), rightHeel
		}
		feet = append(feet, Turned(turn, heel, foot...)...)
	}
	tip := toe.Points[8]
	feet = append(feet, drawing.Limb{Role: drawing.Ink, Fill: drawing.Sheet, A: tip.Plus(Point{X: 3, Y: 3}),
		B: tip.Plus(Point{X: 42, Y: 62}), Ra: 1.5, Rb: 4})
	feet = append(feet, Grasp{At: tip.Plus(Point{X: 18, Y: 24}), Way: 236, Role: drawing.Before, Over: true}.Pinch()...)
	f := &drawing.Figure{Title: words.Of("Your feet’s own angle, on card"), Least: 20, Apart: true,
		Description: words.Of("Two feet on card from above, with a straight line between them. A helper draws round " +
			"each foot with a pencil. Then, on each outline, a line runs from the middle of the heel to the second " +
			"toe. A set square lies with its long edge on a parallel to the straight line and its middle at the heel" +
			": its scale shows the foot’s angle.")}
	lined := append(onCard.Marks(b), drawing.Line{Role: drawing.Hot,
		Points: []Point{leftHeel, leftHeel.Plus(drawing.Polar(drawnLeftOut, 280))}},
		drawing.Line{Role: drawing.Hot, Points: []Point{rightHeel, rightHeel.Plus(drawing.Polar(-drawnRightOut, 280))}})
	f.Frames = []drawing.Frame{step("1. Stop with closed eyes; a helper draws round both feet", low, high, feet...),
		step("2. Heel to second toe: draw the line", low, high, lined...),
		step("3. Set square on a parallel: read the angle", Point{X: -190, Y: -20}, high, cardMeasured()...)}
	return f
}

// cardMeasured is the card with the set square on the left foot's outline.
func cardMeasured() []drawing.Mark {
	end := leftHeel.Plus(drawing.Polar(drawnLeftOut, 280))
	m := []drawing.Mark{rectangle(drawing.Sheet, Point{X: -40, Y: -200}, Point{X: 370, Y: 200}),
		drawing.Line{Role: drawing.Ink, Points: []Point{{X: -20}, {X: 350}}},
		pointing(outline(drawnSole.Length), leftHeel, drawnLeftOut, true),
		drawing.Line{Role: drawing.Ink, Pen: drawing.Thin, Points: []Point{leftHeel, leftHeel.Plus(Point{X: 280})}}}
	m = append(m, setSquare(leftHeel, Point{X: 1})...)
	return append(m, drawing.Line{Role: drawing.Hot, Pen: drawing.Thin, Points: []Point{leftHeel, end}},
		drawing.Angle{Role: drawing.Hot, Vertex: leftHeel, From: 0, To: drawnLeftOut, Radius: 205,
			ArmFrom: 205, ArmTo: 205, Text: words.Of(measure.ToeOut.Label), Priority: 2})
}

// Weighed is a bike with nobody on it, one wheel on a scale and the other on a block as high,
// held upright by a fingertip at the saddle: the front wheel on the scale, then the rear one.
func Weighed(b Build) *drawing.Figure {
	f := &drawing.Figure{
		Title: words.Of("The bike on the scale, one wheel at a time"),
		Description: words.Of(
			"A bike from the side with nobody on it. One wheel stands on a bathroom scale, the other " +
				"on a block as high. A fingertip at the saddle keeps it upright. First the front wheel is on the " +
				"scale, then the rear wheel.",
		),
		Least: 18,
	}
	floor, top := b.Bike.Ground(), b.SaddleTop()
	for i, caption := range [2]words.English{"1. Front wheel on the scale", "2. Rear wheel on the scale"} {
		marks := append(
			lifted(b, 160),
			Grasp{At: top.Plus(Point{X: -70, Y: 4}), Way: -62, Role: drawing.Body}.Point()...)
		on, other := At(b.Bike.Front), At(b.Bike.Rear)
		if i == 1 {
			on, other = other, on
		}
		marks = append(
			marks,
			drawing.Label{
				Role: drawing.Hot,
				At:   Point{X: on.X, Y: floor - drawnScale},
				Side: Point{Y: -1},
				Text: words.Of("scale"),
			},
			drawing.Label{Role: drawing.Ink, At: Point{X: other.X, Y: floor - drawnScale}, Side: Point{Y: -1},
				Text: words.Of("block")},
		)
		f.Frame(words.Of(caption), marks...)
	}
	return f
}
