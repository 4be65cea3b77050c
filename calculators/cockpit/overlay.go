package cockpit

import (
	"math"
	"slices"

	"plumbline/calculators"
	"plumbline/calculators/drawing"
	"plumbline/calculators/figure"
	"plumbline/calculators/fit"
	"plumbline/calculators/geometry"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// overlaid is what a state needs to be drawn; what a record does not have is that of
// the scenario's test bike, in both states alike.
var overlaid = slices.Concat(fit.FrontInputs(), fit.PartsInputs(), fit.SeatLineInputs(), fit.WheelInputs(),
	[]calculators.Input{{Quantity: measure.RailShift, Optional: true}, {Quantity: measure.SaddleTilt, Optional: true}})

// Overlay draws two states of a bike over one another, on one bottom bracket: the later
// in ink, the earlier in thin lines.
func Overlay(before, after []calculators.Pair) *drawing.Figure {
	a, b := stateOf(before), stateOf(after)
	f := &drawing.Figure{
		Title: words.Of("Two states of the bike, one over the other"),
		Description: words.Of("The later state is drawn in ink, the earlier one in thin lines, to scale and with " +
			"the crank axle in one place. Where the record lacks a number, both drawings use the test bike’s."),
	}
	f.Add(figure.Over(a, b)...)
	if a.Saddle != b.Saddle {
		f.Add(figure.SaddleHeight(b, drawing.Hot, words.Of("{0}", measure.Millimetres(b.Saddle))))
	}
	if was, is := a.Grip(), b.Grip(); was != is {
		f.Add(
			drawing.Cross{Role: drawing.Before, At: was, Size: 36},
			drawing.Cross{Role: drawing.Hot, At: is, Size: 36},
		)
	}
	return f
}

// stateOf makes one state ready to be drawn. What makes no bike is left out.
func stateOf(pairs []calculators.Pair) (b figure.Build) {
	typed := slices.Clone(pairs)
	for _, in := range overlaid {
		if in.Example != "" && !slices.ContainsFunc(pairs, func(p calculators.Pair) bool { return p.Key == in.Key }) {
			typed = append(typed, calculators.Pair{Key: in.Key, Typed: in.Example})
		}
	}
	(&calculators.Illustration{Inputs: overlaid, Draw: func(v calculators.Values) *drawing.Figure {
		bike, problem := fit.Front(v)
		if problem != nil {
			bike = figure.Demo(testInseam, 0).Bike
		}
		b = drawnState(v, bike)
		return nil
	}}).Figure(typed, nil)
	return b
}

func drawnState(v calculators.Values, bike geometry.Bike) figure.Build {
	b := figure.Build{
		Bike:       bike,
		Cockpit:    fit.Parts(v),
		FrontRim:   v.Of(measure.FrontRim),
		RearRim:    v.Of(measure.RearRim),
		CrankAngle: 90,
		Saddle:     v.Of(measure.SaddleHeight),
	}
	b.SeatTube = math.Min(0.66*bike.Stack(), b.Saddle-180)
	if at, ok := fit.SaddlePoint(v, bike); ok {
		b.Back = b.SaddleTop().X - at.X
	}
	if v.Has(measure.SaddleTilt) {
		b.Tilt = v.Of(measure.SaddleTilt)
	}
	return b
}
