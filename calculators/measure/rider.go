package measure

// The rider, barefoot and lightly dressed. The lengths are taken between bony
// landmarks, as in ISO 7250-1 (from memory), so that they can be compared with
// surveys of measured people.
var (
	Stature = length("stature", "Height", 1300, 2150, 5,
		"Stand barefoot with heels, seat and shoulders against a wall and look straight ahead. A helper lays a book flat on the head, square to the wall, and you measure from the floor to its lower edge.")
	Mass = mass("mass", "Body mass", 35, 160, 1, 15, 320,
		"Stand on a bathroom scale without shoes, in light clothes. Pack and riding gear are counted apart.")
	Inseam = length("inseam", "Inside leg", 550, 1050, 10,
		"Stand barefoot with your back to a wall, feet 15 to 20 cm apart, and pull a thin hardback book up firmly between your legs, square to the wall. Measure from the book's top edge to the floor, three times, and use the middle reading.")
	TrochanterHeight = length("trochanter-height", "Hip bone height", 600, 1150, 15,
		"Swing one leg and feel at the side of the hip for the bony knob that moves, the greater trochanter. Stand still on both feet while a helper measures from the top of that knob straight down to the floor.")
	KneeHeight = length("knee-height", "Knee height", 330, 650, 12,
		"Stand barefoot with straight knees. A helper measures from the bony bump on the outer side of the knee, the middle of the joint, straight down to the floor.")
	TrunkLength = length("trunk-length", "Hip to shoulder", 380, 680, 15,
		"Stand side-on and upright. A helper measures in a straight line from the bony knob at the side of the hip to the bony point on top of the shoulder.")
	ArmLength = length("arm-length", "Shoulder to grip centre", 430, 900, 12,
		"Hold a pen in your fist and let the arm hang straight at your side. A helper measures from the bony point on top of the shoulder to the pen.")
	ArmSpan = length("arm-span", "Arm span", 1250, 2250, 10,
		"Stand with your back to a wall and stretch both arms out level. Mark the tips of the two middle fingers and measure between the marks.")
	ShoulderWidth = length("shoulder-width", "Between shoulder points", 270, 510, 8,
		"Let the arms hang. A helper feels for the outermost bony point on top of each shoulder and measures straight across from one to the other, not around the back.")
	ThighLength = length("thigh-length", "Thigh", 300, 560, 12,
		"A helper measures from the bony knob at the side of the hip to the bony bump on the outer side of the knee, with you standing straight.")
	ShankLength = length("shank-length", "Lower leg", 280, 570, 10,
		"A helper measures from the bony bump on the outer side of the knee to the middle of the outer ankle bone, with you standing straight.")
	HipWidth = length("hip-width", "Between hip joints", 130, 220, 10,
		// Seven tenths: the joints lie about 14 % of that breadth inwards on each
		// side (Bell, Pedersen and Brand 1990, from memory).
		"The joints themselves cannot be felt. A helper measures across the two bony points at the front of the pelvis; enter seven tenths of that.")
	SitBoneWidth = length("sit-bone-width", "Sit bones", 80, 180, 5,
		"Sit on corrugated card on a firm stool, lean forward as on the bike and lift the feet a little. Measure across the two dents, and say whether between their centres or their outer edges.")
	HandLength = length("hand-length", "Hand", 130, 240, 3,
		"Lay the hand flat, palm up. Measure from the crease at the wrist nearest the palm to the tip of the middle finger.")
	FingerLength = length("finger-length", "Index finger", 50, 110, 3,
		"Hold the braking finger straight. Measure on the palm side from the crease where it leaves the palm to its tip.")
	PushUpWidth = length("push-up-width", "Press-up hand width", 450, 900, 15,
		"Do a few press-ups with eyes closed and let the hands find the width that feels strongest. A helper marks the outer edges of both hands; measure between the marks.")
	LegDifference = length("leg-difference", "Leg length difference", 0, 40, 5,
		"Stand barefoot on a hard, level floor. A helper slides thin boards under the shorter leg until the two hip crests are level; measure the boards.").allow(0, 80)
)
