package saddle

import (
	"testing"

	"github.com/stretchr/testify/require"

	"plumbline/calculators"
	"plumbline/calculators/panel"
)

// section are the calculators of the section.
var section = []*calculators.Calculator{Height(), Knee(), Setback(), Tilt(), Width(), Dropper()}

// The names of answers and workings are keys, so no two of one calculator may be the
// same.
func TestNamesAreUnique(t *testing.T) {
	for _, c := range section {
		seen := map[string]bool{}
		for _, list := range [][]*calculators.Output{c.Answers, c.Workings} {
			for _, o := range list {
				require.False(t, seen[o.Name], "%s has two outputs %s", c.Name, o.Name)
				seen[o.Name] = true
			}
		}
	}
}

// The first answer is the headline: what the question of the calculator asks for.
func TestTheHeadline(t *testing.T) {
	headlines := []*calculators.Output{saddleHeight, kneeAtBottom, saddleSetback, tiltAtSag, saddleWidth,
		longestTravel}
	for i, c := range section {
		require.Same(t, headlines[i], c.Answers[0], c.Name)
	}
}

// BenchmarkRun runs each calculator of the section on its worked example, with its
// uncertainty and its drawing.
func BenchmarkRun(b *testing.B) {
	for _, c := range section {
		typed := panel.Example(c)
		b.Run(c.Name, func(b *testing.B) {
			for b.Loop() {
				if _, problems := c.Run(typed, nil); problems != nil {
					b.Fatal(problems)
				}
			}
		})
	}
}
