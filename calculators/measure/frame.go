package measure

// The frame and fork as a geometry chart gives them, or as a tape finds them.
var (
	Reach = &Quantity{Key: "reach", Label: "Reach", Unit: Mm, Low: 320, High: 560, Least: 160, Most: 840, Repeat: 2,
		How: Instruction{
			Text: "Take it from the maker’s chart. On the bike, hang a plumb line from the centre of the crank " +
				"axle and mark the floor below. Do the same at the middle of the head tube’s upper edge, bearing " +
				"cover not counted. Reach is the length between the marks.",
			Slip: "You counted in the bearing cover or spacers, or the chart is for another fork.",
			Who:  Eased, Take: "plumb line, tape measure, masking tape", Minutes: 8, Figure: "measure-reach"}}
	Stack = &Quantity{Key: "stack", Label: "Stack", Unit: Mm, Low: 470, High: 740, Least: 235, Most: 1110, Repeat: 2,
		How: Instruction{
			Text: "Take it from the maker’s chart. On the bike, measure from the floor up to the middle of the head " +
				"tube’s upper edge and take off the bottom-bracket height.",
			Slip: "You counted in the bearing cover.",
			Who:  Eased, Take: "tape measure", Minutes: 6, Figure: "measure-stack"}}
	HeadAngle = &Quantity{Key: "head-angle", Label: "Head angle", Unit: Deg, Low: 58, High: 76, Least: 45,
		Most: 85, Repeat: 0.3,
		How: Instruction{
			Text: "Take it from the maker’s chart, or lay a phone along the straight front of a fork leg with the " +
				"bike upright on level ground. Set the level to zero on the floor, turn the phone end for end and " +
				"use the mean. It is counted from the horizontal: take a reading from the vertical from 90.",
			Slip: "The floor slopes. Half a degree of floor is half a degree of head angle.",
			Who:  Eased, Take: "phone with a level", Minutes: 5, Figure: "measure-head-angle"}}
	SeatAngle = &Quantity{Key: "seat-angle", Label: "Effective seat angle", Unit: Deg, Low: 68, High: 84,
		Least: 50, Most: 100, Repeat: 0.3,
		How: Instruction{
			Text: "Take it from the maker’s chart. On the bike, stretch a thread from the centre of the crank axle " +
				"to the middle of the seat post. Take the height that the chart names, usually that of the head " +
				"tube’s top. Lay a phone along the thread.",
			Slip: "You read the tilt of the tube itself. That is another number, and mostly a smaller one.",
			Who:  Helper, Take: "thread, phone with a level", Minutes: 6, Figure: "measure-seat-angle"}}
	SeatAngleHeight = &Quantity{Key: "seat-angle-height", Label: "Height the seat angle is read at", Unit: Mm,
		Low: 400, High: 850, Least: 200, Most: 1275,
		How: Instruction{
			Text: "Look in the chart’s small print for the height above the crank axle at which the effective " +
				"seat angle is read. Where nothing is said, the stack is usual.",
			Figure: "measure-seat-angle"}}
	SeatTubeAngle = &Quantity{Key: "seat-tube-angle", Label: "Seat tube’s own angle", Unit: Deg, Low: 55,
		High: 80, Least: 40, Most: 95, Repeat: 0.5,
		How: Instruction{
			Text: "Lay a phone along the seat tube, or along the fully raised post, with the bike upright on level " +
				"ground. It is the tilt of the tube itself from the horizontal, often called the actual angle. " +
				"Turn the phone end for end and use the mean.",
			Slip: "You measured at a bend of the tube. Use the straight part that holds the post.",
			Take: "phone with a level", Minutes: 4, Figure: "measure-seat-tube-angle"}}
	SeatTubeLength = &Quantity{Key: "seat-tube-length", Label: "Seat tube", Unit: Mm, Low: 270, High: 560,
		Least: 135, Most: 840, Repeat: 2,
		How: Instruction{
			Text: "Measure along the seat tube from the centre of the crank axle to the top edge of the tube, where " +
				"the post goes in.",
			Slip: "You counted in the seat clamp.",
			Take: "tape measure", Minutes: 2, Figure: "measure-seat-tube-length"}}
	StandOver = &Quantity{Key: "stand-over", Label: "Stand-over", Unit: Mm, Low: 550, High: 900, Least: 275,
		Most: 1350, Repeat: 5,
		How: Instruction{
			Text: "Bike upright on level ground. Measure from the floor to the top of the top tube where you " +
				"straddle it.",
			Slip: "You measured at the seat tube, where the top tube is lower.",
			Who:  Eased, Take: "tape measure", Minutes: 3, Figure: "measure-stand-over"}}
	HeadTubeLength = &Quantity{Key: "head-tube-length", Label: "Head tube", Unit: Mm, Low: 80, High: 200,
		Least: 40, Most: 300, Repeat: 1,
		How: Instruction{
			Text: "Measure the head tube from its lower edge to its upper edge, along the tube and without the " +
				"headset’s covers.",
			Slip: "You counted in a cup that looks like part of the frame.",
			Take: "ruler", Minutes: 2, Figure: "measure-head-tube-length"}}
	LowerHeadset = &Quantity{Key: "lower-headset", Label: "Lower headset", Unit: Mm, High: 20, Most: 50, Repeat: 1,
		How: Instruction{
			Text: "Measure how far the headset’s lower cup stands out below the head tube, down to the fork’s " +
				"crown. A bearing sunk in the frame counts as zero.",
			Slip: "You counted the crown race twice.",
			Take: "ruler", Minutes: 2, Figure: "measure-lower-headset"}}
	ForkLength = &Quantity{Key: "fork-length", Label: "Fork, axle to crown", Unit: Mm, Low: 400, High: 640,
		Least: 200, Most: 960, Repeat: 2,
		How: Instruction{
			Text: "Take it from the fork maker’s chart, or measure the unloaded fork along its leg from the centre " +
				"of the axle up to the crown’s seat under the lower bearing. Some makers print the straight line " +
				"from the crown’s middle to the axle instead. It is a little longer, so say which you have.",
			Slip: "The bike stands on the fork and it has sunk. Lift the front wheel.",
			Who:  Eased, Take: "tape measure", Minutes: 4, Figure: "measure-fork-length"}}
	ForkOffset = &Quantity{Key: "fork-offset", Label: "Fork offset", Unit: Mm, Low: 30, High: 60, Least: -80,
		Most: 110, Repeat: 0.5,
		How: Instruction{
			Text: "Read it off the sticker on the fork or from its maker’s chart. It is how far the axle lies ahead " +
				"of the steering axis, square to that axis. A tape is too coarse for it.",
			Slip: "You read the offset of another year’s fork.",
			Take: "the fork’s sticker or data sheet", Minutes: 2, Figure: "measure-fork-offset"}}
	Chainstay = &Quantity{Key: "chainstay", Label: "Chainstay", Unit: Mm, Low: 370, High: 500, Least: 185,
		Most: 750, Repeat: 2,
		How: Instruction{
			Text: "Measure in a straight line from the centre of the crank axle to the centre of the rear axle. " +
				"The axle’s end stands further out than the crank’s: hold the tape parallel to the frame’s middle " +
				"and sight across.",
			Slip: "The tape runs slantwise from end to end, and the length comes out too large.",
			Who:  Eased, Take: "tape measure", Minutes: 4, Figure: "measure-chainstay"}}
	BBDrop = &Quantity{Key: "bb-drop", Label: "Bottom-bracket drop", Unit: Mm, Low: -30, High: 80, Least: -80,
		Most: 130, Repeat: 2,
		How: Instruction{
			Text: "Take it from the maker’s chart, or take an axle’s height above the floor and subtract the " +
				"bottom-bracket height. Above the line between the axles it counts as negative.",
			Slip: "The wheels differ in height, and you measured only one axle.",
			Take: "tape measure", Minutes: 4, Figure: "measure-bb-drop"}}
	BBHeight = &Quantity{Key: "bb-height", Label: "Bottom-bracket height", Unit: Mm, Low: 270, High: 400,
		Least: 135, Most: 600, Repeat: 3,
		How: Instruction{
			Text: "Nobody on the bike, tyres at riding pressure, bike upright. Measure from the floor to the centre " +
				"of the crank axle.",
			Slip: "The bike leans. Check it with the plumb line.",
			Who:  Eased, Take: "tape measure", Minutes: 3, Figure: "measure-bb-height"}}
	Wheelbase = &Quantity{Key: "wheelbase", Label: "Wheelbase", Unit: Mm, Low: 950, High: 1400, Least: 475,
		Most: 2100, Repeat: 3,
		How: Instruction{
			Text: "Set the front wheel straight and hang a plumb line from each axle. Mark the floor and measure " +
				"between the marks.",
			Slip: "The front wheel is a little turned. Line it up with the frame.",
			Who:  Eased, Take: "plumb line, tape measure, masking tape", Minutes: 5, Figure: "measure-wheelbase"}}
	FrontCentre = &Quantity{Key: "front-centre", Label: "Crank axle to front axle", Unit: Mm, Low: 550,
		High: 950, Least: 275, Most: 1425, Repeat: 3,
		How: Instruction{
			Text: "Set the front wheel straight, nobody on the bike. Measure in a straight line from the centre of " +
				"the crank axle to the centre of the front axle, the tape parallel to the frame’s middle.",
			Slip: "The tape bends round the frame.",
			Who:  Eased, Take: "tape measure", Minutes: 4, Figure: "measure-front-centre"}}
	EffectiveTopTube = &Quantity{Key: "effective-top-tube", Label: "Effective top tube", Unit: Mm, Low: 480,
		High: 740, Least: 240, Most: 1110, Repeat: 2,
		How: Instruction{
			Text: "Take it from the maker’s chart. On the bike, hold a straightedge level from the middle of the " +
				"head tube’s upper edge back to the middle of the seat post and measure along it.",
			Slip: "The tape follows the top tube, which slopes.",
			Who:  Helper, Take: "straightedge with a level, tape measure", Minutes: 5,
			Figure: "measure-effective-top-tube"}}
	BBToHeadTube = &Quantity{Key: "bb-to-head-tube", Label: "Crank axle to head tube", Unit: Mm, Low: 540,
		High: 950, Least: 270, Most: 1425, Repeat: 3,
		How: Instruction{
			Text: "Measure in a straight line from the centre of the crank axle to the middle of the head tube’s " +
				"upper edge, the tape parallel to the frame’s middle.",
			Slip: "You counted in the bearing cover or spacers.",
			Who:  Eased, Take: "tape measure", Minutes: 4, Figure: "measure-bb-to-head-tube"}}
	RearAxleToHeadTube = &Quantity{Key: "rear-axle-to-head-tube", Label: "Rear axle to head tube", Unit: Mm,
		Low: 800, High: 1350, Least: 400, Most: 2025, Repeat: 3,
		How: Instruction{
			Text: "Measure in a straight line from the centre of the rear axle to the middle of the head tube’s " +
				"upper edge, the tape parallel to the frame’s middle.",
			Slip: "The seat post pushes the tape aside. Hold it in front of the post.",
			Who:  Helper, Take: "tape measure", Minutes: 5, Figure: "measure-rear-axle-to-head-tube"}}
	FrontAxleHeight = &Quantity{Key: "front-axle-height", Label: "Front axle height", Unit: Mm, Low: 230,
		High: 410, Least: 115, Most: 615, Repeat: 2,
		How: Instruction{
			Text: "Nobody on the bike, tyres at riding pressure. Measure from the floor straight up to the centre " +
				"of the front axle.",
			Slip: "The tape leans with the fork.",
			Take: "tape measure", Minutes: 2, Figure: "measure-front-axle-height"}}
	RearAxleHeight = &Quantity{Key: "rear-axle-height", Label: "Rear axle height", Unit: Mm, Low: 230, High: 410,
		Least: 115, Most: 615, Repeat: 2,
		How: Instruction{
			Text: "Nobody on the bike, tyres at riding pressure. Measure from the floor straight up to the centre " +
				"of the rear axle.",
			Slip: "One tyre is soft. Pump both, then take all heights again.",
			Take: "tape measure", Minutes: 2, Figure: "measure-rear-axle-height"}}
	BikeMass = &Quantity{Key: "bike-mass", Label: "Bike mass", Unit: Kg, Low: 6, High: 40, Least: 3, Most: 70,
		Repeat: 0.3,
		How: Instruction{
			Text: "Weigh yourself holding the bike, then alone, and take the difference. A luggage scale at the " +
				"saddle works too.",
			Slip: "A wheel touches the floor while you read.",
			Take: "bathroom scale", Minutes: 3,
			Figure: "measure-bike-mass"}}
	Load = &Quantity{Key: "load", Of: OfRider, Label: "Pack and clothing", Unit: Kg, High: 25, Most: 60, Repeat: 0.5,
		How: Instruction{
			Text: "Weigh your full pack, shoes, helmet and riding clothes together.",
			Slip: "You left out the water: a litre is a kilogram.",
			Take: "scale", Minutes: 2}}
	Sizes = &Quantity{Key: "sizes", Label: "Sizes", Unit: One, Low: 1, High: 12, Least: 1, Most: 12, Rows: 12,
		Table: Grid,
		How: Instruction{
			Text: "Paste the maker’s size chart as you copied it, sizes across or down. Below it you see how we " +
				"read it, and can correct it."},
		Columns: []*Column{
			{Reach, false}, {Stack, false}, {HeadAngle, false}, {SeatAngle, false}, {SeatTubeLength, false},
			{SeatAngleHeight, true}, {SeatTubeAngle, true}, {StandOver, true}, {HeadTubeLength,
				true}, {LowerHeadset, true},
			{ForkLength, true}, {ForkOffset, true}, {ForkTravel, true}, {RearTravel, true}, {Chainstay, true},
			{BBDrop, true}, {BBHeight, true}, {Wheelbase, true}, {FrontRim, true}, {RearRim, true},
			{FrontTyre, true}, {RearTyre, true}, {CrankLength, true}, {TravelPost, true}, {FreeDepth, true},
			{InsertionFrame, true}, {StemLength, true}, {SpacersLimit, true},
		}}
)
