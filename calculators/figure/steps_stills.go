package figure

import (
	"math"

	"plumbline/calculators/drawing"
	"plumbline/calculators/words"
)

// BarRolled shows the mark by which a roll is seen, from the front, and the phone that tells
// how far the bar was rolled.
func BarRolled(b Build) *drawing.Figure {
	b = headSide.Fit(b)
	low, high := Point{X: -70, Y: -40}, Point{X: 120, Y: 110}
	line := func(roll float64) []drawing.Mark {
		up := barHalf * math.Sin(roll*math.Pi/180)
		m := []drawing.Mark{tube(-70, 0, 120, 0, barHalf, barHalf), tube(-26, 0, 26, 0, 26, 26)}
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
	f := &drawing.Figure{Title: words.Of("One line over bar and faceplate shows the roll"), Least: 10, Apart: true,
		Description: words.Of("The middle of a bar in its stem from the front. A strip of masking tape lies on the " +
			"faceplate and the bar, with one line over both. After the bar was rolled the two halves of the line are " +
			"apart. A phone on a brake lever, read before and after, shows by how much.")}
	marks := append(headSide.Marks(b), Plate{Hold: Hold{Phone: onLever}}.held(b)...)
	around, beyond := within(barMiddle.At(b), 190, 150)
	f.Frames = []drawing.Frame{
		step("1. From the front: tape, and one line over both", low, high, before...),
		step("2. Rolled: the two halves of the line are apart", low, high.Minus(Point{Y: 70}), line(drawnRoll)...),
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

// HeldOnScale is somebody on a bathroom scale, with the bike held clear of the floor and then
// without it.
func HeldOnScale(b Build) *drawing.Figure {
	f := &drawing.Figure{
		Title: words.Of("Weigh the bike: with it and without it"),
		Description: words.Of("Somebody stands on a bathroom scale, seen from the front. First they hold the bike by " +
			"saddle and stem, and neither wheel touches the floor. Then they stand there alone. The difference is " +
			"the bike."),
		Least: 18,
	}
	const clear = 170.0
	floor := b.Bike.Ground() - clear
	stands := Point{X: (b.SaddleTop().X + b.Grip().X) / 2, Y: floor + drawnScale}
	scale := []drawing.Mark{
		drawing.Ground{A: Point{X: b.Bike.Rear.X - 400, Y: floor}, B: Point{X: b.Bike.Front.X + 400, Y: floor}},
		drawing.Tube{
			Role: drawing.Hot,
			Fill: drawing.Wash,
			A:    Point{X: stands.X, Y: floor},
			B:    stands,
			Ra:   190,
			Rb:   190,
		},
		drawing.Label{Role: drawing.Hot, At: Point{X: stands.X, Y: floor}, Side: Point{Y: -1}, Text: words.Of("scale")},
	}
	steerer := At(b.Bike.HeadTop).Plus(Point{X: -20, Y: 40})
	held := append(append(scale, Helper(stands, steerer, b.SaddleTop().Plus(Point{X: -40, Y: -10}))...), Bike(b)...)
	f.Frame(words.Of("1. With the bike, both wheels off the floor"), held...)
	f.Frame(words.Of("2. Alone: the difference is the bike"), append(scale[:3:3], Helper(stands)...)...)
	return f
}
