package start

import (
	"plumbline/calculators"
	"plumbline/calculators/fit"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

func explainDepth(v calculators.Values, r *calculators.Result) {
	both := fit.Insertions(v, r.At(overPost), r.At(overFrame))
	r.At(insideFrame).Meaning = fit.DeepEnough(both)
	explainLimit(v, r, both)
	explainRise(v, r)
	r.Tables = append(r.Tables, fit.LimitTable(words.Of("The two limits of this post"), both[:]))
	if p := fit.PostOf(v); p.Room < 0 {
		r.Note(calculators.CheckNote, "This post cannot come down to that saddle height: pushed all the way in, it "+
			"stands {0} higher on its collar. The numbers are for where it stands.", measure.Millimetres(-p.Room))
	}
	if !v.Has(measure.TravelPost) {
		r.Note(calculators.CheckNote, "Without {0} the post counts as a dropper, which has something below its "+
			"tube that the frame does not hold. Type 0 for a fixed post.", measure.TravelPost.Named())
	}
	fit.NoteMissingMinimums(v, r, both)
	fit.NoteLowMark(v, r)
	r.Note(calculators.PlainNote, "The calculator cannot see the tube: pull the post out once, look for a bend, a "+
		"shim or a cut end, and read the mark itself.")
	r.Figure = depthFigure(v, r, both)
}

// explainLimit says which of the two minimum insertions counts.
func explainLimit(v calculators.Values, r *calculators.Result, both [2]fit.Limit) {
	x, post, frame := r.At(deeperMinimum), both[0], both[1]
	switch {
	case !v.Has(post.Ask) && !v.Has(frame.Ask):
		x.Meaning = words.Of("Neither the post’s mark nor the frame’s minimum was given. The mark is on the post; " +
			"the frame’s minimum is in its manual.")
	case !v.Has(post.Ask):
		x.Meaning = words.Of("Only the frame’s minimum was given, {0}. The post’s own may be deeper, so which one "+
			"counts is not known.", measure.Millimetres(frame.Needs))
	case !v.Has(frame.Ask):
		x.Meaning = words.Of("Only the post’s mark was given, {0}. The frame’s minimum may be deeper, so which one "+
			"counts is not known.", measure.Millimetres(post.Needs))
	case post.Needs > frame.Needs:
		x.Meaning = words.Of("The post’s own mark counts: the frame asks for {0} less.",
			measure.Millimetres(post.Needs-frame.Needs))
	case frame.Needs > post.Needs:
		x.Meaning = words.Of("The frame’s minimum counts: the mark on the post lies {0} lower, so a hidden mark is "+
			"not enough here.", measure.Millimetres(frame.Needs-post.Needs))
	default:
		x.Meaning = words.Of("Both ask for the same.")
	}
}

// explainRise says how far the post may be pulled out.
func explainRise(v calculators.Values, r *calculators.Result) {
	x, highest := r.At(mayRise), r.At(highestSaddle)
	sure := measure.Millimetres(float64(x.Value - x.Uncertainty))
	highest.Meaning = words.Of("Above it the post is too short for this frame, whatever height the legs need.")
	switch {
	case !x.Exists():
		x.Meaning = words.Of("Not known until both limits are. Do not raise the saddle on a guess.")
		highest.Meaning = words.Of("Not known until both limits are.")
	case x.Value < 0:
		x.Meaning = words.Of("None. It is {0} too high already: lower the saddle by more than that, or fit a "+
			"longer post, before you ride.", measure.Millimetres(-float64(x.Value)))
	case x.Value < x.Uncertainty:
		x.Meaning = words.Of("Less than the measuring errors, so leave it where it is, and measure again.")
	default:
		x.Meaning = words.Of("{0} of it is sure: so much is left when every measuring error goes the wrong way. Who "+
			"needs more needs a longer post.", sure)
	}
}
