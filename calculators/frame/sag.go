package frame

import (
	"slices"

	"plumbline/calculators"
	"plumbline/calculators/caution"
	"plumbline/calculators/fit"
	"plumbline/calculators/geometry"
	"plumbline/calculators/literature"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// Sag answers where the rubber rings should stand, and what bike is left under
// the rider. Its angles feed nothing: a chart is of the unloaded bike.
func Sag() *calculators.Calculator {
	return &calculators.Calculator{
		Name: "suspension-sag", Section: calculators.Frame,
		Title: "Suspension sag", Question: "How far should both ends sink, and what does that do to the bike?",
		Scenario: "The test bike with 150 mm of travel in front and 140 mm at the rear, set seated.",
		Inputs: slices.Concat(
			fit.SagInputs(),
			[]calculators.Input{
				{Quantity: measure.ShockStroke, Example: "55", Optional: true},
				{Quantity: measure.SagRead, Assume: calculators.Fixed(0, 0, "the usual way to set it")},
			},
			fit.ChartInputs(), fit.WheelInputs()),
		First: []*measure.Quantity{measure.ForkTravel, measure.SagFront, measure.RearTravel, measure.SagRear},
		Answers: []*calculators.Output{forkSag, shockSag, sagHeadAngle, sagSeatAngle, sagHeight,
			sagFrontToSet, sagRearToSet},
		Workings: sagWorkings(),
		Sources: []*literature.Source{literature.Moore2012, literature.MacRae2000, literature.Nielens2004,
			literature.GUM2008, literature.CommonPractice},
		Cautions: []*caution.Caution{caution.AirSpring, caution.FirstRide},
		Solve:    solveSag,
		Explain:  explainSag,
	}
}

// What it answers.
var (
	forkSag = &calculators.Output{Name: "fork-sag", Label: "Ring on the stanchion", Unit: measure.Mm,
		Between: "seal to rubber ring, along the fork"}
	shockSag = &calculators.Output{
		Name:    "shock-sag",
		Label:   "Ring on the shock",
		Beside:  true,
		Unit:    measure.Mm,
		Finer:   1,
		Between: "seal to rubber ring, along the shock",
	}
	sagHeadAngle = &calculators.Output{Name: "head-angle", Label: "Head angle at sag", Unit: measure.Deg,
		Between: "steering axis above the ground, both ends sunk"}
	sagSeatAngle = &calculators.Output{Name: "seat-angle", Label: "Seat angle at sag", Unit: measure.Deg,
		Between: "effective, above the ground, both ends sunk"}
	sagHeight = &calculators.Output{Name: "bb-height", Label: "Bottom bracket at sag", Unit: measure.Mm,
		Between: "ground to bottom-bracket centre, both ends sunk"}
	sagFrontToSet = &calculators.Output{Name: "sag-front", Label: "Sag to set, fork", Unit: measure.Percent,
		Folded: true, Feeds: measure.SagFront, Between: "share of the fork’s travel"}
	sagRearToSet = &calculators.Output{Name: "sag-rear", Label: "Sag to set, rear", Unit: measure.Percent,
		Folded: true, Feeds: measure.SagRear, Between: "share of the rear wheel’s travel"}
)

// The bike unloaded, with the fork alone sunk, with both ends sunk, and what both
// ends change; and how far the rear axle rises in the frame.
var (
	unloaded  = newBikeOutputs("unloaded-", 0)
	forkSunk  = newBikeOutputs("fork-", 0)
	bothSunk  = newBikeOutputs("both-", 0)
	sagChange = newBikeOutputs("change-", 1)
	rearRise  = &calculators.Output{Name: "rear-rise", Label: "Rear axle rises in the frame", Unit: measure.Mm}
)

// wrongBy is the error of sag that the table of wrong settings shows, percent.
const wrongBy = 5

// wrongSetting is sag that is off at one end, and what that changes about the bike.
type wrongSetting struct {
	label              words.English // with a hole for how far it is off
	front, rear        float64       // what is added to the sag, percent
	head, seat, height *calculators.Output
}

// wrongSettings are the rows of the table of wrong settings.
var wrongSettings = []wrongSetting{
	newWrongSetting("fork-deeper", "Fork {0} deeper", wrongBy, 0),
	newWrongSetting("fork-higher", "Fork {0} higher", -wrongBy, 0),
	newWrongSetting("rear-deeper", "Rear {0} deeper", 0, wrongBy),
	newWrongSetting("rear-higher", "Rear {0} higher", 0, -wrongBy),
}

func newWrongSetting(name string, label words.English, front, rear float64) wrongSetting {
	one := func(number string, label words.English, unit *measure.Unit) *calculators.Output {
		return &calculators.Output{Name: name + "-" + number, Label: label, Unit: unit, Finer: 1}
	}
	return wrongSetting{label: label, front: front, rear: rear, head: one("head", "Head angle", measure.Deg),
		seat: one("seat", "Seat angle", measure.Deg), height: one("height", "Bottom bracket", measure.Mm)}
}

func sagWorkings() []*calculators.Output {
	list := slices.Concat(unloaded.list(), forkSunk.list(), bothSunk.list(), sagChange.list(),
		[]*calculators.Output{rearRise})
	for _, w := range wrongSettings {
		list = append(list, w.head, w.seat, w.height)
	}
	return list
}

func solveSag(v calculators.Values, out calculators.Numbers) *calculators.Problem {
	chart, p := fit.Bike(v)
	if p != nil {
		return p
	}
	fork, front := v.Of(measure.ForkTravel), v.Of(measure.SagFront)
	travel, rear := v.Of(measure.RearTravel), v.Of(measure.SagRear)
	alone, err := geometry.Sagged(chart, fork, front, travel, 0)
	if err != nil {
		return noChange(err)
	}
	both, err := geometry.Sagged(chart, fork, front, travel, rear)
	if err != nil {
		return noChange(err)
	}
	out.Set(forkSag, fork*front/100)
	out.Set(sagFrontToSet, front)
	out.Set(sagRearToSet, rear)
	out.Set(rearRise, travel*rear/100)
	if v.Has(measure.ShockStroke) {
		out.Set(shockSag, v.Of(measure.ShockStroke)*rear/100)
	}
	out.Set(sagHeadAngle, both.HeadAngle)
	out.Set(sagSeatAngle, both.SeatAngle)
	out.Set(sagHeight, both.BBHeight())
	unloaded.setBike(out, chart)
	forkSunk.setBike(out, alone)
	bothSunk.setBike(out, both)
	sagChange.setChange(out, chart, both)
	for _, w := range wrongSettings {
		if b, err := geometry.Sagged(chart, fork, front+w.front, travel, rear+w.rear); err == nil {
			out.Set(w.head, b.HeadAngle-both.HeadAngle)
			out.Set(w.seat, b.SeatAngle-both.SeatAngle)
			out.Set(w.height, b.BBHeight()-both.BBHeight())
		}
	}
	return nil
}
