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
		"short, least": "sex=f inseam=690 stature=1520 mass=48 saddle-height=609 foot-length=225 " +
			"hand-length=160 hip-width=150 sit-bone-width=125 " + supple,
		"short, all": "sex=f inseam=690 stature=1520 mass=48 saddle-height=609 foot-length=225 other-foot=222 " +
			"hand-length=160 hip-width=150 sit-bone-width=125 " +
			"trochanter-height=747 trunk-length=450 arm-length=560 shoulder-width=338 thigh-length=340 " +
			"shank-length=347 finger-length=62 " +
			"heel-to-ball-inner=165 heel-to-ball-outer=145 toe-out=2 foot-offset=51 push-up-width=640 " +
			"nose-setback=20 saddle-setback=140 com-forward=430 com-height=980 " + supple,
		"tall, least": "sex=m inseam=960 stature=2000 mass=110 saddle-height=848 foot-length=305 hand-length=218 " +
			"hip-width=192 sit-bone-width=100 " + stiff,
		"tall, all": "sex=m inseam=960 stature=2000 mass=110 saddle-height=848 foot-length=305 other-foot=303 " +
			"hand-length=218 hip-width=192 sit-bone-width=100 " +
			"trochanter-height=1022 trunk-length=605 arm-length=770 shoulder-width=440 thigh-length=470 " +
			"shank-length=480 finger-length=86 " +
			"heel-to-ball-inner=225 heel-to-ball-outer=198 toe-out=15 foot-offset=60 push-up-width=850 " +
			"nose-setback=60 saddle-setback=210 com-forward=480 com-height=1260 " + stiff,
	},
	bikes: map[string]string{
		"short travel, narrow": "reach=425 stack=595 head-angle=68.3 seat-angle=74.2 chainstay=427 bb-drop=58 " +
			"fork-offset=44 fork-travel=100 rear-travel=0 sag-rear=0 bar-width=700 bar-rise=5 stem-length=70 " +
			"stem-angle=-6 crank-length=165 grip-x=415 grip-y=655 wheelbase=1125 front-centre=703 pedals=clip " +
			"grade=25 spacers=5 " + narrow,
		"long travel, wide": "reach=505 stack=648 head-angle=63.2 seat-angle=78.4 chainstay=452 bb-drop=24 " +
			"fork-offset=44 fork-travel=180 rear-travel=170 bar-width=810 bar-rise=45 stem-length=35 " +
			"crank-length=175 grip-x=478 grip-y=752 wheelbase=1305 front-centre=855 pedals=flat " +
			"grade=-20 spacers=30 " + wide,
	},
}

