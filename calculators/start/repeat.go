package start

import (
	"math"
	"slices"

	"plumbline/calculators"
	"plumbline/calculators/literature"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// Repeat answers what to keep of two or three readings of one length, and
// whether to take them again.
func Repeat() *calculators.Calculator {
	return &calculators.Calculator{
		Name: "repeat-readings", Section: calculators.Start,
		Title: "Repeat your readings", Question: "Which of your readings do you keep, and do they agree well enough?",
		Scenario: "The test rider took the inside leg three times, alone with a book.",
		Inputs: []calculators.Input{
			{Quantity: measure.Wanted, Example: "inseam",
				Clears: []*measure.Quantity{measure.First, measure.Second, measure.Third}},
			{Quantity: measure.First, Example: "832"},
			{Quantity: measure.Second, Example: "824"},
			{Quantity: measure.Third, Example: "829", Optional: true},
			{Quantity: measure.Helped, Example: "alone", Assume: calculators.Fixed(0, 0,
				"which is the less sure way")},
		},
		Unasked: []calculators.Input{
			{Quantity: sharedError, Assume: usualError},
			{Quantity: ownScatter, Assume: scatterLeft},
		},
		First:   []*measure.Quantity{measure.Third},
		Answers: []*calculators.Output{medianReading, readingsApart, technicalError},
		Sources: []*literature.Source{literature.GUM2008, literature.Gordon2014, literature.CommonPractice},
		Solve:   solveRepeat,
		Explain: explainRepeat,
	}
}

// What no reading shows, and nobody is asked for.
var (
	// sharedError is a landmark felt in the wrong place, or a book held out of square: it
	// repeats with every reading and does not show in their spread, mm.
	sharedError = &measure.Quantity{Key: "shared-error", Label: "Error that all readings share", Unit: measure.Mm,
		Low: -30, High: 30, Least: -100, Most: 100,
		How: measure.Instruction{Text: "It is not measured: it stands for what repeating cannot cure."}}
	// ownScatter is what the readings differ by, as far as it is still in the middle one, mm.
	ownScatter = &measure.Quantity{Key: "own-scatter", Label: "Your own scatter", Unit: measure.Mm,
		Low: -100, High: 100, Least: -1000, Most: 1000,
		How: measure.Instruction{Text: "It is not measured by itself: your readings show it."}}
)

// What it answers.
var (
	medianReading = &calculators.Output{Name: "median", Label: "Keep this", Unit: measure.Mm,
		Between: "the middle one of the readings"}
	readingsApart = &calculators.Output{Name: "spread", Label: "They differ by", Unit: measure.Mm,
		Between: "smallest to largest reading"}
	technicalError = &calculators.Output{Name: "technical-error", Label: "One reading repeats to", Unit: measure.Mm,
		Finer:   1,
		Between: "technical error of measurement: two of three readings lie this close to their mean"}
)

// wanted returns the length that the reader picked.
func wanted(v calculators.Values) *measure.Quantity {
	i := int(v.Of(measure.Wanted))
	if i < 0 || i >= len(measure.RiderLengths) {
		return measure.Inseam
	}
	return measure.RiderLengths[i]
}

// usualError is what repeating cannot cure: the length's usual error, half of it
// with a helper who watches the landmark.
func usualError(v calculators.Values) (calculators.Assumption, bool) {
	if !v.Has(measure.Wanted) {
		return calculators.Assumption{}, false
	}
	sd, from := wanted(v).Repeat, words.English("the usual error of this length, taken alone")
	if v.Is(measure.Helped, "help") {
		sd, from = sd/2, "the usual error of this length, taken with help"
	}
	return calculators.Assumption{SD: sd, From: from}, true
}

// scatterLeft is what the readings' own scatter adds to the shared error, so that both
// together make what measure.MedianSD says of them, as in a field that holds all readings.
func scatterLeft(v calculators.Values) (calculators.Assumption, bool) {
	if !v.Has(measure.First) || !v.Has(measure.Second) {
		return calculators.Assumption{}, false
	}
	shared := v.SD(sharedError)
	both := measure.MedianSD(shared, taken(v))
	return calculators.Assumption{SD: math.Sqrt(max(float64(both*both)-float64(shared*shared), 0)),
		From: "from how far your readings lie apart"}, true
}

// taken returns the readings in rising order.
func taken(v calculators.Values) []float64 {
	x := make([]float64, 0, 3)
	for _, q := range [3]*measure.Quantity{measure.First, measure.Second, measure.Third} {
		if v.Has(q) {
			x = append(x, v.Of(q))
		}
	}
	slices.Sort(x)
	return x
}

func solveRepeat(v calculators.Values, out calculators.Numbers) *calculators.Problem {
	x, q := taken(v), wanted(v)
	n := len(x)
	median := measure.Median(x)
	// An error is what was read less what is true (VIM 2.16), so it is taken off.
	out.Set(medianReading, median-v.Of(sharedError)-v.Of(ownScatter))
	out.Set(readingsApart, x[n-1]-x[0])
	if sd, ok := measure.Scatter(x); ok {
		out.Set(technicalError, sd)
	}
	if !q.Possible(median) {
		return &calculators.Problem{Input: measure.First.Key,
			Text: words.Of("{0} cannot be {1}: it lies between {2} and {3}. Check the unit beside the field, and "+
				"that the right length is picked.", q.Named(), q.Amount(median), q.Amount(q.Least), q.Amount(q.Most))}
	}
	return nil
}

func explainRepeat(v calculators.Values, r *calculators.Result) {
	q := wanted(v)
	median, spread, error := r.At(medianReading), r.At(readingsApart), r.At(technicalError)
	median.Feeds = q
	median.Meaning = words.Of("Use this one for {0}. One slip does not change the middle reading, as it would "+
		"change the mean.", q.Named())
	if !v.Has(measure.Third) {
		median.Meaning = words.Of(
			"Half way between your two readings of {0}. Take a third: two alone cannot tell how well you repeat "+
				"yourself, nor which of them is wrong. So the ± grows fast the further they are apart.",
			q.Named(),
		)
	}
	again := float64(spread.Value) > q.AgreeWithin()
	if again {
		spread.Meaning = words.Of("Too far apart: more than {0} for {1}. Measure again, all of them. Usually the "+
			"landmark is to blame, so find the bone again each time.", q.Amount(q.AgreeWithin()), q.Named())
		r.Note(calculators.CheckNote, "Take {0} again: the readings lie {1} apart, where {2} is close enough.",
			q.Named(),
			spread.Amount(), q.Amount(q.AgreeWithin()))
	} else {
		spread.Meaning = words.Of("Close enough: up to {0} is good for {1}. There is no need to measure again.",
			q.Amount(q.AgreeWithin()), q.Named())
	}
	error.Meaning = words.Of("How well the readings repeat, as far as so few can tell. The ± of the first line has "+
		"this scatter in it, and the usual error of this length, ± {0}. A landmark felt in the wrong place does not "+
		"show in the scatter.",
		measure.Error{Amount: q.Amount(2 * v.SD(sharedError))})
	if !q.Plausible(float64(median.Value)) {
		r.Note(calculators.CheckNote, "{0} is unusual for {1}; most lie between {2} and {3}. Check the unit, and "+
			"that the right length is "+
			"picked.", q.Amount(float64(median.Value)), q.Named(), q.Amount(q.Low), q.Amount(q.High))
	}
	r.Note(calculators.PlainNote, "Let go of the tape between readings and do not look at the last number before you "+
		"have the next.")
	r.Figure = repeatFigure(v, r)
}
