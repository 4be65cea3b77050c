package sheet

import (
	"plumbline/calculators/caution"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// Group is a part of the bike in the order of work.
type Group words.English

// The groups. The bike comes first because everything hangs on it; then the feet,
// the only fixed contact while pedalling; the saddle hangs from the feet, and the
// cockpit from the saddle and from standing.
const (
	Bike    Group = "Suspension"
	Feet    Group = "Feet"
	Saddle  Group = "Saddle"
	Cockpit Group = "Cockpit"
)

// Setting is one thing on a bike that a rider can set or exchange.
type Setting struct {
	*measure.Quantity
	Group Group

	// Step is the largest step to ride between, in base units; 0 for a part that is
	// exchanged and for what is set at once. Common practice.
	Step float64

	// More and Less say what a greater and a smaller value mean, as an order:
	// "raise", "lower".
	More, Less words.English

	Chapter  string // where the guide tells how, without .md
	Cautions []*caution.Caution
}

// The steps that are small enough to feel and to ride between.
const (
	saddleStep = 5 // mm
	cleatStep  = 2 // mm
	tiltStep   = 1 // degrees
	spacer     = 5 // mm: the usual thin one
	sideStep   = 5 // mm a side, at the bar's ends
)

var (
	post    = []*caution.Caution{caution.PostInsertion, caution.Torque, caution.HoseCheck}
	rails   = []*caution.Caution{caution.Torque, caution.CarbonParts}
	cleats  = []*caution.Caution{caution.Torque, caution.ClipRelease}
	threads = []*caution.Caution{caution.Torque, caution.PedalThread}
	steerer = []*caution.Caution{caution.SteererAndStem, caution.Torque, caution.HoseCheck}
	bar     = []*caution.Caution{caution.Torque, caution.HoseCheck, caution.CarbonParts}
	ends    = []*caution.Caution{caution.NoWayBack, caution.HoseCheck, caution.BrakeCheck}
	levers  = []*caution.Caution{caution.BrakeCheck, caution.Torque}
	springs = []*caution.Caution{caution.AirSpring, caution.SteadyBike}
)

// Settings are everything that the sheet lists, in the order of work.
var Settings = []*Setting{
	{measure.SagFront, Bike, 0, "let air out", "add air", "frame/sag", springs},
	{measure.SagRear, Bike, 0, "let air out", "add air", "frame/sag", springs},

	{measure.Pedals, Feet, 0, "", "", "feet/flat-or-clipped", threads},
	{measure.CrankLength, Feet, 0, "fit longer cranks", "fit shorter cranks", "feet/crank-length", threads},
	{measure.CleatBehindBall, Feet, cleatStep, "cleat back", "cleat forward", "feet/cleat-fore-and-aft", cleats},
	{measure.CleatShift, Feet, cleatStep, "cleat inwards", "cleat outwards", "feet/stance-width", cleats},
	{measure.PedalSpacer, Feet, 0, "add a washer", "take a washer out", "feet/stance-width", threads},

	{measure.TravelPost, Saddle, 0, "fit a longer post", "fit a shorter post", "saddle/dropper-post", post},
	{measure.SaddleHeight, Saddle, saddleStep, "raise", "lower", "saddle/height", post},
	{measure.SaddleSetback, Saddle, saddleStep, "back", "forward", "saddle/fore-and-aft", rails},
	{measure.RailShift, Saddle, saddleStep, "back", "forward", "saddle/fore-and-aft", rails},
	{measure.SaddleTilt, Saddle, tiltStep, "nose down", "nose up", "saddle/tilt", rails},

	{measure.StemLength, Cockpit, 0, "fit a longer stem", "fit a shorter stem", "cockpit/stem-and-spacers", steerer},
	{measure.StemAngle, Cockpit, 0, "fit a steeper stem", "fit a flatter stem", "cockpit/stem-and-spacers", steerer},
	{measure.Spacers, Cockpit, spacer, "raise the stem", "lower the stem", "cockpit/stem-and-spacers", steerer},
	{measure.SpacersAbove, Cockpit, 0, "add above the stem", "take away above the stem",
		"cockpit/stem-and-spacers", steerer},
	{measure.BarRise, Cockpit, 0, "fit a higher bar", "fit a lower bar", "cockpit/bar-roll-and-rise", bar},
	{measure.BarWidth, Cockpit, 2 * sideStep, "wider, half on each side", "narrower, half on each side",
		"cockpit/bar-width", ends},
	{measure.BarRoll, Cockpit, tiltStep, "roll forward", "roll back", "cockpit/bar-roll-and-rise", bar},
	{measure.LeverInset, Cockpit, sideStep, "levers inwards", "levers outwards", "cockpit/levers-and-grips", levers},
	{measure.LeverAngle, Cockpit, 2 * tiltStep, "levers down", "levers up", "cockpit/levers-and-grips", levers},
	{measure.GripDiameter, Cockpit, 0, "fit thicker grips", "fit thinner grips", "cockpit/levers-and-grips", levers},
	{measure.LeverReach, Cockpit, cleatStep, "levers out", "levers in", "cockpit/levers-and-grips", levers},
}

// SettingOf returns the setting of q, nil where it is none.
func SettingOf(q *measure.Quantity) *Setting {
	for _, s := range Settings {
		if s.Quantity == q {
			return s
		}
	}
	return nil
}

// Order says one step of a setting as an order: "raise", and by how much. Up picks
// the greater value.
func (s *Setting) Order(up bool) words.English {
	if up {
		return s.More
	}
	return s.Less
}
