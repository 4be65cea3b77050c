package saddle

import (
	"plumbline/calculators"
	"plumbline/calculators/caution"
	"plumbline/calculators/fit"
	"plumbline/calculators/literature"
	"plumbline/calculators/measure"
)

// Dropper answers how much travel fits between frame and saddle height, and what
// binds.
func Dropper() *calculators.Calculator {
	return &calculators.Calculator{
		Name: "dropper-travel", Section: calculators.Saddle,
		Title: "Dropper post", Question: "How much dropper travel fits under your saddle height?",
		Scenario: "The test rider on the test bike, with a post of 180 mm travel on the bench.",
		Inputs: []calculators.Input{
			{Quantity: measure.SaddleHeight, Example: "736"},
			{Quantity: measure.SeatTubeLength, Example: "420"},
			{Quantity: measure.SaddleStack, Example: "48", Assume: fit.UsualSaddleStack.Assume},
			{Quantity: measure.TravelPost, Example: "180", Optional: true},
			{Quantity: measure.PostLength, Example: "490", Optional: true},
			{Quantity: measure.FreeDepth, Example: "255", Optional: true},
			{Quantity: measure.InsertionPost, Example: "110", Optional: true},
			{Quantity: measure.InsertionFrame, Example: "100", Optional: true},
			{Quantity: measure.PostCollar, Example: "28", Assume: fit.UsualPostCollar.Assume},
			{Quantity: measure.PostHead, Example: "26", Assume: fit.UsualPostHead.Assume},
			{Quantity: measure.PostActuator, Example: "32",
				Assume: fit.UsualPostActuator.Assume},
			{Quantity: measure.PostDiameter, Example: "31.6", Optional: true, Folded: true},
		},
		Answers:  []*calculators.Output{longestTravel, postInsertion, depthLeft},
		Workings: []*calculators.Output{roomLeft, overPost, overFrame, travelByRoom, travelByDepth},
		Sources:  []*literature.Source{literature.CFR1512, literature.GUM2008, literature.CommonPractice},
		Cautions: []*caution.Caution{caution.PostInsertion, caution.Torque, caution.HoseCheck, caution.CarbonParts,
			caution.FirstRide},
		Solve:   solveDropper,
		Explain: explainDropper,
	}
}

// What it answers.
var (
	longestTravel = &calculators.Output{Name: "longest-travel", Label: "Longest travel that fits", Unit: measure.Mm,
		Between: "post fully up at your saddle height, to fully down"}
	postInsertion = &calculators.Output{Name: "insertion", Label: "Post inside the frame", Unit: measure.Mm,
		Between: "seat tube’s top edge down to the end of the post’s outer tube, fully up at your saddle height"}
	depthLeft = &calculators.Output{Name: "depth-left", Label: "Depth left below the post", Unit: measure.Mm,
		Between: "the post’s lowest point, actuator included, down to the first obstacle in the tube"}
)

// What each limit leaves of the reader's post, and which travel it would allow.
var (
	roomLeft      = &calculators.Output{Name: "room", Label: "Room above the collar", Unit: measure.Mm}
	overPost      = &calculators.Output{Name: "over-post", Label: "Over the post’s minimum insertion", Unit: measure.Mm}
	overFrame     = &calculators.Output{Name: "over-frame", Label: "Over the frame’s minimum insertion", Unit: measure.Mm}
	travelByRoom  = &calculators.Output{Name: "by-room", Label: "Travel that the room allows", Unit: measure.Mm}
	travelByDepth = &calculators.Output{Name: "by-depth", Label: "Travel that the depth allows", Unit: measure.Mm}
)

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
	exposed   float64 // tube's top edge to the rails at the saddle height
	stands    float64 // the same for the lowest place at or above it where the post can stand
	byRoom    float64 // longest travel that the room above the tube allows
	room      float64 // byRoom less this post's travel
	inside    float64 // how much of the post is below the tube's top edge, actuator included
	insertion float64 // the same without the actuator
	left      float64 // free depth less inside
	byDepth   float64 // longest travel that the free depth allows, for a post built like this one
}

// postOf computes the reader's post. One that is too tall for the room above the tube
// cannot come down to the saddle height: it stands on its collar, higher.
func postOf(v calculators.Values) post {
	hardware := v.Of(measure.PostCollar) + v.Of(measure.PostHead)
	travel, length, free := v.Of(measure.TravelPost), v.Of(measure.PostLength), v.Of(measure.FreeDepth)
	p := post{exposed: fit.Exposed(v.Of(measure.SaddleHeight), v.Of(measure.SeatTubeLength), v.Of(measure.SaddleStack))}
	p.byRoom = fit.TravelForRoom(p.exposed, hardware)
	p.room = p.byRoom - travel
	p.stands = p.exposed
	if v.Has(measure.TravelPost) {
		p.stands = max(p.exposed, hardware+travel)
	}
	p.inside = length - p.stands
	p.insertion = p.inside - v.Of(measure.PostActuator)
	p.left = free - p.inside
	p.byDepth = fit.TravelForDepth(travel, length, free, p.exposed)
	return p
}

func solveDropper(v calculators.Values, out calculators.Numbers) *calculators.Problem {
	p := postOf(v)
	longest := p.byRoom
	if p.byDepth < p.byRoom {
		longest = p.byDepth
	}
	out.Set(longestTravel, longest)
	out.Set(postInsertion, p.insertion)
	out.Set(depthLeft, p.left)
	out.Set(roomLeft, p.room)
	out.Set(overPost, p.insertion-v.Of(measure.InsertionPost))
	out.Set(overFrame, p.insertion-v.Of(measure.InsertionFrame))
	out.Set(travelByRoom, p.byRoom)
	out.Set(travelByDepth, p.byDepth)
	return nil
}
