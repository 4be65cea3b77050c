package cockpit

import (
	"math"
	"slices"

	"plumbline/calculators"
	"plumbline/calculators/fit"
	"plumbline/calculators/geometry"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

func explainStem(v calculators.Values, r *calculators.Result) {
	w, p := wantedOf(v)
	if p != nil {
		return
	}
	allowed := fit.AllowedSpacers(v)
	explainSpacers(v, w, r, allowed)
	for _, o := range []*calculators.Output{gripXAfter, gripYAfter} {
		r.At(o).Meaning = words.Of("Measure it again on the bike afterwards: it should match to a few millimetres.")
	}
	all, n := w.combine(allowed)
	within, list := n > 0, allowedFirst(nearest(all, n))
	best := simplest(list)
	shown, star := shortList(list, best)
	r.Tables = append(r.Tables, combinationTable(w, shown, star, within))
	if c := costOf(v, w); c.hasTrunk || c.hasElbow || c.hasRoom {
		r.Tables = append(r.Tables, costTable(c))
		r.Note(calculators.PlainNote, "What a move costs is worked out on the level with a usual crank and pedal. "+
			"It is a difference, so most errors cancel; no size is judged by it.")
	} else {
		r.Note(calculators.PlainNote, "Give {0}, {1}, {2} and {3} to see what the move costs you seated and "+
			"standing.", measure.Stature.Named(), measure.Inseam.Named(), measure.SaddleHeight.Named(),
			measure.SeatAngle.Named())
	}
	noteStem(w, r, within, best)
	r.Verdict = stemVerdict(w, list, best, within)
	if best >= 0 {
		proposeParts(v, r, w.parts, list[best].parts)
	}
	r.Figure = stemFigure(w, list, best)
	if len(list) > 0 {
		f := r.Figure
		f.Frame(words.Of("The grips before and after"), f.Marks...)
		f.Frames = append(f.Frames, stemPlot(w, shown, star))
		f.Marks, f.Least, f.Apart = nil, 22, true
	}
}

// allowedFirst puts what the steerer does not allow last, each kind the nearest first.
func allowedFirst(list []combination) []combination {
	list = slices.Clone(list)
	last := func(c combination) int {
		if c.over > 0 {
			return 1
		}
		return 0
	}
	slices.SortStableFunc(list, func(a, b combination) int { return last(a) - last(b) })
	return list
}

// stemVerdict answers which parts: what to change on the bike as it is, or that no parts
// do it.
func stemVerdict(w wanted, list []combination, best int, within bool) words.Text {
	if best < 0 {
		return words.Of("The steerer is too short for this move")
	}
	c, now := list[best].parts, w.parts
	var change words.List
	if c.Stem != now.Stem || c.StemAngle != now.StemAngle {
		change = append(change, words.Of("a stem of {0} at {1}", measure.Sold(c.Stem),
			measure.Degrees(c.StemAngle)))
	}
	if c.Rise != now.Rise {
		change = append(change, words.Of("a bar with {0} of rise", measure.Sold(c.Rise)))
	}
	switch more := c.Spacers - now.Spacers; {
	case more > 0:
		change = append(change, words.Of("{0} more spacers", measure.Sold(more)))
	case more < 0:
		change = append(change, words.Of("{0} fewer spacers", measure.Sold(-more)))
	}
	switch {
	case len(change) == 0 && within:
		return words.Of("Keep the parts you have")
	case len(change) == 0:
		return words.Of("No part on sale comes nearer than those on the bike")
	case !within:
		return words.Of("Nothing comes close; the nearest is {0}", change)
	}
	return words.Of("Use {0}", change)
}

// proposeParts proposes what the chosen parts change, as long as none of it rests on a
// guess: "10 mm more" than a guessed stack is no stack to set. A ring that comes from
// above the stem is missing there.
func proposeParts(v calculators.Values, r *calculators.Result, now, chosen geometry.Cockpit) {
	for _, p := range []struct {
		part        *measure.Quantity
		now, chosen float64
	}{
		{measure.StemLength, now.Stem, chosen.Stem},
		{measure.StemAngle, now.StemAngle, chosen.StemAngle},
		{measure.Spacers, now.Spacers, chosen.Spacers},
		{measure.BarRise, now.Rise, chosen.Rise},
	} {
		if p.now == p.chosen {
			continue
		}
		if !v.Given(p.part) {
			r.Proposed = nil
			return
		}
		r.Propose(p.part, p.chosen)
	}
	if v.Has(measure.SpacersAbove) && chosen.Spacers != now.Spacers {
		r.Propose(measure.SpacersAbove, max(0, v.Of(measure.SpacersAbove)+now.Spacers-chosen.Spacers))
	}
}

func explainSpacers(v calculators.Values, w wanted, r *calculators.Result, allowed float64) {
	x, left := r.At(spacersChange), r.At(leftOver)
	after := v.Of(measure.Spacers) + float64(x.Value)
	switch {
	case after < 0:
		x.Meaning = words.Of("There are only {0} under the stem to take away.",
			measure.Sold(v.Of(measure.Spacers)))
	case !math.IsNaN(allowed) && after > allowed+0.5:
		x.Meaning = words.Of("That would put {0} of spacers under the stem, and the steerer allows {1}.",
			measure.Sold(after), measure.Sold(allowed))
	case math.IsNaN(allowed):
		x.Meaning = words.Of("Spacers cost nothing and can be undone, so try them first. Whether the steerer and " +
			"the fork’s maker allow this stack you have to look up.")
	default:
		x.Meaning = words.Of("Spacers cost nothing and can be undone, so try them first, in whole rings.")
	}
	left.Meaning = words.Of("A spacer slides the grips along the leaning steering axis only. Under about {0} "+
		"nobody feels the rest.", measure.Millimetres(near5))
}

// shortList returns the rows that the table shows: the nearest ten, and the one to
// begin with even if it is further down the list. star is that one's row, counted from
// 1; 0 for none.
func shortList(list []combination, best int) (shown []combination, star int) {
	const rows = 10
	shown = list[:min(rows, len(list))]
	switch {
	case best < 0:
		return shown, 0
	case best < len(shown):
		return shown, best + 1
	}
	shown = append(shown[:len(shown):len(shown)], list[best])
	return shown, len(shown)
}

// markColumn is where a table of combinations says what a set asks, or why it cannot be.
const markColumn = 1

func combinationTable(w wanted, list []combination, star int, within bool) calculators.Table {
	t := calculators.Table{Name: "combinations", Starred: star,
		Caption: words.Of("Parts that put the grips within {0} of the target, nearest first; what cannot be done last",
			measure.Millimetres(near5)),
		Columns: []calculators.Column{
			{Name: "stem", Label: words.Of("Stem"), Unit: "mm"},
			{Name: "mark", Label: words.Of("To know")},
			{Name: "angle", Label: words.Of("Angle"), Unit: "deg"},
			{Name: "spacers", Label: words.Of("Spacers"), Unit: "mm"},
			{Name: "rise", Label: words.Of("Rise"), Unit: "mm"},
			{Name: "off", Label: words.Of("Off by"), Unit: "mm"},
		}}
	if !within {
		t.Caption = words.Of("Nothing that is sold comes within {0} of the target. The nearest",
			measure.Millimetres(near5))
	}
	for _, c := range list {
		t.Rows = append(t.Rows, []words.Sayer{measure.Sold(c.parts.Stem), c.mark(w),
			measure.Degrees(c.parts.StemAngle), measure.Sold(c.parts.Spacers),
			measure.Sold(c.parts.Rise), tenth(c.off)})
	}
	return t
}

// mark says why a combination is no option, or else which parts it takes.
func (c combination) mark(w wanted) words.Text {
	switch {
	case c.over > 0:
		return words.Of("not an option: {0} of spacers more than the steerer allows", measure.Sold(c.over))
	case c.parts.Stem < normStem-normWindow || c.parts.Stem > normStem+normWindow:
		return words.Of("outside the usual stems: check the frame’s size first")
	case c.changed == 0 && c.parts.Spacers == w.parts.Spacers:
		return words.Of("as it is now")
	case c.changed == 0:
		return words.Of("spacers only")
	}
	stem := c.parts.Stem != w.parts.Stem || c.parts.StemAngle != w.parts.StemAngle
	bar := c.parts.Rise != w.parts.Rise
	switch {
	case stem && bar:
		return words.Of("another stem and another bar")
	case stem && c.parts.Stem == w.parts.Stem && c.parts.StemAngle == -w.parts.StemAngle:
		return words.Of("the same stem turned over, if its maker allows it")
	case stem:
		return words.Of("another stem")
	}
	return words.Of("another bar")
}

// costTable says what the move does to the rider.
func costTable(c cost) calculators.Table {
	t := calculators.Table{Name: "cost", Caption: words.Of("What the move does to you"),
		Columns: []calculators.Column{{Name: "what", Label: words.Of("What")},
			{Name: "change", Label: words.Of("Change")}, {Name: "feel", Label: words.Of("How it feels")}}}
	if c.hasTrunk {
		feel := words.Of("taller: easier on neck and hands")
		if c.trunk < 0 {
			feel = words.Of("lower: more work for neck and hands")
		}
		load := words.Of("the front wheel lifts and wanders sooner on climbs")
		if c.load > 0 {
			load = words.Of("the front wheel holds its line longer on climbs")
		}
		t.Rows = append(t.Rows,
			[]words.Sayer{words.Of("Trunk, seated"), measure.Difference{Amount: measure.Degrees(c.trunk)}, feel},
			[]words.Sayer{words.Of("Front wheel’s share of the weight, seated"),
				measure.Difference{Amount: measure.Amount{Value: c.load, Unit: measure.Percent, Extra: 1}}, load})
	}
	if c.hasElbow {
		feel := words.Of("more bend left to give standing")
		switch {
		case c.straightAfter:
			feel = words.Of("your arms would be straight {0} before the grips", measure.Millimetres(-c.slackAfter))
		case c.straightBefore:
			feel = words.Of("your arms reach, which they did not before")
		case c.elbow < 0:
			feel = words.Of("straighter arms standing")
		}
		t.Rows = append(t.Rows, []words.Sayer{words.Of("Elbow bend, standing ready"),
			measure.Difference{Amount: measure.Degrees(c.elbow)}, feel})
	}
	if c.hasRoom {
		t.Rows = append(t.Rows, []words.Sayer{words.Of("Room between seat and steering axis at the bar"),
			measure.Difference{Amount: tenth(c.room)}, words.Of("what a higher or lower bar alone does to it")})
	}
	return t
}

func noteStem(w wanted, r *calculators.Result, within bool, best int) {
	if left := float64(r.At(leftOver).Value); left < 0.1*w.move.Length() {
		r.Note(calculators.CheckNote, "The move lies along the steering axis, where the head angle’s own error "+
			"hardly counts. What is left over is never below zero: read its ± upwards only.")
	}
	if within && best < 0 {
		r.Note(calculators.CheckNote, "Every combination that comes near needs more spacers than the steerer "+
			"allows. They work on paper only: look for a bar with more rise, or a stem that points up.")
	}
	if w.move.Length() > 20 {
		r.Note(calculators.CheckNote, "The grips would move by {0}. Plan that as several steps, and ride in between.",
			measure.Millimetres(w.move.Length()))
	}
	r.Note(calculators.PlainNote, "Stems of about {0} are the norm now. Within about {1} of that a stem trades fit "+
		"against grip at the front wheel. Beyond it, a stem only makes up for a frame of the wrong size: common "+
		"practice, no study.", measure.Sold(normStem), measure.Sold(normWindow))
	lost := w.bike.RoomAt(w.bike.Stack()) - w.bike.RoomAt(w.bike.Stack()+10)
	kept := 10 * cotangent(w.bike.SeatTubeAngle)
	if lost > 0 {
		r.Note(calculators.PlainNote, "On this bike every {0} of height from spacers takes {1} off the room "+
			"between seat and bar, so the bike feels smaller. A frame with more stack and the same reach does the "+
			"opposite: {2} more room for the same height.",
			measure.Sold(10), tenth(lost), tenth(kept))
	}
	r.Note(calculators.PlainNote, "The steerer’s top may be at most {0} below the top of the stem, and no threaded "+
		"part may be clamped. Where a maker is stricter, follow the maker.", measure.Millimetres(5))
	r.Note(calculators.PlainNote, "Tingling hands, a sore neck or back: check the saddle’s height and tilt, then "+
		"one spacer up. If it comes back or outlasts the ride, stop and see a clinician; no stem treats it.")
}

func cotangent(degrees float64) float64 { return 1 / math.Tan(degrees*math.Pi/180) }
