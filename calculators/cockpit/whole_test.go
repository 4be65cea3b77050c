package cockpit

import (
	"strings"
	"testing"

	"pgregory.net/rapid"

	"plumbline/calculators"
	"plumbline/calculators/body"
	"plumbline/calculators/measure"
)

// The front page's picture exists for every rider that the guide's ranges allow,
// and shows the test rider where nothing was typed.
func TestEveryRiderIsDrawnWhole(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		stature := rapid.Float64Range(1450, 2050).Draw(t, "stature")
		inseam := stature * rapid.Float64Range(0.455, 0.505).Draw(t, "share")
		sex := rapid.SampledFrom([]body.Sex{body.Unknown, body.Female, body.Male}).Draw(t, "sex")
		if _, ok := wholeRider(inseam, stature, sex, bothWays); !ok {
			t.Fatal("no picture")
		}
	})
	plain := WholeRider().Figure(nil, nil).SVG("x", nil, 530)
	test := WholeRider().Figure([]calculators.Pair{{Key: "inseam", Typed: "830"}, {Key: "stature", Typed: "1740"}},
		nil).SVG("x", nil, 530)
	if plain != test || strings.Contains(plain, "NaN") {
		t.Error("the picture without numbers is not the test rider's")
	}
	if nonsense := WholeRider().Figure([]calculators.Pair{{Key: "inseam", Typed: "2 m"},
		{Key: measure.Sex.Key, Typed: "x"}}, nil).SVG("x", nil, 530); strings.Contains(nonsense, "NaN") {
		t.Error(nonsense)
	}
}
