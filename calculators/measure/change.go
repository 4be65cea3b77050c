package measure

// What a change brings: parts of the same bike after it, or the next bike's own.
var (
	NewForkLength = &Quantity{Key: "new-fork-length", Label: "New fork, axle to crown", Unit: Mm, Low: 400,
		High: 640, Least: 200, Most: 960, Repeat: 2,
		How: Instruction{
			Text: "Take it from the new fork’s chart, unloaded, and stay inside what the frame’s maker allows. Or " +
				"measure the new fork along its leg, from the axle’s centre to the crown’s seat.",
			Slip: "You took the straight line from crown to axle for the length along the leg.",
			Take: "tape measure", Minutes: 3, Figure: "measure-fork-length"}}
	NewForkOffset = &Quantity{Key: "new-fork-offset", Label: "New fork offset", Unit: Mm, Low: 30, High: 60,
		Least: -80, Most: 110, Repeat: 0.5,
		How: Instruction{
			Text:   "Take it from the new fork’s chart or its sticker.",
			Figure: "measure-fork-offset"}}
	NewFrontRim = &Quantity{Key: "new-front-rim", Label: "New front rim", Unit: Mm, Low: 406, High: 622,
		Least: 203, Most: 800,
		How: Instruction{
			Text:   "Read the second number of the ISO marking on the new tyre’s side wall, such as 57-622.",
			Figure: "measure-tyre"}}
	NewRearRim = &Quantity{Key: "new-rear-rim", Label: "New rear rim", Unit: Mm, Low: 406, High: 622, Least: 203,
		Most: 800,
		How: Instruction{
			Text:   "Read the second number of the ISO marking on the new rear tyre’s side wall, such as 57-584.",
			Figure: "measure-tyre"}}
	NewFrontTyre = &Quantity{Key: "new-front-tyre", Label: "New front tyre", Unit: Mm, Low: 25, High: 130,
		Least: 12.5, Most: 195, Repeat: 1,
		How: Instruction{
			Text: "Read the first number of the ISO marking on the new tyre’s side wall, or measure the tyre on its " +
				"rim.",
			Figure: "measure-tyre"}}
	NewRearTyre = &Quantity{Key: "new-rear-tyre", Label: "New rear tyre", Unit: Mm, Low: 25, High: 130,
		Least: 12.5, Most: 195, Repeat: 1,
		How: Instruction{
			Text: "Read the first number of the ISO marking on the new rear tyre’s side wall, or measure the tyre " +
				"on its rim.",
			Figure: "measure-tyre"}}
	AngleHeadset = &Quantity{Key: "angle-headset", Label: "Angle headset", Unit: Deg, Low: -2, High: 2, Least: -4,
		Most: 4, Repeat: 0.1,
		How: Instruction{
			Text: "Read the degrees marked on the cups. A slacker head angle counts as negative, a steeper one as " +
				"positive."}}
	HeadsetPivot = &Quantity{Key: "headset-pivot", Label: "Where the headset turns", Unit: Mm, High: 200,
		Least: -20, Most: 300, Repeat: 5,
		How: Instruction{
			Text: "Measure from the head tube’s top down to the point about which the angle headset tilts the " +
				"steering axis: half the head tube where both cups are offset.",
			Slip: "You measured from the bearing cover.",
			Take: "ruler", Minutes: 2, Figure: "measure-headset-pivot"}}

	NewReach = &Quantity{Key: "new-reach", Label: "New bike’s reach", Unit: Mm, Low: 320, High: 560, Least: 160,
		Most: 840, Repeat: 2,
		How: Instruction{
			Text: "Take it from the new bike’s chart: level from the crank axle to the centre of the head " +
				"tube’s top.",
			Figure: "measure-reach"}}
	NewStack = &Quantity{Key: "new-stack", Label: "New bike’s stack", Unit: Mm, Low: 470, High: 740, Least: 235,
		Most: 1110, Repeat: 2,
		How: Instruction{
			Text: "Take it from the new bike’s chart: upright from the crank axle to the centre of the head " +
				"tube’s top.",
			Figure: "measure-stack"}}
	NewHeadAngle = &Quantity{Key: "new-head-angle", Label: "New bike’s head angle", Unit: Deg, Low: 58, High: 76,
		Least: 45, Most: 85, Repeat: 0.3,
		How: Instruction{
			Text:   "Take it from the new bike’s chart, or lay a phone’s level along its head tube on level ground.",
			Figure: "measure-head-angle"}}
	NewSeatAngle = &Quantity{Key: "new-seat-angle", Label: "New bike’s seat angle", Unit: Deg, Low: 68, High: 84,
		Least: 50, Most: 100, Repeat: 0.3,
		How: Instruction{
			Text:   "Take the effective seat angle from the new bike’s chart.",
			Figure: "measure-seat-angle"}}
	NewSeatAngleHeight = &Quantity{Key: "new-seat-angle-height", Label: "Height the new seat angle is read at",
		Unit: Mm, Low: 400, High: 850, Least: 200, Most: 1275,
		How: Instruction{
			Text: "Look in the new chart’s small print for the height above the crank axle at which the " +
				"effective seat angle is read.",
			Figure: "measure-seat-angle"}}
	NewSeatTubeAngle = &Quantity{Key: "new-seat-tube-angle", Label: "New seat tube’s own angle", Unit: Deg,
		Low: 55, High: 80, Least: 40, Most: 95, Repeat: 0.5,
		How: Instruction{
			Text: "Take the actual seat tube angle from the new bike’s chart, or lay a phone’s level along the " +
				"raised post.",
			Figure: "measure-seat-tube-angle"}}
	NewCrankLength = &Quantity{Key: "new-crank-length", Label: "New crank", Unit: SoldInMm, Low: 130, High: 190,
		Least: 65, Most: 285,
		How: Instruction{
			Text:   "Read the length stamped on the inner side of the new crank.",
			Figure: "measure-crank-length"}}
	NewPedalHeight = &Quantity{Key: "new-pedal-height", Label: "New pedal, spindle to shoe", Unit: Mm, Low: 5,
		High: 30, Most: 60, Repeat: 1,
		How: Instruction{
			Text: "Measure on the new pedal from the middle of the spindle to the face that the shoe stands on, " +
				"cleat in place.",
			Figure: "measure-pedal-height"}}
	NewSoleHeight = &Quantity{Key: "new-sole-height", Of: OfShoes, Label: "New sole under the ball", Unit: Mm, Low: 5,
		High: 35, Most: 80, Repeat: 2,
		How: Instruction{
			Text: "Measure the new shoe under the ball of the foot, from the face that stands on the pedal to the " +
				"skin.",
			Figure: "measure-sole-height"}}
	NewPostOffset = &Quantity{Key: "new-post-offset", Label: "New post offset", Unit: Mm, Low: -30, High: 35,
		Least: -80, Most: 100, Repeat: 1,
		How: Instruction{
			Text: "Measure on the new post how far the middle of the rail clamp lies behind the tube’s centre line; " +
				"ahead counts as negative.",
			Figure: "measure-post-offset"}}
	NewHeadsetHeight = &Quantity{Key: "new-headset-height", Label: "New headset above the head tube", Unit: Mm,
		High: 40, Most: 80, Repeat: 0.5,
		How: Instruction{
			Text:   "Measure on the new bike from the head tube’s top edge to the top of the bearing cover.",
			Figure: "measure-headset-height"}}
	NewSpacersLimit = &Quantity{Key: "new-spacers-limit", Label: "New bike’s greatest spacer stack", Unit: SoldInMm,
		High: 60, Most: 120,
		How: Instruction{
			Text: "Look up how high a stack of spacers under the stem the new fork’s maker allows."}}
	NewBarRise = &Quantity{Key: "new-bar-rise", Label: "New bar rise", Unit: SoldInMm, Low: -20, High: 110, Least: -150,
		Most: 250, Repeat: 2,
		How: Instruction{
			Text:   "Take the rise of the new bar from its maker’s sheet, or measure it between straightedges.",
			Figure: "measure-bar-rise"}}
	NewBarSweep = &Quantity{Key: "new-bar-sweep", Label: "New bar, grips behind the clamp", Unit: Mm, High: 120,
		Least: -150, Most: 300, Repeat: 3,
		How: Instruction{
			Text: "Lay a straightedge across the new bar’s grip centres and measure forward to the middle of its " +
				"clamp.",
			Figure: "measure-bar-sweep"}}
)

