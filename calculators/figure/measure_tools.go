package figure

import (
	"math"

	"plumbline/calculators/drawing"
)

// halfTape is half the width of a tape as drawn, mm.
const halfTape = 8

// Tape returns a tape stretched straight from a to b, with a stroke every 50 mm
// and a longer one every 100 mm.
func Tape(a, b Point) []drawing.Mark {
	way := b.Minus(a)
	length := way.Length()
	if length == 0 {
		return nil
	}
	u := way.Unit()
	across := u.Left()
	m := []drawing.Mark{drawing.Tube{Role: drawing.Ink, Pen: drawing.Thin, Fill: drawing.Sheet, A: a, B: b,
		Ra: halfTape, Rb: halfTape}}
	for i := 1; float64(i)*50 < length && i < 60; i++ {
		at, to := a.Along(u, float64(i)*50), 0.0
		if i%2 == 0 {
			to = halfTape
		}
		m = append(m, drawing.Line{Role: drawing.Ink, Pen: drawing.Thin, Points: []Point{at.Along(across,
			-halfTape), at.Along(across, to)}})
	}
	return m
}

// Floor returns level ground from one x to another, at height 0.
func Floor(from, to float64) drawing.Mark { return drawing.Ground{A: Point{X: from}, B: Point{X: to}} }

// Wall returns a wall that stands at x from the floor to a height, seen from the
// side: the person leans on its right.
func Wall(x, height float64) []drawing.Mark {
	m := []drawing.Mark{drawing.Line{Role: drawing.Soft, Points: []Point{{X: x}, {X: x, Y: height}}}}
	for y := 40.0; y < height; y += 70 {
		m = append(m, drawing.Line{Role: drawing.Soft, Pen: drawing.Thin, Points: []Point{{X: x, Y: y},
			{X: x - 26, Y: y - 26}}})
	}
	return m
}

// Book returns a thin hard-cover book whose edge lies between two points; it
// stands to the left of the way from a to b.
func Book(a, b Point) drawing.Mark {
	up := b.Minus(a).Unit().Left()
	const half = 11
	return drawing.Tube{Role: drawing.Ink, Fill: drawing.Sheet, A: a.Along(up, half), B: b.Along(up, half),
		Ra: half, Rb: half}
}

// Landmark returns the cross of a point that a finger feels for, half its width
// in mm.
func Landmark(at Point, size float64) drawing.Mark {
	return drawing.Cross{Role: drawing.Hot, At: at, Size: size}
}

// Hand returns an open hand from above, the wrist's crease at the origin and the
// middle finger's tip at a length along x.
func Hand(length float64) []drawing.Mark {
	at := func(x, y float64) Point { return Point{X: x * length, Y: y * length} }
	finger := func(rootX, rootY, tipX, tipY, thick float64) drawing.Mark {
		return drawing.Limb{Role: drawing.Body, Fill: drawing.Hatch, A: at(rootX, rootY), B: at(tipX-thick, tipY),
			Ra: thick * length * 1.1, Rb: thick * length}
	}
	palm := drawing.Line{Role: drawing.Body, Fill: drawing.Hatch, Closed: true, Smooth: true, Points: []Point{
		at(-0.16, 0.14), at(0, 0.145), at(0.10, 0.175), at(0.30, 0.225), at(0.50, 0.235), at(0.585,
			0.20), at(0.60, 0.02), at(0.57, -0.13),
		at(0.50, -0.205), at(0.34, -0.225), at(0.16, -0.185), at(0, -0.14), at(-0.16, -0.135), at(-0.16,
			-0.135), at(-0.16, 0.14)}}
	return []drawing.Mark{
		finger(0.14, 0.16, 0.56, 0.44, 0.052),
		finger(0.56, 0.165, 0.90, 0.225, 0.045), finger(0.58, 0.065, 1.0, 0.07, 0.046),
		finger(0.57, -0.04, 0.94, -0.075, 0.044), finger(0.53, -0.14, 0.78, -0.20, 0.038),
		palm,
		drawing.Line{Role: drawing.Body, Pen: drawing.Thin, Smooth: true, Points: []Point{at(0, 0.145), at(0.012,
			0), at(0, -0.14)}},
		drawing.Axis{Role: drawing.Body, A: at(0, 0.035), B: at(1, 0.07)},
	}
}

