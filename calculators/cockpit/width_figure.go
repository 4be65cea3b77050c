package cockpit

import (
	"math"

	"plumbline/calculators"
	"plumbline/calculators/body"
	"plumbline/calculators/drawing"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// widthFigure draws shoulders, arms and bar from above, the arms straight.
func widthFigure(v calculators.Values, r *calculators.Result) *drawing.Figure {
	x := r.At(barWidth)
	width := float64(x.Value)
	f := &drawing.Figure{Title: words.Of("Shoulders, arms and bar from above")}
	spread := r.At(armSpread)
	f.Description = words.Of("A rider’s shoulders and straight arms from above, holding a bar of {0}. The arms "+
		"spread {1} from straight ahead; the bony points of the shoulders are {2} apart.",
		x.Uncertain(), spread.Uncertain(), measure.Millimetres(v.Of(measure.ShoulderWidth)))
	reach, joint := reachOn(v, width), joints(v)/2
	hand := joint + aside(v, width)
	if math.IsNaN(reach) {
		f.Description = words.Of("A bar of {0} from above. The arms do not span it.", x.Amount())
		f.Add(barAbove(drawing.Ink, drawing.Wide, width, v.Of(measure.GripLength), 0)...)
		return f
	}
	half := v.Of(measure.ShoulderWidth) / 2
	// Shoulders, neck and head: a round figure in plain proportion.
	f.Add(drawing.Line{Role: drawing.Body, Fill: drawing.Hatch, Closed: true, Smooth: true, Points: []drawing.Point{
		{X: -half - 45, Y: 0}, {X: -half - 20, Y: 55}, {X: -half / 2, Y: 85}, {X: 0, Y: 95}, {X: half / 2, Y: 85},
		{X: half + 20, Y: 55}, {X: half + 45, Y: 0},
		{X: half + 10, Y: -70}, {X: half / 2, Y: -110}, {X: 0, Y: -120}, {X: -half / 2, Y: -110},
		{X: -half - 10, Y: -70},
	}})
	if v.Has(measure.BarWidth) && math.Abs(v.Of(measure.BarWidth)-width) > 1 {
		now := v.Of(measure.BarWidth)
		f.Add(barAbove(drawing.Before, drawing.Thin, now, v.Of(measure.GripLength), reach)...)
		f.Add(drawing.Label{Role: drawing.Before, At: drawing.Point{X: now / 2, Y: reach}, Text: words.Of("now"),
			Side: drawing.Point{X: 1}})
	}
	f.Add(barAbove(drawing.Ink, drawing.Wide, width, v.Of(measure.GripLength), reach)...)
	share := body.UpperArmShare(body.Unknown)
	for _, side := range [2]float64{-1, 1} {
		s, g := drawing.Point{X: side * joint}, drawing.Point{X: side * hand, Y: reach}
		e := s.Along(g.Minus(s), share)
		f.Add(
			drawing.Limb{Role: drawing.Body, Fill: drawing.Hatch, A: s, B: e, Ra: 56, Rb: 42},
			drawing.Limb{Role: drawing.Body, Fill: drawing.Hatch, A: e, B: g.Along(g.Minus(s).Unit(), -70), Ra: 42,
				Rb: 30})
		f.Add(fist(g, g.Along(g.Minus(s).Unit(), -70), side)...)
		f.Add(
			drawing.Line{Role: drawing.Body, Pen: drawing.Centre, Points: []drawing.Point{s, g}},
			drawing.Cross{Role: drawing.Body, At: s}, drawing.Cross{Role: drawing.Body, At: g})
	}
	f.Add(
		drawing.Label{Role: drawing.Before, At: drawing.Point{X: -0.2 * joint, Y: 0.8 * reach}, Fixed: true,
			Text: words.Of("straight only to measure")},
		drawing.Circle{Role: drawing.Ink, Fill: drawing.Sheet, Centre: drawing.Point{Y: 40}, Radius: 98},
		drawing.Axis{Role: drawing.Soft, A: drawing.Point{X: joint}, B: drawing.Point{X: joint, Y: reach}},
		drawing.Angle{Role: drawing.Ink, Vertex: drawing.Point{X: joint}, From: 90,
			To: drawing.Point{X: hand - joint, Y: reach}.Angle(), Radius: 0.62 * reach,
			Text: words.Of("{0}", spread.Amount())},
		drawing.Dimension{Role: drawing.Hot, A: drawing.Point{X: -width / 2, Y: reach},
			B: drawing.Point{X: width / 2, Y: reach}, Along: drawing.Point{X: 1}, Offset: 120,
			Text: words.Of("{0}", x.Uncertain())},
		drawing.Dimension{Role: drawing.Ink, A: drawing.Point{X: -half}, B: drawing.Point{X: half},
			Along: drawing.Point{X: 1}, Offset: -190, Text: words.Of("{0}", measure.Millimetres(2*half))},
	)
	return f
}

// barAbove returns a bar with its two grips from above, at a distance ahead.
func barAbove(role drawing.Role, pen drawing.Pen, width, grip, ahead float64) []drawing.Mark {
	fill := drawing.Sheet
	if role == drawing.Before {
		fill = drawing.Open
	}
	end := width / 2
	p := func(x float64) drawing.Point { return drawing.Point{X: x, Y: ahead} }
	return []drawing.Mark{
		drawing.Tube{Role: role, Pen: pen, Fill: fill, A: p(-end + grip), B: p(end - grip), Ra: 12, Rb: 12},
		drawing.Tube{Role: role, Pen: pen, Fill: fill, A: p(-end), B: p(-end + grip), Ra: 17, Rb: 17},
		drawing.Tube{Role: role, Pen: pen, Fill: fill, A: p(end - grip), B: p(end), Ra: 17, Rb: 17},
	}
}
