package figure

import (
	"plumbline/calculators/drawing"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// The marking of ISO 5775-1 on the drawn tyre: its width and the diameter of the rim where
// the tyre's bead sits, mm.
const drawnTyre, drawnSeat = 57.0, 622.0

// wheelSide is a wheel from the side, its axle at the origin.
var wheelSide = Scenery{Name: "A wheel from the side, the marking on the tyre’s side wall", Marks: func(
	Build) []drawing.Mark {
	return []drawing.Mark{
		drawing.Wheel{Role: drawing.Ink, Tyre: drawnSeat/2 + drawnTyre, Rim: drawnSeat / 2},
		drawing.Circle{Role: drawing.Ink, Fill: drawing.Sheet, Radius: 24},
		drawing.Circle{Role: drawing.Ink, Pen: drawing.Thin, Radius: 8}}
}}

// tyrePlate is where a tyre's size stands, and what both of its numbers are.
func tyrePlate() Plate {
	p := part(measure.FrontRim, wheelSide, LevelWay, spot("where the tyre’s bead sits", -drawnSeat/2, 0),
		spot("the same place across the wheel", drawnSeat/2, 0), 0)
	p.Title, p.Steps = "Where a tyre’s size stands, and what it says", onSideWall
	return p
}

func onSideWall(_ drawing.Frame, p Plate, b Build) []drawing.Frame {
	wheel := func() []drawing.Mark { return p.On.Marks(b) }
	middle := Point{Y: (drawnSeat + drawnTyre) / 2}
	low, high := within(middle.Plus(Point{X: 30, Y: -25}), 150, 85)
	printed := append(wheel(), drawing.Label{Role: drawing.Hot, At: middle.Plus(Point{X: -26}), Fixed: true,
		Text: words.Of("{0}", words.Name("57-622"))})
	across := append(wheel(), drawing.Dimension{Role: drawing.Hot, A: Point{X: -drawnSeat / 2}, B: Point{X: drawnSeat /
		2}, Along: Point{X: 1}, Offset: 70, Text: words.Of("{0}", measure.Millimetres(drawnSeat)), Priority: 2})
	return []drawing.Frame{
		step("1. Find two numbers with a dash on the side wall", low, high,
			append(printed, finger(middle.Plus(Point{X: 32, Y: -4}), 150)...)...),
		step("2. The second number: across the wheel, where the tyre sits on the rim", Point{}, Point{}, across...),
		step("3. The first number: how wide the tyre is", Point{X: -95, Y: -50}, Point{X: 140, Y: 82},
			sectionOfTyre()...),
	}
}

// sectionOfTyre is a tyre and its rim cut open, between the jaws of callipers.
func sectionOfTyre() []drawing.Mark {
	const half = drawnTyre / 2
	both := func(right ...float64) (points []Point) {
		for i := 0; i < len(right); i += 2 {
			points = append(points, Point{X: right[i], Y: right[i+1]})
		}
		for i := len(right) - 2; i >= 0; i -= 2 {
			points = append(points, Point{X: -right[i], Y: right[i+1]})
		}
		return points
	}
	jaw := func(side float64) drawing.Mark {
		return tube(side*(half+6), 62, side*(half+6), -6, 6, 6)
	}
	marks := []drawing.Mark{
		drawing.Line{Role: drawing.Ink, Fill: drawing.Hatch, Closed: true,
			Points: append(both(19, -18, 19, -36, 9, -47), both(-15, -18, -15, -33, -6, -41)...)},
		drawing.Line{Role: drawing.Ink, Fill: drawing.Wash, Closed: true, Smooth: true, Points: both(14, -30, 14, -30,
			15, -22, 25, -13, half, 0, 24, 17, 13, 27, 3, 30)},
		drawing.Line{Role: drawing.Ink, Fill: drawing.Sheet, Closed: true, Smooth: true, Points: both(8, -27, 8, -27,
			12, -20, 21, -12, 25, 0, 20, 14, 11, 22, 2, 24)},
		tube(-half-20, 62, 110, 62, 6, 6), jaw(-1), jaw(1),
		drawing.Dimension{Role: drawing.Hot, A: Point{X: -half}, B: Point{X: half}, Along: Point{X: 1}, Offset: 46,
			Text: words.Of("{0}", measure.Millimetres(drawnTyre)), Priority: 2},
	}
	return append(marks, Grasp{At: Point{X: 62, Y: 58}, Way: 130, Role: drawing.Body}.Pinch()...)
}
