package measure

// The saddle. Its point is the top above the middle of the rails' marked zone.
var (
	SaddleHeight = length("saddle-height", "Saddle height", 400, 980, 3,
		"Raise the post fully. Measure along the seat line from the centre of the bottom bracket to the saddle's top above the middle of the rails' marked zone.")
	SaddleNose = length("saddle-nose", "Nose to rail middle", 120, 190, 3,
		"With the saddle level, measure from the tip of its nose back to a plumb line through the middle of the rails' marked zone.")
	SaddleSetback = length("saddle-setback", "Saddle setback", 0, 350, 5,
		"Hold a plumb line at the saddle's top above the middle of the rails' marked zone. Measure level from it forward to the centre of the bottom bracket, with the bike on level ground.").allow(-200, 600)
	NoseSetback = length("nose-setback", "Nose behind the bottom bracket", -150, 200, 5,
		"Hold a plumb line at the tip of the saddle's nose. Measure level from it forward to the centre of the bottom bracket; a nose ahead of the bottom bracket counts as negative.").allow(-400, 450)
	SaddleFloor = length("saddle-floor", "Saddle above the floor", 700, 1250, 4,
		"With the bike upright on level ground and the post fully up, measure from the floor to the saddle's top above the middle of the rails' marked zone.")
	SaddleStack = length("saddle-stack", "Saddle, rail to top", 35, 70, 2,
		"Measure from the middle of the rail where the clamp holds it straight up to the saddle's top.")
	SaddleTilt = angle("saddle-tilt", "Saddle tilt", -5, 15, 0.5, -30, 45,
		"Stand the bike on level ground and lay a straight board along the saddle with a phone's level on it. Nose down counts as positive.")
	RailShift = length("rail-shift", "Saddle on its rails", -25, 25, 1,
		"Measure from the middle of the rails' marked zone to the middle of the clamp. A saddle pushed back counts as positive, one pushed forward as negative.").allow(-70, 70)
	NewSaddleSetback = after(SaddleSetback, "Setback you want",
		"Take it from a bike that suits you, measured level from its bottom bracket back to the saddle's top above the middle of the rails' marked zone.")
	SitBoneEdges = length("sit-bone-edges", "Edges beyond the centres", 20, 50, 5,
		"On the card, measure both ways: between the outer edges of the two dents and between their deepest points. Enter the difference.").allow(0, 80)
	TargetKnee = angle("target-knee", "Knee bend to aim for", 30, 40, 0, 15, 60,
		"Choose it, or keep 35 degrees: how far the knee is bent at the bottom of the stroke while you pedal, zero being a straight leg.")
	KneeReading = angle("knee-reading", "Your own knee reading", 10, 70, 3, 0, 120,
		"Read the knee with the crank in line with the seat: a straight leg is zero, so take an inner angle from 180 first. Take the middle of three readings held still, or of five strokes filmed.")
)
