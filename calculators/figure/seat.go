package figure

import "plumbline/calculators/drawing"

// saddle returns post, clamp, rails and saddle. The rails lie level where the
// tilt is zero.
func saddle(b Build) []drawing.Mark {
	top := b.SaddleTop()
	stack := or(b.Stack, 48)
	nose := or(b.Nose, 155)
	along := drawing.Polar(-b.Tilt, 1)
	place := func(x, y float64) Point { return top.Along(along, x).Along(along.Left(), y) }
	clamp := place(0, -stack)
	foot, up := b.seatLine()
	postTop := foot.Along(up, clamp.Minus(foot).Dot(up)-14)
	collar := b.seatTop()
	return []drawing.Mark{
		drawing.Tube{Role: drawing.Ink, Fill: drawing.Sheet, A: collar, B: postTop, Ra: halfPost, Rb: halfPost},
		drawing.Tube{Role: drawing.Ink, Fill: drawing.Sheet, A: collar.Along(up, -14), B: collar.Along(up, 10),
			Ra: halfSeatTube + 4, Rb: halfSeatTube + 4},
		drawing.Line{Role: drawing.Ink, Points: []Point{
			place(-92, -22), place(-62, -stack), place(52, -stack), place(0.72*nose, -20),
		}},
		drawing.Limb{Role: drawing.Ink, Fill: drawing.Sheet, A: postTop, B: clamp.Along(along.Left(), -4), Ra: 15,
			Rb: 14},
		drawing.Tube{Role: drawing.Ink, Fill: drawing.Sheet, A: place(-24, -stack), B: place(24, -stack), Ra: 8,
			Rb: 8},
		drawing.Line{Role: drawing.Ink, Fill: drawing.Sheet, Closed: true, Smooth: true, Points: saddleShell(b)},
	}
}

// saddleShell returns the outline of the saddle's shell, turned by the tilt.
func saddleShell(b Build) []Point {
	nose := or(b.Nose, 155)
	return place(b.SaddleTop(), drawing.Polar(-b.Tilt, 1), 1, 1,
		nose, -9, nose-12, -2, 0.62*nose, 0, 0.3*nose, -1, 0, 0, -50, 2,
		-88, 9, -112, 12, -122, 4, -118, -14, -96, -24,
		-40, -25, 10, -20, 0.62*nose, -19, nose-8, -21)
}

// HiddenSaddle returns the saddle's outline in short dashes, as hidden edges are
// drawn: for a rider whose thigh covers it.
func HiddenSaddle(b Build) drawing.Mark {
	return drawing.Line{Role: drawing.Ink, Pen: drawing.Hidden, Points: saddleShell(b), Closed: true, Smooth: true}
}
