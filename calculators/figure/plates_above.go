package figure

import (
	"plumbline/calculators/drawing"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// How far the feet and the shoe of these plates point outwards, degrees.
const drawnLeftOut, drawnRightOut, drawnCleatOut = 12, 8, 10

// heelAndToe returns how the line from the middle of the heel to the second toe slants
// in the outline of a right foot, degrees: the outline is turned back by it, so that
// this line points as it should.
func heelAndToe() float64 { return secondToe.Angle() }

// secondToe is the tip of the second toe in soleForm.
var secondToe = Point{X: 0.96, Y: 0.022}

// pointing returns a foot from above, its heel at a place, whose line from the heel to
// the second toe has an angle, degrees anticlockwise from forward.
func pointing(foot drawing.Line, heel Point, angle float64, left bool) drawing.Line {
	if left {
		foot, angle = Mirrored(foot, 0).(drawing.Line), angle+heelAndToe()
	} else {
		angle -= heelAndToe()
	}
	ahead := drawing.Polar(angle, 1)
	points := make([]Point, len(foot.Points))
	for i, p := range foot.Points {
		points[i] = heel.Along(ahead, p.X).Along(ahead.Left(), p.Y)
	}
	foot.Points = points
	return foot
}

// outline returns the outline of a right foot of a length, mm.
func outline(length float64) drawing.Line { return round(soleForm, length) }

// rectangle returns a sheet or a board with two opposite corners.
func rectangle(fill drawing.Fill, low, high Point) drawing.Mark {
	return drawing.Line{Role: drawing.Ink, Fill: fill, Closed: true,
		Points: []Point{low, {X: high.X, Y: low.Y}, high, {X: low.X, Y: high.Y}}}
}

// tube returns a straight tube from a to b, half as wide as given at its ends, mm.
func tube(ax, ay, bx, by, ra, rb float64) drawing.Mark {
	return drawing.Tube{Role: drawing.Ink, Fill: drawing.Sheet, A: Point{X: ax, Y: ay}, B: Point{X: bx, Y: by},
		Ra: ra, Rb: rb}
}

// ray returns the spans' places on a line from a point: the point itself, a place on
// the line, and one straight ahead of the point.
func ray(from, to, against words.English, start Point, angle, length float64) Span {
	end := start.Plus(drawing.Polar(angle, length))
	return Span{From: spot(from, start.X, start.Y), To: spot(to, end.X, end.Y), Way: Tilt,
		Against: spot(against, start.X+length, start.Y)}
}

// Where the heels stand on the card.
var leftHeel, rightHeel = Point{Y: 78}, Point{Y: -78}

// onCard is both feet on a card.
var onCard = Scenery{Name: "Both feet from above, drawn round on card, with the straight line between them against " +
	"which each foot’s line is measured", Marks: func(Build) []drawing.Mark {
	return []drawing.Mark{
		rectangle(drawing.Sheet, Point{X: -40, Y: -200}, Point{X: 370, Y: 200}),
		drawing.Line{Role: drawing.Ink, Points: []Point{{X: -20}, {X: 350}}},
		pointing(outline(drawnSole.Length), leftHeel, drawnLeftOut, true),
		pointing(outline(drawnSole.Length), rightHeel, -drawnRightOut, false),
	}
}}

// clippedIn is a shoe on its pedal, the bike below it.
var clippedIn = Scenery{Name: "The left shoe from above, clipped in with no foot in it; the bike’s middle line " +
	"below it, and the right shoe is its mirror image", Marks: func(Build) []drawing.Mark {
	shoe := outline(290)
	shoe.Role, shoe.Fill = drawing.Ink, drawing.Sheet
	return []drawing.Mark{
		drawing.Axis{Role: drawing.Soft, A: Point{X: -230, Y: -150}, B: Point{X: 130, Y: -150}},
		drawing.Label{Role: drawing.Soft, At: Point{X: -120, Y: -150}, Side: Point{Y: -1},
			Text: words.Of("bike’s middle line")},
		drawing.Limb{Role: drawing.Ink, Fill: drawing.Sheet, A: Point{X: -172, Y: -78}, B: Point{Y: -72}, Ra: 16,
			Rb: 10},
		tube(0, -62, 0, 46, 7, 7),
		rectangle(drawing.Wash, Point{X: -46, Y: -50}, Point{X: 46, Y: 50}),
		pointing(shoe, shoeHeel, drawnCleatOut, true),
		drawing.Axis{Role: drawing.Soft, A: Point{Y: -80}, B: Point{Y: 64}},
	}
}}

// shoeHeel is where the clipped shoe's heel is: its cleat sits over the spindle, 195 mm
// ahead of the heel.
var shoeHeel = drawing.Polar(drawnCleatOut, -195)

// armAbove is the right crank from above, level, its pedal forward.
var armAbove = Scenery{
	Ruled: true,
	Name: "The right crank from above, level and pointing forward, with a straightedge along its " +
		"outer face at the pedal",
	Frame: func(Build) (low, high Point) { return Point{X: -70, Y: -120}, Point{X: 230, Y: 240} },
	Marks: func(Build) []drawing.Mark {
		return []drawing.Mark{
			tube(-48, 0, 36, 0, 20, 20), tube(36, 0, 58, 0, 12, 12),
			tube(88, 170, 196, 170, 6, 6), tube(100, 170, 200, 170, 44, 44),
			drawing.Axis{Role: drawing.Soft, A: Point{Y: -40}, B: Point{Y: 200}},
			drawing.Limb{Role: drawing.Ink, Fill: drawing.Sheet, A: Point{X: 56}, B: Point{X: 78, Y: 170}, Ra: 16,
				Rb: 10},
			tube(91, -40, 91, 215, 3, 3),
		}
	},
}

// rearAbove is the rear of a bike from above, forward upwards: the crank axle at the
// origin, the rear axle behind it.
func rearAbove(low, high Point) Scenery {
	return Scenery{
		Ruled: true,
		Name:  "The rear of a bike from above, forward upwards: crank axle, chainstays, wheel and axle",
		Frame: func(Build) (Point, Point) { return low, high },
		Marks: func(Build) []drawing.Mark {
			const axle = -437
			m := []drawing.Mark{
				drawing.Limb{Role: drawing.Ink, Fill: drawing.Wash, A: Point{Y: -95}, B: Point{Y: -780}, Ra: 30,
					Rb: 30},
				tube(-92, axle, 92, axle, 6, 6), tube(-60, axle, 60, axle, 16, 16),
				tube(34, axle, 66, axle, 86, 40), tube(-64, axle, -60, axle, 90, 90),
			}
			for _, side := range [2]float64{-1, 1} {
				var stay []Point
				for _, at := range [8][2]float64{{24, -12}, {41, -95}, {49, -180}, {72, -462},
					{87, -462}, {67, -180}, {59, -95}, {44, -12}} {
					stay = append(stay, Point{X: side * at[0], Y: at[1]})
				}
				m = append(m, drawing.Line{Role: drawing.Ink, Fill: drawing.Sheet, Closed: true, Points: stay})
			}
			return append(m, tube(-37, 0, 37, 0, 21, 21),
				tube(87, -440, 100, -440, 14, 12), tube(92, -454, 74, -520, 6, 5),
				drawing.Limb{Role: drawing.Ink, Fill: drawing.Sheet, A: Point{X: -95, Y: axle}, B: Point{X: -95,
					Y: -500},
					Ra: 5, Rb: 5},
				drawing.Axis{Role: drawing.Soft, A: Point{Y: 40}, B: Point{Y: -560}})
		},
	}
}

// abovePlates are what is taken on feet, shoes, cranks and rear end from above.
func abovePlates() []Plate {
	foot := func(heel Point, angle float64) Span {
		return ray("the middle of the heel", "the second toe", "straight ahead", heel, angle,
			secondToe.Length()*drawnSole.Length)
	}
	left, right := foot(leftHeel, drawnLeftOut), foot(rightHeel, -drawnRightOut)
	left.Beside, left.Label, right.Beside, right.Label = 285, "Left", 285, "Right"
	shoe := ray("the heel’s middle", "the middle of the shoe’s tip", "a parallel to the bike", shoeHeel,
		drawnCleatOut, 280)
	shoe.Beside, shoe.Label = 310, "Toes out"
	stays := part(measure.StayWidth, rearAbove(Point{X: -190, Y: -330}, Point{X: 190, Y: 70}), LevelWay,
		spot("one chainstay’s outer face, where the heels pass,", -67, -180), spot("the other’s", 67, -180), -110)
	stays.Spans[0].Label = "Stays"
	rear := part(measure.RearEndWidth, rearAbove(Point{X: -190, Y: -620}, Point{X: 190, Y: -270}), LevelWay,
		spot("the outermost part on one side, here the axle’s lever,", -100, -437),
		spot("the outermost on the other, here the gear mechanism", 100, -440), -140)
	rear.Spans[0].Label = "Rear end"
	arm := part(measure.ArmSetIn, armAbove, LevelWay, spot("the arm’s outer face at the crank axle", 72, 0),
		spot("the straightedge", 88, 0), -75)
	arm.Spans[0].Label = "Set in"
	return []Plate{
		{
			Of:    measure.ToeOutLeft,
			Title: "Your feet’s own angle, on card",
			On:    onCard,
			Spans: []Span{left, right},
			Hold:  Hold{Square: true},
			Steps: drawnRound,
		},
		{Of: measure.CleatAngleLeft, On: clippedIn, Spans: []Span{shoe}, Hold: Hold{Square: true}},
		arm,
		stays,
		rear,
	}
}
