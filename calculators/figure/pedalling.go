package figure

import "plumbline/calculators/drawing"

// Pedalling returns what a leg needs of a bike, with the leg on it: seat tube,
// post and saddle, the cranks, and the circle that the pedals run on. A nil pose
// leaves the leg out.
func Pedalling(b Build, p *Pose) []drawing.Mark {
	foot, _ := b.seatLine()
	marks := []drawing.Mark{
		drawing.Circle{Role: drawing.Soft, Pen: drawing.Centre, Centre: Point{}, Radius: or(b.Crank, 170)},
	}
	if p != nil {
		marks = append(marks, FarLeg(*p)...)
	}
	marks = append(marks, farCrank(b)...)
	marks = append(marks, drawing.Tube{Role: drawing.Ink, Fill: drawing.Sheet, A: foot, B: b.seatTop(),
		Ra: halfSeatTube, Rb: halfSeatTube})
	if b.Saddle > 0 {
		marks = append(marks, saddle(b)...)
	}
	marks = append(marks,
		drawing.Limb{Role: drawing.Ink, Fill: drawing.Sheet, A: Point{}, B: b.Spindle(), Ra: 19, Rb: 14},
		drawing.Circle{Role: drawing.Ink, Pen: drawing.Thin, Fill: drawing.Sheet, Centre: Point{}, Radius: 10},
		pedal(b.Spindle(), b.PedalAngle, drawing.Wide))
	if p != nil {
		marks = append(marks, Limbs(*p)...)
	}
	return marks
}
