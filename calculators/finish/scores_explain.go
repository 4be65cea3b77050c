package finish

import (
	"math"

	"plumbline/calculators"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

func explainScores(v calculators.Values, r *calculators.Result) {
	before, after := ridesOf(v, measure.ScoresBefore), ridesOf(v, measure.ScoresAfter)
	a, exactA := before.units()
	b, exactB := after.units()
	d := r.At(difference)
	low, high, ok := Interval(a, b, seldom, 10*perPoint)
	if ok {
		d.Low, d.High = calculators.Number(float64(low)/perPoint), calculators.Number(float64(high)/perPoint)
	}
	d.Meaning = verdict(r, len(before), len(after))
	explainChance(r)
	explainMore(r, len(before), len(after))
	r.At(rideScatter).Meaning = words.Of("How much your score wanders when nothing was changed. The more it " +
		"wanders, the more rides it takes to see a change.")
	if !r.At(rideScatter).Exists() {
		r.At(rideScatter).Meaning = words.Of("One ride of each setting cannot show how rides differ.")
	}
	r.Tables = append(r.Tables, settingsTable(r, len(before), len(after)))
	if !exactA || !exactB {
		r.Note(calculators.CheckNote, "Scores between quarter points are rounded to quarters for the chance. Whole "+
			"and half points are as fine as anybody feels.")
	}
	if ok {
		r.Note(calculators.PlainNote, "The range holds every difference that these rides do not rule out, to a "+
			"quarter of a point.")
	} else {
		r.Note(calculators.PlainNote, "No range is shown: so few rides cannot rule out any difference.")
	}
	r.Note(calculators.PlainNote, "This tests for chance only. You knew which setting you rode, and that can sway "+
		"a score. Mix the order of the settings, or let a friend set the mark without telling you.")
	r.Note(calculators.PlainNote, "One in twenty, where chance is ruled out here, is a habit of research, not a "+
		"law.")
	r.Figure = scoresFigure(r, before, after, ok)
}

// points says a number of points with one decimal.
func points(x float64) measure.Amount { return measure.Amount{Value: x, Unit: measure.One, Extra: 1} }

// number says a whole number.
func number(x float64) measure.Amount { return measure.Amount{Value: x, Unit: measure.One} }

// verdict says what the rides tell.
func verdict(r *calculators.Result, before, after int) words.Text {
	d, p := float64(r.At(difference).Value), float64(r.At(chance).Value)/100
	size := points(math.Abs(d))
	switch {
	case !Tells(before, after, seldom):
		return words.Of("You cannot tell yet. With {0} and {1} rides even the clearest difference may be chance; "+
			"four of each can show one.", number(float64(before)), number(float64(after)))
	case p > seldom && d == 0:
		return words.Of("You cannot tell them apart: the means are the same.")
	case p > seldom:
		return words.Of("You cannot tell yet. The means lie {0} apart, and chance alone would do as much in {1} of "+
			"cases.", size, r.At(chance).Amount())
	case d < 0 && d > -1:
		return words.Of("The new setting troubles you a little less, and that is hardly chance. But {0} of a point "+
			"is hardly worth the work.", size)
	case d < 0:
		return words.Of("The new setting troubles you less, by {0} points, and that is hardly chance. It is worth "+
			"keeping, unless something else got worse.", size)
	case d < 1:
		return words.Of("The new setting troubles you a little more, by {0} of a point, and that is hardly chance. "+
			"Go back to the mark.", size)
	}
	return words.Of("The new setting troubles you more, by {0} points, and that is hardly chance. Go back to the "+
		"mark.", size)
}

func explainChance(r *calculators.Result) {
	x := r.At(chance)
	if float64(x.Value) <= 100*seldom {
		x.Meaning = words.Of("If the setting did nothing, scores this far apart would be rare: less than one time " +
			"in twenty. So it is hardly chance.")
		return
	}
	x.Meaning = words.Of("If the setting did nothing, scores this far apart would be no surprise. That does not " +
		"show that it does nothing: too few rides look the same.")
}

func explainMore(r *calculators.Result, before, after int) {
	x := r.At(moreRides)
	most := number(mostRides)
	switch {
	case !x.Exists() && r.At(difference).Value == 0:
		x.Meaning = words.Of("No number of rides shows a difference that is not there. Stop here, or try a larger " +
			"step.")
	case !x.Exists():
		x.Meaning = words.Of("More than {0} of each setting. The difference, if there is one, is small beside how "+
			"much your rides differ anyway: it does not matter to you.", most)
	case x.Value == 0:
		x.Meaning = words.Of("None. These tell already.")
	case !r.At(rideScatter).Exists() || !Tells(before, after, seldom):
		x.Meaning = words.Of("At least, if your rides go on as they began. Ride both settings equally often.")
	default:
		x.Meaning = words.Of("If your rides go on as they began. Share them so that both settings have as many; if " +
			"the difference fades on the way, it was chance.")
	}
}

func settingsTable(r *calculators.Result, before, after int) calculators.Table {
	row := func(name words.English, rides int, mean *calculators.Output) []words.Sayer {
		return []words.Sayer{words.Of(name), number(float64(rides)), r.At(mean).Amount()}
	}
	return calculators.Table{Name: "settings", Caption: words.Of("Both settings"), Columns: []calculators.Column{
		{Name: "setting", Label: words.Of("Setting")},
		{Name: "rides", Label: words.Of("Rides")},
		{Name: "mean", Label: words.Of("Mean score")},
	}, Rows: [][]words.Sayer{row("Old", before, meanBefore), row("New", after, meanAfter)}}
}
