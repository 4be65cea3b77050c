package feet

import (
	"plumbline/calculators"
	"plumbline/calculators/drawing"
	"plumbline/calculators/figure"
	"plumbline/calculators/words"
)

// How large a thread is drawn, mm: a pedal's own is 14.2 thick and 16 long (9/16 inch, 20
// turns an inch, common practice); the picture shows it larger, with fewer turns.
const threadLong, threadHalf, threadTurns = 78, 24, 7

// threads draws both pedals being tightened, each seen from its own side of the bike, and the
// thread of each. The left one has a left-hand thread (ISO 6696, from memory).
func threads(calculators.Values) *drawing.Figure {
	f := &drawing.Figure{
		Title: words.Of("Both pedals tighten towards the front wheel"),
		Description: words.Of("Each pedal from its own side of the bike, a spanner upwards on it. On either side the " +
			"top of the spanner goes towards the front wheel to tighten. So the right pedal turns clockwise, and " +
			"the left one anticlockwise. Below each is its thread, the pedal lying with its thread to the left: " +
			"the turns of the right pedal’s sink to the right, those of the left pedal’s rise."),
		Least: 15,
	}
	f.Frame(words.Of("Right pedal: clockwise"), threaded(1)...)
	f.Frame(words.Of("Left pedal: anticlockwise, a left-hand thread"), threaded(-1)...)
	return f
}

// threaded is one pedal on its crank, the front wheel on that side, 1 for the right pedal and
// -1 for the left one, and its thread below.
func threaded(side float64) []drawing.Mark {
	p := func(x, y float64) drawing.Point { return at(side*x, y) }
	m := []drawing.Mark{
		drawing.Line{Role: drawing.Soft, Smooth: true, Points: arc(p(560, 0), side, 290)},
		drawing.Line{Role: drawing.Soft, Smooth: true, Points: arc(p(560, 0), side, 262)},
		drawing.Limb{Role: drawing.Ink, Fill: drawing.Sheet, A: p(0, 0), B: p(170, 0), Ra: 26, Rb: 19},
		drawing.Circle{Role: drawing.Ink, Fill: drawing.Sheet, Radius: 13},
	}
	// The pedal is nearest: it is left out but for its outline, so that the spanner is seen.
	m = append(m, figure.Ghost(drawing.Tube{Role: drawing.Ink, A: p(118, 0), B: p(222, 0), Ra: 12, Rb: 12})...)
	spindle := p(170, 0)
	m = append(m,
		drawing.Limb{Role: drawing.Ink, Fill: drawing.Sheet, A: spindle, B: p(158, 225), Ra: 8, Rb: 10},
		drawing.Circle{Role: drawing.Ink, Fill: drawing.Sheet, Centre: spindle, Radius: 19},
		drawing.Line{Role: drawing.Ink, Fill: drawing.Wash, Closed: true, Points: []drawing.Point{
			p(161, -10), p(179, -10), p(179, 10), p(161, 10)}})
	hand := figure.Grasp{At: p(159, 205), Way: 90 + side*95, Role: drawing.Body, Over: side < 0}
	m = append(m, hand.Fist()...)
	from, to := 96.0, 48.0
	if side < 0 {
		from, to = 84, 132
	}
	m = append(m, figure.Bow(drawing.Hot, spindle, 290, from, to, 30)...)
	m = append(m, drawing.Label{Role: drawing.Hot, At: spindle.Plus(drawing.Polar(90-side*42, 290)), Side: p(0.2, 1),
		Text: words.Of("tighten")},
		drawing.Label{Role: drawing.Soft, At: p(330, -120), Side: p(1, -0.2), Leader: true,
			Text: words.Of("front wheel")})
	return append(m, thread(at(-80, -230), side)...)
}

// arc is the near part of a wheel, from below to above its axle.
func arc(centre drawing.Point, side, radius float64) []drawing.Point {
	var points []drawing.Point
	for a := 130.0; a <= 230; a += 10 {
		p := drawing.Polar(a, radius)
		points = append(points, centre.Plus(at(side*p.X, p.Y)))
	}
	return points
}

// thread is a pedal that lies with its thread to the left, which begins at a place: a
// right-hand thread where side is 1. Its turns are those that face the reader: on a
// right-hand thread a point that goes round clockwise, seen along its way, moves on.
func thread(from drawing.Point, side float64) []drawing.Mark {
	tube := func(a, b, half float64) drawing.Mark {
		return drawing.Tube{Role: drawing.Ink, Fill: drawing.Sheet, A: from.Plus(at(a, 0)), B: from.Plus(at(b, 0)),
			Ra: half, Rb: half}
	}
	const pitch = float64(threadLong) / threadTurns
	m := []drawing.Mark{tube(0, threadLong, threadHalf)}
	for i := range threadTurns {
		x := pitch * (float64(i) + 0.25)
		m = append(m, drawing.Line{Role: drawing.Hot, Pen: drawing.Wide, Points: []drawing.Point{
			from.Plus(at(x, side*threadHalf)), from.Plus(at(x+pitch/2, -side*threadHalf))}})
	}
	return append(m, tube(threadLong, threadLong+10, 36), tube(threadLong+10, threadLong+40, 26),
		tube(threadLong+40, threadLong+180, 34))
}
