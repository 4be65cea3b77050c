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
		Inputs: append([]calculators.Input{
			{Quantity: measure.SaddleHeight, Example: "736"},
			{Quantity: measure.SeatTubeLength, Example: "420"},
			fit.SaddleStackInput("48"),
			{Quantity: measure.TravelPost, Example: "180", Optional: true},
			{Quantity: measure.PostLength, Example: "490", Optional: true},
			{Quantity: measure.FreeDepth, Example: "255", Optional: true},
			{Quantity: measure.InsertionPost, Example: "110", Optional: true},
			{Quantity: measure.InsertionFrame, Example: "100", Optional: true},
		}, append(fit.PostParts(),
			calculators.Input{Quantity: measure.PostDiameter, Example: "31.6", Optional: true})...),
		First:    []*measure.Quantity{measure.PostLength},
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
	longestTravel = &calculators.Output{Name: "longest-travel", Label: "Longest travel that fits",
		Unit: measure.SoldInMm, Between: "post fully up at your saddle height, to fully down"}
	postInsertion = &calculators.Output{Name: "insertion", Label: "Post inside the frame", Unit: measure.Mm,
		Between: "seat tube’s top edge down to the end of the post’s outer tube, fully up at your saddle height"}
	depthLeft = &calculators.Output{Name: "depth-left", Label: "Depth left below the post", Unit: measure.Mm,
		Between: "the post’s lowest point, actuator included, down to the first obstacle in the tube"}
)

// What each limit leaves of the reader's post, and which travel it would allow.
var (
	roomLeft = &calculators.Output{Name: "room", Label: "Room above the collar", Unit: measure.Mm}
	overPost = &calculators.Output{Name: "over-post", Label: "Over the post’s minimum insertion",
		Unit: measure.Mm}
	overFrame = &calculators.Output{Name: "over-frame", Label: "Over the frame’s minimum insertion",
		Unit: measure.Mm}
	travelByRoom  = &calculators.Output{Name: "by-room", Label: "Travel that the room allows", Unit: measure.SoldInMm}
	travelByDepth = &calculators.Output{Name: "by-depth", Label: "Travel that the depth allows", Unit: measure.SoldInMm}
)

func solveDropper(v calculators.Values, out calculators.Numbers) *calculators.Problem {
	p := fit.PostOf(v)
	longest := p.ByRoom
	if p.ByDepth < p.ByRoom {
		longest = p.ByDepth
	}
	out.Set(longestTravel, longest)
	out.Set(postInsertion, p.Insertion)
	out.Set(depthLeft, p.Left)
	out.Set(roomLeft, p.Room)
	out.Set(overPost, p.OverPost)
	out.Set(overFrame, p.OverFrame)
	out.Set(travelByRoom, p.ByRoom)
	out.Set(travelByDepth, p.ByDepth)
	return nil
}
