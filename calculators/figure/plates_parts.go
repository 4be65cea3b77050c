package figure

import (
	"plumbline/calculators/drawing"
	"plumbline/calculators/geometry"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// spot is a fixed place of a part that is drawn by eye.
func spot(name words.English, x, y float64) Spot {
	return Spot{name, func(Build) Point { return Point{X: x, Y: y} }}
}

// part makes a plate of one span on a part.
func part(q *measure.Quantity, on Scenery, way Way, from, to Spot, beside float64) Plate {
	return Plate{Of: q, On: on, Spans: []Span{{From: from, To: to, Way: way, Beside: beside}}}
}

// onSteerer is a place on the steering axis: how far above the top of the head tube.
func onSteerer(name words.English, above func(Build) float64) Spot {
	return Spot{name, func(b Build) Point { return At(b.Bike.HeadTop).Along(At(b.Bike.AxisDown()), -above(b)) }}
}

// The spots on the way from the fork's crown up to the bar.
var (
	cover     = onSteerer("the top of the bearing cover", func(b Build) float64 { return b.Cockpit.Headset })
	stemLower = onSteerer("the stem’s lower edge",
		func(b Build) float64 { return b.Cockpit.Headset + b.Cockpit.Spacers })
	stemUpper = onSteerer("the stem’s upper edge",
		func(b Build) float64 { return b.Cockpit.Headset + b.Cockpit.Spacers + b.Cockpit.ClampHeight })
	topCap = onSteerer("the top cap", func(b Build) float64 {
		return b.Cockpit.Headset + b.Cockpit.Spacers + b.Cockpit.ClampHeight + drawnAbove
	})
	headFoot = Spot{"the head tube’s lower edge", func(b Build) Point { _, bottom := b.headEnds(); return bottom }}
	headHalf = Spot{"the point about which the axis tilts", func(b Build) Point {
		top, bottom := b.headEnds()
		return top.Along(bottom.Minus(top), 0.5)
	}}
	steererMiddle = Spot{"the middle of the steerer", func(b Build) Point {
		h,
			_ := b.Cockpit.Hold(b.Bike)
		return At(h.StemClamp)
	}}
	barMiddle = Spot{"the middle of the bar’s clamp", func(b Build) Point {
		h,
			_ := b.Cockpit.Hold(b.Bike)
		return At(h.Bar)
	}}
	leverRoot = Spot{"the lever’s root", func(b Build) Point { return b.Grip().Plus(Point{X: 34, Y: -16}) }}
	leverTip  = Spot{"where the finger lies", func(b Build) Point { return b.Grip().Plus(Point{X: 60, Y: -76}) }}
	rolled    = Spot{"the same after the bar was rolled forward", func(b Build) Point {
		bar := barMiddle.At(b)
		way := gripMiddle.At(b).Minus(bar)
		return bar.Plus(drawing.Polar(way.Angle()-drawnRoll, way.Length()))
	}}
	square = Spot{"the square to the steering axis", func(b Build) Point {
		h, _ := b.Cockpit.Hold(b.Bike)
		return At(h.StemClamp).Along(At(b.Bike.AxisAhead()), 90)
	}}
)

// What a figure shows of small things so that they can be seen: the spacers above the
// stem, mm, the stem's angle and the bar's roll, degrees.
const drawnAbove, drawnStemAngle, drawnRoll, drawnCup = 10, 12, 20, 14

// headSide is the head tube with what stands on it, from the side.
var headSide = Scenery{Name: "Head tube, spacers, stem and bar from the side", Ruled: true, Fit: func(b Build) Build {
	b.Cockpit.Stem, b.Cockpit.StemAngle, b.Cockpit.Spacers = 60, drawnStemAngle, 20
	return b
}, Marks: func(b Build) []drawing.Mark {
	up := stemUpper.At(b)
	to := topCap.At(b)
	way := to.Minus(up).Unit()
	return append(HeadEnd(b),
		drawing.Tube{Role: drawing.Ink, Fill: drawing.Sheet, A: up, B: to, Ra: 17, Rb: 17},
		drawing.Tube{Role: drawing.Ink, Fill: drawing.Sheet, A: to, B: to.Along(way, 6), Ra: 17, Rb: 15})
}}

// lowered is the same with a lower cup below the head tube, which the stand-in bike has not.
var lowered = Scenery{Name: headSide.Name, Ruled: true, Fit: func(b Build) Build {
	b = headSide.Fit(b)
	crown := headFoot.At(b).Along(At(b.Bike.AxisDown()), drawnCup)
	b.Bike.Crown = geometry.Point{X: crown.X, Y: crown.Y}
	return b
}, Marks: func(b Build) []drawing.Mark {
	foot := headFoot.At(b)
	return append(headSide.Marks(b), drawing.Tube{Role: drawing.Ink, Fill: drawing.Wash, A: foot,
		B: foot.Along(At(b.Bike.AxisDown()), drawnCup), Ra: 27, Rb: 24})
}}

// onLever lays the phone along a brake lever, which turns with the bar.
func onLever(b Build) (middle, way Point) {
	root, tip := leverRoot.At(b).Plus(Point{X: 8}), leverTip.At(b)
	return root.Plus(tip).Times(0.5), tip.Minus(root)
}

// headPlates are what stands round the head tube.
func headPlates() []Plate {
	stem := part(measure.StemAngle, headSide, Tilt, steererMiddle, barMiddle, 120)
	stem.Spans[0].Against, stem.Steps = square, onStem
	lever := part(measure.LeverAngle, headSide, Tilt, leverRoot, leverTip, 90)
	lever.Phone = onLever
	roll := part(measure.BarRoll, headSide, Tilt, barMiddle, gripMiddle, 90)
	roll.Spans[0].Against, roll.Phone = rolled, onLever
	return []Plate{
		part(measure.HeadTubeLength, headSide, Straight, headFoot, headTop, 90),
		part(measure.LowerHeadset, lowered, Straight, headFoot, crownSeat, -90),
		part(measure.SteererLength, headSide, Straight, crownSeat, topCap, 110),
		part(measure.HeadsetPivot, headSide, Straight, headTop, headHalf, -90),
		part(measure.HeadsetHeight, headSide, Straight, headTop, cover, 80),
		part(measure.Spacers, headSide, Straight, cover, stemLower, 80),
		part(measure.SpacersAbove, headSide, Straight, stemUpper, topCap, 80),
		part(measure.StemClampHeight, headSide, Straight, stemLower, stemUpper, 80),
		part(measure.StemLength, headSide, Straight, steererMiddle, barMiddle, 75),
		stem,
		part(measure.BarRise, headSide, UprightWay, barMiddle, gripMiddle, -110),
		roll,
		lever,
	}
}

// barAbove is the bar from above, the wheel upwards, drawn by eye.
var barAbove = Scenery{Name: "A bar from above, the front wheel upwards, with grips, brake levers and their clamps",
	Marks: func(Build) (m []drawing.Mark) {
		for _, side := range [2]float64{-1, 1} {
			at := func(x, y float64) Point { return Point{X: side * x, Y: y} }
			tube := func(a, b Point, ra float64) drawing.Mark {
				return drawing.Tube{Role: drawing.Ink, Fill: drawing.Sheet, A: a, B: b, Ra: ra, Rb: ra}
			}
			m = append(m, tube(at(0, 0), at(95, 0), 15), tube(at(90, 0), at(250, -19), 12), tube(at(250, -19),
				at(380, -35), 17),
				drawing.Line{Role: drawing.Ink, Smooth: true, Points: []Point{at(212, 2), at(224, 34), at(270,
					46), at(330, 42), at(350, 34)}},
				tube(at(204, -14), at(220, -16), 19), tube(at(176, -10), at(190, -12), 17),
				drawing.Circle{Role: drawing.Ink, Pen: drawing.Thin, Fill: drawing.Sheet, Centre: at(224, 30),
					Radius: 7})
		}
		return append(m, drawing.Tube{Role: drawing.Ink, Fill: drawing.Sheet, A: Point{Y: -44}, B: Point{Y: 18},
			Ra: 22, Rb: 24},
			drawing.Circle{Role: drawing.Ink, Fill: drawing.Sheet, Centre: Point{Y: -44}, Radius: 22})
	}}

// betweenTrees is the bar between two trunks that are cut through at its height.
var betweenTrees = Scenery{Name: "A bar from above between two tree trunks, at the height of the bar",
	Marks: func(b Build) (m []drawing.Mark) {
		for _, side := range [2]float64{-1, 1} {
			m = append(m, drawing.Circle{Role: drawing.Ink, Fill: drawing.Hatch,
				Centre: Point{X: side * (drawnGap/2 + 130), Y: 120}, Radius: 130})
		}
		return append(m, barAbove.Marks(b)...)
	}}

// drawnGap is a gap that the drawn bar just fits, mm.
const drawnGap = 820

// halfBar is its one end alone.
var halfBar = Scenery{Name: "One half of a bar from above, the front wheel upwards, with grip, brake lever and clamps",
	Ruled: true, Marks: func(b Build) (m []drawing.Mark) {
		all := barAbove.Marks(b)
		return append(append(m, all[7:14]...), all[14:]...)
	}}

// leverAlone is the grip with its lever.
var leverAlone = Scenery{
	Name:  "A grip from above with the brake lever in front of it",
	Ruled: true,
	Marks: halfBar.Marks,
	Frame: func(Build) (low, high Point) { return Point{X: 165, Y: -90}, Point{X: 440, Y: 95} },
}

// barPlates are what is taken on the bar from above.
func barPlates() []Plate {
	middle := spot("the straightedge across the middles of both grips", 0, -27)
	clamp := spot("the middle of the bar’s clamp", 0, 0)
	end := spot("the bar’s end", 380, -35)
	inner := spot("the grip’s inner end", 250, -19)
	sweep := part(measure.BarSweep, barAbove, UprightWay, middle, clamp, -110)
	sweep.Steps = acrossGrips
	width := part(measure.BarWidth, barAbove, LevelWay, spot("one end of the bar", -380, -35), end, -80)
	width.On.Held = true
	width.Wrong = &Mistake{
		Right: "straight across",
		Wrong: "the tape follows the sweep",
		Tape: []Spot{
			spot("one end", -380, -35),
			spot("where it bends", -95, 2),
			clamp,
			spot("the other bend", 95, 2),
			end,
		},
	}
	reach := part(measure.LeverReach, leverAlone, UprightWay, spot("the front of the grip", 325, -12),
		spot("the blade’s outer face", 325, 45), -70)
	reach.Wrong = &Mistake{Right: "from the front of the grip", Wrong: "from its back, so that the grip is counted in",
		Tape: []Spot{spot("the back of the grip", 325, -46), spot("the blade’s outer face", 325, 45)}}
	gap := part(measure.TreeGap, betweenTrees, LevelWay, spot("one trunk’s bark", -drawnGap/2, 120),
		spot("the other’s, at the height of the bar", drawnGap/2, 120), 60)
	gap.On.Held = true
	return []Plate{
		width, gap,
		sweep,
		part(measure.BackSweep, halfBar, Tilt, spot("where the bar bends", 90, 0), end, 160),
		part(measure.BarStraight, halfBar, Straight, end, spot("where the bar bends", 95, 0), 70),
		part(measure.ControlsWidth, halfBar, Straight, inner, spot("the last clamp’s inner edge", 176, -10), 70),
		part(measure.GripLength, halfBar, Straight, inner, end, -70),
		part(measure.LeverInset, halfBar, Straight, inner, spot("the near edge of the lever’s clamp", 220, -16), 70),
		part(measure.LeverLength, halfBar, Straight, spot("the lever’s pivot", 224, 30),
			spot("where the finger rests", 330, 42), 60),
		reach,
	}
}

// cranks are both cranks from the front with a pedal and a shoe on it, drawn by eye:
// the widths are those of an ordinary bike.
var cranks = Scenery{Ruled: true, Name: "Both cranks from behind, one up and one down, with a pedal and the shoe on it",
	Marks: func(Build) []drawing.Mark {
		tube := func(ax, ay, bx, by, half float64) drawing.Mark {
			return drawing.Tube{Role: drawing.Ink, Fill: drawing.Sheet, A: Point{X: ax, Y: ay}, B: Point{X: bx,
				Y: by}, Ra: half, Rb: half}
		}
		return []drawing.Mark{
			tube(0, 20, 0, 215, 16), tube(-48, 0, 48, 0, 22), tube(-62, 0, 62, 0, 12),
			drawing.Limb{Role: drawing.Ink, Fill: drawing.Sheet, A: Point{X: -62}, B: Point{X: -78, Y: 170},
				Ra: 16, Rb: 10},
			drawing.Limb{Role: drawing.Ink, Fill: drawing.Sheet, A: Point{X: 62}, B: Point{X: 78, Y: -170},
				Ra: 16, Rb: 10},
			tube(88, -170, 196, -170, 6), tube(100, -170, 200, -170, 10),
			drawing.Tube{Role: drawing.Body, Fill: drawing.Hatch, A: Point{X: 148, Y: -84}, B: Point{X: 146, Y: -20},
				Ra: 25, Rb: 31},
			drawing.Line{Role: drawing.Body, Fill: drawing.Wash, Closed: true, Smooth: true, Points: []Point{
				{X: 108, Y: -141}, {X: 108, Y: -141}, {X: 188, Y: -141}, {X: 188, Y: -141}, {X: 184, Y: -112},
				{X: 176, Y: -84}, {X: 178, Y: -66}, {X: 166, Y: -72}, {X: 148, Y: -75}, {X: 130, Y: -72},
				{X: 118, Y: -66}, {X: 120, Y: -84}, {X: 112, Y: -112}}},
			drawing.Line{Role: drawing.Body, Pen: drawing.Thin, Smooth: true, Points: []Point{{X: 128, Y: -141},
				{X: 134, Y: -112}, {X: 148, Y: -98}, {X: 162, Y: -112}, {X: 168, Y: -141}}},
			drawing.Line{Role: drawing.Ink, Fill: drawing.Wash, Closed: true, Points: []Point{{X: 102, Y: -158},
				{X: 194, Y: -158}, {X: 196, Y: -141}, {X: 100, Y: -141}}},
			drawing.Axis{Role: drawing.Soft, A: Point{X: 148, Y: -50}, B: Point{X: 148, Y: -190}},
		}
	}}

// pedalAlone is the lower crank's end with its pedal.
var pedalAlone = Scenery{Ruled: true, Name: "A crank’s end with its pedal and the shoe on it, from behind",
	Marks: func(b Build) []drawing.Mark {
		return append(cranks.Marks(b)[5:], drawing.Tube{Role: drawing.Ink, Fill: drawing.Sheet,
			A: Point{X: 78, Y: -190}, B: Point{X: 78, Y: -80}, Ra: 10, Rb: 11},
			drawing.Tube{Role: drawing.Ink, Fill: drawing.Wash, A: Point{X: 88, Y: -170}, B: Point{X: 92,
				Y: -170}, Ra: 12, Rb: 12})
	}}

// pedalAlone's own thread, a pedal out of its crank.
var pedalOut = Scenery{Name: "A pedal out of its crank", Marks: func(Build) []drawing.Mark {
	m := []drawing.Mark{}
	tube := func(ax, bx, half float64) {
		m = append(m, drawing.Tube{Role: drawing.Ink, Fill: drawing.Sheet, A: Point{X: ax}, B: Point{X: bx},
			Ra: half, Rb: half})
	}
	tube(0, 16, 7)
	for x := 2.0; x < 16; x += 2 { // a right pedal's: its turns sink to the right
		m = append(m, drawing.Line{Role: drawing.Ink, Pen: drawing.Thin, Points: []Point{{X: x, Y: 7}, {X: x + 1,
			Y: -7}}})
	}
	tube(16, 19, 11)
	tube(19, 26, 8)
	tube(26, 110, 10)
	return m
}}

// footPlates are what lies between foot, shoe and spindle.
func footPlates() []Plate {
	face, bodyLow := spot("the face that the shoe stands on", 122, -160), spot("the pedal’s lower face", 192, -180)
	arm := spot("the crank’s outer face", 88, -170)
	q := part(measure.QFactor, cranks, LevelWay, spot("one crank’s outer face", -88, 170),
		spot("the other crank’s outer face", 88, -170), 0)
	q.Spans = append(q.Spans,
		Span{From: spot("one straightedge", -88, 190), To: spot("its end", -88, -40), Way: Straight, Beside: 0,
			Label: "straightedge"},
		Span{From: spot("the other straightedge", 88, 40), To: spot("its end", 88, -190), Way: Straight,
			Beside: 0, Label: ""})
	q.Spans = q.Spans[:2]
	return []Plate{
		q,
		part(measure.FootOffset, cranks, LevelWay, arm, spot("the middle of the shoe", 148, -158), -70),
		part(measure.PedalWidth, cranks, LevelWay, arm, spot("the pedal’s outermost edge", 200, -170), -70),
		part(measure.PedalThickness, pedalAlone, UprightWay, bodyLow, spot("its upper face", 192, -160), -60),
		part(measure.PedalHeight, pedalAlone, UprightWay, spot("the middle of the spindle", 122, -170), face, -120),
		part(measure.SoleHeight, pedalAlone, UprightWay, spot("the face on the pedal", 122, -160),
			spot("the skin", 122, -142), -120),
		part(measure.PedalSpacer, pedalAlone, LevelWay, spot("the crank", 88, -170), spot("the pedal’s shoulder",
			92, -170), -70),
		part(measure.PedalThread, pedalOut, LevelWay, spot("the thread’s end", 0, 0), spot("the shoulder", 16, 0), 30),
		part(measure.CleatBehindBall, plan, LevelWay, spot("the middle of the inner ball joint", 195, 41),
			spot("the pedal’s spindle", 181, 41), 70),
		part(measure.CleatShift, cleat, UprightWay, spot("the middle of the slots", 181, 0),
			spot("the middle of the cleat", 181, 6), -90),
		part(measure.HeelCup, shoeAbove, LevelWay, spot("the shoe’s outside", -12, 0),
			spot("the back of the cup inside", 0, 0), 110),
	}
}

// The foot of the plates from above, mm.
var drawnSole = Sole{Length: 266, Inner: 195}

// The shoe of the plates from below or above, with what lies on it.
var (
	plan = Scenery{
		Ruled: true,
		Name:  "A foot from above with the pedal’s spindle under it",
		Marks: func(Build) []drawing.Mark {
			return append(FootPlan(drawnSole), drawing.Axis{Role: drawing.Ink, A: Point{X: 181, Y: -70},
				B: Point{X: 181, Y: 90}})
		},
	}
	cleat = Scenery{
		Ruled: true,
		Name:  "A shoe with its cleat, the bike’s side upwards",
		Marks: func(Build) []drawing.Mark {
			slot := func(y float64) drawing.Mark {
				return drawing.Limb{Role: drawing.Soft, A: Point{X: 160, Y: y}, B: Point{X: 202, Y: y}, Ra: 3, Rb: 3}
			}
			return append([]drawing.Mark{outline(drawnSole.Length)}, slot(-8), slot(8), drawing.Axis{Role: drawing.Soft,
				A: Point{X: 140}, B: Point{X: 222}},
				drawing.Line{Role: drawing.Ink, Pen: drawing.Wide, Closed: true, Points: []Point{{X: 164, Y: -10},
					{X: 198, Y: -4}, {X: 198, Y: 16}, {X: 164, Y: 22}}},
				drawing.Axis{Role: drawing.Ink, A: Point{X: 150, Y: 6}, B: Point{X: 212, Y: 6}})
		},
	}
	shoeAbove = Scenery{Ruled: true, Name: "A shoe from above with the foot in it, its heel against a wall",
		Marks: func(Build) []drawing.Mark {
			outer := outline(292)
			outer.Role, outer.Fill = drawing.Ink, drawing.Sheet
			for i := range outer.Points {
				outer.Points[i] = outer.Points[i].Plus(Point{X: -12})
			}
			wall := drawing.Line{Role: drawing.Soft, Points: []Point{{X: -12, Y: -80}, {X: -12, Y: 80}}}
			return append([]drawing.Mark{wall, outer}, bareFoot(drawnSole.Length)...)
		}}
)

// onPost is a place along a post that stands upright, from the middle of the rail
// clamp down, and beside its centre line.
func onPost(name words.English, down, beside float64) Spot { return spot(name, beside, -down) }

// Places along the drawn post, mm below the rail clamp: a dropper of 150 mm.
const (
	postHead, postCollarTop, postTubeTop, postMark, postTubeEnd, postEnd = 28.0, 178.0, 214.0, 300.0, 424.0, 456.0
)

// postAlone is a dropper post out of the frame.
var postAlone = Scenery{Ruled: true, Name: "A dropper post, fully up, from the side",
	Frame: func(Build) (low, high Point) {
		return Point{X: -260, Y: -490}, Point{X: 260,
			Y: 50}
	}, Marks: func(Build) []drawing.Mark {
		tube := func(fill drawing.Fill, from, to, half float64) drawing.Mark {
			return drawing.Tube{Role: drawing.Ink, Fill: fill, A: Point{Y: -from}, B: Point{Y: -to}, Ra: half,
				Rb: half}
		}
		return []drawing.Mark{
			tube(drawing.Sheet, postTubeEnd, postEnd, 8), tube(drawing.Wash, postTubeTop, postTubeEnd, 15.8),
			tube(drawing.Sheet, postCollarTop, postTubeTop, 20), tube(drawing.Sheet, postHead, postCollarTop, 13),
			drawing.Limb{Role: drawing.Ink, Fill: drawing.Sheet, A: Point{Y: -postHead}, B: Point{X: -10}, Ra: 14,
				Rb: 16},
			drawing.Line{Role: drawing.Ink, Points: []Point{{X: -70}, {X: 60}}},
			drawing.Line{Role: drawing.Ink, Pen: drawing.Wide, Points: []Point{{X: -16, Y: -postMark}, {X: 16,
				Y: -postMark}}},
			drawing.Axis{Role: drawing.Soft, A: Point{}, B: Point{Y: -postEnd}},
		}
	}}

// postTop is its upper end.
var postTop = Scenery{Ruled: true, Name: "The upper end of a seat post from the side", Marks: postAlone.Marks,
	Frame: func(Build) (low, high Point) { return Point{X: -150, Y: -140}, Point{X: 150, Y: 70} }}

// inFrame is the seat tube cut open, the post out, with what stops a rod.
var inFrame = Scenery{Name: "The seat tube cut open, a rod in it down to the first obstacle",
	Frame: func(Build) (low, high Point) {
		return Point{X: -240, Y: -440}, Point{X: 240,
			Y: 80}
	}, Marks: func(Build) []drawing.Mark {
		wall := func(side float64) drawing.Mark {
			return drawing.Tube{Role: drawing.Ink, Fill: drawing.Hatch, A: Point{X: side * 19},
				B: Point{X: side * 19, Y: -420}, Ra: 2.5, Rb: 2.5}
		}
		marks := []drawing.Mark{wall(-1), wall(1),
			drawing.Circle{Role: drawing.Ink, Fill: drawing.Wash, Centre: Point{X: 13, Y: -290}, Radius: 8},
			drawing.Tube{Role: drawing.Ink, Fill: drawing.Sheet, A: Point{X: 4, Y: 60}, B: Point{X: 4, Y: -280},
				Ra: 3, Rb: 3}}
		return append(marks, Grasp{At: Point{X: 3, Y: 4}, Way: 205, Role: drawing.Body, Over: true}.Pinch()...)
	}}

// saddleSide is the saddle on its post from the side.
var saddleSide = Scenery{Ruled: true, Name: "A saddle on its rails from the side", Marks: saddle,
	Fit: func(b Build) Build { b.Back = 0; return b },
	Frame: func(b Build) (low, high Point) {
		return b.SaddleTop().Plus(Point{X: -210, Y: -150}), b.SaddleTop().Plus(Point{X: 210, Y: 70})
	}}

// onSaddle is a place of the saddle: ahead of and above its point.
func onSaddle(name words.English, x, y float64) Spot {
	return Spot{name, func(b Build) Point { return b.SaddleTop().Plus(Point{X: x, Y: y}) }}
}

// saddlePlates are what is taken on saddle and post.
func saddlePlates() []Plate {
	const stack = 48
	clampMiddle := onPost("the middle of the rail clamp", 0, 0)
	whole := part(measure.PostLength, postAlone, UprightWay, clampMiddle, onPost("its lowest point", postEnd, 0), 110)
	whole.Spans = append(whole.Spans,
		Span{From: onPost("the mark", postMark, 0), To: onPost("the tube’s end", postTubeEnd, 0), Way: UprightWay,
			Beside: 60, Label: measure.InsertionPost.Label},
		Span{From: onPost("the tube’s end", postTubeEnd, 0), To: onPost("the lowest point", postEnd, 0),
			Way: UprightWay, Beside: -60, Label: measure.PostActuator.Label})
	above := part(measure.PostHead, postAlone, UprightWay, clampMiddle, onPost("the moving tube’s top", postHead,
		0), -90)
	above.Spans = append(above.Spans,
		Span{From: onPost("the moving tube’s top", postHead, 0), To: onPost("the collar’s rim", postCollarTop, 0),
			Way: UprightWay, Beside: 90, Label: measure.TravelPost.Label},
		Span{From: onPost("the collar’s rim", postCollarTop, 0), To: onPost("the frame’s edge", postTubeTop, 0),
			Way: UprightWay, Beside: -70, Label: measure.PostCollar.Label})
	tilt := part(measure.SaddleTilt, saddleSide, Tilt, onSaddle("the saddle’s rear", -112, 14),
		onSaddle("the tip of the nose", 155, 0), 240)
	tilt.Board, tilt.Phone = 300, func(b Build) (middle, way Point) {
		rear, nose := tilt.Spans[0].From.At(b), tilt.Spans[0].To.At(b)
		return rear.Plus(nose).Times(0.5).Plus(Point{Y: 6}), nose.Minus(rear)
	}
	tilt.On.Ruled, tilt.On.Frame = false, func(b Build) (low, high Point) {
		return b.SaddleTop().Plus(Point{X: -210, Y: -110}), b.SaddleTop().Plus(Point{X: 210, Y: 190})
	}
	return []Plate{
		part(measure.SaddleNose, saddleSide, LevelWay, onSaddle("the tip of the nose", 155, -9),
			onSaddle("the middle of the rails’ marked zone", -5, -stack), -70),
		part(measure.SaddleStack, saddleSide, UprightWay, onSaddle("the middle of the rail", -5, -stack),
			onSaddle("the saddle’s top", -5, 0), 160),
		tilt,
		part(measure.RailShift, saddleSide, LevelWay, onSaddle("the middle of the marked zone", -5, -stack),
			onSaddle("the middle of the clamp", 14, -stack), -60),
		part(measure.PostOffset, postTop, LevelWay, onPost("the post’s centre line", 0, 0),
			onPost("the middle of the rail clamp", 0, -10), 80),
		part(measure.FreeDepth, inFrame, UprightWay, spot("the tube’s top edge", 19, 0),
			spot("the first obstacle", 13, -282), 60),
		whole, above,
	}
}

// Plates returns every plate, in the order of the bike: whole bike, tyre, head, bar, feet, rear end,
// saddle and post.
func Plates() []Plate {
	var all []Plate
	for _, list := range [][]Plate{bikePlates(), raisedPlates(), {tyrePlate()},
		headPlates(), barPlates(), footPlates(),
		abovePlates(),
		saddlePlates()} {
		all = append(all, list...)
	}
	return all
}
