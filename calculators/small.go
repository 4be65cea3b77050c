package calculators

import (
	"math"
	"slices"

	"plumbline/calculators/body"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// Sex returns the reference sample that the reader picked, or body.Unknown.
func (v Values) Sex() body.Sex {
	if !v.Declares(measure.Sex) {
		return body.Unknown
	}
	switch v.Choice(measure.Sex) {
	case "f":
		return body.Female
	case "m":
		return body.Male
	}
	return body.Unknown
}

// Small tells whether the reader is one of whom nothing is estimated: under
// body.LeastStature, or, where no height was given, with an inside leg of that height. It
// goes by all that was typed, whether this calculator asks for it or not, and stays the
// same while uncertainty is carried through.
func (v Values) Small() bool { return v.small }

// Unmeasured returns, for a small reader, what a grown one would have estimated and nobody
// measured. It is empty for everybody else.
func (v Values) Unmeasured() (list []*measure.Quantity) {
	if !v.Small() {
		return nil
	}
	for i, in := range v.inputs {
		if in.Grown && v.state[i] == absent {
			list = append(list, in.Quantity)
		}
	}
	return list
}

// Named writes a list of quantities by their names.
func Named(list []*measure.Quantity) words.List {
	names := make(words.List, len(list))
	for i, q := range list {
		names[i] = q.Named()
	}
	return names
}

// IfTaller is what a small reader is told whose height nobody gave, and is empty for others.
func (v Values) IfTaller() words.Text {
	if !v.shortLeg {
		return words.Of("")
	}
	return words.Of(" We take so short an inside leg to belong to such a rider. If you are taller, type {0}.",
		measure.Stature.Named())
}

// explainSmall tells a small reader what was left out and why, and what of the model
// remains a grown person's.
func (c *Calculator) explainSmall(v Values, r *Result) {
	if !v.Small() || !slices.ContainsFunc(v.inputs, func(in Input) bool { return in.Grown }) {
		return
	}
	limit := measure.Millimetres(body.LeastStature)
	missing := v.Unmeasured()
	if len(missing) == 0 {
		r.Note(CheckNote, "You are under {0}, so no length of yours was estimated. How heavy each part "+
			"of a body is, and how a foot is shaped, remain those of grown people: look at how you stand and sit "+
			"rather than at these numbers.{1}", limit, v.IfTaller())
		return
	}
	r.Note(CheckNote, "For riders under {0} this guide does not guess from the numbers of grown people. What rests "+
		"on these is left out until you type them: {1}.{2}", limit, Named(missing), v.IfTaller())
	filled := c.filled(v)
	for i := range r.Answers {
		if a := &r.Answers[i]; !a.Exists() && !math.IsNaN(filled.At(c.Answers[i])) {
			a.Meaning = words.Of("Left out: it rests on something that was not measured, and for riders under {0} "+
				"nothing is estimated.", limit)
		}
	}
}

// filled solves c with the missing lengths estimated as for a grown reader. It only serves to find
// which numbers would exist; their values are not shown.
func (c *Calculator) filled(v Values) Numbers {
	w, out := v.clone(), c.numbers()
	w.small = false
	w.assume()
	if c.Solve(w, out) != nil {
		return c.numbers()
	}
	return out
}
