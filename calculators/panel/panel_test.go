package panel_test

import (
	"flag"
	"os"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"plumbline/calculators"
	"plumbline/calculators/catalog"
	"plumbline/calculators/panel"
	"plumbline/calculators/words"
)

var update = flag.Bool("update", false, "write the golden files anew")

func TestABenchIsAsItWas(t *testing.T) {
	const file = "testdata/bench.html"
	// A line break before every tag that opens keeps the difference readable.
	got := strings.ReplaceAll(panel.Bench(sample, "1", 3, nil), "><", ">\n<") + "\n"
	if *update {
		require.NoError(t, os.WriteFile(file, []byte(got), 0o644))
	}
	want, err := os.ReadFile(file)
	require.NoError(t, err)
	assert.Equal(t, string(want), got, "look at the difference; if it is meant, go test ./calculators/panel -update")
}

// TestWhatStandsBelowIsWrittenAfter: where a long figure was written first, it showed first
// on a slow line, and then moved below the fields.
func TestWhatStandsBelowIsWrittenAfter(t *testing.T) {
	long := 0
	for _, c := range catalog.All() {
		bench := panel.Bench(c, "1", 3, nil)
		stand, form := strings.Index(bench, `<div class="stand">`), strings.Index(bench, "<form")
		isLong := strings.Contains(bench, ` long" role=`)
		assert.Equal(t, isLong, form < stand, c.Name)
		if isLong {
			long++
		}
	}
	assert.NotZero(t, long)
}

func TestEveryBenchIsSoundHTML(t *testing.T) {
	for _, c := range append(samples, catalog.All()...) {
		t.Run(c.Name, func(t *testing.T) {
			page := panel.Bench(c, "1", 3, nil) + panel.Bench(c, "2", 3, &words.Reader{Units: "in"})
			doc := parse(t, page)
			ids := map[string]bool{}
			for _, e := range doc.all(func(e element) bool { return e.has("id") }) {
				assert.False(t, ids[e.attr("id")], "the id %s stands twice", e.attr("id"))
				assert.True(t, strings.HasPrefix(e.attr("id"), c.Name+"-"), "the id %s does not begin with the "+
					"calculator", e.attr("id"))
				ids[e.attr("id")] = true
			}
			for _, e := range doc.all(func(e element) bool { return true }) {
				for _, name := range []string{"for", "aria-describedby", "aria-labelledby"} {
					for _, id := range strings.Fields(e.attr(name)) {
						assert.True(t, ids[id], "%s=%q points nowhere", name, id)
					}
				}
				assert.False(t, e.has("style"), "inline style")
				assert.NotEqual(t, "number", e.attr("type"), "type=number loses what people type")
			}
			for _, bad := range []string{"NaN", "Inf", "%!", "{0}", "{1}", "<no value>", "-0<"} {
				assert.NotContains(t, page, bad)
			}
			assert.Len(t, doc.all(class("bench")), 2)
			assert.NotEmpty(t, doc.all(class("reading")), "the worked example computes nothing")
		})
	}
}

func TestTheExampleIsNeverADefault(t *testing.T) {
	for _, c := range append(samples, catalog.All()...) {
		r := panel.Answer(append(samples, catalog.All()...), panel.Ask{Name: c.Name, Whole: true})
		assert.True(t, r.Example, c.Name)
		assert.Empty(t, r.Record, c.Name)
		assert.Empty(t, r.Spoken, c.Name)
		for _, field := range parse(t, "<form>"+r.Form).all(tag("input")) {
			if field.attr("type") == "text" {
				assert.Empty(t, field.attr("value"), "%s: the field %s has a value that nobody typed", c.Name,
					field.attr("name"))
			} else if field.has("checked") {
				assert.Empty(t, field.attr("value"), "%s: the choice %s is made before anybody made it", c.Name,
					field.attr("name"))
			}
		}
		assert.NotContains(t, r.HTML(), "data-use", "%s: the example's numbers must not get into the record", c.Name)
	}
}

