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

// Stem answers which parts move the grips by a wanted step.
func Stem() *calculators.Calculator {
	return &calculators.Calculator{
		Name: "stem-choice", Section: calculators.Cockpit,
		Title: "Stem and spacers", Question: "Which stem, spacers and bar put the grips where you want them?",
		Scenario: "The test rider is pitched forward on descents, on the test bike with a 45 mm stem on 15 mm of " +
			"spacers.",
		Inputs: slices.Concat(
			[]calculators.Input{
				{Quantity: measure.Feeling, Example: "pitched", Optional: true},
				{Quantity: measure.MoveX, Assume: byFeeling(measure.MoveY,
					func(p geometry.Point) float64 { return p.X })},
				{Quantity: measure.MoveY, Assume: byFeeling(measure.MoveX,
					func(p geometry.Point) float64 { return p.Y })},
			},
			fit.FrontInputs(), asIs(fit.PartsInputs()),
			[]calculators.Input{
				{Quantity: measure.SpacersAbove, Example: "10", Optional: true, AsIs: true},
				{Quantity: measure.SpacersLimit, Example: "30", Optional: true},
				{Quantity: measure.SeatAngle, Example: "76.5", Optional: true},
				{Quantity: measure.SaddleHeight, Example: "736", Optional: true},
				{Quantity: measure.Inseam, Example: "830", Optional: true},
				{Quantity: measure.Stature, Example: "1740", Optional: true},
				{Quantity: measure.Sex, Optional: true},
			},
			fit.UpperInputs(), []calculators.Input{fit.TrochanterInput("")}, fit.LegInputs(),
			fit.Exact(fit.FootInputs())),
		First:   []*measure.Quantity{measure.Feeling, measure.MoveX, measure.MoveY},
		Answers: []*calculators.Output{spacersChange, leftOver, gripXAfter, gripYAfter},
		Sources: []*literature.Source{literature.ISO4210Part2, literature.DeLeva1996, literature.CommonPractice},
		Cautions: []*caution.Caution{caution.SteererAndStem, caution.NoWayBack, caution.HoseCheck,
			caution.CarbonParts, caution.Torque, caution.BrakeCheck, caution.FirstRide},
		Solve:   solveStem,
		Explain: explainStem,
	}
}

// asIs asks for parts as they are on the bike: what this calculator planned with them
// would otherwise be planned once more on top.
func asIs(inputs []calculators.Input) []calculators.Input {
	for i := range inputs {
		inputs[i].AsIs = true
	}
	return inputs
}

// What it answers.
var (
	spacersChange = &calculators.Output{Name: "spacers-change", Label: "Spacers alone would move",
		Unit: measure.SoldInMm,
		Between: "the stack under the stem now and the one that comes nearest to the move; negative is from under " +
			"the stem to above it"}
	leftOver = &calculators.Output{Name: "left-over", Label: "Still missing", Unit: measure.Mm,
		Between: "the wanted place of the grips and where those spacers alone put them"}
	gripXAfter = &calculators.Output{Name: "grip-x", Label: "Grips ahead, afterwards", Unit: measure.Mm, Folded: true,
		Between: "crank axle, level forward to the middle of the grips after the move"}
	gripYAfter = &calculators.Output{Name: "grip-y", Label: "Grips above, afterwards", Unit: measure.Mm, Folded: true,
		Between: "crank axle, straight up to the middle of the grips after the move"}
)

// feelings are the first small move for each trouble, mm: common practice, the
// size of one spacer or one size of stem.
var feelings = []struct {
	key  string
	move geometry.Point
}{
	{"stretched", geometry.Point{X: -10}},
	{"wanders", geometry.Point{X: 5, Y: -10}},
	{"pitched", geometry.Point{X: -5, Y: 10}},
}

// byFeeling assumes one coordinate of the move from what troubles the reader. A
// reader who gave the other coordinate wants no move but that one.
func byFeeling(other *measure.Quantity, of func(geometry.Point) float64) assume {
	return func(v calculators.Values) (calculators.Assumption, bool) {
		if v.Given(other) {
			return calculators.Assumption{From: "because you named a move in the other direction alone"}, true
		}
		for _, f := range feelings {
			if v.Is(measure.Feeling, f.key) {
				return calculators.Assumption{Value: of(f.move),
					From: "a first small step against what troubles you, common practice"}, true
			}
		}
		return calculators.Assumption{From: "because you named no move in this direction"}, true
	}
}

// noMove asks for a target.
var noMove = &calculators.Problem{Input: measure.MoveX.Key, Needed: true,
	Text: words.Of("Say by how much the grips should move, in {0} or {1}, or pick what troubles you.",
		measure.MoveX.Named(), measure.MoveY.Named())}

// wanted is what the parts are looked for: the bike with its parts now, and the place
// where the grips should be. All points are from the bottom bracket, mm.
type wanted struct {
	bike   geometry.Bike
	parts  geometry.Cockpit
	now    geometry.Hold
	target geometry.Point
	move   geometry.Point
}

// wantedOf returns the reader's bike, grips and target.
func wantedOf(v calculators.Values) (wanted, *calculators.Problem) {
	b, p := fit.Front(v)
	if p != nil {
		return wanted{}, p
	}
	w := wanted{bike: b, parts: fit.Parts(v), move: moveOf(v)}
	if !v.Has(measure.Feeling) && !v.Given(measure.MoveX) && !v.Given(measure.MoveY) {
		return w, noMove
	}
	w.now, _ = w.parts.Hold(b)
	w.target = w.now.Grip.Add(w.move)
	return w, nil
}

func solveStem(v calculators.Values, out calculators.Numbers) *calculators.Problem {
	w, p := wantedOf(v)
	if p != nil {
		return p
	}
	up := geometry.SpacerVector(1, w.bike.HeadAngle)
	along := w.move.Dot(up)
	out.Set(spacersChange, along)
	out.Set(leftOver, w.move.Sub(up.Scale(along)).Length())
	out.Set(gripXAfter, w.target.X)
	out.Set(gripYAfter, w.target.Y)
	return nil
}

// near5 is how near a combination has to come to be listed, mm.
const near5 = fit.NearGrips

// The norm of stems with its window, mm: common practice.
const normStem, normWindow = fit.NormStem, 10

// combination is one set of parts, as fit.Combination names its fields.
type combination struct {
	parts   geometry.Cockpit
	miss    geometry.Point
	off     float64
	changed int
	over    float64
}

// combine returns the parts on sale that come near the target, the nearest first, and
// how many of them come within 5 mm.
func (w wanted) combine(allowed float64) (list []combination, within int) {
	found, within := fit.Combine(w.bike, w.parts, w.target, allowed, w.parts.Roll)
	for _, c := range found {
		list = append(list, combination{c.Parts, c.Miss, c.Off, c.Changed, c.Over})
	}
	return list, within
}

// few is how many combinations are listed where none comes near.
const few = 5

// nearest returns what is listed of all combinations: the first ones that come
// near, or the first few where there is none.
func nearest(all []combination, near int) []combination {
	if near == 0 {
		near = min(few, len(all))
	}
	return all[:near]
}

// simplest returns the index of the combination to begin with: of those that the
// steerer allows, the one that changes the fewest parts, and of several such the
// nearest. It is -1 where the steerer allows none.
func simplest(list []combination) int {
	best := -1
	for i, c := range list {
		if c.over == 0 && (best < 0 || c.changed < list[best].changed) {
			best = i
		}
	}
	return best
}
