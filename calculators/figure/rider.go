package figure

import "plumbline/calculators/drawing"

// station is a section across a segment of the body: where along it, and how
// far the outline stands to its left and right, all in lengths of the segment.
type station struct{ at, left, right float64 }

// The outlines of the segments, seen from the rider's right-hand side or left:
// along a leg, which points down, left is the front; along trunk and neck, which
// point up, left is the back. Drawn by eye after an average adult; nothing is
// ever measured on them.
var (
	thighForm = []station{
		{-0.20, 0.06, 0.10}, {-0.08, 0.17, 0.22}, {0.10, 0.20, 0.235}, {0.30, 0.21, 0.20},
		{0.50, 0.195, 0.165}, {0.70, 0.165, 0.145}, {0.88, 0.145, 0.125}, {1.02, 0.135, 0.105}, {1.10, 0.07, 0.06},
	}
	shankForm = []station{
		{-0.10, 0.05, 0.05}, {-0.02, 0.125, 0.105}, {0.10, 0.118, 0.135}, {0.25, 0.098, 0.168}, {0.38, 0.088, 0.158},
		{0.58, 0.078, 0.112}, {0.78, 0.066, 0.082}, {0.94, 0.066, 0.074}, {1.05, 0.05, 0.06},
	}
	trunkForm = []station{
		{-0.13, 0.13, 0.03}, {-0.05, 0.215, 0.15}, {0.07, 0.235, 0.18}, {0.22, 0.21, 0.195}, {0.38, 0.198, 0.19},
		{0.56, 0.215, 0.185}, {0.74, 0.225, 0.175}, {0.90, 0.19, 0.14}, {1.03, 0.12, 0.10}, {1.10, 0.05, 0.06},
	}
	upperArmForm = []station{
		{-0.17, 0.06, 0.06}, {-0.06, 0.165, 0.155}, {0.15, 0.18, 0.165}, {0.42, 0.155, 0.15}, {0.70, 0.125, 0.125},
		{0.95, 0.12, 0.115}, {1.08, 0.07, 0.07},
	}
	forearmForm = []station{
		{-0.10, 0.06, 0.06}, {-0.01, 0.125, 0.12}, {0.16, 0.145, 0.14}, {0.40, 0.125, 0.12}, {0.68, 0.09, 0.09},
		{0.84, 0.078, 0.078}, {0.94, 0.06, 0.06},
	}
)

// form returns the smooth outline of a segment from a to b.
func form(pen drawing.Pen, fill drawing.Fill, a, b Point, stations []station) drawing.Mark {
	way := b.Minus(a)
	left := way.Left()
	n := len(stations)
	points := make([]Point, 2*n)
	for i, s := range stations {
		on := a.Along(way, s.at)
		points[i] = on.Along(left, s.left)
		points[2*n-1-i] = on.Along(left, -s.right)
	}
	return drawing.Line{Role: drawing.Body, Pen: pen, Fill: fill, Points: points, Closed: true, Smooth: true}
}

// known tells whether all points were solved.
func known(points ...Point) bool {
	for _, p := range points {
		if p == (Point{}) {
			return false
		}
	}
	return true
}

// FarLeg returns the leg on the far side, in thin lines and without hatching:
// it lies behind the drawing's plane and is there to be recognised, not read.
func FarLeg(p Pose) []drawing.Mark {
	if !known(p.Hip, p.FarKnee, p.FarAnkle, p.FarHeel, p.FarToe) {
		return nil
	}
	m := []drawing.Mark{form(drawing.Thin, drawing.Wash, p.FarKnee, p.FarAnkle, shankForm)}
	m = append(shoe(drawing.Thin, drawing.Wash, p.FarHeel, p.FarToe, p.Sole), m...)
	return append(m, form(drawing.Thin, drawing.Wash, p.Hip, p.FarKnee, thighForm),
		form(drawing.Thin, drawing.Wash, p.Hip, p.FarKnee, shortsForm))
}

// Torso returns trunk, neck and head, which lie behind saddle and post.
func Torso(p Pose) []drawing.Mark {
	if !known(p.Hip, p.Shoulder) {
		return nil
	}
	var m []drawing.Mark
	if known(p.Head) {
		m = append(m, head(p)...)
	}
	return append(m, form(drawing.Wide, drawing.Hatch, p.Hip, p.Shoulder, trunkForm))
}

