package finish

import (
	"math"

	"plumbline/calculators"
	"plumbline/calculators/caution"
	"plumbline/calculators/literature"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// Scores answers whether a change helped, from scores of rides with the old and the new
// setting.
func Scores() *calculators.Calculator {
	return &calculators.Calculator{
		Name: "ride-scores", Section: calculators.Finish,
		Title: "Did it help?", Question: "Does the new setting differ from the old one, or is it chance?",
		Scenario: "The test rider scored the hands on the home loop, five rides with the old bar and four with the " +
			"new one.",
		Inputs: []calculators.Input{
			{Quantity: measure.ScoresBefore, Example: "5; 4; 6; 5; 4"},
			{Quantity: measure.ScoresAfter, Example: "3; 4; 2; 3"},
		},
		Answers:  []*calculators.Output{difference, chance, moreRides, rideScatter},
		Workings: []*calculators.Output{meanBefore, meanAfter},
		Sources:  []*literature.Source{literature.Pitman1937, literature.NIST2012, literature.CommonPractice},
		Cautions: []*caution.Caution{caution.Pain, caution.Numbness, caution.FirstRide},
		Solve:    solveScores,
		Explain:  explainScores,
	}
}

// What it answers.
var (
	difference = &calculators.Output{Name: "difference", Label: "New setting against old", Unit: measure.One,
		Finer:   1,
		Between: "mean of the new setting’s scores less that of the old one’s, in points of 10; less is better"}
	chance = &calculators.Output{Name: "chance", Label: "As much by chance alone", Unit: measure.Percent, Finer: 1,
		Between: "of all ways to deal the same scores to the two settings, those whose means differ at least as much"}
	moreRides = &calculators.Output{Name: "more-rides", Label: "More rides needed to tell", Unit: measure.One,
		Between: "from the rides you have to as many as show such a difference four times out of five, both " +
			"settings together"}
	rideScatter = &calculators.Output{Name: "ride-scatter", Label: "One ride differs from the next by",
		Unit: measure.One, Finer: 1,
		Between: "standard deviation of the scores within a setting, both settings together", Folded: true}
)

// The means, which the table shows.
var (
	meanBefore = &calculators.Output{Name: "mean-before", Label: "Mean of the old setting", Unit: measure.One,
		Finer: 1}
	meanAfter = &calculators.Output{Name: "mean-after", Label: "Mean of the new setting", Unit: measure.One,
		Finer: 1}
)

const (
	// seldom is how often chance may do as much before a difference counts as shown: one
	// in twenty, common practice in research.
	seldom = 0.05
	// perPoint is how many units of the exact test a point has: quarters.
	perPoint = 4
	// leastRides of each setting is where the clearest difference is shown with a ride to
	// spare: three of each show nothing.
	leastRides = 4
	// mostRides of each setting is what is read.
	mostRides = 10
)

// rides are the scores of one setting.
type rides []float64

func ridesOf(v calculators.Values, q *measure.Quantity) (x rides) {
	for _, row := range v.Rows(q) {
		x = append(x, row.Cells[0])
	}
	return x
}

// mean returns the mean, and the sum of the squares around it.
func (x rides) mean() (mean, squares float64) {
	for _, s := range x {
		mean += s
	}
	mean /= float64(len(x))
	for _, s := range x {
		squares += float64((s - mean) * (s - mean))
	}
	return mean, squares
}

// units returns the scores in quarter points, and whether every one is a whole number of
// them.
func (x rides) units() (units []int, exact bool) {
	exact = true
	for _, s := range x {
		u := math.Round(s * perPoint)
		exact = exact && u == s*perPoint
		units = append(units, int(u))
	}
	return units, exact
}

func solveScores(v calculators.Values, out calculators.Numbers) *calculators.Problem {
	before, after := ridesOf(v, measure.ScoresBefore), ridesOf(v, measure.ScoresAfter)
	for _, q := range [2]*measure.Quantity{measure.ScoresBefore, measure.ScoresAfter} {
		if len(v.Rows(q)) == 0 {
			return &calculators.Problem{Input: q.Key, Text: words.Of("{0} holds no score.", q.Named())}
		}
	}
	old, squaresOld := before.mean()
	new, squaresNew := after.mean()
	a, _ := before.units()
	b, _ := after.units()
	p := Chance(a, b)
	scatter := math.NaN()
	if n := len(before) + len(after); n > 2 {
		scatter = math.Sqrt((squaresOld + squaresNew) / float64(n-2))
	}
	out.Set(meanBefore, old)
	out.Set(meanAfter, new)
	out.Set(difference, new-old)
	out.Set(chance, 100*p)
	out.Set(rideScatter, scatter)
	out.Set(moreRides, ridesToTell(len(before), len(after), p, math.Abs(new-old), scatter))
	return nil
}

// ridesToTell returns how many further rides would show a difference, both settings
// together, if the scores go on as they are: 0 where it is shown already, NaN where there
// is none or more than mostRides of one setting would be needed.
func ridesToTell(before, after int, p, apart, scatter float64) float64 {
	if p <= seldom {
		return 0
	}
	need := RidesEach(apart, scatter)
	if math.IsNaN(scatter) {
		need = leastRides // a ride or two each tell nothing of how rides differ
	}
	if !(apart > 0) || need > mostRides {
		return math.NaN()
	}
	more := max(need-float64(before), 0) + max(need-float64(after), 0)
	if more == 0 && max(before, after) < mostRides {
		return 2 // as many as should do were not enough: one more of each
	}
	if more == 0 {
		return math.NaN()
	}
	return more
}

// RidesEach returns how many rides of each setting show a difference of their means four
// times out of five, where chance would show one once in twenty.
//
//	2·((1.960 + 0.842)·scatter/apart)² + 1, rounded up, at least 4
//
// The one more makes up for a scatter that is only known from the rides themselves.
//
// Source: NIST/SEMATECH e-Handbook of Statistical Methods, 7.2.2.2, for two samples (from
// memory).
func RidesEach(apart, scatter float64) float64 {
	ratio := (1.960 + 0.842) * scatter / apart
	return max(math.Ceil(2*ratio*ratio+1), leastRides)
}
