package saddle

import (
	"math"

	"plumbline/calculators"
	"plumbline/calculators/drawing"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// bonesDrawn are the sit bones of the picture where nobody measured: the scenario's
// rider's, between the centres, and how much further apart the outer edges are, mm.
const bonesDrawn, edgesDrawn = 112, 35

// widthStep is by how much the wrong saddles of the picture differ from the right one, mm.
const widthStep = 45

// BonesOnSaddles is the standing figure of sit bones on three widths, from behind.
func BonesOnSaddles() *calculators.Illustration {
	return &calculators.Illustration{Name: "sit-bones-on-saddles",
		Inputs: []calculators.Input{{Quantity: measure.SitBoneWidth, Optional: true},
			{Quantity: measure.SitBoneRead, Optional: true}, {Quantity: measure.Leaning, Optional: true}},
		Draw: drawBones}
}

func drawBones(v calculators.Values) *drawing.Figure {
	edges := float64(bonesDrawn + edgesDrawn)
	if v.Has(measure.SitBoneWidth) && v.Has(measure.SitBoneRead) {
		edges = v.Of(measure.SitBoneWidth)
		if v.Is(measure.SitBoneRead, "centres") {
			edges += edgesDrawn
		}
		edges = math.Min(math.Max(edges, 90), 220)
	}
	right := WidthFor(edges) - leanLess(v.Choice(measure.Leaning))
	f := &drawing.Figure{
		Title: words.Of("Sit bones on three saddles, from behind"),
		Description: words.Of(
			"The lower end of a pelvis from behind on three saddles; the outer edges of the sit bones "+
				"lie {0} apart. On a saddle of {1} both bones hang over its sides, and the middle carries. One of {2} "+
				"carries both. One of {3} spreads the thighs and rubs them.",
			measure.Millimetres(edges),
			measure.Millimetres(right-widthStep),
			measure.Millimetres(right),
			measure.Millimetres(right+widthStep),
		),
		Least: 7.5,
	}
	for _, state := range []struct {
		caption words.Text
		width   float64
	}{
		{words.Of("{0}: too narrow", measure.Millimetres(right-widthStep)), right - widthStep},
		{words.Of("{0}: right", measure.Millimetres(right)), right},
		{words.Of("{0}: too wide", measure.Millimetres(right+widthStep)), right + widthStep},
	} {
		f.Frame(state.caption, bonesOn(edges, state.width)...)
	}
	return f
}

// bonesOn draws sit bones with their outer edges apart on a saddle of a width, all in mm,
// from behind. The saddle's top is at height 0.
func bonesOn(edges, width float64) []drawing.Mark {
	half, outer := width/2, edges/2
	both := func(x, y float64) [2]drawing.Point { return [2]drawing.Point{{X: -x, Y: y}, {X: x, Y: y}} }
	// Where the saddle ends inside the bones, they sink beside it.
	low := 0.0
	if half < outer-14 {
		low = -10
	}
	var marks []drawing.Mark
	// Thighs and seat, from behind.
	thigh := math.Max(outer+62, half+30)
	marks = append(
		marks,
		drawing.Line{Role: drawing.Body, Pen: drawing.Thin, Fill: drawing.Wash, Closed: true, Smooth: true,
			Points: []drawing.Point{
				{
					X: -thigh + 34,
					Y: 150,
				}, {X: -thigh, Y: 80}, {X: -thigh + 4, Y: 0}, {X: -thigh - 2, Y: -95}, {X: -thigh + 30, Y: -118},
				{
					X: -half - 2,
					Y: -95,
				}, {X: -half + 4, Y: -24}, {X: -half + 26, Y: 4}, {Y: 10}, {X: half - 26, Y: 4}, {X: half - 4, Y: -24},
				{
					X: half + 2,
					Y: -95,
				}, {X: thigh - 30, Y: -118}, {X: thigh + 2, Y: -95}, {X: thigh - 4, Y: 0}, {X: thigh, Y: 80},
				{X: thigh - 34, Y: 150}}},
	)
	// The saddle cut across.
	marks = append(marks, drawing.Line{Role: drawing.Ink, Fill: drawing.Sheet, Closed: true, Smooth: true,
		Points: []drawing.Point{
			{X: -half, Y: -20},
			{X: -half + 10, Y: -5},
			{X: -half + 30, Y: -1},
			{X: -12, Y: -1},
			{Y: -5},
			{X: 12, Y: -1},
			{X: half - 30, Y: -1},
			{X: half - 10, Y: -5},
			{X: half, Y: -20},
			{X: half - 12, Y: -34},
			{X: 0, Y: -40},
			{X: -half + 12, Y: -34},
		}})
	for _, x := range both(22, 0) {
		marks = append(
			marks,
			drawing.Circle{Role: drawing.Ink, Fill: drawing.Sheet, Centre: drawing.Point{X: x.X, Y: -56}, Radius: 4},
		)
	}
	for _, side := range [2]float64{-1, 1} {
		at := func(x, y float64) drawing.Point { return drawing.Point{X: side * x, Y: low + y} }
		c := outer - 17.5
		marks = append(
			marks,
			// Sit bone, its branch to the front and the hip bone above it, cut off.
			drawing.Line{
				Role:   drawing.Body,
				Pen:    drawing.Heavy,
				Fill:   drawing.Hatch,
				Closed: true,
				Smooth: true,
				Points: []drawing.Point{
					at(
						outer,
						16,
					), at(c+6, 2), at(c-10, 4), at(c-22, 24), at(c-34, 52), at(8, 76), at(10, 96), at(c-18, 92),
					at(c+4, 84),
					at(c+18, 120), at(c+44, 140), at(c+52, 104), at(c+34, 74), at(outer+2, 44)},
			},
		)
	}
	return append(
		marks,
		drawing.Dimension{Role: drawing.Hot, A: drawing.Point{X: -half, Y: -20}, B: drawing.Point{X: half, Y: -20},
			Along: drawing.Point{X: 1}, Offset: -118},
		drawing.Dimension{
			Role:   drawing.Body,
			A:      drawing.Point{X: -outer, Y: low + 16},
			B:      drawing.Point{X: outer, Y: low + 16},
			Along:  drawing.Point{X: 1},
			Offset: 165 - low,
		},
	)
}
