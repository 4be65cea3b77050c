package saddle

import (
	"testing"

	"github.com/stretchr/testify/require"

	"plumbline/calculators/calctest"
	"plumbline/calculators/drawing"
	"plumbline/calculators/measure"
)

// The picture of a result shows the numbers of the worked example itself, each part with
// a word beside it.
func TestTheAnnotatedResultIsTheExample(t *testing.T) {
	f := AnnotatedResult().Figure(nil, nil)
	r := calctest.Answer(t, Height(), "inseam=830 crank-length=170 pedals=clip target-knee=35")
	said := map[string]float64{}
	for _, m := range f.Lay(40) {
		if l, ok := m.(drawing.Label); ok {
			said[l.Text.Say(nil)] = l.At.Y
		}
	}
	x := &r.Answers[0]
	for part, word := range map[string]string{
		"Set the saddle to": "what you set", x.Amount().Say(nil): "the number",
		"± " + measure.Error{Amount: x.Margin()}.Say(nil): "what your tape leaves open",
		"crank axle to saddle top, along the seat line":   "measured between these",
		"What moves the answer most: Inside leg":          "measure this again first",
		"Stop: The post":                                  "read it before you ride",
	} {
		require.Contains(t, said, part)
		require.Contains(t, said, word)
		require.Equal(t, said[part], said[word], "%s stands beside %s", word, part)
	}
	require.Contains(t, f.Description.Say(nil), x.Uncertain().Say(nil))
}
