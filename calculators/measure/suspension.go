package measure

// Suspension, slopes and where the weight sits.
var (
	ForkTravel = length("fork-travel", "Fork travel", 0, 220, 0,
		"Take it from the fork maker's sheet for your fork as it is set up. A rigid fork has zero.").allow(0, 350)
	RearTravel = length("rear-travel", "Rear travel", 0, 240, 0,
		"Take it from the frame maker's sheet: how far the rear axle moves upright from topped out to bottomed out. A hard-tail has zero.").allow(0, 380)
	SagFront = percent("sag-front", "Fork sag", 0, 50, 2, 0, 100,
		"Push the rubber ring on the stanchion down to the seal, get on gently in riding gear, get off, and measure how far the ring moved. Enter it as a share of the fork's travel.")
	SagRear = percent("sag-rear", "Rear sag", 0, 50, 2, 0, 100,
		"Push the rubber ring on the shock up to the seal, get on gently in riding gear, get off, and measure how far the ring moved. Enter it as a share of the shock's stroke.")
	ShockStroke = length("shock-stroke", "Shock stroke", 30, 90, 0.5,
		"Take it from the frame's or shock maker's sheet: the second number of the shock's size.")
	Grade = percent("grade", "Grade", -100, 60, 1, -100, 100,
		"Rise over level distance, uphill positive. Lay a straight board on the trail with a phone's level on it: 45 degrees is 100 percent.")
	COMForward = length("com-forward", "Centre of mass ahead of the rear wheel", 200, 800, 15,
		"Sit on the bike with the front wheel on a scale and the rear wheel on a block as high. Front reading over total mass, times the wheelbase, is the distance ahead of the rear contact.").allow(50, 1400)
	COMHeight = length("com-height", "Centre of mass above the ground", 700, 1400, 25,
		"Weigh the front wheel level, then again with the rear wheel raised by a known height. The change of the reading gives the height above the ground.").allow(300, 2000)
	COMForwardError = length("com-forward-error", "Body model off, forward", -25, 25, 0,
		"Leave it empty. It stands for how far the body model may put your centre of mass too far forward.").allow(-150, 150)
	COMHeightError = length("com-height-error", "Body model off, upward", -25, 25, 0,
		"Leave it empty. It stands for how far the body model may put your centre of mass too high.").allow(-150, 150)
)