// Card returns a piece of corrugated card from above with the two dents that sit
// bones leave, their centres apart by a distance and each a breadth wide.
func Card(apart, breadth float64) []drawing.Mark {
	w, h := apart*1.15+90, apart*0.75+70
	m := []drawing.Mark{drawing.Line{Role: drawing.Ink, Fill: drawing.Sheet, Closed: true, Points: []Point{{X: -w,
		Y: -h}, {X: w, Y: -h}, {X: w, Y: h}, {X: -w, Y: h}}}}
	for x := -w + 12; x < w; x += 12 {
		m = append(m, drawing.Line{Role: drawing.Soft, Pen: drawing.Thin, Points: []Point{{X: x, Y: -h}, {X: x,
			Y: h}}})
	}
	for _, side := range [2]float64{-1, 1} {
		for i, share := range [3]float64{1, 0.66, 0.33} {
			var oval []Point
			for a := 0.0; a < 360; a += 30 {
				oval = append(oval, Point{X: side*apart/2 + breadth/2*share*math.Cos(a*math.Pi/180),
					Y: breadth * 0.72 * share * math.Sin(a*math.Pi/180)})
			}
			fill, pen := drawing.Open, drawing.Thin
			if i == 0 {
				fill, pen = drawing.Wash, drawing.Wide
			}
			m = append(m, drawing.Line{Role: drawing.Body, Pen: pen, Fill: fill, Closed: true, Smooth: true,
				Points: oval})
		}
		m = append(m, drawing.Cross{Role: drawing.Body, At: Point{X: side * apart / 2}})
	}
	return m
}

// PressUp returns a person in a press-up from the front: hands flat on the floor
// with their outer edges apart by a width, mm.
func (p Person) PressUp(width float64) []drawing.Mark {
	s := p.scale()
	hand := Point{X: width/2 - 45*s, Y: 22 * s}
	shoulder := Point{X: p.ShoulderWidth/2 - 8*s, Y: 0}
	reach := 0.93 * (p.UpperArm + p.Forearm)
	gap := hand.X - shoulder.X
	shoulder.Y = hand.Y + math.Sqrt(max(reach*reach-gap*gap, 0.2*reach*reach))
	way := hand.Minus(shoulder)
	chord := way.Length()
	along := (p.UpperArm*p.UpperArm - p.Forearm*p.Forearm + chord*chord) / (2 * chord)
	out := math.Sqrt(max(p.UpperArm*p.UpperArm-along*along, 0))
	elbow := shoulder.Along(way.Unit(), along).Along(way.Unit().Left(), out)
	var m []drawing.Mark
	chest := Point{Y: shoulder.Y - 6*s}
	var oval []Point
	for _, q := range [][2]float64{{1, 0.1}, {0.93, 0.62}, {0.55, 0.95}, {0, 1}, {-0.55, 0.95}, {-0.93, 0.62},
		{-1, 0.1}, {-0.86, -0.6}, {-0.42, -0.95}, {0, -0.9}, {0.42, -0.95}, {0.86, -0.6}} {
		oval = append(oval, chest.Plus(Point{X: q[0] * (p.ShoulderWidth/2 + 4*s), Y: q[1] * 105 * s}))
	}
	m = append(m, drawing.Line{Role: drawing.Body, Fill: drawing.Hatch, Closed: true, Smooth: true, Points: oval})
	for _, side := range [2]func(Point) Point{mirrored, func(q Point) Point { return q }} {
		m = append(m,
			drawing.Line{Role: drawing.Body, Fill: drawing.Wash, Closed: true, Smooth: true, Points: []Point{
				side(hand.Plus(Point{X: -44 * s, Y: -20 * s})), side(hand.Plus(Point{X: -42 * s,
					Y: 2 * s})), side(hand.Plus(Point{X: -16 * s, Y: 20 * s})),
				side(hand.Plus(Point{X: 24 * s, Y: 20 * s})), side(hand.Plus(Point{X: 43 * s,
					Y: 0})), side(hand.Plus(Point{X: 45 * s, Y: -20 * s}))}},
			form(drawing.Wide, drawing.Hatch, side(elbow), side(hand), forearmFront),
			form(drawing.Wide, drawing.Hatch, side(shoulder), side(elbow), upperArmFront),
			drawing.Line{Role: drawing.Body, Pen: drawing.Centre, Points: []Point{side(shoulder), side(elbow),
				side(hand)}},
			drawing.Cross{Role: drawing.Body, At: side(shoulder)}, drawing.Cross{Role: drawing.Body, At: side(elbow)})
	}
	return append(m, faceFront(chest.Y+0.105*p.Stature, 0.130*p.Stature)...)
}
