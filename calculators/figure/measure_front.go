package figure

import "plumbline/calculators/drawing"

// Outlines of the segments seen from the front, alike on both sides.
var (
	thighFront = even(-0.04, 0.17, 0.10, 0.205, 0.28, 0.205, 0.52, 0.175, 0.76, 0.145, 0.95, 0.135, 1.06, 0.09)
	shankFront = even(-0.06, 0.10, 0.05, 0.132, 0.18, 0.138, 0.34, 0.142, 0.55, 0.112, 0.78, 0.08, 0.93, 0.078,
		1.02, 0.07)
	upperArmFront = even(-0.13, 0.10, 0.04, 0.165, 0.22, 0.168, 0.50, 0.145, 0.78, 0.128, 0.98, 0.12, 1.06, 0.07)
	forearmFront  = even(-0.05, 0.08, 0.06, 0.155, 0.22, 0.165, 0.48, 0.135, 0.76, 0.10, 0.96, 0.092, 1.05, 0.06)
	shortsFront   = even(-0.02, 0.19, 0.10, 0.222, 0.28, 0.228, 0.50, 0.21, 0.62, 0.20, 0.62, 0.20)
	sleeveFront   = even(-0.12, 0.115, 0.04, 0.18, 0.22, 0.19, 0.42, 0.185, 0.52, 0.185, 0.52, 0.185)
	handFront     = even(-0.04, 0.14, 0.10, 0.17, 0.30, 0.225, 0.50, 0.225, 0.70, 0.19, 0.90, 0.13, 1.0, 0.05)
)

// even makes stations that stand alike to both sides, from pairs of place and
// half width.
func even(pairs ...float64) []station {
	s := make([]station, len(pairs)/2)
	for i := range s {
		s[i] = station{pairs[2*i], pairs[2*i+1], pairs[2*i+1]}
	}
	return s
}

// Arms says how a standing person holds the arms.
type Arms int

// The ways to hold the arms. ArmsOut stretches both level to the sides.
const (
	ArmsDown Arms = iota
	ArmsOut
)

// mirrored returns p on the other side of the body.
func mirrored(p Point) Point { return Point{X: -p.X, Y: p.Y} }

// footApart is how far each foot stands from the middle: 15 to 20 cm between the
// feet's middles.
const footApart = 88

// ShoulderPoint returns the bony point on top of the shoulder, on the drawing's
// right.
func (p Person) ShoulderPoint() Point { return Point{X: p.ShoulderWidth / 2, Y: p.Shoulder} }

// Fingertip returns the tip of the middle finger of an arm stretched out to the
// drawing's right.
func (p Person) Fingertip() Point { return Point{X: p.Span / 2, Y: p.armLevel()} }

// armLevel is the height of the shoulder joint.
func (p Person) armLevel() float64 { return p.Shoulder - 38*p.scale() }

// arm returns shoulder joint, elbow, wrist and fingertip on the drawing's right.
func (p Person) arm(arms Arms) [4]Point {
	shoulder := Point{X: p.ShoulderWidth/2 - 2*p.scale(), Y: p.armLevel()}
	if arms == ArmsOut {
		reach := p.Span/2 - shoulder.X
		whole := p.UpperArm + p.Forearm + p.Hand
		elbow := shoulder.Plus(Point{X: reach * p.UpperArm / whole})
		wrist := elbow.Plus(Point{X: reach * p.Forearm / whole})
		return [4]Point{shoulder, elbow, wrist, p.Fingertip()}
	}
	elbow := shoulder.Plus(drawing.Polar(-82, p.UpperArm-38*p.scale()))
	wrist := elbow.Plus(drawing.Polar(-86, p.Forearm))
	return [4]Point{shoulder, elbow, wrist, wrist.Plus(drawing.Polar(-90, p.Hand))}
}