// A range that the sentence above says already is not said a second time.
func TestARangeIsSaidOnce(t *testing.T) {
	ranges := func(name string) (texts []string) {
		doc := parse(t, panel.Answer(catalog.All(), panel.Ask{Name: name, Whole: true}).HTML())
		for _, x := range doc.all(class("range")) {
			texts = append(texts, x.text())
		}
		return texts
	}
	assert.NotContains(t, ranges("bar-width"), "Range 725 to 765 mm", "the meaning has both ends")
	assert.Contains(t, ranges("lever-setup"), "Range 43 to 54 mm", "nothing else says it")
}

func ask(t testing.TB, a panel.Ask) panel.Reply {
	t.Helper()
	a.Name = "sample"
	return panel.Answer(samples, a)
}

func TestAnAnswerHoldsTheReadersNumbers(t *testing.T) {
	r := ask(t, panel.Ask{Query: "length=83+cm&kind=b"})
	require.Empty(t, r.Problems)
	doc := parse(t, r.HTML())
	readings := doc.all(class("reading"))
	assert.Equal(t, "Your numbers Your earlier numbers; the last change could not be computed Twice that 1660 mm "+
		"between 1640 and 1680 mm To be surer, measure this again: Length <of it> Use this as Height “Height” is now "+
		"1660 mm in your numbers, on every page of this guide.", doc.one(t, class("strip")).text())
	assert.Equal(t, "Twice that 1660 ± 20 mm one end to the other Twice as long as 830 mm. Range 1650 to 1670 mm",
		readings[0].text())
	compare := doc.one(t, class("compare")).all(class("reading"))
	assert.Equal(t, "Slope 3.0 ± 2.0° from level", compare[0].text())
	assert.Equal(t, "Nothing – There is none.", compare[1].text())
	use := doc.one(t, class("strip")).one(t, func(e element) bool { return e.has("data-use") })
	assert.Equal(t, "height", use.attr("data-use"))
	assert.Equal(t, "1660±10", use.attr("data-value"), "a ± goes along as one standard deviation")
	assert.Equal(t, "Your numbers", doc.one(t, class("whose")).text())
	assert.Equal(t, "Twice that: 1660\u00a0mm, plus or minus 20\u00a0mm.", r.Spoken)
	assert.Equal(t, []calculators.Pair{{Key: "length", Typed: "830"}, {Key: "length.unit", Typed: "cm"},
		{Key: "kind", Typed: "b"}}, r.Record)
	assert.Contains(t, doc.one(t, class("sure")).text(), "How sure? ± 20 mm, from your measurements “Twice that”: "+
		"nineteen times out of twenty the true value lies between 1640 and 1680 mm, if what you typed is right. Worth "+
		"measuring next Length <of it> is measured; measure it again. 100 % of the doubt comes from it: when it is "+
		"5 mm off, the answer is 10.0 mm off. How to measure")
	assert.Equal(t, "One other guess hardly matters “Tilt” was left out, so it is taken as 3.0° ± 2.0°, usual.",
		doc.one(t, class("guesses")).text())
	starred := doc.one(t, class("starred"))
	assert.Equal(t, "Other starting point 900", starred.text())
	assert.Equal(t, "#source-peveler2005", doc.one(t, class("rests")).all(tag("a"))[0].attr("href"))
	cautions := doc.all(class("caution"))
	require.Len(t, cautions, 1)
	assert.Equal(t, "Check Take care of this one.", cautions[0].text())
	heed := doc.one(t, class("heed"))
	assert.Equal(t, "Before you ride Check Bolts", heed.text())
	assert.Equal(t, "#caution-torque", heed.all(tag("a"))[0].attr("href"))
	assert.Empty(t, doc.all(class("mark")), "the figure is the reader's own")
}

