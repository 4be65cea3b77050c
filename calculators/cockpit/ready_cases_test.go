package cockpit

import (
	"math"
	"math/cmplx"
	"testing"

	"github.com/stretchr/testify/assert"

	"plumbline/calculators"
	"plumbline/calculators/calctest"
	"plumbline/calculators/measure"
)

const independent = "an independent solve from published tables, with plain root finding (byhand_test.go)"

// readyRecord is a rider on a descent, who tries other grips.
var readyRecord = testRider.with(testBike).with(numbers{"trunk-angle": 43, "standing-knee": 53, "grade": -7,
	"move-x": -9, "move-y": 13})

// readyStandIns stand in for what a rider chooses and stands on: common practice,
// and usual for clipped shoes.
var readyStandIns = numbers{"trunk-angle": 45, "standing-knee": 50, "grade": 0, "crank-length": 170,
	"pedal-height": 15, "sole-height": 15,
	"cleat-behind-ball": 0}

// readyByHand solves the rider standing ready.
func readyByHand(sex string) func(numbers) map[*calculators.Output]float64 {
	return func(n numbers) map[*calculators.Output]float64 {
		n = n.underGrips().complete(readyStandIns)
		r, s, grip := readyStance(n, sex)
		t := r.balance(s, grip)
		p, _ := r.stands(s, grip, t)
		return map[*calculators.Output]float64{
			readyElbow:   r.elbowAt(s, grip),
			trunkAtElbow: trunkFor(r, s, grip, 60),
			roomBack:     r.back(s, grip),
			roomForward:  r.forward(s, grip),
			feetToHands:  cmplx.Abs(grip),
			hipBehind:    -real(p.hip),
			frontKnee:    t,
			rearKnee:     2*s.knee - t,
			armSlack:     r.slack(s, grip),
		}
	}
}

// trunkFor returns the trunk at which the balanced rider's elbows bend by an angle: a
// chest that comes up straightens them.
func trunkFor(r handRider, s handStance, grip complex128, elbow float64) float64 {
	return root(20, 75, func(trunk float64) float64 {
		s.trunk = trunk
		p, _ := r.stands(s, grip, r.balance(s, grip))
		return cmplx.Abs(grip-p.shoulder) - r.armChord(elbow)
	})
}

// readyStance returns the rider, the stance and the moved grips at sag.
func readyStance(n numbers, sex string) (handRider, handStance, complex128) {
	s := handStance{n["trunk-angle"], n["standing-knee"], math.Atan(n["grade"]/100) * 180 / math.Pi}
	move := complex(n["move-x"], n["move-y"])
	return handRiderOf(n, sex), s, (n.grips() + move) * toward(-handBikeOf(n).tilt(n))
}

func TestReadyNumbers(t *testing.T) {
	want := readyByHand("f")(readyRecord)
	r, s, grip := readyStance(readyRecord, "f")
	var cells []tableCell
	k := calctest.Case{Typed: "sex=f " + readyRecord.typed(), Source: independent}
	for o, x := range want {
		k.Want = append(k.Want, calctest.Is(o, x, 1e-5))
	}
	// What a change does: row by row the rider, the stance or the grips are another.
	tall, deep, wide := s, s, r
	tall.trunk -= 5
	deep.knee += 10
	wide.aside += 10 // 20 mm of bar are 10 mm a side
	head := readyRecord["head-angle"] + handBikeOf(readyRecord).tilt(readyRecord)
	for row, other := range []struct {
		rider  handRider
		stance handStance
		move   complex128
	}{
		{r, tall, 0}, {r, deep, 0},
		{r, s, scaled(10, toward(180-head))}, // spacers go up the steering axis
		{r, s, scaled(10, toward(90-head))},  // a stem goes ahead, square to it
		{r, s, 20i}, {r, s, 20}, {wide, s, 0},
	} {
		at := grip + other.move
		cells = append(cells,
			tableCell{"changes", row, "elbow", other.rider.elbowAt(other.stance, at) - r.elbowAt(s, grip),
				measure.Deg},
			tableCell{"changes", row, "room-back", other.rider.back(other.stance, at) - r.back(s, grip), measure.Mm},
			tableCell{"changes", row, "room-forward", other.rider.forward(other.stance, at) - r.forward(s, grip),
				measure.Mm})
	}
	before := grip - scaled(1, complex(readyRecord["move-x"],
		readyRecord["move-y"])*toward(-handBikeOf(readyRecord).tilt(readyRecord)))
	cells = append(cells,
		tableCell{"move", 0, "before", r.elbowAt(s, before), measure.Deg},
		tableCell{"move", 0, "after", r.elbowAt(s, grip), measure.Deg},
		tableCell{"move", 1, "before", r.slack(s, before), measure.Mm},
		tableCell{"move", 1, "after", r.slack(s, grip), measure.Mm})
	cases(t, Ready(), k, cells)
}

// Typed errors are carried through to every number; where no length above the hips
// and no bar was typed, what stands in brings an error of its own.
func TestReadyUncertainty(t *testing.T) {
	sd := numbers{"inseam": 6, "stature": 4, "trochanter-height": 9, "crank-length": 1, "pedal-height": 1.5,
		"sole-height":       2,
		"cleat-behind-ball": 3, "grip-x": 3.5, "grip-y": 2.5, "trunk-angle": 1.2, "standing-knee": 1.7, "grade": 0.8,
		"head-angle": 0.4,
		"reach":      2.2, "stack": 1.8, "sag-front": 3, "sag-rear": 2, "fork-travel": 4, "rear-travel": 5,
		"chainstay": 1.4,
		"bb-drop":   1.1, "fork-offset": 0.9, "front-tyre": 1.3, "rear-tyre": 1.6}
	propagates(t, Ready(), readyRecord, "sex=m",
		sd.with(numbers{"trunk-length": 8, "arm-length": 7, "shoulder-width": 5, "bar-width": 2, "grip-length": 3}),
		readyByHand("m"))

	least := numbers{"inseam": 871, "stature": 1809, "grip-x": 458, "grip-y": 736}
	propagates(t, Ready(), least, "", underGripsSD.with(bodySD("", least)).with(numbers{"inseam": 10, "stature": 5,
		"grip-x": 4, "grip-y": 3,
		"crank-length~": 2.5, "pedal-height~": 2, "sole-height~": 3, "cleat-behind-ball~": 5}), readyByHand(""))
}

// A move in one direction alone leaves the other as it is.
func TestReadyMovesOneWay(t *testing.T) {
	at := numbers{"inseam": 871, "stature": 1809, "grip-x": 458, "grip-y": 736, "sag-front": 0, "sag-rear": 0}
	for key, grip := range map[string]complex128{"move-x": complex(458+21, 736), "move-y": complex(458, 736+21)} {
		r := calctest.Answer(t, Ready(), at.with(numbers{key: 21}).typed())
		assert.InDelta(t, cmplx.Abs(grip), calctest.Value(r, feetToHands), 1e-9, key)
	}
}
