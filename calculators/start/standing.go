package start

import (
	"math"

	"plumbline/calculators"
	"plumbline/calculators/drawing"
	"plumbline/calculators/figure"
	"plumbline/calculators/fit"
	"plumbline/calculators/geometry"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// Figures are the standing figures of measuring, in the order of the pages: each draws
// somebody of the reader's size, or a bike of the reader's chart, the landmarks, the tape and
// where to read.
func Figures() []*calculators.Illustration {
	list := []*calculators.Illustration{
		person("measure-stature", stature), person("measure-inseam", inseam), person("measure-trochanter-height",
			trochanter),
		person("measure-arm-span", armSpan), person("measure-shoulder-width", shoulderWidth),
		person("measure-foot-length", footLength), person("measure-heel-to-ball", heelToBall),
		person("measure-trunk-length", trunkLength), person("measure-arm-length", armLength),
		person("measure-hand-length", handLength),
		person("measure-sit-bones", sitBones), person("measure-push-up-width", pushUpWidth),
		leg(measure.KneeHeight), leg(measure.ThighLength), leg(measure.ShankLength),
		person("measure-hip-width", hipWidth), person("measure-leg-difference", legDifference),
		person("measure-lunge-left", lungeStanding), person("measure-knee-short-left", kneeShort),
		person("measure-hip-bend", hipBend), person("measure-sit-and-reach", sitAndReach),
		{Name: "measure-bike", Draw: measureBike}, PostInTheFrame(), onStandIn("bike-on-the-scale", figure.Weighed),
		onStandIn("measure-bike-mass", figure.HeldOnScale), {Name: "grade-of-a-trail", Draw: grade},
	}
	for _, p := range figure.Plates() {
		list = append(list, &calculators.Illustration{Name: p.Of.How.Figure, Inputs: plateInputs(),
			Draw: func(v calculators.Values) *drawing.Figure { return p.Draw(plateBike(v)) }})
	}
	return list
}

// Stills are the section's pictures that no number of a reader changes; see
// catalog.Pictures.
func Stills() []*calculators.Illustration {
	return []*calculators.Illustration{BoltsInACross(), TwistTest(), LeverStop(),
		onStandIn("bar-rolled", figure.BarRolled)}
}

// leg makes a standing figure of a length of the leg.
func leg(q *measure.Quantity) *calculators.Illustration {
	return person(q.How.Figure, func(p figure.Person, f *drawing.Figure) { legLength(q, p, f) })
}

// person makes a standing figure of a person's measurement.
func person(name string, draw func(p figure.Person, f *drawing.Figure)) *calculators.Illustration {
	return &calculators.Illustration{Name: name,
		Inputs: []calculators.Input{{Quantity: measure.Stature, Optional: true}, {Quantity: measure.Inseam,
			Optional: true}, fit.SexInput("")},
		Draw: func(v calculators.Values) *drawing.Figure {
			f := &drawing.Figure{}
			draw(personOf(v), f)
			return f
		}}
}

// figureOf returns the figure of how a length is taken, drawn for the reader.
func figureOf(q *measure.Quantity, v calculators.Values) *drawing.Figure {
	for _, f := range Figures() {
		if f.Name == q.How.Figure {
			return f.Draw(v)
		}
	}
	return nil
}

// legLength draws a length of the leg that has no figure of its own.
func legLength(q *measure.Quantity, p figure.Person, f *drawing.Figure) {
	s := p.SidePose()
	floor := at(s.Knee.X, 0)
	f.Title = words.Of("{0}, seen from the side", words.Of(q.Label))
	f.Description = words.Of("The legs of somebody {0} tall from the side: the hip’s bony knob {1} above the floor, "+
		"the knee {2}.",
		measure.Stature.Amount(p.Stature), measure.TrochanterHeight.Amount(p.Hip), measure.KneeHeight.Amount(p.Knee))
	f.Add(figure.Floor(-420, 520))
	f.Add(p.Side()...)
	from, to := floor, s.Knee
	switch q {
	case measure.ThighLength:
		from, to = s.Knee, s.Hip
	case measure.ShankLength:
		from, to = s.Ankle, s.Knee
	case measure.KneeHeight:
	default:
		from = to
	}
	if from != to {
		f.Add(figure.Tape(from, to)...)
		f.Add(helping(to.Plus(at(8, 0)), 205, true)...)
		if from.Y > 1 {
			f.Add(helping(from.Plus(at(8, 0)), 155, true)...)
		}
		f.Add(figure.Landmark(from, 26), figure.Landmark(to, 26))
		ends := [2]legEnd{endOf(s, from), endOf(s, to)}
		drawn := f.Marks
		for _, end := range ends {
			f.Details = append(
				f.Details,
				drawing.Detail{At: end.at, Radius: 115, Caption: words.Of(end.name), Of: drawn},
			)
		}
		f.Add(drawing.Dimension{Role: drawing.Hot, A: from, B: to, Offset: -280, Text: words.Of("{0}",
			q.Amount(to.Minus(from).Length()))})
	}
	frame(f, -560, -80, 620, p.Hip+180)
}

// legEnd is a bony point, or the floor, with its name.
type legEnd struct {
	at   drawing.Point
	name words.English
}

// endOf names an end of a length of the leg.
func endOf(s figure.Pose, at drawing.Point) legEnd {
	switch at {
	case s.Hip:
		return legEnd{at, "the knob of the hip"}
	case s.Knee:
		return legEnd{at, "the bump outside the knee"}
	case s.Ankle:
		return legEnd{at, "the outer ankle knob"}
	}
	return legEnd{at, "the floor"}
}

// helping is a helper's hand whose fingertips are at a place and point a way, degrees: a
// forefinger that feels for a point, or finger and thumb that hold a tape.
func helping(p drawing.Point, way float64, feels bool) []drawing.Mark {
	g := figure.Grasp{At: p, Way: way, Role: drawing.Before}
	g.Over = way > 90 && way < 270
	if feels {
		return g.Point()
	}
	return g.Pinch()
}

// bothWays sets a right way beside a wrong one in one frame each.
func bothWays(f *drawing.Figure, low, high drawing.Point, right, wrong []drawing.Mark, well, ill words.English) {
	f.Least = 18
	f.Frames = []drawing.Frame{
		{Caption: words.Of("Right: {0}", words.Of(well)), Low: low, High: high, Marks: right},
		{Caption: words.Of("Wrong: {0}", words.Of(ill)), Low: low, High: high, Marks: wrong},
	}
}

// tapeAlong is a tape that bends from place to place.
func tapeAlong(places ...drawing.Point) (marks []drawing.Mark) {
	for i := range len(places) - 1 {
		marks = append(marks, figure.Tape(places[i], places[i+1])...)
	}
	return marks
}

// The scenario's test rider, whom a figure shows where nobody gave a size, mm: what the worked examples
// type. The rest follows from height and inside leg.
const drawnStature, drawnInseam, drawnHand, drawnFoot = 1740, 830, 188, 262

// personOf returns somebody of the reader's size, or else the test rider.
func personOf(v calculators.Values) figure.Person {
	of := func(q *measure.Quantity, otherwise float64) float64 {
		if v.Has(q) {
			return v.Of(q)
		}
		return otherwise
	}
	inside := of(measure.Inseam, 0)
	stature := of(measure.Stature, 0)
	if stature == 0 && inside == 0 {
		p := figure.PersonOf(drawnStature, drawnInseam, fit.Sex(v))
		p.Ball *= drawnFoot / p.Foot
		p.Hand, p.Foot = drawnHand, drawnFoot
		return p
	}
	return figure.PersonOf(stature, inside, fit.Sex(v))
}

// frame sets the drawing's corners, mm.
func frame(f *drawing.Figure, lowX, lowY, highX, highY float64) {
	f.Low, f.High = drawing.Point{X: lowX, Y: lowY}, drawing.Point{X: highX, Y: highY}
}

// at is a point of the drawing.
func at(x, y float64) drawing.Point { return drawing.Point{X: x, Y: y} }

// note puts a word beside a place, on its side.
func note(p drawing.Point, side drawing.Point, english words.English, holes ...words.Sayer) drawing.Mark {
	return drawing.Label{Role: drawing.Ink, At: p, Side: side, Leader: true, Text: words.Of(english, holes...)}
}

// upright dimensions a height above the floor at a place beside the body.
func upright(x, fromX, height float64, text words.Text) drawing.Mark {
	return drawing.Dimension{Role: drawing.Hot, A: at(fromX, 0), B: at(fromX, height), Along: at(0, 1),
		Offset: fromX - x, Text: text}
}

func stature(p figure.Person, f *drawing.Figure) {
	h := p.Stature
	f.Title = words.Of("Height: floor to the book on your head")
	f.Description = words.Of("Somebody {0} tall stands barefoot with heels, seat and shoulders against a wall and "+
		"looks level. A helper holds a book flat on the head, square to the wall; the tape runs from the floor to "+
		"the book’s lower edge. Wrong: the book is tilted.", measure.Stature.Amount(h))
	wall := -p.Foot * 0.62
	scene := func(lift float64) []drawing.Mark {
		marks := append([]drawing.Mark{figure.Floor(wall, 620)}, figure.Wall(wall, h+110)...)
		marks = append(marks, p.Side()...)
		marks = append(marks, figure.Book(at(wall, h+lift), at(wall+250, h)))
		marks = append(marks, helping(at(wall+256, h+12), 195, false)...)
		return append(marks, figure.Tape(at(wall+10, 0), at(wall+10, h+lift))...)
	}
	right := append(scene(0), upright(420, wall+250, h, words.Of("{0}", measure.Stature.Amount(h))),
		note(at(wall+60, h), at(-1, 0.9), "Read at the lower edge"),
		drawing.Line{Role: drawing.Soft, Pen: drawing.Hidden, Points: []drawing.Point{at(110, h-0.075*h), at(330,
			h-0.075*h)}},
		note(at(320, h-0.075*h), at(0.4, -1), "Gaze level"))
	wrong := append(scene(74), note(at(wall+6, h+74), at(-0.4, 1), "Too high"))
	bothWays(f, at(wall-230, -90), at(560, h+170), right, wrong, "the book is level", "the book is tilted")
}

// The book of the picture between the legs, mm: how long its spine is and how high it
// stands, and by how many degrees the wrong one is tilted.
const bookLong, bookHigh, bookTilt = 230.0, 165.0, 16.0

func inseam(p figure.Person, f *drawing.Figure) {
	h := p.Inseam
	f.Title = words.Of("Inside leg: floor to the book between your legs")
	f.Description = words.Of("Somebody {0} tall from the side, barefoot, the back to a wall, the feet 15 to 20 cm "+
		"apart. A book stands between the legs, spine uppermost and one edge against the wall, pulled up firmly and "+
		"level; the tape runs up the wall from the floor to the book’s upper edge, {1} up. Wrong: the book is "+
		"tilted, so its edge at the wall is too high, and the tape reads that edge.",
		measure.Stature.Amount(p.Stature), measure.Inseam.Amount(h))
	wall := -p.Foot * 0.62
	scene := func(tilt float64) []drawing.Mark {
		marks := append([]drawing.Mark{figure.Floor(wall, 520)}, figure.Wall(wall, p.Hip+290)...)
		marks = append(marks, p.Side()...)
		// It turns about where it meets the body, and its lower corner stays at the wall.
		sine := math.Sin(tilt * math.Pi / 180)
		along, end := drawing.Polar(-tilt, 1), at(wall+bookHigh*sine, h+bookLong*0.7*sine)
		corner := func(x, y float64) drawing.Point { return end.Along(along, x).Along(along.Left(), y) }
		marks = append(marks,
			drawing.Line{Role: drawing.Ink, Fill: drawing.Sheet, Closed: true, Points: []drawing.Point{corner(0, 0),
				corner(bookLong, 0), corner(bookLong, -bookHigh), corner(0, -bookHigh)}},
			drawing.Line{Role: drawing.Ink, Fill: drawing.Wash, Closed: true, Points: []drawing.Point{corner(0, 0),
				corner(bookLong, 0), corner(bookLong, -20), corner(0, -20)}})
		g := figure.Grasp{At: corner(bookLong+6, -bookHigh/2), Way: 182, Over: true, Role: drawing.Body}
		marks = append(marks, g.Pinch()...)
		return append(marks, figure.Tape(at(wall+9, 0), at(wall+9, end.Y))...)
	}
	right := append(scene(0), upright(360, wall+bookLong, h, words.Of("{0}", measure.Inseam.Amount(h))),
		note(at(wall+14, h), at(-1, 0.8), "Read at the upper edge"),
		note(at(wall+bookLong-10, h-8), at(1, 1.1), "Book, pulled up firmly and level"))
	high := at(wall, h+bookLong*0.7*math.Sin(bookTilt*math.Pi/180))
	wrong := append(scene(bookTilt), note(high, at(-1, 0.8), "This end is too high"),
		drawing.Line{Role: drawing.Hot, Pen: drawing.Thin, Points: []drawing.Point{at(wall, h), at(wall+330, h)}})
	bothWays(f, at(wall-230, -90), at(560, p.Hip+250), right, wrong, "the book is level", "the book is tilted")
	f.Least = 22
}

func trochanter(p figure.Person, f *drawing.Figure) {
	k := p.HipKnob()
	f.Title = words.Of("Hip-bone height: floor to the knob at the side of the hip")
	f.Description = words.Of("Somebody {0} tall from the side. The greater trochanter, the bony knob that moves when "+
		"the leg swings, stands {1} above the floor; the tape runs straight down from its upper edge. Wrong: the tape "+
		"leans forward to the toes.",
		measure.Stature.Amount(p.Stature), measure.TrochanterHeight.Amount(k.Y))
	f.Add(figure.Floor(-420, 620))
	f.Add(p.Side()...)
	f.Add(figure.Tape(at(k.X, 0), at(k.X, k.Y))...)
	f.Add(helping(k.Plus(at(6, 4)), 200, true)...)
	f.Add(helping(at(k.X+6, 12), 196, false)...)
	f.Add(figure.Landmark(k, 26), upright(330, k.X, k.Y, words.Of("{0}", measure.TrochanterHeight.Amount(k.Y))),
		note(k, at(1, 0.8), "The knob that rolls under your fingers"),
		note(at(k.X, 0), at(-1, 0.5), "Tape plumb to the floor"))
	wrong := append([]drawing.Mark{figure.Floor(-420, 620)}, p.Side()...)
	wrong = append(wrong, tapeAlong(at(k.X+0.8*p.Foot, 0), k)...)
	wrong = append(wrong, figure.Landmark(k, 26), figure.Landmark(at(k.X+0.8*p.Foot, 0), 26))
	bothWays(f, at(-560, -80), at(660, p.Shoulder-60), f.Marks, wrong, "the tape hangs plumb", "the tape leans")
}

func armSpan(p figure.Person, f *drawing.Figure) {
	tip := p.Fingertip()
	f.Title = words.Of("Arm span: fingertip to fingertip")
	f.Description = words.Of("Somebody {0} tall from the front with both arms stretched out level, palms forward. "+
		"Between the tips of the middle fingers lie {1}.", measure.Stature.Amount(p.Stature),
		measure.ArmSpan.Amount(p.Span))
	f.Add(p.Front(figure.ArmsOut)...)
	f.Add(drawing.Line{Role: drawing.Soft, Points: []drawing.Point{at(-tip.X, tip.Y-230), at(-tip.X, tip.Y+200)}})
	f.Add(
		drawing.Limb{
			Role: drawing.Ink,
			Fill: drawing.Sheet,
			A:    tip.Plus(at(4, 2)),
			B:    tip.Plus(at(120, 60)),
			Ra:   3,
			Rb:   7,
		},
	)
	f.Add(helping(tip.Plus(at(62, 34)), 215, false)...)
	f.Add(figure.Landmark(at(-tip.X, tip.Y), 26), figure.Landmark(tip, 26),
		drawing.Dimension{Role: drawing.Hot, A: at(-tip.X, tip.Y), B: tip, Along: at(1, 0), Offset: -190,
			Text: words.Of("{0}", measure.ArmSpan.Amount(p.Span))},
		note(at(-tip.X, tip.Y), at(-0.2, 1), "Against a corner"), note(tip, at(0.2, 1), "Helper marks here"))
	frame(f, -tip.X-60, p.Inseam+60, tip.X+240, p.Stature+60)
}

func shoulderWidth(p figure.Person, f *drawing.Figure) {
	a, b := at(-p.ShoulderPoint().X, p.Shoulder), p.ShoulderPoint()
	f.Title = words.Of("Between the shoulder points")
	f.Description = words.Of("The upper body of somebody {0} tall, arms hanging. The tape runs straight across from "+
		"the outermost bony point on top of one shoulder to the other, {1}. A helper holds it. Wrong: the tape "+
		"follows the muscles.",
		measure.Stature.Amount(p.Stature), measure.ShoulderWidth.Amount(p.ShoulderWidth))
	p.Back = true
	right := append(p.Front(figure.ArmsDown), figure.Tape(a, b)...)
	right = append(append(right, helping(a.Plus(at(-6, 4)), -25, false)...), helping(b.Plus(at(6, 4)), 205, false)...)
	right = append(right, figure.Landmark(a, 26), figure.Landmark(b, 26),
		drawing.Dimension{Role: drawing.Hot, A: a, B: b, Along: at(1, 0), Offset: p.Stature - p.Shoulder + 60,
			Text: words.Of("{0}", measure.ShoulderWidth.Amount(p.ShoulderWidth))},
		note(b, at(1, -0.8), "Bony point"))
	wrong := append(p.Front(figure.ArmsDown), tapeAlong(a.Plus(at(-34, -52)), a.Plus(at(-8, 8)), a.Plus(at(60, 44)),
		at(0, p.Shoulder+58), b.Plus(at(-60, 44)), b.Plus(at(8, 8)), b.Plus(at(34, -52)))...)
	bothWays(f, at(-400, p.Shoulder-330), at(400, p.Stature+140), right, wrong, "straight across your back",
		"over the curve of the muscles")
	f.Least = 22
}

func trunkLength(p figure.Person, f *drawing.Figure) {
	hip, shoulder := p.HipKnob(), p.ShoulderTop()
	length := shoulder.Minus(hip).Length()
	f.Title = words.Of("Hip to shoulder, in a straight line")
	f.Description = words.Of("The trunk of somebody {0} tall from the side. The tape runs straight from the bony "+
		"knob of the hip to the bony point on top of the shoulder, {1}. A helper holds both ends. Wrong: the tape "+
		"follows the ribs.", measure.Stature.Amount(p.Stature),
		measure.TrunkLength.Amount(length))
	right := append(p.Side(), figure.Tape(hip, shoulder)...)
	right = append(right, helping(shoulder.Plus(at(6, 6)), 215, false)...)
	right = append(right, helping(hip.Plus(at(6, -6)), 150, false)...)
	right = append(right, figure.Landmark(hip, 26), figure.Landmark(shoulder, 26),
		drawing.Dimension{Role: drawing.Hot, A: hip, B: shoulder, Offset: 260, Text: words.Of("{0}",
			measure.TrunkLength.Amount(length))},
		note(shoulder, at(-1, 0.9), "Top of the shoulder"), note(hip, at(-1, -0.6), "Hip knob"))
	up := shoulder.Minus(hip)
	wrong := append(p.Side(), tapeAlong(hip, hip.Along(up, 0.22).Plus(at(62, 0)), hip.Along(up, 0.5).Plus(at(92, 0)),
		hip.Along(up, 0.8).Plus(at(76, 0)), shoulder)...)
	wrong = append(wrong, figure.Landmark(hip, 26), figure.Landmark(shoulder, 26))
	bothWays(f, at(-300, p.Hip-240), at(330, p.Stature+40), right, wrong, "straight", "the tape follows the ribs")
}

func armLength(p figure.Person, f *drawing.Figure) {
	top, grip := p.ShoulderTop(), p.GripCentre()
	length := grip.Minus(top).Length()
	f.Title = words.Of("Shoulder to grip")
	f.Description = words.Of("Somebody {0} tall from the side, one arm hanging straight with a pencil in the fist. "+
		"From the bony point on top of the shoulder to the pencil it is {1}. Wrong: the elbow is bent.",
		measure.Stature.Amount(p.Stature), measure.ArmLength.Amount(length))
	scene := func(p figure.Person) []drawing.Mark {
		end := p.GripCentre()
		marks := append(p.Side(), figure.Tape(top, end)...)
		marks = append(marks, helping(top.Plus(at(6, 8)), 215, false)...)
		return append(marks, drawing.Circle{Role: drawing.Ink, Fill: drawing.Sheet, Centre: end, Radius: 8},
			figure.Landmark(top, 26), figure.Landmark(end, 26))
	}
	right := append(scene(p),
		drawing.Dimension{Role: drawing.Hot, A: grip, B: top, Offset: 250, Text: words.Of("{0}",
			measure.ArmLength.Amount(length))},
		note(top, at(-1, 0.9), "Top of the shoulder"), note(grip, at(-1, -0.9), "Pencil in the fist"))
	bent := p
	bent.ElbowBend = 38
	wrong := append(scene(bent), note(bent.SidePose().Elbow, at(-1, 0.2), "Elbow bent"))
	bothWays(f, at(-300, grip.Y-180), at(330, p.Stature+40), right, wrong, "the arm hangs straight",
		"the elbow is bent, so it comes out too short")
}

func handLength(p figure.Person, f *drawing.Figure) {
	f.Title = words.Of("Hand: crease of the wrist to the middle fingertip")
	f.Description = words.Of("A hand flat on a table, palm up. From the crease of the wrist nearest the palm to the "+
		"tip of the middle finger it is {0}.", measure.HandLength.Amount(p.Hand))
	f.Add(figure.Hand(p.Hand)...)
	f.Add(figure.Ruler(at(0, -0.26*p.Hand), at(p.Hand, -0.26*p.Hand), -1)...)
	f.Add(drawing.Dimension{Role: drawing.Hot, A: at(0, 0), B: at(p.Hand, 0.07*p.Hand), Along: at(1, 0),
		Offset: -0.48 * p.Hand, Text: words.Of("{0}", measure.HandLength.Amount(p.Hand))},
		note(at(0, 0.1*p.Hand), at(-0.6, 1), "Crease nearest the palm"))
	frame(f, -0.42*p.Hand, -0.62*p.Hand, 1.2*p.Hand, 0.62*p.Hand)
}

// sole returns the person's foot seen from above.
func sole(p figure.Person) figure.Sole { return figure.Sole{Length: p.Foot, Inner: p.Ball} }

// heelWall returns the wall that a heel touches, seen from above.
func heelWall(p figure.Person) []drawing.Mark {
	m := []drawing.Mark{drawing.Line{Role: drawing.Soft, Points: []drawing.Point{at(0, -0.34*p.Foot), at(0,
		0.34*p.Foot)}}}
	for y := -0.32; y < 0.34; y += 0.06 {
		m = append(m, drawing.Line{Role: drawing.Soft, Pen: drawing.Thin, Points: []drawing.Point{at(0, y*p.Foot),
			at(-0.04*p.Foot, (y-0.04)*p.Foot)}})
	}
	return append(m, drawing.Line{Role: drawing.Ink, Pen: drawing.Thin, Closed: true, Points: []drawing.Point{
		at(0, -0.30*p.Foot), at(1.14*p.Foot, -0.30*p.Foot), at(1.14*p.Foot, 0.30*p.Foot), at(0, 0.30*p.Foot)}})
}

func footLength(p figure.Person, f *drawing.Figure) {
	f.Title = words.Of("Foot: wall to the longest toe")
	f.Description = words.Of("A foot from above on a sheet of paper, weight on it, the heel against a wall. From the "+
		"wall to the tip of the longest toe it is {0}. Wrong: the heel stands off the wall.",
		measure.FootLength.Amount(p.Foot))
	f.Add(heelWall(p)...)
	f.Add(figure.FootPlan(sole(p))...)
	f.Add(drawing.Dimension{Role: drawing.Hot, A: at(0, 0), B: at(p.Foot, 0.09*p.Foot), Along: at(1, 0),
		Offset: -0.42 * p.Foot, Text: words.Of("{0}", measure.FootLength.Amount(p.Foot))},
		note(at(p.Foot, 0.09*p.Foot), at(0.4, 1), "Longest toe"), note(at(0, -0.22*p.Foot), at(-1, 0.3), "Wall"))
	const off = 18 // mm from the wall
	wrong := append(heelWall(p), figure.Turned(0, at(off, 0), figure.FootPlan(sole(p))...)...)
	wrong = append(wrong, figure.Level(drawing.Hot, at(0, 0), at(off, 0), -0.34*p.Foot, words.Text{}))
	bothWays(f, at(-0.34*p.Foot, -0.58*p.Foot), at(1.24*p.Foot, 0.46*p.Foot), f.Marks, wrong,
		"the heel touches the wall", "the heel stands off the wall")
}

func heelToBall(p figure.Person, f *drawing.Figure) {
	s := sole(p)
	f.Title = words.Of("Heel to the inner ball of the foot")
	f.Description = words.Of("A foot from above on a sheet of paper, the heel against a wall. From the wall to the "+
		"middle of the joint at the root of the great toe it is {0}, measured along the foot.",
		measure.HeelToBallInner.Amount(s.Inner))
	j := s.InnerJoint()
	f.Add(heelWall(p)...)
	f.Add(figure.FootPlan(s)...)
	f.Add(figure.Grasp{At: j.Plus(at(2, 4)), Way: -68, Role: drawing.Body}.Point()...)
	f.Add(figure.Landmark(j, 9),
		drawing.Dimension{Role: drawing.Hot, A: at(0, 0), B: j, Along: at(1, 0), Offset: 0.42 * p.Foot,
			Text: words.Of("{0}", measure.HeelToBallInner.Amount(s.Inner))},
		note(j, at(1, 0.4), "Inner ball"), note(at(0, -0.22*p.Foot), at(-1, -0.3), "Wall"))
	frame(f, -0.34*p.Foot, -0.46*p.Foot, 1.36*p.Foot, 0.86*p.Foot)
}

// drawnSitBones and drawnDent are the test rider's sit bones, mm: height says nothing of them.
const drawnSitBones, drawnDent = 112, 35

func sitBones(_ figure.Person, f *drawing.Figure) {
	const apart, dent = drawnSitBones, drawnDent
	f.Title = words.Of("Sit bones: the two dents in the card")
	f.Description = words.Of("A piece of corrugated card from above with two dents. Their centres lie {0} apart and "+
		"their outer edges {1}; say which of the two you measured. The picture’s numbers are an example.",
		measure.Millimetres(apart), measure.Millimetres(apart+dent))
	f.Add(figure.Card(apart, dent)...)
	f.Add(drawing.Dimension{Role: drawing.Hot, A: at(-apart/2, 0), B: at(apart/2, 0), Along: at(1, 0), Offset: 70,
		Text: words.Of("Centres {0}", measure.Millimetres(apart))},
		drawing.Dimension{Role: drawing.Hot, A: at(-(apart+dent)/2, 0), B: at((apart+dent)/2, 0), Along: at(1, 0),
			Offset: -70, Text: words.Of("Outer edges {0}", measure.Millimetres(apart+dent))})
	frame(f, -240, -172, 240, 172)
}

// drawnPressUp is how wide the hands of the picture stand, by the shoulders' breadth: the
// width of the worked example of the bar, so that one page names one number.
const drawnPressUp = 1.527

func pushUpWidth(p figure.Person, f *drawing.Figure) {
	width := p.Outer * drawnPressUp
	f.Title = words.Of("Press-up hand width: outer edge to outer edge of the hands")
	f.Description = words.Of("Somebody {0} tall in a press-up, from the front, hands flat where they feel strongest. "+
		"Between the hands’ outer edges lie {1} here; yours is a habit that no height tells.",
		measure.Stature.Amount(p.Stature), measure.PushUpWidth.Amount(width))
	f.Add(figure.Floor(-width/2-180, width/2+180))
	f.Add(p.PressUp(width)...)
	f.Add(drawing.Dimension{Role: drawing.Hot, A: at(-width/2, 10), B: at(width/2, 10), Along: at(1, 0), Offset: -100,
		Text: words.Of("{0}", measure.PushUpWidth.Amount(width))},
		note(at(-width/2, 12), at(-1, 0.8), "Mark here"), note(at(width/2, 12), at(1, 0.8), "and here"))
	frame(f, -width/2-200, -170, width/2+200, 0.47*p.Stature)
}

// measureBike draws where the tape goes on a bike.
func measureBike(calculators.Values) *drawing.Figure {
	d := figure.Demo(830, 705)
	d.CrankAngle = 90
	b := d.Bike
	f := &drawing.Figure{Title: words.Of("Where the tape goes on a bike"),
		Description: words.Of("A bike from the side on a level floor, front wheel straight, nobody on it. Heights "+
			"go straight up from the floor; reach and wheelbase are taken between plumb marks on the floor. The "+
			"bike of the picture has a reach of {0}, a stack of {1} and its crank axle {2} up.",
			measure.Reach.Amount(b.Reach()), measure.Stack.Amount(b.Stack()), measure.BBHeight.Amount(b.BBHeight()))}
	f.Least = 24
	scene := func(marks ...drawing.Mark) []drawing.Mark {
		return append(append(figure.Scene(d, nil), figure.AxleCrosses(d)...), marks...)
	}
	f.Frame(words.Of("Lengths of the frame"), scene(
		figure.Reach(d, drawing.Hot, words.Of("Reach")),
		figure.Stack(d, drawing.Hot, words.Of("Stack")),
		figure.BBHeight(d, drawing.Hot, words.Of("of the bottom bracket\x04Height")),
		drawing.Dimension{Role: drawing.Hot, A: figure.At(b.Rear), B: at(0, 0), Offset: -90,
			Text: words.Of("Chainstay")},
		figure.Wheelbase(d, drawing.Hot, 0, words.Of("Wheelbase")))...)
	f.Frame(words.Of("Saddle and head angle"), scene(figure.SteeringAxis(d), figure.SeatLine(d),
		figure.HeadAngle(d, drawing.Hot, words.Of("Head angle")),
		figure.Setback(d, drawing.Hot, words.Of("Setback")),
		figure.SaddleHeight(d, drawing.Hot, words.Of("Saddle height")))...)
	return f
}

// The drawn person's front hip points, mm: at the height of the crests' front ends,
// and 240 mm apart, the example of the instruction.
const drawnHipPoints = 240

func hipWidth(p figure.Person, f *drawing.Figure) {
	y := p.Hip + 0.055*p.Stature
	a, b := at(-drawnHipPoints/2, y), at(drawnHipPoints/2, y)
	f.Title = words.Of("Between the hip points, and 0.72 of that")
	f.Description = words.Of("The hips of somebody {0} tall from the front. The tape runs straight across between "+
		"the two bony points at the front of the pelvis, {1} apart here. The hip joints, deep inside and lower, "+
		"lie 0.72 of that apart, {2}. The picture’s numbers are an example. Wrong: the tape runs round the belly, "+
		"from crest to crest.",
		measure.Stature.Amount(p.Stature), measure.Millimetres(drawnHipPoints),
		measure.Millimetres(0.72*drawnHipPoints))
	f.Add(p.Front(figure.ArmsOut)...)
	f.Add(figure.Tape(a, b)...)
	f.Add(helping(a.Plus(at(-6, 0)), -12, false)...)
	f.Add(helping(b.Plus(at(6, 0)), 192, false)...)
	f.Add(figure.Landmark(a, 20), figure.Landmark(b, 20),
		drawing.Dimension{Role: drawing.Hot, A: a, B: b, Along: at(1, 0), Offset: 110, Text: words.Of("{0}",
			measure.Millimetres(drawnHipPoints))},
		drawing.Dimension{Role: drawing.Ink, A: at(-0.36*drawnHipPoints, p.Hip), B: at(0.36*drawnHipPoints,
			p.Hip), Along: at(1, 0), Offset: -150, Text: words.Of("joints {0}",
			measure.Millimetres(0.72*drawnHipPoints))},
		note(b, at(1, 0.6), "Bony point"), note(a, at(-1, 0.6), "Bony point"))
	crest := at(0.45*p.HipWidth, p.Hip+0.095*p.Stature)
	left, belly := at(-crest.X, crest.Y), 0.5*crest.X
	wrong := append(p.Front(figure.ArmsOut),
		tapeAlong(left, at(-belly, crest.Y-26), at(belly, crest.Y-26), crest)...)
	wrong = append(append(wrong, helping(left.Plus(at(-6, 0)), -12, false)...),
		helping(crest.Plus(at(6, 0)), 192, false)...)
	wrong = append(wrong, figure.Landmark(left, 20), figure.Landmark(crest, 20), note(crest, at(1, 0.6), "Hip crest"))
	bothWays(f, at(-430, p.Inseam-200), at(430, p.Hip+330), f.Marks, wrong, "straight, from point to point",
		"round the belly, at the crests")
	f.Least = 20
}

// drawnBoards is the height of the boards in the picture, mm.
const drawnBoards = 20

func legDifference(p figure.Person, f *drawing.Figure) {
	crest := p.Hip + 0.095*p.Stature
	p.Longer, p.Back = drawnBoards, true
	f.Title = words.Of("Boards under the shorter leg until the hip crests are level")
	f.Description = words.Of("Somebody {0} tall from behind, barefoot, knees straight. Boards under the whole of "+
		"one foot make the two hip crests level; their height, {1} here, is the difference. The picture’s number "+
		"is an example.",
		measure.Stature.Amount(p.Stature), measure.Millimetres(drawnBoards))
	f.Add(drawing.Ground{A: at(-420, -drawnBoards), B: at(460, -drawnBoards)})
	f.Add(p.Front(figure.ArmsOut)...)
	f.Add(drawing.Line{Role: drawing.Ink, Fill: drawing.Wash, Closed: true, Points: []drawing.Point{at(20,
		-drawnBoards), at(170, -drawnBoards), at(170, 0), at(20, 0)}},
		drawing.Line{Role: drawing.Hot, Pen: drawing.Thin, Points: []drawing.Point{at(-300, crest), at(300, crest)}},
		note(at(300, crest), at(1, 0.6), "Crests level"), note(at(-250, crest-50), at(-1, -0.9), "Helper’s hands"),
		drawing.Dimension{Role: drawing.Hot, A: at(170, -drawnBoards), B: at(170, 0), Along: at(0, 1),
			Offset: -110, Text: words.Of("{0}", measure.Millimetres(drawnBoards))})
	for _, side := range [2]float64{-1, 1} {
		f.Add(helping(at(side*128, crest+6), 90+side*72, true)...)
		f.Add(figure.Landmark(at(side*125, crest), 24))
	}
	frame(f, -640, -120, 700, p.Hip+260)
}

// plateInputs are what a picture of a bike takes from the reader's own.
func plateInputs() []calculators.Input {
	inputs := []calculators.Input{fit.SexInput("")}
	for _, q := range []*measure.Quantity{measure.Inseam, measure.Reach, measure.Stack, measure.HeadAngle,
		measure.SeatAngle, measure.Chainstay, measure.SaddleHeight} {
		inputs = append(inputs, calculators.Input{Quantity: q, Optional: true})
	}
	return inputs
}

// The test rider's saddle height, mm, and how far the picture's saddle is pushed back, so that its nose is not
// right above the crank axle.
const drawnSaddle, drawnBack = 705, 45

// plateBike returns the stand-in bike of the reader's size, with what is known of the
// reader's own chart.
func plateBike(v calculators.Values) figure.Build {
	given := func(q *measure.Quantity, otherwise float64) float64 {
		if v.Has(q) {
			return v.Of(q)
		}
		return otherwise
	}
	b := figure.DemoWith(given(measure.Inseam, drawnInseam), given(measure.SaddleHeight, drawnSaddle),
		func(c *geometry.Chart) {
			c.Reach, c.Stack = given(measure.Reach, c.Reach), given(measure.Stack, c.Stack)
			c.HeadAngle, c.SeatAngle = given(measure.HeadAngle, c.HeadAngle), given(measure.SeatAngle, c.SeatAngle)
			c.Chainstay = given(measure.Chainstay, c.Chainstay)
		})
	b.CrankAngle, b.Back = 90, drawnBack
	return b
}