// Front returns the person from the front, barefoot and upright.
func (p Person) Front(arms Arms) []drawing.Mark {
	s := p.scale()
	hip, knee, ankle := Point{X: footApart, Y: p.Hip}, Point{X: footApart + 2*s, Y: p.Knee}, Point{X: footApart,
		Y: p.Ankle}
	arm := p.arm(arms)
	var m []drawing.Mark
	for i, side := range [2]func(Point) Point{mirrored, func(q Point) Point { return q }} {
		low := side
		if i == 0 {
			low = func(q Point) Point { return side(q.Plus(Point{Y: -p.Longer})) }
		}
		m = append(m, footFront(low, ankle, s, p.Back)...)
		m = append(m,
			form(drawing.Wide, drawing.Hatch, side(knee), low(ankle), shankFront),
			form(drawing.Wide, drawing.Hatch, side(hip), side(knee), thighFront),
			form(drawing.Wide, drawing.Wash, side(hip), side(knee), shortsFront),
			thumb(side, arm, arms, s),
			form(drawing.Wide, drawing.Hatch, side(arm[2]), side(arm[3]), handFront),
			form(drawing.Wide, drawing.Hatch, side(arm[1]), side(arm[2]), forearmFront),
			form(drawing.Wide, drawing.Hatch, side(arm[0]), side(arm[1]), upperArmFront),
			form(drawing.Wide, drawing.Wash, side(arm[0]), side(arm[1]), sleeveFront))
	}
	m = append(m, drawing.Tube{Role: drawing.Body, Fill: drawing.Hatch, A: Point{Y: p.Neck - 10*s},
		B: Point{Y: p.Stature - 0.1*p.Stature}, Ra: 54 * s, Rb: 50 * s})
	m = append(m, faceFront(p.Stature, 0.130*p.Stature)...)
	m = append(m, p.trunkFront(), p.waist())
	line := func(a, b Point) {
		m = append(m, drawing.Line{Role: drawing.Body, Pen: drawing.Centre, Points: []Point{a, b}})
	}
	line(Point{Y: p.Inseam}, Point{Y: p.Stature + 40*s})
	for _, side := range [2]func(Point) Point{mirrored, func(q Point) Point { return q }} {
		line(side(hip), side(knee))
		line(side(knee), side(ankle))
		for i := range 3 {
			line(side(arm[i]), side(arm[i+1]))
		}
		for _, j := range [6]Point{hip, knee, ankle, arm[0], arm[1], arm[2]} {
			m = append(m, drawing.Cross{Role: drawing.Body, At: side(j)})
		}
	}
	return m
}

// trunkFront returns neck to crotch.
func (p Person) trunkFront() drawing.Mark {
	s, b, h := p.scale(), p.ShoulderWidth/2, p.HipWidth/2
	ribs := p.Shoulder - p.Inseam
	half := []Point{
		{X: 53 * s, Y: p.Neck + 6*s}, {X: 62 * s, Y: p.Neck - 20*s}, {X: 0.50 * b,
			Y: p.Shoulder + 34*s}, {X: 0.80 * b, Y: p.Shoulder + 14*s},
		{X: b, Y: p.Shoulder - 6*s}, {X: b + 6*s, Y: p.Shoulder - 40*s}, {X: b - 14*s, Y: p.Shoulder - 100*s},
		{X: b - 34*s, Y: p.Shoulder - 150*s}, {X: 0.78 * b, Y: p.Shoulder - 0.42*ribs}, {X: 0.86 * h,
			Y: p.Shoulder - 0.60*ribs},
		{X: 0.93 * h, Y: p.Inseam + 0.25*ribs}, {X: h, Y: p.Hip - 6*s}, {X: 0.985 * h,
			Y: p.Inseam + 4*s}, {X: 0.985 * h, Y: p.Inseam + 4*s},
		{X: 0.45 * h, Y: p.Inseam + 14*s}, {X: 0, Y: p.Inseam}, {X: 0, Y: p.Inseam},
	}
	points := append([]Point{}, half...)
	for i := len(half) - 3; i >= 0; i-- {
		points = append(points, mirrored(half[i]))
	}
	return drawing.Line{Role: drawing.Body, Fill: drawing.Wash, Points: points, Closed: true, Smooth: true}
}

