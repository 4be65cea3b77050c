package figure

import "plumbline/calculators/drawing"

// Behind draws the same rider from behind, at the same moment, so that the low foot is on
// the drawing's right: bar and hands lie farthest away, saddle and rear wheel nearest.
func (a Astride) Behind() []drawing.Mark {
	k := a.Leg / 900
	hip := a.HipHeight()
	shoulder := hip + 350*k
	grip := hip + barOverHips
	m := []drawing.Mark{drawing.Ground{A: Point{X: -420, Y: -a.Ground}, B: Point{X: 420, Y: -a.Ground}}}
	m = append(m, Ghost(bar(grip))...)
	m = append(m, moved(0, mirrored, a.drive())...)
	for _, side := range [2]float64{1, -1} {
		m = append(m, moved(0, mirrored, a.limb(side, k))...)
		m = append(m, a.arm(side, shoulder, grip, k)...)
	}
	m = append(m,
		drawing.Tube{Role: drawing.Body, Fill: drawing.Hatch, A: Point{Y: shoulder}, B: Point{Y: shoulder + 110*k},
			Ra: 62 * k, Rb: 54 * k},
	)
	m = append(m, faceFront(shoulder+290*k, 225*k)...)
	m = append(m, helmet(shoulder+290*k, 225*k, true)...)
	m = append(m, a.back(shoulder, k)...)
	return append(m, a.rearWheel(hip-104*k)...)
}

// back is the outline from the shoulders to the seat, with the spine and where shirt and
// shorts meet.
func (a Astride) back(shoulder, k float64) []drawing.Mark {
	hip, half := a.HipHeight(), a.Hips/2
	right := []Point{{X: 60 * k, Y: shoulder + 22*k}, {X: 150 * k, Y: shoulder + 8*k}, {X: 205 * k, Y: shoulder - 34*k},
		{X: 182 * k, Y: shoulder - 110*k}, {X: 156 * k, Y: hip + 150*k}, {X: half + 70*k, Y: hip + 60*k},
		{X: half + 92*k, Y: hip - 20*k}, {X: half + 62*k, Y: hip - 92*k}, {X: 0.7 * half, Y: hip - 108*k},
		{X: 0, Y: hip - 84*k}}
	points := append([]Point{}, right...)
	for i := len(right) - 2; i >= 0; i-- {
		points = append(points, mirrored(right[i]))
	}
	m := []drawing.Mark{
		drawing.Line{Role: drawing.Body, Fill: drawing.Hatch, Closed: true, Smooth: true, Points: points},
		drawing.Line{
			Role:   drawing.Body,
			Pen:    drawing.Thin,
			Smooth: true,
			Points: []Point{{X: -half - 68*k, Y: hip + 66*k},
				{Y: hip + 52*k}, {X: half + 68*k, Y: hip + 66*k}},
		},
		drawing.Line{Role: drawing.Body, Pen: drawing.Centre, Points: []Point{{Y: shoulder + 20*k}, {Y: hip + 70*k}}},
		drawing.Line{Role: drawing.Body, Pen: drawing.Thin, Points: []Point{{Y: hip + 20*k}, {Y: hip - 84*k}}},
	}
	for _, side := range [2]float64{-1, 1} {
		m = append(m, drawing.Line{Role: drawing.Body, Pen: drawing.Thin, Smooth: true, Points: []Point{
			{X: side * 62 * k, Y: shoulder - 60*k}, {X: side * 74 * k, Y: shoulder - 130*k},
			{X: side * 124 * k, Y: shoulder - 112*k}}},
			drawing.Cross{Role: drawing.Body, At: Point{X: side * a.Hips / 2, Y: hip}})
	}
	return m
}

// rearWheel draws what stands behind the rider, in thin lines that hide nothing but for
// the saddle: wheel, stays, post. The saddle's top is at a height.
func (a Astride) rearWheel(top float64) []drawing.Mark {
	const radius, half = 372.0, 30.0
	axle := radius - a.Ground
	m := []drawing.Mark{
		drawing.Limb{A: Point{Y: axle - radius + half}, B: Point{Y: axle + radius - half}, Ra: half, Rb: half},
		drawing.Tube{A: Point{X: -70, Y: axle}, B: Point{X: 70, Y: axle}, Ra: 9, Rb: 9},
		drawing.Tube{A: Point{Y: axle + radius + 20}, B: Point{Y: top - 40}, Ra: 16, Rb: 16},
	}
	for _, side := range [2]float64{-1, 1} {
		m = append(m, drawing.Line{Points: []Point{{X: side * 68, Y: axle}, {X: side * 50, Y: axle + radius - 20},
			{X: side * 16, Y: axle + radius + 40}}})
	}
	return append(Ghost(m...), drawing.Line{Role: drawing.Ink, Fill: drawing.Sheet, Closed: true, Smooth: true,
		Points: []Point{{X: -72, Y: top - 4}, {X: -40, Y: top + 12}, {Y: top + 4}, {X: 40, Y: top + 12},
			{X: 72, Y: top - 4}, {X: 52, Y: top - 26}, {Y: top - 36}, {X: -52, Y: top - 26}}})
}

// helmet is drawn over a head from the front or from behind, its crown at a height; from
// the front it has a peak.
func helmet(top, height float64, behind bool) []drawing.Mark {
	width := 0.36 * height
	at := func(x, y float64) Point { return Point{X: x * width, Y: top - (1-y)*height} }
	low := 0.70
	if behind {
		low = 0.46
	}
	m := []drawing.Mark{
		drawing.Line{
			Role:   drawing.Ink,
			Fill:   drawing.Sheet,
			Closed: true,
			Smooth: true,
			Points: []Point{
				at(-1.18, low+0.02),
				at(-1.2, 0.84),
				at(-0.75, 1.08),
				at(0, 1.16),
				at(0.75, 1.08),
				at(1.2, 0.84),
				at(1.18, low+0.02),
				at(0.6, low-0.02),
				at(0, low),
				at(-0.6, low-0.02),
			},
		},
	}
	for _, side := range [2]float64{-1, 1} {
		m = append(m, drawing.Line{Role: drawing.Ink, Pen: drawing.Thin, Smooth: true,
			Points: []Point{at(side*0.4, 1.1), at(side*0.62, 0.95), at(side*0.58, low+0.06)}})
	}
	if !behind {
		m = append(m, drawing.Line{Role: drawing.Ink, Fill: drawing.Sheet, Closed: true, Smooth: true,
			Points: []Point{at(-1.05, 0.74), at(-0.9, 0.82), at(0, 0.86), at(0.9, 0.82), at(1.05, 0.74), at(0, 0.78)}})
	}
	return m
}
