package measure

// The frame and fork as a geometry chart gives them, or as a tape finds them.
var (
	Reach = length("reach", "Reach", 320, 560, 2,
		"Take it from the maker's chart. On the bike it is the level distance from the centre of the bottom bracket to the centre of the head tube's top.")
	Stack = length("stack", "Stack", 470, 740, 2,
		"Take it from the maker's chart. On the bike it is the upright distance from the centre of the bottom bracket to the centre of the head tube's top.")
	HeadAngle = angle("head-angle", "Head angle", 58, 76, 0.3, 45, 85,
		"Take it from the maker's chart, or lay a phone's level along the head tube with the bike standing upright on level ground. It is counted from the horizontal.")
	SeatAngle = angle("seat-angle", "Effective seat angle", 68, 84, 0.3, 50, 100,
		"Take it from the maker's chart. It is the angle from the horizontal of a line from the bottom bracket to the middle of the seat post at the height that the chart names.")
	SeatAngleHeight = length("seat-angle-height", "Height the seat angle is read at", 400, 850, 0,
		"Look in the chart's small print for the height above the bottom bracket at which the effective seat angle is read. Where nothing is said, the stack is usual.")
	SeatTubeAngle = angle("seat-tube-angle", "Seat tube's own angle", 55, 80, 0.5, 40, 95,
		"Lay a phone's level along the seat tube or the fully raised post, on level ground. It is the tilt of the tube itself from the horizontal, often called the actual angle.")
	SeatTubeLength = length("seat-tube-length", "Seat tube", 270, 560, 2,
		"Measure along the seat tube from the centre of the bottom bracket to the top edge of the tube, where the post goes in.")
	StandOver = length("stand-over", "Stand-over", 550, 900, 5,
		"With the bike upright on level ground, measure from the floor to the top of the top tube where you straddle it.")
	HeadTubeLength = length("head-tube-length", "Head tube", 80, 200, 1,
		"Measure the frame's head tube from its lower edge to its upper edge, along the tube and without the headset's covers.")
	LowerHeadset = length("lower-headset", "Lower headset", 0, 20, 1,
		"Measure how far the headset's lower cup stands out below the head tube, down to the fork's crown. A bearing sunk in the frame counts as zero.").allow(0, 50)
	ForkLength = length("fork-length", "Fork, axle to crown", 400, 640, 2,
		"Take it from the fork maker's chart, or measure the unloaded fork from the middle of the axle up to the crown's seat under the lower bearing. Say whether along the steerer's direction or straight.")
	ForkOffset = length("fork-offset", "Fork offset", 30, 60, 0.5,
		"Take it from the fork maker's chart or from the sticker on the fork. It is the distance of the axle ahead of the steering axis, square to that axis.").allow(-80, 110)
	Chainstay = length("chainstay", "Chainstay", 370, 500, 2,
		"Measure in a straight line from the centre of the bottom bracket to the centre of the rear axle.")
	BBDrop = length("bb-drop", "Bottom-bracket drop", -30, 80, 2,
		"Take it from the maker's chart. It is how far the bottom bracket's centre lies below the line between the axles; above the line counts as negative.").allow(-80, 130)
	BBHeight = length("bb-height", "Bottom-bracket height", 270, 400, 3,
		"With nobody on the bike, the tyres at riding pressure and the bike upright, measure from the floor to the centre of the bottom bracket.")
	Wheelbase = length("wheelbase", "Wheelbase", 950, 1400, 3,
		"With the front wheel straight, measure from the centre of one axle to the centre of the other, or between the plumb points on the floor.")
	FrontCentre = length("front-centre", "Bottom bracket to front axle", 550, 950, 3,
		"With the front wheel straight and nobody on the bike, measure in a straight line from the centre of the bottom bracket to the centre of the front axle.")
	EffectiveTopTube = length("effective-top-tube", "Effective top tube", 480, 740, 2,
		"Take it from the maker's chart. On the bike it is the level distance from the centre of the head tube's top back to the middle of the seat post.")
	BBToHeadTube = length("bb-to-head-tube", "Bottom bracket to head tube", 540, 950, 3,
		"Measure in a straight line from the centre of the bottom bracket to the centre of the head tube's top edge, both taken in the middle plane of the bike.")
	RearAxleToHeadTube = length("rear-axle-to-head-tube", "Rear axle to head tube", 800, 1350, 3,
		"Measure in a straight line from the centre of the rear axle to the centre of the head tube's top edge, both taken in the middle plane of the bike.")
	FrontAxleHeight = length("front-axle-height", "Front axle height", 230, 410, 2,
		"With nobody on the bike and the tyres at riding pressure, measure from the floor straight up to the centre of the front axle.")
	RearAxleHeight = length("rear-axle-height", "Rear axle height", 230, 410, 2,
		"With nobody on the bike and the tyres at riding pressure, measure from the floor straight up to the centre of the rear axle.")
	BikeMass = mass("bike-mass", "Bike mass", 6, 40, 0.3, 3, 70,
		"Weigh yourself holding the bike, then alone, and take the difference. A luggage scale at the saddle does as well.")
	Load = mass("load", "Pack and clothing", 0, 25, 0.5, 0, 60,
		"Weigh your full pack, shoes, helmet and riding clothes together.")
	Sizes = table("sizes", "Sizes", 40,
		"Copy the maker's size chart into a table: one line for each size, the first line naming the columns.",
		&Column{Reach, false}, &Column{Stack, false}, &Column{HeadAngle, false}, &Column{SeatAngle, false}, &Column{SeatTubeLength, false},
		&Column{SeatAngleHeight, true}, &Column{SeatTubeAngle, true}, &Column{StandOver, true}, &Column{HeadTubeLength, true}, &Column{LowerHeadset, true},
		&Column{ForkLength, true}, &Column{ForkOffset, true}, &Column{ForkTravel, true}, &Column{RearTravel, true}, &Column{Chainstay, true},
		&Column{BBDrop, true}, &Column{BBHeight, true}, &Column{Wheelbase, true}, &Column{FrontRim, true}, &Column{RearRim, true},
		&Column{FrontTyre, true}, &Column{RearTyre, true}, &Column{CrankLength, true}, &Column{TravelPost, true}, &Column{FreeDepth, true},
		&Column{InsertionFrame, true}, &Column{StemLength, true}, &Column{SpacersLimit, true})
)
