package sheet_test

import (
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"plumbline/calculators/measure"
	"plumbline/calculators/sheet"
	"plumbline/calculators/words"
)

// planned returns the words of each step of a plan, without tags.
func planned(t *testing.T, text string, r *words.Reader, list ...*measure.Quantity) (steps []string) {
	t.Helper()
	var settings []*sheet.Setting
	for _, q := range list {
		settings = append(settings, sheet.SettingOf(q))
	}
	p := sheet.PlanOf(of(text), settings)
	if p == nil {
		return nil
	}
	for _, item := range strings.Split(p.HTML(r), "<li")[1:] {
		item = regexp.MustCompile(`^[^>]*>|<[^>]*>`).ReplaceAllString(item, "")
		steps = append(steps, strings.ReplaceAll(item, "\u00a0", " "))
	}
	return steps
}

// The steps are 722 + 14/3 and 722 + 28/3, to the millimetre, by hand.
func TestAPlanSaysOneStepAfterTheOther(t *testing.T) {
	const text = "saddle-height=736&from=saddle-height.saddle-height&saddle-height.was=722"
	assert.Equal(t, []string{
		"727 mmSaddle height. Now 722 mm: raise, by 5 mm. Ride twice, then 9 mm more.",
		"731 mmSaddle height. From 727 mm: raise, by 4 mm. Ride twice, then 5 mm more.",
		"736 mmSaddle height. From 731 mm: raise, by 5 mm. This is the last step.",
	}, planned(t, text, nil, measure.SaddleHeight))
	// 727/25.4 × 16 is 457.95 sixteenths, 458/16 = 28 5/8.
	inches := planned(t, text, &words.Reader{Units: "in"}, measure.SaddleHeight)
	assert.True(t, strings.HasPrefix(inches[0], "28 5/8 in"), inches[0])
}

func TestAPlanTakesWhatIsToBeChangedFirst(t *testing.T) {
	const text = "stem-length=45&spacers=10&from=spacers.stem-choice&spacers.was=15"
	got := planned(t, text, nil, measure.StemLength, measure.Spacers)
	assert.Equal(t, []string{"10 mmSpacers under the stem. Now 15 mm: lower the stem, by 5 mm."}, got)
	// Of a bike that nobody has changed or computed anything for it says what it has.
	got = planned(t, "stem-length=45", nil, measure.StemLength, measure.Spacers)
	require.Len(t, got, 1)
	assert.True(t, strings.HasPrefix(got[0], "45 mmStem. This is what the bike has."), got[0])
	assert.Nil(t, planned(t, "inseam=830", nil, measure.StemLength))
	// What a calculator gives counts before anybody took it over; the way back is asked for.
	got = planned(t, "inseam=830&crank-length=170", nil, measure.SaddleHeight)
	require.Len(t, got, 1)
	assert.Contains(t, got[0], "Measure that first")
}

// 60 mm in steps of 5 are 12; 8 are shown, and the goal is no step of its own.
func TestALongPlanNeverJumpsToItsGoal(t *testing.T) {
	got := planned(t, "saddle-height=740&from=saddle-height.saddle-height&saddle-height.was=680", nil,
		measure.SaddleHeight)
	require.Len(t, got, 7)
	assert.Contains(t, got[6], "715 mm")
	assert.Contains(t, got[6], "then 25 mm more")
}
