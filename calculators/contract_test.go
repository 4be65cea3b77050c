package calculators_test

import (
	"math"
	"regexp"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"plumbline/calculators"
	"plumbline/calculators/catalog"
	"plumbline/calculators/caution"
	"plumbline/calculators/literature"
	"plumbline/calculators/measure"
	"plumbline/calculators/panel"
	"plumbline/calculators/words"
)

// TestEveryWorkedExampleAnswers runs every calculator on its example and checks
// that no number stands alone.
func TestEveryWorkedExampleAnswers(t *testing.T) {
	seen := map[string]bool{}
	for _, c := range catalog.All() {
		t.Run(c.Name, func(t *testing.T) {
			require.False(t, seen[c.Name], "two calculators share a name")
			seen[c.Name] = true
			require.NotEmpty(t, c.Question)
			require.True(t, strings.HasSuffix(string(c.Question), "?"))
			require.NotEmpty(t, c.Scenario, "whose numbers are these?")
			require.NotEmpty(t, c.Sources)
			r, problems := c.Run(panel.Example(c), nil)
			require.Empty(t, problems)
			require.NotNil(t, r.Figure)
			require.False(t, r.Figure.Title.None())
			require.False(t, r.Figure.Description.None())
			complete(t, r)
			for _, k := range c.Cautions {
				if k == caution.Growing { // it has a test of its own
					continue
				}
				assert.True(t, slices.ContainsFunc(r.Notes, func(n calculators.Note) bool {
					return n.Kind == calculators.CautionNote && n.Text.English == k.Text && n.Key == k.Key &&
						n.Title == k.Title &&
						n.Grade == k.Grade
				}), "caution %s does not travel with the result", k.Key)
			}
		})
	}
}

// TestDeclaredNumbersHaveNamesOfTheirOwn: a name stands once among a calculator's
// answers and once among its workings, and a declaration stands in one calculator
// only once.
func TestDeclaredNumbersHaveNamesOfTheirOwn(t *testing.T) {
	for _, c := range catalog.All() {
		seen := map[*calculators.Output]bool{}
		for _, list := range [][]*calculators.Output{c.Answers, c.Workings} {
			names := map[string]bool{}
			for _, o := range list {
				assert.False(t, seen[o], "%s declares %s twice", c.Name, o.Name)
				assert.False(t, names[o.Name], "%s has two numbers called %s", c.Name, o.Name)
				seen[o], names[o.Name] = true, true
			}
		}
	}
}

// TestNoDeclaredNumberIsForgotten: each declared number gets a value at the worked
// example or at one of the points that are simulated. Numbers of the lines of a list,
// which there may be many of, count as one for all lines.
func TestNoDeclaredNumberIsForgotten(t *testing.T) {
	for _, c := range catalog.All() {
		set := map[string]bool{}
		for _, typed := range append([][]calculators.Pair{panel.Example(c)}, points(c)...) {
			for o, ok := range c.Set(typed) {
				name := line.ReplaceAllString(o.Name, "line-")
				set[name] = set[name] || ok
			}
		}
		for name, ok := range set {
			assert.True(t, ok, "%s: Solve never sets %s", c.Name, name)
		}
	}
}

// line begins the name of a number of one line of a list.
var line = regexp.MustCompile(`^line-\d+-`)

// points are what is typed at the points at which c is simulated, beside its example.
func points(c *calculators.Calculator) (typed [][]calculators.Pair) {
	for _, p := range morePoints[c.Name] {
		typed = append(typed, pairs(p))
	}
	return typed
}

// complete checks that every answer carries what people need to trust it.
func complete(t require.TestingT, r *calculators.Result) {
	for i := range r.Answers {
		x := &r.Answers[i]
		assert.False(t, x.Between.None(), "%s: measured between what?", x.Name)
		assert.False(t, x.Meaning.None(), "%s has no meaning", x.Name)
		assert.False(t, math.IsInf(float64(x.Value), 0), "%s is infinite", x.Name)
		assert.False(t, math.IsNaN(float64(x.Uncertainty)) || math.IsInf(float64(x.Uncertainty), 0), "%s: ±", x.Name)
		if x.Low != 0 || x.High != 0 {
			assert.LessOrEqual(t, float64(x.Low), float64(x.High), x.Name)
		}
	}
	for _, table := range r.Tables {
		for _, row := range table.Rows {
			assert.Len(t, row, len(table.Columns), table.Name)
			for _, cell := range row {
				assert.NotContains(t, cell.Say(nil), "NaN", table.Name)
			}
		}
	}
}

