package measure

import (
	"math"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

// The outside judge is the standard library's own reader, which rounds correctly.
func TestDecimalsAreReadAsTheStandardLibraryReadsThem(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		n := rapid.Int64Range(0, 999_999_999_999_999).Draw(t, "digits")
		s := strconv.FormatInt(n, 10)
		if at := rapid.IntRange(0, len(s)).Draw(t, "point"); rapid.Bool().Draw(t, "has a point") {
			s = s[:at] + "." + s[at:]
		}
		s = rapid.SampledFrom([]string{"", "-", "+"}).Draw(t, "sign") + s + rapid.SampledFrom([]string{"", "e3", "e-7", "e+5", "e0"}).Draw(t, "exponent")
		want, err := strconv.ParseFloat(s, 64)
		require.NoError(t, err)
		got, ok := readFloat(s)
		require.True(t, ok, s)
		require.Equal(t, want, got, s)
	})
	rapid.Check(t, func(t *rapid.T) { // whatever it is, it is taken or refused alike, and never far off
		s := rapid.StringOf(rapid.SampledFrom([]rune("0123456789.e-+"))).Draw(t, "text")
		want, err := strconv.ParseFloat(s, 64)
		got, ok := readFloat(s)
		require.Equal(t, err == nil, ok, s)
		if ok && math.Abs(want) > 1e-300 {
			require.InEpsilon(t, want, got, 1e-14, s)
		}
	})
	for _, s := range []string{"", ".", "-", "e5", "1e", "1e+", "1.2.3", "1e5.5", "0x10", "1_0", "inf", "1e999", strings.Repeat("9", 400)} {
		_, ok := readFloat(s)
		require.False(t, ok, s)
	}
	x, ok := readFloat("1e-999")
	require.True(t, ok && x == 0)
}

func TestAShortListIsSorted(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		list := rapid.SliceOfN(rapid.Float64Range(-10, 10), 0, 9).Draw(t, "list")
		want := slices.Sorted(slices.Values(list))
		Ascending(list)
		require.Equal(t, want, append([]float64(nil), list...))
	})
}
