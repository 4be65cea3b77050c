package figure

import "plumbline/calculators/drawing"

// bareFootSide returns a bare foot seen from its inner side, from heel to great toe: with
// its arch, the toe's joint and nail, and the ankle's knob.
func bareFootSide(heel, toe Point, flip float64) []drawing.Mark {
	way := toe.Minus(heel)
	length := way.Length()
	if length == 0 {
		return nil
	}
	u := way.Unit()
	foot := drawing.Line{Role: drawing.Body, Fill: drawing.Hatch, Closed: true, Smooth: true,
		Points: place(heel, u, length, flip,
			-0.01, 0.06, 0.02, 0.01, 0.12, 0, 0.28, 0.012, 0.42, 0.045, 0.56, 0.03, 0.68, 0.002, 0.78, 0.004,
			0.86, 0.012, 0.95, 0.004, 1, 0.03, 0.985, 0.075, 0.90, 0.092, 0.80, 0.10, 0.72, 0.135, 0.58, 0.21,
			0.46, 0.30, 0.40, 0.38, 0.16, 0.39, 0.075, 0.30, 0.02, 0.19)}
	line := func(at ...float64) drawing.Mark {
		return drawing.Line{
			Role:   drawing.Body,
			Pen:    drawing.Thin,
			Smooth: true,
			Points: place(heel, u, length, flip, at...),
		}
	}
	return []drawing.Mark{foot,
		line(0.915, 0.078, 0.955, 0.074, 0.99, 0.05),              // the nail
		line(0.83, 0.02, 0.815, 0.055, 0.83, 0.088),               // the great toe's joint
		line(0.235, 0.275, 0.255, 0.30, 0.285, 0.30, 0.30, 0.275)} // the ankle's knob
}

// LegOf is a leg that is not on a bike, seen from the side: its joints, and the foot's heel
// and tip. Bare leaves the shoe off. Left is for somebody who faces left.
type LegOf struct {
	Hip, Knee, Ankle, Heel, Toe Point
	Left                        bool
	Thin                        bool // the leg behind: thin lines, no hatching
}

// Marks returns the bare foot, shank and thigh with the leg of the shorts.
func (l LegOf) Marks() []drawing.Mark {
	flip, pen, fill := 1.0, drawing.Wide, drawing.Hatch
	if l.Left {
		flip = -1
	}
	if l.Thin {
		pen, fill = drawing.Thin, drawing.Sheet
	}
	m := bareFootSide(l.Heel, l.Toe, flip)
	if l.Thin {
		foot := m[0].(drawing.Line)
		foot.Pen, foot.Fill = pen, fill
		m[0] = foot
	}
	knee := form(pen, fill, l.Knee, l.Ankle, facing(shankForm, flip))
	m = append(m, knee, form(pen, fill, l.Hip, l.Knee, facing(thighForm, flip)))
	return append(m, l.shorts(pen, flip)...)
}

func (l LegOf) shorts(pen drawing.Pen, flip float64) []drawing.Mark {
	at := station{0.61, 0.215, 0.19}
	return []drawing.Mark{form(pen, drawing.Wash, l.Hip, l.Knee, facing(shortsForm, flip)),
		hem(l.Hip, l.Knee, facing([]station{at}, flip)[0])}
}

// facing returns the sections of somebody who faces the other way, where flip is -1.
func facing(form []station, flip float64) []station {
	if flip > 0 {
		return form
	}
	out := make([]station, len(form))
	for i, s := range form {
		out[i] = station{s.at, s.right, s.left}
	}
	return out
}

// TrunkOf returns the trunk in a shirt with neck and head, from hip to shoulder, of
// somebody who faces to the right of that way: nod turns the face from where the trunk
// looks, degrees anticlockwise.
func TrunkOf(hip, shoulder Point, nod float64) []drawing.Mark {
	way := shoulder.Minus(hip)
	length, up := way.Length(), way.Unit()
	size := 0.37 * length
	look := drawing.Polar(up.Angle()-90+nod, 1)
	base := shoulder.Along(up, 0.03*length).Along(up.Left(), 0.02*length)
	middle := base.Along(look.Left(), 0.78*size).Along(look, 0.12*size)
	skull := place(middle, look, size, 1, -0.50, 0.05, -0.42, 0.38, -0.02, 0.54, 0.36, 0.40, 0.46, 0.14, 0.45, 0.06,
		0.545, -0.09, 0.53, -0.13, 0.46, -0.15, 0.475, -0.25, 0.455, -0.32, 0.44, -0.45, 0.33, -0.53, 0.12, -0.44,
		-0.08, -0.30, -0.34, -0.28)
	return []drawing.Mark{
		drawing.Limb{Role: drawing.Body, Fill: drawing.Hatch, A: base, B: middle.Along(look.Left(), -0.25*size),
			Ra: 0.36 * size, Rb: 0.26 * size},
		drawing.Line{Role: drawing.Body, Fill: drawing.Hatch, Closed: true, Smooth: true, Points: skull},
		drawing.Line{Role: drawing.Body, Pen: drawing.Thin, Smooth: true, // the hair's edge
			Points: place(middle, look, size, 1, 0.40, 0.36, 0.16, 0.30, 0.02, 0.06, -0.12, 0.04, -0.30, -0.26)},
		form(drawing.Wide, drawing.Wash, hip, shoulder, trunkForm),
		hem(hip, shoulder, station{0.12, 0.228, 0.188}),
	}
}

// ArmOf returns an arm with a short sleeve and an open hand that lies along the forearm's
// way, from shoulder over elbow to wrist.
func ArmOf(shoulder, elbow, wrist Point, hand float64) []drawing.Mark {
	u := wrist.Minus(elbow).Unit()
	tip := wrist.Along(u, hand)
	m := []drawing.Mark{
		drawing.Limb{
			Role: drawing.Body,
			Pen:  drawing.Thin,
			Fill: drawing.Wash,
			A:    wrist.Along(u, 0.18*hand).Along(u.Left(), 0.1*hand),
			B:    wrist.Along(u, 0.62*hand).Along(u.Left(), 0.2*hand),
			Ra:   0.085 * hand,
			Rb:   0.06 * hand,
		},
		drawing.Limb{Role: drawing.Body, Fill: drawing.Hatch, A: wrist.Along(u, 0.08*hand), B: tip.Along(u, -0.05*hand),
			Ra: 0.15 * hand, Rb: 0.055 * hand},
	}
	for _, y := range [2]float64{0.05, -0.04} {
		m = append(m, drawing.Line{Role: drawing.Body, Pen: drawing.Thin, Points: []Point{
			wrist.Along(u, 0.55*hand).
				Along(u.Left(), 1.4*y*hand),
			wrist.Along(u, 0.95*hand).Along(u.Left(), 0.5*y*hand),
		}})
	}
	return append(m, form(drawing.Wide, drawing.Hatch, elbow, wrist.Along(u, 0.05*hand), forearmForm),
		form(drawing.Wide, drawing.Hatch, shoulder, elbow, upperArmForm),
		form(drawing.Wide, drawing.Wash, shoulder, elbow, sleeveForm),
		hem(shoulder, elbow, station{0.53, 0.19, 0.185}))
}
