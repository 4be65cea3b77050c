package panel_test

import (
	"math"
	"net/url"
	"strings"
	"testing"
	"unicode/utf8"

	"pgregory.net/rapid"

	"plumbline/calculators"
	"plumbline/calculators/calctest"
	"plumbline/calculators/catalog"
	"plumbline/calculators/measure"
	"plumbline/calculators/panel"
)

// anyQuery is sometimes pairs of real keys with odd values, sometimes noise.
func anyQuery(t *rapid.T, c *calculators.Calculator, name string) string {
	if rapid.IntRange(0, 4).Draw(t, name+" noise") == 0 {
		return string(rapid.SliceOfN(rapid.Byte(), 0, 200).Draw(t, name))
	}
	var parts []string
	for _, in := range c.Inputs {
		switch rapid.IntRange(0, 3).Draw(t, in.Key+" how") {
		case 0:
			parts = append(parts, in.Key+"="+url.QueryEscape(in.Example))
		case 1:
			if in.Is() == measure.Number {
				x := rapid.Float64Range(in.Least, in.Most).Draw(t, in.Key)
				parts = append(parts, in.Key+"="+measure.Exact(math.Round(x*100)/100))
			}
		case 2:
			parts = append(parts, in.Key+"="+url.QueryEscape(rapid.StringN(0, 20, 60).Draw(t, in.Key)))
		}
	}
	return strings.Join(parts, "&")
}

func TestAnswerTakesAnything(t *testing.T) {
	all := append(samples, catalog.All()...)
	rapid.Check(t, func(t *rapid.T) {
		c := rapid.SampledFrom(all).Draw(t, "calculator")
		name := c.Name
		if rapid.IntRange(0, 20).Draw(t, "stranger") == 0 {
			name = rapid.String().Draw(t, "name")
		}
		units := rapid.SampledFrom([]string{"", "mm", "cm", "in", "parsec"})
		r := panel.Answer(all, panel.Ask{Name: name, Place: rapid.StringN(0, 5, 20).Draw(t, "place"),
			Record: anyQuery(t, c, "record"), Query: anyQuery(t, c, "query"),
			Bare: units.Draw(t, "bare"), Units: units.Draw(t, "units"), Whole: rapid.Bool().Draw(t, "whole")})
		out := r.HTML() + r.Form + r.Spoken + r.Waiting
		for _, p := range r.Problems {
			if p.Text.None() {
				t.Fatalf("a problem without words at %q", p.Input)
			}
			out += p.Text.Say(nil)
		}
		if !utf8.ValidString(out) || strings.ContainsRune(out, 0) {
			t.Fatal("the answer is no clean text")
		}
		// Only what was typed may hold these words, and it is quoted or escaped.
		for _, bad := range []string{">NaN", ">Inf", ">+Inf", ">-Inf", ">−Inf", "<script", "%!"} {
			if strings.Contains(r.HTML(), bad) {
				t.Fatalf("the answer holds %q", bad)
			}
		}
		if r.HTML() == "" && len(r.Problems) == 0 {
			t.Fatal("neither an answer nor a problem")
		}
		if !r.Example && r.HTML() != "" && len(r.Problems) > 0 {
			t.Fatal("an own answer in spite of problems")
		}
		for _, p := range r.Record {
			if strings.Contains(p.Typed, "NaN") || strings.Contains(p.Typed, "Inf") {
				t.Fatalf("the record holds %q", p.Typed)
			}
		}
	})
}

func FuzzAnswer(f *testing.F) {
	f.Add("sample", "length=830&kind=a", "mm")
	f.Add("saddle-height", "inseam=83+cm&x=%zz%00%ff", "in")
	all := append(samples, catalog.All()...)
	f.Fuzz(func(t *testing.T, name, query, units string) {
		calctest.Bounded(t, func() {
			panel.Answer(all, panel.Ask{Name: name, Query: query, Bare: units, Units: units, Whole: true})
		})
	})
}

// FuzzEveryCalculator asks each calculator, by its place in the guide, whatever can be
// typed into its form. Seeds are the worked examples.
func FuzzEveryCalculator(f *testing.F) {
	all := catalog.All()
	for i, c := range all {
		query := ""
		for _, p := range panel.Example(c) {
			query += "&" + p.Key + "=" + url.QueryEscape(p.Typed)
		}
		f.Add(uint(i), strings.TrimPrefix(query, "&"), "mm")
	}
	f.Fuzz(func(t *testing.T, i uint, query, units string) {
		calctest.Bounded(t, func() {
			name := all[i%uint(len(all))].Name
			r := panel.Answer(all, panel.Ask{Name: name, Query: query, Bare: units, Units: units, Whole: true})
			for _, bad := range []string{">NaN", ">Inf", ">+Inf", ">-Inf", ">−Inf", "<script", "%!"} {
				if strings.Contains(r.HTML(), bad) {
					t.Fatalf("the answer holds %q", bad)
				}
			}
		})
	})
}
