package feet

import (
	"math"

	"plumbline/calculators"
	"plumbline/calculators/body"
	"plumbline/calculators/drawing"
	"plumbline/calculators/figure"
	"plumbline/calculators/fit"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// Half of a cleat's length and width as drawn, and how far its middle line runs on,
// mm: drawn by eye.
const (
	cleatLength = 22
	cleatWidth  = 14
	cleatLine   = 120
)

// onPedal places a foot on its pedal, seen from above with the bike pointing up the
// sheet: side is 1 for the right foot and −1 for the left, out the pedal's distance
// from the middle, toeOut in degrees.
type onPedal struct{ side, out, toeOut float64 }

// at returns where a point of the foot lies: ahead of the spindle and inwards of the
// foot's middle line.
func (o onPedal) at(ahead, inwards float64) figure.Point {
	sin, cos := math.Sincos(o.toeOut * math.Pi / 180)
	return figure.Point{X: o.side * (o.out + ahead*sin - inwards*cos), Y: ahead*cos + inwards*sin}
}

// placed returns a mark of a foot's plan, whose spindle lies ahead of its heel, on the
// pedal.
func (o onPedal) placed(m drawing.Mark, spindle float64) drawing.Mark {
	move := func(p figure.Point) figure.Point { return o.at(p.X-spindle, p.Y) }
	switch m := m.(type) {
	case drawing.Line:
		points := make([]figure.Point, len(m.Points))
		for i, p := range m.Points {
			points[i] = move(p)
		}
		m.Points = points
		return m
	case drawing.Limb:
		m.A, m.B = move(m.A), move(m.B)
		return m
	case drawing.Cross:
		m.At = move(m.At)
		return m
	}
	return m
}

// box is a rectangle about the spindle.
func (o onPedal) box(length, width float64) []figure.Point {
	return []figure.Point{o.at(-length, -width), o.at(length, -width), o.at(length, width), o.at(-length, width)}
}

// angleFigure draws both feet from above at their own angles, each with its crank
// forward: the cleats as they should be and as they are, and the heels' room.
func angleFigure(v calculators.Values, r *calculators.Result) *drawing.Figure {
	left, right := r.At(leftFoot.turn), r.At(rightFoot.turn)
	f := &drawing.Figure{Title: words.Of("Your cleats and heels, seen from above"),
		Description: words.Of("Both feet from above on their pedals, each with its crank forward, drawn to scale at "+
			"their own angles: left {0} outwards, right {1}. Heavy: the cleats straight ahead, as they should be. "+
			"Dashed: as they are now. The left one’s nose turns inwards by {2}, the right one’s by {3}; minus is "+
			"outwards. Beside the heels stand the crank arms.",
			measure.Degrees(v.Of(measure.ToeOutLeft)), measure.Degrees(v.Of(measure.ToeOutRight)), left.Uncertain(),
			right.Uncertain())}
	ball, ok := body.HeelToBallOf(v.Of(measure.FootLength), fit.Sex(v))
	if !ok {
		return f
	}
	sole := figure.Sole{Length: v.Of(measure.FootLength), Inner: ball.Value}
	spindle := ball.Value - v.Of(measure.CleatBehindBall)
	addFoot(f, v, r, sole, spindle, -1, v.Of(measure.ToeOutLeft), leftFoot)
	addFoot(f, v, r, sole, spindle, 1, v.Of(measure.ToeOutRight), rightFoot)
	return f
}

// addFoot draws one foot.
func addFoot(f *drawing.Figure, v calculators.Values, r *calculators.Result, sole figure.Sole, spindle, side,
	own float64, of oneFoot) {
	e := rearEndOf(v)
	out := e.face + v.Of(measure.FootOffset)
	at := func(x, y float64) figure.Point { return figure.Point{X: side * x, Y: y} }
	foot := onPedal{side, out, own}
	turn := r.At(of.turn)
	length := spindle + v.Of(measure.HeelCup) // from the shoe's heel
	straight, now := onPedal{side, out, 0}, onPedal{side, out, float64(turn.Value)}
	f.Add(drawing.Line{Role: drawing.Ink, Fill: drawing.Sheet, Closed: true, Points: []figure.Point{
		at(e.face, 14), at(e.face-e.setIn, -e.crank-16), at(e.face-e.setIn-18, -e.crank-16), at(e.face-18, 14)}})
	f.Add(drawing.Line{Role: drawing.Ink, Pen: drawing.Thin, Points: []figure.Point{at(e.face, 0), at(out+45, 0)}})
	for _, m := range figure.FootPlan(sole) {
		f.Add(foot.placed(m, spindle))
	}
	f.Add(
		drawing.Axis{Role: drawing.Body, A: foot.at(-spindle, 0), B: foot.at(sole.Length-spindle, 0)},
		drawing.Line{Role: drawing.Before, Pen: drawing.Hidden, Closed: true, Points: now.box(cleatLength,
			cleatWidth)},
		drawing.Line{Role: drawing.Hot, Pen: drawing.Heavy, Closed: true, Points: straight.box(cleatLength,
			cleatWidth)},
		drawing.Line{Role: drawing.Hot, Pen: drawing.Thin, Points: []figure.Point{at(out, 0),
			straight.at(cleatLine, 0)}},
		drawing.Line{Role: drawing.Before, Pen: drawing.Hidden, Points: []figure.Point{at(out, 0),
			now.at(cleatLine, 0)}},
	)
	f.Add(drawing.Line{Role: drawing.Body, Pen: drawing.Thin, Points: []figure.Point{foot.at(-length+60, heelHalf),
		foot.at(-length, heelHalf), foot.at(-length, -heelHalf), foot.at(-length+60, -heelHalf)}})
	if math.Abs(float64(turn.Value)) >= 0.5 {
		f.Add(drawing.Angle{Role: drawing.Hot, Vertex: at(out, 0), From: 90, To: 90 - side*float64(turn.Value),
			Radius: cleatLine - 10,
			Text:   words.Of("{0}", turn.Amount())})
	}
	if room := r.At(of.armOwn); room.Exists() {
		heel := heelAt(out, length, own)
		f.Add(figure.Level(drawing.Ink, at(heel.out-float64(room.Value), -heel.behind), at(heel.out, -heel.behind),
			-heel.behind-45,
			words.Of("{0}", room.Amount())))
	}
}