// TestAFormOpensWithWhatIsNeeded: the rest is folded, and the fold says what it costs.
func TestAFormOpensWithWhatIsNeeded(t *testing.T) {
	form := parse(t, "<form>"+ask(t, panel.Ask{Query: "length=830&kind=a", Whole: true}).Form)
	more := form.one(t, class("more"))
	inside := 0
	for _, c := range []string{"length", "kind"} {
		inside += len(more.all(named(c)))
	}
	assert.Zero(t, inside, "what is needed stands in the fold")
	for _, c := range []string{"colour", "tilt", "mass", "rows"} {
		assert.NotEmpty(t, more.all(named(c)), "%s stands outside the fold", c)
	}
	assert.Equal(t, "guessed: Tilt. They hardly matter.", form.one(t, class("cost")).text())
	empty := parse(t, "<form>"+ask(t, panel.Ask{Whole: true}).Form)
	assert.Equal(t, "4 more, each of which may stay empty", empty.one(t, class("cost")).text())
	given := parse(t, "<form>"+ask(t, panel.Ask{Query: "length=830&kind=a&tilt=2", Whole: true}).Form)
	assert.Equal(t, "nothing is guessed", given.one(t, class("cost")).text())

	// An inside leg repeats to 10 mm, which 0.883 and 1.09 times over makes ± 19 mm of the
	// height; ± 5 mm of an unknown crank and the guessed lengths make up the rest:
	// the root of 20.4² − 19.2² is 7.
	list := catalog.All()
	reply := panel.Answer(list, panel.Ask{Name: "saddle-height", Query: "inseam=830", Whole: true})
	height := parse(t, "<form>"+reply.Form)
	assert.Equal(t, "guessed: Crank, Hip-bone height and 6 more. They make ± 7 of the ± 20 mm.",
		height.one(t, class("cost")).text())
	assert.Equal(t, height.one(t, class("cost")).text(), parse(t, reply.HTML()).one(t, class("cost")).text(),
		"the form and the answer say the same")
}

// TestTheExampleIsMarked in the figure, in the strip and in words.
func TestTheExampleIsMarked(t *testing.T) {
	doc := parse(t, ask(t, panel.Ask{}).HTML())
	assert.Equal(t, "Example", doc.one(t, class("drawing")).one(t, class("mark")).text())
	assert.Contains(t, doc.one(t, class("strip")).text(), "Worked example, not yours")
	assert.Empty(
		t,
		doc.all(func(e element) bool { return e.has("data-use") }),
		"an example's number could be taken over",
	)
}

func TestWhatIsMissingIsAskedForQuietly(t *testing.T) {
	r := ask(t, panel.Ask{Query: "tilt=4"})
	assert.Equal(t, "Still needed: Length <of it> and Kind.", r.Waiting)
	for _, p := range r.Problems {
		assert.True(t, p.Needed, p.Text.Say(nil))
	}
}

// What is unlikely is told beside its field also while something else is missing, and the strip says
// what is: 165 was meant in pounds.
func TestADoubtIsToldWhileSomethingIsMissing(t *testing.T) {
	r := ask(t, panel.Ask{Query: "mass=165"})
	require.True(t, r.Example)
	require.Len(t, r.Doubts, 1)
	assert.Equal(t, "mass", r.Doubts[0].Input)
	assert.Equal(t, "165 lb", r.Doubts[0].Suggest)
	assert.Equal(t, "Still needed: Length <of it> and Kind.", parse(t, r.HTML()).one(t, class("next")).text())
}

func TestWhatCannotBeReadStaysAsTyped(t *testing.T) {
	r := ask(t, panel.Ask{Record: "length=830&mass=70", Query: "length=a%3Cb%3E&tilt=4", Bare: "mm", Units: "in",
		Whole: true})
	require.Len(t, r.Problems, 2)
	assert.Equal(t, "length", r.Problems[0].Input)
	form := parse(t, "<form>"+r.Form)
	field := form.one(t, named("length"))
	assert.Equal(t, "a<b>", field.attr("value"))
	assert.True(t, field.has("data-unread"))
	assert.Equal(t, "154.32", form.one(t, named("mass")).attr("value"), "kilograms are read in pounds by whoever "+
		"reads inches")
	assert.Equal(t, []calculators.Pair{{Key: "tilt", Typed: "4"}, {Key: "mass", Typed: "70"}}, r.Record)
}