// waist is where shirt and shorts meet.
func (p Person) waist() drawing.Mark {
	y, h := p.Inseam+0.24*(p.Shoulder-p.Inseam), 0.455*p.HipWidth
	return drawing.Line{Role: drawing.Body, Pen: drawing.Thin, Smooth: true, Points: []Point{{X: -h, Y: y},
		{X: 0, Y: y - 8*p.scale()}, {X: h, Y: y}}}
}

// faceFront returns a head that looks at the reader, its crown at a height and
// its chin a length below, mm.
func faceFront(top, height float64) []drawing.Mark {
	width := 0.36 * height
	at := func(x, y float64) Point { return Point{X: x * width, Y: top - (1-y)*height} }
	half := []Point{at(0, 1), at(0.55, 0.95), at(0.95, 0.78), at(1.0, 0.55), at(0.93, 0.32), at(0.70, 0.12),
		at(0.34, 0.01)}
	points := append([]Point{}, half...)
	points = append(points, at(0, 0))
	for i := len(half) - 1; i > 0; i-- {
		points = append(points, mirrored(half[i]))
	}
	ear := func(side float64) drawing.Mark {
		return drawing.Line{Role: drawing.Body, Pen: drawing.Thin, Fill: drawing.Wash, Closed: true, Smooth: true,
			Points: []Point{at(side*0.97, 0.62), at(side*1.10, 0.60), at(side*1.08, 0.42), at(side*0.95, 0.36)}}
	}
	return []drawing.Mark{
		ear(1), ear(-1),
		drawing.Line{Role: drawing.Body, Fill: drawing.Hatch, Points: points, Closed: true, Smooth: true},
	}
}

// footFront returns a bare foot that points at the reader with its toes, or away.
func footFront(side func(Point) Point, ankle Point, s float64, away bool) []drawing.Mark {
	points := []Point{{X: -26 * s, Y: 4 * s}, {X: -34 * s, Y: -0.35 * ankle.Y}, {X: -44 * s, Y: -0.86 * ankle.Y},
		{X: -36 * s, Y: -ankle.Y}, {X: 50 * s, Y: -ankle.Y}, {X: 58 * s, Y: -0.86 * ankle.Y},
		{X: 42 * s, Y: -0.35 * ankle.Y}, {X: 28 * s, Y: 4 * s}}
	for i := range points {
		points[i] = side(ankle.Plus(points[i]))
	}
	marks := []drawing.Mark{drawing.Line{Role: drawing.Body, Fill: drawing.Wash, Points: points, Closed: true,
		Smooth: true}}
	if away {
		return marks
	}
	for _, t := range [5][2]float64{{-26, 17}, {0, 12}, {19, 11}, {36, 10}, {50, 9}} { // place and half width
		at := side(ankle.Plus(Point{X: t[0] * s, Y: t[1]*s - ankle.Y}))
		marks = append(marks, drawing.Circle{Role: drawing.Body, Pen: drawing.Thin, Fill: drawing.Hatch, Centre: at,
			Radius: t[1] * s})
	}
	return marks
}

// thumb returns the thumb of a hand: upwards on an arm stretched out, forwards
// and inwards on one that hangs.
func thumb(side func(Point) Point, arm [4]Point, arms Arms, s float64) drawing.Mark {
	across := Point{X: -1}
	if arms == ArmsOut {
		across = Point{Y: 1}
	}
	way := arm[3].Minus(arm[2])
	root, tip := arm[2].Along(way, 0.22), arm[2].Along(way, 0.52)
	return drawing.Limb{Role: drawing.Body, Fill: drawing.Wash, A: side(root.Along(across, 22*s)),
		B: side(tip.Along(across, 46*s)), Ra: 14 * s, Rb: 10 * s}
}
