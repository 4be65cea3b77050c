package cockpit

import (
	"math"

	"plumbline/calculators"
	"plumbline/calculators/drawing"
	"plumbline/calculators/figure"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// sameFigure draws the new bike with both points where the old bike has them.
func sameFigure(w wanted, c carried, list []combination, best int, r *calculators.Result) *drawing.Figure {
	b := figure.Build{Bike: c.bike, Cockpit: w.parts, CrankAngle: 90}
	if len(list) > 0 {
		b.Cockpit = list[max(best, 0)].parts
	}
	f := &drawing.Figure{Title: words.Of("The old position on the new bike")}
	height, ahead, above := r.At(sameHeight), r.At(aheadOfHead), r.At(aboveHead)
	if c.seated {
		b.Saddle = c.height
		b.SeatTube = math.Min(0.66*c.bike.Stack(), c.height-200)
		b.Back = b.SaddleTop().X - c.saddle.X
	}
	f.Add(figure.Scene(b, nil)...)
	if c.seated {
		f.Add(figure.SaddleHeight(b, drawing.Hot, words.Of("{0}", height.Uncertain())),
			drawing.Cross{Role: drawing.Ink, At: figure.At(c.saddle), Size: 40})
	}
	if c.gripped() {
		grip := figure.At(c.grip)
		f.Add(
			drawing.Cross{Role: drawing.Ink, At: grip, Size: 40},
			drawing.Dimension{Role: drawing.Ink, A: drawing.Point{}, B: grip, Along: drawing.Point{X: 1},
				Offset: grip.Y + 110, Text: words.Of("{0}", measure.Millimetres(c.grip.X))},
			figure.Upright(drawing.Ink, drawing.Point{}, grip, grip.X+170,
				words.Of("{0}", measure.Millimetres(c.grip.Y))),
		)
	}
	switch {
	case c.seated && c.gripped():
		f.Description = words.Of("The new bike from the side, to scale, with the nearest parts. The saddle’s top "+
			"is {0} from the crank axle. The grips’ old place lies {1} ahead of the head tube’s top and {2} above "+
			"it. Wheels and chainstay are stand-ins.", height.Uncertain(), ahead.Uncertain(),
			above.Uncertain())
	case c.gripped():
		f.Description = words.Of("The new bike from the side, to scale, with the nearest parts. The grips’ old "+
			"place lies {0} ahead of the head tube’s top and {1} above it. Wheels and chainstay are stand-ins.",
			ahead.Uncertain(), above.Uncertain())
	case c.seated:
		f.Description = words.Of("The new bike from the side, to scale. The saddle’s top is {0} from the crank "+
			"axle. Wheels, chainstay and parts are stand-ins.", height.Uncertain())
	default:
		f.Description = words.Of("The new bike from the side, to scale. Wheels, chainstay and parts are stand-ins.")
	}
	return f
}
