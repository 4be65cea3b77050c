package fit

import (
	"plumbline/calculators"
	"plumbline/calculators/words"
)

// What a bike, a shoe or a posture is taken to be where nobody measured it: one value
// for each, which every calculator, figure and sheet takes from here, so that one record
// has one number for one thing. Values are in base units; SD is the standard
// uncertainty. All of it is common practice for trail bikes unless it says otherwise.
var (
	// Legs and feet.
	usualCrank = usual{170, 2.5, "the length most adult bikes are sold with"}
	clipPedal  = usual{15, 2, "usual for clipped shoes"}
	clipSole   = usual{15, 3, "usual for clipped shoes"}
	clipCleat  = usual{0, 5, "usual for clipped shoes"}
	flatPedal  = usual{10, 2, "usual for flat pedals"}
	flatSole   = usual{12, 3, "usual for flat pedals"}
	flatCleat  = usual{20, 5, "usual for flat pedals"}

	UsualPedalWidth     = usual{105, 8, "usual for a trail pedal"}
	UsualPedalThickness = usual{16, 3, "usual for a trail pedal"}
	UsualQFactor        = usual{175, 5, "usual for a trail crankset"}

	// The frame and the wheels.
	UsualHeadAngle = usual{65.5, 1, "usual on a recent trail bike"}
	UsualSeatAngle = usual{76, 1, "usual on a recent trail bike"}
	UsualChainstay = usual{437, 8, "usual on a recent trail bike"}
	usualDrop      = usual{32, 5, "usual on a recent trail bike"}
	usualOffset    = usual{44, 4, "usual on a recent 29 inch trail fork"}
	usualRim       = usual{622, 0, "the 29 inch size of most trail bikes"}
	usualTyre      = usual{61, 3, "a 2.4 inch tyre, usual on a trail bike"}

	// The suspension.
	UsualForkTravel = usual{150, 15, "usual on a trail bike"}
	UsualRearTravel = usual{140, 15, "usual on a trail bike"}
	UsualSagFront   = usual{20, 4, "usual for a fork, from common practice"}
	UsualSagRear    = usual{28, 4, "usual for the rear, from common practice"}

	// Saddle and post.
	UsualSaddleStack  = usual{48, 4, "usual for a trail saddle"}
	UsualPostCollar   = usual{28, 6, "usual for a dropper post"}
	UsualPostHead     = usual{26, 5, "usual for a dropper post"}
	UsualPostActuator = usual{35, 10, "usual for a dropper post; measure it before you trust an insertion"}

	// Stem, bar and grips.
	UsualHeadset   = usual{10, 4, "a usual bearing cover, from common practice"}
	UsualStemClamp = usual{40, 2, "usual for a short stem"}
	UsualBarSweep  = usual{38, 8, "what 8 degrees of back sweep make on a usual bar"}
	UsualBackSweep = usual{8, 1, "usual on a trail bar"}
	UsualBar       = usual{780, 20, "usual on a recent trail bike"}
	UsualGrip      = usual{130, 8, "a usual grip, with the hand in its middle"}
	UsualGripWidth = usual{32, 2, "a usual grip; the span is certain only with yours"}

	// Postures.
	UsualSeatedTrunk = usual{60, 5, "usual for seated riding on a trail bike"}
	UsualElbow       = usual{SeatedElbow, 0, "soft elbows, common practice"}
)

// usual is such a value, with its standard uncertainty and where it comes from.
type usual struct {
	Value, SD float64
	From      words.English
}

// Assume stands in for an input of the reader's.
func (u usual) Assume(calculators.Values) (calculators.Assumption, bool) {
	return calculators.Assumption(u), true
}

// Exact is the same without its error, for answers that move by less than a tenth of
// their own ± with it.
func (u usual) Exact(v calculators.Values) (calculators.Assumption, bool) {
	u.SD = 0
	return u.Assume(v)
}

// Exact returns inputs of which what stands in carries no error: for answers that move
// by less than a tenth of their own ± with it.
func Exact(inputs []calculators.Input) []calculators.Input {
	for i := range inputs {
		assume := inputs[i].Assume
		if assume == nil {
			continue
		}
		inputs[i].Assume = func(v calculators.Values) (calculators.Assumption, bool) {
			a, ok := assume(v)
			a.SD = 0
			return a, ok
		}
	}
	return inputs
}
