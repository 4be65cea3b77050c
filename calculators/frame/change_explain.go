package frame

import (
	"math"

	"plumbline/calculators"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// told is what a number that grows or shrinks does to the ride, and below which
// change nobody can tell.
type told struct {
	grows, shrinks words.Text
	little         float64
}

// effects are what a change of each number does. Which change a rider can tell apart
// is common practice.
var effects = map[*calculators.Output]told{
	changeBy.headAngle: {words.Of("Steeper: quicker to answer, less calm on steep ground."),
		words.Of("Slacker: calmer on steep ground, and the bar takes more effort at walking pace."), 0.3},
	changeBy.seatAngle: {words.Of("Steeper: you sit further over the pedals and load the front wheel more on climbs."),
		words.Of("Slacker: you sit further behind the pedals, and the front wheel wanders sooner on climbs. Moving " +
			"the saddle forward takes some of it back."), 0.3},
	changeBy.bbHeight: {words.Of("Higher: pedals strike later, and the bike feels taller in turns."),
		words.Of("Lower: planted in turns, and the pedals strike sooner."), 3},
	changeBy.reach: {words.Of("Longer: more room when you stand."), words.Of("Shorter: less room when you stand."), 3},
	changeBy.stack: {words.Of("The head tube is higher: the bar comes up by as much."),
		words.Of("The head tube is lower: the bar goes down by as much."), 3},
	changeBy.trail: {words.Of("More: steadier at speed, heavier at walking pace."),
		words.Of("Less: lighter to steer, less steady at speed."), 3},
	changeBy.wheelbase: {words.Of("Longer: calmer straight on, wider in a turn."),
		words.Of("Shorter: tighter in a turn, less calm straight on."), 5},
	changeBy.topTube: {words.Of("Longer: more room when you sit."), words.Of("Shorter: less room when you sit."), 3},
}

// changeMeaning says by how much a number changed and what that does.
func changeMeaning(change, before *calculators.Answer) words.Text {
	d, does := float64(change.Value), effects[change.Output]
	switch {
	case math.Abs(d) < 1e-9:
		return words.Of("As before.")
	case math.Abs(d) < does.little:
		return words.Of("{0} from {1}: too little to feel.", signed{change.Uncertain()}, before.Amount())
	case d > 0:
		return words.Of("{0} from {1}. {2}", signed{change.Uncertain()}, before.Amount(), does.grows)
	}
	return words.Of("{0} from {1}. {2}", signed{change.Uncertain()}, before.Amount(), does.shrinks)
}

// signed says a change with its sign, a plus too.
type signed struct{ measure.Uncertain }

// Say writes the change with its ± and unit.
func (s signed) Say(r *words.Reader) string {
	if s.Value > 0 {
		return "+" + s.Uncertain.Say(r)
	}
	return s.Uncertain.Say(r)
}

// Number writes the change without its unit.
func (s signed) Number(r *words.Reader) string {
	if s.Value > 0 {
		return "+" + s.Uncertain.Number(r)
	}
	return s.Uncertain.Number(r)
}

func explainChange(v calculators.Values, r *calculators.Result) {
	before, change := beforeChange.list(), changeBy.list()
	for i := range r.Answers {
		r.Answers[i].Meaning = changeMeaning(r.At(change[i]), r.At(before[i]))
	}
	caption := words.Of("Before and after the change")
	switch {
	case !changesParts(v) && !sags(v):
		caption = words.Of("Nothing is changed yet")
		r.Note(calculators.CheckNote, "Nothing is changed yet. Fill in a new part, or travel and sag.")
	case !changesParts(v):
		caption = words.Of("Unloaded, and at sag with you on the bike")
	case sags(v):
		caption = words.Of("Before and after the change, both at sag")
		r.Note(calculators.PlainNote,
			"Travel and sag are known, so both bikes are shown as you ride them: before and after at the same sag "+
				"in millimetres.")
	}
	r.Tables = append(r.Tables, changeTable(r, caption))
	if v.Has(measure.AngleHeadset) {
		explainHeadset(v, r)
	}
	if changesParts(v) {
		r.Note(calculators.PlainNote,
			"The saddle tips with the frame: set its tilt again with a level, then look at setback and grips.")
	}
	r.Figure = changeFigure(v, r)
}

// changeTable lists the numbers before and after, and the change, each with its ±.
func changeTable(r *calculators.Result, caption words.Text) calculators.Table {
	t := calculators.Table{Name: "change", Caption: caption, Columns: []calculators.Column{
		{Name: "number", Label: words.Of("Number")},
		{Name: "before", Label: words.Of("Before")},
		{Name: "after", Label: words.Of("After")},
		{Name: "change", Label: words.Of("Change")},
	}}
	before, change := beforeChange.list(), changeBy.list()
	for i, o := range afterChange.list() {
		t.Rows = append(t.Rows, []words.Sayer{words.Of(o.Label), withUnit(r.At(before[i]).Uncertain()),
			withUnit(r.At(o).Uncertain()), withUnit(signed{r.At(change[i]).Uncertain()})})
	}
	return t
}

// withUnit says a number with its unit in every cell, for columns that hold
// degrees and millimetres.
func withUnit(x words.Sayer) words.Text { return words.Of("{0}", x) }

// explainHeadset shows why a headset marked with a degree does not give a degree
// on the ground.
func explainHeadset(v calculators.Values, r *calculators.Result) {
	tip, left := r.At(headsetTip), r.At(headsetGround)
	if !left.Exists() {
		return
	}
	marked := measure.Uncertain{Amount: measure.Amount{Value: v.Of(measure.AngleHeadset), Unit: measure.Deg, Extra: 1},
		Plus: 2 * v.SD(measure.AngleHeadset)}
	if v.Of(measure.AngleHeadset) > 0 {
		tip.Label = words.Of("The frame tips back, because the front comes up")
	}
	t := calculators.Table{Name: "headset", Caption: words.Of("Why the mark on the headset is not what you get"),
		Columns: []calculators.Column{
			{Name: "step", Label: words.Of("Step")}, {Name: "angle", Label: words.Of("Head angle"), Unit: "deg"},
		}, Rows: [][]words.Sayer{
			{words.Of("The headset turns the axis in the frame"), signed{marked}},
			{tip.Label, signed{tip.Uncertain()}},
			{left.Label, signed{left.Uncertain()}},
		}}
	r.Tables = append(r.Tables, t)
	if v.Of(measure.AngleHeadset) < 0 {
		r.Note(calculators.PlainNote,
			"The headset turns the steering axis by {0} in the frame. That swings the axle forward and up, so the "+
				"front of the bike comes down until the wheel stands again, and the whole frame tips forward with "+
				"it: {1} is what is left on the ground.",
			signed{marked}, signed{left.Uncertain()})
		return
	}
	r.Note(calculators.PlainNote,
		"The headset turns the steering axis by {0} in the frame. That swings the axle back and down, so the front "+
			"of the bike comes up, and the whole frame tips back with it: {1} is what is left on the ground.",
		signed{marked}, signed{left.Uncertain()})
}
