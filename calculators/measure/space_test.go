package measure

import (
	"strings"
	"testing"
	"unicode"

	"pgregory.net/rapid"
)

func TestTrimCutsWhatTheLibraryCuts(t *testing.T) {
	for c := rune(0); c <= unicode.MaxRune; c++ {
		if space(c) != unicode.IsSpace(c) {
			t.Errorf("%U: space says %v, the library %v", c, space(c), unicode.IsSpace(c))
		}
	}
	rapid.Check(t, func(t *rapid.T) {
		s := strings.Join(rapid.SliceOf(rapid.SampledFrom([]string{" ", "\t", "\u00a0", "\u3000", "\u2009", "8", "é", "−", "\xff", "\xe2\x80"})).Draw(t, "pieces"), "")
		if got, want := Trim(s), strings.TrimSpace(s); got != want {
			t.Fatalf("%q became %q, with the library %q", s, got, want)
		}
	})
}
