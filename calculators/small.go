package calculators

import (
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

// explainSmall tells a small reader what was left out and why, and what of the model
// remains a grown person's.
func explainSmall(v Values, r *Result) {
	if !v.Small() {
		return
	}
	limit := measure.Millimetres(body.LeastStature)
	grown := false
	for _, in := range v.inputs {
		grown = grown || in.Grown
	}
	if !grown {
		return
	}
	if v.Declares(measure.Stature) && !v.Given(measure.Stature) {
		r.Note(CheckNote, "So short an inside leg is that of a rider under {0}, of whom this guide estimates no "+
			"length. If you are taller, type {1}: it stands under “More settings”.", limit, measure.Stature.Named())
	}
	missing := v.Unmeasured()
	if len(missing) == 0 {
		r.Note(CheckNote, "You are under {0}, so no length of yours was estimated. How heavy each part "+
			"of a body is, and how a foot is shaped, remain those of grown people: look at how you stand and sit "+
			"rather than at these numbers.", limit)
		return
	}
	r.Note(CheckNote, "Under {0} this guide estimates no length of the body. What rests on these is left out "+
		"until somebody measures them: {1}.", limit, Named(missing))
	for i := range r.Answers {
		if a := &r.Answers[i]; !a.Exists() {
			a.Meaning = words.Of("Left out, because a length that it rests on was not measured, and under {0} none "+
				"is estimated.", limit)
		}
	}
}
