package calculators_test

import (
	"fmt"
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"plumbline/calculators"
	"plumbline/calculators/catalog"
	"plumbline/calculators/drawing"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// amounts collects the numbers in the holes of a text, those of texts in its holes included.
func amounts(s words.Sayer, add func(measure.Amount)) {
	switch s := s.(type) {
	case words.Text:
		for _, hole := range s.Holes {
			amounts(hole, add)
		}
	case measure.Amount:
		add(s)
	case measure.Difference:
		add(s.Amount)
	case measure.Error:
		add(s.Amount)
	case measure.Uncertain:
		add(s.Amount)
	}
}

// written calls say with every text that a figure shows.
func written(f *drawing.Figure, say func(words.Text)) {
	marks := f.Marks
	if f.Lay != nil {
		marks = append(marks, f.Lay(30)...)
	}
	for _, g := range f.Frames {
		say(g.Caption)
		marks = append(marks, g.Marks...)
	}
	for _, m := range marks {
		switch m := m.(type) {
		case drawing.Label:
			say(m.Text)
		case drawing.Dimension:
			say(m.Text)
		case drawing.Angle:
			say(m.Text)
		}
	}
}

// computed returns every number of a result, by its size: answers and workings with their ±, cells of
// tables, and inputs as they were used.
func computed(r *calculators.Result) map[string]bool {
	known := map[string]bool{}
	put := func(a measure.Amount) { known[size(a.Value)] = true }
	for _, list := range [2][]calculators.Answer{r.Answers, r.Workings} {
		for i := range list {
			put(list[i].Amount())
			put(list[i].Margin())
		}
	}
	for _, table := range r.Tables {
		for _, row := range table.Rows {
			for _, cell := range row {
				amounts(cell, put)
			}
		}
	}
	for _, u := range r.Complete().Inputs {
		if n, ok := u.Value.(calculators.Number); ok {
			known[size(float64(n))] = true
		}
	}
	return known
}

// size is a number without its sign: a picture says "20 mm lower" of an answer of −20. Six digits tell
// two answers of one rider apart and leave room for another order of adding.
func size(x float64) string { return fmt.Sprintf("%.6g", math.Abs(x)) }

// drawnAlone are the numbers of a figure that its result has nowhere else, by calculator and by the
// words they stand in, and why. All others have to be a number of the result.
var drawnAlone = map[string]string{
	"knee-bend {0}":                     "the angle of the crank, along the axis of the curve",
	"leg-difference {0}":                "the marks of the scale, 3 and 6 mm",
	"post-depth {0}":                    "what is out of the frame in the picture of the other case, the wrong one",
	"post-depth inside {0}":             "what is inside in that picture",
	"ride-scores {0}":                   "the scale from 0 to 10",
	"seated-reach low: elbows bent {0}": "a posture beside the reader's, with the elbows bent 60 degrees",
	"size-trial front axle: {0}":        "where the other size's front axle is; the table has the front centres",
}

// follow are numbers of a figure that follow from those of the result, as plain sums.
var follow = map[string]func(of, in func(string) float64) []float64{
	// What the front wheel does not carry the rear does.
	"climb-balance": func(of, in func(string) float64) []float64 { return []float64{100 - of("front-load")} },
	// A still reading is 5 degrees less than the moving one.
	"knee-bend": func(of, in func(string) float64) []float64 { return []float64{in("knee-reading") + 5} },
	// The law measures over grip and lever.
	"lever-setup": func(of, in func(string) float64) []float64 {
		return []float64{of("lever-reach") + in("grip-diameter")}
	},
	// One picture for both legs, at their average.
	"mobility": func(of, in func(string) float64) []float64 {
		return []float64{(in("lunge-left") + in("lunge-right")) / 2,
			(in("knee-short-left") + in("knee-short-right")) / 2}
	},
	// How far the grips are off is the straight line of what they are ahead and above.
	"size-match": func(of, _ func(string) float64) (list []float64) {
		for line := range 9 {
			name := fmt.Sprintf("line-%d-grips-", line+1)
			list = append(list, math.Hypot(of(name+"ahead"), of(name+"above")))
		}
		return list
	},
	// The skin stands on pedal and sole.
	"pedal-change": func(of, in func(string) float64) []float64 {
		return []float64{in("new-pedal-height") + in("new-sole-height")}
	},
}

// TestNumbersInFiguresAreThoseOfTheResult: what a figure writes is what the answers, tables and inputs
// beside it say, for every calculator and every record.
func TestNumbersInFiguresAreThoseOfTheResult(t *testing.T) {
	compared, used := map[string]int{}, map[string]bool{}
	for name := range wholeRecords {
		for _, c := range catalog.All() {
			pairs := asked(c, wholeRecord(name))
			if name == "example" { // its own, for bike-by-tape finds another bike
				pairs = examples(c)
			}
			r, problems := c.Run(pairs, nil)
			if len(problems) > 0 || r.Figure == nil {
				continue
			}
			known := computed(r)
			if sums := follow[c.Name]; sums != nil {
				of := func(name string) float64 { return answered(r, name) }
				in := func(name string) float64 { return typed(r, name) }
				for _, x := range sums(of, in) {
					known[size(x)] = true
				}
			}
			seated := math.NaN()
			if c.Name == "ready-position" {
				seated = answered(seatedOf(t, name), "trunk-angle")
			}
			written(r.Figure, func(text words.Text) {
				amounts(text, func(a measure.Amount) {
					key := c.Name + " " + string(text.English)
					switch {
					case math.IsNaN(a.Value):
					case known[size(a.Value)]:
						compared[c.Name]++
					case math.Abs(a.Value-seated) <= seatedWithin:
						compared[c.Name]++
					case drawnAlone[key] != "":
						used[key] = true
					default:
						t.Errorf("%s, %s: the figure writes %q with %s, which is no number of the result", c.Name,
							name, text.English, a.Say(nil))
					}
				})
			})
		}
	}
	for key := range drawnAlone {
		assert.True(t, used[key], "%s is not needed among what is drawn alone", key)
	}
	for _, c := range catalog.All() {
		if !wordsOnly[c.Name] {
			assert.Positive(t, compared[c.Name], "%s: no number of its figure was compared", c.Name)
		}
	}
}

// examples are a calculator's own worked example.
func examples(c *calculators.Calculator) (pairs []calculators.Pair) {
	for _, in := range c.Inputs {
		if in.Example != "" {
			pairs = append(pairs, calculators.Pair{Key: in.Key, Typed: in.Example})
		}
	}
	return pairs
}

// answered is the answer or working of that name.
func answered(r *calculators.Result, name string) float64 {
	for _, list := range [2][]calculators.Answer{r.Answers, r.Workings} {
		for i := range list {
			if list[i].Name == name {
				return float64(list[i].Value)
			}
		}
	}
	return math.NaN()
}

// typed is the input of that name, as it was used.
func typed(r *calculators.Result, name string) float64 {
	if n, ok := r.Complete().Inputs[name].Value.(calculators.Number); ok {
		return float64(n)
	}
	return math.NaN()
}

// seatedOf is the answer of seated-reach to a record.
func seatedOf(t *testing.T, name string) *calculators.Result {
	t.Helper()
	c := catalog.Named("seated-reach")
	r, problems := c.Run(asked(c, wholeRecord(name)), nil)
	require.Empty(t, problems)
	return r
}

// seatedWithin is how near the trunk of the seated rider beside the standing one has to be to that of
// seated-reach, degrees. Standing ready asks for no setback and draws whole degrees.
const seatedWithin = 0.5

// wordsOnly are the calculators whose figure writes no number of the result; for size-trial see drawnAlone.
var wordsOnly = map[string]bool{"size-trial": true}
