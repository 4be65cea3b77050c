package measure_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// The spellings that a rule, a drawing, a European keyboard or a web page bring
// along; common practice of each. By hand: 32 3/4 in are 32.75 × 25.4 = 831.85 mm,
// 2 ft 8 1/2 in are 32.5 × 25.4 = 825.5 mm, 5 ft 10 in are 70 × 25.4 = 1778 mm.
func TestEntryIsReadAsPeopleWriteIt(t *testing.T) {
	for _, c := range []struct {
		q     *measure.Quantity
		bare  *measure.Unit
		typed string
		value float64
	}{
		{measure.Inseam, measure.Inch, "32-3/4", 831.85},
		{measure.Inseam, nil, `32-3/4"`, 831.85},
		{measure.Inseam, nil, `32–3/4 in.`, 831.85},
		{measure.Inseam, nil, "32 3/4 Zoll", 831.85},
		{measure.Inseam, nil, "32-¾”", 831.85},
		{measure.Inseam, nil, "2'8 1/2", 825.5},
		{measure.Inseam, nil, `2' 8 1/2"`, 825.5},
		{measure.Inseam, nil, `2'-8 1/2"`, 825.5},
		{measure.Inseam, nil, `2'8-1/2"`, 825.5},
		{measure.Inseam, nil, "2´8½´´", 825.5},
		{measure.Inseam, nil, "2 ft. 8 1/2 in.", 825.5},
		{measure.Stature, nil, "5‘10“", 1778},
		{measure.Inseam, nil, "83,5\u2009cm", 835},
		{measure.Inseam, nil, "83,5\u2007cm.", 835},
		{measure.Inseam, nil, "Inseam: 83.5cm", 835},
		{measure.Inseam, nil, "INSIDE LEG = 83,5 cm", 835},
		{measure.Inseam, nil, "inside\u00a0leg 835", 835},
		{measure.Inseam, nil, "83 cm (inside leg)", 830},
		{measure.Inseam, nil, "83,5 cm [Inseam]", 835},
		{measure.Inseam, nil, "32 3/4 in, inside leg", 831.85},
		{measure.Inseam, nil, "inseam 32 3/4 in", 831.85},
		{measure.StemAngle, nil, "stem-angle: -6", -6},
		{measure.BarRise, nil, "+3/4 in", 19.05},
	} {
		g, why, ok := c.q.Parse(c.typed, c.bare)
		if assert.True(t, ok, "%q: %s", c.typed, why.Say(nil)) {
			assert.InDelta(t, c.value, g.Value, 1e-9, c.typed)
			assert.Empty(t, g.Suggest)
		}
	}
}

// Each of these could mean two things, or something else than an inside leg.
func TestEntryThatCouldMeanTwoThingsIsRefused(t *testing.T) {
	for _, typed := range []string{"32 - 3/4 in", "32 -3/4 in", "32-3/4-1/8 in", "32-5/4 in", "32-34", "2' -8", "2'-",
		"2-8 ft", "inseam835", "inseam:", "inseam", "inseam inseam", "83. 5 cm",
		"83 5 cm", "83 cm or 84 cm", "left 83 cm, right 83.5 cm", "83 cm (2 readings)", "size 2: 835"} {
		g, why, ok := measure.Inseam.Parse(typed, nil)
		assert.False(t, ok, "%q is read as %v", typed, g.Value)
		assert.Contains(t, why.Say(nil), "is not a number for “Inside leg”")
		assert.Empty(t, g.Suggest)
	}
}

