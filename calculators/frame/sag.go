package frame

import (
	"math"
	"slices"

	"plumbline/calculators"
	"plumbline/calculators/caution"
	"plumbline/calculators/fit"
	"plumbline/calculators/geometry"
	"plumbline/calculators/literature"
	"plumbline/calculators/measure"
)

// Sag answers where the rubber rings should stand, and what bike is left under
// the rider. Its angles feed nothing: a chart is of the unloaded bike.
func Sag() *calculators.Calculator {
	return &calculators.Calculator{
		Name: "suspension-sag", Section: calculators.Frame,
		Title: "Suspension sag", Question: "How far should both ends sink, and what does that do to the bike?",
		Scenario: "Larch Hollow’s test bike with 150 mm of travel in front and 140 mm at the rear, set seated.",
		Inputs: slices.Concat(
			fit.SagInputs(),
			[]calculators.Input{
				{Quantity: measure.ShockStroke, Example: "55", Optional: true},
				{Quantity: measure.SagRead, Folded: true, Assume: calculators.Fixed(0, 0, "the usual way to set it")},
			},
			fit.ChartInputs(), fit.WheelInputs()),
		Readings: []calculators.Measured{
			{Name: "fork-sag", Label: "Ring on the stanchion", Unit: measure.Mm, Between: "seal to rubber ring, along the fork"},
			{Name: "shock-sag", Label: "Ring on the shock", Unit: measure.Mm, Finer: 1, Between: "seal to rubber ring, along the shock"},
			{Name: "head-angle", Label: "Head angle at sag", Unit: measure.Deg, Between: "steering axis above the ground, both ends sunk"},
			{Name: "seat-angle", Label: "Seat angle at sag", Unit: measure.Deg, Between: "effective, above the ground, both ends sunk"},
			{Name: "bb-height", Label: "Bottom bracket at sag", Unit: measure.Mm, Between: "ground to bottom-bracket centre, both ends sunk"},
		},
		Workings: sagWorkings(),
		Sources:  []*literature.Source{literature.Moore2012, literature.GUM2008, literature.CommonPractice},
		Cautions: []*caution.Caution{caution.AirSpring, caution.FirstRide},
		Solve:    solveSag,
		Explain:  explainSag,
	}
}

// wrongBy is the error of sag that the table of wrong settings shows, percent.
const wrongBy = 5

// wrongs are the wrong settings of the table: what is added to the sag in front
// and at the rear, percent.
var wrongs = [4][2]float64{{wrongBy, 0}, {-wrongBy, 0}, {0, wrongBy}, {0, -wrongBy}}

// Where the workings of the sag stand: eight numbers unloaded, with the fork
// alone sunk, with both ends sunk, and the change; then three numbers for each
// wrong setting; then how far front and rear come down.
const (
	wUnloaded = iota * numbers
	wFork
	wBoth
	wChange
	wWrong
	wDrops = wWrong + 3*len(wrongs)
)

func sagWorkings() []calculators.Measured {
	m := slices.Concat(changed("unloaded-", "unloaded"), changed("fork-", "fork sunk"), changed("both-", "both sunk"), changed("change-", "change"))
	for range wrongs {
		m = append(m,
			calculators.Measured{Name: "wrong-head", Label: "Head angle", Unit: measure.Deg, Finer: 1},
			calculators.Measured{Name: "wrong-seat", Label: "Seat angle", Unit: measure.Deg, Finer: 1},
			calculators.Measured{Name: "wrong-height", Label: "Bottom bracket", Unit: measure.Mm, Finer: 1})
	}
	return append(m, calculators.Measured{Name: "rear-rise", Label: "Rear axle rises in the frame", Unit: measure.Mm})
}

func solveSag(v calculators.Values, out []float64) *calculators.Problem {
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
	out[0] = fork * front / 100
	out[1] = math.NaN()
	if v.Has(measure.ShockStroke) {
		out[1] = v.Of(measure.ShockStroke) * rear / 100
	}
	out[2], out[3], out[4] = both.HeadAngle, both.SeatAngle, both.BBHeight()
	w := out[5:]
	was, half, is := numbersOf(chart), numbersOf(alone), numbersOf(both)
	for i := range was {
		w[wUnloaded+i], w[wFork+i], w[wBoth+i], w[wChange+i] = was[i], half[i], is[i], is[i]-was[i]
	}
	for i, d := range wrongs {
		x := w[wWrong+3*i:]
		x[0], x[1], x[2] = math.NaN(), math.NaN(), math.NaN()
		if b, err := geometry.Sagged(chart, fork, front+d[0], travel, rear+d[1]); err == nil {
			x[0], x[1], x[2] = b.HeadAngle-both.HeadAngle, b.SeatAngle-both.SeatAngle, b.BBHeight()-both.BBHeight()
		}
	}
	w[wDrops] = travel * rear / 100
	return nil
}
