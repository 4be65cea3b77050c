package start

import (
	"math"

	"plumbline/calculators"
	"plumbline/calculators/body"
	"plumbline/calculators/caution"
	"plumbline/calculators/fit"
	"plumbline/calculators/literature"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// Mobility answers what home tests of ankle, hip and hamstrings say, and what on the
// bike they bear on. It changes no setting: nobody has published by how much.
func Mobility() *calculators.Calculator {
	one := func(q *measure.Quantity, example string) calculators.Input {
		return calculators.Input{Quantity: q, Example: example, Optional: true}
	}
	return &calculators.Calculator{
		Name: "mobility", Section: calculators.Start,
		Title: "How far your joints move", Question: "Are your ankles, hips and hamstrings as supple as most, and " +
			"does it matter?",
		Scenario: "The test rider, with stiff hamstrings, tested at home with a helper.",
		Inputs: []calculators.Input{
			fit.GrowingInput(), fit.HeightInput(),
			one(measure.KneeShortLeft, "46"), one(measure.KneeShortRight, "43"), fit.SexInput(""),
			one(measure.LungeLeft, "92"), one(measure.LungeRight, "110"),
			one(measure.HipBend, "116"), one(measure.SitAndReach, "-40"),
		},
		First:   []*measure.Quantity{measure.KneeShortLeft, measure.KneeShortRight},
		Answers: []*calculators.Output{hamstrings, hamstringSides, ankles, ankleSides, hip},
		Sources: []*literature.Source{literature.Konor2012, literature.Bennell1998, literature.Youdas2005,
			literature.GajdosikLusk1983, literature.MayorgaVega2014, literature.RoachMiles1991,
			literature.Holliday2021,
			literature.GUM2008, literature.CommonPractice},
		Cautions: []*caution.Caution{caution.Pain, caution.Growing, caution.Clinician},
		Solve:    solveMobility,
		Explain:  explainMobility,
	}
}

// What it answers.
var (
	hamstrings = &calculators.Output{Name: "hamstrings", Label: "Hamstrings against the average",
		Unit: measure.Deg,
		Between: "the average knee’s angle short of straight, less the one measured (the mean of what was typed); " +
			"negative is stiffer"}
	hamstringSides = &calculators.Output{Name: "hamstring-sides", Label: "Left knee stops earlier by",
		Unit:    measure.Deg,
		Between: "left less right; negative means that the right one stops earlier"}
	ankles = &calculators.Output{Name: "ankles", Label: "Ankles against the average", Unit: measure.Mm,
		Between: "the big toe to the wall (the mean of what was typed), less the average; negative is stiffer"}
	ankleSides = &calculators.Output{Name: "ankle-sides", Label: "Left ankle goes further by", Unit: measure.Mm,
		Between: "left less right; negative means that the right one goes further"}
	hip = &calculators.Output{Name: "hip", Label: "Hip against the average", Unit: measure.Deg,
		Between: "how far your thigh turns from flat, less the average; negative is stiffer"}
)

// usual is what a test finds in a group: two of three people lie within SD of Mean.
type usual struct{ Mean, SD float64 }

// What is usual.
var (
	// LungeUsual: big toe to wall, mm, in twenty healthy adults (Konor et al. 2012, from
	// memory).
	lungeUsual = usual{95, 31}

	// hipUsual: degrees, 1683 adults of 25 to 74 years (Roach and Miles 1991, from
	// memory).
	hipUsual = usual{121, 13}

	// Knee short of straight with the thigh upright, degrees, 214 adults (Youdas et al.
	// 2005, from memory: the angle behind the knee is 152.0 ± 10.6 in women and
	// 141.4 ± 8.1 in men).
	kneeUsualWomen, kneeUsualMen = usual{28, 10.6}, usual{38.6, 8.1}
)

// kneeUsual returns what is usual for a sex; for nobody in particular the middle of
// both, as wide as an even mixture of them is.
func kneeUsual(sex body.Sex) usual {
	switch sex {
	case body.Female:
		return kneeUsualWomen
	case body.Male:
		return kneeUsualMen
	}
	w, m := kneeUsualWomen, kneeUsualMen
	half := (m.Mean - w.Mean) / 2
	return usual{(w.Mean + m.Mean) / 2, math.Sqrt((float64(w.SD*w.SD)+float64(m.SD*m.SD))/2 + float64(half*half))}
}

// sides returns the mean of a pair of sides, or of the one that was given, and left less
// right, NaN where that takes both.
func sides(v calculators.Values, left, right *measure.Quantity) (mean, difference float64) {
	l, r := v.Of(left), v.Of(right)
	switch {
	case math.IsNaN(l):
		return r, math.NaN()
	case math.IsNaN(r):
		return l, math.NaN()
	}
	return (l + r) / 2, l - r
}

func solveMobility(v calculators.Values, out calculators.Numbers) *calculators.Problem {
	knee, kneeApart := sides(v, measure.KneeShortLeft, measure.KneeShortRight)
	lunge, lungeApart := sides(v, measure.LungeLeft, measure.LungeRight)
	if math.IsNaN(knee) && math.IsNaN(lunge) && !v.Has(measure.HipBend) && !v.Has(measure.SitAndReach) {
		return &calculators.Problem{Input: measure.KneeShortLeft.Key, Needed: true,
			Text: words.Of("Give one test at least: {0}, {1}, {2} or {3}.", measure.KneeShortLeft.Named(),
				measure.LungeLeft.Named(),
				measure.HipBend.Named(), measure.SitAndReach.Named())}
	}
	out.Set(hamstrings, kneeUsual(fit.Sex(v)).Mean-knee)
	out.Set(hamstringSides, kneeApart)
	out.Set(ankles, lunge-lungeUsual.Mean)
	out.Set(ankleSides, lungeApart)
	out.Set(hip, v.Of(measure.HipBend)-hipUsual.Mean)
	return nil
}
