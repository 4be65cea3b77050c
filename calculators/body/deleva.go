package body

// Segment is one part of the body: its share of the whole mass, its centre of
// mass as a share of its length from the first named end, and its radii of
// gyration about that centre as shares of its length. With two ends given in
// words, a segment of one author never mixes with the ends of another.
type Segment struct {
	Mass, Centre                     float64
	Sagittal, Transverse, Lengthwise float64
}

// SegmentPair is a segment for both sexes.
type SegmentPair struct{ Female, Male Segment }

// Of returns the segment of a sex; without one, the mean of both in every number.
func (p SegmentPair) Of(sex Sex) Segment {
	switch sex {
	case Female:
		return p.Female
	case Male:
		return p.Male
	}
	f, m := p.Female, p.Male
	return Segment{
		(f.Mass + m.Mass) / 2, (f.Centre + m.Centre) / 2,
		(f.Sagittal + m.Sagittal) / 2, (f.Transverse + m.Transverse) / 2, (f.Lengthwise + m.Lengthwise) / 2,
	}
}

// Segments after de Leva. A limb's mass is of one limb.
//
// Source: de Leva 1996, J Biomech 29:1223-1230, table 4, adjusted from
// Zatsiorsky and Seluyanov; read in two public transcriptions, which agree on
// every mass and centre here. They differ on the woman's hand, sagittal radius
// (0.531 here, 0.631 there), which no fit uses.
var (
	// HeadMass is the head, vertex to the middle of the jaw angles.
	HeadMass = SegmentPair{
		Female: Segment{0.0668, 0.5894, 0.33, 0.359, 0.318},
		Male:   Segment{0.0694, 0.5976, 0.362, 0.376, 0.312},
	}
	// TrunkMass is the trunk, notch above the breastbone to the middle of the hip joints.
	TrunkMass = SegmentPair{
		Female: Segment{0.4257, 0.4151, 0.357, 0.339, 0.171},
		Male:   Segment{0.4346, 0.4486, 0.372, 0.347, 0.191},
	}
	// UpperArmMass is the upper arm, shoulder joint to elbow joint.
	UpperArmMass = SegmentPair{
		Female: Segment{0.0255, 0.5754, 0.278, 0.26, 0.148},
		Male:   Segment{0.0271, 0.5772, 0.285, 0.269, 0.158},
	}
	// ForearmMass is the forearm, elbow joint to wrist joint.
	ForearmMass = SegmentPair{
		Female: Segment{0.0138, 0.4559, 0.261, 0.257, 0.094},
		Male:   Segment{0.0162, 0.4574, 0.276, 0.265, 0.121},
	}
	// HandMass is the hand, wrist joint to third knuckle.
	HandMass = SegmentPair{
		Female: Segment{0.0056, 0.7474, 0.531, 0.454, 0.335},
		Male:   Segment{0.0061, 0.79, 0.628, 0.513, 0.401},
	}
	// ThighMass is the thigh, hip joint to knee joint.
	ThighMass = SegmentPair{
		Female: Segment{0.1478, 0.3612, 0.369, 0.364, 0.162},
		Male:   Segment{0.1416, 0.4095, 0.329, 0.329, 0.149},
	}
	// ShankMass is the shank, knee joint to ankle joint.
	ShankMass = SegmentPair{
		Female: Segment{0.0481, 0.4352, 0.267, 0.263, 0.092},
		Male:   Segment{0.0433, 0.4395, 0.251, 0.246, 0.102},
	}
	// FootMass is the foot, heel to longest toe.
	FootMass = SegmentPair{
		Female: Segment{0.0129, 0.4014, 0.299, 0.279, 0.139},
		Male:   Segment{0.0137, 0.4415, 0.257, 0.245, 0.124},
	}
	// HeadFromNeck is the head, vertex to the lowest neck bone.
	HeadFromNeck = SegmentPair{
		Female: Segment{0.0668, 0.4841, 0.271, 0.295, 0.261},
		Male:   Segment{0.0694, 0.5002, 0.303, 0.315, 0.261},
	}
	// TrunkFromShoulders is the trunk, middle of the shoulder joints to middle of the hip joints.
	TrunkFromShoulders = SegmentPair{
		Female: Segment{0.4257, 0.3782, 0.379, 0.361, 0.182},
		Male:   Segment{0.4346, 0.431, 0.384, 0.358, 0.197},
	}
)
