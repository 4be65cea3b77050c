package figure

import "plumbline/calculators/drawing"

// SaddleAlone returns a saddle's shell and rails from the side, its point at a
// place, with its nose pointing down by a tilt in degrees. A length of nose of 0
// takes a plain one.
func SaddleAlone(role drawing.Role, at Point, tilt, nose float64) drawing.Mark {
	length := or(nose, 155)
	along := drawing.Polar(-tilt, 1)
	return drawing.Line{Role: role, Fill: drawing.Sheet, Closed: true, Smooth: true, Points: place(at, along, 1, 1,
		length, -9, length-12, -2, 0.62*length, 0, 0.3*length, -1, 0, 0, -50, 2,
		-88, 9, -112, 12, -122, 4, -118, -14, -96, -24,
		-40, -25, 10, -20, 0.62*length, -19, length-8, -21)}
}
