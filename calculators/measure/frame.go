package measure

// The frame and fork as a geometry chart gives them, or as a tape finds them.
var (
	Reach = &Quantity{Key: "reach", Label: "Reach", Unit: Mm, Low: 320, High: 560, Least: 160, Most: 840, Repeat: 2,
		How: "Take it from the maker's chart. On the bike it is the level distance from the centre of the bottom " +
			"bracket to the centre of the head tube's top."}
	Stack = &Quantity{Key: "stack", Label: "Stack", Unit: Mm, Low: 470, High: 740, Least: 235, Most: 1110, Repeat: 2,
		How: "Take it from the maker's chart. On the bike it is the upright distance from the centre of the bottom " +
			"bracket to the centre of the head tube's top."}
	HeadAngle = &Quantity{Key: "head-angle", Label: "Head angle", Unit: Deg, Low: 58, High: 76, Least: 45,
		Most: 85, Repeat: 0.3,
		How: "Take it from the maker's chart, or lay a phone's level along the head tube with the bike standing " +
			"upright on level ground. It is counted from the horizontal."}
	SeatAngle = &Quantity{Key: "seat-angle", Label: "Effective seat angle", Unit: Deg, Low: 68, High: 84,
		Least: 50, Most: 100, Repeat: 0.3,
		How: "Take it from the maker's chart. It is the angle from the horizontal of a line from the bottom " +
			"bracket to the middle of the seat post at the height that the chart names."}
	SeatAngleHeight = &Quantity{Key: "seat-angle-height", Label: "Height the seat angle is read at", Unit: Mm,
		Low: 400, High: 850, Least: 200, Most: 1275,
		How: "Look in the chart's small print for the height above the bottom bracket at which the effective seat " +
			"angle is read. Where nothing is said, the stack is usual."}
	SeatTubeAngle = &Quantity{Key: "seat-tube-angle", Label: "Seat tube's own angle", Unit: Deg, Low: 55,
		High: 80, Least: 40, Most: 95, Repeat: 0.5,
		How: "Lay a phone's level along the seat tube or the fully raised post, on level ground. It is the tilt of " +
			"the tube itself from the horizontal, often called the actual angle."}
	SeatTubeLength = &Quantity{Key: "seat-tube-length", Label: "Seat tube", Unit: Mm, Low: 270, High: 560,
		Least: 135, Most: 840, Repeat: 2,
		How: "Measure along the seat tube from the centre of the bottom bracket to the top edge of the tube, where " +
			"the post goes in."}
	StandOver = &Quantity{Key: "stand-over", Label: "Stand-over", Unit: Mm, Low: 550, High: 900, Least: 275,
		Most: 1350, Repeat: 5,
		How: "With the bike upright on level ground, measure from the floor to the top of the top tube where you " +
			"straddle it."}
	HeadTubeLength = &Quantity{Key: "head-tube-length", Label: "Head tube", Unit: Mm, Low: 80, High: 200,
		Least: 40, Most: 300, Repeat: 1,
		How: "Measure the frame's head tube from its lower edge to its upper edge, along the tube and without the " +
			"headset's covers."}
	LowerHeadset = &Quantity{Key: "lower-headset", Label: "Lower headset", Unit: Mm, High: 20, Most: 50, Repeat: 1,
		How: "Measure how far the headset's lower cup stands out below the head tube, down to the fork's crown. A " +
			"bearing sunk in the frame counts as zero."}
	ForkLength = &Quantity{Key: "fork-length", Label: "Fork, axle to crown", Unit: Mm, Low: 400, High: 640,
		Least: 200, Most: 960, Repeat: 2,
		How: "Take it from the fork maker's chart, or measure the unloaded fork from the middle of the axle up to " +
			"the crown's seat under the lower bearing. Say whether along the steerer's direction or straight."}
	ForkOffset = &Quantity{Key: "fork-offset", Label: "Fork offset", Unit: Mm, Low: 30, High: 60, Least: -80,
		Most: 110, Repeat: 0.5,
		How: "Take it from the fork maker's chart or from the sticker on the fork. It is the distance of the axle " +
			"ahead of the steering axis, square to that axis."}
	Chainstay = &Quantity{Key: "chainstay", Label: "Chainstay", Unit: Mm, Low: 370, High: 500, Least: 185,
		Most: 750, Repeat: 2,
		How: "Measure in a straight line from the centre of the bottom bracket to the centre of the rear axle."}
	BBDrop = &Quantity{Key: "bb-drop", Label: "Bottom-bracket drop", Unit: Mm, Low: -30, High: 80, Least: -80,
		Most: 130, Repeat: 2,
		How: "Take it from the maker's chart. It is how far the bottom bracket's centre lies below the line " +
			"between the axles; above the line counts as negative."}
	BBHeight = &Quantity{Key: "bb-height", Label: "Bottom-bracket height", Unit: Mm, Low: 270, High: 400,
		Least: 135, Most: 600, Repeat: 3,
		How: "With nobody on the bike, the tyres at riding pressure and the bike upright, measure from the floor " +
			"to the centre of the bottom bracket."}
	Wheelbase = &Quantity{Key: "wheelbase", Label: "Wheelbase", Unit: Mm, Low: 950, High: 1400, Least: 475,
		Most: 2100, Repeat: 3,
		How: "With the front wheel straight, measure from the centre of one axle to the centre of the other, or " +
			"between the plumb points on the floor."}
	FrontCentre = &Quantity{Key: "front-centre", Label: "Bottom bracket to front axle", Unit: Mm, Low: 550,
		High: 950, Least: 275, Most: 1425, Repeat: 3,
		How: "With the front wheel straight and nobody on the bike, measure in a straight line from the centre of " +
			"the bottom bracket to the centre of the front axle."}
	EffectiveTopTube = &Quantity{Key: "effective-top-tube", Label: "Effective top tube", Unit: Mm, Low: 480,
		High: 740, Least: 240, Most: 1110, Repeat: 2,
		How: "Take it from the maker's chart. On the bike it is the level distance from the centre of the head " +
			"tube's top back to the middle of the seat post."}
	BBToHeadTube = &Quantity{Key: "bb-to-head-tube", Label: "Bottom bracket to head tube", Unit: Mm, Low: 540,
		High: 950, Least: 270, Most: 1425, Repeat: 3,
		How: "Measure in a straight line from the centre of the bottom bracket to the centre of the head tube's " +
			"top edge, both taken in the middle plane of the bike."}
	RearAxleToHeadTube = &Quantity{Key: "rear-axle-to-head-tube", Label: "Rear axle to head tube", Unit: Mm,
		Low: 800, High: 1350, Least: 400, Most: 2025, Repeat: 3,
		How: "Measure in a straight line from the centre of the rear axle to the centre of the head tube's top " +
			"edge, both taken in the middle plane of the bike."}
	FrontAxleHeight = &Quantity{Key: "front-axle-height", Label: "Front axle height", Unit: Mm, Low: 230,
		High: 410, Least: 115, Most: 615, Repeat: 2,
		How: "With nobody on the bike and the tyres at riding pressure, measure from the floor straight up to the " +
			"centre of the front axle."}
	RearAxleHeight = &Quantity{Key: "rear-axle-height", Label: "Rear axle height", Unit: Mm, Low: 230, High: 410,
		Least: 115, Most: 615, Repeat: 2,
		How: "With nobody on the bike and the tyres at riding pressure, measure from the floor straight up to the " +
			"centre of the rear axle."}
	BikeMass = &Quantity{Key: "bike-mass", Label: "Bike mass", Unit: Kg, Low: 6, High: 40, Least: 3, Most: 70,
		Repeat: 0.3,
		How: "Weigh yourself holding the bike, then alone, and take the difference. A luggage scale at the saddle " +
			"does as well."}
	Load = &Quantity{Key: "load", Label: "Pack and clothing", Unit: Kg, High: 25, Most: 60, Repeat: 0.5,
		How: "Weigh your full pack, shoes, helmet and riding clothes together."}
	Sizes = &Quantity{Key: "sizes", Label: "Sizes", Unit: One, Low: 1, High: 12, Least: 1, Most: 12, Rows: 12,
		Table: Grid,
		How:   "Copy the maker's size chart into a table: one line for each size, the first line naming the columns.",
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
