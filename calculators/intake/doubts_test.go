package intake_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"plumbline/calculators/intake"
	"plumbline/calculators/record"
)

// TestEveryErrorWidensWhatIsUsual checks the span in which a hip bone goes with an
// inside leg of 800 mm by hand. Lines: ANSUR II, as body prints them; a value is
// doubted from three standard deviations on.
//
//	men    77.9 + 0.9729·800 = 856.22, SD 19.3; leg ±12 brings 0.9729·12 = 11.67, hip ±20
//	       √(19.3² + 11.67² + 20²) = √(372.49 + 136.30 + 400) = 30.15; 3·30.15 = 90.44
//	       765.8 to 946.7
//	women  113.7 + 0.9352·800 = 861.86, SD 15.9; leg 0.9352·12 = 11.22, hip 20
//	       √(252.81 + 125.94 + 400) = 27.91; 3·27.91 = 83.72
//	       778.1 to 945.6
//
// Without the survey's spread, the leg's or the hip's own error the men's half span
// would be 69.5, 83.4 or 67.7 mm, and the values just inside would be doubted.
func TestEveryErrorWidensWhatIsUsual(t *testing.T) {
	const men, women = "766\u00a0mm to 947\u00a0mm would be usual", "778\u00a0mm to 946\u00a0mm would be usual"
	for _, c := range []struct{ text, says string }{
		{"sex=m&inseam=800±12&trochanter-height=765±20", men},
		{"sex=m&inseam=800±12&trochanter-height=767±20", ""},
		{"sex=m&inseam=800±12&trochanter-height=946±20", ""},
		{"sex=m&inseam=800±12&trochanter-height=948±20", men},
		{"sex=f&inseam=800±12&trochanter-height=777±20", women},
		{"sex=f&inseam=800±12&trochanter-height=779±20", ""},
	} {
		agrees(t, c.text, c.says)
	}
}

// The joint of the little toe may lie ahead of the other by three standard deviations
// of the difference: 3·√(3² + 4²) = 15 mm.
func TestBallJointsMaySwapWithinTheirErrors(t *testing.T) {
	agrees(t, "heel-to-ball-inner=180±4&heel-to-ball-outer=194±3", "")
	agrees(t, "heel-to-ball-inner=180±4&heel-to-ball-outer=196±3", "196\u00a0mm against 180\u00a0mm")
}

// With a leg of 800 mm the oldest rule gives 0.883·800 = 706.4 mm, and a tenth of the
// leg, 80 mm, more or less is let pass: 626.4 to 786.4. Above that it was taken from
// the pedal if taking the crank off brings it nearer, that is below half a crank's
// length above the limit.
func TestASaddleIsComparedWithTheLeg(t *testing.T) {
	for _, c := range []struct{ text, says string }{
		{"saddle-height=786&crank-length=150", ""},
		{"saddle-height=790&crank-length=165", "from the crank axle it would then be 625\u00a0mm"},
		// 80.6 mm too much, but 175 mm less would be 94.4 mm too little.
		{"saddle-height=787&crank-length=175", ""},
		{"saddle-height=800", "from the crank axle it would then be 630\u00a0mm"}, // with a crank of 170
		{"saddle-height=627", ""},
		{"saddle-height=626", "about 706\u00a0mm would be usual"},
	} {
		agrees(t, "inseam=800&"+c.text, c.says)
	}
}

// agrees demands that a record raises one doubt that says something, or none.
func agrees(t *testing.T, text, says string) {
	t.Helper()
	r, _ := record.Decode(text)
	doubts := intake.Doubts(r)
	if says == "" {
		assert.Empty(t, said(doubts), text)
		return
	}
	if assert.Len(t, doubts, 1, text) {
		assert.Contains(t, said(doubts), says, text)
	}
}
