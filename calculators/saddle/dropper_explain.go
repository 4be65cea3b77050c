package saddle

import (
	"math"

	"plumbline/calculators"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// limit is one of the four limits of a post, in mm.
type limit struct {
	name  words.Text
	spare *calculators.Answer // has less needs, with its ±
	has   float64
	needs float64
	ask   *measure.Quantity // what is missing where it is not known
}

// limits are the four in the order of the table: room, depth, both insertions.
func limits(v calculators.Values, r *calculators.Result) [4]limit {
	p := postOf(v)
	return [4]limit{
		{words.Of("Room above the collar"), r.At(roomLeft), p.exposed,
			v.Of(measure.PostCollar) + v.Of(measure.TravelPost) + v.Of(measure.PostHead), measure.TravelPost},
		{words.Of("Depth in the seat tube"), r.At(depthLeft), v.Of(measure.FreeDepth), p.inside, measure.FreeDepth},
		{words.Of("The post’s minimum insertion"), r.At(overPost), p.insertion,
			v.Of(measure.InsertionPost), measure.InsertionPost},
		{words.Of("The frame’s minimum insertion"), r.At(overFrame), p.insertion,
			v.Of(measure.InsertionFrame), measure.InsertionFrame},
	}
}

// binding returns the index of the limit with the least to spare, −1 where none
// is known.
func binding(all [4]limit) int {
	least := -1
	for i, l := range all {
		if l.spare.Exists() && (least < 0 || l.spare.Value < all[least].spare.Value) {
			least = i
		}
	}
	return least
}

func explainDropper(v calculators.Values, r *calculators.Result) {
	all := limits(v, r)
	binds := binding(all)
	explainTravel(v, r)
	explainInsertion(v, r, all)
	explainDepth(v, r)
	if v.Has(measure.TravelPost) {
		r.Tables = append(r.Tables, limitTable(all, binds))
	}
	notePost(v, r, all)
	r.Figure = dropperFigure(v, r, binds)
}

func explainTravel(v calculators.Values, r *calculators.Result) {
	x, room, depth := r.At(longestTravel), r.At(travelByRoom), r.At(travelByDepth)
	switch {
	case x.Value <= 0:
		x.Meaning = words.Of("Nothing is left for a dropper: the seat tube is too long for this saddle height.")
	case !depth.Exists():
		x.Meaning = words.Of("The room above the frame allows this much; whether the tube is deep enough is not known yet. Round down to a length that is sold.")
	case depth.Value < room.Value:
		x.Meaning = words.Of("The depth in the tube binds: the room above would allow {0}. It is reckoned for a post built like yours, which grows by two millimetres for each of travel. Round down to a length that is sold.", room.Amount())
	default:
		x.Meaning = words.Of("The room above the collar binds: the depth would allow {0}. A lower collar or head, or a thinner saddle, gains a little. Round down to a length that is sold.", depth.Amount())
	}
	apart, errors := math.Abs(float64(depth.Value-room.Value)), float64(depth.Uncertainty+room.Uncertainty)
	if depth.Exists() && apart < errors {
		r.Note(calculators.CheckNote, "Room and depth allow nearly the same travel, and within the measurements’ errors either may bind; the ± allows for both.")
	}
}

func explainInsertion(v calculators.Values, r *calculators.Result, all [4]limit) {
	x := r.At(postInsertion)
	if !x.Exists() {
		x.Meaning = words.Of("Type {0} and {1} of the post that you have in mind to see this.", measure.TravelPost.Named(), measure.PostLength.Named())
		return
	}
	post, frame := all[2], all[3]
	both, deeper := post.spare.Exists() && frame.spare.Exists(), math.Max(post.needs, frame.needs)
	switch {
	case both && (post.spare.Value < 0 || frame.spare.Value < 0):
		x.Meaning = words.Of("Too shallow: the deeper of the two minimum insertions is {0}. Do not ride it. A longer post, or one of less travel set lower, is needed.", measure.Millimetres(deeper))
	case both:
		x.Meaning = words.Of("Deep enough for both minimum insertions, of which the deeper is {0}. Check the mark on the post all the same.", measure.Millimetres(deeper))
	default:
		x.Meaning = words.Of("Whether that is deep enough is not known before both minimum insertions are: the post’s and the frame’s. The deeper of the two counts.")
	}
}

func explainDepth(v calculators.Values, r *calculators.Result) {
	x := r.At(depthLeft)
	switch {
	case !x.Exists():
		x.Meaning = words.Of("Type the post’s length and travel and {0} to see whether it goes in.", measure.FreeDepth.Named())
	case x.Value < 0:
		x.Meaning = words.Of("The post meets the obstacle before the saddle is down at its height. Force nothing: only a shorter post helps.")
	default:
		x.Meaning = words.Of("The post clears the obstacle by this much; the cable or hose needs some of it for its bend.")
	}
}

// limitTable shows what each limit has, needs and leaves.
func limitTable(all [4]limit, binds int) calculators.Table {
	t := calculators.Table{Name: "limits", Caption: words.Of("The four limits of this post"), Columns: []calculators.Column{
		{Name: "limit", Label: words.Of("Limit")},
		{Name: "has", Label: words.Of("There is"), Unit: "mm"},
		{Name: "needs", Label: words.Of("Needed"), Unit: "mm"},
		{Name: "spare", Label: words.Of("To spare"), Unit: "mm"},
		{Name: "uncertainty", Label: words.Of("±"), Unit: "mm"},
		{Name: "verdict", Label: words.Of("So")},
	}}
	for i, l := range all {
		t.Rows = append(t.Rows, []words.Sayer{l.name, measure.Millimetres(l.has), measure.Millimetres(l.needs),
			l.spare.Amount(), measure.Error{Amount: l.spare.Margin()}, verdict(l, i == binds)})
	}
	return t
}

// verdict says how a limit stands.
func verdict(l limit, binds bool) words.Text {
	spare, error := float64(l.spare.Value), float64(l.spare.Uncertainty)
	switch {
	case !l.spare.Exists():
		return words.Of("not known: look it up or measure it")
	case spare < 0:
		return words.Of("not met")
	case spare < error:
		return words.Of("met, but by less than the measuring errors")
	case binds:
		return words.Of("met; this one binds first")
	}
	return words.Of("met")
}

func notePost(v calculators.Values, r *calculators.Result, all [4]limit) {
	if room := all[0].spare; room.Exists() && room.Value < 0 {
		r.Note(calculators.CheckNote, "Pushed all the way in, this post still holds the saddle {0} above your height. It needs less travel.", measure.Millimetres(-float64(room.Value)))
	}
	for _, l := range all[2:] {
		if !l.spare.Exists() && v.Has(measure.TravelPost) {
			r.Note(calculators.CheckNote, "{0} was not given, so nothing here says that the post is deep enough. It is a safety limit: find it in the manual before you ride.", l.ask.Named())
		}
	}
	// Where either of the two is not known this is false, because it compares with NaN.
	if v.Of(measure.InsertionPost) < MarkAtLeast(v.Of(measure.PostDiameter)) {
		r.Note(calculators.CheckNote, "United States law puts the mark at least two diameters above the post’s lower end, {0} here. Yours lies lower: look at the post again.", measure.Millimetres(MarkAtLeast(v.Of(measure.PostDiameter))))
	}
	r.Note(calculators.PlainNote, "The insertion limits are never traded for travel. Nobody knows how much travel is enough: no study of dropper posts was found.")
}
