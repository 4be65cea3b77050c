package calculators_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"plumbline/calculators"
	"plumbline/calculators/catalog"
	"plumbline/calculators/intake"
	"plumbline/calculators/measure"
	"plumbline/calculators/panel"
	"plumbline/calculators/record"
)

// slips are what riders get wrong, with the words of the note; the numbers are worked
// out beside them.
var slips = []struct{ name, text, key, says, suggest string }{
	{"a height in other units", "stature=830", "stature", "830\u00a0mm is unusual for “Height”", ""},
	// 165 lb are 165·0.45359237 = 74.8 kg; 165 kg on 1.74 m would be an index of 54.5.
	{"pounds as kilograms", "mass=165&stature=1850&inseam=890&saddle-height=785", "mass", "Did you mean 165 lb?",
		"165 lb"},
	// 150 kg is in the usual span, 150/1.74² = 49.5 is not; as pounds 68 kg, 22.5.
	{"pounds against the height", "mass=150&stature=1740&inseam=830&saddle-height=735", "mass",
		"Did you mean 150 lb?", "150 lb"},
	// 1050 mm lies at the end of the usual span, and is 0.60 of 1740 mm: men's line
	// 836.5, women's 848.2, so 842 ± 3·26 or so.
	{"a leg against the height", "inseam=1050&stature=1740", "inseam", "does not go with “Height”", ""},
	// 0.6·1300 = 780 mm.
	{"a leg longer than a child", "inseam=800&stature=1300", "stature", "less than 780\u00a0mm would be", ""},
	{"a saddle from the pedal", "inseam=830&saddle-height=905&crank-length=170", "saddle-height",
		"it would then be 735\u00a0mm", ""},
}

// TestSlipsAreSeenInEveryCalculatorAsOnTheSheet types each slip over the example of every
// calculator that asks for one of its numbers.
func TestSlipsAreSeenInEveryCalculatorAsOnTheSheet(t *testing.T) {
	for _, slip := range slips {
		t.Run(slip.name, func(t *testing.T) {
			r, _ := record.Decode(slip.text)
			sheet := intake.Doubts(r)
			require.NotEmpty(t, sheet, "the sheet sees nothing")
			assert.Contains(t, sheet[0].Text.Say(nil), strings.TrimSuffix(slip.says, "?"))
			asked := 0
			for _, c := range catalog.All() {
				if !asks(c, slip.key) {
					continue
				}
				// What the example says of the body must not bear witness itself.
				typed := append(without(panel.Example(c), "stature", "inseam", "mass", "saddle-height", "crank-length",
					"trochanter-height", "knee-height", "thigh-length", "shank-length"), r.Pairs()...)
				result, problems := c.Run(typed, nil)
				if problems != nil {
					continue // such numbers make no bike or rider: that is said instead
				}
				asked++
				i := 0
				for i < len(result.Notes) && !(result.Notes[i].Input == slip.key &&
					strings.Contains(result.Notes[i].Text.Say(nil), slip.says)) {
					i++
				}
				if assert.Less(t, i, len(result.Notes), "%s says nothing of it", c.Name) {
					assert.Equal(t, slip.suggest, result.Notes[i].Suggest, c.Name)
				}
			}
			assert.Positive(t, asked, "no calculator was asked")
		})
	}
}

// TestANumberIsDoubtedByWhatOnlyTheRecordHas: nobody typed a height into this form, but
// the record knows one.
func TestANumberIsDoubtedByWhatOnlyTheRecordHas(t *testing.T) {
	ask := panel.Ask{Name: "saddle-height", Record: "stature=1740", Query: "inseam=1000"}
	r := panel.Answer(catalog.All(), ask)
	require.Empty(t, r.Problems)
	require.Len(t, r.Doubts, 1)
	assert.Equal(t, "inseam", r.Doubts[0].Input)
	ask.Record = "stature=1740&estimated=stature"
	assert.Empty(t, panel.Answer(catalog.All(), ask).Doubts, "an estimate is no witness")
	dropper := panel.Ask{Name: "dropper-travel", Record: "stature=1740&mass=165",
		Query: "saddle-height=736&seat-tube-length=430"}
	assert.Empty(t, panel.Answer(catalog.All(), dropper).Doubts, "neither is any matter of this calculator")
	ask.Record = "inseam=1000&stature=1740"
	ask.Query = "inseam="
	assert.True(t, panel.Answer(catalog.All(), ask).Example, "an emptied field is empty")
}

// TestAChildIsToldEverywhere: the caution about growing comes wherever it is carried, as
// soon as the record has the height.
func TestAChildIsToldEverywhere(t *testing.T) {
	c := catalog.Named("saddle-height")
	for text, want := range map[string]bool{"inseam=600&stature=1300&crank-length=140": true,
		"inseam=830&stature=1740":                                    false,
		"inseam=600&stature=1300&crank-length=140&estimated=stature": true, "inseam=830&growing=yes": true} {
		r, _ := record.Decode(text)
		result, problems := c.Run(r.Pairs(), nil)
		require.Empty(t, problems)
		got := false
		for _, n := range result.Notes {
			got = got || n.Key == "growing"
		}
		assert.Equal(t, want, got, text)
	}
}

func asks(c *calculators.Calculator, key string) bool {
	for _, in := range c.Inputs {
		if in.Key == key && in.Is() == measure.Number {
			return true
		}
	}
	return false
}

func without(pairs []calculators.Pair, keys ...string) (left []calculators.Pair) {
	for _, p := range pairs {
		found := false
		for _, k := range keys {
			found = found || p.Key == k
		}
		if !found {
			left = append(left, p)
		}
	}
	return left
}
