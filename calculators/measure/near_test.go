package measure_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"

	"plumbline/calculators/measure"
)

func TestAMistypedKeyFindsItsQuantity(t *testing.T) {
	for typed, want := range map[string]*measure.Quantity{
		"insem":         measure.Inseam,
		"inseem":        measure.Inseam,
		"isneam":        measure.Inseam,
		"Inside Leg":    measure.Inseam,
		"inside_leg":    measure.Inseam,
		"crank":         measure.CrankLength,
		"crank_length":  measure.CrankLength,
		"cranklength":   measure.CrankLength,
		"saddel-height": measure.SaddleHeight,
		"head angle":    measure.HeadAngle,
		"bbdrop":        measure.BBDrop,
		"height":        measure.Stature,
		"sadel-hieght":  measure.SaddleHeight, // two slips
		"amss":          measure.Mass,         // a swap is one slip, and four letters may have no more
	} {
		if got := measure.Nearest(typed); assert.NotNil(t, got, typed) {
			assert.Equal(t, want.Key, got.Key, typed)
		}
	}
}

func TestNothingIsGuessedFromAfar(t *testing.T) {
	for _, typed := range []string{"", " ", "x", "colour", "price-in-euros", strings.Repeat("inseam", 100),
		"\x00\xff"} {
		assert.Nil(t, measure.Nearest(typed), "%q", typed)
	}
}

func TestOneWrongLetterInAKeyIsForgiven(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		q := rapid.SampledFrom(measure.All()).Filter(func(q *measure.Quantity) bool { return len(q.Key) > 7 }).
			Draw(t, "quantity")
		i := rapid.IntRange(0, len(q.Key)-1).Draw(t, "at")
		typed := q.Key[:i] + "~" + q.Key[i+1:]
		if got := measure.Nearest(typed); assert.NotNil(t, got, typed) && got != q {
			// Another key may be exactly as near, never nearer: front-rim, front-… .
			assert.Equal(t, len(q.Key), len(got.Key), "%s for %s", got.Key, typed)
		}
		assert.Same(t, q, measure.Nearest(q.Key))
	})
}

func TestAnyKeyMayBeAskedFor(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) { measure.Nearest(rapid.String().Draw(t, "key")) })
}
