package cockpit

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"plumbline/calculators/calctest"
	"plumbline/calculators/measure"
)

// TestTheVerdictSaysWhatToSet holds the settings that the verdict proposes to sums by hand: a
// ring of 5 mm moves the grips by 5·cos 64.5° = 2.2 mm back and 5·sin 64.5° = 4.5 mm up,
// so that two of them are nearest to "5 back and 10 up" and to "5 ahead and 10 down".
func TestTheVerdictSaysWhatToSet(t *testing.T) {
	const bike = "reach=455 stack=630 head-angle=64.5 stem-length=45 stem-angle=0 spacers=15 bar-rise=30 "
	set := func(typed string) string {
		var list []string
		for _, s := range calctest.Answer(t, Stem(), typed).Proposed {
			list = append(list, s.Input+"="+measure.Amount{Value: float64(s.Value), Unit: s.Quantity.Unit}.Number(nil))
		}
		return strings.Join(list, " ")
	}
	assert.Equal(t, "spacers=25", set(bike+"feeling=pitched"), "15 + 2·5")
	assert.Equal(t, "spacers=25 spacers-above=1", set(bike+"feeling=pitched spacers-above=11"),
		"the rings come from above")
	assert.Equal(t, "spacers=25 spacers-above=0", set(bike+"feeling=pitched spacers-above=10"))
	assert.Equal(t, "bar-rise=40", set(bike+"feeling=pitched spacers-above=4"), "two rings are not there: 15 + 4 < 25")
	assert.Equal(t, "spacers=5 spacers-above=21", set(bike+"feeling=wanders spacers-above=11"), "and go there")
	assert.Equal(t, "", set(bike+"move-x=0 move-y=1"), "no part comes nearer")
	angle := "move-x=2 move-y=8 spacers-above=0 "
	assert.Contains(t, set(bike+angle), "stem-angle=")
	assert.Equal(t, "", set(strings.Replace(bike, "stem-angle=0 ", "", 1)+angle), "nothing is set beside a guess")
}
