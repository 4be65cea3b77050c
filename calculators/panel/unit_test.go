package panel_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"plumbline/calculators"
	"plumbline/calculators/panel"
)

func TestAFieldIsReadInAUnitOfItsOwn(t *testing.T) {
	const record = "length=830&kind=a&mass=70"
	r := ask(t, panel.Ask{Record: record, Fields: "length.unit=in&mass.unit=lb", Whole: true})
	require.Empty(t, r.Problems)
	form := parse(t, "<form>"+r.Form)
	length, mass := form.one(t, named("length")), form.one(t, named("mass"))
	assert.Equal(t, "32 11/16", length.attr("value"))
	assert.Equal(t, "in", length.attr("data-unit"))
	assert.Equal(t, "text", length.attr("inputmode"), "a pad of digits has no fraction")
	assert.Equal(t, "154.32", mass.attr("value"), "70 kg: 1 lb is 0.45359237 kg")
	assert.Equal(t, "lb", mass.attr("data-unit"))
	assert.Equal(t, "decimal", mass.attr("inputmode"))
	assert.Contains(t, r.HTML(), "1660", "what is read stays in the guide's unit")
	assert.Equal(t, calculators.Pair{Key: "length", Typed: "830"}, r.Record[0], "no value changes")
}

func TestABareNumberIsInTheUnitThatStoodBesideIt(t *testing.T) {
	r := ask(t, panel.Ask{Query: "length=32+3/4&length.unit=in&kind=a&mass=154&mass.unit=lb"})
	require.Empty(t, r.Problems)
	got := map[string]string{}
	for _, p := range r.Record {
		got[p.Key] = p.Typed
	}
	assert.Equal(t, map[string]string{"length": "831.85", "kind": "a", "mass": "69.853225"}, got)
	// A unit that was changed meanwhile rewrites what was typed, and only that.
	r = ask(t, panel.Ask{Query: "length=33+1/2&length.unit=in&kind=a", Fields: "length.unit=cm", Whole: true})
	length := parse(t, "<form>"+r.Form).one(t, named("length"))
	assert.Equal(t, "85.09", length.attr("value"))
	assert.Equal(t, "cm", length.attr("data-unit"))
}

func TestUnitsThatMeasureSomethingElseArePassedOver(t *testing.T) {
	for _, fields := range []string{"length.unit=kg", "length.unit=deg", "length.unit=ft", "length.unit=", "x.unit=in",
		"kind.unit=in", "%%%"} {
		r := ask(t, panel.Ask{Record: "length=830&kind=a", Fields: fields, Query: fields, Whole: true})
		require.Empty(t, r.Problems, fields)
		assert.Equal(t, "830", parse(t, "<form>"+r.Form).one(t, named("length")).attr("value"), fields)
	}
}

func TestAnUnreadableNumberIsAnsweredWithWhatWasLikelyMeant(t *testing.T) {
	r := ask(t, panel.Ask{Query: "length=83&kind=a"})
	require.Len(t, r.Problems, 1)
	assert.Equal(t, "83 cm", r.Problems[0].Suggest)
}
