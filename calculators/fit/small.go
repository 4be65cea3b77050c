package fit

import (
	"plumbline/calculators"
	"plumbline/calculators/body"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// GrowingInput asks, behind "More settings", whether the rider still grows; every
// calculator that carries the caution about it asks. The caution appears when the answer
// is yes, or the height is under body.LeastStature.
func GrowingInput() calculators.Input {
	return calculators.Input{Quantity: measure.Growing, Optional: true, Folded: true}
}

// Small tells whether the reader's height is one at which nothing is estimated.
func Small(v calculators.Values) bool {
	return v.Declares(measure.Stature) && v.Given(measure.Stature) && v.Of(measure.Stature) < body.LeastStature
}

// lengths of the body that are estimated for grown people where nobody measured them.
var estimatedLengths = []*measure.Quantity{measure.Inseam, measure.TrochanterHeight, measure.TrunkLength,
	measure.ArmLength,
	measure.ShoulderWidth, measure.HeelToBallInner, measure.FingerLength}

// Unmeasured asks a small rider for the first length of the body that a calculator needs
// and nobody measured. It is nil for everybody else.
func Unmeasured(v calculators.Values) *calculators.Problem {
	if !Small(v) {
		return nil
	}
	for _, q := range estimatedLengths {
		if v.Declares(q) && !v.Has(q) {
			return &calculators.Problem{Input: q.Key, Needed: true,
				Text: words.Of("Under {0} this guide estimates no length of the body: measure {1}, and have a "+
					"helper do it.",
					measure.Millimetres(body.LeastStature), q.Named())}
		}
	}
	return nil
}

// NoteSmall says to a small rider what of a body model remains a grown person's.
func NoteSmall(v calculators.Values, r *calculators.Result) {
	if Small(v) {
		r.Note(calculators.CheckNote, "You are under {0}, so no length of yours was estimated. How heavy each part "+
			"of a body is, and how a foot is shaped, remain those of grown people: look at how you stand and sit "+
			"rather than at these numbers.",
			measure.Millimetres(body.LeastStature))
	}
}
