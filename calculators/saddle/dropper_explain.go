package saddle

import (
	"math"

	"plumbline/calculators"
	"plumbline/calculators/fit"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// limits are the four in the order of the table: room, depth, both insertions.
func limits(v calculators.Values, r *calculators.Result) []fit.Limit {
	p := fit.PostOf(v)
	both := fit.Insertions(v, r.At(overPost), r.At(overFrame))
	return append([]fit.Limit{
		{Name: words.Of("Room above the collar"), Spare: r.At(roomLeft), Has: p.Exposed,
			Needs: v.Of(measure.PostCollar) + v.Of(measure.TravelPost) + v.Of(measure.PostHead),
			Ask:   measure.TravelPost},
		{Name: words.Of("Depth in the seat tube"), Spare: r.At(depthLeft), Has: v.Of(measure.FreeDepth),
			Needs: p.Inside,
			Ask:   measure.FreeDepth},
	}, both[:]...)
}

func explainDropper(v calculators.Values, r *calculators.Result) {
	all := limits(v, r)
	both := [2]fit.Limit(all[2:])
	explainTravel(v, r)
	explainInsertion(r, both)
	explainDepth(v, r)
	if v.Has(measure.TravelPost) {
		r.Tables = append(r.Tables, fit.LimitTable(words.Of("The four limits of this post"), all))
	}
	notePost(v, r, all[0].Spare, both)
	r.Figure = dropperFigure(v, r, fit.Binding(all))
}

func explainTravel(v calculators.Values, r *calculators.Result) {
	x, room, depth := r.At(longestTravel), r.At(travelByRoom), r.At(travelByDepth)
	switch {
	case x.Value <= 0:
		x.Meaning = words.Of("Nothing is left for a dropper: the seat tube is too long for this saddle height.")
	case !depth.Exists():
		x.Meaning = words.Of("The room above the frame allows this much; whether the tube is deep enough is not " +
			"known yet. Round down to a length that is sold.")
	case depth.Value < room.Value:
		x.Meaning = words.Of("The depth in the tube is the limit: the room above would allow {0}. This takes a post "+
			"built like the one measured, which grows by two millimetres for each of travel. Round down to a length "+
			"that is sold.", room.Amount())
	default:
		x.Meaning = words.Of("The room above the collar is the limit: the depth would allow {0}. A lower collar or "+
			"head, or a thinner saddle, gains a little. Round down to a length that is sold.", depth.Amount())
	}
	apart, errors := math.Abs(float64(depth.Value-room.Value)), float64(depth.Uncertainty+room.Uncertainty)
	if depth.Exists() && apart < errors {
		r.Note(calculators.CheckNote, "Room and depth allow nearly the same travel, and within the measurements’ "+
			"errors either may be the limit; the ± allows for both.")
	}
}

func explainInsertion(r *calculators.Result, both [2]fit.Limit) {
	x := r.At(postInsertion)
	if !x.Exists() {
		x.Meaning = words.Of("Type {0} and {1} of the post that you have in mind to see this.",
			measure.TravelPost.Named(), measure.PostLength.Named())
		return
	}
	x.Meaning = fit.DeepEnough(both)
}

func explainDepth(v calculators.Values, r *calculators.Result) {
	x := r.At(depthLeft)
	switch {
	case !x.Exists():
		x.Meaning = words.Of("Type the post’s length and travel and {0} to see whether it goes in.",
			measure.FreeDepth.Named())
	case x.Value < 0:
		x.Meaning = words.Of("The post meets the obstacle before the saddle is down at its height. Do not force " +
			"it: only a shorter post helps.")
	default:
		x.Meaning = words.Of("The post clears the obstacle by this much; the cable or hose needs some of it for " +
			"its bend.")
	}
}

func notePost(v calculators.Values, r *calculators.Result, room *calculators.Answer, both [2]fit.Limit) {
	if room.Exists() && room.Value < 0 {
		r.Note(calculators.CheckNote, "Pushed all the way in, this post still holds the saddle {0} above your "+
			"height. It needs less travel.", measure.Millimetres(-float64(room.Value)))
	}
	if v.Has(measure.TravelPost) {
		fit.NoteMissingMinimums(v, r, both)
	}
	fit.NoteLowMark(v, r)
	r.Note(calculators.PlainNote, "Do not give up insertion depth to gain travel. Nobody knows how much travel is "+
		"enough: we found no study of dropper posts.")
}
