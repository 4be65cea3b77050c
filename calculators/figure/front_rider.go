package figure

import (
	"math"

	"plumbline/calculators/drawing"
)

// Astride is a rider on a bike seen from the front, mm: heights above the bottom bracket,
// widths as the distance between left and right. The far pedal is the one on the
// drawing's right; it stands up and the near one, on the left, down.
type Astride struct {
	Hips, Feet, QFactor float64 // between the hip joints, the feet's middles and the cranks' faces
	Leg                 float64 // from hip joint to sole
	Crank, Ground       float64
}

// How a rider from the front is drawn, by eye: how much of the leg's length shows from the
// hip to the lower sole, and where the knees are seen, as shares of the leg above the sole.
// The upper knee stands in front of the hip, so that its thigh looks short.
const (
	seenLeg                  = 0.94
	kneeDown, kneeUp         = 0.48, 0.50
	barAside, gripAside      = 385.0, 320.0
	barOverHips, kneeForward = 40.0, 4.0
)

// HipHeight returns how high the hip joints stand.
func (a Astride) HipHeight() float64 { return seenLeg*a.Leg - a.Crank }

// Hip returns a hip joint, Pedalled the middle of a foot on its pedal; side is −1 on the
// drawing's left, where the pedal is down, and 1 on its right.
func (a Astride) Hip(side float64) Point { return Point{X: side * a.Hips / 2, Y: a.HipHeight()} }

// Pedalled returns where the middle of a foot stands on its pedal.
func (a Astride) Pedalled(side float64) Point { return Point{X: side * a.Feet / 2, Y: side * a.Crank} }

// Knee returns where a knee is seen: on the line from hip to foot.
func (a Astride) Knee(side float64) Point {
	share := kneeDown
	if side > 0 {
		share = kneeUp
	}
	foot, hip := a.Pedalled(side), a.Hip(side)
	return foot.Along(hip.Minus(foot), share*a.Leg/(hip.Y-foot.Y))
}

// Marks draws the rider and the bike: cranks joined by their axle, wheel, fork and bar in
// thin lines before the rider.
func (a Astride) Marks() []drawing.Mark {
	k := a.Leg / 900
	hip := a.HipHeight()
	shoulder := hip + 350*k
	var m []drawing.Mark
	m = append(m, drawing.Ground{A: Point{X: -420, Y: -a.Ground}, B: Point{X: 420, Y: -a.Ground}})
	m = append(m, a.drive()...)
	m = append(
		m,
		drawing.Tube{Role: drawing.Body, Fill: drawing.Hatch, A: Point{Y: shoulder}, B: Point{Y: shoulder + 110*k},
			Ra: 58 * k, Rb: 52 * k},
	)
	m = append(m, faceFront(shoulder+290*k, 225*k)...)
	m = append(m, helmet(shoulder+290*k, 225*k, false)...)
	m = append(
		m,
		drawing.Line{Role: drawing.Body, Fill: drawing.Hatch, Closed: true, Smooth: true, Points: torsoFront(a.Hips/2,
			hip, shoulder, k)},
	)
	for _, side := range [2]float64{1, -1} {
		m = append(m, a.limb(side, k)...)
	}
	grip := Point{Y: hip + barOverHips}
	m = append(m, a.frontWheel(grip.Y)...)
	for _, side := range [2]float64{-1, 1} {
		m = append(m, a.arm(side, shoulder, grip.Y, k)...)
	}
	for _, side := range [2]float64{-1, 1} {
		m = append(m, drawing.Axis{Role: drawing.Body, A: a.Hip(side), B: a.Pedalled(side)},
			drawing.Cross{Role: drawing.Body, At: a.Hip(side)}, drawing.Cross{Role: drawing.Body, At: a.Knee(side)})
	}
	return m
}

// Elbow returns where an elbow is seen.
func (a Astride) Elbow(side float64) Point {
	k, hip := a.Leg/900, a.HipHeight()
	return Point{X: side * (gripAside + 56), Y: (hip+350*k-26*k+hip+barOverHips)/2 - 10}
}

// Gripped returns the middle of a grip.
func (a Astride) Gripped(side float64) Point {
	return Point{X: side * gripAside, Y: a.HipHeight() + barOverHips}
}

// arm draws an arm with its hand from a shoulder's height to a grip's.
func (a Astride) arm(side, shoulder, grip, k float64) (m []drawing.Mark) {
	joint, hand, elbow := Point{
		X: side * 172 * k,
		Y: shoulder - 26*k,
	}, Point{
		X: side * gripAside,
		Y: grip,
	}, a.Elbow(
		side,
	)
	m = append(
		m,
		drawing.Limb{
			Role: drawing.Body,
			Fill: drawing.Hatch,
			A:    elbow,
			B:    hand.Plus(Point{Y: 12}),
			Ra:   40 * k,
			Rb:   28 * k,
		},
		drawing.Limb{Role: drawing.Body, Fill: drawing.Hatch, A: joint, B: elbow, Ra: 54 * k, Rb: 42 * k},
	)
	for i := range 4 {
		x := hand.X + side*(float64(i)*19-28)
		m = append(
			m,
			drawing.Limb{Role: drawing.Body, Pen: drawing.Thin, Fill: drawing.Wash, A: Point{X: x, Y: hand.Y + 18},
				B: Point{X: x, Y: hand.Y - 16}, Ra: 10, Rb: 10},
		)
	}
	return m
}

