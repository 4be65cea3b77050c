package finish

import (
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// The loop's nine stretches follow one another without a gap, are numbered in order, each
// with one question, and the loop ends lower than the pitch and near where it began.
func TestTheLoopIsWhole(t *testing.T) {
	n := 0
	for _, half := range [][]stretch{outAndUp, downAndHome} {
		require.Zero(t, half[0].from)
		require.Equal(t, 1.0, half[len(half)-1].to)
		for i, s := range half {
			n++
			said := s.asked.Say(nil)
			require.True(t, strings.HasPrefix(said, strconv.Itoa(n)+" "), said)
			require.Equal(t, 1, strings.Count(said, "?"), said)
			require.Greater(t, s.to, s.from)
			if i > 0 {
				require.Equal(t, half[i-1].to, s.from)
				require.Equal(t, half[i-1].then, s.height)
			}
		}
	}
	require.Equal(t, 9, n)
	require.Equal(t, outAndUp[4].then, downAndHome[0].height)
	steep := func(s stretch) float64 { return (s.then - s.height) / (s.to - s.from) }
	for _, s := range outAndUp {
		require.LessOrEqual(t, steep(s), steep(outAndUp[3]), "the pitch is the steepest")
	}
}
