package fit

import (
	"plumbline/calculators"
	"plumbline/calculators/geometry"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// needsBottomBracket asks for one of the two numbers that place the axles.
var needsBottomBracket = &calculators.Problem{Input: measure.BBDrop.Key, Needed: true,
	Text: words.Of("{0} or {1} is needed: the first stands in the chart, the second is the one that a tape finds.",
		measure.BBDrop.Named(), measure.BBHeight.Named())}

// faults say, for each reason why there is no bike, where to look for the slip.
var faults = []struct {
	fault geometry.Fault
	at    *measure.Quantity
	text  words.Text
}{
	{geometry.HeadAngleRange, measure.HeadAngle, words.Of("The head angle leaves no front wheel to steer: it has " +
		"to lie above 0 and at most at 90 degrees, counted from the ground.")},
	{geometry.SeatAngleRange, measure.SeatAngle, words.Of("The seat angle has to lie between 0 and 180 degrees, " +
		"counted from the ground behind the crank axle.")},
	{geometry.RadiusRange, measure.FrontTyre, words.Of("These rims and tyres leave a wheel without a size. Read " +
		"both numbers off the tyre’s side wall, such as 57-622.")},
	{geometry.ChainstayTooShort, measure.Chainstay, words.Of("The chainstay is shorter than the rear axle’s height " +
		"above the crank axle, so the rear wheel has no place. Check the chainstay, the drop and the wheels.")},
	{geometry.ForkTooShort, measure.Stack, words.Of("With these numbers the head tube’s top lies below the front " +
		"axle. Check the stack and the drop, and that none of them is in another unit.")},
	{geometry.WheelsOverlap, measure.Reach, words.Of("With these numbers the wheels overlap. Check reach, head " +
		"angle, chainstay and the wheels.")},
	{geometry.SeatTubeRange, measure.SeatTubeAngle, words.Of("The seat tube’s own angle has to lie between 0 and " +
		"180 degrees.")},
}

// NoBike says in the reader's words why a chart or a change has no bike.
func NoBike(err error) *calculators.Problem {
	for _, f := range faults {
		if err == f.fault {
			return &calculators.Problem{Input: f.at.Key, Text: f.text}
		}
	}
	return &calculators.Problem{Text: words.Of("These numbers describe no bike: a length or an angle is missing or " +
		"far out of range.")}
}
