package feet

import (
	"plumbline/calculators"
	"plumbline/calculators/drawing"
	"plumbline/calculators/figure"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// crankMotion makes the crank longer under the leg at the top of the stroke.
func crankMotion() *calculators.Motion {
	return &calculators.Motion{Name: "crank-gets-longer",
		Title: words.Of("The top of the stroke on a longer crank"),
		Description: words.Of("A leg with the pedal at the top, over the same leg on the present crank in thin " +
			"lines. The saddle moves with the crank, so that the leg is as straight at the bottom as before. On " +
			"a longer crank the foot is higher at the top, and knee and hip bend more."),
		Label: "Make the crank longer", Unit: measure.Mm, From: 145, To: 185, Step: 1,
		States: []float64{155, 165, 175, 185}, Least: 11,
		Swept: []*measure.Quantity{measure.NewCrankLength},
		Draw:  drawCrankAt,
	}
}

func drawCrankAt(v calculators.Values, r *calculators.Result, at float64) drawing.Frame {
	c, now := crankCaseOf(v), v.Of(measure.CrankLength)
	b, pose, reaches := topOfStroke(v, r, c, at)
	f := drawing.Frame{Low: drawing.Point{X: -400, Y: -210}, High: drawing.Point{X: 480, Y: c.saddle + 400},
		Caption: words.Of("{0}: the leg does not reach", measure.Sold(at))}
	if !reaches {
		f.Marks = figure.Pedalling(b, nil)
		return f
	}
	p := figure.Legs(pose, nil, v.Of(measure.SoleHeight))
	f.Marks = append([]drawing.Mark{drawing.Circle{Role: drawing.Before, Pen: drawing.Thin, Radius: now}},
		figure.Pedalling(b, &p)...)
	f.Marks = append(f.Marks, drawing.Axis{Role: drawing.Body, A: p.Hip, B: p.Hip.Plus(drawing.Polar(c.trunk, 330))},
		figure.KneeBend(p, drawing.Ink, words.Text{}), drawing.Line{Role: drawing.Hot, Pen: drawing.Heavy,
			Points: []drawing.Point{{}, {Y: at}}})
	f.Caption = words.Of("{0}: knee bends {1}, hip keeps {2}", measure.Sold(at), r.At(kneeAtTop).Amount(),
		r.At(hipAtTop).Amount())
	if at != now {
		if _, marks := crankBefore(c, now, v.Of(measure.SoleHeight)); len(marks) > 0 {
			f.Marks = append(f.Marks, marks[:len(marks)-1]...) // without its label
		}
	}
	return f
}
