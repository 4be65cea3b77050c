package measure

// Suspension, slopes and where the weight sits.
var (
	ForkTravel = &Quantity{Key: "fork-travel", Label: "Fork travel", Unit: SoldInMm, High: 220, Most: 350,
		How: Instruction{
			Text:   "Take it from the fork maker’s sheet for your fork as it is set up. A rigid fork has zero.",
			Figure: "fork-ring"}}
	RearTravel = &Quantity{Key: "rear-travel", Label: "Rear travel", Unit: SoldInMm, High: 240, Most: 380,
		How: Instruction{
			Text: "Take it from the frame maker’s sheet: how far the rear axle moves upright from topped out to " +
				"bottomed out. A hard-tail has zero."}}
	SagFront = &Quantity{Key: "sag-front", Label: "Fork sag", Unit: Percent, High: 50, Most: 100, Repeat: 2,
		How: Instruction{
			Text: "Open every lever that firms the fork and dress as you ride, water in the pack. Push the rubber " +
				"ring on the stanchion down to the seal. Lean one elbow on a wall, get on without bouncing, take " +
				"your posture, stay still for a few seconds and get off gently. Measure from seal to ring along " +
				"the leg and enter it as a share of the fork’s travel. Bounce the bike between readings.",
			Slip: "The ring is pushed on while you get on or off, and the sag comes out too large.",
			Who:  Eased, Take: "ruler, wall; a thin cable tie where the ring is missing", Minutes: 8,
			Figure: "fork-ring"}}
	SagRear = &Quantity{Key: "sag-rear", Label: "Rear sag", Unit: Percent, High: 50, Most: 100, Repeat: 2,
		How: Instruction{
			Text: "Push the rubber ring on the shock to the seal, get on as for the fork, take your posture, stay " +
				"still and get off gently. Measure from seal to ring and enter it as a share of the shock’s stroke.",
			Slip: "You took the share of the rear travel and not of the shock’s stroke.",
			Who:  Eased, Take: "ruler, wall; a thin cable tie where the ring is missing", Minutes: 6,
			Figure: "shock-ring"}}
	ShockStroke = &Quantity{Key: "shock-stroke", Label: "Shock stroke", Unit: Mm, Low: 30, High: 90, Least: 15,
		Most: 135, Repeat: 0.5,
		How: Instruction{
			Text:   "Take it from the frame’s or shock maker’s sheet: the second number of the shock’s size.",
			Figure: "shock-ring"}}
	Grade = &Quantity{Key: "grade", Label: "Grade", Unit: Percent, Low: -100, High: 60, Least: -100, Most: 100,
		Repeat: 1,
		How: Instruction{
			Text: "Rise over level distance, uphill positive. Lay a straight board on the trail with a phone’s " +
				"level on it: 45 degrees is 100 percent.",
			Slip: "You entered degrees as percent: 10 degrees are 18 percent.",
			Take: "straight board, phone with a level", Minutes: 3, Figure: "grade-of-a-trail"}}
	COMForward = &Quantity{Key: "com-forward", Label: "Centre of mass ahead of the rear wheel", Unit: Mm,
		Low: 200, High: 800, Least: 50, Most: 1400, Repeat: 15,
		How: Instruction{
			Text: "Weigh yourself with the bike, dressed to ride: that is the total. Put the rear wheel on the " +
				"scale, beside a wall, and the front wheel on blocks exactly as high. Sit as you climb, cranks " +
				"level, hands on the grips, brakes released, elbow just touching the wall, while helpers steady " +
				"saddle and bar from the side. Take the middle of three readings. The distance ahead of the rear " +
				"contact is the wheelbase × (total − rear reading) ÷ total.",
			Why: "The rear wheel goes on the scale because the second weighing then raises the front, as a climb " +
				"does.",
			Slip: "A helper lifts, or you lean on the wall. Half a kilogram changes the height by about 6 mm.",
			Who:  Helper, Take: "bathroom scale, firm blocks, wall", Minutes: 20, Figure: "measure-com-forward"}}
	COMHeight = &Quantity{Key: "com-height", Label: "Centre of mass above the ground", Unit: Mm, Low: 700,
		High: 1400, Least: 300, Most: 2000, Repeat: 25,
		How: Instruction{
			Text: "Weigh the rear wheel on the level as for the length before. Then set the front wheel on firm, " +
				"level blocks 200 to 250 mm higher and measure this rise exactly. Keep your posture to the bike " +
				"and weigh the rear wheel again, three times. With level = √(wheelbase² − rise²), the height is " +
				"rear wheel radius + wheelbase × level × (rear raised − rear level) ÷ (total × rise).",
			Slip: "You sit up when the front is raised. It rests on a small difference: half a kilogram changes " +
				"the height by about 30 mm.",
			Who: Helper, Take: "bathroom scale, firm blocks, wall, tape measure", Minutes: 20,
			Figure: "measure-com-height"}}
)
