package cockpit

import (
	"math"
	"testing"

	"plumbline/calculators"
	"plumbline/calculators/calctest"
	"plumbline/calculators/measure"
)

// leverByHand solves the forearm of the rider standing and seated, and the shares of
// the hand: a finger is 0.38 of the hand (from memory), two thirds of it lie before the
// joint that bends round the blade (common practice), it lies 0.88 of the hand's
// breadth from the hand's outer edge (from memory), and the grip that people liked best
// was 0.197 of the hand (Kong and Lowe 2005).
func leverByHand(sex string) func(numbers) map[*calculators.Output]float64 {
	return func(n numbers) map[*calculators.Output]float64 {
		n = n.underGrips().complete(readyStandIns).complete(numbers{"finger-length": 0.38 * n["hand-length"],
			"lever-length":  70,
			"grip-diameter": 32})
		r, tilt := handRiderOf(n, sex), handBikeOf(n).tilt(n)
		grip := n.grips() * toward(-tilt)
		s := handStance{trunk: n["trunk-angle"], knee: n["standing-knee"]}
		p, _ := r.stands(s, grip, r.balance(s, grip))
		dip := r.dip(p.shoulder, grip)
		breadth, _ := surveyed("handbreadth", sex, n["stature"])
		want := map[*calculators.Output]float64{
			leverReach: n["finger-length"] * 2 / 3,
			// From the pivot outwards along the bar a blade's length to the finger. The
			// hand lies in the middle of the grip, its outer edge (grip − breadth)/2 from
			// the bar's end, and the finger 0.88 of the breadth from that edge.
			leverInset:      n["lever-length"] - (n["grip-length"] - ((n["grip-length"]-breadth)/2 + 0.88*breadth)),
			gripDiameter:    0.197 * n["hand-length"],
			gripHeld:        0.233 * n["hand-length"], // Hwang and others: 40.9 mm for a hand of 175.5
			leverSpan:       math.NaN(),
			forearmStanding: dip,
			// On its stand the bike has not tipped forward yet, so that the blade, which
			// tips with it, has to point down by less.
			leverAngle:    dip - tilt,
			forearmSeated: math.NaN(),
		}
		if reach, ok := n["lever-reach"]; ok {
			// From the back of the grip through it, and on to the blade's outer face.
			want[leverSpan] = reach + n["grip-diameter"]
		}
		if height, ok := n["saddle-height"]; ok {
			seat := n.sit(sex, tilt)
			want[forearmSeated] = r.dip(seat.shoulder(height, grip, 30), grip)
		}
		return want
	}
}

// leverRecord is the rider with a hand, on a saddle.
var leverRecord = testRider.with(testBike).with(numbers{"hand-length": 179, "finger-length": 71, "lever-length": 67,
	"lever-reach": 58, "grip-diameter": 29.5,
	"trunk-angle": 43, "standing-knee": 53, "saddle-height": 721, "saddle-setback": 158})

func TestLeverNumbers(t *testing.T) {
	want := leverByHand("f")(leverRecord)
	var cells []tableCell
	k := calctest.Case{Typed: "sex=f " + leverRecord.typed(), Source: independent}
	for o, x := range want {
		k.Want = append(k.Want, calctest.Is(o, x, 1e-6))
	}
	cells = append(cells, tableCell{"forearm", 0, "forearm", want[forearmStanding], measure.Deg},
		tableCell{"forearm", 1, "forearm", want[forearmSeated], measure.Deg})
	cases(t, Lever(), k, cells)
}

func TestLeverUncertainty(t *testing.T) {
	sd := numbers{"inseam": 6, "stature": 4, "trochanter-height": 9, "crank-length": 1, "pedal-height": 1.5,
		"sole-height":       2,
		"cleat-behind-ball": 3, "grip-x": 3.5, "grip-y": 2.5, "saddle-height": 3, "saddle-setback": 4,
		"trunk-length": 8,
		"arm-length":   7, "shoulder-width": 5, "bar-width": 2, "grip-length": 3, "head-angle": 0.4, "sag-front": 3,
		"rear-travel": 5,
		"hand-length": 2, "lever-reach": 1.5, "grip-diameter": 0.7, "finger-length": 1.5, "lever-length": 2.5,
		"trunk-angle": 1.1, "standing-knee": 1.6, "hip-off~": 20}
	propagates(t, Lever(), leverRecord, "sex=m", sd, leverByHand("m"))
	least := numbers{"inseam": 871, "stature": 1809, "grip-x": 458, "grip-y": 736, "hand-length": 194,
		"saddle-height": 771}
	propagates(t, Lever(), least, "", underGripsSD.with(bodySD("", least)).with(numbers{"inseam": 10, "stature": 5,
		"grip-x": 4, "grip-y": 3,
		"hand-length": 3, "finger-length~": 4, "lever-length~": 6,
		"crank-length~": 2.5, "pedal-height~": 2, "sole-height~": 3, "cleat-behind-ball~": 5, "hip-off~": 20}),
		leverByHand(""))
}
