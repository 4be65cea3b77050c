package calculators_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"plumbline/calculators/catalog"
	"plumbline/calculators/measure"
	"plumbline/calculators/sheet"
)

// describing are the quantities that an answer may put into the record without being
// something one sets: they say how a bike is, and the sheet has no Next for them.
var describing = []*measure.Quantity{measure.FrontCentre, measure.BBHeight, measure.EffectiveTopTube,
	measure.Wheelbase, measure.Reach, measure.Stack, measure.BBDrop, measure.ForkOffset, measure.GripX,
	measure.GripY}

// TestWhatDescribesNeverBecomesNext: what an answer puts into the record is a setting, or
// it only describes and then no setting, or it says how a setting is now.
func TestWhatDescribesNeverBecomesNext(t *testing.T) {
	for _, c := range catalog.All() {
		for _, o := range c.Answers {
			if o.Feeds == nil {
				continue
			}
			describes := false
			for _, q := range describing {
				describes = describes || q == o.Feeds
			}
			set := sheet.SettingOf(o.Feeds) != nil
			assert.NotEqual(t, describes, set, "%s %s: %s is a setting or it describes", c.Name, o.Name, o.Feeds.Key)
			if o.Now {
				assert.True(t, set, "%s %s: what is no setting has no now and next", c.Name, o.Name)
			}
		}
	}
}

// settable are the answers that tell what to set, with the setting.
var settable = map[string]*measure.Quantity{
	"suspension-sag sag-front":      measure.SagFront,
	"suspension-sag sag-rear":       measure.SagRear,
	"cleat-position behind-ball":    measure.CleatBehindBall,
	"saddle-height saddle-height":   measure.SaddleHeight,
	"saddle-setback setback-to-set": measure.SaddleSetback,
	"bar-width bar-width":           measure.BarWidth,
	"lever-setup lever-angle":       measure.LeverAngle,
	"lever-setup lever-reach":       measure.LeverReach,
	"lever-setup lever-inset":       measure.LeverInset,
	"lever-setup grip-held":         measure.GripDiameter,
}

// asNow are the answers that tell how a setting is.
var asNow = map[string]*measure.Quantity{"saddle-setback setback": measure.SaddleSetback}

// notTaken are answers by the name of a setting that go nowhere, and why.
var notTaken = map[string]string{
	"pedal-change saddle-height":   "only where the reader typed the height that it is made from: Explain says so",
	"lever-setup grip-diameter":    "one setting has one proposal: the grip that riders liked on bicycles",
	"saddle-tilt saddle-tilt":      "it is the reading that was typed",
	"same-position saddle-height":  "of another bike than the record’s",
	"same-position rail-shift":     "of another bike than the record’s",
	"same-position saddle-setback": "of another bike than the record’s",
}

func TestWhatOneSetsGoesToTheRecord(t *testing.T) {
	found := map[string]bool{}
	for _, c := range catalog.All() {
		for _, o := range c.Answers {
			name := c.Name + " " + o.Name
			want := settable[name]
			if now := asNow[name]; now != nil {
				want = now
				assert.True(t, o.Now, name)
			} else {
				assert.False(t, o.Now, name)
			}
			if want != nil {
				found[name] = true
				assert.Equal(t, want, o.Feeds, name)
				continue
			}
			if q := measure.Named(o.Name); q != nil && sheet.SettingOf(q) != nil {
				found[name] = true
				assert.NotEmpty(
					t,
					notTaken[name],
					"%s has the name of a setting: it goes to the record, or say why not",
					name,
				)
			}
			assert.False(t, o.Feeds != nil && sheet.SettingOf(o.Feeds) != nil, "%s is what one sets: list it", name)
		}
	}
	assert.Len(t, found, len(settable)+len(asNow)+len(notTaken), "a name in the lists is no answer any more")
}
