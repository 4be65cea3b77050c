package start

import (
	"plumbline/calculators"
	"plumbline/calculators/drawing"
	"plumbline/calculators/figure"
	"plumbline/calculators/words"
)

// LeverStop is the standing figure of a brake lever that is pulled hard: it has to stop
// before the grip.
func LeverStop() *calculators.Illustration {
	return &calculators.Illustration{Name: "lever-stop", Draw: func(calculators.Values) *drawing.Figure {
		f := &drawing.Figure{
			Title: words.Of("A brake lever pulled hard"),
			Least: 18,
			Description: words.Of(
				"A hand on the grip from the side, one finger pulling the brake lever as hard as it " +
					"can, twice; thin lines show the lever at rest. Right: the lever stops before the grip. Wrong: " +
					"it comes to the grip, so the brake has no more to give.",
			),
		}
		f.Frame(words.Of("Right: it stops before the grip"), pulled(stopsAt)...)
		f.Frame(words.Of("Wrong: it comes to the grip. Do not ride"), pulled(stopBlade)...)
		return f
	}}
}

// What is drawn, mm, by eye: the grip's diameter, the blade's thickness, how far before the
// grip its outer face lies at rest, and where it stops.
const (
	stopGrip, stopBlade = 32.0, 9.0
	stopRest, stopsAt   = 62.0, 32.0
)

// pulled draws the hand with the lever's outer face so far before the grip.
func pulled(reach float64) []drawing.Mark {
	h := figure.HandOnGrip{Thick: stopGrip, Reach: reach, Forearm: 40}
	rest := at(stopGrip/2+stopRest-stopBlade/2, 0)
	marks := append([]drawing.Mark{}, figure.Ghost(drawing.Limb{A: rest.Plus(at(0, 5)), B: rest.Plus(at(0, -5)),
		Ra: stopBlade / 2, Rb: stopBlade / 2})...)
	marks = append(marks, h.Side()...)
	face := at(stopGrip/2+reach-stopBlade/2, 0) // over the fingers, so that it is seen
	marks = append(marks, drawing.Limb{Role: drawing.Hot, Fill: drawing.Sheet, A: face.Plus(at(0, 5)),
		B: face.Plus(at(0, -5)), Ra: stopBlade / 2, Rb: stopBlade / 2})
	marks = append(marks, drawing.Label{Role: drawing.Before, At: rest.Plus(at(0, -stopBlade/2-5)), Side: at(0, -1),
		Text: words.Of("at rest")})
	return append(marks, figure.Arrow(drawing.Hot, rest.Plus(at(0, -26)), at(stopGrip/2+reach-stopBlade/2, -26), 10)...)
}
