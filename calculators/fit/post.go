package fit

import (
	"math"

	"plumbline/calculators"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// A dropper post has three parts that matter here. The collar stands on the seat
// tube; the tube that moves comes out of it by the travel; the head on top holds the
// saddle's rails. A fixed post is one of no travel. All lengths are along the seat
// line, in mm.

// Exposed returns how far the rails are above the seat tube's top edge, in mm.
//
//	saddle height − seat tube − saddle stack
//
// saddleHeight: bottom bracket to the saddle's top. seatTube: bottom bracket to the
// tube's top edge. saddleStack: rails to the saddle's top.
//
// Source: plain lengths; common practice.
func Exposed(saddleHeight, seatTube, saddleStack float64) float64 {
	return saddleHeight - seatTube - saddleStack
}

// TravelForRoom returns the longest travel, in mm, that the room above the frame
// allows: what the post's fixed parts leave of it.
//
//	exposed − hardware
//
// exposed: see Exposed. hardware: height of the post's collar and head.
//
// Source: plain lengths; common practice.
func TravelForRoom(exposed, hardware float64) float64 { return exposed - hardware }

// TravelForDepth returns the longest travel, in mm, of a post that is built like a
// known one, so that its lowest point just clears what is in the seat tube.
//
//	travel + (free depth + exposed − length) / 2
//
// travel and length are the known post's; its length goes from the rails down to
// its lowest point, actuator included. A post with more travel is longer by that
// above the collar and by as much again below it, hence the half.
//
// Source: plain lengths; common practice.
func TravelForDepth(travel, length, freeDepth, exposed float64) float64 {
	return travel + (freeDepth+exposed-length)/2
}

// MarkAtLeast returns how far above the post's lower end the minimum-insertion
// mark has to lie, in mm.
//
//	2·diameter
//
// Source: 16 CFR 1512.15(b): at least two post diameters. A maker's mark often
// lies higher, and it is the maker's that counts.
func MarkAtLeast(diameter float64) float64 { return 2 * diameter }

// Post is a post in its tube, mm; NaN for what is not known.
type Post struct {
	Exposed   float64 // tube's top edge to the rails at the saddle height
	Stands    float64 // the same for the lowest place at or above it where the post can stand
	ByRoom    float64 // longest travel that the room above the tube allows
	Room      float64 // ByRoom less this post's travel
	Inside    float64 // how much of the post is below the tube's top edge, actuator included
	Insertion float64 // the same without the actuator, which the frame does not hold
	Left      float64 // free depth less Inside
	ByDepth   float64 // longest travel that the free depth allows, for a post built like this one
	OverPost  float64 // Insertion less the post's own minimum
	OverFrame float64 // Insertion less the frame's minimum
	Deeper    float64 // the deeper of the two minimums; known where both are
	Rise      float64 // how much higher the post may go: Insertion less Deeper
}

// PostOf computes the reader's post. One that is too tall for the room above the tube
// cannot come down to the saddle height: it stands on its collar, higher.
func PostOf(v calculators.Values) Post {
	hardware := v.Of(measure.PostCollar) + v.Of(measure.PostHead)
	travel, length := v.Of(measure.TravelPost), v.Of(measure.PostLength)
	p := Post{Exposed: Exposed(v.Of(measure.SaddleHeight), v.Of(measure.SeatTubeLength), v.Of(measure.SaddleStack)),
		Left: math.NaN(), ByDepth: math.NaN()}
	p.ByRoom = TravelForRoom(p.Exposed, hardware)
	p.Room = p.ByRoom - travel
	p.Stands = p.Exposed
	if v.Has(measure.TravelPost) {
		p.Stands = max(p.Exposed, hardware+travel)
	}
	p.Inside = length - p.Stands
	p.Insertion = p.Inside - v.Of(measure.PostActuator)
	if v.Declares(measure.FreeDepth) {
		free := v.Of(measure.FreeDepth)
		p.Left, p.ByDepth = free-p.Inside, TravelForDepth(travel, length, free, p.Exposed)
	}
	post, frame := v.Of(measure.InsertionPost), v.Of(measure.InsertionFrame)
	p.OverPost, p.OverFrame = p.Insertion-post, p.Insertion-frame
	p.Deeper = math.Max(post, frame)
	p.Rise = p.Insertion - p.Deeper
	return p
}

// SaddleStackInput asks for the height of the saddle above its rails.
func SaddleStackInput(example string) calculators.Input {
	return calculators.Input{Quantity: measure.SaddleStack, Example: example,
		Assume: calculators.Fixed(48, 4, "usual for a trail saddle")}
}

// PostParts ask for the parts of a post that never move, and for what sticks out below
// it. The calculator has to ask for the post's travel too: one of zero is a fixed post,
// without a collar and with nothing below it.
func PostParts() []calculators.Input {
	return []calculators.Input{
		{Quantity: measure.PostCollar, Example: "28",
			Assume: ofDropper(28, 6, "usual for a dropper post")},
		{Quantity: measure.PostHead, Example: "26",
			Assume: calculators.Fixed(26, 5, "usual for a seat post")},
		{Quantity: measure.PostActuator, Example: "32",
			Assume: ofDropper(35, 10, "usual for a dropper post; measure it before you trust an insertion")},
	}
}

// ofDropper assumes a length that only a post with travel has.
func ofDropper(value, sd float64, from words.English) func(calculators.Values) (calculators.Assumption, bool) {
	return func(v calculators.Values) (calculators.Assumption, bool) {
		if v.Given(measure.TravelPost) && v.Nominal(measure.TravelPost) == 0 {
			return calculators.Assumption{From: "because a fixed post has none"}, true
		}
		return calculators.Assumption{Value: value, SD: sd, From: from}, true
	}
}
