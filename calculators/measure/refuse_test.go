package measure_test

import (
	"strings"
	"testing"
	"unicode"

	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"

	"plumbline/calculators/measure"
)

func TestARefusalSaysWhatWasReadWhatIsAllowedAndTheLikelySlip(t *testing.T) {
	const (
		nbsp   = "\u00a0"
		inside = " is not possible for “Inside leg”; 275" + nbsp + "mm to 1575" + nbsp + "mm is."
		write  = "” is not a number for “Inside leg”. Write a number, with a unit if you like: 800" + nbsp +
			"mm, 80.0" + nbsp + "cm or 31.5" + nbsp + "in."
	)
	for _, c := range []struct {
		q          *measure.Quantity
		typed, say string
	}{
		{measure.HeadAngle, "0,065", "0.065° is not possible for “Head angle”; 45.0° to 85.0° is. Did you mean 65°?"},
		{measure.Inseam, "83", "83" + nbsp + "mm" + inside + " Did you mean 83" + nbsp + "cm?"},
		{measure.Inseam, "32.5", "32.5" + nbsp + "mm" + inside + " Did you mean 32" + nbsp + "1/2" + nbsp + "in?"},
		{measure.Inseam, "8300", "8300" + nbsp + "mm" + inside + " Did you mean 830" + nbsp + "mm?"},
		{measure.Inseam, "830 cm", "830" + nbsp + "cm" + inside + " Did you mean 830" + nbsp + "mm?"},
		{measure.Inseam, "83 ft", "83" + nbsp + "ft" + inside + " Did you mean 83" + nbsp + "cm?"},
		{measure.Inseam, "-832", "−832" + nbsp + "mm" + inside + " Did you mean 832" + nbsp + "mm?"},
		{measure.Inseam, "-5", "−5" + nbsp + "mm" + inside},
		{measure.Inseam, "0", "0" + nbsp + "mm" + inside},
		{measure.Inseam, "9 ft 2", "110" + nbsp + "in" + inside},
		{measure.Inseam, "32 3/4 ± 3 mm", "32.75" + nbsp + "mm" + inside +
			" Did you mean 32" + nbsp + "3/4" + nbsp + "in?"},
		{measure.Inseam, "1e300", "“1e300”" + inside},
		{measure.Inseam, "1e308 ft", "“1e308 ft”" + inside},
		{measure.Stature, "1,756", "1.756" + nbsp + "mm is not possible for “Height”; 650" + nbsp +
			"mm to 3225" + nbsp + "mm is. Did you mean 1.756" + nbsp + "m?"},
		{measure.ForkLength, "0,551", "0.551" + nbsp + "mm is not possible for “Fork, axle to crown”; " +
			"200" + nbsp + "mm to 960" + nbsp + "mm is. Did you mean 0.551" + nbsp + "m?"},
		{measure.COMHeight, "1,100 cm", "1.1" + nbsp + "cm is not possible for “Centre of mass above the ground”; " +
			"300" + nbsp + "mm to 2000" + nbsp + "mm is. Did you mean 1.1" + nbsp + "m?"},
		{measure.HeadAngle, "645", "645° is not possible for “Head angle”; 45.0° to 85.0° is. Did you mean 64.5°?"},
		{measure.Mass, "500", "500" + nbsp + "kg is not possible for “Body mass”; 15.0" + nbsp +
			"kg to 320.0" + nbsp + "kg is. Did you mean 50" + nbsp + "kg?"},
		{measure.Mass, "340", "340" + nbsp + "kg is not possible for “Body mass”; 15.0" + nbsp +
			"kg to 320.0" + nbsp + "kg is. Did you mean 340" + nbsp + "lb?"},
		{measure.Inseam, "80 kg", "“Inside leg” is given in mm, cm, m, in, ft, not in kg."},
		{measure.Inseam, "832 ± 3°", "“Inside leg” is given in mm, cm, m, in, ft, not in deg."},
		{measure.Mass, "72 cm", "“Body mass” is given in kg, lb, not in cm."},
		{measure.ShoeSize, "42 cm", "“Shoe size” is a number without a unit, not one in cm."},
		{measure.Inseam, "1,832.5", "“1,832.5” has both a point and a comma. Write it without a thousands " +
			"separator."},
		{measure.Inseam, "1e309", "“1e309" + write},
		{measure.Inseam, "0x10", "“0x10" + write},
		{measure.Inseam, "NaN", "“NaN" + write},
		{measure.Inseam, "Infinity", "“Infinity" + write},
		{measure.Inseam, "1_000", "“1_000" + write},
		{measure.Inseam, "1 832", "“1 832" + write},
		{measure.Inseam, "83 cm 2", "“83 cm 2" + write},
		{measure.Inseam, "32 -3/4 in", "“32 -3/4 in" + write},
		{measure.Inseam, "32 5/4 in", "“32 5/4 in" + write},
		{measure.Inseam, "3/0 in", "“3/0 in" + write},
		{measure.Inseam, "2 ft 13", "“2 ft 13" + write},
		{measure.Inseam, "-2 ft 8", "“-2 ft 8" + write},
		{measure.Inseam, "8\x003\x1b[31m", "“8\uFFFD3\uFFFD[31m" + write},
		{measure.Inseam, "\xff83", "“\uFFFD83" + write},
		{measure.Inseam, "8\u202e3", "“8\uFFFD3" + write},
		{measure.Inseam, "", "“" + write},
		{measure.Inseam, "mm", "“mm" + write},
		{measure.Inseam, strings.Repeat("9", 10<<10), "“" + strings.Repeat("9", 40) + "…” is too long for a number."},
		{measure.Inseam, "832 ± x", "“x” after ± is not a number. Write a ± as in 550 ± 10."},
		{measure.Inseam, "832 ± -3", "“-3” after ± is not a number. Write a ± as in 550 ± 10."},
		{measure.Inseam, "832 ±", "“” after ± is not a number. Write a ± as in 550 ± 10."},
		{measure.Inseam, "832 ± 1301", "± 1301 is more than “Inside leg” can vary at all."},
		{measure.Inseam, "832 mm ± 1e308 ft", "± 1e308 ft is more than “Inside leg” can vary at all."},
	} {
		_, why, ok := c.q.Parse(c.typed, nil)
		assert.False(t, ok, "%q", measure.Quoted(c.typed))
		assert.Equal(t, c.say, why.Say(nil))
	}
}

