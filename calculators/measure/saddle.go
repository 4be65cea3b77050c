package measure

// The saddle. Its point is the top above the middle of the rails' marked zone.
var (
	SaddleHeight = &Quantity{Key: "saddle-height", Label: "Saddle height", Unit: Mm, Low: 400, High: 980,
		Least: 200, Most: 1470, Repeat: 3,
		How: "Raise the post fully. Measure along the seat line from the centre of the bottom bracket to the " +
			"saddle's top above the middle of the rails' marked zone."}
	SaddleNose = &Quantity{Key: "saddle-nose", Label: "Nose to rail middle", Unit: Mm, Low: 120, High: 190,
		Least: 60, Most: 285, Repeat: 3,
		How: "With the saddle level, measure from the tip of its nose back to a plumb line through the middle of " +
			"the rails' marked zone."}
	SaddleSetback = &Quantity{Key: "saddle-setback", Label: "Saddle setback", Unit: Mm, High: 350, Least: -200,
		Most: 600, Repeat: 5,
		How: "Hold a plumb line at the saddle's top above the middle of the rails' marked zone. Measure level from " +
			"it forward to the centre of the bottom bracket, with the bike on level ground."}
	NoseSetback = &Quantity{Key: "nose-setback", Label: "Nose behind the bottom bracket", Unit: Mm, Low: -150,
		High: 200, Least: -400, Most: 450, Repeat: 5,
		How: "Hold a plumb line at the tip of the saddle's nose. Measure level from it forward to the centre of " +
			"the bottom bracket; a nose ahead of the bottom bracket counts as negative."}
	SaddleFloor = &Quantity{Key: "saddle-floor", Label: "Saddle above the floor", Unit: Mm, Low: 700, High: 1250,
		Least: 350, Most: 1875, Repeat: 4,
		How: "With the bike upright on level ground and the post fully up, measure from the floor to the saddle's " +
			"top above the middle of the rails' marked zone."}
	SaddleStack = &Quantity{Key: "saddle-stack", Label: "Saddle, rail to top", Unit: Mm, Low: 35, High: 70,
		Least: 17.5, Most: 105, Repeat: 2,
		How: "Measure from the middle of the rail where the clamp holds it straight up to the saddle's top."}
	SaddleTilt = &Quantity{Key: "saddle-tilt", Label: "Saddle tilt", Unit: Deg, Low: -5, High: 15, Least: -30,
		Most: 45, Repeat: 0.5,
		How: "Stand the bike on level ground and lay a straight board along the saddle with a phone's level on it. " +
			"Nose down counts as positive."}
	RailShift = &Quantity{Key: "rail-shift", Label: "Saddle on its rails", Unit: Mm, Low: -25, High: 25,
		Least: -70, Most: 70, Repeat: 1,
		How: "Measure from the middle of the rails' marked zone to the middle of the clamp. A saddle pushed back " +
			"counts as positive, one pushed forward as negative."}
	NewSaddleSetback = &Quantity{Key: "new-saddle-setback", Label: "Setback you want", Unit: Mm, High: 350,
		Least: -200, Most: 600, Repeat: 5,
		How: "Take it from a bike that suits you, measured level from its bottom bracket back to the saddle's top " +
			"above the middle of the rails' marked zone."}
	SitBoneEdges = &Quantity{Key: "sit-bone-edges", Label: "Edges beyond the centres", Unit: Mm, Low: 20,
		High: 50, Most: 80, Repeat: 5,
		How: "On the card, measure both ways: between the outer edges of the two dents and between their deepest " +
			"points. Enter the difference."}
	TargetKnee = &Quantity{Key: "target-knee", Label: "Knee bend to aim for", Unit: Deg, Low: 30, High: 40,
		Least: 15, Most: 60,
		How: "Choose it, or keep 35 degrees: how far the knee is bent at the bottom of the stroke while you pedal, " +
			"zero being a straight leg."}
	KneeReading = &Quantity{Key: "knee-reading", Label: "Your own knee reading", Unit: Deg, Low: 10, High: 70,
		Most: 120, Repeat: 3, Photo: KneeRead,
		How: "Read the knee with the crank in line with the seat: a straight leg is zero, so take an inner angle " +
			"from 180 first. Take the middle of three readings held still, or of five strokes filmed."}
)
