package cockpit

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"

	"plumbline/calculators"
	"plumbline/calculators/calctest"
)

// standIn is a value that stands in for an empty field, with its standard uncertainty.
type standIn struct{ value, sd float64 }

// What stands in where a reader left a field empty: common practice, what the old bike
// has, or what a tape found. The numbers are those of the guide's own tables; where they
// move an answer, the tests of the ± hold them too.
func TestStandIns(t *testing.T) {
	none := standIn{math.NaN(), 0}
	for _, k := range []struct {
		c     *calculators.Calculator
		typed string
		want  map[string]standIn
	}{
		{Same(), "bb-height=338 saddle-floor=1052 grip-floor=1058 nose-setback=12 nose-to-grip=466 fork-travel=140",
			map[string]standIn{"saddle-nose": {155, 8}, "saddle-setback": {167, 0},
				"saddle-height": {math.Hypot(714, 167), 0}, "grip-x": {454, 0},
				"grip-y": {720, 0}, "crank-length": {170, 2.5}, "pedal-height": {15, 2},
				"sole-height":     {15, 3},
				"new-post-offset": {0, 0},
				"new-bar-rise":    {30, 0}, "new-bar-sweep": {38, 5}, "new-headset-height": {10, 4},
				"sag-front": {20, 0}, "sag-rear": none}},
		{Same(), "crank-length=172.5 pedal-height=13 sole-height=17 rear-travel=125",
			map[string]standIn{"saddle-nose": none, "saddle-setback": none, "saddle-height": none, "grip-x": none,
				"grip-y":           none,
				"new-crank-length": {172.5, 0}, "new-pedal-height": {13, 0}, "new-sole-height": {17, 0},
				"sag-front": none, "sag-rear": {28, 0}}},
		{Same(), "nose-setback=12", map[string]standIn{"saddle-nose": {155, 8}, "saddle-setback": {167, 0},
			"grip-x": none}},
		{Same(), "nose-to-grip=466", map[string]standIn{"saddle-nose": none, "saddle-setback": none, "grip-x": none}},
		{Seated(), "", map[string]standIn{"elbow-bend": {30, 0}, "crank-length": {170, 0}, "pedal-height": {15, 0},
			"sole-height":       {15, 0},
			"cleat-behind-ball": {0, 0}}},
		{Ready(), "", map[string]standIn{"trunk-angle": {45, 0}, "standing-knee": {50, 0}, "grade": {0, 0},
			"crank-length": {170, 2.5},
			"pedal-height": {15, 2}, "sole-height": {15, 3}, "cleat-behind-ball": {0, 5}}},
		{Lever(), "hand-length=179", map[string]standIn{"finger-length": {0.38 * 179, 4}, "lever-length": {70, 6},
			"trunk-angle":   {45, 0},
			"standing-knee": {50, 0}}},
		{Lever(), "", map[string]standIn{"finger-length": none}},
		{Stem(), "feeling=stretched", map[string]standIn{"move-x": {-10, 0}, "move-y": {0, 0}}},
		{Stem(), "feeling=wanders", map[string]standIn{"move-x": {5, 0}, "move-y": {-10, 0}}},
		{Stem(), "feeling=pitched", map[string]standIn{"move-x": {-5, 0}, "move-y": {10, 0}}},
		{Width(), "", map[string]standIn{"grip-length": {130, 8}, "back-sweep": {8, 1}, "head-angle": {65.5, 1}}},
	} {
		got := map[string]standIn{}
		for i, a := range k.c.Assumptions(calctest.Pairs(k.typed), nil) {
			got[k.c.Inputs[i].Key] = standIn{a.Value, a.SD}
		}
		for key, want := range k.want {
			assert.Equal(t, math.IsNaN(want.value), math.IsNaN(got[key].value), "%s %s: %s", k.c.Name, k.typed, key)
			if !math.IsNaN(want.value) {
				assert.InDelta(t, want.value, got[key].value, 1e-9, "%s %s: %s", k.c.Name, k.typed, key)
				assert.InDelta(t, want.sd, got[key].sd, 1e-9, "%s %s: ± of %s", k.c.Name, k.typed, key)
			}
		}
	}
}
