package measure

// Stem, spacers, bar, grips and levers.
var (
	StemLength = &Quantity{Key: "stem-length", Label: "Stem", Unit: SoldInMm, Low: 20, High: 140, Most: 210, Repeat: 1,
		How: Instruction{
			Text: "Measure along the stem from the centre of the steerer to the centre of the bar’s clamp.",
			Slip: "You measured to the faceplate.",
			Take: "ruler", Minutes: 1, Figure: "measure-stem-length"}}
	StemAngle = &Quantity{Key: "stem-angle", Label: "Stem angle", Unit: Deg, Low: -40, High: 45, Least: -90,
		Most: 90, Repeat: 1,
		How: Instruction{
			Text: "Read it off the stem. It is counted above the square to the steering axis; a stem turned to " +
				"point down counts as negative.",
			Slip: "You turned the stem over and kept the sign as printed.",
			Take: "the number on the stem", Minutes: 1, Figure: "measure-stem-angle"}}
	StemClampHeight = &Quantity{Key: "stem-clamp-height", Label: "Stem clamp", Unit: Mm, Low: 30, High: 50,
		Least: 15, Most: 75, Repeat: 0.5,
		How: Instruction{
			Text: "Measure the height of the stem where it grips the steerer, along the steerer.",
			Slip: "You counted in a spacer of the same colour.",
			Take: "ruler", Minutes: 1, Figure: "measure-stem-clamp-height"}}
	Spacers = &Quantity{Key: "spacers", Label: "Spacers under the stem", Unit: SoldInMm, High: 60, Most: 120,
		Repeat: 0.5,
		How: Instruction{
			Text: "Measure all spacers between the headset’s bearing cover and the lower edge of the stem, without " +
				"the cover itself.",
			Slip: "You counted in the bearing cover.",
			Take: "ruler", Minutes: 1, Figure: "measure-spacers"}}
	SpacersAbove = &Quantity{Key: "spacers-above", Label: "Spacers above the stem", Unit: SoldInMm, High: 50, Most: 120,
		Repeat: 0.5,
		How: Instruction{
			Text: "Measure all spacers between the upper edge of the stem and the top cap.",
			Slip: "You counted in the top cap.",
			Take: "ruler", Minutes: 1, Figure: "measure-spacers-above"}}
	SpacersLimit = &Quantity{Key: "spacers-limit", Label: "Greatest spacer stack", Unit: SoldInMm, High: 60, Most: 120,
		How: Instruction{
			Text: "Look up how high a stack of spacers under the stem the fork’s maker allows."}}
	SteererLength = &Quantity{Key: "steerer-length", Label: "Steerer", Unit: Mm, Low: 120, High: 330, Least: 60,
		Most: 495, Repeat: 1,
		How: Instruction{
			Text: "With the fork out, measure along the steerer from the crown’s seat to its cut end. With the " +
				"fork in the bike, add the lower headset, head tube, cover, spacers and stem clamp, less the gap " +
				"under the top cap.",
			Slip: "You forgot the gap under the top cap.",
			Take: "tape measure", Minutes: 4, Figure: "measure-steerer-length"}}
	HeadsetHeight = &Quantity{Key: "headset-height", Label: "Headset above the head tube", Unit: Mm, High: 40,
		Most: 80, Repeat: 0.5,
		How: Instruction{
			Text: "Measure from the head tube’s top edge to the top of the bearing cover on which the first spacer " +
				"or the stem stands.",
			Slip: "You took the lowest spacer for the cover.",
			Take: "ruler", Minutes: 1, Figure: "measure-headset-height"}}
	BarRise = &Quantity{Key: "bar-rise", Label: "Bar rise", Unit: SoldInMm, Low: -20, High: 110, Least: -150, Most: 250,
		Repeat: 2,
		How: Instruction{
			Text: "Bike upright on level ground, bar as it stands. Lay a straightedge over the middles of both " +
				"grips and measure upright from the middle of the bar’s clamp to it. A bar turned over counts as " +
				"negative. The maker’s printed rise holds only where the rise points straight up.",
			Slip: "You measured to the top of the grip and not to its middle.",
			Who:  Eased, Take: "straightedge, ruler", Minutes: 3, Figure: "measure-bar-rise"}}
	BarSweep = &Quantity{Key: "bar-sweep", Label: "Grips behind the clamp", Unit: Mm, High: 120, Least: -150,
		Most: 300, Repeat: 3,
		How: Instruction{
			Text: "Bar as it stands. Lay a straightedge across the middles of both grips, seen from above, and " +
				"measure level from it forward to the middle of the bar’s clamp.",
			Slip: "The straightedge lies on the ends of the grips, which stand further back.",
			Who:  Eased, Take: "straightedge, ruler", Minutes: 3, Figure: "measure-bar-sweep"}}
	BackSweep = &Quantity{Key: "back-sweep", Label: "Back sweep", Unit: Deg, High: 45, Least: -10, Most: 100,
		Repeat: 0.5,
		How: Instruction{
			Text: "Take it from the bar maker’s sheet: the angle by which the bar’s ends point back, seen from above.",
			Slip: "You read up sweep for back sweep.",
			Take: "the bar’s data sheet", Minutes: 1, Figure: "measure-back-sweep"}}
	BarRoll = &Quantity{Key: "bar-roll", Label: "Bar roll", Unit: Deg, Low: -15, High: 15, Least: -90, Most: 90,
		Repeat: 1,
		How: Instruction{
			Text: "Zero is the bar as it stands, where you have measured rise and sweep on the bike; count any " +
				"change from there. Forward, towards the wheel, counts as positive. With the maker’s printed rise " +
				"and sweep, zero is the bar with its rise pointing straight up.",
			Why:  "So nothing has to be undone before you measure.",
			Slip: "You used the printed rise for a bar in line with the fork: that bar is rolled back already.",
			Take: "phone with a level, masking tape", Minutes: 3, Figure: "measure-bar-roll"}}
	BarWidth = &Quantity{Key: "bar-width", Label: "Bar width", Unit: Mm, Low: 500, High: 860, Least: 250,
		Most: 1290, Repeat: 1,
		How: Instruction{
			Text: "Measure straight across from one end of the bar to the other, grips’ end caps included.",
			Slip: "The tape follows the sweep.",
			Take: "tape measure", Minutes: 1, Figure: "measure-bar-width"}}
	BarLimit = &Quantity{Key: "bar-limit", Label: "Narrowest the bar may be cut", Unit: Mm, Low: 400, High: 800,
		Least: 200, Most: 1200,
		How: Instruction{
			Text: "Look up on the bar or in its manual to what width the maker lets it be cut. Without that number, " +
				"do not cut."}}
	BarStraight = &Quantity{Key: "bar-straight", Label: "Straight end of the bar", Unit: Mm, Low: 90, High: 280,
		Least: 45, Most: 420, Repeat: 2,
		How: Instruction{
			Text: "Measure from the bar’s end inwards to where it begins to bend or to thicken, which is where " +
				"clamps no longer fit.",
			Slip: "The grip hides where the bar bends. Feel for it under the controls.",
			Take: "ruler", Minutes: 2, Figure: "measure-bar-straight"}}
	ControlsWidth = &Quantity{Key: "controls-width", Label: "Controls on one side", Unit: Mm, Low: 10, High: 90,
		Least: 5, Most: 135, Repeat: 1,
		How: Instruction{
			Text: "Measure how much of the bar all clamps on the fuller side cover, from the grip’s inner end to " +
				"the last clamp’s inner edge, when they touch.",
			Slip: "You counted in the gaps between the clamps.",
			Take: "ruler", Minutes: 2, Figure: "measure-controls-width"}}
	GripLength = &Quantity{Key: "grip-length", Label: "Grip", Unit: Mm, Low: 90, High: 150, Least: 45, Most: 225,
		Repeat: 1,
		How: Instruction{
			Text: "Measure the part of the grip that the hand can hold, along the bar.",
			Slip: "You counted in the flange and lock ring.",
			Take: "ruler", Minutes: 1, Figure: "measure-grip-length"}}
	GripX = &Quantity{Key: "grip-x", Label: "Grips ahead of the crank axle", Unit: Mm, Low: 250, High: 750,
		Least: 50, Most: 1100, Repeat: 4,
		How: Instruction{
			Text: "Bike upright on level ground, front wheel straight. Mark the middle of each grip with tape. " +
				"Hang a plumb line from the middle of one grip and one from the centre of the crank axle, mark the " +
				"floor below and measure level between the marks. Take both sides and enter the mean.",
			Why:  "A straightedge across both grips works too, but stem and cables are in its way.",
			Slip: "The wheel is a little turned: then left and right differ.",
			Who:  Eased, Take: "plumb line, tape measure, masking tape", Minutes: 8, Figure: "measure-grip-x"}}
	GripY = &Quantity{Key: "grip-y", Label: "Grips above the crank axle", Unit: Mm, Low: 480, High: 950,
		Least: 200, Most: 1400, Repeat: 4,
		How: Instruction{
			Text: "Bike upright on level ground, front wheel straight. Measure from the floor to the middle of each " +
				"grip, take the mean and subtract the bottom-bracket height.",
			Slip: "The bike leans: then left and right differ.",
			Who:  Eased, Take: "tape measure", Minutes: 5, Figure: "measure-grip-y"}}
	GripFloor = &Quantity{Key: "grip-floor", Label: "Grips above the floor", Unit: Mm, Low: 800, High: 1300,
		Least: 400, Most: 1950, Repeat: 3,
		How: Instruction{
			Text: "Bike upright on level ground, front wheel straight. Measure from the floor to the middle of each " +
				"grip and take the mean.",
			Slip: "The tape leans with the fork.",
			Who:  Eased, Take: "tape measure", Minutes: 3, Figure: "measure-grip-floor"}}
	NoseToGrip = &Quantity{Key: "nose-to-grip", Label: "Nose to grips", Unit: Mm, Low: 350, High: 800, Least: 175,
		Most: 1200, Repeat: 4,
		How: Instruction{
			Text: "Front wheel straight. Hang a plumb line from the tip of the saddle’s nose and one from the " +
				"middle of each grip, mark the floor and measure level between the marks, along the bike. Take the " +
				"mean of both sides.",
			Slip: "The tape runs slantwise from the nose to one grip, and the length comes out too large.",
			Who:  Eased, Take: "plumb line, tape measure, masking tape", Minutes: 6, Figure: "measure-nose-to-grip"}}
	GripDiameter = &Quantity{Key: "grip-diameter", Label: "Grip diameter", Unit: Mm, Low: 25, High: 40, Least: 12.5,
		Most: 60, Repeat: 0.5,
		How: Instruction{
			Text: "Measure across the grip, square to the bar, where the palm lies; with a sliding caliper if you " +
				"have one.",
			Slip: "You squeezed the rubber, and the grip comes out too thin.",
			Take: "sliding caliper or ruler", Minutes: 1, Figure: "measure-lever-span"}}
	LeverReach = &Quantity{Key: "lever-reach", Label: "Lever reach", Unit: Mm, Low: 40, High: 100, Least: 20,
		Most: 150, Repeat: 2,
		How: Instruction{
			Text: "Lever at rest. Measure square to the bar from the front of the grip to the outer face of the " +
				"brake lever’s blade, where the braking finger pulls.",
			Why:  "The finger feels the free gap, so the grip’s thickness is left out here.",
			Slip: "You measured the grip’s own thickness too: then a lever in easy reach looks 30 mm too far.",
			Take: "ruler", Minutes: 2, Figure: "measure-lever-reach"}}
	LeverLength = &Quantity{Key: "lever-length", Label: "Lever blade", Unit: Mm, Low: 40, High: 120, Least: 20,
		Most: 180, Repeat: 2,
		How: Instruction{
			Text: "Measure along the brake lever from its pivot to where the braking finger rests.",
			Slip: "You measured to the lever’s tip.",
			Take: "ruler", Minutes: 2, Figure: "measure-lever-length"}}
	LeverInset = &Quantity{Key: "lever-inset", Label: "Lever clamp from the grip", Unit: Mm, High: 60, Most: 150,
		Repeat: 2,
		How: Instruction{
			Text: "Measure along the bar from the grip’s inner end to the near edge of the lever’s clamp.",
			Slip: "You measured to the middle of the clamp.",
			Take: "ruler", Minutes: 1, Figure: "measure-lever-inset"}}
	LeverAngle = &Quantity{Key: "lever-angle", Label: "Lever angle", Unit: Deg, High: 60, Least: -45, Most: 100,
		Repeat: 2,
		How: Instruction{
			Text: "Lay a phone along the brake lever’s blade with the bike on level ground. Pointing down from the " +
				"horizontal counts as positive.",
			Slip: "You measured the curved tip and not where the finger lies.",
			Take: "phone with a level", Minutes: 2, Figure: "measure-lever-angle"}}
	MoveX = &Quantity{Key: "move-x", Label: "Move the grips forward", Unit: Mm, Low: -150, High: 150, Least: -400,
		Most: 400,
		How: Instruction{
			Text: "Say by how much the grips should move level, forward positive, back negative."}}
	MoveY = &Quantity{Key: "move-y", Label: "Move the grips up", Unit: Mm, Low: -150, High: 150, Least: -400,
		Most: 400,
		How: Instruction{
			Text: "Say by how much the grips should move upright, up positive, down negative."}}
)

// TreeGap is the narrowest place that a bar has to pass.
var TreeGap = &Quantity{Key: "tree-gap", Label: "Tightest gap between trees", Unit: Mm, Low: 550, High: 1500,
	Least: 275, Most: 2250, Repeat: 10,
	How: Instruction{
		Text: "Lay the tape between the two trees of the tightest gap that you ride through regularly, at the " +
			"height of your bar.",
		Slip: "You measured on the ground, where the roots spread.",
		Who:  Eased, Take: "tape measure", Minutes: 3, Figure: "measure-tree-gap"}}
