package feet

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"plumbline/calculators/calctest"
)

const shoeExample = "foot-length=262 other-foot=258 shoe-size=42 size-system=eu"

// ISO/TS 19407's example, read second hand: 270 mm is EU 42.5 and UK 9.
func TestTheStandardsExample(t *testing.T) {
	r := calctest.Answer(t, Shoe(), "foot-length=270")
	require.InDelta(t, 42.5, calctest.Value(r, sizeEU), 1e-9)
	require.InDelta(t, 9, HalfSize(calctest.Value(r, sizeUK)), 1e-9)
	require.InDelta(t, calctest.Value(r, sizeUK)+1, calctest.Value(r, sizeUSMen), 1e-9)
	require.InDelta(t, calctest.Value(r, sizeUK)+2, calctest.Value(r, sizeUSWomen), 1e-9)
	require.Contains(t, r.At(sizeEU).Meaning.Say(nil), "Nearest half size 42.5")
}

// A barleycorn is a third of an inch and a Paris point two thirds of a centimetre:
// one size more is that much more foot.
func TestStepsOfTheSystems(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		size := calctest.Between(t, "size", 1, 50)
		require.InDelta(t, 25.4/3, FootOfUK(size+1)-FootOfUK(size), 1e-9)
		require.InDelta(t, 20.0/3, FootOfEU(size+1)-FootOfEU(size), 1e-9)
	})
}

func TestThereAndBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		foot := calctest.Between(t, "foot", 180, 330)
		require.InDelta(t, foot, FootOfEU(EU(foot)), 1e-9)
		require.InDelta(t, foot, FootOfUK(UK(foot)), 1e-9)
		for _, system := range []string{"mondopoint", "eu", "uk", "us-men", "us-women"} {
			size := map[string]float64{"mondopoint": foot, "eu": EU(foot), "uk": UK(foot), "us-men": USMen(UK(foot)),
				"us-women": USWomen(UK(foot))}[system]
			if size < 1 {
				continue
			}
			r := calctest.Answer(t, Shoe(), fmt.Sprintf("foot-length=260 shoe-size=%v size-system=%s", size, system))
			require.InDelta(t, foot, float64(r.At(meantFor).Value), 1e-6, system)
		}
	})
}

func TestHalfSizesTieUp(t *testing.T) {
	for size, want := range map[float64]float64{41.25: 41.5, 41.24: 41, 41.75: 42, 41.74: 41.5, 8: 8, 0.25: 0.5} {
		require.InDelta(t, want, HalfSize(size), 1e-12, "%v", size)
	}
}

func TestTheLongerFootDecides(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a, b := calctest.Between(t, "a", 200, 330), calctest.Between(t, "b", 200, 330)
		one := calctest.Value(calctest.Answer(t, Shoe(), fmt.Sprintf("foot-length=%v other-foot=%v", a, b)),
			mondopoint)
		other := calctest.Value(calctest.Answer(t, Shoe(), fmt.Sprintf("foot-length=%v other-foot=%v", b, a)),
			mondopoint)
		require.InDelta(t, one, other, 0)
		require.InDelta(t, max(a, b), one, 1e-9)
	})
	require.True(t, calctest.Says(calctest.Answer(t, Shoe(), "foot-length=262"), "Measure both"))
}

func TestAnotherSystemIsSuspected(t *testing.T) {
	require.True(t, calctest.Says(calctest.Answer(t, Shoe(), "foot-length=262 shoe-size=42 size-system=uk"),
		"Was another system meant"))
	require.True(t, calctest.Says(calctest.Answer(t, Shoe(), "foot-length=262 shoe-size=42"), "Say which system"))
	require.Equal(t, []string{"42.0"}, calctest.Column(t, calctest.Answer(t, Shoe(), shoeExample), "back", "eu"))
}

func BenchmarkShoe(b *testing.B) {
	for b.Loop() {
		calctest.Answer(b, Shoe(), shoeExample)
	}
}