func TestWhatADidYouMeanOffersIsAccepted(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		q := number(t)
		x := rapid.Float64Range(-10000, 10000).Draw(t, "x")
		_, why, ok := q.Parse(measure.Exact(x), nil)
		if _, offer, has := strings.Cut(why.Say(nil), "Did you mean "); !ok && has {
			g, why, ok := q.Parse(strings.TrimSuffix(offer, "?"), nil)
			assert.True(t, ok && q.Plausible(g.Value), "%s %v: %s %s", q.Key, x, offer, why.Say(nil))
		}
	})
}

func TestNoMessageRepeatsWhatShouldNotBeShown(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		said := string(measure.Quoted(rapid.String().Draw(t, "typed") + string(rapid.SliceOf(rapid.Byte()).Draw(t,
			"bytes"))))
		assert.LessOrEqual(t, len(said), 200)
		for _, r := range said {
			assert.False(t, unicode.IsControl(r), "%q", said)
			assert.False(t, unicode.Is(unicode.Bidi_Control, r) && r != '\u061c', "%q", said)
		}
	})
}

func TestAChoiceIsReadByKeyOrLabel(t *testing.T) {
	for typed, want := range map[string]int{"clip": 0, "flat": 1, " FLAT ": 1, "clipped in": 0} {
		i, why, ok := measure.Pedals.Pick(typed)
		assert.True(t, ok, why.Say(nil))
		assert.Equal(t, want, i, typed)
	}
	_, why, ok := measure.Sex.Pick("x")
	assert.False(t, ok)
	assert.Equal(t, "“x” is not a choice for “Sex”. The choices are f and m.", why.Say(nil))
}