// torsoFront is the outline from the shorts' waist to the shoulders.
func torsoFront(half, hip, shoulder, k float64) []Point {
	right := []Point{
		{X: 60 * k, Y: shoulder + 22*k},
		{X: 150 * k, Y: shoulder + 8*k},
		{X: 205 * k, Y: shoulder - 34*k},
		{X: 182 * k, Y: shoulder - 110*k},
		{X: 158 * k, Y: hip + 130*k},
		{X: half + 72*k, Y: hip + 40*k},
		{X: half + 84*k, Y: hip - 20*k},
		{X: 0.5 * half, Y: hip - 60*k},
	}
	points := append([]Point{}, right...)
	for i := len(right) - 1; i >= 0; i-- {
		points = append(points, mirrored(right[i]))
	}
	return points
}

// limb draws one leg with its shoe, from behind to before.
func (a Astride) limb(side, k float64) []drawing.Mark {
	hip, knee, foot := a.Hip(side), a.Knee(side), a.Pedalled(side)
	ankle := foot.Along(knee.Minus(foot).Unit(), 84*k)
	shoe := drawing.Line{Role: drawing.Body, Fill: drawing.Wash, Closed: true, Smooth: true, Points: []Point{
		foot.Plus(
			Point{X: -46 * k, Y: 0},
		), foot.Plus(Point{X: -48 * k, Y: 26 * k}), foot.Plus(Point{X: -30 * k, Y: 62 * k}),
		ankle.Plus(Point{X: -32 * k}), ankle.Plus(Point{X: 32 * k}), foot.Plus(Point{X: 32 * k, Y: 62 * k}),
		foot.Plus(Point{X: 50 * k, Y: 26 * k}), foot.Plus(Point{X: 48 * k, Y: 0}), foot.Plus(Point{X: 48 * k, Y: 0}),
		foot.Plus(Point{X: -46 * k, Y: 0})}}
	sole := drawing.Line{
		Role: drawing.Body,
		Pen:  drawing.Thin,
		Points: []Point{foot.Plus(Point{X: -47 * k, Y: 13 * k}),
			foot.Plus(Point{X: 49 * k, Y: 13 * k})},
	}
	shank := drawing.Limb{Role: drawing.Body, Fill: drawing.Hatch, A: knee, B: ankle, Ra: 57 * k, Rb: 34 * k}
	thigh := drawing.Limb{
		Role: drawing.Body,
		Fill: drawing.Wash,
		A:    hip.Plus(Point{X: side * 10 * k}),
		B:    knee,
		Ra:   82 * k,
		Rb:   62 * k,
	}
	return []drawing.Mark{shank, shoe, sole, thigh}
}

// drive draws the axle, both cranks and both pedals.
func (a Astride) drive() []drawing.Mark {
	face := a.QFactor / 2
	m := []drawing.Mark{
		drawing.Tube{Role: drawing.Ink, Fill: drawing.Sheet, A: Point{X: -face}, B: Point{X: face}, Ra: 15,
			Rb: 15},
		drawing.Tube{Role: drawing.Ink, Fill: drawing.Sheet, A: Point{X: -36}, B: Point{X: 36}, Ra: 24, Rb: 24},
	}
	for _, side := range [2]float64{-1, 1} {
		// The pedal's tread lies under the sole; its axle as far below as a thin one is
		// thick. Crank arms are some 20 mm thick and end at the face.
		end := Point{X: side * (face - 10), Y: side*a.Crank - 12}
		m = append(
			m,
			drawing.Limb{
				Role: drawing.Ink,
				Fill: drawing.Sheet,
				A:    Point{X: side * (face - 14)},
				B:    end,
				Ra:   15,
				Rb:   11,
			},
			drawing.Tube{Role: drawing.Ink, Fill: drawing.Sheet, A: Point{X: side * face, Y: end.Y},
				B: Point{X: side * (math.Max(a.Feet/2, face+40) + 50), Y: end.Y}, Ra: 10, Rb: 10},
		)
	}
	return m
}

// frontWheel draws what stands before the rider, in thin lines that hide nothing: wheel,
// fork, head tube, stem and bar.
func (a Astride) frontWheel(grip float64) []drawing.Mark {
	const radius, half = 372.0, 30.0
	axle := radius - a.Ground
	m := []drawing.Mark{
		drawing.Limb{A: Point{Y: axle - radius + half}, B: Point{Y: axle + radius - half}, Ra: half, Rb: half},
		drawing.Tube{A: Point{X: -62, Y: axle}, B: Point{X: 62, Y: axle}, Ra: 9, Rb: 9},
	}
	crown := axle + radius + 34
	for _, side := range [2]float64{-1, 1} {
		m = append(m, drawing.Tube{A: Point{X: side * 58, Y: axle}, B: Point{X: side * 58, Y: crown}, Ra: 18, Rb: 18})
	}
	m = append(
		m,
		drawing.Tube{A: Point{Y: crown}, B: Point{Y: grip - 22}, Ra: 26, Rb: 24},
		bar(grip),
	)
	return Ghost(m...)
}

// bar is a handlebar at a height, as seen from the front or from behind.
func bar(y float64) drawing.Mark {
	return drawing.Line{
		Smooth: true,
		Points: []Point{{X: -barAside, Y: y}, {X: -160, Y: y + 2}, {X: -60, Y: y - 20}, {X: 60, Y: y - 20},
			{X: 160, Y: y + 2}, {X: barAside, Y: y}},
	}
}
