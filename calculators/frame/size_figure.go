package frame

import (
	"math"
	"slices"

	"plumbline/calculators"
	"plumbline/calculators/drawing"
	"plumbline/calculators/figure"
	"plumbline/calculators/fit"
	"plumbline/calculators/geometry"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// drawnSizes is how many sizes are drawn: more than a maker builds of one bike are seldom
// compared.
const drawnSizes = 6

// sizeFigure draws the reader on each size, all to one scale and in the order of the
// table, with the reader's own grips marked.
func sizeFigure(v calculators.Values, all []sized) *drawing.Figure {
	f := &drawing.Figure{Title: words.Of("You on each size"), Least: 11.4}
	m := matcherOf(v)
	drawn := inOrder(v, all)
	if len(drawn) == 0 {
		f.Title = words.Of("No size to draw yet")
		f.Description = words.Of("No line of the table describes a bike, so a stand-in is drawn.")
		f.Add(figure.Scene(figure.Demo(v.Of(measure.Inseam), v.Of(measure.SaddleHeight)), nil)...)
		return f
	}
	var said words.List
	for i, s := range drawn {
		marks, grips, has := m.onSize(s.row)
		if !math.IsNaN(m.target.X) {
			marks = append(marks, drawing.Circle{Role: drawing.Hot, Pen: drawing.Heavy, Centre: grips, Radius: 34},
				drawing.Cross{Role: drawing.Hot, At: grips, Size: 34})
			if i == 0 {
				marks = append(marks, drawing.Label{Role: drawing.Hot, At: grips.Plus(drawing.Point{X: 34, Y: 130}),
					Side: drawing.Point{X: 1}, Text: words.Of("grips now"), Fixed: true})
			}
		}
		caption := sizeCaption(s, s.row.Name == all[0].row.Name)
		said = append(said, caption)
		frame := drawing.Frame{Caption: caption, Marks: marks}
		// A disc inside the ring is not seen as two.
		if apart := has.Minus(grips).Length(); apart > 1 && apart < 200 {
			frame.Details = []drawing.Detail{{At: has.Plus(grips).Times(0.5), Radius: max(60, 0.5*apart+40),
				Caption: words.Of("the grips now, in the ring"), Apart: apart / 2, Marks: []drawing.Mark{
					drawing.Circle{Role: drawing.Ink, Fill: drawing.Sheet, Centre: has, Radius: 16},
					drawing.Line{Role: drawing.Hot, Points: []drawing.Point{has, grips}}}}}
		}
		f.Frames = append(f.Frames, frame)
	}
	f.Description = words.Of(
		"The same rider on the sizes of one bike from the side, at sag and to one scale, each with the "+
			"same bar and spacers and the saddle at {0}. A ring marks where the rider’s own grips are. {1}.",
		measure.SaddleHeight.Amount(v.Of(measure.SaddleHeight)),
		said,
	)
	return f
}

// inOrder returns the sizes that make a bike in the order of the table, the nearest ones
// where there are too many.
func inOrder(v calculators.Values, all []sized) (drawn []sized) {
	place := map[string]int{}
	for i, row := range v.Rows(measure.Sizes) {
		place[row.Name] = i
	}
	for _, s := range all {
		if _, ok := sizeBike(s.row); ok && len(drawn) < drawnSizes {
			drawn = append(drawn, s)
		}
	}
	slices.SortStableFunc(drawn, func(a, b sized) int { return place[a.row.Name] - place[b.row.Name] })
	return drawn
}

// sizeCaption says in a few words what a size comes to.
func sizeCaption(s sized, first bool) words.Text {
	name := words.Name(s.row.Name)
	switch {
	case s.out:
		return words.Of("{0}: cannot be set up", name)
	case math.IsNaN(s.gap):
		return words.Of("{0}", name)
	case first:
		return words.Of("{0}: closest, grips {1} off", name, measure.Millimetres(s.gap))
	}
	return words.Of("{0}: grips {1} off", name, measure.Millimetres(s.gap))
}

// onSize draws the rider on a row's bike at sag and returns where the rider's own grips
// are on it, and the bike's. Without a posture that reaches pedals and grips the bike stands alone.
func (m *matcher) onSize(row calculators.Row) (marks []drawing.Mark, own, has drawing.Point) {
	b, _ := sizeBike(row)
	d := sizeBuild(m.v, row, b)
	d.Crank = m.feet.Crank
	if d.Crank <= 0 {
		d.Crank = m.crank
	}
	d.RearTravel = cell(row, cRearTravel, 0)
	grips := m.target
	sagged, err := geometry.Sagged(b, cell(row, cForkTravel, 0), m.sagFront, d.RearTravel, m.sagRear)
	if err != nil {
		return figure.Scene(d, nil), figure.At(grips), d.Grip()
	}
	tilt := sagged.HeadAngle - b.HeadAngle
	grips = grips.Turn(-tilt)
	saddle, placed := b.SaddlePoint(m.saddle)
	saddle = saddle.Turn(-tilt)
	d = d.Sagging(sagged)
	if on, ok := sagged.SaddlePoint(d.Saddle); ok && placed {
		d.Back = on.X - saddle.X
	}
	if !placed || !m.hasLeg {
		return figure.Scene(d, nil), figure.At(grips), d.Grip()
	}
	sitter, ok := fit.Sit(m.leg, m.feet, m.upper, saddle)
	if !ok {
		return figure.Scene(d, nil), figure.At(grips), d.Grip()
	}
	hold, ok := d.Cockpit.Hold(d.Bike)
	if !ok {
		return figure.Scene(d, nil), figure.At(grips), d.Grip()
	}
	s, ok := sitter.Reach(hold.Grip, fit.SeatedElbow)
	if !ok {
		return figure.Scene(d, nil), figure.At(grips), d.Grip()
	}
	d.PedalAngle, d.FarPedalAngle = s.Near.HeelUp, s.Far.HeelUp
	pose := figure.Legs(s.Near, &s.Far, s.SoleHeight).Hold(s.Trunk.Shoulder, s.Elbow, s.Grip)
	return figure.Scene(d, &pose), figure.At(grips), d.Grip()
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
