package measure

// What a change brings: parts of the same bike after it, or the next bike's own.
var (
	NewForkLength = after(ForkLength, "New fork, axle to crown",
		"Take it from the new fork's chart, unloaded, and stay inside what the frame's maker allows.")
	NewForkOffset = after(ForkOffset, "New fork offset",
		"Take it from the new fork's chart or its sticker.")
	NewFrontRim = after(FrontRim, "New front rim",
		"Read the second number of the ISO marking on the new tyre's side wall, such as 57-622.")
	NewRearRim = after(RearRim, "New rear rim",
		"Read the second number of the ISO marking on the new rear tyre's side wall, such as 57-584.")
	NewFrontTyre = after(FrontTyre, "New front tyre",
		"Read the first number of the ISO marking on the new tyre's side wall, or measure the tyre on its rim.")
	NewRearTyre = after(RearTyre, "New rear tyre",
		"Read the first number of the ISO marking on the new rear tyre's side wall, or measure the tyre on its rim.")
	AngleHeadset = angle("angle-headset", "Angle headset", -2, 2, 0.1, -4, 4,
		"Read the degrees marked on the cups. A slacker head angle counts as negative, a steeper one as positive.")
	HeadsetPivot = length("headset-pivot", "Where the headset turns", 0, 200, 5,
		"Measure from the head tube's top down to the point about which the angle headset tilts the steering axis: half the head tube where both cups are offset.").allow(-20, 300)

	NewReach = after(Reach, "New bike's reach",
		"Take it from the new bike's chart: level from the bottom bracket to the centre of the head tube's top.")
	NewStack = after(Stack, "New bike's stack",
		"Take it from the new bike's chart: upright from the bottom bracket to the centre of the head tube's top.")
	NewHeadAngle = after(HeadAngle, "New bike's head angle",
		"Take it from the new bike's chart, or lay a phone's level along its head tube on level ground.")
	NewSeatAngle = after(SeatAngle, "New bike's seat angle",
		"Take the effective seat angle from the new bike's chart.")
	NewSeatAngleHeight = after(SeatAngleHeight, "Height the new seat angle is read at",
		"Look in the new chart's small print for the height above the bottom bracket at which the effective seat angle is read.")
	NewSeatTubeAngle = after(SeatTubeAngle, "New seat tube's own angle",
		"Take the actual seat tube angle from the new bike's chart, or lay a phone's level along the raised post.")
	NewCrankLength = after(CrankLength, "New crank",
		"Read the length stamped on the inner side of the new crank.")
	NewPedalHeight = after(PedalHeight, "New pedal, spindle to shoe",
		"Measure on the new pedal from the middle of the spindle to the face that the shoe stands on, cleat in place.")
	NewSoleHeight = after(SoleHeight, "New sole under the ball",
		"Measure the new shoe under the ball of the foot, from the face that stands on the pedal to the skin.")
	NewPostOffset = after(PostOffset, "New post offset",
		"Measure on the new post how far the middle of the rail clamp lies behind the tube's centre line; ahead counts as negative.")
	NewHeadsetHeight = after(HeadsetHeight, "New headset above the head tube",
		"Measure on the new bike from the head tube's top edge to the top of the bearing cover.")
	NewSpacersLimit = after(SpacersLimit, "New bike's greatest spacer stack",
		"Look up how high a stack of spacers under the stem the new fork's maker allows.")
	NewBarRise = after(BarRise, "New bar rise",
		"Take the rise of the new bar from its maker's sheet, or measure it between straightedges.")
	NewBarSweep = after(BarSweep, "New bar, grips behind the clamp",
		"Lay a straightedge across the new bar's grip centres and measure forward to the middle of its clamp.")
)
