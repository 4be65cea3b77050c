package calculators_test

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"plumbline/calculators"
	"plumbline/calculators/catalog"
)

// TestOnePostOneNumber: how much of a post is inside the frame, and what is over each of
// its limits, is the same number in the safety chapter and in the dropper chapter.
func TestOnePostOneNumber(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		draw := func(name string, low, high int) int { return rapid.IntRange(low, high).Draw(t, name) }
		typed := fmt.Sprintf("saddle-height=%d seat-tube-length=%d post-length=%d travel-post=%d insertion-post=%d "+
			"insertion-frame=%d",
			draw("height", 640, 820), draw("tube", 380, 480), draw("length", 300, 600), draw("travel", 0,
				220), draw("post", 50, 180),
			draw("frame", 50, 180))
		if rapid.Bool().Draw(t, "parts") {
			typed += fmt.Sprintf(" saddle-stack=%d post-collar=%d post-head=%d post-actuator=%d", draw("stack",
				40, 60),
				draw("collar", 15, 40), draw("head", 15, 40), draw("below", 0, 50))
		}
		answer := func(name string) *calculators.Result {
			r, problems := catalog.Named(name).Run(pairs(typed), nil)
			require.Empty(t, problems)
			return r
		}
		depth, dropper := answer("post-depth"), answer("dropper-travel")
		for _, name := range []string{"insertion", "over-post", "over-frame"} {
			a, b := numberNamed(t, depth, name), numberNamed(t, dropper, name)
			require.Equal(t, a.Value, b.Value, name)
			// A post that just stands on its collar has a bent answer, whose ± is simulated.
			// 256 draws leave an error of 5 % in each of the two (calculators/uncertainty).
			require.InEpsilon(t, float64(a.Uncertainty), float64(b.Uncertainty), 0.15, name)
		}
	})
}

func numberNamed(t require.TestingT, r *calculators.Result, name string) *calculators.Answer {
	for _, list := range [][]calculators.Answer{r.Answers, r.Workings} {
		for i := range list {
			if list[i].Name == name {
				return &list[i]
			}
		}
	}
	require.Fail(t, "no number", name)
	return nil
}
