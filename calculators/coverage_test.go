package calculators_test

import (
	"maps"
	"math"
	"runtime"
	"slices"
	"testing"

	"github.com/stretchr/testify/require"

	"plumbline/calculators"
	"plumbline/calculators/catalog"
	"plumbline/calculators/measure"
	"plumbline/calculators/panel"
)

// corners are riders and bikes at the ends of what is usual (common practice). "least"
// gave what every calculator needs and no more, "all" took a tape to the whole body.
var corners = struct{ riders, bikes map[string]string }{
	riders: map[string]string{
		"short, least": "sex=f inseam=690 stature=1520 mass=48 saddle-height=609 foot-length=225 hand-length=160 " +
			"hip-width=150 sit-bone-width=125",
		"short, all": "sex=f inseam=690 stature=1520 mass=48 saddle-height=609 foot-length=225 other-foot=222 " +
			"hand-length=160 hip-width=150 sit-bone-width=125 " +
			"trochanter-height=747 trunk-length=450 arm-length=560 shoulder-width=338 thigh-length=340 " +
			"shank-length=347 finger-length=62 " +
			"heel-to-ball-inner=165 heel-to-ball-outer=145 toe-out=2 foot-offset=51 push-up-width=640 " +
			"nose-setback=20 saddle-setback=140 com-forward=430 com-height=980",
		"tall, least": "sex=m inseam=960 stature=2000 mass=110 saddle-height=848 foot-length=305 hand-length=218 " +
			"hip-width=192 sit-bone-width=100",
		"tall, all": "sex=m inseam=960 stature=2000 mass=110 saddle-height=848 foot-length=305 other-foot=303 " +
			"hand-length=218 hip-width=192 sit-bone-width=100 " +
			"trochanter-height=1022 trunk-length=605 arm-length=770 shoulder-width=440 thigh-length=470 " +
			"shank-length=480 finger-length=86 " +
			"heel-to-ball-inner=225 heel-to-ball-outer=198 toe-out=15 foot-offset=60 push-up-width=850 " +
			"nose-setback=60 saddle-setback=210 com-forward=480 com-height=1260",
	},
	bikes: map[string]string{
		"short travel, narrow": "reach=425 stack=595 head-angle=68.3 seat-angle=74.2 chainstay=427 bb-drop=58 " +
			"fork-offset=44 fork-travel=100 rear-travel=0 sag-rear=0 bar-width=700 bar-rise=5 stem-length=70 " +
			"stem-angle=-6 " +
			"crank-length=165 grip-x=415 grip-y=655 wheelbase=1125 front-centre=703 pedals=clip grade=25 spacers=5",
		"long travel, wide": "reach=505 stack=648 head-angle=63.2 seat-angle=78.4 chainstay=452 bb-drop=24 " +
			"fork-offset=44 fork-travel=180 rear-travel=170 bar-width=810 bar-rise=45 stem-length=35 " +
			"crank-length=175 grip-x=478 grip-y=752 wheelbase=1305 front-centre=855 pedals=flat grade=-20 spacers=30",
	},
}

// corner is what a rider on a bike types into a calculator: what it asks for, with the
// worked example's value where it needs more.
func corner(c *calculators.Calculator, rider, bike string) (p []calculators.Pair) {
	given := map[string]string{}
	for _, x := range pairs(rider + " " + bike) {
		given[x.Key] = x.Typed
	}
	for _, in := range c.Inputs {
		typed := given[in.Key]
		if typed == "" && (!in.Optional && in.Assume == nil || in.Is() != measure.Number) {
			typed = in.Example
		}
		if typed != "" {
			p = append(p, calculators.Pair{Key: in.Key, Typed: typed})
		}
	}
	return p
}

// TestCoverage holds the printed ± to its definition: in 95 of 100 cases y ± U has the
// true answer in it. Riders and bikes are drawn round the worked example, round the two
// further points of each calculator, and round riders and bikes at the ends of what is
// usual; each is measured with the tape's errors, and what is answered from the readings
// is compared with what the truth would have answered (Cover says how).
//
// Held to 0.93 to 0.97 for each reading, over all points together and at each of them,
// give or take five standard errors of the share that was counted: so a run of a few
// seconds finds gross errors, and one with PLUMBLINE_TRIALS=1000000 all.
func TestCoverage(t *testing.T) {
	if runtime.GOARCH == "wasm" {
		t.Skip("a statement about the method, not the platform: checked natively")
	}
	if testing.Short() {
		t.Skip("takes seconds")
	}
	n := trials(t) / 1000
	for _, c := range catalog.All() {
		t.Run(c.Name, func(t *testing.T) {
			t.Parallel()
			at := map[string][]calculators.Pair{"example": panel.Example(c)}
			for _, p := range morePoints[c.Name] {
				at[p] = pairs(p)
			}
			for r, rider := range corners.riders {
				for b, bike := range corners.bikes {
					at[r+"; "+b] = corner(c, rider, bike)
				}
			}
			allTried, allHeld := make([]int, len(c.Answers)), make([]int, len(c.Answers))
			for k, point := range slices.Sorted(maps.Keys(at)) {
				// Other errors at each point, so that all points together are many more.
				tried, held, problems := c.Cover(at[point], n, 20260101+uint64(k), 4)
				require.Empty(t, problems, point)
				for j, o := range c.Answers {
					covers(t, o.Name, point, tried[j], held[j])
					allTried[j] += tried[j]
					allHeld[j] += held[j]
				}
			}
			for j, o := range c.Answers {
				covers(t, o.Name, "all points", allTried[j], allHeld[j])
			}
		})
	}
}

// covers holds a share of riders to 0.93 to 0.97.
func covers(t *testing.T, answer, point string, tried, held int) {
	t.Helper()
	chance := 5 * math.Sqrt(0.05*0.95/float64(tried))
	share := float64(held) / float64(tried)
	if tried > 0 && (share < 0.93-chance || share > 0.97+chance) {
		t.Errorf("%s: its ± holds the truth in %.3f of %d cases, not in 0.93 to 0.97: %s", answer, share, tried, point)
	}
}

// A number is the same whether or not others are wanted beside it.
func TestANumberAloneIsTheSame(t *testing.T) {
	for _, c := range catalog.All() {
		points := [][]calculators.Pair{panel.Example(c)}
		for _, p := range morePoints[c.Name] {
			points = append(points, pairs(p))
		}
		for _, rider := range corners.riders {
			for _, bike := range corners.bikes {
				points = append(points, corner(c, rider, bike))
			}
		}
		for _, p := range points {
			require.Empty(t, c.Alone(p), "%s at %v", c.Name, p)
		}
	}
}
