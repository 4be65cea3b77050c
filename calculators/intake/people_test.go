package intake_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"plumbline/calculators/intake"
	"plumbline/calculators/measure"
	"plumbline/calculators/record"
)

func records(texts ...string) (list []*record.Record) {
	for _, text := range texts {
		if text == "" {
			list = append(list, nil)
			continue
		}
		r, _ := record.Decode(text)
		list = append(list, r)
	}
	return list
}

func TestALaterVisitStandsBesideTheOneWithTheSameBike(t *testing.T) {
	var list []*record.Record
	for _, s := range []string{"bike=Trail&date=2026-03-01", "bike=Enduro&date=2026-04-02",
		"bike=trail&date=2026-11-20"} {
		r, _ := record.Decode("name=Ash&inseam=832&stature=1740&" + s)
		list = append(list, r)
	}
	assert.Equal(t, []intake.Relation{{}, {Kin: intake.OtherBike}, {Kin: intake.Again}}, intake.Relate(list))
}

func TestPeopleAreToldApart(t *testing.T) {
	first := "name=Ash&date=2026-03-01&inseam=830&stature=1740"
	for what, x := range map[string]struct {
		second string
		want   intake.Kin
	}{
		"the same again":               {"name=Ash&date=2026-03-09&inseam=830&stature=1740", intake.Duplicate},
		"another day of one fortnight": {"name=ash&date=2026-03-12&inseam=833&stature=1740", intake.Corrected},
		"another season":               {"name=Ash&date=2026-09-12&inseam=833&stature=1740", intake.Again},
		"a visit of its own": {"name=Ash&date=2026-03-03&inseam=833&stature=1740&ask.when=May",
			intake.Corrected},
		"another frame": {"name=Ash&date=2026-03-03&inseam=833&stature=1740&reach=480",
			intake.Corrected},
		"another body":                {"name=Ash&date=2026-03-03&inseam=760&stature=1600", intake.Namesake},
		"one length measured wrongly": {"name=Ash&date=2026-03-03&inseam=780&stature=1740", intake.Corrected},
		"nothing to tell by":          {"name=Ash&date=2026-03-03&mass=70", intake.Alone},
		"an estimate tells nothing":   {"name=Ash&date=2026-03-03&stature=1740&estimated=stature", intake.Alone},
		"another name":                {"name=Birch&date=2026-03-03&inseam=831&stature=1740", intake.Alone},
		"no name":                     {"inseam=831&stature=1740", intake.Alone},
	} {
		list := intake.Relate(records(first, "", x.second))
		assert.Equal(t, x.want, list[2].Kin, what)
		assert.Equal(t, intake.Alone, list[0].Kin, what)
	}
	list := intake.Relate(
		records(first+"&ask.bike=trail&reach=450", "name=Ash&date=2026-03-03&inseam=829&ask.bike=jump&reach=450",
			"name=Ash&date=2026-03-04&inseam=829&reach=480"),
	)
	assert.Equal(t, intake.OtherBike, list[1].Kin, "by what the fitter wrote")
	assert.Equal(t, intake.Relation{Kin: intake.OtherBike, To: 1}, list[2], "by a frame 30 mm longer")
}

// TestTheLaterDayBelongsToTheEarlier whatever the order in which they lie in a folder.
func TestTheLaterDayBelongsToTheEarlier(t *testing.T) {
	list := intake.Relate(records("name=Ash&date=2026-09-12&inseam=833&stature=1740",
		"name=Ash&date=2026-03-01&inseam=830&stature=1740"))
	assert.Equal(t, []intake.Relation{{Kin: intake.Again, To: 1}, {}}, list)
}

// TestDifferencesKnowTheErrorOfMeasuring: two standard errors together, by hand:
// the inside leg repeats within 10 mm (one standard deviation), so that a difference of
// up to 2 × √(10² + 10²) = 28.3 mm is none.
func TestDifferencesKnowTheErrorOfMeasuring(t *testing.T) {
	inseam := records("inseam=830")[0].Of(measure.Inseam)
	require.Equal(t, 10.0, inseam.SD(), "the repeat error of the example by hand")
	for text, same := range map[string]bool{"inseam=858": true, "inseam=859": false,
		"inseam=802": true, "inseam=801": false} {
		list := intake.Differences(records("inseam=830&mass=70&pedals=flat")[0], records(text)[0])
		require.Len(t, list, 1)
		assert.Equal(t, same, list[0].Same, text)
		assert.Equal(t, 830.0, list[0].Before)
	}
	list := intake.Differences(records("pedals=flat")[0], records("pedals=clip&saddle-height=700")[0])
	require.Len(t, list, 1, "what only one of them says is no difference")
	assert.False(t, list[0].Same)
}
