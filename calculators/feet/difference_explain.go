package feet

import (
	"math"

	"plumbline/calculators"
	"plumbline/calculators/drawing"
	"plumbline/calculators/figure"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

func explainDifference(v calculators.Values, r *calculators.Result) {
	found, advice := r.At(legDifference), r.At(shim)
	found.Meaning = foundMeaning(float64(found.Value), float64(found.Uncertainty))
	advice.Meaning = shimMeaning(v, float64(found.Value))
	if v.Is(measure.WarningSign, "some") {
		// The warning comes before any number is explained.
		r.Notes = append([]calculators.Note{{Kind: calculators.CheckNote,
			Text: words.Of("You said that something hurts " +
				"or that the difference is new: see a clinician before any measuring or fitting.")}}, r.Notes...)
	}
	r.Tables = append(r.Tables, bikeFirst(), waysToMeasure())
	noteDifference(v, r)
	r.Figure = differenceFigure(found, float64(found.Uncertainty))
}

// tenths says a length to a tenth of a millimetre.
func tenths(x float64) measure.Amount { return measure.Amount{Value: x, Unit: measure.Mm, Extra: 1} }

// foundMeaning reads the difference against its error, and against what people have.
func foundMeaning(value, error float64) words.Text {
	usual, spread := tenths(usualDifference), tenths(usualDifferenceSD)
	switch {
	case value <= error:
		return words.Of("Read the ± first: it is as large as the value or larger, so this cannot be told from no "+
			"difference at all. It may well be real: nine people in ten have one, {0} on average, give or take {1}.",
			usual,
			spread)
	case value >= matteringFrom:
		return words.Of("From about {0} a difference is thought to matter. Take it to a clinician before you change "+
			"anything.",
			measure.Millimetres(matteringFrom))
	case value > usualDifference+2*usualDifferenceSD:
		return words.Of("More than the measuring error, and more than nineteen people in twenty have: {0} on "+
			"average, give or take {1}. A clinician can tell whether it is in the bones or in how you stand.",
			usual, spread)
	}
	return words.Of("More than the measuring error, and within what people have: nine in ten have some, {0} on "+
		"average, give or take {1}, and most bikes hide it. A clinician can tell whether it is in the bones or in "+
		"how you stand.", usual,
		spread)
}

// shimMeaning says why there is no shim, or what the one to talk over is.
func shimMeaning(v calculators.Values, value float64) words.Text {
	clinician := v.Is(measure.DifferenceFound, "clinician")
	switch {
	case v.Is(measure.WarningSign, "some"):
		return words.Of("None. With one of these signs see a clinician, whatever boards or a tape show. Leave the " +
			"bike until then.")
	case !clinician && value > shimTo:
		return words.Of("None: there is no shim from a reading at home. A difference over {0} belongs to a "+
			"clinician; take your notes along.", measure.Millimetres(shimTo))
	case v.Is(measure.DifferenceFound, "blocks"):
		return words.Of("None: there is no shim from a reading at home, boards included. Check the bike first, as " +
			"in the table.")
	case !clinician:
		return words.Of("None: there is no shim from a tape reading. Check the bike first, as in the table, and " +
			"measure again with boards.")
	case value > shimTo:
		return words.Of("None from here: over {0} the clinician who measured it decides.", measure.Millimetres(shimTo))
	case value < shimFrom:
		return words.Of("None: under {0} nobody could show that it matters on a bike.", measure.Millimetres(shimFrom))
	}
	return words.Of("About half of the difference; go on from there in small steps. Take it to the appointment to " +
		"talk about it. Do not build it.")
}

// waysToMeasure compares boards and tape with a picture of the bones.
//
// Source: Badii and others 2014, J Rheumatol 41:1689-1694 (abstract).
func waysToMeasure() calculators.Table {
	t := calculators.Table{Name: "ways", Caption: words.Of("Boards and tape against X-ray, in 20 people"), Starred: 1,
		Columns: []calculators.Column{
			{Name: "way", Label: words.Of("Way")},
			{Name: "wrong-leg", Label: words.Of("Named the wrong leg, of 20")},
			{Name: "off", Label: words.Of("Average error"), Unit: "mm"},
			{Name: "found", Label: words.Of("Differences over 5 mm that it found"), Unit: "%"},
			{Name: "cleared", Label: words.Of("Smaller ones that it cleared"), Unit: "%"},
		}}
	row := func(way words.Text, wrong, off, found, cleared float64) {
		t.Rows = append(t.Rows, []words.Sayer{way, measure.Amount{Value: wrong, Unit: measure.One},
			measure.Millimetres(off),
			measure.Percentage(found), measure.Percentage(cleared)})
	}
	row(words.Of("Boards under the shorter leg until the hip crests are level"), 1, 2, 55, 89)
	row(words.Of("Tape, lying, from the front hip point to the inner ankle"), 7, 5, 45, 56)
	return t
}

func noteDifference(v calculators.Values, r *calculators.Result) {
	if v.Is(measure.DifferenceFound, "home") {
		r.Note(calculators.CheckNote, "A tape is the weaker way: in 20 people it named the wrong leg seven times, "+
			"boards under the foot once. Measure with boards; if there are none, take the tape twice on each side "+
			"and use the means.")
	}
	r.Note(calculators.PlainNote, "Known well: nearly everyone has a small difference, and boards show it better "+
		"than a tape. Known poorly: whether a small one hurts. In 114 meat cutters it went with back pain in those "+
		"who stand at work, not in those who sit, and on a bike you sit. Not known at all: from where it matters on "+
		"a bike.")
	r.Note(calculators.PlainNote, "In the one randomised trial, standing workers with back pain had less of it with "+
		"insoles for 70 % of the difference. Fitters begin with about half: common practice.")
	r.Note(calculators.PlainNote, "Set the saddle for the leg that reaches less far and let the other bend more. A "+
		"little too low for one leg is kinder than too high for the other.")
	r.Note(calculators.PlainNote, "No wedge and no stack under a cleat is advised here. A stack takes thread from "+
		"the cleat’s bolts, changes the release and raises the foot.")
}

// bikeFirst lists what on a bike looks like a short leg.
func bikeFirst() calculators.Table {
	t := calculators.Table{Name: "bike-first", Caption: words.Of("Check the bike first, and ride after each thing " +
		"you put right"), Columns: []calculators.Column{
		{Name: "part", Label: words.Of("Look at")}, {Name: "question", Label: words.Of("Ask")},
	}}
	for _, row := range [7][2]words.Text{
		{words.Of("Saddle"), words.Of("Straight ahead, rails not bent, worn alike on both sides? Too high makes " +
			"almost everyone sit to one side: try 5 mm lower.")},
		{words.Of("Cranks"), words.Of("Both arms of one length, neither bent?")},
		{words.Of("Pedals and shoes"), words.Of("The same model, the same insoles, the same wear?")},
		{words.Of("Cleats"), words.Of("Each in the same place on its own foot, not on the shoe?")},
		{words.Of("Bar"), words.Of("Both grips at one height and distance?")},
		{words.Of("Pelvis"), words.Of("A wallet or a pack on one side, a stiff hip, an old habit of sitting " +
			"crooked?")},
		{words.Of("How it was measured"), words.Of("Three times, by a helper, on two days, and the middle value?")},
	} {
		t.Rows = append(t.Rows, []words.Sayer{row[0], row[1]})
	}
	return t
}

// differenceFigure lays the reading with its ± on a ruler, and below it the lengths at
// which it means something, each in a row of its own.
func differenceFigure(found *calculators.Answer, error float64) *drawing.Figure {
	value := float64(found.Value)
	from, to := math.Min(value-error, -5), math.Max(value+error, 15)
	p := figure.Plot{Low: figure.Point{X: 0, Y: 0}, High: figure.Point{X: 320, Y: 46}, From: figure.Point{X: from,
		Y: 0}, To: figure.Point{X: to, Y: 1}}
	f := &drawing.Figure{Title: words.Of("The difference and its ± on a ruler"),
		Description: words.Of("A ruler in millimetres of difference. The reading of {0} is drawn as a bar as wide "+
			"as its error. Below {1} a difference is too small to matter, from {1} to {2} it is a question for a "+
			"clinician, and above {2} a clinician decides.", found.Uncertain(), measure.Millimetres(shimFrom),
			measure.Millimetres(shimTo))}
	tick := func(x float64, text words.Text) {
		f.Add(drawing.Line{Role: drawing.Soft, Pen: drawing.Thin, Points: []figure.Point{p.At(x, 0), p.At(x, 0.45)}},
			drawing.Label{Role: drawing.Soft, At: p.At(x, 0), Side: figure.Point{Y: -1}, Text: text, Fixed: true})
	}
	f.Add(drawing.Line{Role: drawing.Ink, Points: []figure.Point{p.At(from, 0), p.At(to, 0)}})
	tick(0, words.Of("0"))
	tick(shimFrom, words.Of("{0}", measure.Bare{Amount: measure.Millimetres(shimFrom)}))
	tick(shimTo, words.Of("{0}", measure.Millimetres(shimTo)))
	zone := func(row int, low, high, side float64, english words.English) {
		y := -0.95 - 0.75*float64(row)
		end := func(x float64) drawing.Mark {
			return drawing.Line{Role: drawing.Ink, Points: []figure.Point{p.At(x, y-0.09), p.At(x, y+0.09)}}
		}
		at := high
		if side < 0 {
			at = low
		}
		f.Add(drawing.Line{Role: drawing.Ink, Points: []figure.Point{p.At(low, y), p.At(high, y)}}, end(low), end(high),
			drawing.Label{Role: drawing.Ink, At: p.At(at, y), Side: figure.Point{X: side}, Text: words.Of(english),
				Fixed: true})
	}
	zone(0, 0, shimFrom, 1, "too small to matter")
	zone(1, shimFrom, shimTo, 1, "ask a clinician")
	zone(2, shimTo, to, -1, "a clinician decides")
	bar := func(x, low, high float64) drawing.Mark {
		return drawing.Line{Role: drawing.Body, Points: []figure.Point{p.At(x, low), p.At(x, high)}}
	}
	if error > 0 {
		f.Add(p.Band(drawing.Body, drawing.Hatch, figure.Point{X: value - error, Y: 0.62},
			figure.Point{X: value + error,
				Y: 0.88}))
	}
	f.Add(bar(value, 0.55, 0.95),
		drawing.Label{Role: drawing.Body, At: p.At(value, 0.95), Side: figure.Point{Y: 1}, Text: words.Of("the "+
			"reading, {0}",
			found.Uncertain()), Fixed: true})
	return f
}