// Clothes, as sections like those of the body: shorts that end above the knee, and a
// sleeve that ends above the elbow. They have no hatching, which is the body's.
var (
	shortsForm = []station{
		{-0.19, 0.07, 0.11}, {-0.08, 0.185, 0.23}, {0.10, 0.215, 0.25}, {0.30, 0.225, 0.22},
		{0.50, 0.215, 0.195}, {0.66, 0.215, 0.19}, {0.66, 0.215, 0.19},
	}
	sleeveForm = []station{
		{-0.18, 0.07, 0.07}, {-0.06, 0.175, 0.165}, {0.15, 0.195, 0.18}, {0.42, 0.19, 0.185}, {0.58, 0.19, 0.185},
		{0.58, 0.19, 0.185},
	}
)

// hem returns the line across a segment where a piece of clothing ends.
func hem(a, b Point, s station) drawing.Mark {
	way := b.Minus(a)
	on := a.Along(way, s.at)
	return drawing.Line{Role: drawing.Body, Pen: drawing.Thin,
		Points: []Point{on.Along(way.Left(), s.left), on.Along(way.Left(), -s.right)}}
}

// Limbs returns the near leg and arm as hatched outlines, then the axes of all
// segments, then a small cross at every joint.
func Limbs(p Pose) []drawing.Mark {
	var m []drawing.Mark
	if known(p.Knee, p.Ankle, p.Heel, p.Toe) {
		if p.Bare {
			m = append(m, bareFootSide(p.Heel, p.Toe, 1)...)
		} else {
			m = append(m, shoe(drawing.Wide, drawing.Wash, p.Heel, p.Toe, p.Sole)...)
		}
		m = append(m, form(drawing.Wide, drawing.Hatch, p.Knee, p.Ankle, shankForm))
	}
	if known(p.Hip, p.Knee) {
		m = append(m, form(drawing.Wide, drawing.Hatch, p.Hip, p.Knee, thighForm),
			form(drawing.Wide, drawing.Wash, p.Hip, p.Knee, shortsForm),
			hem(p.Hip, p.Knee, station{0.61, 0.215, 0.19}))
	}
	if known(p.Shoulder, p.Elbow, p.Hand) {
		m = append(m, hand(p.Elbow, p.Hand)...)
		m = append(m,
			form(drawing.Wide, drawing.Hatch, p.Elbow, p.Hand, forearmForm),
			form(drawing.Wide, drawing.Hatch, p.Shoulder, p.Elbow, upperArmForm),
			form(drawing.Wide, drawing.Wash, p.Shoulder, p.Elbow, sleeveForm),
			hem(p.Shoulder, p.Elbow, station{0.53, 0.19, 0.185}))
	}
	return append(m, skeleton(p)...)
}

// skeleton returns the axes of the segments and the crosses at the joints.
func skeleton(p Pose) []drawing.Mark {
	var m []drawing.Mark
	for _, s := range [6][2]Point{{p.Hip, p.Knee}, {p.Knee, p.Ankle}, {p.Ankle, p.Ball}, {p.Hip, p.Shoulder},
		{p.Shoulder, p.Elbow}, {p.Elbow, p.Hand}} {
		if known(s[0], s[1]) {
			m = append(m, drawing.Line{Role: drawing.Body, Pen: drawing.Centre, Points: []Point{s[0], s[1]}})
		}
	}
	for _, j := range [6]Point{p.Hip, p.Knee, p.Ankle, p.Shoulder, p.Elbow, p.Hand} {
		if known(j) {
			m = append(m, drawing.Cross{Role: drawing.Body, At: j})
		}
	}
	return m
}

// place returns points given along and across a direction, in lengths of unit.
func place(origin, along Point, unit float64, flip float64, at ...float64) []Point {
	across := along.Left().Times(flip)
	points := make([]Point, len(at)/2)
	for i := range points {
		points[i] = origin.Along(along, at[2*i]*unit).Along(across, at[2*i+1]*unit)
	}
	return points
}

// shoe returns a flat-soled shoe round the foot from heel to toe, its sole below a line.
func shoe(pen drawing.Pen, fill drawing.Fill, heel, toe Point, sole float64) []drawing.Mark {
	way := toe.Minus(heel)
	length := way.Length()
	if length == 0 {
		return nil
	}
	s := -sole / length
	upper := drawing.Line{Role: drawing.Body, Pen: pen, Fill: fill, Closed: true, Smooth: true,
		Points: place(heel, way.Unit(), length, 1,
			-0.05, s+0.02, 0.02, s, 0.35, s, 0.75, s, 0.98, s+0.02, 1.06, s+0.07,
			1.055, 0.07, 0.97, 0.12, 0.80, 0.155, 0.64, 0.21, 0.50, 0.30, 0.41, 0.375,
			0.26, 0.36, 0.07, 0.39, 0.0, 0.28, -0.05, 0.14)}
	welt := max(0.02, s+0.085)
	return []drawing.Mark{upper, drawing.Line{Role: drawing.Body, Pen: drawing.Thin, Smooth: true,
		Points: place(heel, way.Unit(), length, 1, -0.055, welt+0.02, 0.02, welt, 0.4, welt-0.005, 0.8, welt, 1.06,
			welt+0.05)}}
}

