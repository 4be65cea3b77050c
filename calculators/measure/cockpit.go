package measure

// Stem, spacers, bar, grips and levers.
var (
	StemLength = &Quantity{Key: "stem-length", Label: "Stem", Unit: Mm, Low: 20, High: 140, Most: 210, Repeat: 1,
		How: "Measure along the stem from the centre of the steerer to the centre of the bar's clamp."}
	StemAngle = &Quantity{Key: "stem-angle", Label: "Stem angle", Unit: Deg, Low: -40, High: 45, Least: -90,
		Most: 90, Repeat: 1,
		How: "Read it off the stem. It is counted above the square to the steering axis; a stem turned to point " +
			"down counts as negative."}
	StemClampHeight = &Quantity{Key: "stem-clamp-height", Label: "Stem clamp", Unit: Mm, Low: 30, High: 50,
		Least: 15, Most: 75, Repeat: 0.5,
		How: "Measure the height of the stem where it grips the steerer, along the steerer."}
	Spacers = &Quantity{Key: "spacers", Label: "Spacers under the stem", Unit: Mm, High: 60, Most: 120, Repeat: 0.5,
		How: "Measure all spacers between the headset's bearing cover and the lower edge of the stem, without the " +
			"cover itself."}
	SpacersAbove = &Quantity{Key: "spacers-above", Label: "Spacers above the stem", Unit: Mm, High: 50, Most: 120,
		Repeat: 0.5,
		How:    "Measure all spacers between the upper edge of the stem and the top cap."}
	SpacersLimit = &Quantity{Key: "spacers-limit", Label: "Greatest spacer stack", Unit: Mm, High: 60, Most: 120,
		How: "Look up how high a stack of spacers under the stem the fork's maker allows."}
	SteererLength = &Quantity{Key: "steerer-length", Label: "Steerer", Unit: Mm, Low: 120, High: 330, Least: 60,
		Most: 495, Repeat: 1,
		How: "With the fork out, measure along the steerer from the crown's seat to its cut end. Built up, add the " +
			"lower headset, head tube, cover, spacers and stem clamp, less the gap under the top cap."}
	HeadsetHeight = &Quantity{Key: "headset-height", Label: "Headset above the head tube", Unit: Mm, High: 40,
		Most: 80, Repeat: 0.5,
		How: "Measure from the head tube's top edge to the top of the bearing cover on which the first spacer or " +
			"the stem stands."}
	BarRise = &Quantity{Key: "bar-rise", Label: "Bar rise", Unit: Mm, Low: -20, High: 110, Least: -150, Most: 250,
		Repeat: 2,
		How: "Take it from the bar maker's sheet, or lay a straightedge across the grip centres and measure its " +
			"height above the middle of the clamp, bar unrolled. A bar turned over counts as negative."}
	BarSweep = &Quantity{Key: "bar-sweep", Label: "Grips behind the clamp", Unit: Mm, High: 120, Least: -150,
		Most: 300, Repeat: 3,
		How: "Lay a straightedge across the two grip centres and measure level from it forward to the middle of " +
			"the bar's clamp, bar unrolled."}
	BackSweep = &Quantity{Key: "back-sweep", Label: "Back sweep", Unit: Deg, High: 45, Least: -10, Most: 100,
		Repeat: 0.5,
		How:    "Take it from the bar maker's sheet: the angle by which the bar's ends point back, seen from above."}
	BarRoll = &Quantity{Key: "bar-roll", Label: "Bar roll", Unit: Deg, Low: -15, High: 15, Least: -90, Most: 90,
		Repeat: 1,
		How: "Turn the bar until its rise stands square to the ground and call that zero. Rolled forward counts as " +
			"positive, rolled back as negative."}
	BarWidth = &Quantity{Key: "bar-width", Label: "Bar width", Unit: Mm, Low: 500, High: 860, Least: 250,
		Most: 1290, Repeat: 1,
		How: "Measure straight across from one end of the bar to the other, grips' end caps included."}
	BarLimit = &Quantity{Key: "bar-limit", Label: "Narrowest the bar may be cut", Unit: Mm, Low: 400, High: 800,
		Least: 200, Most: 1200,
		How: "Look up on the bar or in its manual to what width the maker lets it be cut."}
	BarStraight = &Quantity{Key: "bar-straight", Label: "Straight end of the bar", Unit: Mm, Low: 90, High: 280,
		Least: 45, Most: 420, Repeat: 2,
		How: "Measure from the bar's end inwards to where it begins to bend or to thicken, which is where clamps " +
			"no longer fit."}
	ControlsWidth = &Quantity{Key: "controls-width", Label: "Controls on one side", Unit: Mm, Low: 10, High: 90,
		Least: 5, Most: 135, Repeat: 1,
		How: "Measure how much of the bar all clamps on the fuller side cover, from the grip's inner end to the " +
			"last clamp's inner edge, when they touch."}
	GripLength = &Quantity{Key: "grip-length", Label: "Grip", Unit: Mm, Low: 90, High: 150, Least: 45, Most: 225,
		Repeat: 1,
		How:    "Measure the part of the grip that the hand can hold, along the bar."}
	GripDiameter = &Quantity{Key: "grip-diameter", Label: "Grip diameter", Unit: Mm, Low: 25, High: 40, Least: 12.5,
		Most: 60, Repeat: 0.5,
		How: "Measure across the grip, square to the bar, where the palm lies; with a sliding caliper if you have " +
			"one. Do not squeeze the rubber."}
	GripX = &Quantity{Key: "grip-x", Label: "Grips ahead of the bottom bracket", Unit: Mm, Low: 250, High: 750,
		Least: 50, Most: 1100, Repeat: 4,
		How: "Lay a straightedge across the grip centres and hold a plumb line at its middle. Measure level from " +
			"the centre of the bottom bracket forward to the line."}
	GripY = &Quantity{Key: "grip-y", Label: "Grips above the bottom bracket", Unit: Mm, Low: 480, High: 950,
		Least: 200, Most: 1400, Repeat: 4,
		How: "Measure from the floor to the grips' centres and take off the bottom bracket's height above the floor."}
	GripFloor = &Quantity{Key: "grip-floor", Label: "Grips above the floor", Unit: Mm, Low: 800, High: 1300,
		Least: 400, Most: 1950, Repeat: 3,
		How: "With the bike upright on level ground and the front wheel straight, measure from the floor to the " +
			"centre of each grip and take the mean."}
	NoseToGrip = &Quantity{Key: "nose-to-grip", Label: "Nose to grips", Unit: Mm, Low: 350, High: 800, Least: 175,
		Most: 1200, Repeat: 4,
		How: "Lay a straightedge across the grip centres. Measure level from the tip of the saddle's nose forward " +
			"to a plumb line at the straightedge's middle."}
	LeverReach = &Quantity{Key: "lever-reach", Label: "Lever reach", Unit: Mm, Low: 40, High: 100, Least: 20,
		Most: 150, Repeat: 2,
		How: "Lever at rest. Measure square to the bar from the front of the grip to the outer face of the brake " +
			"lever's blade, where the braking finger pulls. The grip's own thickness is asked for by itself."}
	LeverLength = &Quantity{Key: "lever-length", Label: "Lever blade", Unit: Mm, Low: 40, High: 120, Least: 20,
		Most: 180, Repeat: 2,
		How: "Measure along the brake lever from its pivot to where the braking finger rests."}
	LeverInset = &Quantity{Key: "lever-inset", Label: "Lever clamp from the grip", Unit: Mm, High: 60, Most: 150,
		Repeat: 2,
		How:    "Measure along the bar from the grip's inner end to the near edge of the lever's clamp."}
	LeverAngle = &Quantity{Key: "lever-angle", Label: "Lever angle", Unit: Deg, High: 60, Least: -45, Most: 100,
		Repeat: 2,
		How: "Lay a phone's level along the brake lever with the bike on level ground. Pointing down from the " +
			"horizontal counts as positive."}
	MoveX = &Quantity{Key: "move-x", Label: "Move the grips forward", Unit: Mm, Low: -150, High: 150, Least: -400,
		Most: 400,
		How:  "Say by how much the grips should move level, forward positive, back negative."}
	MoveY = &Quantity{Key: "move-y", Label: "Move the grips up", Unit: Mm, Low: -150, High: 150, Least: -400,
		Most: 400,
		How:  "Say by how much the grips should move upright, up positive, down negative."}
)

// TreeGap is the narrowest place that a bar has to pass.
var TreeGap = &Quantity{Key: "tree-gap", Label: "Tightest gap between trees", Unit: Mm, Low: 550, High: 1500,
	Least: 275, Most: 2250, Repeat: 10,
	How: "Lay the tape between the two trees of the tightest gap that you ride through regularly, at the height of " +
		"your bar."}
