package feet

import (
	"math"

	"plumbline/calculators"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

func explainShoe(v calculators.Values, r *calculators.Result) {
	foot := r.At(mondopoint)
	foot.Meaning = words.Of("The longer foot, in millimetres. A chart in millimetres from the shoe’s own maker " +
		"beats every conversion below.")
	for _, o := range [4]*calculators.Output{sizeEU, sizeUK, sizeUSMen, sizeUSWomen} {
		x := r.At(o)
		half := halfSize(float64(x.Value))
		low, high := HalfSize(float64(x.Value-x.Uncertainty)), HalfSize(float64(x.Value+x.Uncertainty))
		switch {
		case x.Value < 0:
			x.Meaning = words.Of("Below the grown people’s sizes: look for a children’s chart in millimetres.")
		case high > low:
			x.Meaning = words.Of("Nearest half size {0}. The ± covers {1} to {2}: all of them are worth trying "+
				"on.", half, halfSize(low),
				halfSize(high))
		default:
			x.Meaning = words.Of("Nearest half size {0}.", half)
		}
	}
	if v.Has(measure.OtherFoot) {
		apart := math.Abs(v.Of(measure.FootLength) - v.Of(measure.OtherFoot))
		r.Note(calculators.PlainNote, "The feet differ by {0}. Shoes are fitted to the longer one, and an insole "+
			"fills the other.", measure.Millimetres(apart))
		if apart < 2*math.Hypot(v.SD(measure.FootLength), v.SD(measure.OtherFoot)) {
			r.Note(calculators.CheckNote, "Within the errors either foot may be the longer one; the ± allows for "+
				"that.")
		}
	} else {
		r.Note(calculators.CheckNote, "Only one foot was given. Measure both: most people’s feet differ, and the "+
			"longer one decides.")
	}
	explainMeant(v, r)
	r.Note(calculators.PlainNote, "Printed sizes differ from the standard: EU sizes by about half a size, US men’s "+
		"by half a size and more. Each maker adds his own room.")
	r.Figure = shoeFigure(v, r)
}

// halfSize says a size rounded to the half.
func halfSize(x float64) measure.Amount {
	return measure.Amount{Value: HalfSize(x), Unit: measure.One, Extra: 1}
}

// explainMeant tells, in a table, which foot a known size is meant for.
func explainMeant(v calculators.Values, r *calculators.Result) {
	meant := r.At(meantFor)
	switch {
	case v.Has(measure.ShoeSize) && !v.Has(measure.SizeSystem):
		r.Note(calculators.CheckNote, "Say which system the size of the old shoe is in, and the foot it was meant "+
			"for appears.")
		return
	case !meant.Exists():
		return
	case meant.Value < 150 || meant.Value > 360:
		r.Note(calculators.CheckNote, "Size {0} in that system would be for a foot of {1}. Was another system meant?",
			measure.Amount{Value: v.Of(measure.ShoeSize), Unit: measure.One, Extra: 1}, meant.Amount())
		return
	}
	uk := UK(float64(meant.Value))
	row := []words.Sayer{meant.Amount()}
	for _, x := range [4]float64{EU(float64(meant.Value)), uk, USMen(uk), USWomen(uk)} {
		row = append(row, halfSize(x))
	}
	longer := measure.Millimetres(float64(meant.Value) - float64(r.At(mondopoint).Value))
	r.Tables = append(r.Tables, calculators.Table{Name: "back", Caption: words.Of("The size that you know, read " +
		"backwards"), Columns: []calculators.Column{
		{Name: "foot", Label: words.Of("Meant for a foot of"), Unit: "mm"},
		{Name: "eu", Label: words.Of("EU")}, {Name: "uk", Label: words.Of("UK")}, {Name: "us-men",
			Label: words.Of("US men")}, {Name: "us-women", Label: words.Of("US women")},
		{Name: "longer", Label: words.Of("Longer than the foot by"), Unit: "mm"},
	}, Rows: [][]words.Sayer{append(row, longer)}})
}
