package cockpit

import (
	"math"

	"plumbline/calculators"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

func explainWidth(v calculators.Values, r *calculators.Result) {
	x := r.At(barWidth)
	low, high := widthRange(v)
	x.Low, x.High = calculators.Number(low), calculators.Number(high)
	x.Meaning = widthMeaning(v, float64(x.Value), low, high)
	start := sold(float64(x.Value))
	explainSpread(r.At(armSpread), v, r)
	lost := r.At(reachLost)
	lost.Meaning = words.Of("Straight arms lose {0} when they spread further, and the bar’s sweep brings the grips "+
		"back by {1}. What is left is small: a stem {2} longer moves the grips {3}. So change the stem for what "+
		"you feel standing and seated, not for the bar’s width.",
		r.At(armsLose).Amount(), r.At(sweepGives).Amount(), measure.Millimetres(stemStep), r.At(stemMoves).Amount())
	if !lost.Exists() {
		lost.Meaning = words.Of("Your arms do not span a bar this wide. Check {0} and {1}.",
			measure.ShoulderWidth.Named(), measure.ArmLength.Named())
	}
	r.Tables = append(r.Tables, widthTable(v, start), methodsTable(v, r))
	if v.Has(measure.BarWidth) {
		if t, ok := trimTable(v, start); ok {
			r.Tables = append(r.Tables, t)
		}
	}
	noteGap(v, r, start)
	r.Note(calculators.PlainNote, "There is no single right width: shoulders, arms, trails and habit decide, and "+
		"no study of width on mountain bikes was found. In ten women a road bar about as wide as the shoulders "+
		"took the least work from the arms; a smooth road asks for less control than a trail.")
	r.Note(calculators.PlainNote, "Test a narrower bar without a saw: slide the controls in by 5 mm on each side, "+
		"ride twice, and go on or go back. Cut last, and leave 5 mm on each side.")
	r.Note(calculators.PlainNote, "Aching shoulders or sore outer palms may come from a wide bar: controls in by "+
		"one step first. Tingling that comes back or outlasts the ride is a reason to stop and see a clinician.")
	r.Figure = widthFigure(v, r)
}

// widthRange returns the range to test in, mm: round the press-up width where
// that was taken, else by how far arms spread on bars that riders are content
// with.
func widthRange(v calculators.Values) (low, high float64) {
	if v.Has(measure.PushUpWidth) {
		w := v.Of(measure.PushUpWidth)
		return sold(w - pressUpRoom), sold(w + pressUpRoom)
	}
	return sold(widthAt(v, spreadFrom)), sold(widthAt(v, spreadTo))
}

// sold returns the width nearest to a width that bars are sold in, mm.
func sold(width float64) float64 { return max(soldFrom, min(soldTo, width)) }

func widthMeaning(v calculators.Values, body, low, high float64) words.Text {
	lo, hi := measure.Millimetres(low), measure.Millimetres(high)
	switch {
	case body > soldTo:
		return words.Of("Bars are not sold that wide: {0} is about the widest. Try anything from {1} to {2}. There "+
			"is no single right number.", measure.Millimetres(soldTo), lo, hi)
	case body < soldFrom:
		return words.Of("Trail bars are not sold that narrow: {0} is about the narrowest, and some may be cut "+
			"further. Start with a bar whose maker allows that.", measure.Millimetres(soldFrom))
	}
	if !v.Has(measure.BarWidth) {
		return words.Of("Try anything from {0} to {1}. There is no single right number.", lo, hi)
	}
	bar := v.Of(measure.BarWidth)
	now := measure.Millimetres(bar)
	switch {
	case bar > high:
		return words.Of("Anything from {0} to {1} is worth trying. The bar of {2} is wider: slide the controls in "+
			"before you think of cutting.", lo, hi, now)
	case bar < low:
		return words.Of("Anything from {0} to {1} is worth trying. The bar of {2} is narrower: borrow a wider one "+
			"before you buy.", lo, hi, now)
	}
	return words.Of("Anything from {0} to {1} is worth trying. The bar of {2} lies inside, so there may be nothing "+
		"to do.", lo, hi, now)
}

func explainSpread(x *calculators.Answer, v calculators.Values, r *calculators.Result) {
	if !x.Exists() {
		x.Meaning = words.Of("Your arms do not span a bar this wide. Check {0} and {1}.",
			measure.ShoulderWidth.Named(), measure.ArmLength.Named())
		return
	}
	x.Low, x.High = spreadFrom, spreadTo
	if now := r.At(spreadNow); now.Exists() {
		x.Meaning = words.Of("On the bar now it is {0}. Common practice lies between {1} and {2}: more turns the "+
			"elbows out and straight and bends the wrists, less tucks the elbows in.",
			now.Uncertain(), measure.Degrees(spreadFrom), measure.Degrees(spreadTo))
		return
	}
	x.Meaning = words.Of("Common practice lies between {0} and {1}: more turns the elbows out and straight and "+
		"bends the wrists, less tucks the elbows in.", measure.Degrees(spreadFrom), measure.Degrees(spreadTo))
}

// widthTable says what each step in width does.
func widthTable(v calculators.Values, start float64) calculators.Table {
	t := calculators.Table{Name: "widths", Caption: words.Of("What each step of {0} does, with straight arms and "+
		"the bar’s sweep",
		measure.Millimetres(widthStep)),
		Columns: []calculators.Column{
			{Name: "width", Label: words.Of("Bar"), Unit: "mm"},
			{Name: "spread", Label: words.Of("Arms spread"), Unit: "deg"},
			{Name: "reach", Label: words.Of("Reach against the start"), Unit: "mm"},
		}}
	for i := -3; i <= 3; i++ {
		w := start + widthStep*float64(i)
		if spread := spreadOn(v, w); !math.IsNaN(spread) && !math.IsNaN(reachOn(v, start)) {
			t.Rows = append(t.Rows, []words.Sayer{measure.Millimetres(w), measure.Degrees(spread),
				measure.Difference{Amount: tenth(reachLeft(v, w, start))}})
			if i == 0 {
				t.Starred = len(t.Rows)
			}
		}
	}
	return t
}

// methodsTable shows both ways to a width.
func methodsTable(v calculators.Values, r *calculators.Result) calculators.Table {
	t := calculators.Table{Name: "methods", Caption: words.Of("Two ways to a starting point"), Folded: true,
		Columns: []calculators.Column{
			{Name: "method", Label: words.Of("Way")}, {Name: "width", Label: words.Of("Bar"), Unit: "mm"},
			{Name: "range", Label: words.Of("Range worth a test")},
		}}
	if w := r.At(byPressUp); w.Exists() {
		x := float64(w.Value)
		t.Rows = append(t.Rows, []words.Sayer{w.Label, w.Uncertain(),
			words.Of("{0} to {1}", measure.Millimetres(sold(x-pressUpRoom)),
				measure.Millimetres(sold(x+pressUpRoom)))})
	}
	w := r.At(byShoulders)
	t.Rows = append(t.Rows, []words.Sayer{w.Label, w.Uncertain(),
		words.Of("{0} to {1}", measure.Millimetres(sold(widthAt(v, spreadFrom))),
			measure.Millimetres(sold(widthAt(v, spreadTo))))})
	return t
}

// trimTable lists the steps from the bar now to the start of the test, 5 mm a
// side, with what stands against each.
func trimTable(v calculators.Values, start float64) (calculators.Table, bool) {
	bar := v.Of(measure.BarWidth)
	t := calculators.Table{Name: "trim", Caption: words.Of("The test, one step after the other: controls and grips " +
		"inwards, nothing cut"),
		Columns: []calculators.Column{
			{Name: "in", Label: words.Of("In, each side"), Unit: "mm"},
			{Name: "width", Label: words.Of("As a bar of"), Unit: "mm"}, {Name: "mark", Label: words.Of("To know")},
		}}
	for n := 1; n <= 12; n++ {
		w := bar - 10*float64(n)
		if w < start-pressUpRoom {
			break
		}
		t.Rows = append(t.Rows, []words.Sayer{measure.Millimetres(5 * float64(n)), measure.Millimetres(w),
			trimMark(v, w, 5*float64(n))})
	}
	return t, len(t.Rows) > 0
}

// trimMark says whether a step can be ridden and, later, cut.
func trimMark(v calculators.Values, width, in float64) words.Text {
	if v.Has(measure.BarStraight) && v.Has(measure.ControlsWidth) {
		room := v.Of(measure.BarStraight) - in - v.Of(measure.GripLength) - v.Of(measure.ControlsWidth)
		if room < 0 {
			return words.Of("the controls reach {0} into the bend: the test ends before this",
				measure.Millimetres(-room))
		}
	}
	if v.Has(measure.BarLimit) && width < v.Of(measure.BarLimit) {
		return words.Of("may be tested, but not cut: the maker’s least is {0}",
			measure.Millimetres(v.Of(measure.BarLimit)))
	}
	if !v.Has(measure.BarLimit) {
		return words.Of("look up the maker’s least width before you cut")
	}
	return words.Of("two rides, then go on or go back")
}

// noteGap says what a gap leaves on each side.
func noteGap(v calculators.Values, r *calculators.Result, start float64) {
	if !v.Has(measure.TreeGap) {
		return
	}
	room := (v.Of(measure.TreeGap) - start) / 2
	if room < 0 {
		r.Note(calculators.CheckNote, "Your tightest gap is narrower than this bar by {0} on each side: you would "+
			"have to turn the bar to pass.", measure.Millimetres(-room))
		return
	}
	r.Note(calculators.PlainNote, "Your tightest gap leaves {0} on each side of such a bar. Hands and levers stand "+
		"out a little, so count on less.", measure.Millimetres(room))
}
