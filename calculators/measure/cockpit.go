package measure

// Stem, spacers, bar, grips and levers.
var (
	StemLength = length("stem-length", "Stem", 20, 140, 1,
		"Measure along the stem from the centre of the steerer to the centre of the bar's clamp.").allow(0, 210)
	StemAngle = angle("stem-angle", "Stem angle", -40, 45, 1, -90, 90,
		"Read it off the stem. It is counted above the square to the steering axis; a stem turned to point down counts as negative.")
	StemClampHeight = length("stem-clamp-height", "Stem clamp", 30, 50, 0.5,
		"Measure the height of the stem where it grips the steerer, along the steerer.")
	Spacers = length("spacers", "Spacers under the stem", 0, 60, 0.5,
		"Measure all spacers between the headset's bearing cover and the lower edge of the stem, without the cover itself.").allow(0, 120)
	SpacersAbove = length("spacers-above", "Spacers above the stem", 0, 50, 0.5,
		"Measure all spacers between the upper edge of the stem and the top cap.").allow(0, 120)
	SpacersLimit = length("spacers-limit", "Greatest spacer stack", 0, 60, 0,
		"Look up how high a stack of spacers under the stem the fork's maker allows.").allow(0, 120)
	SteererLength = length("steerer-length", "Steerer", 120, 330, 1,
		"With the fork out, measure along the steerer from the crown's seat to its cut end. Built up, add the lower headset, head tube, cover, spacers and stem clamp, less the gap under the top cap.")
	HeadsetHeight = length("headset-height", "Headset above the head tube", 0, 40, 0.5,
		"Measure from the head tube's top edge to the top of the bearing cover on which the first spacer or the stem stands.").allow(0, 80)
	BarRise = length("bar-rise", "Bar rise", -20, 110, 2,
		"Take it from the bar maker's sheet, or lay a straightedge across the grip centres and measure its height above the middle of the clamp, bar unrolled. A bar turned over counts as negative.").allow(-150, 250)
	BarSweep = length("bar-sweep", "Grips behind the clamp", 0, 120, 3,
		"Lay a straightedge across the two grip centres and measure level from it forward to the middle of the bar's clamp, bar unrolled.").allow(-150, 300)
	BackSweep = angle("back-sweep", "Back sweep", 0, 45, 0.5, -10, 100,
		"Take it from the bar maker's sheet: the angle by which the bar's ends point back, seen from above.")
	BarRoll = angle("bar-roll", "Bar roll", -15, 15, 1, -90, 90,
		"Turn the bar until its rise stands square to the ground and call that zero. Rolled forward counts as positive, rolled back as negative.")
	BarWidth = length("bar-width", "Bar width", 500, 860, 1,
		"Measure straight across from one end of the bar to the other, grips' end caps included.")
	BarLimit = length("bar-limit", "Narrowest the bar may be cut", 400, 800, 0,
		"Look up on the bar or in its manual to what width the maker lets it be cut.")
	BarStraight = length("bar-straight", "Straight end of the bar", 90, 280, 2,
		"Measure from the bar's end inwards to where it begins to bend or to thicken, which is where clamps no longer fit.")
	ControlsWidth = length("controls-width", "Controls on one side", 10, 90, 1,
		"Measure how much of the bar all clamps on the fuller side cover, from the grip's inner end to the last clamp's inner edge, when they touch.")
	GripLength = length("grip-length", "Grip", 90, 150, 1,
		"Measure the part of the grip that the hand can hold, along the bar.")
	GripX = length("grip-x", "Grips ahead of the bottom bracket", 250, 750, 4,
		"Lay a straightedge across the grip centres and hold a plumb line at its middle. Measure level from the centre of the bottom bracket forward to the line.").allow(50, 1100)
	GripY = length("grip-y", "Grips above the bottom bracket", 480, 950, 4,
		"Measure from the floor to the grips' centres and take off the bottom bracket's height above the floor.").allow(200, 1400)
	GripFloor = length("grip-floor", "Grips above the floor", 800, 1300, 3,
		"With the bike upright on level ground and the front wheel straight, measure from the floor to the centre of each grip and take the mean.")
	NoseToGrip = length("nose-to-grip", "Nose to grips", 350, 800, 4,
		"Lay a straightedge across the grip centres. Measure level from the tip of the saddle's nose forward to a plumb line at the straightedge's middle.")
	LeverReach = length("lever-reach", "Lever reach", 40, 100, 2,
		"Measure square from the front of the grip to the front of the brake lever, where the braking finger rests.")
	LeverLength = length("lever-length", "Lever blade", 40, 120, 2,
		"Measure along the brake lever from its pivot to where the braking finger rests.")
	LeverInset = length("lever-inset", "Lever clamp from the grip", 0, 60, 2,
		"Measure along the bar from the grip's inner end to the near edge of the lever's clamp.").allow(0, 150)
	LeverAngle = angle("lever-angle", "Lever angle", 0, 60, 2, -45, 100,
		"Lay a phone's level along the brake lever with the bike on level ground. Pointing down from the horizontal counts as positive.")
	MoveX = length("move-x", "Move the grips forward", -150, 150, 0,
		"Say by how much the grips should move level, forward positive, back negative.").allow(-400, 400)
	MoveY = length("move-y", "Move the grips up", -150, 150, 0,
		"Say by how much the grips should move upright, up positive, down negative.").allow(-400, 400)
)
