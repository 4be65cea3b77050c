package cockpit

import (
	"slices"
	"testing"

	"pgregory.net/rapid"

	"plumbline/calculators"
	"plumbline/calculators/calctest"
)

// way is which way answers go when an input grows.
type way struct {
	key        string
	by         float64
	up, down   []*calculators.Output
	keepsStill []*calculators.Output
}

type outputs = []*calculators.Output

// goes holds a calculator to the ways, for records of which every number is up to 3 %
// more or less than in a record.
func goes(t *testing.T, c *calculators.Calculator, choices string, record numbers, ways ...way) {
	t.Helper()
	rapid.Check(t, func(t *rapid.T) {
		at := numbers{}
		keys := []string{}
		for key := range record {
			keys = append(keys, key)
		}
		slices.Sort(keys)
		for _, key := range keys {
			at[key] = record[key] * (1 + calctest.Between(t, key, -0.03, 0.03))
		}
		before := calctest.Answer(t, c, choices+" "+at.typed())
		for _, w := range ways {
			after := calctest.Answer(t, c, choices+" "+at.plus(w.key, w.by).typed())
			change := func(o *calculators.Output) float64 {
				return calctest.Value(after, o) - calctest.Value(before, o)
			}
			for _, o := range w.up {
				if !(change(o) > 0) {
					t.Fatalf("%s by %v: %s goes by %v, not up", w.key, w.by, o.Name, change(o))
				}
			}
			for _, o := range w.down {
				if !(change(o) < 0) {
					t.Fatalf("%s by %v: %s goes by %v, not down", w.key, w.by, o.Name, change(o))
				}
			}
			for _, o := range w.keepsStill {
				if d := change(o); d > 1e-9 || d < -1e-9 {
					t.Fatalf("%s by %v: %s goes by %v, and should not", w.key, w.by, o.Name, d)
				}
			}
		}
	})
}

func TestGripGoesTheRightWay(t *testing.T) {
	goes(t, Grip(), "", partsRecord,
		way{key: "reach", by: 7, up: outputs{gripX, gripFromSaddle, reachAtBar, roomAtBar},
			keepsStill: outputs{gripY, gripDrop}},
		way{key: "stack", by: 7, up: outputs{gripY}, down: outputs{gripDrop}, keepsStill: outputs{gripX, reachAtBar}},
		way{key: "head-angle", by: 1, up: outputs{gripX, reachAtBar}},
		way{key: "spacers", by: 5, up: outputs{gripY}, down: outputs{gripX, gripDrop, reachAtBar, roomAtBar}},
		way{key: "headset-height", by: 3, up: outputs{gripY}, down: outputs{gripX}},
		way{key: "stem-clamp-height", by: 3, up: outputs{gripY}, down: outputs{gripX}},
		way{key: "stem-length", by: 5, up: outputs{gripX, gripFromSaddle}},
		way{key: "stem-angle", by: 3, up: outputs{gripY}, down: outputs{gripX}},
		way{key: "bar-rise", by: 5, up: outputs{gripY}, down: outputs{gripDrop}, keepsStill: outputs{reachAtBar}},
		way{key: "bar-sweep", by: 5, down: outputs{gripX, gripFromSaddle}},
		way{key: "bar-roll", by: 1, up: outputs{gripX, gripY}},
		way{key: "saddle-height", by: 5, up: outputs{gripDrop}, keepsStill: outputs{gripX, gripY}},
		way{key: "seat-angle", by: 1, down: outputs{roomAtBar, gripFromSaddle}})
}

func TestReadyGoesTheRightWay(t *testing.T) {
	goes(t, Ready(), "", readyRecord,
		way{key: "grip-x", by: 6, up: outputs{feetToHands},
			down: outputs{readyElbow, trunkAtElbow, armSlack, roomBack}},
		way{key: "grip-y", by: 6, up: outputs{feetToHands, readyElbow, armSlack, roomBack, trunkAtElbow}},
		way{key: "move-x", by: 6, down: outputs{readyElbow, armSlack, roomBack}},
		way{key: "move-y", by: 6, up: outputs{readyElbow, armSlack, roomBack}},
		way{key: "trunk-angle", by: 2, down: outputs{readyElbow, armSlack, roomBack},
			keepsStill: outputs{feetToHands, trunkAtElbow}},
		way{key: "arm-length", by: 8, up: outputs{readyElbow, trunkAtElbow, armSlack, roomBack}},
		way{key: "bar-width", by: 20, down: outputs{readyElbow, armSlack, roomBack}},
		way{key: "grip-length", by: 20, up: outputs{readyElbow, armSlack, roomBack}},
		way{key: "shoulder-width", by: 10, up: outputs{readyElbow, armSlack, roomBack}},
		way{key: "standing-knee", by: 4, up: outputs{frontKnee, rearKnee}},
		way{key: "grade", by: 4, down: outputs{hipBehind}})
}