// The hand on the grip, mm from the grip's middle along the forearm and to its left: the
// back of the hand, the little finger that goes round the grip, and the
// forefinger, from its knuckle over its two joints to the tip, which reaches for the
// lever and so is given along the trail and up.
var (
	palmForm = []float64{
		-75,
		20,
		-45,
		28,
		-12,
		35,
		14,
		33,
		27,
		22,
		30,
		4,
		22,
		-8,
		4,
		-16,
		-20,
		-28,
		-48,
		-26,
		-75,
		-20,
	}
	littleForm = []float64{
		14,
		33,
		30,
		27,
		37,
		8,
		30,
		-16,
		10,
		-28,
		-10,
		-24,
		-14,
		-14,
		-4,
		-10,
		10,
		-14,
		20,
		-6,
		22,
		8,
		12,
		20,
	}
	foreFinger = []Point{{X: 20, Y: 12}, {X: 44, Y: 6}, {X: 58, Y: -18}, {X: 58, Y: -36}}
)

// hand returns the hand closed round the grip, the forefinger on the lever.
func hand(elbow, grip Point) []drawing.Mark {
	u := grip.Minus(elbow).Unit()
	finger := func(joints []Point, thick float64) (marks []drawing.Mark) {
		for i := len(joints) - 1; i > 0; i-- {
			marks = append(marks, drawing.Limb{Role: drawing.Body, Pen: drawing.Thin, Fill: drawing.Wash,
				A: grip.Plus(joints[i-1]), B: grip.Plus(joints[i]), Ra: thick, Rb: thick - 1})
		}
		return marks
	}
	m := finger(foreFinger, 9)
	m = append(m, drawing.Line{Role: drawing.Body, Fill: drawing.Wash, Closed: true, Smooth: true,
		Points: place(grip, u, 1, 1, palmForm...)})
	return append(m, drawing.Line{Role: drawing.Body, Fill: drawing.Wash, Closed: true, Smooth: true,
		Points: place(grip, u, 1, 1, littleForm...)})
}

// head returns neck, head and helmet, looking along the trail.
func head(p Pose) []drawing.Mark {
	trunk := p.Shoulder.Minus(p.Hip)
	size := trunk.Length() * 0.37 // brow to back of the head
	up := trunk.Unit()
	look := drawing.Polar(-8, 1)
	base := p.Shoulder.Along(up, 0.03*trunk.Length()).Along(up.Left(), 0.02*trunk.Length())
	neck := p.Head.Along(look, -0.1*size).Along(look.Left(), -0.25*size)
	return []drawing.Mark{
		drawing.Limb{Role: drawing.Body, Fill: drawing.Hatch, A: base, B: neck, Ra: 0.40 * size, Rb: 0.27 * size},
		drawing.Line{Role: drawing.Body, Fill: drawing.Hatch, Closed: true, Smooth: true, Points: place(
			p.Head,
			look,
			size,
			1,
			-0.50,
			0.05,
			-0.40,
			0.38,
			0,
			0.54,
			0.38,
			0.38,
			0.46,
			0.14,
			0.45,
			0.06,
			0.545,
			-0.09,
			0.53,
			-0.13,
			0.46,
			-0.15,
			0.475,
			-0.25,
			0.455,
			-0.32,
			0.44,
			-0.45,
			0.33,
			-0.53,
			0.12,
			-0.44,
			-0.08,
			-0.30,
			-0.34,
			-0.28,
		)},
		drawing.Line{Role: drawing.Ink, Fill: drawing.Sheet, Closed: true, Smooth: true, Points: place(
			p.Head,
			look,
			size,
			1,
			0.47,
			0.20,
			0.78,
			0.27,
			0.86,
			0.335,
			0.62,
			0.37,
			0.42,
			0.45,
			0.22,
			0.60,
			-0.08,
			0.67,
			-0.38,
			0.56,
			-0.58,
			0.27,
			-0.585,
			-0.08,
			-0.50,
			-0.16,
			-0.40,
			-0.08,
			-0.16,
			0.08,
			0.10,
			0.17,
		)},
	}
}
