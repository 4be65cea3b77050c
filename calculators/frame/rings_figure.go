package frame

import (
	"plumbline/calculators"
	"plumbline/calculators/drawing"
	"plumbline/calculators/figure"
	"plumbline/calculators/fit"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// Figures are the standing figures of this part of the guide.
func Figures() []*calculators.Illustration {
	return []*calculators.Illustration{SameReach(), OneNumberAtATime(), ForkRing(), ShockRing(),
		Sag().Moving(sagMotion()), Climb().Moving(climbMotion())}
}

// ForkRing is the standing figure of how sag is read at the fork: the ring pushed to the
// seal, the rider on, and the ruler from the seal to the ring.
func ForkRing() *calculators.Illustration {
	return &calculators.Illustration{Name: "fork-ring",
		Inputs: []calculators.Input{{Quantity: measure.ForkTravel, Optional: true}, {Quantity: measure.SagFront,
			Optional: true}},
		Draw: func(v calculators.Values) *drawing.Figure {
			travel := given(v, measure.ForkTravel, fit.UsualForkTravel.Value)
			return ringed{travel: travel, sag: travel * given(v, measure.SagFront, fit.UsualSagFront.Value) / 100,
				inner: 18, outer: 25, aside: 1, fork: true}.figure()
		}}
}

// ShockRing is the same at the shock, along its stroke.
func ShockRing() *calculators.Illustration {
	return &calculators.Illustration{Name: "shock-ring",
		Inputs: []calculators.Input{{Quantity: measure.ShockStroke, Optional: true}, {Quantity: measure.SagRear,
			Optional: true}},
		Draw: func(v calculators.Values) *drawing.Figure {
			stroke := given(v, measure.ShockStroke, drawnStroke)
			return ringed{travel: stroke, sag: stroke * given(v, measure.SagRear, fit.UsualSagRear.Value) / 100,
				inner: 6, outer: 17, aside: 1.2}.figure()
		}}
}

// drawnStroke is the shock's stroke where nobody gave one, mm: the scenario's.
const drawnStroke = 55

// given returns the reader's number, or what is drawn where there is none.
func given(v calculators.Values, q *measure.Quantity, otherwise float64) float64 {
	if v.Has(q) && v.Of(q) > 0 {
		return v.Of(q)
	}
	return otherwise
}

// ringed is a tube that slides into a wider one, with a rubber ring on it, mm: all that
// it can slide, how far it does under the rider, and half the tubes' widths, the latter
// by eye.
type ringed struct {
	travel, sag, inner, outer float64
	aside                     float64 // room for words at the left, in lengths of travel
	fork                      bool
}

func (r ringed) figure() *drawing.Figure {
	sag, travel := measure.Millimetres(r.sag), measure.Sold(r.travel)
	if !r.fork {
		sag.Extra = 1
	}
	share := measure.Percentage(100 * r.sag / r.travel)
	f := &drawing.Figure{Title: words.Of("Read the sag at the fork’s ring"), Least: 10, Upright: true,
		Description: words.Of(
			"The upper leg of a fork and its seal, three times. Nobody on the bike: the ring is pushed "+
				"down to the seal, with {0} of travel above it. You on the bike: the leg slides into the seal and the "+
				"ring is pushed up. You off again: the leg is out, and the ring has stayed {1} from the seal, "+
				"{2} of the travel.",
			travel,
			sag,
			share,
		)}
	off := words.Of("3. Off again: read it. All the travel is {0}", travel)
	if !r.fork {
		f.Title = words.Of("Read the sag at the shock’s ring")
		f.Description = words.Of(
			"A shock with its seal, three times. Nobody on the bike: the ring is pushed to the seal, "+
				"and the shaft has a stroke of {0}. You on the bike: the shaft slides into the seal and the ring is "+
				"pushed along. You off again: the shaft is out, and the ring has stayed {1} from the seal, "+
				"{2} of the stroke.",
			travel,
			sag,
			share,
		)
		off = words.Of("3. Off again: read it. All the stroke is {0}", travel)
	}
	one := append(r.marks(0, 0), drawing.Label{Role: drawing.Hot, At: at(-r.outer, 0.1*r.travel), Side: at(-1, 0),
		Text: words.Of("ring"), Fixed: true},
		drawing.Label{Role: drawing.Ink, At: at(-r.outer, -0.1*r.travel), Side: at(-1, 0), Text: words.Of("seal"),
			Fixed: true})
	one = append(
		one,
		figure.Grasp{At: at(r.inner+4, 0.08*r.travel), Way: 205, Role: drawing.Body, Over: true}.Pinch()...)
	two := append(r.marks(r.sag, 0), figure.Arrow(drawing.Hot, at(0, 1.48*r.travel), at(0, 1.28*r.travel),
		0.1*r.travel)...)
	two = append(two, drawing.Label{Role: drawing.Hot, At: at(0, 1.48*r.travel), Side: at(0, 1), Text: words.Of("you"),
		Fixed: true})
	three := append(r.marks(0, r.sag), r.ruler()...)
	three = append(three, figure.Grasp{At: at(r.inner+0.21*r.travel, 0.5*r.travel), Way: 205, Role: drawing.Body,
		Over: true}.Pinch()...)
	three = append(three, drawing.Dimension{Role: drawing.Hot, A: at(-r.inner, 0), B: at(-r.inner, r.sag),
		Along: at(0, 1), Offset: 0.08*r.travel + 4},
		drawing.Label{Role: drawing.Hot, At: at(-r.inner-0.08*r.travel-4, r.sag/2), Side: at(-1, 0), Fixed: true,
			Text: words.Of("{0}", sag)})
	for i, marks := range [3][]drawing.Mark{one, two, three} {
		caption := [3]words.Text{words.Of("1. Push the ring to the seal"), words.Of("2. Sit: it moves along"), off}[i]
		f.Frame(caption, marks...)
		f.Frames[i].Low, f.Frames[i].High = at(-r.aside*r.travel, -0.3*r.travel), at(r.outer+0.5*r.travel,
			1.5*r.travel)
	}
	return f
}

// at is a point of the drawing.
func at(x, y float64) drawing.Point { return drawing.Point{X: x, Y: y} }

// marks draws the tubes with the inner one slid in, and the ring so far from the seal,
// whose edge lies at height zero.
func (r ringed) marks(in, ring float64) []drawing.Mark {
	t := r.travel
	top := 1.08*t - in
	thick := 0.05 * t
	marks := []drawing.Mark{
		drawing.Tube{Role: drawing.Ink, Fill: drawing.Sheet, A: at(0, 0), B: at(0, top), Ra: r.inner, Rb: r.inner},
		drawing.Tube{Role: drawing.Ink, Fill: drawing.Sheet, A: at(0, -0.3*t), B: at(0, -0.06*t), Ra: r.outer,
			Rb: r.outer},
		drawing.Tube{Role: drawing.Ink, Fill: drawing.Wash, A: at(0, -0.06*t), B: at(0, 0), Ra: r.outer, Rb: r.outer},
	}
	if r.fork {
		marks = append(
			marks,
			drawing.Line{Role: drawing.Ink, Fill: drawing.Sheet, Closed: true, Points: []drawing.Point{
				at(-r.inner-9, top), at(r.inner+9, top), at(r.inner+9, top+0.12*t), at(-r.inner-9, top+0.2*t)}},
		)
	} else {
		marks = append(marks, drawing.Circle{Role: drawing.Ink, Fill: drawing.Sheet, Centre: at(0, top+9), Radius: 10},
			drawing.Circle{Role: drawing.Ink, Pen: drawing.Thin, Fill: drawing.Sheet, Centre: at(0, top+9), Radius: 5})
	}
	return append(marks, drawing.Tube{Role: drawing.Hot, Fill: drawing.Solid, A: at(0, ring), B: at(0, ring+thick),
		Ra: r.inner + 0.02*t + 2, Rb: r.inner + 0.02*t + 2})
}

// ruler stands on the seal beside the tube, with a stroke every 5 mm.
func (r ringed) ruler() []drawing.Mark {
	const step = 5.0
	x, wide, high := r.inner+0.05*r.travel+2, 0.16*r.travel, max(0.62*r.travel, r.sag+2*step)
	marks := []drawing.Mark{drawing.Line{Role: drawing.Ink, Pen: drawing.Thin, Fill: drawing.Sheet, Closed: true,
		Points: []drawing.Point{at(x, 0), at(x+wide, 0), at(x+wide, high), at(x, high)}}}
	for i := 1; float64(i)*step < high; i++ {
		long := 0.35
		if i%2 == 0 {
			long = 0.65
		}
		marks = append(marks, drawing.Line{Role: drawing.Ink, Pen: drawing.Thin, Points: []drawing.Point{
			at(x, float64(i)*step), at(x+long*wide, float64(i)*step)}})
	}
	return marks
}
