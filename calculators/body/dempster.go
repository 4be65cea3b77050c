package body

// Segments after Dempster, for comparison with older literature only. Their ends
// differ from de Leva's: this thigh starts at the trochanter and carries 10 % of
// the body, de Leva's starts at the hip joint and carries 14 to 15 %. Never mix
// rows of both. Only the radius about the centre is printed, for the sagittal
// axis.
//
// Source: Dempster 1955 as adapted by Winter 2009, table 4.1; read in a public
// data file.
var (
	// DempsterThigh is trochanter to knee condyles.
	DempsterThigh = Segment{Mass: 0.100, Centre: 0.433, Sagittal: 0.323}
	// DempsterShank is knee condyles to inner ankle bone.
	DempsterShank = Segment{Mass: 0.0465, Centre: 0.433, Sagittal: 0.302}
	// DempsterFoot is outer ankle bone to the second metatarsal's head.
	DempsterFoot = Segment{Mass: 0.0145, Centre: 0.5, Sagittal: 0.475}
	// DempsterLeg is trochanter to inner ankle bone, the foot's mass included.
	DempsterLeg = Segment{Mass: 0.161, Centre: 0.447, Sagittal: 0.326}
)

// DempsterWhole is the six-part split of the body that field studies of riders
// used: shares of the whole mass, limbs each counted once.
//
// Source: Moore 2012, table 5.1, after Dempster.
var DempsterWhole = struct{ Head, Trunk, UpperArm, ForearmHand, Thigh, ShankFoot float64 }{
	0.068, 0.510, 0.028, 0.022, 0.100, 0.061,
}

// WholeMass returns the sum of a six-part split with both sides: 1 for a split
// that loses nothing.
func WholeMass() float64 {
	d := DempsterWhole
	return d.Head + d.Trunk + 2*(d.UpperArm+d.ForearmHand+d.Thigh+d.ShankFoot)
}
