package frame

import (
	"math"

	"plumbline/calculators"
	"plumbline/calculators/drawing"
	"plumbline/calculators/figure"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// Stills are the standing figures of this section that no number of a reader changes.
func Stills() []*calculators.Illustration {
	return []*calculators.Illustration{{Name: "chart-and-bike", Draw: chartAndBike}}
}

// The column of the drawn chart, mm on the drawing: its edges, its upper end, and the
// height of a row.
const chartLeft, chartRight, chartTop, chartRow = -640.0, 690.0, 1850.0, 118.0

// chartLine is a row of the chart, and the way from it to what it measures.
type chartLine struct {
	name  words.English
	value measure.Amount
	way   []drawing.Point // from the row's edge on; the first point's height is the row's
	what  drawing.Mark
}

// chartAndBike draws a maker's chart over the bike that it describes, a line from each
// number to where that is on the bike. The rows stand so that no line crosses another but
// one.
func chartAndBike(calculators.Values) *drawing.Figure {
	b := figure.Demo(drawnInseam, 0.88*drawnInseam)
	b.CrankAngle = 90
	top, rear, front := figure.At(b.Bike.HeadTop), figure.At(b.Bike.Rear), figure.At(b.Bike.Front)
	seat := 180 - b.Bike.SeatAngle
	post := drawing.Polar(seat, top.Y/math.Sin(seat*math.Pi/180))
	turns := figure.At(b.Bike.AxisGround())
	turns = turns.Along(top.Minus(turns).Unit(), 880)
	base := figure.Wheelbase(b, drawing.Hot, 1, words.Text{}).(drawing.Dimension)
	stay := drawing.Dimension{Role: drawing.Hot, A: rear, B: at(0, 0), Offset: -500}
	under := rear.Along(rear.Unit().Left(), 500)
	stack := b.Bike.Front.X - b.Bike.FrontRadius - 90
	const reachUp, seatArc, headArc = 205.0, 250.0, 320.0
	whole := func(mm float64) measure.Amount { return measure.Millimetres(math.Round(mm)) }
	lines := []chartLine{
		{"Wheelbase", whole(front.X - rear.X), []drawing.Point{{X: 1190}, {X: 1190, Y: base.A.Y + base.Offset},
			{X: front.X, Y: base.A.Y + base.Offset}}, base},
		{"Chainstay", whole(rear.Length()), []drawing.Point{{X: -870}, {X: -870, Y: under.Y}, under}, stay},
		{"Head angle", measure.Degrees(b.Bike.HeadAngle), []drawing.Point{{X: turns.X + 0.98*headArc},
			turns.Plus(drawing.Polar(-11, headArc))}, drawing.Angle{Role: drawing.Hot, Vertex: turns,
			From: -b.Bike.HeadAngle, To: 0, Radius: headArc, ArmTo: headArc + 40}},
		{"Eff. top tube", whole(top.X - post.X), []drawing.Point{{X: 786}, {X: 786, Y: top.Y}, top},
			drawing.Dimension{Role: drawing.Hot, A: post, B: top}},
		{"Reach", whole(top.X), []drawing.Point{{X: 736}, {X: 736, Y: top.Y + reachUp}, {X: top.X, Y: top.Y + reachUp}},
			figure.Level(drawing.Hot, at(0, top.Y), top, top.Y+reachUp, words.Text{})},
		{
			"Seat angle",
			measure.Degrees(b.Bike.SeatAngle),
			[]drawing.Point{{X: chartLeft - 60}, {X: chartLeft - 60, Y: chartTop - 7.2*chartRow},
				drawing.Polar(seat+38, seatArc)},
			drawing.Angle{
				Role:   drawing.Hot,
				Vertex: at(0, 0),
				From:   seat,
				To:     180,
				Radius: seatArc,
				ArmTo:  seatArc + 40,
			},
		},
		{"Stack", whole(top.Y), []drawing.Point{{X: stack, Y: top.Y}},
			figure.Upright(drawing.Hot, at(0, 0), top, stack, words.Text{})},
	}
	f := &drawing.Figure{Title: words.Of("The numbers of a chart on the bike"), Upright: true}
	f.Add(figure.Scene(b, nil)...)
	f.Add(drawing.Axis{Role: drawing.Soft, A: at(0, 0), B: post}, figure.SteeringAxis(b))
	var said words.List
	for i, l := range lines {
		f.Add(l.what, l.lead(i, len(lines)))
		said = append(said, words.Of("{0} {1}", words.Of(l.name), l.value))
	}
	f.Add(chartPaper(len(lines))...)
	for i, l := range lines {
		y := rowAt(i)
		f.Add(
			drawing.Label{Role: drawing.Ink, At: at(chartLeft, y), Side: at(1, 0), Text: words.Of(l.name), Fixed: true},
			drawing.Label{Role: drawing.Hot, At: at(chartRight, y), Side: at(-1, 0), Text: words.Of("{0}", l.value),
				Fixed: true},
		)
	}
	f.Description = words.Of("One column of a maker’s chart above the bike that it describes, with a line from each "+
		"number to its place on the bike: {0}. The wheelbase lies below the wheels, the chainstay from rear axle to "+
		"crank axle. The head angle is that between fork and ground, the seat angle that between the line of the seat "+
		"and the ground. The effective top tube runs level from the line of the seat to the top of the head tube, "+
		"and reach and stack go from the crank axle to the same point, one ahead and one up.", said)
	return f
}

// rowAt is the height of the middle of a row, from 0.
func rowAt(i int) float64 { return chartTop - chartRow*(float64(i)+0.5) }

// lead is the line from the i-th of n rows to the place on the bike: from the side on which
// its first point lies, or from below the last row.
func (l chartLine) lead(i, n int) drawing.Mark {
	first := l.way[0]
	from := at(chartRight, rowAt(i))
	switch {
	case i == n-1:
		from = at(first.X, chartTop-chartRow*float64(n))
	case first.X < chartLeft/4:
		from.X = chartLeft
	}
	if i < n-1 {
		first.Y = from.Y
	}
	return drawing.Line{
		Role:   drawing.Hot,
		Pen:    drawing.Thin,
		Points: append([]drawing.Point{from, first}, l.way[1:]...),
	}
}

// chartPaper is the sheet of the chart, a rule below each of its rows.
func chartPaper(rows int) []drawing.Mark {
	low := chartTop - chartRow*float64(rows)
	m := []drawing.Mark{drawing.Line{Role: drawing.Ink, Fill: drawing.Sheet, Closed: true, Points: []drawing.Point{
		at(chartLeft, low), at(chartRight, low), at(chartRight, chartTop), at(chartLeft, chartTop)}}}
	for i := range rows - 1 {
		y := chartTop - chartRow*float64(i+1)
		m = append(m, drawing.Line{Role: drawing.Soft, Pen: drawing.Thin,
			Points: []drawing.Point{at(chartLeft, y), at(chartRight, y)}})
	}
	return m
}
