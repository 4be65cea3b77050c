package calculators_test

import (
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"plumbline/calculators"
	"plumbline/calculators/body"
	"plumbline/calculators/calctest"
	"plumbline/calculators/catalog"
	"plumbline/calculators/caution"
	"plumbline/calculators/measure"
	"plumbline/calculators/panel"
)

// growing returns the note of that caution in a result, if it is there.
func growing(r *calculators.Result) (calculators.Note, bool) {
	i := slices.IndexFunc(r.Notes, func(n calculators.Note) bool { return n.Key == caution.Growing.Key })
	if i < 0 {
		return calculators.Note{}, false
	}
	return r.Notes[i], true
}

// TestTheGrowingAreWarned: the caution for those who grow or are small appears when the
// rider says so or the height does, keeps its heading, and does not appear otherwise.
func TestTheGrowingAreWarned(t *testing.T) {
	for _, c := range catalog.All() {
		if !slices.Contains(c.Cautions, caution.Growing) {
			continue
		}
		for answer, warned := range map[string]bool{"": false, "no": false, "yes": true} {
			typed := asked(c, settled(wholeRecord("example")))
			if answer != "" {
				typed = append(typed, calculators.Pair{Key: "growing", Typed: answer})
			}
			r, problems := c.Run(typed, nil)
			require.Empty(t, problems, c.Name)
			n, ok := growing(r)
			assert.Equal(t, warned, ok, "%s growing=%s", c.Name, answer)
			if ok {
				assert.Equal(t, "Still growing, or under 1.45 m", n.Title)
			}
		}
	}
}

const measuredChild = "inseam=650 stature=1449 grip-x=380 grip-y=620 saddle-height=560 seat-angle=75 " +
	"trochanter-height=705 trunk-length=430 arm-length=540 shoulder-width=300 finger-length=58 hand-length=152"

// TestNothingIsEstimatedOfASmallRider: under 1.45 m each length of the body is asked for;
// from 1.45 m on it is estimated. 1.45 m lies (1628.4733 − 1450)/64.1995 = 2.78 standard
// deviations below the mean woman of the survey (ansur2-summary.csv).
func TestNothingIsEstimatedOfASmallRider(t *testing.T) {
	assert.InDelta(t, 2.78, (1628.4733-body.LeastStature)/64.1995, 0.005)
	for _, name := range []string{"ready-position", "seated-reach", "lever-setup"} {
		c := catalog.Named(name)
		for _, q := range []*measure.Quantity{measure.TrochanterHeight, measure.TrunkLength, measure.ArmLength,
			measure.ShoulderWidth} {
			typed := slices.DeleteFunc(asked(c, calctest.Pairs(measuredChild)),
				func(p calculators.Pair) bool { return p.Key == q.Key })
			_, problems := c.Run(typed, nil)
			require.Len(t, problems, 1, "%s without %s", name, q.Key)
			assert.Equal(t, q.Key, problems[0].Input)
			assert.True(t, problems[0].Needed)
			assert.Contains(t, problems[0].Text.Say(nil), "estimates no length of the body")
			for i := range typed {
				if typed[i].Key == "stature" {
					typed[i].Typed = "1450"
				}
			}
			_, problems = c.Run(typed, nil)
			assert.Empty(t, problems, "%s without %s at 1.45 m", name, q.Key)
		}
		r := calctest.Answer(t, c, measuredChild)
		assert.True(t, calctest.Says(r, "no length of yours was estimated"), name)
		for _, n := range r.Notes {
			assert.NotContains(t, n.Text.Say(nil), "by the survey", name)
		}
	}
	for _, q := range measure.Wanted.Choices {
		r := calctest.Answer(t, catalog.Named("missing-measurement"), "stature=1440 inseam=650 quantity="+q.Key)
		assert.False(t, r.Answers[0].Exists(), q.Key)
		_, ok := growing(r)
		assert.True(t, ok)
	}
	for _, s := range []body.Survey{body.Trunk, body.ShoulderWidth, body.Inseam} {
		_, ok := s.FromStature(1449.9, body.Female)
		assert.False(t, ok)
		_, ok = s.FromStature(1450, body.Female)
		assert.True(t, ok)
	}
	_, ok := body.ArmFromStature(1449.9, body.Unknown)
	assert.False(t, ok)
}

// TestCautionsKeepTheirHeadings: every caution of a calculator travels as a note with its
// key and heading, in JSON too.
func TestCautionsKeepTheirHeadings(t *testing.T) {
	for _, c := range catalog.All() {
		r, problems := c.Run(panel.Example(c), nil)
		require.Empty(t, problems, c.Name)
		for _, n := range r.Notes {
			if n.Kind == calculators.CautionNote && n.Key != "" {
				assert.NotEmpty(t, n.Title, c.Name)
			}
		}
	}
}
