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
	"plumbline/calculators/words"
)

// Trial answers how to dress the reader's bike up as another size: with which parts the
// hands come where that size would have them, and what no part can imitate.
func Trial() *calculators.Calculator {
	return &calculators.Calculator{
		Name: "size-trial", Section: calculators.Frame,
		Title: "Ride the next size first", Question: "Which parts let you feel the next size on the bike you have?",
		Scenario: "The test bike in size M, and its size L with the same parts above the head tube.",
		Inputs: slices.Concat(
			trialSize(), fit.ChartInputs(),
			[]calculators.Input{{Quantity: measure.SeatTubeLength, Example: "420", Optional: true}},
			fit.PartsInputs(),
			[]calculators.Input{
				{Quantity: measure.SaddleHeight, Example: "736", Optional: true},
				{Quantity: measure.SpacersAbove, Example: "10", Optional: true},
				{Quantity: measure.SpacersLimit, Example: "30", Optional: true},
			},
			fit.WheelInputs()),
		Answers:  []*calculators.Output{trialAhead, trialAbove, trialStem, trialHeight, trialSaddle},
		Workings: trialWorkings(),
		Sources:  []*literature.Source{literature.GUM2008, literature.CommonPractice},
		Cautions: []*caution.Caution{caution.SteererAndStem, caution.NoWayBack, caution.HoseCheck, caution.CarbonParts,
			caution.Torque, caution.BrakeCheck, caution.FirstRide},
		Solve:   solveTrial,
		Explain: explainTrial,
	}
}

// What it answers.
var (
	trialAhead = &calculators.Output{Name: "grips-ahead", Label: "That size’s grips, further forward than " +
		"now", Unit: measure.Mm,
		Between: "the grips now, level forward to that size’s, seen from the crank axle; negative is nearer"}
	trialAbove = &calculators.Output{
		Name:    "grips-above",
		Label:   "That size’s grips, higher than now",
		Beside:  true,
		Unit:    measure.Mm,
		Between: "the grips now, straight up to that size’s, seen from the crank axle; negative is lower",
	}
	trialStem = &calculators.Output{Name: "stem-change", Label: "As stem length", Unit: measure.SoldInMm,
		Between: "your bar to that size’s, square to your steering axis; plus is a longer stem"}
	trialHeight = &calculators.Output{Name: "height-change", Label: "As height", Unit: measure.SoldInMm,
		Between: "your bar to that size’s, up along your steering axis; spacers or rise"}
	trialSaddle = &calculators.Output{Name: "saddle-shift", Label: "Saddle on its rails", Unit: measure.Mm,
		Between: "your saddle to that size’s at your saddle height, level; forward is plus"}
)

// unmatched is a number of the frame that no part changes: on this bike, on that size,
// and the difference.
type unmatched struct {
	this, that, by *calculators.Output
	of             func(geometry.Bike) float64
	without        words.Text // what the trial therefore cannot tell
}

func newUnmatched(name string, label words.English, unit *measure.Unit, without words.English,
	of func(geometry.Bike) float64) unmatched {
	one := func(prefix string, finer int) *calculators.Output {
		return &calculators.Output{Name: prefix + name, Label: label, Unit: unit, Finer: finer}
	}
	return unmatched{one("this-", 0), one("that-", 0), one("change-", 0), of, words.Of(without)}
}

// What no part can imitate. The seat tube's length is typed, the rest follows from the
// charts.
var (
	noWheelbase = newUnmatched("wheelbase", "Wheelbase", measure.Mm,
		"how calmly it runs and how wide it turns", geometry.Bike.Wheelbase)
	noFrontCentre = newUnmatched("front-centre", "Crank axle to front axle", measure.Mm,
		"how far ahead of your feet the front wheel stands on steep ground", geometry.Bike.FrontCentre)
	noFeet = newUnmatched("feet-between", "Feet from the rear wheel, of the wheelbase", measure.Percent,
		"how much of you the front wheel carries standing",
		func(b geometry.Bike) float64 { return -100 * b.Rear.X / b.Wheelbase() })
	noSeatTube = newUnmatched("seat-tube", "Seat tube", measure.Mm,
		"how far the saddle comes out of your way", nil)
	unmatchedAll = [...]unmatched{noWheelbase, noFrontCentre, noFeet, noSeatTube}
)

func trialWorkings() (list []*calculators.Output) {
	for _, n := range unmatchedAll {
		list = append(list, n.this, n.that, n.by)
	}
	return list
}

// trialSize asks for the size in question. What its chart leaves out is as on the
// reader's bike.
func trialSize() []calculators.Input {
	const same = "as on the bike now"
	like := func(q *measure.Quantity) func(calculators.Values) (calculators.Assumption, bool) {
		return func(v calculators.Values) (calculators.Assumption, bool) {
			return calculators.Assumption{Value: v.Of(q), From: same}, v.Has(q)
		}
	}
	return []calculators.Input{
		{Quantity: measure.NewReach, Example: "485"},
		{Quantity: measure.NewStack, Example: "640"},
		{Quantity: measure.NewHeadAngle, Example: "65.5", Assume: like(measure.HeadAngle)},
		{Quantity: measure.NewSeatAngle, Example: "76.5", Assume: like(measure.SeatAngle)},
		{Quantity: measure.NewChainstay, Example: "440", Assume: like(measure.Chainstay)},
		{Quantity: measure.NewSeatTubeLength, Example: "450", Optional: true},
		{Quantity: measure.NewBBDrop, Assume: like(measure.BBDrop)},
		{Quantity: measure.NewStemLength, Assume: like(measure.StemLength)},
	}
}

