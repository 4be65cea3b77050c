package start

import (
	"plumbline/calculators"
	"plumbline/calculators/caution"
	"plumbline/calculators/fit"
	"plumbline/calculators/literature"
	"plumbline/calculators/measure"
)

// Depth answers how much of the seat post is inside the frame, which limit counts, and
// how much higher the post may go.
func Depth() *calculators.Calculator {
	return &calculators.Calculator{
		Name: "post-depth", Section: calculators.Start,
		Title: "Post in the frame", Question: "How much of your post is inside the frame, and how much higher may " +
			"it go?",
		Scenario: "The test rider on the test bike, with the post that is on the bench in the dropper chapter.",
		Inputs: append([]calculators.Input{
			{Quantity: measure.SaddleHeight, Example: "736"},
			{Quantity: measure.SeatTubeLength, Example: "420"},
			fit.SaddleStackInput("48"),
			{Quantity: measure.PostLength, Example: "490"},
			{Quantity: measure.TravelPost, Example: "180", Optional: true},
			{Quantity: measure.InsertionPost, Example: "110", Optional: true},
			{Quantity: measure.InsertionFrame, Example: "100", Optional: true},
		}, append(fit.PostParts(),
			calculators.Input{Quantity: measure.PostDiameter, Example: "31.6", Optional: true})...),
		First:    []*measure.Quantity{measure.InsertionPost, measure.InsertionFrame},
		Answers:  []*calculators.Output{insideFrame, deeperMinimum, mayRise, highestSaddle},
		Workings: []*calculators.Output{overPost, overFrame},
		Sources:  []*literature.Source{literature.CFR1512, literature.GUM2008, literature.CommonPractice},
		Cautions: []*caution.Caution{caution.PostInsertion, caution.Torque, caution.CarbonParts, caution.FirstRide},
		Solve:    solveDepth,
		Explain:  explainDepth,
	}
}

// What it answers.
var (
	insideFrame = &calculators.Output{Name: "insertion", Label: "Post inside the frame", Unit: measure.Mm,
		Between: "seat tube’s top edge down to the end of the post’s outer tube, at your saddle height"}
	deeperMinimum = &calculators.Output{Name: "deeper-minimum", Label: "The limit that counts", Unit: measure.Mm,
		Between: "seat tube’s top edge down to where the post has to reach at least"}
	mayRise = &calculators.Output{Name: "may-rise", Label: "It may still go up by", Unit: measure.Mm,
		Between: "the post as it is, up to where it only just meets the limit that counts"}
	highestSaddle = &calculators.Output{Name: "highest-saddle", Label: "Highest saddle with this post",
		Unit:    measure.Mm,
		Between: "crank axle to saddle top, the post just at the limit that counts", Folded: true}
)

// What the post has to spare of each limit.
var (
	overPost  = &calculators.Output{Name: "over-post", Label: "Over the post’s minimum insertion", Unit: measure.Mm}
	overFrame = &calculators.Output{Name: "over-frame", Label: "Over the frame’s minimum insertion", Unit: measure.Mm}
)

func solveDepth(v calculators.Values, out calculators.Numbers) *calculators.Problem {
	p := fit.PostOf(v)
	out.Set(insideFrame, p.Insertion)
	out.Set(deeperMinimum, p.Deeper)
	out.Set(mayRise, p.Rise)
	out.Set(highestSaddle, v.Of(measure.SeatTubeLength)+p.Stands+v.Of(measure.SaddleStack)+p.Rise)
	out.Set(overPost, p.OverPost)
	out.Set(overFrame, p.OverFrame)
	return nil
}
