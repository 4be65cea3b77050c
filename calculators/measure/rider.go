package measure

// The rider, barefoot and lightly dressed. The lengths are taken between bony
// landmarks, as in ISO 7250-1 (from memory), so that they can be compared with
// surveys of measured people.
var (
	Stature = &Quantity{Key: "stature", Label: "Height", Unit: Mm, Low: 1300, High: 2150, Least: 650, Most: 3225,
		Repeat: 5,
		How: "Stand barefoot with heels, seat and shoulders against a wall and look straight ahead. A helper lays " +
			"a book flat on the head, square to the wall, and you measure from the floor to its lower edge."}
	Mass = &Quantity{Key: "mass", Label: "Body mass", Unit: Kg, Low: 35, High: 160, Least: 15, Most: 320, Repeat: 1,
		How: "Stand on a bathroom scale without shoes, in light clothes. Pack and riding gear are counted apart."}
	Inseam = &Quantity{Key: "inseam", Label: "Inside leg", Unit: Mm, Low: 550, High: 1050, Least: 275, Most: 1575,
		Repeat: 10,
		How: "Stand barefoot with your back to a wall, feet 15 to 20 cm apart, and pull a thin hardback book up " +
			"firmly between your legs, square to the wall. Measure from the book's top edge to the floor, three " +
			"times, and use the middle reading."}
	TrochanterHeight = &Quantity{Key: "trochanter-height", Label: "Hip bone height", Unit: Mm, Low: 600,
		High: 1150, Least: 300, Most: 1725, Repeat: 15,
		How: "Swing one leg and feel at the side of the hip for the bony knob that moves, the greater trochanter. " +
			"Stand still on both feet while a helper measures from the top of that knob straight down to the floor."}
	KneeHeight = &Quantity{Key: "knee-height", Label: "Knee height", Unit: Mm, Low: 330, High: 650, Least: 165,
		Most: 975, Repeat: 12,
		How: "Stand barefoot with straight knees. A helper measures from the bony bump on the outer side of the " +
			"knee, the middle of the joint, straight down to the floor."}
	TrunkLength = &Quantity{Key: "trunk-length", Label: "Hip to shoulder", Unit: Mm, Low: 380, High: 680,
		Least: 190, Most: 1020, Repeat: 15,
		How: "Stand side-on and upright. A helper measures in a straight line from the bony knob at the side of " +
			"the hip to the bony point on top of the shoulder."}
	ArmLength = &Quantity{Key: "arm-length", Label: "Shoulder to grip centre", Unit: Mm, Low: 430, High: 900,
		Least: 215, Most: 1350, Repeat: 12,
		How: "Hold a pen in your fist and let the arm hang straight at your side. A helper measures from the bony " +
			"point on top of the shoulder to the pen."}
	ArmSpan = &Quantity{Key: "arm-span", Label: "Arm span", Unit: Mm, Low: 1250, High: 2250, Least: 625,
		Most: 3375, Repeat: 10,
		How: "Stand with your back to a wall and stretch both arms out level. Mark the tips of the two middle " +
			"fingers and measure between the marks."}
	ShoulderWidth = &Quantity{Key: "shoulder-width", Label: "Between shoulder points", Unit: Mm, Low: 270,
		High: 510, Least: 135, Most: 765, Repeat: 8,
		How: "Let the arms hang. A helper feels for the outermost bony point on top of each shoulder and measures " +
			"straight across from one to the other, not around the back."}
	ThighLength = &Quantity{Key: "thigh-length", Label: "Thigh", Unit: Mm, Low: 300, High: 560, Least: 150,
		Most: 840, Repeat: 12,
		How: "A helper measures from the bony knob at the side of the hip to the bony bump on the outer side of " +
			"the knee, with you standing straight."}
	ShankLength = &Quantity{Key: "shank-length", Label: "Lower leg", Unit: Mm, Low: 280, High: 570, Least: 140,
		Most: 855, Repeat: 10,
		How: "A helper measures from the bony bump on the outer side of the knee to the middle of the outer ankle " +
			"bone, with you standing straight."}
	HipWidth = &Quantity{Key: "hip-width", Label: "Between hip joints", Unit: Mm, Low: 130, High: 220, Least: 65,
		Most: 330, Repeat: 10,
		// Seven tenths: the joints lie about 14 % of that breadth inwards on each
		// side (Bell, Pedersen and Brand 1990, from memory).
		How: "The joints themselves cannot be felt. A helper measures across the two bony points at the front of " +
			"the pelvis; enter seven tenths of that."}
	SitBoneWidth = &Quantity{Key: "sit-bone-width", Label: "Sit bones", Unit: Mm, Low: 80, High: 180, Least: 40,
		Most: 270, Repeat: 5,
		How: "Sit on corrugated card on a firm stool, lean forward as on the bike and lift the feet a little. " +
			"Measure across the two dents, and say whether between their centres or their outer edges."}
	HandLength = &Quantity{Key: "hand-length", Label: "Hand", Unit: Mm, Low: 130, High: 240, Least: 65, Most: 360,
		Repeat: 3,
		How: "Lay the hand flat, palm up. Measure from the crease at the wrist nearest the palm to the tip of the " +
			"middle finger."}
	FingerLength = &Quantity{Key: "finger-length", Label: "Index finger", Unit: Mm, Low: 50, High: 110, Least: 25,
		Most: 165, Repeat: 3,
		How: "Hold the braking finger straight. Measure on the palm side from the crease where it leaves the palm " +
			"to its tip."}
	PushUpWidth = &Quantity{Key: "push-up-width", Label: "Press-up hand width", Unit: Mm, Low: 450, High: 900,
		Least: 225, Most: 1350, Repeat: 15,
		How: "Do a few press-ups with eyes closed and let the hands find the width that feels strongest. A helper " +
			"marks the outer edges of both hands; measure between the marks."}
	LegDifference = &Quantity{Key: "leg-difference", Label: "Leg length difference", Unit: Mm, High: 40, Most: 80,
		Repeat: 5,
		How: "Stand barefoot on a hard, level floor. A helper slides thin boards under the shorter leg until the " +
			"two hip crests are level; measure the boards."}
)

// Postures that the reader sets. They are wishes rather than measurements, so
// their repeat error is zero; a video still can be read to about five degrees.
var (
	TrunkAngle = &Quantity{Key: "trunk-angle", Label: "Trunk angle", Unit: Deg, Low: 20, High: 80, Least: -10,
		Most: 100,
		How: "Have a helper take a picture from the side at hip height. It is the angle from the horizontal of the " +
			"line from the hip bone to the shoulder point."}
	SeatedTrunk = &Quantity{Key: "seated-trunk", Label: "Trunk angle, seated", Unit: Deg, Low: 20, High: 90, Least: -10,
		Most: 100,
		How: "Have a helper take a picture from the side at hip height while you sit and pedal. It is the angle from the " +
			"horizontal of the line from the hip bone to the shoulder point."}
	ElbowBend = &Quantity{Key: "elbow-bend", Label: "Elbow bend", Unit: Deg, High: 120, Most: 150,
		How: "Have a helper take a picture from the side in riding position. It is how far the elbow is bent, zero " +
			"being a straight arm."}
	StandingKnee = &Quantity{Key: "standing-knee", Label: "Knee bend, standing", Unit: Deg, Low: 10, High: 100,
		Most: 140,
		How: "Stand ready on level pedals and have a helper take a picture from the side. It is how far the knees " +
			"are bent, as a mean of both, zero being straight legs."}
)
