package feet

import (
	"plumbline/calculators"
	"plumbline/calculators/drawing"
	"plumbline/calculators/figure"
	"plumbline/calculators/measure"
	"plumbline/calculators/posture"
	"plumbline/calculators/words"
)

// topOfStroke is the bike with that crank and the leg with the pedal at the top. The
// saddle has moved with the crank, and reaches is false where the leg finds no pose.
func topOfStroke(v calculators.Values, r *calculators.Result, c crankCase, crank float64) (b figure.Build,
	pose posture.LegPose, reaches bool) {
	height := c.saddle
	if x := r.At(crankSaddleChange); x.Exists() {
		height += float64(x.Value)
	}
	b = figure.Demo(v.Of(measure.Inseam), height).SeatAt(v.Of(measure.SeatAngle))
	b.Crank = crank
	after := c.before
	after.Crank = crank
	rider, ok := posture.NewSeated(c.leg, after)
	if !ok {
		return b, pose, false
	}
	if pose, reaches = rider.At(height, 0); reaches {
		b.PedalAngle = pose.HeelUp
	}
	return b, pose, reaches
}

// crankFigure draws the leg at the top of the stroke on the crank that is looked
// at, with the other pedal above the ground.
func crankFigure(v calculators.Values, r *calculators.Result, c crankCase) *drawing.Figure {
	crank, now := v.Of(measure.NewCrankLength), v.Of(measure.CrankLength)
	knee, hip, clear := r.At(kneeAtTop), r.At(hipAtTop), r.At(pedalClearance)
	b, pose, reaches := topOfStroke(v, r, c, crank)
	f := &drawing.Figure{Title: words.Of("The top of the stroke on a crank of {0}", measure.Sold(crank))}
	ground := 0.0
	if c.sinks {
		ground = -c.sunk.BBHeight()
		f.Add(drawing.Ground{A: figure.Point{X: -330, Y: ground}, B: figure.Point{X: 330, Y: ground}})
	}
	if crank != now {
		f.Add(drawing.Circle{Role: drawing.Before, Pen: drawing.Thin, Radius: now})
	}
	if reaches {
		p := figure.Legs(pose, nil, v.Of(measure.SoleHeight))
		f.Add(figure.Pedalling(b, &p)...)
		trunk := p.Hip.Plus(drawing.Polar(c.trunk, 330))
		f.Add(drawing.Axis{Role: drawing.Body, A: p.Hip, B: trunk},
			figure.KneeBend(p, drawing.Ink, words.Of("{0}", knee.Amount())),
			drawing.Angle{Role: drawing.Ink, Vertex: p.Hip, From: c.trunk, To: p.Knee.Minus(p.Hip).Angle(),
				Radius: 190,
				Text:   words.Of("{0}", hip.Amount())})
		f.Description = words.Of("A leg with the pedal at the top, on a crank of {0}. The knee bends {1} and the "+
			"hip keeps {2}. The lower pedal is {3} above the ground at sag.",
			measure.Sold(crank), knee.Amount(), hip.Amount(), clear.Amount())
		if crank != now {
			f.Description = words.Of("{0} In thin lines over it: the same leg on the present crank of {1}.",
				f.Description, measure.Sold(now))
		}
	} else {
		f.Add(figure.Pedalling(b, nil)...)
		f.Description = words.Of("A crank of {0} under the saddle. The leg is left out, because it cannot take any "+
			"position here. The lower pedal is {1} above the ground at sag.",
			measure.Sold(crank), clear.Amount())
	}
	if crank != now {
		was, marks := crankBefore(c, now, v.Of(measure.SoleHeight))
		f.Add(marks...)
		if is := figure.At(pose.Knee); reaches && marks != nil {
			f.Details = []drawing.Detail{{At: is.Plus(was).Times(0.5), Radius: max(70, 2*is.Minus(was).Length()),
				Apart: is.Minus(was).Length() / 3, Caption: words.Of("the top of the knee")}}
		}
	}
	f.Add(figure.SeatLine(b),
		drawing.Dimension{Role: drawing.Hot, B: figure.Point{Y: -crank}, Offset: -230, Text: words.Of("{0}",
			measure.Sold(crank))})
	if clear.Exists() {
		low := figure.Point{Y: ground + float64(clear.Value)}
		f.Add(drawing.Dimension{Role: drawing.Ink, A: low, B: figure.Point{Y: ground}, Offset: -230,
			Text: words.Of("{0}",
				clear.Uncertain())})
	}
	return f
}

// crankBefore draws the leg on the present crank, at the top of the stroke, in thin lines,
// and returns its knee.
// They lie over the later leg and hide nothing of it.
func crankBefore(c crankCase, now, sole float64) (knee drawing.Point, marks []drawing.Mark) {
	rider, ok := posture.NewSeated(c.leg, c.before)
	if !ok {
		return knee, nil
	}
	pose, ok := rider.At(c.saddle, 0)
	if !ok {
		return knee, nil
	}
	p := figure.Legs(pose, nil, sole)
	marks = append(figure.PoseOutline(p), figure.Ghost(drawing.Limb{B: at(0, now), Ra: 14, Rb: 11},
		drawing.Tube{A: at(-48, now), B: at(48, now), Ra: 8, Rb: 8})...)
	return p.Knee, append(
		marks,
		drawing.Label{Role: drawing.Before, At: p.Knee.Plus(at(0, 60)), Side: at(0.6, 1), Leader: true,
			Text: words.Of("now {0}", measure.Sold(now))},
	)
}
