package measure

// What is picked rather than measured. The order is the order of the index.
var (
	Sex = &Quantity{Key: "sex", Of: OfRider, Label: "Sex", Unit: One, High: 1, Most: 1,
		How: Instruction{
			Text: "We use it only to guess lengths that you have not measured. Skip it if you like; the guess gets " +
				"a little rougher."},
		Open:    "Rather not say",
		Choices: []Choice{{"f", "Woman"}, {"m", "Man"}}}
	Growing = &Quantity{Key: "growing", Of: OfRider, Label: "Still growing", Unit: One, High: 1, Most: 1,
		How: Instruction{Text: "Say whether the rider is still growing. Lengths then have to be measured again " +
			"every three months."},
		Choices: []Choice{{"no", "No"}, {"yes", "Yes"}}}
	Pedals = &Quantity{Key: "pedals", Label: "Pedals", Unit: One, High: 1, Most: 1,
		How: Instruction{
			Text:   "Say whether the shoes lock into the pedals or stand on them freely.",
			Figure: "flat-and-clipped"},
		Choices: []Choice{{"clip", "Clipped in"}, {"flat", "Flat"}}}
	ForkMeasure = &Quantity{Key: "fork-measure", Label: "Fork length is taken", Unit: One, High: 1, Most: 1,
		How: Instruction{
			Text: "Look at the drawing in the fork maker’s sheet: along the steering axis, or as the straight line " +
				"from crown to axle.",
			Figure: "measure-fork-measure"},
		Choices: []Choice{{"axis", "Along the steering axis"}, {"straight", "Straight from crown to axle"}}}
	SitBoneRead = &Quantity{Key: "sit-bone-read", Of: OfRider, Label: "Sit bones are read", Unit: One, High: 1,
		Most: 1,
		How: Instruction{
			Text: "Say which points of the two dents you measured between: their deepest points or their outer " +
				"edges.",
			Figure: "measure-sit-bones"},
		Choices: []Choice{{"edges", "Between the outer edges"}, {"centres", "Between the centres"}}}
	Leaning = &Quantity{Key: "leaning", Label: "How you sit", Unit: One, High: 2, Most: 2,
		How: Instruction{
			Text: "Pick what the trunk does on most of your rides while you sit and pedal."},
		Choices: []Choice{{"upright", "Upright"}, {"leaning", "Leaning forward"}, {"low", "Low and stretched"}}}
	KneeRead = &Quantity{Key: "knee-read", Label: "Knee angle is read", Unit: One, High: 1, Most: 1,
		How: Instruction{
			Text: "Say whether the knee was measured with the crank held still or on a film while pedalling."},
		Choices: []Choice{{"still", "Holding still"}, {"moving", "While pedalling"}}}
	SagRead = &Quantity{Key: "sag-read", Label: "Sag is read", Unit: One, High: 1, Most: 1,
		How: Instruction{
			Text: "Say whether you sat on the saddle or stood on level pedals when the rubber ring was read."},
		Choices: []Choice{{"seated", "Seated"}, {"standing", "Standing"}}}
	Helped = &Quantity{Key: "helped", Of: OfRider, Label: "Measured", Unit: One, High: 1, Most: 1,
		How: Instruction{
			Text: "Say whether somebody held the tape or the book for you."},
		Choices: []Choice{{"alone", "On my own"}, {"help", "With help"}}}
	// The key "home" is the tape's, from the time when it was the only way at home.
	DifferenceFound = &Quantity{Key: "difference-found", Of: OfRider, Label: "Difference was found", Unit: One,
		High: 2, Most: 2,
		How: Instruction{
			Text: "Say how the difference was found: with boards under the shorter leg until the hip crests were " +
				"level, with a tape, or by a clinician with an image or an examination."},
		Choices: []Choice{{"home", "With a tape"}, {"clinician", "By a clinician"}, {"blocks",
			"With boards under the foot"}}}
	WarningSign = &Quantity{Key: "warning-sign", Of: OfRider, Label: "Pain, or a new difference", Unit: One,
		High: 1, Most: 1,
		How: Instruction{
			Text: "Say whether anything hurts, swells, locks, is weak or numb. Say it too if the difference is " +
				"new, if it followed a fall, an operation or an illness, or if you are still growing."},
		Choices: []Choice{{"none", "None of these"}, {"some", "One or more"}}}
	SizeSystem = &Quantity{Key: "size-system", Of: OfShoes, Label: "Size system", Unit: One, High: 4, Most: 4,
		How: Instruction{
			Text: "Look at the label: millimetres of foot length are Mondopoint, the rest is named beside the " +
				"number.",
			Figure: "size-labels"},
		Choices: []Choice{{"mondopoint", "Mondopoint"}, {"eu", "EU"}, {"uk", "UK"}, {"us-men", "US men"},
			{"us-women", "US women"}}}
	Wanted = &Quantity{Key: "quantity", Of: OfRider, Label: "Measurement", Unit: One, High: 18, Most: 18,
		How: Instruction{
			Text: "Pick the length of the body that this is about."},
		Choices: []Choice{
			{"stature", "Height"}, {"inseam", "Inside leg"}, {"trochanter-height",
				"Hip-bone height"}, {"knee-height", "Knee height"},
			{"trunk-length", "Hip to shoulder"}, {"arm-length", "Shoulder to grip"}, {"arm-span",
				"Arm span"}, {"shoulder-width", "Shoulder width"},
			{"thigh-length", "Thigh"}, {"shank-length", "Lower leg"}, {"foot-length",
				"Foot"}, {"heel-to-ball-inner", "Heel to inner ball"},
			{"heel-to-ball-outer", "Heel to outer ball"}, {"hand-length", "Hand"}, {"finger-length",
				"Index finger"}, {"hip-width", "Between hip joints"},
			{"sit-bone-width", "Sit bones"}, {"push-up-width", "Press-up hand width"}, {"leg-difference",
				"Leg length difference"},
		}}
)

// RiderLengths are the body lengths in the order of the choice Wanted, so that
// its index finds the quantity.
var RiderLengths = []*Quantity{
	Stature, Inseam, TrochanterHeight, KneeHeight, TrunkLength, ArmLength, ArmSpan, ShoulderWidth,
	ThighLength, ShankLength, FootLength, HeelToBallInner, HeelToBallOuter, HandLength, FingerLength,
	HipWidth, SitBoneWidth, PushUpWidth, LegDifference,
}

// Feeling is what troubles a rider about where the hands are.
var Feeling = &Quantity{Key: "feeling", Label: "What troubles you", Unit: One, High: 2, Most: 2,
	How: Instruction{
		Text: "Pick what you notice on the trail, and we propose a first small move of the grips. If you type a " +
			"move yourself, that one counts."},
	Choices: []Choice{{"stretched", "Too stretched"}, {"wanders", "Front wheel wanders on climbs"}, {"pitched",
		"Pitched forward on descents"}}}
