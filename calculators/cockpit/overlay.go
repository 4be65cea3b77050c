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
// in ink, the earlier in thin lines, and larger where saddle or grips move by less than
// the eye parts, where names say which is which, as the table beside the figure calls
// them. It returns nil where both would be drawn alike.
func Overlay(before, after []calculators.Pair, names [2]words.Text) *drawing.Figure {
	a, b := stateOf(before), stateOf(after)
	if a == b {
		return nil
	}
	seat, hands := shift{"the saddle", a.SaddleTop(), b.SaddleTop()}, shift{"the grips", a.Grip(), b.Grip()}
	f := &drawing.Figure{
		Title: words.Of("Two states of the bike, one over the other"),
		Description: words.Of("The later state is drawn in ink, the earlier one in thin lines, to scale and with "+
			"the crank axle in one place. The saddle’s top moves by {0}, the grips move by {1}. Where the record "+
			"lacks a number, both drawings use the test bike’s.", measure.Millimetres(seat.length()),
			measure.Millimetres(hands.length())),
	}
	f.Add(figure.Over(a, b)...)
	if a.Saddle != b.Saddle {
		f.Add(figure.SaddleHeight(b, drawing.Hot, words.Of("{0}", measure.Millimetres(b.Saddle))))
	}
	for _, w := range [2]shift{seat, hands} {
		if w.length() < leastSeen {
			continue
		}
		f.Add(
			drawing.Cross{Role: drawing.Before, At: w.was, Size: 22},
			drawing.Cross{Role: drawing.Hot, At: w.is, Size: 22},
		)
		f.Details = append(f.Details, w.larger(names))
	}
	return f
}

// shift is a place of the bike in both states.
type shift struct {
	name    words.English
	was, is drawing.Point
}

// leastSeen is the least move that is worth a look, mm.
const leastSeen = 0.5

func (w shift) length() float64 { return w.is.Minus(w.was).Length() }

// larger is the place in a circle, with an arrow from where it was to where it is.
func (w shift) larger(names [2]words.Text) drawing.Detail {
	long := w.length()
	return drawing.Detail{At: w.was.Plus(w.is).Times(0.5), Radius: max(55, 1.5*long), Apart: long / 3,
		Caption: words.Of(w.name), Marks: append(
			figure.Arrow(drawing.Hot, w.was, w.is, 0.4*long),
			drawing.Label{
				Role:   drawing.Before,
				At:     w.was,
				Text:   names[0],
				Side:   w.was.Minus(w.is),
				Leader: true,
			},
			drawing.Label{Role: drawing.Ink, At: w.is, Text: names[1], Side: w.is.Minus(w.was), Leader: true},
		)}
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
