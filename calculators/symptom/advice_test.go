package symptom_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"plumbline/calculators/catalog"
	"plumbline/calculators/measure"
	"plumbline/calculators/record"
	"plumbline/calculators/sheet"
	"plumbline/calculators/symptom"
)

// advised is what the symptoms with these keys come to, with a record as it stands in
// an address.
func advised(t *testing.T, fragment string, keys ...string) *symptom.Advice {
	t.Helper()
	var felt []*symptom.Symptom
	for _, key := range keys {
		s := symptom.Named(key)
		require.NotNil(t, s, key)
		felt = append(felt, s)
	}
	r, _ := record.Decode(fragment)
	return symptom.Advise(felt, sheet.Of(r, catalog.All()))
}

func change(a *symptom.Advice, q *measure.Quantity) *symptom.Change {
	for i := range a.Changes {
		if a.Changes[i].Setting.Quantity == q {
			return &a.Changes[i]
		}
	}
	return nil
}

// Soreness asks for the nose down and numb hands for the nose up. Neither is tried, it
// is said why, and the first change is one that the other symptom does not speak against.
func TestSorenessAndNumbHandsLeaveTheNoseAlone(t *testing.T) {
	a := advised(t, "saddle-tilt=1&saddle-height=730&spacers=15", "seat-sore", "hands")
	assert.Nil(t, change(a, measure.SaddleTilt))
	require.Len(t, a.Aside, 1)
	assert.Contains(t, a.Aside[0].Say(nil), "nose down")
	assert.Contains(t, a.Aside[0].Say(nil), "nose up")
	require.NotEmpty(t, a.Changes)
	assert.Same(t, measure.SaddleHeight, a.Changes[0].Setting.Quantity)
	assert.Equal(t, 725.0, a.Changes[0].Next, "one step of 5 mm down from 730")
	up := change(a, measure.Spacers)
	require.NotNil(t, up)
	assert.Equal(t, 20.0, up.Next)
	// Each alone moves the nose, and each its own way: 1 degree a step.
	assert.Equal(t, 2.0, change(advised(t, "saddle-tilt=1", "seat-sore"), measure.SaddleTilt).Next)
	assert.Equal(t, 0.0, change(advised(t, "saddle-tilt=1", "hands"), measure.SaddleTilt).Next)
}

// The inside leg of 830 mm puts the starting height at about 736 ± 22 mm (the
// calculator's own cases): at 709 the saddle is 27 mm low.
func TestALowSaddleIsNotLowered(t *testing.T) {
	const low = "inseam=830&crank-length=170&saddle-height=709"
	a := advised(t, low, "knee-outside")
	assert.Nil(t, change(a, measure.SaddleHeight))
	require.Len(t, a.Aside, 1)
	assert.Contains(t, a.Aside[0].Say(nil), "709\u00a0mm")
	assert.Contains(t, a.Aside[0].Say(nil), " less than “Saddle height” gives")
	// Raising it is what the numbers back, so it comes before everything else.
	a = advised(t, low, "hip")
	require.NotEmpty(t, a.Changes)
	assert.Same(t, measure.SaddleHeight, a.Changes[0].Setting.Quantity)
	assert.Equal(t, 714.0, a.Changes[0].Next)
	// Where two symptoms disagree the sheet decides.
	a = advised(t, low, "knee-back", "knee-front")
	assert.Equal(t, 714.0, change(a, measure.SaddleHeight).Next)
	// At the starting height itself a step down is still a fair test.
	assert.Equal(t, 731.0, change(advised(t, "inseam=830&crank-length=170&saddle-height=736", "knee-outside"),
		measure.SaddleHeight).Next)
}

// What was planned and never ridden is not where the complaint comes from.
func TestAStepIsCountedFromWhatWasRidden(t *testing.T) {
	a := advised(t, "saddle-height=736&saddle-height.was=722&from=saddle-height.saddle-height", "hip")
	c := change(a, measure.SaddleHeight)
	require.NotNil(t, c)
	assert.Equal(t, 722.0, c.Now)
}

func TestTogetherPutsSignsFirstAndOffersOneChange(t *testing.T) {
	ways := symptom.Ways{Chapter: func(path string) (string, string) { return "../" + path + ".html", path }}
	a := advised(t, "saddle-height=730&saddle-tilt=1", "seat-sore", "hands")
	text := symptom.TogetherHTML(a, nil, ways)
	signs, first := strings.Index(text, `class="caution stop"`), strings.Index(text, `class="changes"`)
	assert.Positive(t, signs)
	assert.Less(t, signs, first)
	assert.Equal(t, 1, strings.Count(text, "data-use"))
	assert.Contains(t, text, `data-use="saddle-height" data-value="725"`)
	// A setting that nobody measured is not changed before it is.
	text = symptom.TogetherHTML(advised(t, "", "seat-sore"), nil, ways)
	assert.NotContains(t, text, "data-use")
	assert.Contains(t, text, "there is no way back")
}

// What a calculator gave is the plan: while it waits to be ridden, no symptom moves the
// setting the other way, however wide the calculator's ± is.
func TestNothingIsMovedAgainstAPlanThatACalculatorGave(t *testing.T) {
	const now, given = "inseam=812&saddle-height=722&saddle-height.was=708", "&from=saddle-height.saddle-height"
	text := symptom.TogetherHTML(advised(t, now+given, "seat-sore", "hands"), nil, symptom.Ways{})
	assert.NotContains(t, text, `data-use="saddle-height"`)
	assert.Contains(t, text, "Your sheet plans 722\u00a0mm for “Saddle height”, which is the other way.")
	text = symptom.TogetherHTML(advised(t, now, "seat-sore", "hands"), nil, symptom.Ways{})
	assert.Contains(t, text, `data-use="saddle-height" data-value="703"`, "what the rider planned alone may be wrong")
}

// At the height that the numbers give, front and back of the knee ask for opposite things
// and nothing is left to try: then no change below is spoken of.
func TestNoChangeIsPromisedWhereNoneIsLeft(t *testing.T) {
	text := symptom.TogetherHTML(advised(t, "inseam=830&crank-length=170&saddle-height=736", "knee-front", "knee-back"),
		nil, symptom.Ways{})
	assert.Contains(t, text, "No setting is left that is worth a try")
	assert.NotContains(t, text, "below")
}

// What the sheet has as Next already is said, and is not put there again: of a plan to
// 737 mm in steps, a first step of 714 mm would take the rest away.
func TestWhatTheSheetPlansAlreadyIsNotPutThereAgain(t *testing.T) {
	for fragment, planned := range map[string]string{
		"inseam=830&saddle-height=714&saddle-height.was=709": "714",
		"inseam=830&saddle-height=737&saddle-height.was=709": "737",
		"inseam=830&saddle-height=709":                       "",
		"inseam=830&saddle-height=700&saddle-height.was=709": "",
	} {
		text := symptom.TogetherHTML(advised(t, fragment, "knee-front"), nil, symptom.Ways{})
		if planned == "" {
			assert.Contains(t, text, `data-use="saddle-height" data-value="714"`, fragment)
			continue
		}
		assert.NotContains(t, text, "data-use", fragment)
		assert.Contains(t, text, "Your sheet has "+planned+"\u00a0mm as Next already. Ride that first.", fragment)
	}
}
