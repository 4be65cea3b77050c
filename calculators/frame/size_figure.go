package frame

import (
	"plumbline/calculators"
	"plumbline/calculators/drawing"
	"plumbline/calculators/figure"
	"plumbline/calculators/geometry"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// drawnSizes is how many sizes lie over each other in the figure: more cannot be
// told apart.
const drawnSizes = 3

// sizeFigure lays the first sizes of the list over each other with the bottom
// bracket in one place: the first in ink, the others in thin lines, and the
// reader's grips.
func sizeFigure(v calculators.Values, all []sized) *drawing.Figure {
	f := &drawing.Figure{Title: words.Of("The nearest sizes, laid over each other at the bottom bracket")}
	var drawn []figure.Build
	var names words.List
	for _, s := range all {
		if b, ok := sizeBike(s.row); ok && len(drawn) < drawnSizes {
			d := sizeBuild(v, s.row, b)
			drawn, names = append(drawn, d), append(names, words.Name(s.row.Name))
		}
	}
	if len(drawn) == 0 {
		f.Description = words.Of("No line of the table describes a bike, so a stand-in is drawn.")
		f.Add(figure.Scene(figure.Demo(v.Of(measure.Inseam), v.Of(measure.SaddleHeight)), nil)...)
		return f
	}
	f.Description = words.Of("The sizes {0} from the side with the bottom bracket in one place, the first in ink "+
		"and the others in thin lines, each with the same bar and spacers and the saddle at {1}.", names,
		measure.SaddleHeight.Amount(v.Of(measure.SaddleHeight)))
	f.Add(figure.Scene(drawn[0], nil)...)
	for i, d := range drawn {
		top := figure.At(d.Bike.HeadTop)
		role := drawing.Ink
		if i > 0 {
			role = drawing.Before
			f.Add(figure.Outline(d)...)
			top = figure.At(d.Bike.Front).Plus(drawing.Point{X: 0.5 * d.Bike.FrontRadius,
				Y: 0.866 * d.Bike.FrontRadius})
			if i == 2 {
				top = figure.At(d.Bike.Front).Plus(drawing.Point{X: d.Bike.FrontRadius})
			}
		}
		f.Add(drawing.Label{Role: role, At: top, Side: drawing.Point{X: 1, Y: 1}, Leader: true,
			Text: words.Of("{0}", names[i])})
	}
	if v.Has(measure.GripX) && v.Has(measure.GripY) {
		at := drawing.Point{X: v.Of(measure.GripX), Y: v.Of(measure.GripY)}
		f.Add(drawing.Cross{Role: drawing.Hot, At: at, Size: 30},
			drawing.Label{Role: drawing.Hot, At: at, Side: drawing.Point{X: -1, Y: 0.8}, Leader: true,
				Text: words.Of("Your grips")})
	}
	return f
}

// sizeBuild makes a row's bike ready to be drawn with the reader's saddle on it.
func sizeBuild(v calculators.Values, row calculators.Row, b geometry.Bike) figure.Build {
	saddle := v.Of(measure.SaddleHeight)
	rim := cell(row, cFrontRim, standInRim)
	return figure.Build{Bike: b, Cockpit: rowCockpit(row, sizeCockpit(v)), Saddle: saddle,
		SeatTube: min(row.Cells[cSeatTube], saddle-70),
		FrontRim: min(rim, 2*b.FrontRadius-40), RearRim: min(cell(row, cRearRim, rim), 2*b.RearRadius-40),
		Crank: cell(row, cCrank, v.Of(measure.CrankLength)), CrankAngle: 90}
}
