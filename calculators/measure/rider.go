package measure

// The rider, barefoot and lightly dressed. The lengths are taken between bony
// landmarks, as in ISO 7250-1 (from memory), so that they can be compared with
// surveys of measured people.
var (
	Stature = &Quantity{Key: "stature", Of: OfRider, Label: "Height", Unit: Mm, Low: 1300, High: 2150, Least: 650,
		Most:   3225,
		Repeat: 5,
		How: Instruction{
			Text: "Stand barefoot with heels, seat and shoulders against a wall and look level. A helper slides a " +
				"book down the wall, square to it, until it rests on your head, and marks its lower edge. Measure " +
				"from the floor to the mark.",
			Slip: "The book tilts when you hold it yourself, and the height comes out too large.",
			Who:  Eased, Take: "tape measure, hardback book, wall, pencil", Minutes: 4, Figure: "measure-stature"}}
	Mass = &Quantity{Key: "mass", Of: OfRider, Label: "Body mass", Unit: Kg, Low: 35, High: 160, Least: 15,
		Most: 320, Repeat: 1,
		How: Instruction{
			Text: "Stand on a bathroom scale without shoes, in light clothes. Pack and riding gear are counted apart.",
			Slip: "The scale stands on carpet and reads too little. Put it on a hard floor.",
			Take: "bathroom scale", Minutes: 1}}
	Inseam = &Quantity{Key: "inseam", Of: OfRider, Label: "Inside leg", Unit: Mm, Low: 550, High: 1050,
		Least: 275, Most: 1575,
		Repeat: 10,
		How: Instruction{
			Text: "Stand barefoot with your back to a wall, feet 15 to 20 cm apart. Pull a thin hardback book up " +
				"between your legs, spine uppermost, as firmly as a saddle presses and square to the wall. Mark " +
				"its top edge and measure down to the floor. If three readings differ by more than 10 mm, start " +
				"again.",
			Slip: "The book is pulled harder each time, so the readings grow; or it tilts, and the back edge is " +
				"marked.",
			Who: Eased, Take: "thin hardback book, tape measure, wall, pencil", Minutes: 5, Figure: "measure-inseam"}}
	TrochanterHeight = &Quantity{Key: "trochanter-height", Of: OfRider, Label: "Hip-bone height", Unit: Mm, Low: 600,
		High: 1150, Least: 300, Most: 1725, Repeat: 15,
		How: Instruction{
			Text: "Lay your fingers on the outside of the hip and turn the whole leg in and out. The bony knob " +
				"that rolls under them is the outer corner of the thigh bone, the greater trochanter. Mark its " +
				"upper edge on your clothes, stand evenly on both feet, and have a helper measure straight down to " +
				"the floor.",
			Slip: "You sink as you bend to read, or the crest of the pelvis, a hand higher, is taken for the knob.",
			Who:  Helper, Take: "tape measure, pencil", Minutes: 5, Figure: "measure-trochanter-height"}}
	KneeHeight = &Quantity{Key: "knee-height", Of: OfRider, Label: "Knee height", Unit: Mm, Low: 330, High: 650,
		Least: 165,
		Most:  975, Repeat: 12,
		How: Instruction{
			Text: "Stand barefoot with straight knees. Find the bony bump on the outer side of the knee, just above " +
				"the joint line. A helper measures from its middle straight down to the floor.",
			Slip: "You took the head of the smaller shin bone, two fingers lower, for the bump.",
			Who:  Helper, Take: "tape measure, pencil", Minutes: 3, Figure: "measure-knee-height"}}
	TrunkLength = &Quantity{Key: "trunk-length", Of: OfRider, Label: "Hip to shoulder", Unit: Mm, Low: 380, High: 680,
		Least: 190, Most: 1020, Repeat: 15,
		How: Instruction{
			Text: "Stand upright. A helper measures along your side, in a straight line. Start at the upper edge " +
				"of the bony knob at the side of the hip and go to the bony edge on top of the same shoulder. As a " +
				"check take both heights from the floor: their difference should agree.",
			Slip: "The tape follows the ribs, or the shoulder is pulled up while it is read.",
			Who:  Helper, Take: "tape measure, pencil", Minutes: 5, Figure: "measure-trunk-length"}}
	ArmLength = &Quantity{Key: "arm-length", Of: OfRider, Label: "Shoulder to grip", Unit: Mm, Low: 430,
		High:  900,
		Least: 215, Most: 1350, Repeat: 12,
		How: Instruction{
			Text: "Let one arm hang straight and close your fist round a pencil. A helper measures from the bony " +
				"edge on top of the shoulder to the middle of the pencil. Take both arms; if they differ, repeat " +
				"them before you believe it.",
			Slip: "The elbow is a little bent, and the arm comes out too short.",
			Who:  Helper, Take: "tape measure, pencil", Minutes: 4, Figure: "measure-arm-length"}}
	ArmSpan = &Quantity{Key: "arm-span", Of: OfRider, Label: "Arm span", Unit: Mm, Low: 1250, High: 2250, Least: 625,
		Most: 3375, Repeat: 10,
		How: Instruction{
			Text: "Stand with your back to a wall, arms straight out at shoulder height, palms forward. Put one " +
				"middle fingertip against a corner or a door frame and have a helper mark the other. Measure " +
				"between them.",
			Slip: "One arm drops while you look at the other.",
			Who:  Helper, Take: "tape measure, wall with a corner, pencil", Minutes: 4, Figure: "measure-arm-span"}}
	ShoulderWidth = &Quantity{Key: "shoulder-width", Of: OfRider, Label: "Shoulder width", Unit: Mm, Low: 270,
		High: 510, Least: 135, Most: 765, Repeat: 8,
		How: Instruction{
			Text: "Let your arms hang. Follow the collarbone outwards until it ends at a flat, bony edge on top of " +
				"the shoulder: its outer edge is the shoulder point. A helper measures straight across your back " +
				"from one to the other.",
			Slip: "The tape follows the curve of the muscles, and the width comes out too large.",
			Who:  Helper, Take: "tape measure, pencil", Minutes: 4, Figure: "measure-shoulder-width"}}
	ThighLength = &Quantity{Key: "thigh-length", Of: OfRider, Label: "Thigh", Unit: Mm, Low: 300, High: 560,
		Least: 150,
		Most:  840, Repeat: 12,
		How: Instruction{
			Text: "Stand straight. A helper measures from the upper edge of the bony knob at the side of the hip to " +
				"the bony bump on the outer side of the knee.",
			Slip: "Points marked while sitting move with the skin when you stand up.",
			Who:  Helper, Take: "tape measure, pencil", Minutes: 4, Figure: "measure-thigh-length"}}
	ShankLength = &Quantity{Key: "shank-length", Of: OfRider, Label: "Lower leg", Unit: Mm, Low: 280, High: 570,
		Least: 140,
		Most:  855, Repeat: 10,
		How: Instruction{
			Text: "Stand straight. A helper measures from the bony bump on the outer side of the knee to the middle " +
				"of the outer ankle knob.",
			Slip: "You took the lower edge of the ankle knob for its middle.",
			Who:  Helper, Take: "tape measure, pencil", Minutes: 3, Figure: "measure-shank-length"}}
	FrontHipPoints = &Quantity{Key: "front-hip-points", Of: OfRider, Label: "Front hip points apart", Unit: Mm,
		Low:  180,
		High: 310, Least: 90, Most: 465, Repeat: 5,
		How: Instruction{
			Text: "Stand upright and feel for the bony point at the front of the pelvis on each side, where the hip " +
				"crest ends. A helper measures straight across from one point to the other.",
			Why:  "The middle of the groin crease is hard to find twice; the bony points can be felt through clothes.",
			Slip: "You laid the tape round the belly, or at the crests, which lie further apart.",
			Who:  Helper, Take: "tape measure", Minutes: 4, Figure: "measure-hip-width"}}
	HipWidth = &Quantity{Key: "hip-width", Of: OfRider, Label: "Between hip joints", Unit: Mm, Low: 130,
		High: 220, Least: 65,
		Most: 330, Repeat: 10,
		// Bell, Brand and Pedersen 1989: each joint lies 14 % of the distance between the front hip points inwards.
		How: Instruction{
			Text: "The joints lie too deep to be felt. Measure the distance between the two front hip points " +
				"instead and leave this empty; fill it in only from a picture that a clinician took.",
			Slip: "You entered the outer width of the hips, which is far more.", Figure: "measure-hip-width"}}
	SitBoneWidth = &Quantity{Key: "sit-bone-width", Of: OfRider, Label: "Sit bones", Unit: Mm, Low: 80, High: 180,
		Least: 40,
		Most:  270, Repeat: 5,
		How: Instruction{
			Text: "Put corrugated cardboard on a hard step and sit down on it in thin clothes. Lean forward as you " +
				"do on the bike, pull yourself down by the edge of the step and hold it for half a minute. Measure " +
				"across the two dents, and say whether between their deepest points or between their outer edges.",
			Slip: "You mixed up centres and outer edges: they differ by three to four centimetres.",
			Take: "corrugated cardboard, hard step, ruler", Minutes: 6, Figure: "measure-sit-bones"}}
	HandLength = &Quantity{Key: "hand-length", Of: OfRider, Label: "Hand", Unit: Mm, Low: 130, High: 240,
		Least: 65, Most: 360,
		Repeat: 3,
		How: Instruction{
			Text: "Lay the hand flat on a table, palm up, fingers straight. Measure from the crease of the wrist " +
				"nearest the palm to the tip of the middle finger.",
			Slip: "You took a second crease further up the arm.",
			Take: "ruler", Minutes: 2, Figure: "measure-hand-length"}}
	FingerLength = &Quantity{Key: "finger-length", Of: OfRider, Label: "Index finger", Unit: Mm, Low: 50,
		High: 110, Least: 25,
		Most: 165, Repeat: 3,
		How: Instruction{
			Text: "Hold the braking finger straight. Measure on the palm side from the crease where it leaves the " +
				"palm to its tip.",
			Slip: "You took the crease of the middle joint.",
			Take: "ruler", Minutes: 2, Figure: "measure-hand-length"}}
	PushUpWidth = &Quantity{Key: "push-up-width", Of: OfRider, Label: "Press-up hand width", Unit: Mm, Low: 450,
		High:  900,
		Least: 225, Most: 1350, Repeat: 15,
		How: Instruction{
			Text: "Lie face down and do a few press-ups, eyes closed, until your hands have found the width that " +
				"feels strongest. Hold it while a helper marks the outer edges of both hands, and measure between " +
				"the marks. Shake out your arms before the next one. If press-ups hurt, leave it out.",
			Slip: "You look at your hands and set them where they look right.",
			Who:  Helper, Take: "tape measure, masking tape", Minutes: 6, Figure: "measure-push-up-width"}}
	LegDifference = &Quantity{Key: "leg-difference", Of: OfRider, Label: "Leg length difference", Unit: Mm,
		High: 40, Most: 80,
		Repeat: 5,
		How: Instruction{
			Text: "Stand barefoot on a hard, level floor, feet a hand apart, knees straight, weight on both feet. " +
				"A helper kneels behind you and lays the edges of both hands on the tops of your hip crests. Push " +
				"thin boards of known height under the whole foot of the lower side, heel and sole, until both " +
				"hands are level. The boards’ height is the difference. Do it on two days.",
			Why: "Boards show the difference standing, as you ride. A tape from hip to ankle is the weaker way: it " +
				"names the wrong leg far more often.",
			Slip: "One knee is bent, or the weight is on one leg: both look like a difference.",
			Who:  Helper, Take: "thin boards of known height, hard level floor", Minutes: 10,
			Figure: "measure-leg-difference"}}
)