// What only some calculators ask for, at the ends of what is usual: joints, feet and readings of two
// riders; post, parts and wheels of two bikes, what a tape finds on them (their chart in other words), and
// the bike that each is exchanged for.
const (
	supple = "knee-short-left=8 knee-short-right=11 lunge-left=145 lunge-right=138 hip-bend=138 sit-and-reach=120 " +
		"first=689 second=691 third=690 front-hip-points=205 toe-out-left=-3 toe-out-right=0 shoe-size=36 " +
		"leg-difference=2 knee-reading=34 target-knee=30 trunk-angle=35 standing-knee=65 elbow-bend=45 " +
		"scores-before=9;8;9;7 scores-after=2;3;1"
	stiff = "knee-short-left=62 knee-short-right=66 lunge-left=45 lunge-right=52 hip-bend=98 sit-and-reach=-190 " +
		"first=951 second=966 third=958 front-hip-points=275 toe-out-left=17 toe-out-right=21 shoe-size=49 " +
		"leg-difference=14 knee-reading=20 target-knee=40 trunk-angle=62 standing-knee=35 elbow-bend=12 " +
		"scores-before=4;6 scores-after=5;4;7"
	narrow = "seat-tube-length=375 saddle-stack=42 post-length=350 travel-post=100 insertion-post=80 " +
		"insertion-frame=120 post-collar=22 post-head=22 post-actuator=20 post-diameter=27.2 free-depth=190 " +
		"bb-to-head-tube=731 rear-axle-to-head-tube=1004 rear-axle-height=349 front-axle-height=349 bb-height=291 " +
		"front-rim=584 front-tyre=57 head-tube-length=92 fork-length=505 sag-front=14 shock-stroke=38 " +
		"angle-headset=-2 q-factor=163 cleat-angle-left=-2 cleat-angle-right=3 pedal-float=2 pedal-width=92 " +
		"pedal-thickness=11 new-crank-length=155 seat-tube-angle=74 post-offset=25 rail-shift=-14 saddle-tilt=-2 " +
		"bar-sweep=28 back-sweep=5 bar-roll=-6 spacers-above=0 spacers-limit=15 bar-limit=680 bar-straight=180 " +
		"controls-width=42 lever-reach=41 grip-diameter=28 new-reach=400 new-stack=580 new-head-angle=69 " +
		"new-seat-angle=73 new-chainstay=422 new-seat-tube-length=350 new-post-offset=20 new-bar-rise=5 " +
		"new-bar-sweep=27 new-spacers-limit=10 new-fork-travel=90 new-rear-travel=80 " +
		"sizes=name,reach,stack,head-angle,seat-angle,seat-tube-length|S,402,582,68.5,74.5,350|M,425,595,68.3,74.2,375"
	wide = "seat-tube-length=470 saddle-stack=56 post-length=585 travel-post=230 insertion-post=150 " +
		"insertion-frame=90 post-collar=36 post-head=32 post-actuator=48 post-diameter=34.9 free-depth=330 " +
		"bb-to-head-tube=821 rear-axle-to-head-tube=1142 rear-axle-height=377 front-axle-height=377 bb-height=353 " +
		"front-rim=622 front-tyre=66 head-tube-length=138 fork-length=592 sag-front=27 shock-stroke=68 " +
		"angle-headset=1.5 q-factor=186 cleat-angle-left=5 cleat-angle-right=-1 pedal-float=11 pedal-width=121 " +
		"pedal-thickness=21 new-crank-length=165 seat-tube-angle=69.5 post-offset=0 rail-shift=13 saddle-tilt=5 " +
		"bar-sweep=58 back-sweep=12 bar-roll=9 spacers-above=20 spacers-limit=45 bar-limit=760 bar-straight=270 " +
		"controls-width=82 lever-reach=74 grip-diameter=36 new-reach=535 new-stack=668 new-head-angle=62.5 " +
		"new-seat-angle=79.5 new-chainstay=460 new-seat-tube-length=500 new-post-offset=0 new-bar-rise=60 " +
		"new-bar-sweep=60 new-spacers-limit=45 new-fork-travel=200 new-rear-travel=200 " +
		"sizes=name,reach,stack,head-angle,seat-angle,seat-tube-length|L,505,648,63.2,78.4,470|XL,533,662,63.2,78,500"
)

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
				if allTried[j] == 0 { // only a number without an error, such as the bend that was asked for
					r, _ := c.Run(at["example"], nil)
					require.Zero(t, r.Answers[j].Uncertainty, "%s was tried at no point", o.Name)
				}
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

// TestCornersAreCorners: no corner falls back on the worked example, but for choices.
func TestCornersAreCorners(t *testing.T) {
	for _, c := range catalog.All() {
		for r, rider := range corners.riders {
			for b, bike := range corners.bikes {
				typed := map[string]bool{}
				for _, p := range pairs(rider + " " + bike) {
					typed[p.Key] = true
				}
				for _, in := range c.Inputs {
					if in.Is() == measure.Number && in.Example != "" && !in.Optional && in.Assume == nil {
						require.True(t, typed[in.Key], "%s at %s, %s: no %s of its own", c.Name, r, b, in.Key)
					}
				}
			}
		}
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