// trialPair is the reader's bike and the size in question, each with its parts and where
// they put the hands. Points are from the bottom bracket, mm.
type trialPair struct {
	bike, size       geometry.Bike
	parts, new       geometry.Cockpit
	now, there       geometry.Hold
	saddle, newPlace geometry.Point
	seated           bool
}

// trialOf reads both. The size's wheels and fork are the reader's.
func trialOf(v calculators.Values) (s trialPair, p *calculators.Problem) {
	if s.bike, p = fit.Bike(v); p != nil {
		return s, p
	}
	chart := fit.Chart(v)
	chart.Reach, chart.Stack = v.Of(measure.NewReach), v.Of(measure.NewStack)
	chart.HeadAngle, chart.SeatAngle = v.Of(measure.NewHeadAngle), v.Of(measure.NewSeatAngle)
	chart.Chainstay, chart.SeatTubeAngle = v.Of(measure.NewChainstay), 0
	if v.Has(measure.NewBBDrop) {
		chart.Drop, chart.BBHeight = v.Of(measure.NewBBDrop), 0
	}
	size, err := chart.Solve()
	if err != nil {
		return s, &calculators.Problem{Input: measure.NewReach.Key,
			Text: words.Of("The size’s numbers make no bike. Check its reach, stack and angles.")}
	}
	s.size, s.parts = size, fit.Parts(v)
	s.new = s.parts
	s.new.Stem = v.Of(measure.NewStemLength)
	s.now, _ = s.parts.Hold(s.bike)
	s.there, _ = s.new.Hold(s.size)
	if v.Has(measure.SaddleHeight) {
		// On the effective seat line, because a chart of the next size has no other.
		line := s.bike
		line.SeatTubeKnown, line.SeatTubeAngle, line.SeatTubeAhead = false, line.SeatAngle, 0
		var here, fine bool
		s.saddle, here = line.SaddlePoint(v.Of(measure.SaddleHeight))
		s.newPlace, fine = s.size.SaddlePoint(v.Of(measure.SaddleHeight))
		s.seated = here && fine
	}
	return s, nil
}

func solveTrial(v calculators.Values, out calculators.Numbers) *calculators.Problem {
	s, p := trialOf(v)
	if p != nil {
		return p
	}
	move := s.there.Grip.Sub(s.now.Grip)
	out.Set(trialAhead, move.X)
	out.Set(trialAbove, move.Y)
	out.Set(trialStem, move.Dot(s.bike.AxisAhead()))
	out.Set(trialHeight, -move.Dot(s.bike.AxisDown()))
	if s.seated {
		out.Set(trialSaddle, s.newPlace.X-s.saddle.X)
	}
	for _, n := range unmatchedAll {
		if n.of != nil {
			out.Set(n.this, n.of(s.bike))
			out.Set(n.that, n.of(s.size))
			out.Set(n.by, n.of(s.size)-n.of(s.bike))
		}
	}
	if v.Has(measure.SeatTubeLength) {
		out.Set(noSeatTube.this, v.Of(measure.SeatTubeLength))
	}
	if v.Has(measure.NewSeatTubeLength) {
		out.Set(noSeatTube.that, v.Of(measure.NewSeatTubeLength))
	}
	out.Set(noSeatTube.by, out.At(noSeatTube.that)-out.At(noSeatTube.this))
	return nil
}

// rolls are how far the bar is rolled on trial, degrees from where it is: common
// practice, what the grips' shape and the levers bear.
var rolls = [...]float64{0, 4, -4, 8, -8}

// mostRise is the greatest rise of a bar that a shop has, mm: common practice.
const mostRise = 60

// lent returns the parts that a shop can lend and that bring the hands where the size
// would have them, the nearest first and of equals the fewest parts, and how many come
// near. Nobody lends a longer steerer: stacks that it does not hold are left out, and where
// nobody said what it holds, that is the stack of now. Nor does a bar fall, or rise by more
// than mostRise, unless the reader's own does.
func (s *trialPair) lent(v calculators.Values) (list []fit.Combination, near int) {
	tried := make([]float64, len(rolls))
	for i, roll := range rolls {
		tried[i] = s.parts.Roll + roll
	}
	allowed := fit.AllowedSpacers(v)
	if math.IsNaN(allowed) {
		allowed = s.parts.Spacers
	}
	all, _ := fit.Combine(s.bike, s.parts, s.there.Grip, allowed, tried...)
	for _, c := range all {
		rise := c.Parts.Rise
		if c.Over > 0 || rise != s.parts.Rise && (rise < 0 || rise > mostRise) {
			continue
		}
		if list = append(list, c); c.Off <= fit.NearGrips+1e-6 {
			near = len(list)
		}
	}
	// Of those that come near, the one with the fewest parts to borrow comes first.
	slices.SortStableFunc(list[:near], func(a, b fit.Combination) int { return a.Changed - b.Changed })
	return list, near
}
