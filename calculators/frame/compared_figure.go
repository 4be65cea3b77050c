package frame

import (
	"math"

	"plumbline/calculators"
	"plumbline/calculators/drawing"
	"plumbline/calculators/figure"
	"plumbline/calculators/geometry"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// OneNumberAtATime is the standing figure of what each number of a chart does to a bike:
// six times the stand-in bike of the reader's size with one number changed, over itself.
func OneNumberAtATime() *calculators.Illustration {
	return &calculators.Illustration{Name: "one-number-at-a-time", Inputs: sizeOnly(), Draw: oneNumberAtATime}
}

// SameReach is the standing figure of two bikes whose reach is the same on paper: with
// the lower head tube, the bar that is put at the same height comes back.
func SameReach() *calculators.Illustration {
	return &calculators.Illustration{Name: "same-reach", Inputs: sizeOnly(), Draw: sameReach}
}

// sizeOnly asks for what chooses the size of the stand-in bike.
func sizeOnly() []calculators.Input {
	return []calculators.Input{{Quantity: measure.Inseam, Optional: true}}
}

// drawnInseam is the inside leg where nobody gave one, mm: the scenario's test rider.
const drawnInseam = 830

// standIn is the stand-in bike with its chart changed, its saddle where the reader's size
// has it.
func standIn(v calculators.Values, change func(*geometry.Chart)) figure.Build {
	inseam := given(v, measure.Inseam, drawnInseam)
	b := figure.DemoWith(inseam, 0.88*inseam, change)
	b.CrankAngle = 90
	return b
}

// oneChange is one number of a chart, changed by a step that the eye sees.
type oneChange struct {
	label  words.English // what is said of it, with a hole for the step
	step   measure.Amount
	change func(*geometry.Chart)
	text   words.English // what follows, in the description
}

func oneChanges() []oneChange {
	turn := measure.Amount{Value: 3, Unit: measure.Deg, Extra: -1}
	return []oneChange{
		{"Reach {0} longer", measure.Millimetres(40), func(c *geometry.Chart) { c.Reach += 40 },
			"hands and front wheel go forward"},
		{"Stack {0} higher", measure.Millimetres(40), func(c *geometry.Chart) { c.Stack += 40 },
			"the hands go up, the front wheel a little forward"},
		{"Head angle {0} slacker", turn, func(c *geometry.Chart) { c.HeadAngle -= 3 },
			"the front wheel goes forward"},
		{"Seat angle {0} steeper", turn, func(c *geometry.Chart) { c.SeatAngle += 3 },
			"the saddle goes forward"},
		{"Chainstay {0} longer", measure.Millimetres(25), func(c *geometry.Chart) { c.Chainstay += 25 },
			"the rear wheel goes back"},
		{"Bottom bracket {0} lower", measure.Millimetres(20), func(c *geometry.Chart) { c.Drop += 20 },
			"the wheels stand higher against the feet"},
	}
}

func oneNumberAtATime(v calculators.Values) *drawing.Figure {
	f := &drawing.Figure{Title: words.Of("One number at a time"), Least: 11}
	var said words.List
	before := standIn(v, nil)
	for _, c := range oneChanges() {
		after := standIn(v, c.change)
		if c.step.Unit == measure.Deg && after.Bike.SeatAngle == before.Bike.SeatAngle {
			after.Back = before.Back
		}
		caption := words.Of(c.label, c.step)
		said = append(said, words.Of("{0}: {1}", caption, words.Of(c.text)))
		marks := figure.Over(before, after)
		f.Frame(caption, append(marks, ways(before, after)...)...)
		f.Frames[len(f.Frames)-1].Details = farthest(before, after, marks)
	}
	f.Description = words.Of(
		"Six pairs of bikes from the side with the crank axle in one place, the bike before in "+
			"thin lines, and an arrow where something has moved. {0}.",
		said,
	)
	return f
}

// farthest is the part of the bike that has moved most, larger: where the whole is small, a
// step of a chart is a line's width.
func farthest(before, after figure.Build, over []drawing.Mark) []drawing.Detail {
	var most drawing.Detail
	for _, p := range moving(before, after) {
		if way := p.is.Minus(p.was); way.Length() > most.Apart {
			most = drawing.Detail{At: p.was.Plus(p.is).Times(0.5), Radius: max(70, way.Length()), Apart: way.Length(),
				Caption: words.Of(p.name), Of: over,
				Marks: figure.Arrow(drawing.Hot, p.was, p.is, 0.4*way.Length())}
		}
	}
	if most.Apart == 0 {
		return nil
	}
	return []drawing.Detail{most}
}

// part is a place of the bike before and after.
type part struct {
	name    words.English
	was, is drawing.Point
}

// moving are the places that a number of a chart moves.
func moving(before, after figure.Build) [4]part {
	return [4]part{{"the grips", before.Grip(), after.Grip()}, {"the saddle", before.SaddleTop(), after.SaddleTop()},
		{"the front axle", figure.At(before.Bike.Front), figure.At(after.Bike.Front)},
		{"the rear axle", figure.At(before.Bike.Rear), figure.At(after.Bike.Rear)}}
}

// ways are arrows from where a wheel, the grips or the saddle were to where they are.
func ways(before, after figure.Build) (marks []drawing.Mark) {
	for _, p := range moving(before, after) {
		way := p.is.Minus(p.was)
		if way.Length() < 6 {
			continue
		}
		// The arrow is drawn three times as long, so that it is seen; it ends where the
		// part now is.
		marks = append(
			marks,
			figure.Arrow(drawing.Hot, p.is.Along(way.Unit(), -max(3*way.Length(), 130)), p.is, 55)...)
	}
	return marks
}

// stackLess is how much lower the second bike's head tube is, mm.
const stackLess = 40

func sameReach(v calculators.Values) *drawing.Figure {
	tall := standIn(v, nil)
	low := standIn(
		v,
		func(c *geometry.Chart) { c.Stack -= stackLess; c.HeadTube = math.Max(c.HeadTube-stackLess, 60) },
	)
	// Spacers lift the low bike's bar to the height of the other.
	low.Cockpit.Spacers += (tall.Grip().Y - low.Grip().Y) / math.Sin(low.Bike.HeadAngle*math.Pi/180)
	back := tall.Grip().X - low.Grip().X
	reach := measure.Millimetres(tall.Bike.Reach())
	f := &drawing.Figure{Title: words.Of("Same reach, another stack"),
		Description: words.Of(
			"Two bikes from the side over each other, the crank axle in one place. Both have a reach "+
				"of {0}; the one in thin lines has a stack of {1}, the one in ink {2}. Spacers lift the lower one’s "+
				"bar to the same height, and because they go along the slanting steering axis the grips "+
				"come back by {3}.",
			reach,
			measure.Millimetres(tall.Bike.Stack()),
			measure.Millimetres(low.Bike.Stack()),
			measure.Millimetres(back),
		)}
	f.Add(figure.Over(tall, low)...)
	top, under := figure.At(tall.Bike.HeadTop), figure.At(low.Bike.HeadTop)
	ahead := low.Bike.Front.X + low.Bike.FrontRadius
	f.Add(
		figure.Level(drawing.Hot, at(0, top.Y), top, top.Y+300, words.Of("Reach of both {0}", reach)),
		figure.Upright(
			drawing.Before,
			at(0, 0),
			top,
			ahead+230,
			words.Of("{0}", measure.Millimetres(tall.Bike.Stack())),
		),
		figure.Upright(
			drawing.Ink,
			at(0, 0),
			under,
			ahead+70,
			words.Of("Stack {0}", measure.Millimetres(low.Bike.Stack())),
		),
	)
	f.Details = []drawing.Detail{{At: tall.Grip().Plus(low.Grip()).Times(0.5), Radius: 90,
		Caption: words.Of("the grips"), Marks: []drawing.Mark{
			figure.Level(
				drawing.Hot,
				low.Grip(),
				tall.Grip(),
				tall.Grip().Y+40,
				words.Of("{0}", measure.Millimetres(back)),
			)}}}
	return f
}
