package start

import (
	"math"

	"plumbline/calculators"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

func explainTape(v calculators.Values, r *calculators.Result) {
	reach, stack, drop, front, offset := r.At(tapedReach), r.At(tapedStack), r.At(tapedDrop), r.At(tapedFrontCentre),
		r.At(tapedForkOffset)
	reach.Meaning = words.Of("How far the front of the frame stands ahead of your feet. If a chart differs by less " +
		"than the ±, it says the same.")
	if !(reach.Value > 0) {
		reach.Meaning = words.Of("The head tube comes out behind the crank axle, which no bike has. Measure " +
			"both distances to the head tube again.")
	}
	stack.Meaning = words.Of("How high the front of the frame stands above your feet, spacers and stem not counted.")
	drop.Meaning = words.Of("The crank axle lies this far below the wheel axles. It is what a chart prints as the " +
		"drop; the height above the floor changes with the tyres.")
	if drop.Value < 0 {
		drop.Meaning = words.Of("The crank axle lies above the line between the wheel axles. Small wheels do that; " +
			"check the heights if yours are large.")
	}
	front.Meaning = words.Of("The distance you measured. Measure from axle to axle too, and it is found in two " +
		"ways.")
	if v.Has(measure.Wheelbase) {
		front.Meaning = words.Of("Found in two ways, straight and from axle to axle. The one that repeats better " +
			"counts for more.")
		r.Tables = append(r.Tables, twiceTable(r))
		noteApart(r)
	}
	offset.Meaning = offsetMeaning(v, offset)
	r.Note(calculators.PlainNote, "Take every distance between centres, in the middle plane of the bike: hold the "+
		"tape parallel to it and sight across where an axle’s end stands out.")
	r.Figure = tapeFigure(v, r)
}

func offsetMeaning(v calculators.Values, x *calculators.Answer) words.Text {
	if !x.Exists() {
		return words.Of("To get it, type {0}, measured with a phone on the fork’s leg.", measure.HeadAngle.Named())
	}
	if !measure.ForkOffset.Plausible(float64(x.Value)) {
		return words.Of("No fork in the shops has this offset: forks lie between {0} and {1}. Read the head angle "+
			"again, phone turned end for end.", measure.ForkOffset.Amount(measure.ForkOffset.Low),
			measure.ForkOffset.Amount(measure.ForkOffset.High))
	}
	return words.Of("A tape and a phone are too coarse for this: a tenth of a degree moves it by more than a " +
		"millimetre. Go by the fork’s sticker.")
}

// twiceTable shows the front-centre both ways.
func twiceTable(r *calculators.Result) calculators.Table {
	t := calculators.Table{Name: "twice", Caption: words.Of("Front-centre, found in two ways"), Folded: true,
		Columns: []calculators.Column{
			{Name: "way", Label: words.Of("Way")},
			{Name: "front-centre", Label: words.Of("Front-centre"), Unit: "mm"},
			{Name: "uncertainty", Label: words.Of("±"), Unit: "mm"},
		}}
	for _, x := range []*calculators.Answer{r.At(tapedStraight), r.At(tapedByAxles), r.At(tapedApart)} {
		t.Rows = append(t.Rows, []words.Sayer{x.Label, x.Amount(), measure.Error{Amount: x.Margin()}})
	}
	return t
}

// noteApart warns where the two ways disagree by more than their errors allow.
func noteApart(r *calculators.Result) {
	x := r.At(tapedApart)
	if math.Abs(float64(x.Value)) <= float64(x.Uncertainty) {
		return
	}
	r.Note(calculators.CheckNote, "The front-centre measured straight and the one from axle to axle lie {0} apart, "+
		"where {1} is what the tape explains. Check that the wheel points straight ahead, then measure chainstay, "+
		"front-centre and wheelbase again.",
		measure.Millimetres(math.Abs(float64(x.Value))), measure.Error{Amount: x.Margin()})
}
