package cockpit

import (
	"math"

	"plumbline/calculators"
	"plumbline/calculators/drawing"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// leverMotion turns the lever round the bar: the hand goes with it, and the wrist bends.
func leverMotion() *calculators.Motion {
	return &calculators.Motion{Name: "lever-turns",
		Title: words.Of("The lever turns on the bar, and your wrist bends"),
		Description: words.Of("A hand on a grip from the side, one finger on the brake lever. The forearm keeps its " +
			"direction, the one you have standing ready. The hand follows the lever, so the wrist is straight at one " +
			"angle of the lever only."),
		Label: "Turn the lever down from level", Unit: measure.Deg, From: -10, To: 70, Step: 1,
		States: []float64{0, 20, 40, 60}, Least: 11,
		Draw: drawLeverAt,
	}
}

func drawLeverAt(v calculators.Values, r *calculators.Result, at float64) drawing.Frame {
	straight := float64(r.At(leverAngle).Value)
	if math.IsNaN(straight) {
		straight = forearmDrawn
	}
	bend := straight - at
	h := holding(v)
	h.Forearm = 110
	h.Turn, h.Bend = -at, -bend
	h.Grip = h.Wrist().Times(-1)
	f := drawing.Frame{Low: drawing.Point{X: -130, Y: -150}, High: drawing.Point{X: 180, Y: 90}}
	below, by := measure.Degrees(math.Round(at)), whole(measure.Degrees(math.Abs(math.Round(bend))))
	below.Extra = -1
	switch {
	case math.Abs(bend) < 0.5:
		f.Caption = words.Of("Lever at {0}: wrist straight", below)
	case bend > 0:
		f.Caption = words.Of("Lever at {0}: wrist bent back {1}", below, by)
	default:
		f.Caption = words.Of("Lever at {0}: wrist arched {1}", below, by)
	}
	f.Marks = append(h.Side(), wristLines(drawing.Point{}, -straight, h.Turn, 130, h.Length)...)
	return f
}
