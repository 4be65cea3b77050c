package cockpit

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

// Grip answers where the grips stand and what each part would do to them.
func Grip() *calculators.Calculator {
	return &calculators.Calculator{
		Name: "grip-position", Section: calculators.Cockpit,
		Title: "Grip position", Question: "Where are your grips, seen from your feet and from your saddle?",
		Scenario: "The test bike: a 45 mm stem on 15 mm of spacers, a bar with 30 mm of rise.",
		Inputs:   slices.Concat(fit.FrontInputs(), fit.PartsInputs(), fit.SeatLineInputs()),
		Answers:  []*calculators.Output{gripX, gripY, gripFromSaddle, gripDrop, reachAtBar, roomAtBar},
		Workings: gripWorkings(),
		Sources:  []*literature.Source{literature.GUM2008, literature.CommonPractice},
		Cautions: []*caution.Caution{caution.SteererAndStem, caution.HoseCheck, caution.NoWayBack, caution.Torque,
			caution.BrakeCheck, caution.FirstRide},
		Solve:   solveGrip,
		Explain: explainGrip,
	}
}

// What it answers.
var (
	gripX = &calculators.Output{Name: "grip-x", Label: "Grips ahead", Unit: measure.Mm, Feeds: measure.GripX,
		Between: "crank axle, level forward to the middle of the grips"}
	gripY = &calculators.Output{
		Name:    "grip-y",
		Label:   "Grips above",
		Beside:  true,
		Unit:    measure.Mm,
		Feeds:   measure.GripY,
		Between: "crank axle, straight up to the middle of the grips",
	}
	gripFromSaddle = &calculators.Output{Name: "saddle-to-grip", Label: "Saddle to grips", Unit: measure.Mm,
		Between: "saddle’s top to the middle of the grips, straight, seen from the side"}
	gripDrop = &calculators.Output{Name: "grip-drop", Label: "Grips below the saddle", Unit: measure.Mm,
		Between: "saddle’s top, straight down to the middle of the grips; negative where they are higher"}
	reachAtBar = &calculators.Output{Name: "reach-at-bar", Label: "Reach left at the bar", Unit: measure.Mm,
		Folded:  true,
		Between: "crank axle, level forward to the steering axis at the height of the bar’s clamp"}
	roomAtBar = &calculators.Output{Name: "top-tube-at-bar", Label: "Room at the bar", Unit: measure.Mm, Folded: true,
		Between: "seat line, level forward to the steering axis at the height of the bar’s clamp"}
)

// gripStep is one small change of one part, with what it does to the grips.
type gripStep struct {
	said   words.Text
	change func(*geometry.Cockpit)

	// How far the grips then go ahead and up, and how far from the saddle.
	ahead, up, fromSaddle *calculators.Output
}

func newGripStep(name string, part words.English, said words.Text, change func(*geometry.Cockpit)) gripStep {
	output := func(of string) *calculators.Output {
		return &calculators.Output{Name: name + "-" + of, Label: part, Unit: measure.Mm, Finer: 1}
	}
	return gripStep{said, change, output("ahead"), output("up"), output("saddle")}
}

// The changes whose effect the table shows.
var (
	gripSpacer = newGripStep("spacer", "Spacers",
		words.Of("{0} more of spacers under the stem", measure.Sold(10)),
		func(c *geometry.Cockpit) { c.Spacers += 10 })
	gripRoll = newGripStep("roll", "Bar roll", words.Of("Bar rolled forward by {0}", measure.Degrees(1)),
		func(c *geometry.Cockpit) { c.Roll++ })
	gripStem = newGripStep("stem", "Stem", words.Of("Stem {0} longer", measure.Sold(10)),
		func(c *geometry.Cockpit) { c.Stem += 10 })
	gripStemAngle = newGripStep("stem-angle", "Stem angle",
		words.Of("Stem pointing up by {0} more", measure.Degrees(6)),
		func(c *geometry.Cockpit) { c.StemAngle += 6 })
	gripRise = newGripStep("rise", "Bar rise", words.Of("Bar with {0} more rise", measure.Sold(10)),
		func(c *geometry.Cockpit) { c.Rise += 10 })
	gripSweep = newGripStep("sweep", "Bar sweep",
		words.Of("Grips {0} further behind the clamp", measure.Millimetres(10)),
		func(c *geometry.Cockpit) { c.Back += 10 })
)

// gripSteps are the rows of the table, those that undo easiest first.
var gripSteps = []gripStep{gripSpacer, gripRoll, gripStem, gripStemAngle, gripRise, gripSweep}

// gripWorkings lists the workings behind the table.
func gripWorkings() (all []*calculators.Output) {
	for _, s := range gripSteps {
		all = append(all, s.ahead, s.up, s.fromSaddle)
	}
	return all
}

func solveGrip(v calculators.Values, out calculators.Numbers) *calculators.Problem {
	b, p := fit.Front(v)
	if p != nil {
		return p
	}
	parts := fit.Parts(v)
	now, ok := parts.Hold(b)
	if !ok {
		return nil
	}
	saddle, seated := fit.SaddlePoint(v, b)
	out.Set(gripX, now.Grip.X)
	out.Set(gripY, now.Grip.Y)
	if seated {
		out.Set(gripFromSaddle, saddle.Distance(now.Grip))
		out.Set(gripDrop, saddle.Y-now.Grip.Y)
	}
	out.Set(reachAtBar, b.ReachAt(now.Bar.Y))
	if v.Has(measure.SeatAngle) {
		out.Set(roomAtBar, b.RoomAt(now.Bar.Y))
	}
	for _, s := range gripSteps {
		changed := parts
		s.change(&changed)
		then, ok := changed.Hold(b)
		if !ok {
			continue
		}
		out.Set(s.ahead, then.Grip.X-now.Grip.X)
		out.Set(s.up, then.Grip.Y-now.Grip.Y)
		if seated {
			out.Set(s.fromSaddle, saddle.Distance(then.Grip)-saddle.Distance(now.Grip))
		}
	}
	return nil
}
