package catalog_test

import (
	"regexp"
	"strconv"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"plumbline/calculators"
	"plumbline/calculators/catalog"
)

var viewBox = regexp.MustCompile(`viewBox="[^"]*"`)

// A figure that moves keeps still but for what moves: it is as large at every moment, for
// small and large riders too, and says something at each.
func TestAMovingFigureKeepsStill(t *testing.T) {
	moving := 0
	for _, f := range catalog.Figures() {
		m := f.Motion
		if m == nil {
			continue
		}
		moving++
		require.GreaterOrEqual(t, len(m.States), 2, m.Name)
		require.Len(t, f.Figure(nil, nil).Frames, len(m.States), m.Name)
		for _, typed := range [][]calculators.Pair{nil, exampleWith(f, "inseam", "740"),
			exampleWith(f, "inseam", "930")} {
			for _, width := range []float64{346, 530, 930} {
				boxes, said := map[string]bool{}, map[string]bool{}
				for i := range 21 {
					at := m.From + (m.To-m.From)*float64(i)/20
					moment, caption := f.Moment(typed, nil, at)
					require.NotNil(t, moment, "%s at %v", m.Name, at)
					boxes[viewBox.FindString(moment.SVG("x", nil, width))] = true
					said[caption.Say(nil)] = true
				}
				assert.Len(t, boxes, 1, "%s at %v px: %v", m.Name, width, boxes)
				assert.Greater(t, len(said), 5, m.Name)
			}
		}
		for _, outside := range []float64{m.From - 1, m.To + 1} {
			moment, _ := f.Moment(nil, nil, outside)
			assert.Nil(t, moment, "%s at %v", m.Name, outside)
		}
	}
	require.Positive(t, moving)
}

// What a moment says is what the calculator answers there, at the reader's numbers where
// they compute and else at the example's, never at some of both. By hand: 20 % of 160 mm
// at both ends lower the bottom bracket like the calculator's own bike of these numbers.
func TestAMomentIsTheCalculatorsOwn(t *testing.T) {
	sinks, sag := figureNamed("bike-sinks"), catalog.Named("suspension-sag")
	own := []calculators.Pair{{Key: "fork-travel", Typed: "160"}, {Key: "rear-travel", Typed: "150"},
		{Key: "sag-front", Typed: "11"}, {Key: "sag-rear", Typed: "33"}}
	for _, p := range sag.Example() {
		if p.Key != "fork-travel" && p.Key != "rear-travel" && p.Key != "sag-front" && p.Key != "sag-rear" {
			own = append(own, p)
		}
	}
	_, said := sinks.Moment(own, nil, 20)
	r, problems := sag.Run(append(own, calculators.Pair{Key: "sag-front", Typed: "20"},
		calculators.Pair{Key: "sag-rear", Typed: "20"}), nil)
	require.Empty(t, problems)
	for _, name := range []string{"head-angle", "bb-height"} {
		for _, a := range r.Answers {
			if a.Name == name {
				assert.Contains(t, said.Say(nil), a.Amount().Say(nil), name)
			}
		}
	}
	_, example := sinks.Moment(nil, nil, 20)
	_, some := sinks.Moment([]calculators.Pair{{Key: "fork-travel", Typed: "not a number"},
		{Key: "rear-travel", Typed: "150"}}, nil, 20)
	assert.Equal(t, example.Say(nil), some.Say(nil))
	assert.NotEqual(t, example.Say(nil), said.Say(nil))
}

// The elbows of the rider whose chest moves are those that standing ready answers.
func TestTheChestMovesAsStandingReadySays(t *testing.T) {
	chest, ready := figureNamed("chest-goes-down"), catalog.Named("ready-position")
	for _, trunk := range []string{"33", "52"} {
		at, err := strconv.ParseFloat(trunk, 64)
		require.NoError(t, err)
		_, said := chest.Moment(nil, nil, at)
		r, problems := ready.Run(append(ready.Example(), calculators.Pair{Key: "trunk-angle", Typed: trunk}), nil)
		require.Empty(t, problems)
		elbow := r.Answers[0].Amount()
		require.Equal(t, "elbow-bend", r.Answers[0].Name)
		elbow.Extra = -1
		assert.Contains(t, said.Say(nil), trunk)
		assert.Contains(t, said.Say(nil), elbow.Say(nil))
	}
}

func figureNamed(name string) *calculators.Illustration {
	for _, f := range catalog.Figures() {
		if f.Name == name {
			return f
		}
	}
	return nil
}

// exampleWith is what the worked example behind a figure types, one number changed.
func exampleWith(f *calculators.Illustration, key, typed string) (pairs []calculators.Pair) {
	for _, in := range f.Inputs {
		if in.Example != "" {
			pairs = append(pairs, calculators.Pair{Key: in.Key, Typed: in.Example})
		}
	}
	return append(pairs, calculators.Pair{Key: key, Typed: typed})
}
