package frame

import (
	"plumbline/calculators"
	"plumbline/calculators/fit"
	"plumbline/calculators/geometry"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

func explainGeometry(v calculators.Values, r *calculators.Result) {
	b, p := fit.Bike(v)
	if p != nil {
		return
	}
	r.At(frontCentre).Meaning = words.Of("Stand with the weight over the crank axle and {0} of it rests on the "+
		"front wheel. A long front-centre is calm on steep ground; in flat turns you lean forward to load the front "+
		"tyre.",
		r.At(standingShare).Uncertain())
	r.At(bbHeight).Meaning = words.Of("The bottom bracket hangs {0} below the line between the axles. Lower feels "+
		"planted in a turn and strikes pedals sooner; the rider’s weight takes off some more when you ride.",
		measure.Millimetres(b.Drop()))
	r.At(trail).Meaning = words.Of("This pulls the wheel straight: more is steady at speed and needs a firmer hand "+
		"at walking pace. With the head angle one degree slacker it would be {0}.",
		measure.Millimetres(geometry.Trail(b.FrontRadius, b.HeadAngle-1, b.Offset)))
	r.At(effectiveTopTube).Meaning = topTubeMeaning(b)
	r.At(wheelbase).Meaning = words.Of("Longer is calmer in a straight line and takes a wider turn. {0} of it lie "+
		"behind the crank axle.", measure.Millimetres(-b.Rear.X))
	r.At(mechanicalTrail).Meaning = words.Of("The arm on which side forces at the tyre turn the bar.")
	r.At(wheelFlop).Meaning = words.Of("How strongly the bar falls into a turn at walking pace. With the hands off "+
		"the bar, the head sinks {0} in the first 10 degrees of turning.",
		measure.Amount{Value: geometry.HeadDrop(b.FrontRadius, b.HeadAngle, b.Offset, 10), Unit: measure.Mm, Extra: 1})
	explainSeatAngle(v, b, r.At(saddleSeatAngle))
	explainMismatch(v, r)
	r.Figure = geometryFigure(v, b, r)
}

// topTubeMeaning says what the length does, and how a higher bar eats it.
func topTubeMeaning(b geometry.Bike) words.Text {
	const higher = 20
	change := b.RoomAt(b.Stack()+higher) - b.EffectiveTopTube()
	if change > 0 {
		return words.Of("The room you feel seated. On this bike a bar {0} higher, on the same steering axis, is "+
			"{1} further from the seat line.", measure.Millimetres(higher), measure.Millimetres(change))
	}
	return words.Of("The room you feel seated. Every {0} that the bar goes up, on the same steering axis, takes "+
		"{1} off it, because the axis leans back more than the seat does.", measure.Millimetres(higher),
		measure.Millimetres(-change))
}

func explainSeatAngle(v calculators.Values, b geometry.Bike, x *calculators.Answer) {
	switch {
	case !v.Given(measure.SaddleHeight):
		x.Meaning = words.Of("Give {0} to have it. On most bikes the seat slackens as the saddle goes up.",
			measure.SaddleHeight.Named())
	case !b.SeatTubeKnown:
		x.Meaning = words.Of("Give {0} to have it: without it we cannot tell where the tube points above the "+
			"height that the chart uses, and we do not guess.", measure.SeatTubeAngle.Named())
	case !x.Exists():
		x.Meaning = words.Of("This seat tube passes the crank axle at a greater distance than your saddle’s "+
			"height. Check {0} and {1}.", measure.SeatTubeAngle.Named(), measure.SeatAngle.Named())
	default:
		x.Meaning = words.Of("This is the angle you pedal at, against {0} on the chart. The further it lies below "+
			"that, the further a rider with long legs sits behind the pedals.",
			measure.Degrees(v.Of(measure.SeatAngle)))
	}
}

// checkNames name the comparisons.
var checkNames = [checks]words.Text{
	cFork:        words.Of("Fork, from head tube and stack"),
	cWheelbase:   words.Of("Wheelbase, from the frame"),
	cFrontCentre: words.Of("Front-centre, from reach and head angle"),
	cTopTube:     words.Of("Effective top tube, from the seat angle"),
	cHeight:      words.Of("Bottom-bracket height, from drop and tyres"),
}

// implied returns the answer or working that a comparison is made with.
func implied(r *calculators.Result, check int) *calculators.Answer {
	switch check {
	case cFork:
		return r.At(forkRoom)
	case cWheelbase:
		return r.At(wheelbase)
	case cFrontCentre:
		return r.At(frontCentre)
	case cTopTube:
		return r.At(effectiveTopTube)
	}
	return r.At(bbHeight)
}

// explainMismatch tells whether the chart agrees with itself and, where it does
// not, which entry alone could be the slip.
func explainMismatch(v calculators.Values, r *calculators.Result) {
	x := r.At(chartMismatch)
	if !x.Exists() {
		x.Meaning = words.Of("Nothing to compare yet. Give the fork’s length and the head tube, or a printed " +
			"wheelbase, front-centre or effective top tube, and the chart is checked against itself.")
		return
	}
	s := stateChart(v)
	all, _ := s.gaps()
	r.Tables = append(r.Tables, checkTable(r, all))
	if x.Value == 0 {
		x.Meaning = words.Of("The numbers agree as well as their rounding lets them.")
		if all[cFork].made && !s.cupKnown {
			x.Meaning = words.Of("The numbers agree as well as their rounding and the unknown lower headset cup " +
				"let them.")
		}
		return
	}
	x.Meaning = verdict(s.suspects())
	r.Note(calculators.CheckNote,
		"The chart contradicts itself. {0}", x.Meaning)
}

// verdict names the likeliest wrong entry, or says that the data cannot tell.
func verdict(list []suspect) words.Text {
	switch len(list) {
	case 0:
		return words.Of("No single entry explains it, so at least two are off, or a comparison is made with " +
			"another fork or tyre than the chart’s. Copy the chart again.")
	case 1:
		f := list[0]
		q := chartEntries[f.entry].Quantity
		if f.high-f.low <= 2*chartEntries[f.entry].step {
			return words.Of("Look at {0} first: at {1} everything would agree, and no other single entry does that.",
				q.Named(), q.Amount((f.low+f.high)/2))
		}
		return words.Of("Look at {0} first: between {1} and {2} everything would agree, and no other single entry "+
			"does that.", q.Named(), q.Amount(f.low), q.Amount(f.high))
	}
	names := words.List{}
	for _, f := range list {
		names = append(names, chartEntries[f.entry].Named())
	}
	return words.Of("Cannot tell which entry is wrong: {0} would each explain it alone. Another printed number, "+
		"such as the wheelbase or the front-centre, may decide.", names)
}

// checkTable lists the comparisons that were made.
func checkTable(r *calculators.Result, all [checks]gap) calculators.Table {
	t := calculators.Table{Name: "checks", Caption: words.Of("The chart against itself"), Folded: true,
		Columns: []calculators.Column{
			{Name: "check", Label: words.Of("What is compared")},
			{Name: "stated", Label: words.Of("Printed"), Unit: "mm"},
			{Name: "implied", Label: words.Of("From the rest"), Unit: "mm"},
			{Name: "uncertainty", Label: words.Of("±"), Unit: "mm"},
			{Name: "least", Label: words.Of("Apart, least allowed"), Unit: "mm"},
			{Name: "apart", Label: words.Of("Apart"), Unit: "mm"},
			{Name: "most", Label: words.Of("Apart, most allowed"), Unit: "mm"},
		}}
	for i, g := range all {
		if !g.made {
			continue
		}
		from := implied(r, i)
		t.Rows = append(t.Rows, []words.Sayer{checkNames[i], measure.Millimetres(g.stated), from.Amount(),
			measure.Error{Amount: from.Margin()},
			fine(g.low), fine(g.apart), fine(g.high)})
	}
	return t
}

// fine is a length said to a tenth of a millimetre.
func fine(x float64) measure.Amount { return measure.Amount{Value: x, Unit: measure.Mm, Extra: 1} }
