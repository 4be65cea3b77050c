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

// A guide's own words stand in place of ours, its move comes first, and every sign that is
// not for tools is still there, in the list and where symptoms are laid over one another.
func TestOwnWordsLeaveEverySign(t *testing.T) {
	own := []symptom.Own{
		{Key: "knee-front", Label: "It hurts below the kneecap", Move: symptom.Move{
			Do: "Put the saddle up", Of: measure.SaddleHeight, More: true}},
		{Key: "knee-back", Move: symptom.Move{Do: "Rest two days", Why: "Most of it goes by itself"}},
		{Key: "nothing-of-ours", Label: "Passed over"},
	}
	assert.Equal(t, own[:2], symptom.ReadOwn(symptom.WriteOwn(own))[:2])
	ours, theirs := symptom.All(), symptom.With(own)
	require.Len(t, theirs, len(ours))
	for i, s := range theirs {
		assert.Equal(t, ours[i].Flags, s.Flags, s.Key)
	}
	front := theirs[0]
	require.Equal(t, "knee-front", front.Key)
	assert.Len(t, front.Causes, len(ours[0].Causes), "the same move stands there once")
	assert.Equal(t, "Put the saddle up, by 5\u00a0mm at most.", front.Causes[0].Change().Say(nil))
	assert.Equal(t, ours[0].Causes[0].Why, front.Causes[0].Why)
	assert.Equal(t, "saddle/height", front.Causes[0].Chapter)
	back := theirs[1]
	assert.Len(t, back.Causes, len(ours[1].Causes)+1)
	assert.Equal(t, symptom.House, back.Causes[0].Evidence)
	assert.Equal(t, "Front of the knee aches", symptom.Named("knee-front").Label.Say(nil), "ours are as they were")

	text := symptom.HTML("s", nil, symptom.Ways{}, own)
	for _, want := range []string{"It hurts below the kneecap", "Put the saddle up, by", "Rest two days"} {
		assert.Contains(t, text, want)
	}
	for _, s := range ours {
		for _, flag := range s.Flags {
			assert.Contains(t, text, string(flag))
		}
	}
	r, _ := record.Decode("saddle-height=730")
	a := symptom.Advise([]*symptom.Symptom{front, back}, sheet.Of(r, catalog.All()))
	together := symptom.TogetherHTML(a, nil, symptom.Ways{})
	assert.Contains(t, together, "It hurts below the kneecap")
	for _, flag := range append(front.Flags, back.Flags...) {
		assert.Contains(t, together, string(flag))
	}
}

func TestWhatCannotBeReadOfOwnWordsIsPassedOver(t *testing.T) {
	assert.Nil(t, symptom.ReadOwn("knee-front\tonly two"))
	long := strings.Repeat("a\tb\n", 3)
	assert.Len(t, symptom.ReadOwn(symptom.WriteOwn([]symptom.Own{{Key: "k", Label: "a\tb\nc"}})), 1, long)
	assert.Contains(t, symptom.Movable(), "saddle-height")
}
