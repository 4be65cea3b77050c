package measure_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"plumbline/calculators/measure"
)

// TestEditDistance counts the edits by hand. kitten to sitting is the usual
// textbook pair (three replacements and insertions, from memory); the swaps count
// as one, as Damerau counts them.
func TestEditDistance(t *testing.T) {
	for _, c := range []struct {
		a, b string
		want int
	}{
		{"kitten", "sitting", 3},
		{"", "abc", 3},
		{"abc", "", 3},
		{"inseam", "inseam", 0},
		{"Inseam", "inSEAM", 0},
		{"insaem", "inseam", 1}, // one swap
		{"heigth", "height", 1}, // one swap
		{"ab", "ba", 1},         // one swap
		{"saddle", "sadle", 1},  // one letter dropped
		{"abc", "xyz", 3},       // three replaced
		{"stem", "stem-choice", 7} /* "-choice" added */} {
		assert.Equal(t, c.want, measure.EditDistance(c.a, c.b), "%q to %q", c.a, c.b)
		assert.Equal(t, c.want, measure.EditDistance(c.b, c.a), "%q to %q", c.b, c.a)
	}
}

func TestTheNearestNameIsASlipAway(t *testing.T) {
	known := []string{"saddle-height", "saddle-setback", "stem-choice", "tape"}
	for name, want := range map[string]string{
		"saddle-hight": "saddle-height", "Saddle-Height": "saddle-height", "setback": "saddle-setback",
		"saddle-s": "saddle-setback",
		"tpae":     "tape", "x": "", "": "", "nonsense": "", "bottom-bracket": "",
	} {
		assert.Equal(t, want, measure.NearestName(name, known), "%q", name)
	}
	assert.Empty(t, measure.NearestName("tape", nil))
}
