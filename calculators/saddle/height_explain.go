package saddle

import (
	"plumbline/calculators"
	"plumbline/calculators/fit"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

func explainHeight(v calculators.Values, r *calculators.Result) {
	rows := solvedHeights(r)
	counts := applying(v, rows)
	h := r.Reading("saddle-height")
	_, low, high := middle(rows, counts)
	h.Low, h.High = calculators.Number(low), calculators.Number(high)
	h.Meaning = startMeaning(v, low, high)
	r.Reading("pedal-to-saddle").Meaning = words.Of("Books that measure from the pedal print this number: one crank more. Never compare it with one taken from the bottom bracket.")
	explainKnee(v, r.Reading("knee-bend"))
	explainSpread(r.Reading("method-spread"), counts)
	r.Tables = append(r.Tables, methodTable(r, counts, v))
	noteRange(v, r)
	if bends(v, rows, counts) {
		r.Note(calculators.CheckNote, "Within your measurements’ errors another method becomes the middle, the lowest or the highest one, so the ± is approximate.")
	}
	r.Figure = heightFigure(v, r)
}

// startMeaning says where in the range to begin, and why.
func startMeaning(v calculators.Values, low, high float64) words.Text {
	lo, hi := measure.Millimetres(low), measure.Millimetres(high)
	if v.Is(measure.Pedals, "flat") {
		return words.Of("The middle of the methods that fit you, which lie from {0} to {1}. On flat pedals start at the low end: the shoe is thinner, the foot sits further forward, and a low saddle keeps the feet on the pedals.", lo, hi)
	}
	return words.Of("The middle of the methods that fit you, which lie from {0} to {1}. Start here; go to the low end for long descents or if your hips rock.", lo, hi)
}

func explainKnee(v calculators.Values, x *calculators.Reading) {
	if !x.Exists() {
		x.Meaning = words.Of("The leg model finds no pose at this height: check the inside leg, the hip height and the crank.")
		return
	}
	bend := float64(x.Value)
	still := measure.Degrees(max(bend-5, 0))
	switch {
	case bend < 30:
		x.Meaning = words.Of("Less than the 30 to 40 degrees that are advised: go lower if the hips rock. Sitting still it reads about {0}.", still)
	case bend > 40:
		x.Meaning = words.Of("More than the 30 to 40 degrees that are advised: the knee works deeply bent. Sitting still it reads about {0}.", still)
	default:
		x.Meaning = words.Of("Inside the 30 to 40 degrees that are advised while pedalling. Sitting still it reads about {0}.", still)
	}
}

func explainSpread(x *calculators.Reading, counts [heightMethods]bool) {
	n := 0
	for _, c := range counts {
		if c {
			n++
		}
	}
	few := words.Of("{0} methods, made with different riders and aims, agree this closely. Two riders with your legs may want different heights inside it.", words.Name(measure.Exact(float64(n))))
	if x.Value > 25 {
		few = words.Of("{0} methods disagree by more than usual, because your legs or cranks lie outside what some were made with. Trust how your hips and knees feel above any of them.", words.Name(measure.Exact(float64(n))))
	}
	x.Meaning = few
}

// published says what each method measures in the work it comes from.
var published = [heightMethods]words.Text{
	rowFactor:       words.Of("bottom bracket to saddle top"),
	rowHundredNine:  words.Of("pedal spindle to saddle top"),
	rowRegression:   words.Of("pedal spindle to saddle top"),
	rowTrochanteric: words.Of("pedal spindle to saddle top"),
	rowModel:        words.Of("bottom bracket to saddle top"),
}

// methodTable shows every method, those that do not count included.
func methodTable(r *calculators.Result, counts [heightMethods]bool, v calculators.Values) calculators.Table {
	t := calculators.Table{Name: "methods", Caption: words.Of("What each method says, from the bottom bracket"),
		Columns: []calculators.Column{
			{Name: "method", Label: words.Of("Method")},
			{Name: "saddle-height", Label: words.Of("Saddle height"), Unit: "mm"},
			{Name: "uncertainty", Label: words.Of("±"), Unit: "mm"},
			{Name: "published-as", Label: words.Of("Published as")},
			{Name: "counts", Label: words.Of("In the middle value")},
		}}
	for i := range r.Workings {
		w := &r.Workings[i]
		if !w.Exists() {
			continue
		}
		t.Rows = append(t.Rows, []words.Sayer{w.Label, w.Amount(), measure.Error{Amount: w.Margin()}, published[i], standing(i, counts[i], v)})
	}
	return t
}

// standing tells whether a method counts, and what to know about it.
func standing(row int, counts bool, v calculators.Values) words.Text {
	crank := v.Of(measure.CrankLength)
	switch {
	case row == rowRegression && !counts:
		return words.Of("no: made for inside legs of {0} to {1}", measure.Millimetres(regressionFrom), measure.Millimetres(regressionTo))
	case !counts:
		return words.Of("no")
	case row == rowFactor && (crank < factorCrankFrom || crank > factorCrankTo):
		return words.Of("yes, but made with cranks of 170 to 175 mm: it ignores their length")
	case row == rowModel && !v.Given(measure.TrochanterHeight):
		return words.Of("yes; its ± holds how people’s proportions differ")
	}
	return words.Of("yes")
}

// noteRange warns where the methods were never tried.
func noteRange(v calculators.Values, r *calculators.Result) {
	leg := v.Of(measure.Inseam)
	switch {
	case leg < regressionFrom:
		r.Note(calculators.CheckNote, "An inside leg under {0} is shorter than the riders the regression was made from. There it puts the saddle too high, so it is shown and not counted.", measure.Millimetres(regressionFrom))
	case leg > regressionTo:
		r.Note(calculators.CheckNote, "An inside leg over {0} is longer than the riders the regression was made from, so it is shown and not counted.", measure.Millimetres(regressionTo))
	}
	if v.Given(measure.TargetKnee) && v.Of(measure.TargetKnee) != 35 {
		r.Note(calculators.PlainNote, "The knee bend that you aim for moves two methods only: the regression by 1.5 mm a degree and the leg model by about 5 mm a degree. The others know nothing of it.")
	}
	r.Note(calculators.PlainNote, "Move in steps of 5 mm and ride in between. A change under about 4 % of the hip’s height is not known to alter power or injury; comfort and control decide.")
}

// solvedHeights takes the rows back from the result's workings.
func solvedHeights(r *calculators.Result) (rows [heightMethods]float64) {
	for i := range rows {
		rows[i] = float64(r.Workings[i].Value)
	}
	return rows
}

// bends tells whether the rows that make the median change within two standard
// uncertainties of the inside leg, the crank or the trochanter (the others move
// the leg model alone, and by little), so that a straight line misses the
// answer's bend.
func bends(v calculators.Values, rows [heightMethods]float64, counts [heightMethods]bool) bool {
	here := makers(rows, counts)
	for _, q := range []*measure.Quantity{measure.Inseam, measure.CrankLength, measure.TrochanterHeight} {
		for _, d := range []float64{-2 * v.SD(q), 2 * v.SD(q)} {
			if d == 0 {
				continue
			}
			w := v.Shifted(q, d)
			rider, reaches := fit.Seated(w)
			there := heights(w, rider, reaches)
			if applies := applying(w, there); applies != counts || makers(there, counts) != here {
				return true
			}
		}
	}
	return false
}

// makers returns the two rows that the median lies between, the same one twice
// where it is one.
func makers(rows [heightMethods]float64, counts [heightMethods]bool) [2]int {
	var order []int
	for i := range rows {
		if !counts[i] {
			continue
		}
		order = append(order, i)
		for k := len(order) - 1; k > 0 && rows[order[k]] < rows[order[k-1]]; k-- {
			order[k], order[k-1] = order[k-1], order[k]
		}
	}
	a, b := order[(len(order)-1)/2], order[len(order)/2]
	return [2]int{min(a, b), max(a, b)}
}
