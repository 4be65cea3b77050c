package sheet_test

import (
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"golang.org/x/net/html"
	"pgregory.net/rapid"

	"plumbline/calculators/catalog"
	"plumbline/calculators/measure"
	"plumbline/calculators/record"
	"plumbline/calculators/sheet"
	"plumbline/calculators/words"
)

func of(text string) *sheet.Sheet {
	r, _ := record.Decode(text)
	return sheet.Of(r, catalog.All())
}

func row(t *testing.T, s *sheet.Sheet, q *measure.Quantity) *sheet.Row {
	for i := range s.Rows {
		if s.Rows[i].Setting.Quantity == q {
			return &s.Rows[i]
		}
	}
	require.Fail(t, "no row for "+q.Key)
	return nil
}

func TestAChangeIsNowNextAndTheStepsBetween(t *testing.T) {
	s := of("inseam=830&saddle-height=736&from=saddle-height.saddle-height&saddle-height.was=720")
	r := row(t, s, measure.SaddleHeight)
	assert.Equal(t, 720.0, r.Now)
	assert.Equal(t, 736.0, r.Next)
	assert.Equal(t, []float64{724, 728, 732, 736}, r.Steps, "no step above 5 mm, and all alike")
	assert.Equal(t, 1, s.Moves)
	keys := []string{}
	for _, k := range s.Cautions {
		keys = append(keys, k.Key)
	}
	assert.Equal(t, []string{"post-insertion", "torque", "hose-check", "first-ride", "pain"}, keys)
}

func TestWhatWasMeasuredStaysAndWhatWasComputedIsNext(t *testing.T) {
	s := of("saddle-height=720&saddle-tilt=1.5&from=saddle-tilt.saddle-tilt")
	assert.Equal(t, 720.0, row(t, s, measure.SaddleHeight).Now)
	assert.False(t, row(t, s, measure.SaddleHeight).Planned)
	tilt := row(t, s, measure.SaddleTilt)
	assert.False(t, tilt.Known)
	assert.Equal(t, 1.5, tilt.Next)
}

func TestAChangeThatWasMadeCanBeUndone(t *testing.T) {
	s := of("saddle-height=736&saddle-height.was=720&saddle-height.done=2026-11-25")
	r := row(t, s, measure.SaddleHeight)
	assert.Equal(t, 736.0, r.Now)
	assert.Equal(t, 720.0, r.Former)
	assert.True(t, r.Returning)
	assert.Equal(t, 0, s.Moves)
	assert.Contains(t, s.HTML("x", nil, 0, nil, nil), `data-back="saddle-height"`)
}

func TestAPlannedChangeCanBeTakenOut(t *testing.T) {
	out := `data-back="saddle-height">Take out<`
	assert.Contains(t, of("saddle-height=736&saddle-height.was=720").HTML("x", nil, 0, nil, nil), out)
	assert.NotContains(t, of("saddle-height=736").HTML("x", nil, 0, nil, nil), out, "what the bike has is no plan")
}

func TestASettingIsOfferedByItsCalculator(t *testing.T) {
	s := of("inseam=830&saddle-height=700")
	r := row(t, s, measure.SaddleHeight)
	require.Len(t, r.Offers, 1)
	require.True(t, r.Offers[0].Answered)
	text := s.HTML("x", nil, 0, nil, nil)
	assert.Contains(t, text, `data-use="saddle-height"`)
	assert.Contains(t, text, `data-from="saddle-height"`)
	s = of("mass=70")
	require.Empty(t, s.Rows)
	for _, open := range s.Open {
		if open.Setting.Quantity == measure.SaddleHeight {
			assert.Equal(t, []*measure.Quantity{measure.Inseam}, open.Offers[0].Needs)
		}
	}
}

func TestTheOrderOfWorkIsFeetSaddleCockpit(t *testing.T) {
	rank := map[sheet.Group]int{sheet.Bike: 0, sheet.Feet: 1, sheet.Saddle: 2, sheet.Cockpit: 3}
	last := 0
	for _, set := range sheet.Settings {
		assert.GreaterOrEqual(t, rank[set.Group], last, set.Key)
		last = rank[set.Group]
		assert.NotEmpty(t, set.Chapter)
		assert.NotEmpty(t, set.Cautions, set.Key)
		assert.Equal(t, set.Is() == measure.Number, set.More != "" && set.Less != "", set.Key)
	}
	// The steps that the guide promises (common practice).
	for q, step := range map[*measure.Quantity]float64{measure.SaddleHeight: 5, measure.SaddleSetback: 5,
		measure.CleatBehindBall: 2, measure.SaddleTilt: 1, measure.BarRoll: 1, measure.Spacers: 5} {
		assert.Equal(t, step, sheet.SettingOf(q).Step, q.Key)
	}
}

