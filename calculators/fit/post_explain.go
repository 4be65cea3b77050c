package fit

import (
	"math"

	"plumbline/calculators"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// Limit is one limit of a post, in mm.
type Limit struct {
	Name  words.Text
	Spare *calculators.Answer // Has less Needs, with its ±
	Has   float64
	Needs float64
	Ask   *measure.Quantity // what is missing where it is not known
}

// Insertions are both minimum insertions as limits: the post's and the frame's, with
// what the post has to spare of each.
func Insertions(v calculators.Values, post, frame *calculators.Answer) [2]Limit {
	has := PostOf(v).Insertion
	return [2]Limit{
		{words.Of("The post’s minimum insertion"), post, has, v.Of(measure.InsertionPost), measure.InsertionPost},
		{words.Of("The frame’s minimum insertion"), frame, has, v.Of(measure.InsertionFrame), measure.InsertionFrame},
	}
}

// Binding returns the index of the limit with the least to spare, −1 where none is
// known.
func Binding(all []Limit) int {
	least := -1
	for i, l := range all {
		if l.Spare.Exists() && (least < 0 || l.Spare.Value < all[least].Spare.Value) {
			least = i
		}
	}
	return least
}

// LimitTable shows what each limit has, needs and leaves.
func LimitTable(caption words.Text, all []Limit) calculators.Table {
	binds := Binding(all)
	t := calculators.Table{Name: "limits", Caption: caption, Columns: []calculators.Column{
		{Name: "limit", Label: words.Of("Limit")},
		{Name: "has", Label: words.Of("There is"), Unit: "mm"},
		{Name: "needs", Label: words.Of("Needed"), Unit: "mm"},
		{Name: "spare", Label: words.Of("To spare"), Unit: "mm"},
		{Name: "uncertainty", Label: words.Of("±"), Unit: "mm"},
		{Name: "verdict", Label: words.Of("So")},
	}}
	known := true
	for _, l := range all {
		known = known && l.Spare.Exists()
	}
	for i, l := range all {
		margin := l.Spare.Margin()
		if !l.Spare.Exists() {
			margin.Value = math.NaN()
		}
		t.Rows = append(t.Rows, []words.Sayer{l.Name, measure.Millimetres(l.Has), measure.Millimetres(l.Needs),
			l.Spare.Amount(), measure.Error{Amount: margin}, l.verdict(i == binds, known)})
	}
	return t
}

// verdict says how a limit stands: whether it is the one with the least to spare, and
// whether that is known of all of them.
func (l Limit) verdict(binds, known bool) words.Text {
	switch {
	case !l.Spare.Exists():
		return words.Of("not known: look it up or measure it")
	case l.Missed():
		return words.Of("not met")
	case l.Close():
		return words.Of("met, but by less than the measuring errors")
	case binds && !known:
		return words.Of("met; of the limits that are known this is the tightest")
	case binds:
		return words.Of("met; this is the tightest")
	}
	return words.Of("met")
}

// Missed tells whether a limit is known not to be met.
func (l Limit) Missed() bool { return l.Spare.Value < 0 }

// Close tells whether a limit is met by less than the measuring errors.
func (l Limit) Close() bool { return l.Spare.Value >= 0 && l.Spare.Value < l.Spare.Uncertainty }

// DeepEnough says whether the post is deep enough in the frame. It says so only where
// both minimum insertions are known, and more than the measuring errors are to spare.
func DeepEnough(both [2]Limit) words.Text {
	post, frame := both[0], both[1]
	deeper := measure.Millimetres(math.Max(post.Needs, frame.Needs))
	known := post.Spare.Exists() && frame.Spare.Exists()
	switch {
	case known && (post.Missed() || frame.Missed()):
		return words.Of("Too shallow: the deeper of the two minimum insertions is {0}. Do not ride it. A longer "+
			"post, or one of less travel set lower, is needed.", deeper)
	case post.Missed():
		return words.Of("Too shallow for the post’s own minimum insertion, {0}. Do not ride it.",
			measure.Millimetres(post.Needs))
	case frame.Missed():
		return words.Of("Too shallow for the frame’s minimum insertion, {0}. Do not ride it.",
			measure.Millimetres(frame.Needs))
	case known && (post.Close() || frame.Close()):
		return words.Of("Too close to say: the deeper of the two minimum insertions is {0}, and what is over is "+
			"less than the measuring errors. Measure again, or set the post deeper.", deeper)
	case known:
		return words.Of("Deep enough for both minimum insertions, of which the deeper is {0}. Check the mark on "+
			"the post all the same.", deeper)
	}
	return words.Of("Whether that is deep enough is not known before both minimum insertions are: the post’s and " +
		"the frame’s. The deeper of the two counts.")
}

// NoteMissingMinimums says which of the two minimum insertions was not given.
func NoteMissingMinimums(v calculators.Values, r *calculators.Result, both [2]Limit) {
	for _, l := range both {
		if !v.Has(l.Ask) {
			r.Note(calculators.CheckNote, "You left out {0}, so nothing here says that the post is deep enough. "+
				"It is a safety limit: find it in the manual before you ride.", l.Ask.Named())
		}
	}
}

// NoteLowMark says where the post's mark lies lower than the law has it.
func NoteLowMark(v calculators.Values, r *calculators.Result) {
	// Where either of the two is not known this is false, because it compares with NaN.
	if v.Of(measure.InsertionPost) < MarkAtLeast(v.Of(measure.PostDiameter)) {
		r.Note(calculators.CheckNote, "United States law puts the mark at least two diameters above the post’s "+
			"lower end, {0} here. This mark lies lower: look at the post again.",
			measure.Millimetres(MarkAtLeast(v.Of(measure.PostDiameter))))
	}
}
