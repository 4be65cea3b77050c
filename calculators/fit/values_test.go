package fit_test

import (
	"slices"
	"testing"

	"github.com/stretchr/testify/require"

	"plumbline/calculators"
	"plumbline/calculators/calctest"
	"plumbline/calculators/measure"
)

// values returns what "key=value key=value" gives a calculator with these inputs.
func values(t require.TestingT, typed string, inputs ...[]calculators.Input) calculators.Values {
	var read calculators.Values
	answer := &calculators.Output{Name: "answer", Label: "Answer", Unit: measure.Mm}
	c := &calculators.Calculator{Name: "test", Inputs: slices.Concat(inputs...),
		Answers: []*calculators.Output{answer},
		Solve:   func(calculators.Values, calculators.Numbers) *calculators.Problem { return nil },
		Explain: func(v calculators.Values, _ *calculators.Result) { read = v }}
	calctest.Answer(t, c, typed)
	return read
}

// optional asks for quantities, each of which may be left out.
func optional(quantities ...*measure.Quantity) (list []calculators.Input) {
	for _, q := range quantities {
		list = append(list, calculators.Input{Quantity: q, Optional: true})
	}
	return list
}

// The helper reads what a reader types, and nothing else.
func TestValuesAreWhatWasTyped(t *testing.T) {
	v := values(t, "reach=46.1cm", optional(measure.Reach, measure.Stack))
	require.Equal(t, 461.0, v.Of(measure.Reach))
	require.False(t, v.Has(measure.Stack))
}
