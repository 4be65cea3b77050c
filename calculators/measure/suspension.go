package measure

// Suspension, slopes and where the weight sits.
var (
	ForkTravel = &Quantity{Key: "fork-travel", Label: "Fork travel", Unit: Mm, High: 220, Most: 350,
		How: "Take it from the fork maker's sheet for your fork as it is set up. A rigid fork has zero."}
	RearTravel = &Quantity{Key: "rear-travel", Label: "Rear travel", Unit: Mm, High: 240, Most: 380,
		How: "Take it from the frame maker's sheet: how far the rear axle moves upright from topped out to " +
			"bottomed out. A hard-tail has zero."}
	SagFront = &Quantity{Key: "sag-front", Label: "Fork sag", Unit: Percent, High: 50, Most: 100, Repeat: 2,
		How: "Push the rubber ring on the stanchion down to the seal, get on gently in riding gear, get off, and " +
			"measure how far the ring moved. Enter it as a share of the fork's travel."}
	SagRear = &Quantity{Key: "sag-rear", Label: "Rear sag", Unit: Percent, High: 50, Most: 100, Repeat: 2,
		How: "Push the rubber ring on the shock up to the seal, get on gently in riding gear, get off, and measure " +
			"how far the ring moved. Enter it as a share of the shock's stroke."}
	ShockStroke = &Quantity{Key: "shock-stroke", Label: "Shock stroke", Unit: Mm, Low: 30, High: 90, Least: 15,
		Most: 135, Repeat: 0.5,
		How: "Take it from the frame's or shock maker's sheet: the second number of the shock's size."}
	Grade = &Quantity{Key: "grade", Label: "Grade", Unit: Percent, Low: -100, High: 60, Least: -100, Most: 100,
		Repeat: 1,
		How: "Rise over level distance, uphill positive. Lay a straight board on the trail with a phone's level on " +
			"it: 45 degrees is 100 percent."}
	COMForward = &Quantity{Key: "com-forward", Label: "Centre of mass ahead of the rear wheel", Unit: Mm,
		Low: 200, High: 800, Least: 50, Most: 1400, Repeat: 15,
		How: "Sit on the bike with the front wheel on a scale and the rear wheel on a block as high. Front reading " +
			"over total mass, times the wheelbase, is the distance ahead of the rear contact."}
	COMHeight = &Quantity{Key: "com-height", Label: "Centre of mass above the ground", Unit: Mm, Low: 700,
		High: 1400, Least: 300, Most: 2000, Repeat: 25,
		How: "Weigh the front wheel level, then again with the rear wheel raised by a known height. The change of " +
			"the reading gives the height above the ground."}
)
