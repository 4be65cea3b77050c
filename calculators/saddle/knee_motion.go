package saddle

import (
	"slices"

	"plumbline/calculators"
	"plumbline/calculators/drawing"
	"plumbline/calculators/figure"
	"plumbline/calculators/fit"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// kneeMotion turns the cranks under the reader: the leg goes round the circle, and a dot
// along the curve of the knee's bend.
func kneeMotion() *calculators.Motion {
	return &calculators.Motion{Name: "knee-round-the-circle",
		Title: words.Of("Your knee round the pedal circle"),
		Description: words.Of("A leg on the cranks, turned once round from the top. The knee bends most near the " +
			"top and least near the bottom."),
		Label: "Turn the crank from the top", Unit: measure.Deg, To: 360, Step: 5,
		States: []float64{0, 90, 180, 270}, Least: 11,
		Draw: drawKneeAt, Beside: besideKneeAt,
	}
}

// drawKneeAt draws both legs with the near crank so far from the top.
func drawKneeAt(v calculators.Values, _ *calculators.Result, at float64) drawing.Frame {
	height, crank := v.Of(measure.SaddleHeight), v.Of(measure.CrankLength)
	b := figure.Demo(v.Of(measure.Inseam), height).SeatAt(v.Of(measure.SeatAngle))
	b.Crank, b.CrankAngle = crank, at
	f := drawing.Frame{Low: drawing.Point{X: -400, Y: -crank - 130}, High: drawing.Point{X: 400, Y: height + 110}}
	rider, ok := fit.Seated(v)
	near, reaches := rider.At(height, at)
	if !ok || !reaches {
		f.Caption = words.Of("Crank at {0}: the leg does not reach", wholeDegrees(at))
		f.Marks = figure.Pedalling(b, nil)
		return f
	}
	b.PedalAngle = near.HeelUp
	pose := figure.Legs(near, nil, v.Of(measure.SoleHeight))
	if far, reaches := rider.At(height, at+180); reaches {
		b.FarPedalAngle = far.HeelUp
		pose = figure.Legs(near, &far, v.Of(measure.SoleHeight))
	}
	f.Caption = words.Of("Crank at {0}: knee bends {1}", wholeDegrees(at), wholeDegrees(near.KneeBend))
	f.Marks = append(figure.Pedalling(b, &pose), figure.KneeBend(pose, drawing.Hot, words.Text{}))
	return f
}

// besideKneeAt is the curve of the whole circle, with a dot where the crank is.
func besideKneeAt(v calculators.Values, r *calculators.Result, at float64) drawing.Frame {
	height := v.Of(measure.SaddleHeight)
	rider, ok := fit.Seated(v)
	low := figure.Point{X: 650, Y: -float64(v.Of(measure.CrankLength))}
	high := figure.Point{X: low.X + 720, Y: max(0.75*height, 300)}
	p, marks := kneePlot(v, r, rider, ok, low, high)
	// The plot is small here: its axes are labelled, and nothing in it.
	marks = slices.DeleteFunc(marks, func(m drawing.Mark) bool {
		l, is := m.(drawing.Label)
		return is && l.Role == drawing.Ink
	})
	if pose, reaches := rider.At(height, at); ok && reaches {
		marks = append(marks, drawing.Circle{Role: drawing.Hot, Fill: drawing.Solid, Centre: p.At(at, pose.KneeBend),
			Radius: 20})
	}
	marks = append(marks, drawing.Label{Role: drawing.Soft, At: p.At(180, 140), Fixed: true,
		Text: words.Of("knee bend")})
	return drawing.Frame{Low: low, High: figure.Point{X: high.X + 40, Y: high.Y + 40}, Marks: marks}
}
