package cockpit

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

// Grip answers where the grips stand and what each part would do to them.
func Grip() *calculators.Calculator {
	return &calculators.Calculator{
		Name: "grip-position", Section: calculators.Cockpit,
		Title: "Grip position", Question: "Where do your grips stand, seen from your feet and from your saddle?",
		Scenario: "Larch Hollow’s test bike: a 45 mm stem on 15 mm of spacers, a bar with 30 mm of rise.",
		Inputs:   slices.Concat(fit.FrontInputs(), fit.PartsInputs(), fit.SeatLineInputs()),
		Readings: []calculators.Measured{
			{Name: "grip-x", Label: "Grips ahead", Unit: measure.Mm, Feeds: measure.GripX,
				Between: "bottom-bracket centre, level forward to the middle of the grips"},
			{Name: "grip-y", Label: "Grips above", Unit: measure.Mm, Feeds: measure.GripY,
				Between: "bottom-bracket centre, straight up to the middle of the grips"},
			{Name: "saddle-to-grip", Label: "Saddle to grips", Unit: measure.Mm,
				Between: "saddle’s top to the middle of the grips, straight, seen from the side"},
			{Name: "grip-drop", Label: "Grips below the saddle", Unit: measure.Mm,
				Between: "saddle’s top, straight down to the middle of the grips; negative where they are higher"},
			{Name: "reach-at-bar", Label: "Reach left at the bar", Unit: measure.Mm, Folded: true,
				Between: "bottom bracket, level forward to the steering axis at the height of the bar’s clamp"},
			{Name: "top-tube-at-bar", Label: "Room at the bar", Unit: measure.Mm, Folded: true,
				Between: "seat line, level forward to the steering axis at the height of the bar’s clamp"},
		},
		Workings: stepWorkings(),
		Sources:  []*literature.Source{literature.GUM2008, literature.CommonPractice},
		Cautions: []*caution.Caution{caution.SteererAndStem, caution.HoseCheck, caution.NoWayBack, caution.Torque, caution.BrakeCheck, caution.FirstRide},
		Solve:    solveGrip,
		Explain:  explainGrip,
	}
}

// step is one small change of one part.
type step struct {
	name, part string
	said       words.Text
	change     func(geometry.Cockpit) geometry.Cockpit
}

// steps are the changes whose effect the table shows, those that undo easiest
// first.
var steps = []step{
	{"spacer", "Spacers", words.Of("{0} more of spacers under the stem", measure.Millimetres(10)), func(c geometry.Cockpit) geometry.Cockpit { c.Spacers += 10; return c }},
	{"roll", "Bar roll", words.Of("Bar rolled forward by {0}", measure.Degrees(1)), func(c geometry.Cockpit) geometry.Cockpit { c.Roll++; return c }},
	{"stem", "Stem", words.Of("Stem {0} longer", measure.Millimetres(10)), func(c geometry.Cockpit) geometry.Cockpit { c.Stem += 10; return c }},
	{"stem-angle", "Stem angle", words.Of("Stem pointing up by {0} more", measure.Degrees(6)), func(c geometry.Cockpit) geometry.Cockpit { c.StemAngle += 6; return c }},
	{"rise", "Bar rise", words.Of("Bar with {0} more rise", measure.Millimetres(10)), func(c geometry.Cockpit) geometry.Cockpit { c.Rise += 10; return c }},
	{"sweep", "Bar sweep", words.Of("Grips {0} further behind the clamp", measure.Millimetres(10)), func(c geometry.Cockpit) geometry.Cockpit { c.Back += 10; return c }},
}

// What a step is asked about: its three workings, in this order.
const (
	stepAhead = iota
	stepUp
	stepSaddle
	stepNumbers
)

// stepWorkings declares the workings behind the table, three for each step.
func stepWorkings() (all []calculators.Measured) {
	for _, s := range steps {
		all = append(all,
			calculators.Measured{Name: s.name + "-ahead", Label: s.part, Unit: measure.Mm, Finer: 1},
			calculators.Measured{Name: s.name + "-up", Label: s.part, Unit: measure.Mm, Finer: 1},
			calculators.Measured{Name: s.name + "-saddle", Label: s.part, Unit: measure.Mm, Finer: 1})
	}
	return all
}

func solveGrip(v calculators.Values, out []float64) *calculators.Problem {
	b, p := fit.Front(v)
	if p != nil {
		return p
	}
	parts := fit.Parts(v)
	h, ok := parts.Hold(b)
	for i := range out {
		out[i] = math.NaN()
	}
	if !ok {
		return nil
	}
	saddle, seated := fit.SaddlePoint(v, b)
	out[0], out[1] = h.Grip.X, h.Grip.Y
	if seated {
		out[2], out[3] = saddle.Distance(h.Grip), saddle.Y-h.Grip.Y
	}
	out[4] = b.ReachAt(h.Bar.Y)
	if v.Has(measure.SeatAngle) {
		out[5] = b.RoomAt(h.Bar.Y)
	}
	for i, s := range steps {
		then, ok := s.change(parts).Hold(b)
		if !ok {
			continue
		}
		row := out[6+stepNumbers*i:]
		row[stepAhead], row[stepUp] = then.Grip.X-h.Grip.X, then.Grip.Y-h.Grip.Y
		if seated {
			row[stepSaddle] = saddle.Distance(then.Grip) - saddle.Distance(h.Grip)
		}
	}
	return nil
}