// TestNothingTypedBreaksACalculator throws plausible, impossible and senseless
// texts at every input of every calculator, in every unit: there is an answer
// without NaN, or a problem that names an input, never a panic.
func TestNothingTypedBreaksACalculator(t *testing.T) {
	for _, c := range catalog.All() {
		t.Run(c.Name, func(t *testing.T) {
			rapid.Check(t, func(t *rapid.T) {
				in := &words.Reader{Units: rapid.SampledFrom([]string{"", "mm", "cm", "in"}).Draw(t, "units")}
				r, problems := c.Run(Typed(t, c, in), in)
				if problems != nil {
					for _, p := range problems {
						if p.Text.None() {
							t.Fatalf("a problem without words at %q", p.Input)
						}
					}
					return
				}
				complete(t, r)
				svg := r.Figure.SVG("x", in, 530)
				if strings.Contains(svg, "NaN") || strings.Contains(svg, "Inf") {
					t.Fatal("the figure holds a number that is none")
				}
			})
		})
	}
}

// Typed draws something typed for each input: mostly sense, sometimes not.
func Typed(t *rapid.T, c *calculators.Calculator, in *words.Reader) (typed []calculators.Pair) {
	for _, i := range c.Inputs {
		p := calculators.Pair{Key: i.Key}
		switch how := rapid.IntRange(0, 19).Draw(t, i.Key+" how"); {
		case how == 0:
			p.Typed = rapid.String().Draw(t, i.Key)
		case how < 6 && (i.Optional || i.Assume != nil):
		case i.Is() == measure.Pick:
			p.Typed = rapid.SampledFrom(i.Choices).Draw(t, i.Key).Key
		case i.Is() == measure.List:
			p.Typed = i.Example
		default:
			low, high := i.Low, i.High
			if how == 19 {
				low, high = i.Least, i.Most
			}
			u := i.Unit.ReadIn(in)
			p.Typed = measure.Exact(rapid.Float64Range(low, high).Draw(t, i.Key) / u.Base)
			p.Estimated = how == 18
		}
		typed = append(typed, p)
	}
	return typed
}

// TestUnitsDoNotMatter types the worked example in inches and in centimetres, and
// gets the same answer as in millimetres.
func TestUnitsDoNotMatter(t *testing.T) {
	for _, c := range catalog.All() {
		want, problems := c.Run(panel.Example(c), nil)
		require.Empty(t, problems, c.Name)
		for _, units := range []string{"in", "cm"} {
			in := &words.Reader{Units: units}
			var typed []calculators.Pair
			for _, i := range c.Inputs {
				text := i.Example
				if g, _, ok := i.Parse(text, nil); ok && i.Is() == measure.Number {
					text = measure.Exact(g.Value / i.Unit.ReadIn(in).Base)
				}
				if i.Is() == measure.List {
					text = "" // a list's cells are read in base units in this check
				}
				typed = append(typed, calculators.Pair{Key: i.Key, Typed: text})
			}
			if slices.ContainsFunc(c.Inputs, func(i calculators.Input) bool { return i.Is() == measure.List }) {
				continue
			}
			got, problems := c.Run(typed, in)
			require.Empty(t, problems, c.Name)
			for i := range want.Answers {
				require.InDelta(t, float64(want.Answers[i].Value), float64(got.Answers[i].Value), 1e-6,
					"%s %s in %s", c.Name, want.Answers[i].Name, units)
			}
		}
	}
}

// TestEveryCitationIsListedAndUsed keeps the list of sources and the calculators
// together: whatever is cited is listed once, and nothing listed is uncited.
func TestEveryCitationIsListedAndUsed(t *testing.T) {
	listed, used := map[string]int{}, map[string]bool{}
	for _, s := range literature.All() {
		listed[s.Key]++
		require.Equal(t, 1, listed[s.Key], "%s is listed twice", s.Key)
		require.True(t, s.Title != "" && s.Authors != "" || s == literature.CommonPractice, s.Key)
		require.NotEmpty(t, s.Where, s.Key)
		require.NotEmpty(t, s.Opened, s.Key)
		require.NotEmpty(t, s.For, s.Key)
	}
	for _, c := range catalog.All() {
		for _, s := range c.Sources {
			require.NotZero(t, listed[s.Key], "%s cites %s, which literature.All does not list", c.Name, s.Key)
			used[s.Key] = true
		}
	}
	for _, s := range literature.All() {
		assert.True(t, used[s.Key], "no calculator cites %s; it belongs to the guide's own sources", s.Key)
	}
}

// TestCautionsAreListedOnce does the same for the cautions. A caution may serve
// pages alone.
func TestCautionsAreListedOnce(t *testing.T) {
	listed := map[string]bool{}
	for _, k := range caution.All() {
		require.False(t, listed[k.Key], k.Key)
		require.NotEmpty(t, k.Title)
		require.True(t, strings.HasSuffix(string(k.Text), "."), k.Key)
		listed[k.Key] = true
	}
	for _, c := range catalog.All() {
		for _, k := range c.Cautions {
			require.True(t, listed[k.Key], "%s: %s", c.Name, k.Key)
		}
	}
}
