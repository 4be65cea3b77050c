package start

import (
	"plumbline/calculators"
	"plumbline/calculators/drawing"
	"plumbline/calculators/figure"
	"plumbline/calculators/geometry"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// tapeFigure draws the bike that the tape found, with the triangles of tape that
// found it.
func tapeFigure(v calculators.Values, r *calculators.Result) *drawing.Figure {
	t := taped(v)
	solved, err := t.Solve()
	if err != nil {
		return nil
	}
	f := &drawing.Figure{
		Title: words.Of("The bike that the tape found"),
		Description: words.Of("A bike from the side with the distances taken: crank axle to head tube {0}, rear "+
			"axle to head tube {1}, chainstay {2}, front-centre {3}. They give a reach of {4} and a stack of {5}.",
			measure.BBToHeadTube.Amount(t.BBToHead), measure.RearAxleToHeadTube.Amount(t.RearToHead),
			measure.Chainstay.Amount(t.BBToRear), measure.FrontCentre.Amount(t.BBToFront),
			r.At(tapedReach).Uncertain(), r.At(tapedStack).Uncertain()),
	}
	head, rear, front := figure.At(solved.HeadTop), figure.At(solved.Rear), figure.At(solved.Front)
	if d, ok := tapedBuild(t, solved); ok {
		f.Add(figure.Scene(d, nil)...)
		f.Add(figure.AxleCrosses(d)...)
		f.Add(figure.Reach(d, drawing.Ink, words.Of("Reach {0}", r.At(tapedReach).Uncertain())),
			figure.Stack(d, drawing.Ink, words.Of("Stack {0}", r.At(tapedStack).Uncertain())))
	}
	for _, way := range [4][2]drawing.Point{{{}, head}, {rear, head}, {{}, rear}, {{}, front}} {
		f.Add(drawing.Line{Role: drawing.Hot, Points: way[:]})
	}
	f.Add(figure.Landmark(head, 30), figure.Landmark(rear, 30), figure.Landmark(front, 30),
		figure.Landmark(drawing.Point{}, 30))
	return f
}

// tapedBuild makes the drawing's bike: the points are the tape's, the fork's
// offset and angle are chosen so that it meets the axle where these were not
// measured, and bar and saddle are stand-ins.
func tapedBuild(t geometry.Tape, solved geometry.Taped) (figure.Build, bool) {
	c := geometry.Chart{
		Reach: solved.HeadTop.X, Stack: solved.HeadTop.Y, HeadAngle: t.HeadAngle, SeatAngle: 76, HeadTube: 110,
		ForkOffset: solved.Offset, Chainstay: t.BBToRear, BBHeight: t.BBHeight, FrontRadius: t.FrontHeight,
		RearRadius: t.RearHeight,
	}
	if t.HeadAngle == 0 {
		c.ForkOffset = 44
		low, high := 40.0, 90.0
		for range 40 {
			c.HeadAngle = (low + high) / 2
			b, err := c.Solve()
			if err != nil || b.Front.X < solved.Front.X {
				high = c.HeadAngle
			} else {
				low = c.HeadAngle
			}
		}
	}
	b, err := c.Solve()
	if err != nil {
		return figure.Build{}, false
	}
	return figure.Build{Bike: b, CrankAngle: 90, Saddle: b.Stack() + 75, SeatTube: 0.68 * b.Stack(),
		FrontRim: 2*t.FrontHeight - 122, RearRim: 2*t.RearHeight - 122,
		Cockpit: geometry.Cockpit{Headset: 12, Spacers: 15, ClampHeight: 40, Stem: 45, Rise: 30, Back: 40}}, true
}
