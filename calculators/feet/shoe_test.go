package feet_test

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"plumbline/calculators/feet"
)

const shoeExample = "foot-length=262 other-foot=258 shoe-size=42 size-system=eu"

// ISO/TS 19407's example, read second hand: 270 mm is EU 42.5 and UK 9.
func TestTheStandardsExample(t *testing.T) {
	r := answer(t, feet.Shoe(), "foot-length=270")
	require.InDelta(t, 42.5, value(r, "eu"), 1e-9)
	require.InDelta(t, 9, feet.HalfSize(value(r, "uk")), 1e-9)
	require.InDelta(t, value(r, "uk")+1, value(r, "us-men"), 1e-9)
	require.InDelta(t, value(r, "uk")+2, value(r, "us-women"), 1e-9)
	require.Contains(t, r.Reading("eu").Meaning.Say(nil), "Nearest half size 42.5")
}

// A barleycorn is a third of an inch and a Paris point two thirds of a centimetre:
// one size more is that much more foot.
func TestStepsOfTheSystems(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		size := between(t, "size", 1, 50)
		require.InDelta(t, 25.4/3, feet.FootOfUK(size+1)-feet.FootOfUK(size), 1e-9)
		require.InDelta(t, 20.0/3, feet.FootOfEU(size+1)-feet.FootOfEU(size), 1e-9)
	})
}

func TestThereAndBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		foot := between(t, "foot", 180, 330)
		require.InDelta(t, foot, feet.FootOfEU(feet.EU(foot)), 1e-9)
		require.InDelta(t, foot, feet.FootOfUK(feet.UK(foot)), 1e-9)
		for _, system := range []string{"mondopoint", "eu", "uk", "us-men", "us-women"} {
			size := map[string]float64{"mondopoint": foot, "eu": feet.EU(foot), "uk": feet.UK(foot), "us-men": feet.USMen(feet.UK(foot)), "us-women": feet.USWomen(feet.UK(foot))}[system]
			if size < 1 {
				continue
			}
			r := answer(t, feet.Shoe(), fmt.Sprintf("foot-length=260 shoe-size=%v size-system=%s", size, system))
			require.InDelta(t, foot, float64(r.Working("meant-for").Value), 1e-6, system)
		}
	})
}

func TestHalfSizesTieUp(t *testing.T) {
	for size, want := range map[float64]float64{41.25: 41.5, 41.24: 41, 41.75: 42, 41.74: 41.5, 8: 8, 0.25: 0.5} {
		require.InDelta(t, want, feet.HalfSize(size), 1e-12, "%v", size)
	}
}

func TestTheLongerFootDecides(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a, b := between(t, "a", 200, 330), between(t, "b", 200, 330)
		one := value(answer(t, feet.Shoe(), fmt.Sprintf("foot-length=%v other-foot=%v", a, b)), "mondopoint")
		other := value(answer(t, feet.Shoe(), fmt.Sprintf("foot-length=%v other-foot=%v", b, a)), "mondopoint")
		require.InDelta(t, one, other, 0)
		require.InDelta(t, max(a, b), one, 1e-9)
	})
	require.True(t, says(answer(t, feet.Shoe(), "foot-length=262"), "Measure both"))
}

func TestAnotherSystemIsSuspected(t *testing.T) {
	require.True(t, says(answer(t, feet.Shoe(), "foot-length=262 shoe-size=42 size-system=uk"), "Was another system meant"))
	require.True(t, says(answer(t, feet.Shoe(), "foot-length=262 shoe-size=42"), "Say which system"))
	require.Equal(t, []string{"42.0"}, column(t, answer(t, feet.Shoe(), shoeExample), "back", "eu"))
}

func BenchmarkShoe(b *testing.B) { bench(b, feet.Shoe(), shoeExample) }