// Travel of the next bike.
var (
	NewForkTravel = &Quantity{Key: "new-fork-travel", Label: "New fork travel", Unit: SoldInMm, High: 220, Most: 350,
		How: Instruction{
			Text: "Take it from the new fork’s sheet. A rigid fork has zero."}}
	NewRearTravel = &Quantity{Key: "new-rear-travel", Label: "New rear travel", Unit: SoldInMm, High: 240, Most: 380,
		How: Instruction{
			Text: "Take it from the new frame’s sheet. A hard-tail has zero."}}
)

// What else tells two sizes of one bike apart.
var (
	NewChainstay = &Quantity{Key: "new-chainstay", Label: "New bike’s chainstay", Unit: Mm, Low: 370, High: 500,
		Least: 185, Most: 750, Repeat: 2,
		How: Instruction{
			Text:   "Take it from the new bike’s chart: straight from the crank axle to the rear axle.",
			Figure: "measure-chainstay"}}
	NewBBDrop = &Quantity{Key: "new-bb-drop", Label: "New bike’s bottom-bracket drop", Unit: Mm, Low: -30, High: 80,
		Least: -80, Most: 130, Repeat: 2,
		How: Instruction{
			Text: "Take it from the new bike’s chart: how far the crank axle lies below the line between the " +
				"axles.",
			Figure: "measure-bb-drop"}}
	NewSeatTubeLength = &Quantity{Key: "new-seat-tube-length", Label: "New bike’s seat tube", Unit: Mm, Low: 270,
		High: 560, Least: 135, Most: 840, Repeat: 2,
		How: Instruction{
			Text:   "Take it from the new bike’s chart: along the tube from the crank axle to its top edge.",
			Figure: "measure-seat-tube-length"}}
	NewStemLength = &Quantity{Key: "new-stem-length", Label: "New bike’s stem", Unit: SoldInMm, Low: 20, High: 140,
		Most:   210,
		Repeat: 1,
		How: Instruction{
			Text: "Take it from the new bike’s parts list, or read it off the stem. Leave it empty to compare " +
				"frames with the same stem on both.",
			Figure: "measure-stem-length"}}
)
