package saddle

import (
	"plumbline/calculators"
	"plumbline/calculators/caution"
	"plumbline/calculators/literature"
	"plumbline/calculators/measure"
)

// Width answers how wide a saddle has to be for the bones it carries.
func Width() *calculators.Calculator {
	return &calculators.Calculator{
		Name: "saddle-width", Section: calculators.Saddle,
		Title: "Saddle width", Question: "How wide should the saddle be for your sit bones?",
		Scenario: "The test rider: 112 mm between the centres of the two dents, leaning forward.",
		Inputs: []calculators.Input{
			{Quantity: measure.SitBoneWidth, Example: "112"},
			{Quantity: measure.SitBoneRead, Example: "centres"},
			{Quantity: measure.Leaning, Example: "leaning",
				Assume: calculators.Fixed(leaningForward, 0, "as on most trail bikes")},
			{Quantity: measure.SitBoneEdges, Assume: edgesBeyondCentres},
		},
		First:    []*measure.Quantity{measure.Leaning},
		Answers:  []*calculators.Output{saddleWidth},
		Workings: []*calculators.Output{boneEdges, boneCentres},
		Sources: []*literature.Source{literature.Lin2023, literature.Potter2008, literature.Schwarzer2002,
			literature.GUM2008, literature.CommonPractice},
		Cautions: []*caution.Caution{caution.Numbness, caution.Emergency, caution.Torque, caution.FirstRide,
			caution.Pain},
		Solve:   solveWidth,
		Explain: explainWidth,
	}
}

// What it answers: the width, and both ways to measure the sit bones.
var (
	saddleWidth = &calculators.Output{Name: "saddle-width", Label: "Saddle width to try", Unit: measure.SoldInMm,
		Between: "across the saddle at its widest"}
	boneEdges   = &calculators.Output{Name: "edges", Label: "Outer edges of the sit bones", Unit: measure.Mm}
	boneCentres = &calculators.Output{Name: "centres", Label: "Their centres", Unit: measure.Mm}
)

// edgesBeyondCentres assumes how much further apart the sit bones' outer edges are than
// their centres, where only the centres were measured.
func edgesBeyondCentres(v calculators.Values) (calculators.Assumption, bool) {
	const from = "because the two ways of measuring differ by 3 to 4 cm: our inference"
	return calculators.Assumption{Value: 35, SD: 5, From: from}, v.Is(measure.SitBoneRead, "centres")
}

// leaningForward is the index of that choice of measure.Leaning.
const leaningForward = 1

// The widths that saddles are sold in, mm, and how far around the answer a saddle
// is worth trying: common practice.
const (
	widthSoldFrom, widthSoldTo = 125, 175
	widthRange                 = 10
)

// WidthFor returns the saddle's width for the outer edges of the sit bones, in
// mm, for a rider who sits upright.
//
//	edges + 10
//
// Source: Lin, Wang and Chen 2023, J Sports Sci Med 22:424: in ten women whose
// bones measured 155 ± 14 mm the best pressure and comfort.
func WidthFor(edges float64) float64 { return edges + 10 }

// leanLess returns by how much less of the bones touches when the trunk leans, in
// mm: 0 upright, 10 leaning forward, 20 low and stretched. The further the pelvis
// tips, the nearer together the parts that carry. Common practice, untested.
func leanLess(leaning string) float64 {
	switch leaning {
	case "upright":
		return 0
	case "low":
		return 20
	}
	return 10
}

func solveWidth(v calculators.Values, out calculators.Numbers) *calculators.Problem {
	edges := v.Of(measure.SitBoneWidth)
	if v.Is(measure.SitBoneRead, "centres") {
		out.Set(boneCentres, edges)
		edges += v.Of(measure.SitBoneEdges)
	} else if v.Has(measure.SitBoneEdges) {
		out.Set(boneCentres, edges-v.Of(measure.SitBoneEdges))
	}
	out.Set(saddleWidth, WidthFor(edges)-leanLess(v.Choice(measure.Leaning)))
	out.Set(boneEdges, edges)
	return nil
}
