package geometry

// TyreRadius returns a wheel's nominal outer radius, in mm.
//
//	r = BSD/2 + H    H = W for W ≥ 28, else W + 2.5
//
// beadSeat is the rim's bead-seat diameter in mm (559, 584, 622 …) and width
// the tyre's designation in mm. The radius under load is smaller and changes
// with rim width: a measured radius wins. It returns false unless both are
// above 0.
//
// Source: ISO 5775-1 designation rule, as summarised in public encyclopedia
// articles; the 28-622 tyre gives the 2130 mm that cycle computers list.
func TyreRadius(beadSeat, width float64) (float64, bool) {
	if !finite(beadSeat, width) || beadSeat <= 0 || width <= 0 {
		return 0, false
	}
	height := width
	if width < 28 {
		height = width + 2.5
	}
	r := beadSeat/2 + height
	return r, finite(r)
}
