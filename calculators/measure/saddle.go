package measure

// The saddle. Its point is the top above the middle of the rails' marked zone.
var (
	SaddleHeight = &Quantity{Key: "saddle-height", Label: "Saddle height", Unit: Mm, Low: 400, High: 980,
		Least: 200, Most: 1470, Repeat: 3,
		How: Instruction{
			Text: "Raise the post fully. Measure from the centre of the crank axle, along the seat line, to the top " +
				"of the saddle above the middle of its rails’ marked zone.",
			Slip: "The tape ends at the edge of the saddle beside it. Lay a ruler across the top.",
			Take: "tape measure, ruler", Minutes: 3, Figure: "measure-saddle-height"}}
	SaddleNose = &Quantity{Key: "saddle-nose", Label: "Nose to rail middle", Unit: Mm, Low: 120, High: 190,
		Least: 60, Most: 285, Repeat: 3,
		How: Instruction{
			Text: "Saddle level. Measure from the tip of its nose back, level, to the middle of the rails’ marked " +
				"zone.",
			Slip: "You took the middle of the clamp for the middle of the marked zone.",
			Take: "ruler, set square", Minutes: 3, Figure: "measure-saddle-nose"}}
	SaddleSetback = &Quantity{Key: "saddle-setback", Label: "Saddle setback", Unit: Mm, High: 350, Least: -200,
		Most: 600, Repeat: 5,
		How: Instruction{
			Text: "Post fully up, bike upright on level ground. Hang a plumb line from the tip of the saddle’s " +
				"nose and mark the floor; do the same at the centre of the crank axle and measure between the " +
				"marks. Add the length from the nose to the middle of the rails’ marked zone. If the nose is ahead " +
				"of the axle, subtract the first length instead.",
			Why: "A line from the nose hangs free. One from the middle of the rails has the saddle and the wheel in " +
				"its way.",
			Slip: "You lost the sign where the nose is ahead of the crank axle.",
			Who:  Eased, Take: "plumb line, tape measure, masking tape", Minutes: 6, Figure: "measure-saddle-setback"}}
	NoseSetback = &Quantity{Key: "nose-setback", Label: "Nose behind the crank axle", Unit: Mm, Low: -150,
		High: 200, Least: -400, Most: 450, Repeat: 5,
		How: Instruction{
			Text: "Post fully up, bike upright on level ground. Hang a plumb line from the tip of the saddle’s " +
				"nose and mark the floor. Do the same at the centre of the crank axle and measure between the " +
				"marks; a nose ahead of the axle counts as negative.",
			Slip: "The thread touches the frame on its way down.",
			Who:  Eased, Take: "plumb line, tape measure, masking tape", Minutes: 5, Figure: "measure-nose-setback"}}
	SaddleFloor = &Quantity{Key: "saddle-floor", Label: "Saddle above the floor", Unit: Mm, Low: 700, High: 1250,
		Least: 350, Most: 1875, Repeat: 4,
		How: Instruction{
			Text: "Post fully up, bike upright on level ground. Measure from the floor to the top of the saddle " +
				"above the middle of the rails’ marked zone.",
			Slip: "The tape leans along the seat tube. It has to hang plumb.",
			Who:  Eased, Take: "tape measure, ruler", Minutes: 3, Figure: "measure-saddle-floor"}}
	SaddleStack = &Quantity{Key: "saddle-stack", Label: "Saddle, rail to top", Unit: Mm, Low: 35, High: 70,
		Least: 17.5, Most: 105, Repeat: 2,
		How: Instruction{
			Text: "Measure from the middle of the rail where the clamp holds it straight up to the saddle’s top.",
			Slip: "You took the clamp’s lower edge for the rail.",
			Take: "ruler", Minutes: 2, Figure: "measure-saddle-stack"}}
	SaddleTilt = &Quantity{Key: "saddle-tilt", Label: "Saddle tilt", Unit: Deg, Low: -5, High: 15, Least: -30,
		Most: 45, Repeat: 0.5,
		How: Instruction{
			Text: "Stand the bike upright on level ground, post fully up. Set the phone’s level to zero on the " +
				"floor, lay a straight board along the saddle from rear to nose and put the phone on it. Turn the " +
				"phone end for end and use the mean. Nose down counts as positive.",
			Slip: "On a deep dip or a raised tail the board rocks. Lay it over the front two thirds, and say so in " +
				"your notes.",
			Take: "straight board, phone with a level", Minutes: 4, Figure: "measure-saddle-tilt"}}
	RailShift = &Quantity{Key: "rail-shift", Label: "Saddle on its rails", Unit: Mm, Low: -25, High: 25,
		Least: -70, Most: 70, Repeat: 1,
		How: Instruction{
			Text: "Measure from the middle of the rails’ marked zone to the middle of the clamp. A saddle pushed " +
				"back counts as positive, one pushed forward as negative.",
			Slip: "You halved the whole rail and not the marked zone.",
			Take: "ruler", Minutes: 2, Figure: "measure-rail-shift"}}
	NewSaddleSetback = &Quantity{Key: "new-saddle-setback", Label: "Setback you want", Unit: Mm, High: 350,
		Least: -200, Most: 600, Repeat: 5,
		How: Instruction{
			Text: "Choose it, or take it from a bike that suits you: nose to the crank axle’s plumb mark, plus nose " +
				"to the middle of the rails.",
			Slip: "Two saddles of different length are compared by their noses.",
			Who:  Eased, Take: "plumb line, tape measure", Minutes: 6, Figure: "measure-saddle-setback"}}
	SitBoneEdges = &Quantity{Key: "sit-bone-edges", Of: OfRider, Label: "Edges beyond the centres", Unit: Mm, Low: 20,
		High: 50, Most: 80, Repeat: 5,
		How: Instruction{
			Text: "On the card, measure both ways: between the outer edges of the two dents and between their " +
				"deepest points. Enter the difference.",
			Slip: "You read the rim of the dent in a poor light.",
			Take: "card with your dents, ruler", Minutes: 3, Figure: "measure-sit-bones"}}
	TargetKnee = &Quantity{Key: "target-knee", Of: OfRider, Label: "Knee bend to aim for", Unit: Deg, Low: 30,
		High:  40,
		Least: 15, Most: 60,
		How: Instruction{
			Text: "How far the knee is bent at the bottom of the stroke while you pedal, zero being a straight leg. " +
				"Choose it, or keep 35 degrees.",
			Figure: "measure-seated-angles"}}
	KneeReading = &Quantity{Key: "knee-reading", Label: "Your own knee reading", Unit: Deg, Low: 10, High: 70,
		Most: 120, Repeat: 3, Photo: KneeRead,
		How: Instruction{
			Text: "While you sit on the bike, mark the knob of the hip, the bump at the outer side of the knee and " +
				"the outer ankle knob. Warm up for ten minutes in riding shoes. Turn the crank in line with the " +
				"seat: hold a straightedge from the saddle through the crank axle. Either stop there softly and " +
				"have a helper lay a goniometer on the three marks, middle of three stops; or film from the side, " +
				"5 m away at knee height, and read the frame with the crank there, middle of five strokes. A " +
				"straight leg is zero, so take an inner angle from 180.",
			Slip: "You marked the points standing, and they slide over the bone when you sit; or the crank points " +
				"at the floor and not along the seat.",
			Who: Helper, Take: "goniometer or camera, marker, straightedge", Minutes: 20,
			Figure: "measure-knee-reading"}}
)
