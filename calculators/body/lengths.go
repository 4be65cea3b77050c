package body

// The lengths of the survey that a fit can use, in mm; see Survey for the source.
var (
	// Inseam is the height of the crotch above the floor: the inside leg.
	Inseam = Survey{
		Female: Sample{782.3172, 44.6367, 712, 857, -179.096, 0.590377, 23.583},
		Male:   Sample{845.9299, 46.4992, 771, 925, -176.319, 0.582075, 23.878},
	}
	// TrochanterHeight is the height of the thigh bone's outer knob, the hip's landmark on the skin.
	TrochanterHeight = Survey{
		Female: Sample{845.3510, 44.6763, 774.2, 919, -126.901, 0.597033, 22.959},
		Male:   Sample{900.9307, 49.1717, 824, 985, -169.933, 0.609757, 25.900},
	}
	// KneeHeight is the height of the knee's outer landmark, the lateral femoral epicondyle.
	KneeHeight = Survey{
		Female: Sample{465.9366, 27.1397, 422, 511, -84.389, 0.337939, 16.310},
		Male:   Sample{491.6580, 26.5823, 449, 537, -93.143, 0.332989, 13.624},
	}
	// MalleolusHeight is the height of the outer ankle bone.
	MalleolusHeight = Survey{
		Female: Sample{62.7482, 5.1084, 54, 71, 6.006, 0.034844, 4.594},
		Male:   Sample{72.9045, 5.6669, 64, 83, 4.983, 0.038675, 5.009},
	}
	// FootLength is heel to longest toe.
	FootLength = Survey{
		Female: Sample{246.2931, 12.4355, 226, 267.8, 18.498, 0.139883, 8.604},
		Male:   Sample{271.1783, 13.1026, 250, 293, 30.134, 0.137252, 9.120},
	}
	// HeelToBall is heel to the first joint of the great toe, along the foot.
	HeelToBall = Survey{
		Female: Sample{182.0514, 9.6419, 167, 198, 13.747, 0.103351, 6.998},
		Male:   Sample{200.9351, 10.4709, 184, 218, 22.336, 0.101695, 7.814},
	}
	// Thigh is trochanter height less knee height.
	Thigh = Survey{
		Female: Sample{379.4144, 24.0485, 340, 418, -42.512, 0.259093, 17.372},
		Male:   Sample{409.2727, 28.4168, 364, 458, -76.790, 0.276767, 21.158},
	}
	// Shank is knee height less ankle height.
	Shank = Survey{
		Female: Sample{403.1883, 25.9101, 361, 446, -90.395, 0.303096, 17.113},
		Male:   Sample{418.7536, 24.5698, 379.1, 460, -98.125, 0.294314, 14.024},
	}
	// ShoulderHeight is floor to the shoulder's bony tip, the acromion.
	ShoulderHeight = Survey{
		Female: Sample{1335.0952, 58.0799, 1242, 1434, -96.855, 0.879321, 13.658},
		Male:   Sample{1440.7369, 63.2872, 1339, 1546, -126.885, 0.892614, 16.162},
	}
	// NeckHeight is floor to the lowest neck bone, the seventh cervical.
	NeckHeight = Survey{
		Female: Sample{1395.6672, 59.5237, 1300, 1498, -90.410, 0.912558, 10.528},
		Male:   Sample{1517.2996, 63.2783, 1416, 1623, -78.121, 0.908443, 11.228},
	}
	// Trunk is shoulder height less trochanter height.
	Trunk = Survey{
		Female: Sample{489.7442, 29.3401, 443, 539, 30.046, 0.282288, 23.080},
		Male:   Sample{539.8062, 33.3991, 482.1, 593, 43.048, 0.282857, 27.197},
	}
	// UpperArm is acromion to elbow.
	UpperArm = Survey{
		Female: Sample{311.1984, 17.1647, 283.2, 340, -34.014, 0.211985, 10.463},
		Male:   Sample{335.2445, 17.4828, 307, 365, -20.945, 0.202817, 10.601},
	}
	// Forearm is elbow to wrist.
	Forearm = Survey{
		Female: Sample{241.3303, 15.2427, 218, 268, -24.473, 0.163222, 11.072},
		Male:   Sample{267.8827, 15.4172, 244, 295, -14.434, 0.160753, 10.783},
	}
	// ForearmToGrip is the back of the elbow to the middle of a gripped rod.
	ForearmToGrip = Survey{
		Female: Sample{317.7120, 18.0249, 290, 350, -13.410, 0.203333, 12.433},
		Male:   Sample{349.0103, 18.0151, 320, 379, 2.599, 0.197249, 11.906},
	}
	// ArmSpan is fingertip to fingertip with both arms out.
	ArmSpan = Survey{
		Female: Sample{1660.2865, 82.9722, 1529, 1803, -63.592, 1.058586, 47.612},
		Male:   Sample{1814.1543, 84.6323, 1680, 1957, 29.441, 1.016228, 48.065},
	}
	// ShoulderWidth is the breadth between both acromia.
	ShoulderWidth = Survey{
		Female: Sample{365.3489, 18.2989, 335, 396, 102.816, 0.161214, 15.094},
		Male:   Sample{415.6756, 19.1617, 384, 447, 154.637, 0.148637, 16.230},
	}
	// DeltoidWidth is the breadth across both upper arms.
	DeltoidWidth = Survey{
		Female: Sample{450.3243, 28.6874, 406, 499, 189.143, 0.160384, 26.783},
		Male:   Sample{510.4248, 32.5056, 459, 567, 249.823, 0.148388, 30.877},
	}
	// HandLength is wrist crease to tip of the middle finger.
	HandLength = Survey{
		Female: Sample{181.0831, 10.0564, 165, 199, 16.234, 0.101229, 7.676},
		Male:   Sample{193.2778, 9.9465, 177, 210, 21.743, 0.097673, 7.356},
	}
	// HandBreadth is the breadth across the knuckles.
	HandBreadth = Survey{
		Female: Sample{78.1541, 3.8425, 72, 85, 32.101, 0.028280, 3.387},
		Male:   Sample{88.2614, 4.3880, 81, 96, 35.842, 0.029848, 3.882},
	}
	// HipBreadth is the breadth of the hips when seated.
	HipBreadth = Survey{
		Female: Sample{398.9617, 32.7491, 348, 456, 92.245, 0.188346, 30.443},
		Male:   Sample{379.2974, 30.2052, 333, 431, 96.272, 0.161157, 28.116},
	}
	// Stature is floor to crown; its line on itself is the identity.
	Stature = Survey{
		Female: Sample{1628.4733, 64.1995, 1525, 1740, 0, 1, 0},
		Male:   Sample{1756.2146, 68.5508, 1648, 1870, 0, 1, 0},
	}
)