func TestAChangeOfUnitsChangesNoValue(t *testing.T) {
	const record = "length=830.5±3&kind=a&tilt=2.5&mass=71.3&rows=name;length;tilt%0AM;440.5;2%0AL;460;"
	for _, units := range []string{"mm", "cm", "in"} {
		r := ask(t, panel.Ask{Record: record, Bare: units, Units: units, Whole: true})
		require.Empty(t, r.Problems, units)
		got := map[string]string{}
		for _, p := range r.Record {
			got[p.Key] = p.Typed
		}
		assert.Equal(t, map[string]string{"length": "830.5±3", "kind": "a", "tilt": "2.5", "mass": "71.3",
			"rows": "name;length;tilt\nM;440.5;2\nL;460;"}, got, units)
	}
	in := parse(t, "<form>"+ask(t, panel.Ask{Record: record, Units: "in", Whole: true}).Form)
	assert.Equal(t, "32 11/16 ± 0.12", in.one(t, named("length")).attr("value"))
	assert.Equal(t, "name;length;tilt\nM;17.34;2\nL;18.11;", strings.TrimSpace(in.one(t,
		tag("textarea")).FirstChild.Data))
	assert.Equal(t, "2.5", in.one(t, named("tilt")).attr("value"), "an angle has no inches")
}

func TestWhatIsTypedGoesBeforeTheRecord(t *testing.T) {
	r := ask(t, panel.Ask{Record: "length=830&kind=a&estimated=length", Query: "length=32+3/4", Bare: "in",
		Units: "in"})
	assert.Equal(t, "831.85", r.Record[0].Typed)
	assert.False(t, r.Record[0].Estimated, "what was typed over an estimate is none")
	r = ask(t, panel.Ask{Record: "length=830&kind=a", Query: "length="})
	assert.Equal(t, "Still needed: Length <of it>.", r.Waiting, "an emptied field is empty, whatever the record has")
}

func TestAFieldSaysWhereItsValueCameFrom(t *testing.T) {
	form := parse(t, "<form>"+ask(t, panel.Ask{Record: "length=830&from=length.sample&mass=70&estimated=mass",
		Whole: true}).Form)
	from := form.all(class("from"))
	require.Len(t, from, 2)
	assert.Equal(t, "Taken from “Sample”.", from[0].text())
	assert.Contains(t, from[1].text(), "An estimate.")
}

func TestAFieldSaysWhatStandsInForIt(t *testing.T) {
	form := parse(t, "<form>"+ask(t, panel.Ask{Whole: true}).Form)
	var hints []string
	for _, e := range form.all(class("empty")) {
		hints = append(hints, e.text())
	}
	assert.Equal(t, []string{"Optional", "Without a number: 3.0° ± 2.0°, usual.", "Optional", "Optional"}, hints)
}

func TestAProblemThatNoFieldCanMend(t *testing.T) {
	r := ask(t, panel.Ask{Query: "length=830&kind=a&tilt=16"})
	require.Len(t, r.Problems, 1)
	assert.Empty(t, r.Problems[0].Input)
	assert.True(t, r.Example)
}

func TestTooMuchIsRefusedInWords(t *testing.T) {
	r := ask(t, panel.Ask{Query: "length=830&kind=a&rows=" + strings.Repeat("9", 1<<20)})
	require.NotEmpty(t, r.Problems)
	assert.Contains(t, r.Problems[len(r.Problems)-1].Text.Say(nil), "too long")
}

func TestAnUnknownCalculatorIsNamed(t *testing.T) {
	r := panel.Answer(samples, panel.Ask{Name: "no<such"})
	require.Len(t, r.Problems, 1)
	assert.Equal(t, "There is no calculator “no<such”.", r.Problems[0].Text.Say(nil))
}

func BenchmarkAnswer(b *testing.B) {
	all := catalog.All()
	a := panel.Ask{Name: "saddle-height", Place: "1", Record: "inseam=830&crank-length=170", Units: "mm"}
	b.ReportAllocs()
	for b.Loop() {
		panel.Answer(all, a)
	}
}

// BenchmarkRun is what the calculation takes of that.
func BenchmarkRun(b *testing.B) {
	c := catalog.Named("saddle-height")
	pairs := []calculators.Pair{{Key: "inseam", Typed: "830"}, {Key: "crank-length", Typed: "170"}}
	b.ReportAllocs()
	for b.Loop() {
		if r, _ := c.Run(pairs, nil); r.Figure != nil {
			r.Figure.SVG("x", nil, 530)
		}
	}
}
