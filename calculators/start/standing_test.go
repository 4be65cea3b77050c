package start

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"plumbline/calculators"
	"plumbline/calculators/measure"
)

// TestEveryFigureOfMeasuringIsDrawnAtTheReadersSize: whoever is tall is drawn
// tall, and the description states the reader's own numbers.
func TestEveryFigureOfMeasuringIsDrawnAtTheReadersSize(t *testing.T) {
	for _, f := range Figures() {
		small := f.Figure([]calculators.Pair{{Key: "stature", Typed: "1500"}, {Key: "sex", Typed: "f"}}, nil)
		large := f.Figure([]calculators.Pair{{Key: "stature", Typed: "2000"}, {Key: "inseam", Typed: "960"}}, nil)
		require.NotEmpty(t, small.Title.Say(nil), f.Name)
		require.NotEmpty(t, small.Description.Say(nil), f.Name)
		require.NotContains(t, small.SVG("f", nil, 530), "NaN", f.Name)
		ofAPerson := len(f.Inputs) > 0 && f.Inputs[0].Quantity == measure.Stature
		if ofAPerson && f.Name != "measure-sit-bones" {
			require.NotEqual(t, small.Description.Say(nil), large.Description.Say(nil), f.Name)
		}
	}
	tall := Figures()[1].Figure([]calculators.Pair{{Key: "inseam", Typed: "96 cm"}}, nil)
	require.Contains(t, tall.Description.Say(nil), "960")
	// A bike's picture follows the reader's chart.
	for _, f := range Figures() {
		if f.Name == measure.Reach.How.Figure {
			long := f.Figure([]calculators.Pair{{Key: "reach", Typed: "520"}}, nil)
			require.NotEqual(t, f.Figure(nil, nil).SVG("f", nil, 530), long.SVG("f", nil, 530))
		}
	}
}

func TestNoSizeBreaksAFigure(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		f := rapid.SampledFrom(Figures()).Draw(t, "figure")
		typed := []calculators.Pair{
			{Key: "stature", Typed: rapid.SampledFrom([]string{"", "700", "1300", "1740", "2150", "3100", "x",
				"0"}).Draw(t,
				"stature")},
			{Key: "inseam", Typed: rapid.SampledFrom([]string{"", "300", "550", "830", "1050", "1500",
				"−5"}).Draw(t, "inseam")},
		}
		svg := f.Figure(typed, nil).SVG("f", nil, 530)
		if strings.Contains(svg, "NaN") || strings.Contains(svg, "Inf") {
			t.Fatalf("%s with %v", f.Name, typed)
		}
	})
}

// The tangent of 10 degrees is 0.1763 (any table of trigonometry): a grade of 18 %.
func TestTheGradeOfThePicture(t *testing.T) {
	said := grade(calculators.Values{}).Description.Say(nil)
	require.Contains(t, said, "10°")
	require.Contains(t, said, "18\u00a0%")
}
