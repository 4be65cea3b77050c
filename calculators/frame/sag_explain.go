package frame

import (
	"math"

	"plumbline/calculators"
	"plumbline/calculators/fit"
	"plumbline/calculators/geometry"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// The share of travel that is usual as sag, percent: common practice, the fork a
// little less than the rear.
const usualSagFrom, usualSagTo = 20, 30

func explainSag(v calculators.Values, r *calculators.Result) {
	chart, p := fit.Bike(v)
	if p != nil {
		return
	}
	both, err := geometry.Sagged(chart, v.Of(measure.ForkTravel), v.Of(measure.SagFront), v.Of(measure.RearTravel),
		v.Of(measure.SagRear))
	if err != nil {
		return
	}
	explainRings(v, r, chart)
	for _, set := range []struct {
		answer *calculators.Answer
		typed  *measure.Quantity
	}{{r.At(sagFrontToSet), measure.SagFront}, {r.At(sagRearToSet), measure.SagRear}} {
		set.answer.Meaning = words.Of("A usual start. Taken over, it is what to set next.")
		if v.Given(set.typed) { // what was typed is in the record already
			set.answer.Feeds, set.answer.Meaning = nil, words.Of("As you typed it.")
		}
	}
	explainAngles(v, r)
	r.Tables = append(r.Tables, sagTable(r))
	if t := wrongTable(v, r); len(t.Rows) > 0 {
		r.Tables = append(r.Tables, t)
	}
	if v.Is(measure.SagRead, "standing") {
		r.Note(calculators.PlainNote,
			"Read standing, with the weight on level pedals, the fork sinks more and the rear less than read "+
				"seated. Write the posture beside the number and always use the same.")
	} else {
		r.Note(calculators.PlainNote,
			"Read seated, the rear sinks more and the fork less than read standing. Write the posture beside the "+
				"number and always use the same.")
	}
	if v.Of(measure.RearTravel) > 0 {
		r.Note(calculators.PlainNote,
			"A percentage of the shock’s stroke is nearly the same percentage of the travel, not exactly: most "+
				"linkages multiply more at one end. Where the maker gives millimetres at the shock, use those. The "+
				"rear axle is taken to rise straight up.")
	}
	r.Note(calculators.PlainNote,
		"All this is at rest. While you ride, damping, pedalling and braking change it, and we found no published "+
			"measurement of how much. Studies looked at effort instead: six men climbed as fast on full as on "+
			"front suspension, and a review found little lost by bobbing on most ground.")
	r.Figure = sagFigure(v, r, chart, both)
}

// explainRings says where the rubber rings should stand.
func explainRings(v calculators.Values, r *calculators.Result, b geometry.Bike) {
	fork, shock := r.At(forkSag), r.At(shockSag)
	switch travel := v.Of(measure.ForkTravel); {
	case travel == 0:
		fork.Meaning = words.Of("A rigid fork does not sink.")
	default:
		fork.Low, fork.High = calculators.Number(travel*usualSagFrom/100), calculators.Number(travel*usualSagTo/100)
		fork.Meaning = words.Of("Push the ring to the seal, get on gently, get off, and the ring stands here. The "+
			"fork slides along the slanting steering axis, so the front comes down {0}. Good feels level, with all "+
			"the travel used once on the day’s biggest hit.",
			measure.Millimetres(float64(fork.Value)*math.Sin(b.HeadAngle*math.Pi/180)))
	}
	switch {
	case v.Of(measure.RearTravel) == 0:
		shock.Meaning = words.Of("No rear travel, so nothing sinks here.")
	case !shock.Exists():
		shock.Meaning = words.Of("Give {0} to have it in millimetres at the ring.", measure.ShockStroke.Named())
	default:
		stroke := v.Of(measure.ShockStroke)
		shock.Low, shock.High = calculators.Number(stroke*usualSagFrom/100), calculators.Number(stroke*usualSagTo/100)
		shock.Meaning = words.Of("Here the ring stands when the rear axle has risen {0} in the frame. A ruler "+
			"along the shock reads half a millimetre, so believe no more than that.", r.At(rearRise).Uncertain())
	}
}

// explainAngles says what the sunk bike's numbers do.
func explainAngles(v calculators.Values, r *calculators.Result) {
	headChange, seatChange, heightChange := r.At(sagChange.headAngle), r.At(sagChange.seatAngle),
		r.At(sagChange.bbHeight)
	tip := float64(headChange.Value)
	head, seat, height := r.At(sagHeadAngle), r.At(sagSeatAngle), r.At(sagHeight)
	switch {
	case tip > 0.05:
		head.Meaning = words.Of("{0} against the chart: the front sinks further, so the whole bike tips forward "+
			"under you.", signed{headChange.Uncertain()})
		seat.Meaning = words.Of("{0} against the chart. You sit further over the pedals than the chart says.",
			signed{seatChange.Uncertain()})
	case tip < -0.05:
		head.Meaning = words.Of("{0} against the chart: the rear sinks further, so the whole bike tips back under "+
			"you.",
			signed{headChange.Uncertain()})
		seat.Meaning = words.Of("{0} against the chart. You sit further behind the pedals than the chart says, and "+
			"a climb takes off more.", signed{seatChange.Uncertain()})
	default:
		head.Meaning = words.Of("As on the chart: both ends sink alike, and the bike only comes down.")
		seat.Meaning = words.Of("As on the chart.")
	}
	height.Meaning = words.Of("{0} against the unloaded bike. Pedal strikes are counted from here.",
		signed{heightChange.Uncertain()})
}

// sagTable shows the eight numbers unloaded, with the fork alone sunk and with
// both ends sunk.
func sagTable(r *calculators.Result) calculators.Table {
	t := calculators.Table{Name: "sag",
		Caption: words.Of("The bike unloaded, with the fork alone sunk, and with both ends sunk"),
		Columns: []calculators.Column{
			{Name: "number", Label: words.Of("Number")},
			{Name: "before", Label: words.Of("Unloaded")},
			{Name: "fork", Label: words.Of("Fork alone")},
			{Name: "after", Label: words.Of("Both ends")},
			{Name: "change", Label: words.Of("Change")},
		}}
	before, fork, after, change := unloaded.list(), forkSunk.list(), bothSunk.list(), sagChange.list()
	for i, o := range before {
		t.Rows = append(t.Rows, []words.Sayer{words.Of(o.Label), withUnit(r.At(o).Uncertain()),
			withUnit(r.At(fork[i]).Uncertain()),
			withUnit(r.At(after[i]).Uncertain()), withUnit(signed{r.At(change[i]).Uncertain()})})
	}
	return t
}

// wrongTable shows what sag that is off does, for the ends that have travel.
func wrongTable(v calculators.Values, r *calculators.Result) calculators.Table {
	t := calculators.Table{Name: "wrong-sag", Caption: words.Of("What a wrong sag does"),
		Columns: []calculators.Column{
			{Name: "setting", Label: words.Of("Setting")},
			{Name: "head-angle", Label: words.Of("Head angle"), Unit: "deg"},
			{Name: "seat-angle", Label: words.Of("Seat angle"), Unit: "deg"},
			{Name: "bb-height", Label: words.Of("Bottom bracket"), Unit: "mm"},
		}}
	for _, w := range wrongSettings {
		rigid := w.front != 0 && v.Of(measure.ForkTravel) == 0 || w.rear != 0 && v.Of(measure.RearTravel) == 0
		if head := r.At(w.head); head.Exists() && !rigid {
			t.Rows = append(t.Rows, []words.Sayer{words.Of(w.label, measure.Percentage(wrongBy)),
				signed{head.Uncertain()},
				signed{r.At(w.seat).Uncertain()}, signed{r.At(w.height).Uncertain()}})
		}
	}
	return t
}