// A number of something else is not taken for an inside leg without a question; the name
// in the reader's language is taken as the English one is.
func TestANumberAmongOtherWordsIsOffered(t *testing.T) {
	for _, c := range []struct{ typed, suggest string }{
		{"Reach: 835", "835 mm"}, {"ca. 835", "835 mm"}, {"trochanter-height 835", "835 mm"},
		{"Schrittlänge: 83 cm", "83 cm"}, {"83 cm (Schrittlänge)", "83 cm"}, {"about 32 3/4 in", "32 3/4 in"},
		{"my leg = 83", "83 cm"}, {"83 cm with shoes off.", "83 cm"},
	} {
		g, why, ok := measure.Inseam.Parse(c.typed, nil)
		assert.False(t, ok, "%q is read as %v", c.typed, g.Value)
		assert.Equal(t, c.suggest, g.Suggest, c.typed)
		assert.Contains(t, why.Say(nil), "has other words beside the number for “Inside leg”. Did you mean ")
	}
	german := &words.Reader{Units: "cm", Language: words.Speaking(words.Language{Tag: "de", Decimal: ","},
		map[words.English]string{measure.Inseam.Label: "Schrittlänge"})}
	for _, typed := range []string{"Schrittlänge: 83,5", "SCHRITTLÄNGE 83,5 cm", "83,5 cm (Schrittlänge)",
		"Inseam: 835 mm"} {
		g, why, ok := measure.Inseam.ParseFor(typed, german)
		if assert.True(t, ok, "%q: %s", typed, why.Say(nil)) {
			assert.InDelta(t, 835, g.Value, 1e-9, typed)
		}
	}
}

// What "Did you mean" says is handed over as it is typed, with the ± where that keeps
// its meaning and with the other readings of the same length.
func TestALikelySlipIsHandedOverAsItIsTyped(t *testing.T) {
	for _, c := range []struct {
		bare           *measure.Unit
		typed, suggest string
	}{
		{nil, "83", "83 cm"}, {nil, "83,5", "83.5 cm"}, {nil, "8300", "830 mm"}, {measure.Inch, "832", "832 mm"},
		{nil, "83 ± 5 mm", "83 cm ± 5 mm"}, {nil, "83 ± 5", "83 cm"}, {nil, "8300 ± 5", "830 mm ± 5"},
		{nil, "83; 83,5; 82.9", "83; 83,5; 82.9 cm"}, {nil, "830; 83; 829", "830; 83 cm; 829"},
		{nil, "-5", ""}, {nil, "what", ""}, {nil, "830; 1; 829", "830; 1 m; 829"}, {nil, "830; -5; 829", ""},
	} {
		g, _, ok := measure.Inseam.ParseRepeated(c.typed, c.bare)
		require.False(t, ok, c.typed)
		assert.Equal(t, c.suggest, g.Suggest, c.typed)
	}
	g, _, _ := measure.Mass.Parse("340", nil)
	assert.Equal(t, "340 lb", g.Suggest)
	g, _, _ = measure.HeadAngle.Parse("645", nil)
	assert.Equal(t, "64.5 deg", g.Suggest)
	g, _, _ = measure.ShoeSize.Parse("425", nil)
	assert.Equal(t, "42.5", g.Suggest)
}

// A page that offers the suggestion must not be refused again, and must not set
// another number than the sentence names.
func TestASuggestionIsWhatTheSentenceSays(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		q := number(t)
		bare := rapid.SampledFrom([]*measure.Unit{nil, measure.Cm, measure.Inch}).Draw(t, "bare")
		typed := measure.Exact(float64(rapid.IntRange(-90000, 90000).Draw(t, "tenths")) / 10)
		g, why, ok := q.Parse(typed, bare)
		_, asked, asks := strings.Cut(why.Say(nil), "Did you mean ")
		if ok && g.Suggest != "" { // unusual, and usual in another unit
			offered, _, read := q.Parse(g.Suggest, bare)
			assert.True(t, read && !q.Plausible(g.Value) && q.Plausible(offered.Value), "%s %q: %q", q.Key, typed,
				g.Suggest)
			return
		}
		if ok || !asks {
			assert.Empty(t, g.Suggest)
			return
		}
		said, _, ok1 := q.Parse(strings.TrimSuffix(asked, "?"), bare)
		offered, _, ok2 := q.Parse(g.Suggest, bare)
		assert.True(t, ok1 && ok2 && q.Plausible(offered.Value), "%s %q: %q", q.Key, typed, g.Suggest)
		assert.Equal(t, said.Value, offered.Value)
	})
}
