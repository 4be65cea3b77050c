package intake_test

import (
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"plumbline/calculators"
	"plumbline/calculators/body"
	"plumbline/calculators/catalog"
	"plumbline/calculators/intake"
	"plumbline/calculators/measure"
	"plumbline/calculators/panel"
	"plumbline/calculators/record"
)

func said(list []intake.Doubt) string {
	var b strings.Builder
	for _, d := range list {
		b.WriteString(string(d.Kind) + " " + strings.Join(d.Keys, ",") + ": " + d.Text.Say(nil) + "\n")
	}
	return b.String()
}

func TestSlipsOfTheTapeAreSeen(t *testing.T) {
	for _, c := range []struct{ name, text, says string }{
		{"the unit", "inseam=83", "unread inseam: 83\u00a0mm is not possible for “Inside leg”; 275\u00a0mm to " +
			"1575\u00a0mm is. Did you mean 83\u00a0cm?"},
		{"unlikely", "stature=2200", "unlikely stature: 2200\u00a0mm is unusual"},
		{"readings apart", "inseam=830;812;829", "apart inseam: The readings of “Inside leg” lie 18\u00a0mm apart, " +
			"where 10\u00a0mm is close enough"},
		{"leg against height", "stature=1740&inseam=660", "against inseam,stature: “Inside leg” of 660\u00a0mm " +
			"does not go with “Height” of 1740\u00a0mm"},
		{"hip bone against leg", "inseam=830&trochanter-height=760", "against trochanter-height,inseam"},
		{"foot against ball", "foot-length=262&heel-to-ball-inner=230", "against heel-to-ball-inner,foot-length"},
		{"the two ball joints swapped", "heel-to-ball-inner=160&heel-to-ball-outer=190",
			"against heel-to-ball-outer,heel-to-ball-inner: “Heel to outer ball” is longer"},
		{"saddle from the pedal", "inseam=830&saddle-height=905&crank-length=170",
			"from the crank axle it would then be 735\u00a0mm"},
		{"saddle lowered", "inseam=830&saddle-height=560", "has to be fully up"},
	} {
		t.Run(c.name, func(t *testing.T) {
			r, _ := record.Decode(c.text)
			assert.Contains(t, said(intake.Doubts(r)), c.says)
		})
	}
}

func TestAnEstimateIsNoWitness(t *testing.T) {
	r, _ := record.Decode("stature=1740&inseam=660&estimated=inseam")
	assert.Empty(t, said(intake.Doubts(r)), "an estimate is made from the height; it cannot speak against it")
	r, _ = record.Decode("inseam=830&saddle-height=950&from=saddle-height.saddle-height")
	assert.Empty(t, said(intake.Doubts(r)))
}

// TestTheSurveysOwnPeopleAreNotDoubted takes the 5th, 50th and 95th percentile man
// and woman of ANSUR II (Gordon et al. 2014), whose lengths go together.
func TestTheSurveysOwnPeopleAreNotDoubted(t *testing.T) {
	lengths := map[*measure.Quantity]body.Survey{
		measure.Stature: body.Stature, measure.Inseam: body.Inseam,
		measure.TrochanterHeight: body.TrochanterHeight, measure.KneeHeight: body.KneeHeight,
		measure.FootLength: body.FootLength, measure.HeelToBallInner: body.HeelToBall, measure.ArmSpan: body.ArmSpan,
		measure.ShoulderWidth: body.ShoulderWidth, measure.HandLength: body.HandLength,
		measure.TrunkLength: body.Trunk,
	}
	for _, of := range []struct {
		sex  string
		take func(body.Survey) body.Sample
	}{{"f", func(s body.Survey) body.Sample { return s.Female }}, {"m",
		func(s body.Survey) body.Sample { return s.Male }}} {
		for _, at := range []func(body.Sample) float64{
			func(s body.Sample) float64 { return s.P5 },
			func(s body.Sample) float64 { return s.Mean },
			func(s body.Sample) float64 { return s.P95 },
		} {
			for _, sex := range []string{"sex=" + of.sex, ""} {
				text := sex
				for _, q := range measure.All() {
					if s, ok := lengths[q]; ok {
						text += "&" + q.Key + "=" + record.Exactly(at(of.take(s)), q.Unit)
					}
				}
				r, _ := record.Decode(text)
				assert.Empty(t, said(intake.Doubts(r)), text)
			}
		}
	}
}

