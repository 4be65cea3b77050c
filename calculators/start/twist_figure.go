package start

import (
	"plumbline/calculators"
	"plumbline/calculators/drawing"
	"plumbline/calculators/figure"
	"plumbline/calculators/words"
)

// TwistTest is the standing figure of the check that a stem is tight, from above: the
// front wheel between the knees, one grip pushed and one pulled.
func TwistTest() *calculators.Illustration {
	return &calculators.Illustration{Name: "twist-test",
		Draw: func(calculators.Values) *drawing.Figure { return twistTest() }}
}

// What is drawn, mm, by eye: half the bar, the stem, the tyre's half width, the way from
// the steerer to the front axle, and by how many degrees a loose bar turns.
const (
	twistBar, twistStem   = 370.0, 50.0
	twistTyre, twistWheel = 30.0, 350.0
	twistAxle, twistTurn  = 330.0, 9.0
)

func twistTest() *drawing.Figure {
	f := &drawing.Figure{Title: words.Of("Twist the bar against the wheel"), Least: 10,
		Description: words.Of(
			"The front of a bike from above, twice. You stand before it and hold the wheel between your " +
				"knees. You push one grip and pull the other. Right: bar and wheel stay square to each other. Wrong: " +
				"the bar has turned and the wheel has not, so the stem is loose.",
		)}
	f.Frame(words.Of("Right: nothing moves"), twisted(0)...)
	f.Frame(words.Of("Wrong: the bar turns, the wheel does not. Do not ride"), twisted(twistTurn)...)
	return f
}

// twisted draws wheel, knees, and the bar turned by degrees.
func twisted(turn float64) []drawing.Mark {
	marks := []drawing.Mark{
		drawing.Limb{Role: drawing.Ink, Fill: drawing.Sheet, A: at(0, twistAxle-twistWheel+twistTyre),
			B: at(0, twistAxle+twistWheel-twistTyre), Ra: twistTyre, Rb: twistTyre},
		drawing.Tube{
			Role: drawing.Ink,
			Fill: drawing.Sheet,
			A:    at(-62, twistAxle),
			B:    at(62, twistAxle),
			Ra:   11,
			Rb:   11,
		},
		drawing.Limb{Role: drawing.Ink, Fill: drawing.Sheet, A: at(0, -260), B: at(0, 0), Ra: 20, Rb: 26},
	}
	for _, side := range [2]float64{-1, 1} {
		knee := at(side*(twistTyre+66), twistAxle+170)
		marks = append(
			marks,
			drawing.Limb{
				Role: drawing.Body,
				Fill: drawing.Hatch,
				A:    knee,
				B:    at(side*140, twistAxle+340),
				Ra:   62,
				Rb:   82,
			},
		)
	}
	marks = append(marks, drawing.Label{Role: drawing.Body, At: at(0, twistAxle+430), Side: at(0, 1),
		Text: words.Of("your knees"), Fixed: true})
	if turn != 0 {
		marks = append(marks, figure.Ghost(barAbove()...)...)
	}
	turned := append(barAbove(), fists()...)
	marks = append(marks, figure.Turned(turn, at(0, 0), turned...)...)
	marks = append(marks, drawing.Axis{Role: drawing.Soft, A: at(0, -240), B: at(0, twistAxle+twistWheel)})
	for i, side := range [2]float64{-1, 1} {
		from, to := at(side*(twistBar-40), 40-side*150), at(side*(twistBar-40), 40+side*100)
		marks = append(marks, figure.Arrow(drawing.Hot, from, to, 60)...)
		marks = append(marks, drawing.Label{Role: drawing.Hot, At: at(side*(twistBar-60), [2]float64{190, -120}[i]),
			Side: at(0, -side), Fixed: true, Text: words.Of([2]words.English{"push", "pull"}[i])})
	}
	return marks
}

// barAbove is bar and stem from above, the steerer at the origin and the wheel ahead.
func barAbove() []drawing.Mark {
	return []drawing.Mark{
		drawing.Line{Role: drawing.Ink, Fill: drawing.Sheet, Closed: true, Points: []drawing.Point{
			at(-80, twistStem-13), at(-twistBar, twistStem-53), at(-twistBar, twistStem-31), at(-80, twistStem+13),
			at(80, twistStem+13), at(twistBar, twistStem-31), at(twistBar, twistStem-53), at(80, twistStem-13)}},
		drawing.Limb{Role: drawing.Ink, Fill: drawing.Sheet, A: at(0, 0), B: at(0, twistStem), Ra: 24, Rb: 22},
		drawing.Circle{Role: drawing.Ink, Pen: drawing.Thin, Radius: 14},
	}
}

// fists are both hands on the grips, the fingers' knuckles away from the rider, who
// stands at the wheel.
func fists() (marks []drawing.Mark) {
	for _, side := range [2]float64{-1, 1} {
		middle := at(side*(twistBar-62), twistStem-38)
		along := at(side*290, -40).Unit()
		marks = append(marks, drawing.Limb{Role: drawing.Body, Fill: drawing.Hatch, A: middle.Plus(at(0, 150)),
			B: middle.Plus(at(0, 40)), Ra: 34, Rb: 32})
		for i := range 4 {
			p := middle.Along(along, float64(i)*22-33)
			marks = append(marks, drawing.Limb{Role: drawing.Body, Pen: drawing.Thin, Fill: drawing.Wash,
				A: p.Plus(at(0, 30)), B: p.Plus(at(0, -22)), Ra: 12, Rb: 12})
		}
	}
	return marks
}