// Postures that the reader sets. They are wishes rather than measurements, so
// their repeat error is zero; a video still can be read to about five degrees.
var (
	TrunkAngle = &Quantity{Key: "trunk-angle", Label: "Trunk angle", Unit: Deg, Low: 20, High: 80, Least: -10,
		Most: 100,
		How: Instruction{
			Text: "How far you mean to lean, or how far a picture from the side shows you leaning: the angle from " +
				"the horizontal of the line from the knob of the hip to the shoulder point. For a picture put the " +
				"camera square to you at hip height, 5 m away.",
			Figure: "measure-seated-angles"}}
	SeatedTrunk = &Quantity{Key: "seated-trunk", Label: "Trunk angle, seated", Unit: Deg, Low: 20, High: 90,
		Least: -10,
		Most:  100,
		How: Instruction{
			Text: "Have a helper take a picture from the side at hip height while you sit and pedal. It is the " +
				"angle from the horizontal of the line from the hip bone to the shoulder point.",
			Slip: "The picture is taken from above or from behind, and the angle comes out too steep.",
			Who:  Helper, Take: "phone", Minutes: 5, Figure: "measure-seated-angles"}}
	ElbowBend = &Quantity{Key: "elbow-bend", Label: "Elbow bend", Unit: Deg, High: 120, Most: 150,
		How: Instruction{
			Text: "How far the elbow is bent, zero being a straight arm. A picture from the side shows it, taken " +
				"while you sit and pedal with your hands on the grips.",
			Figure: "measure-seated-angles"}}
	StandingKnee = &Quantity{Key: "standing-knee", Label: "Knee bend, standing", Unit: Deg, Low: 10, High: 100,
		Most: 140,
		How: Instruction{
			Text: "How far the knees are bent as you stand ready on level pedals, as a mean of both, zero being " +
				"straight legs. A picture from the side shows it.",
			Figure: "measure-standing-angles"}}
)