func TestStepsLeadThereWithoutALongOne(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		from := math.Round(rapid.Float64Range(-50, 900).Draw(t, "from"))
		to := math.Round(rapid.Float64Range(-50, 900).Draw(t, "to"))
		step := rapid.SampledFrom([]float64{0, 1, 2, 5, 10}).Draw(t, "step")
		values, skipped := sheet.Steps(from, to, step, 1)
		if from == to {
			require.Empty(t, values)
			return
		}
		require.Equal(t, to, values[len(values)-1])
		require.LessOrEqual(t, len(values), sheet.MostSteps)
		if step == 0 {
			require.Len(t, values, 1)
			return
		}
		at := from
		for i, x := range values {
			if i == len(values)-1 && skipped > 0 {
				break
			}
			require.Greater(t, (x-at)*(to-from), 0.0, "every step goes the right way")
			require.LessOrEqual(t, math.Abs(x-at), step, "%v to %v by %v: %v", from, to, step, values)
			at = x
		}
		require.Equal(t, int(math.Ceil(math.Abs(to-from)/step)), len(values)+skipped)
	})
	for _, to := range []float64{math.NaN(), math.Inf(1)} {
		values, _ := sheet.Steps(1, to, 5, 1)
		assert.Empty(t, values)
	}
}

// TestTheSheetIsSoundForAnyRecord parses the HTML of many records: ids are unique
// and begin with the page's own, and what a stranger wrote stays text.
func TestTheSheetIsSoundForAnyRecord(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		r := &record.Record{Name: rapid.SampledFrom([]string{"", `<script>x</script>"`}).Draw(t, "name"),
			Note: rapid.String().Draw(t, "note")}
		for _, set := range rapid.SliceOfNDistinct(rapid.SampledFrom(sheet.Settings), 0, len(sheet.Settings),
			rapid.ID).Draw(t, "settings") {
			q := set.Quantity
			e := record.Entry{Key: q.Key, Quantity: q, Text: "flat", Was: rapid.SampledFrom([]string{"", "clip"}).
				Draw(t, "was")}
			if q.Is() == measure.Number {
				x := rapid.Float64Range(q.Least, q.Most).Draw(t, q.Key)
				e.Text = record.Exactly(x, q.Unit)
				e.Repeated = measure.Repeated{Given: measure.Given{Value: x, Error: math.NaN(), Unit: q.Unit}}
				if rapid.Bool().Draw(t, "changed") {
					e.Was = record.Exactly(rapid.Float64Range(q.Low, q.High).Draw(t, "was"), q.Unit)
				}
			}
			e.Done = rapid.SampledFrom([]string{"", "yes"}).Draw(t, "done")
			e.From = rapid.SampledFrom([]string{"", "saddle-height", `"><b>`}).Draw(t, "from")
			r.Entries = append(r.Entries, e)
		}
		units := rapid.SampledFrom([]string{"mm", "cm", "in"}).Draw(t, "units")
		s := sheet.Of(r, catalog.All())
		require.Len(t, append(s.Rows, s.Open...), len(sheet.Settings))
		text := s.HTML("s1", nil, 0, &words.Reader{Units: units},
			func(chapter string) string { return "../" + chapter + ".html" })
		require.NotContains(t, text, "NaN")
		require.NotContains(t, text, "<script")
		root, err := html.Parse(strings.NewReader(text))
		require.NoError(t, err)
		seen := map[string]bool{}
		for n := range root.Descendants() {
			for _, a := range n.Attr {
				if a.Key == "id" {
					require.False(t, seen[a.Val], a.Val)
					require.True(t, strings.HasPrefix(a.Val, "s1"))
					seen[a.Val] = true
				}
				require.False(t, strings.HasPrefix(a.Key, "on"))
				require.NotEqual(t, "style", a.Key)
			}
		}
	})
}

func BenchmarkSheet(b *testing.B) {
	r, _ := record.Decode(
		"inseam=830&stature=1740&crank-length=170&pedals=flat&saddle-height=736&saddle-height.was=720" +
			"&stem-length=45&spacers=15&bar-rise=30&reach=460&stack=625&head-angle=65.5",
	)
	for b.Loop() {
		sheet.Of(r, catalog.All()).HTML("s", nil, 0, nil, nil)
	}
}