func TestSeatedGoesTheRightWay(t *testing.T) {
	record := testRider.with(testBike).with(numbers{"saddle-height": 721, "saddle-setback": 158, "elbow-bend": 24})
	goes(t, Seated(), "", record,
		way{key: "grip-x", by: 6, up: outputs{seatedReach, seatedShoulder}, down: outputs{seatedTrunk, trunkLevel},
			keepsStill: outputs{seatedBend}},
		way{key: "grip-y", by: 6, up: outputs{seatedTrunk, trunkLevel}},
		way{key: "saddle-setback", by: 6, up: outputs{seatedReach}, down: outputs{seatedTrunk, trunkLevel}},
		way{key: "elbow-bend", by: 5, up: outputs{seatedBend}, down: outputs{seatedTrunk, trunkLevel},
			keepsStill: outputs{seatedReach}},
		way{key: "arm-length", by: 8, up: outputs{seatedTrunk, trunkLevel}},
		way{key: "bar-width", by: 20, down: outputs{seatedTrunk}},
		// A rear that sinks further tips bike and rider back, a fork forward.
		way{key: "sag-rear", by: 4, up: outputs{seatedTrunk}, keepsStill: outputs{trunkLevel, seatedReach}},
		way{key: "sag-front", by: 4, down: outputs{seatedTrunk}, keepsStill: outputs{trunkLevel, seatedReach}})
}

func TestStemGoesTheRightWay(t *testing.T) {
	goes(t, Stem(), "", partsRecord.with(numbers{"move-x": -12, "move-y": 14}),
		way{key: "move-x", by: 3, up: outputs{gripXAfter}, down: outputs{spacersChange},
			keepsStill: outputs{gripYAfter}},
		way{key: "move-y", by: 3, up: outputs{gripYAfter, spacersChange}, keepsStill: outputs{gripXAfter}},
		// Slacker, a spacer goes further back for its height.
		way{key: "head-angle", by: -1, up: outputs{spacersChange}})
}

func TestWidthGoesTheRightWay(t *testing.T) {
	goes(t, Width(), "", widthRecord,
		way{key: "push-up-width", by: 8, up: outputs{barWidth, byPressUp, armSpread, reachLost},
			keepsStill: outputs{byShoulders, spreadNow}},
		way{key: "bar-width", by: 8, up: outputs{spreadNow}, keepsStill: outputs{barWidth, armSpread}},
		way{key: "arm-length", by: 8, up: outputs{byShoulders}, down: outputs{armSpread, spreadNow, reachLost}},
		way{key: "shoulder-width", by: 8, up: outputs{byShoulders}, down: outputs{armSpread, spreadNow, reachLost}},
		way{key: "grip-length", by: 8, up: outputs{byShoulders}, down: outputs{armSpread, spreadNow, reachLost}})
}

func TestLeverGoesTheRightWay(t *testing.T) {
	still := leverRecord.with(numbers{"sag-front": 0, "sag-rear": 0})
	goes(t, Lever(), "", still,
		way{key: "hand-length", by: 6, up: outputs{gripDiameter}, keepsStill: outputs{leverReach, leverAngle}},
		way{key: "finger-length", by: 3, up: outputs{leverReach}, keepsStill: outputs{leverInset}},
		way{key: "lever-length", by: 4, up: outputs{leverInset}, keepsStill: outputs{leverReach, leverAngle}},
		way{key: "grip-length", by: 4, down: outputs{leverInset}},
		way{key: "grip-y", by: 6, down: outputs{leverAngle, forearmStanding}},
		// Grips that go down with the bike make the forearm steeper, so that a bike that
		// tips forward steepens it on the trail by more than the blade tips with it.
		way{key: "sag-front", by: 10, up: outputs{forearmStanding}})
}

func TestSameGoesTheRightWay(t *testing.T) {
	goes(t, Same(), "", sameRecord,
		way{key: "saddle-height", by: 5, up: outputs{sameHeight}},
		way{key: "saddle-setback", by: 5, up: outputs{railShift, sameSetback},
			keepsStill: outputs{sameHeight, aheadOfHead}},
		way{key: "crank-length", by: 3, up: outputs{sameHeight, sameSetback}},
		way{key: "new-crank-length", by: 3, down: outputs{sameHeight, sameSetback}},
		way{key: "pedal-height", by: 2, down: outputs{sameHeight}},
		way{key: "new-pedal-height", by: 2, up: outputs{sameHeight}},
		way{key: "sole-height", by: 2, down: outputs{sameHeight}},
		way{key: "new-sole-height", by: 2, up: outputs{sameHeight}},
		way{key: "grip-x", by: 5, up: outputs{aheadOfHead}, keepsStill: outputs{aboveHead, railShift}},
		way{key: "grip-y", by: 5, up: outputs{aboveHead}, keepsStill: outputs{aheadOfHead}},
		way{key: "new-reach", by: 5, down: outputs{aheadOfHead}},
		way{key: "new-stack", by: 5, down: outputs{aboveHead}},
		way{key: "new-seat-angle", by: 1, up: outputs{railShift}, keepsStill: outputs{sameHeight, sameSetback}},
		way{key: "new-post-offset", by: 5, down: outputs{railShift}})
}