// TestAnswersAreThoseOfRun compares the short way with the full one, on every
// calculator's own example.
func TestAnswersAreThoseOfRun(t *testing.T) {
	for _, c := range catalog.All() {
		want, problems := c.Run(panel.Example(c), nil)
		require.Empty(t, problems)
		got, problems := c.Numbers(panel.Example(c), nil, calculators.Full)
		require.Empty(t, problems)
		require.Len(t, got, len(want.Answers))
		for i := range got {
			if want.Answers[i].Exists() {
				assert.Equal(t, want.Answers[i].Value, got[i].Value, "%s %s", c.Name, got[i].Name)
				assert.Equal(t, want.Answers[i].Uncertainty, got[i].Uncertainty, "%s %s", c.Name, got[i].Name)
			}
		}
	}
}

// TestTheQuickWayIsNearTheFullOne compares the two on every calculator's example.
// A reading that bends or folds within the inputs' errors may differ more, which
// is why only great batches go the quick way.
func TestTheQuickWayIsNearTheFullOne(t *testing.T) {
	near, all := 0, 0
	for _, c := range catalog.All() {
		full, problems := c.Numbers(panel.Example(c), nil, calculators.Full)
		require.Empty(t, problems)
		quick, problems := c.Numbers(panel.Example(c), nil, calculators.Quick)
		require.Empty(t, problems)
		for i := range full {
			if !full[i].Exists() {
				continue
			}
			require.Equal(t, full[i].Value, quick[i].Value)
			f, q := float64(full[i].Uncertainty), float64(quick[i].Uncertainty)
			require.False(t, math.IsNaN(q))
			if all++; math.Abs(q-f) <= 0.1*f {
				near++
			}
		}
	}
	assert.Greater(t, float64(near), 0.8*float64(all), "%d of %d lie within a tenth", near, all)
}

func TestWhatIsMissingIsNamed(t *testing.T) {
	r, _ := record.Decode("inseam=830&pedals=flat")
	answers, missing := intake.Answers(r, catalog.All(), calculators.Full)
	names := map[string]bool{}
	for _, a := range answers {
		names[a.Calculator.Name] = true
		require.NotEmpty(t, a.Answers)
	}
	assert.True(t, names["saddle-height"])
	assert.NotEmpty(t, intake.Cautions(answers))
	for _, m := range missing {
		assert.False(t, names[m.Calculator.Name])
		assert.True(t, len(m.Inputs) > 0 != !m.Why.None(), "%s: either something is missing or something is "+
			"wrong", m.Calculator.Name)
		assert.NotContains(t, m.Inputs, measure.Inseam)
	}
	none, _ := intake.Answers(&record.Record{}, catalog.All(), calculators.Full)
	assert.Empty(t, none, "with nothing given nothing is answered from assumptions alone")
}

func TestNoRecordBreaksTheIntake(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		var pairs []calculators.Pair
		for _, q := range rapid.SliceOfN(rapid.SampledFrom(measure.All()), 0, 30).Draw(t, "quantities") {
			typed := rapid.OneOf(rapid.String(), rapid.Custom(func(t *rapid.T) string {
				return measure.Exact(rapid.Float64Range(q.Least, q.Most).Draw(t, "x"))
			})).Draw(t, q.Key)
			pairs = append(pairs, calculators.Pair{Key: q.Key, Typed: typed})
		}
		r, _ := record.FromPairs(pairs)
		for _, d := range intake.Doubts(r) {
			require.NotEmpty(t, d.Keys)
			require.NotContains(t, d.Text.Say(nil), "NaN")
		}
		answers, _ := intake.Answers(r, catalog.All(), calculators.Full)
		for _, a := range answers {
			for _, x := range a.Answers {
				require.NotEmpty(t, x.Name)
			}
		}
	})
}

func BenchmarkIntake(b *testing.B) {
	const text = "name=Rowan&date=2026-11-24&sex=m&stature=1740&mass=72&inseam=830%3B834%3B829" +
		"&foot-length=262&heel-to-ball-inner=192&hand-length=189" +
		"&arm-length=640&shoulder-width=390&reach=460&stack=625" +
		"&head-angle=65.5&seat-angle=76.5&chainstay=437&bb-drop=32&crank-length=170" +
		"&pedals=flat&saddle-height=720"
	for b.Loop() {
		r, _ := record.Decode(text)
		intake.Doubts(r)
		intake.Answers(r, catalog.All(), calculators.Full)
	}
}
