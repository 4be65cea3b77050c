package saddle

import (
	"math"

	"plumbline/calculators"
	"plumbline/calculators/caution"
	"plumbline/calculators/literature"
	"plumbline/calculators/measure"
)

// Dropper answers how much travel fits between frame and saddle height, and what
// binds.
func Dropper() *calculators.Calculator {
	return &calculators.Calculator{
		Name: "dropper-travel", Section: calculators.Saddle,
		Title: "Dropper post", Question: "How much dropper travel fits under your saddle height?",
		Scenario: "Larch Hollow’s test rider on the test bike, with a post of 180 mm travel on the bench.",
		Inputs: []calculators.Input{
			{Quantity: measure.SaddleHeight, Example: "735"},
			{Quantity: measure.SeatTubeLength, Example: "420"},
			{Quantity: measure.SaddleStack, Example: "48", Assume: calculators.Fixed(48, 4, "usual for a trail saddle")},
			{Quantity: measure.TravelPost, Example: "180", Optional: true},
			{Quantity: measure.PostLength, Example: "490", Optional: true},
			{Quantity: measure.FreeDepth, Example: "255", Optional: true},
			{Quantity: measure.InsertionPost, Example: "110", Optional: true},
			{Quantity: measure.InsertionFrame, Example: "100", Optional: true},
			{Quantity: measure.PostCollar, Example: "28", Assume: calculators.Fixed(28, 6, "usual for a dropper post")},
			{Quantity: measure.PostHead, Example: "26", Assume: calculators.Fixed(26, 5, "usual for a dropper post")},
			{Quantity: measure.PostActuator, Example: "32", Assume: calculators.Fixed(35, 10, "usual for a dropper post; measure it before you trust an insertion")},
			{Quantity: measure.PostDiameter, Example: "31.6", Optional: true, Folded: true},
		},
		Readings: []calculators.Measured{
			{Name: "longest-travel", Label: "Longest travel that fits", Unit: measure.Mm,
				Between: "post fully up at your saddle height, to fully down"},
			{Name: "insertion", Label: "Post inside the frame", Unit: measure.Mm,
				Between: "seat tube’s top edge down to the end of the post’s outer tube, fully up at your saddle height"},
			{Name: "depth-left", Label: "Depth left below the post", Unit: measure.Mm,
				Between: "the post’s lowest point, actuator included, down to the first obstacle in the tube"},
		},
		Workings: []calculators.Measured{
			{Name: "room", Label: "Room above the collar", Unit: measure.Mm},
			{Name: "over-post", Label: "Over the post’s minimum insertion", Unit: measure.Mm},
			{Name: "over-frame", Label: "Over the frame’s minimum insertion", Unit: measure.Mm},
			{Name: "by-room", Label: "Travel that the room allows", Unit: measure.Mm},
			{Name: "by-depth", Label: "Travel that the depth allows", Unit: measure.Mm},
		},
		Sources:  []*literature.Source{literature.CFR1512, literature.GUM2008, literature.CommonPractice},
		Cautions: []*caution.Caution{caution.PostInsertion, caution.Torque, caution.HoseCheck, caution.CarbonParts, caution.FirstRide},
		Solve:    solveDropper,
		Explain:  explainDropper,
	}
}

// TravelForRoom returns the longest travel, in mm, that the room above the frame
// allows: what the fixed parts leave of it.
//
//	saddle height − seat tube − saddle stack − hardware
//
// hardware: collar and head of the post. All mm, along the seat line.
//
// Source: plain lengths; common practice.
func TravelForRoom(saddleHeight, seatTube, saddleStack, hardware float64) float64 {
	return saddleHeight - seatTube - saddleStack - hardware
}

// MarkAtLeast returns how far above the post's lower end the minimum-insertion
// mark has to lie, in mm.
//
//	2·diameter
//
// Source: 16 CFR 1512.15(b): at least two post diameters. A maker's mark often
// lies higher, and it is the maker's that counts.
func MarkAtLeast(diameter float64) float64 { return 2 * diameter }

// post is a post in its tube, mm; NaN for what is not known.
type post struct {
	exposed   float64 // tube's top edge to the rail clamp at the saddle height
	stands    float64 // the same for the post as it can stand
	byRoom    float64 // travel that the room allows
	room      float64 // what is left of it above this post
	all       float64 // below the tube's top edge, actuator included
	insertion float64 // the same without the actuator
	left      float64 // free depth less all
	byDepth   float64 // travel of a longer or shorter post of the same build
}

// postOf reads a post. A post that is too tall for the room stands on its collar.
func postOf(v calculators.Values) post {
	hardware := v.Of(measure.PostCollar) + v.Of(measure.PostHead)
	p := post{
		exposed: v.Of(measure.SaddleHeight) - v.Of(measure.SeatTubeLength) - v.Of(measure.SaddleStack),
		byRoom:  TravelForRoom(v.Of(measure.SaddleHeight), v.Of(measure.SeatTubeLength), v.Of(measure.SaddleStack), hardware),
	}
	travel, length, free := v.Of(measure.TravelPost), v.Of(measure.PostLength), v.Of(measure.FreeDepth)
	p.room = p.byRoom - travel
	p.stands = p.exposed
	if needs := hardware + travel; needs > p.stands {
		p.stands = needs
	}
	p.all = length - p.stands
	p.insertion = p.all - v.Of(measure.PostActuator)
	p.left = free - p.all
	// A post of the same build with more travel is longer by that above the
	// frame and by as much again inside it.
	p.byDepth = travel + (free+p.exposed-length)/2
	return p
}

func solveDropper(v calculators.Values, out []float64) *calculators.Problem {
	p := postOf(v)
	out[0] = p.byRoom
	if p.byDepth < p.byRoom {
		out[0] = p.byDepth
	}
	out[1], out[2] = p.insertion, p.left
	out[3] = p.room
	out[4] = p.insertion - v.Of(measure.InsertionPost)
	out[5] = p.insertion - v.Of(measure.InsertionFrame)
	out[6], out[7] = p.byRoom, p.byDepth
	for i, x := range out {
		if math.IsInf(x, 0) {
			out[i] = math.NaN()
		}
	}
	return nil
}
