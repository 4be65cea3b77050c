package measure

// The seat post and the tube that holds it.
var (
	TravelPost = &Quantity{Key: "travel-post", Label: "Post travel", Unit: SoldInMm, High: 260, Most: 400,
		How: Instruction{
			Text: "Take it from the post maker’s sheet, or measure how far the post drops. A fixed post has zero.",
			Slip: "The post was not fully up.",
			Take: "ruler", Minutes: 2, Figure: "measure-post-above"}}
	PostLength = &Quantity{Key: "post-length", Label: "Whole post", Unit: Mm, Low: 200, High: 650, Least: 100,
		Most: 975, Repeat: 2,
		How: Instruction{
			Text: "Post fully up and out of the frame. Measure from the middle of the rail clamp to its lowest " +
				"point, actuator and its fitting included.",
			Slip: "You left out the actuator.",
			Take: "tape measure", Minutes: 5, Figure: "measure-post-whole"}}
	PostHead = &Quantity{Key: "post-head", Label: "Post head", Unit: Mm, Low: 15, High: 45, Least: 7.5,
		Most: 67.5, Repeat: 1,
		How: Instruction{
			Text: "Measure from the middle of the rail clamp straight down to the top end of the moving tube.",
			Slip: "You measured from the top of the clamp.",
			Take: "ruler", Minutes: 2, Figure: "measure-post-above"}}
	PostCollar = &Quantity{Key: "post-collar", Label: "Post collar", Unit: Mm, Low: 15, High: 60, Least: 7.5,
		Most: 90, Repeat: 1,
		How: Instruction{
			Text: "Measure the height of the collar that stays above the frame when the post is pushed all the way " +
				"in: from the seat tube’s top edge to the collar’s upper rim.",
			Slip: "You counted in the seat clamp.",
			Take: "ruler", Minutes: 2, Figure: "measure-post-above"}}
	PostOffset = &Quantity{Key: "post-offset", Label: "Post offset", Unit: Mm, Low: -30, High: 35, Least: -80,
		Most: 100, Repeat: 1,
		How: Instruction{
			Text: "Measure how far the middle of the rail clamp lies behind the post’s centre line, square to the " +
				"post. A clamp ahead of the line counts as negative.",
			Slip: "You counted in the saddle’s shift on its rails.",
			Take: "straightedge, ruler", Minutes: 3, Figure: "measure-post-offset"}}
	PostActuator = &Quantity{Key: "post-actuator", Label: "Below the tube", Unit: Mm, High: 60, Most: 120, Repeat: 2,
		How: Instruction{
			Text: "Measure what sticks out below the end of the post’s outer tube: the actuator and the fitting of " +
				"its cable or hose. Zero for a post without one.",
			Slip: "You left out the bend of the cable.",
			Take: "ruler", Minutes: 3, Figure: "measure-post-whole"}}
	PostDiameter = &Quantity{Key: "post-diameter", Label: "Post diameter", Unit: Mm, Low: 25, High: 36,
		Least: 12.5, Most: 54, Repeat: 0.1,
		How: Instruction{
			Text: "Read it on the post near the minimum-insertion mark, such as 31.6, or measure with callipers.",
			Slip: "You measured where the post is scratched or painted.",
			Take: "callipers", Minutes: 1, Figure: "measure-post-whole"}}
	InsertionPost = &Quantity{Key: "insertion-post", Label: "Post’s minimum insertion", Unit: Mm, Low: 40,
		High: 200, Least: 20, Most: 300, Repeat: 1,
		How: Instruction{
			Text: "Take it from the post maker’s sheet, or measure from the minimum-insertion mark to the lowest " +
				"point of the post’s outer tube.",
			Slip: "You counted in the actuator below the tube.",
			Take: "ruler", Minutes: 3, Figure: "measure-post-whole"}}
	InsertionFrame = &Quantity{Key: "insertion-frame", Label: "Frame’s minimum insertion", Unit: Mm, Low: 40,
		High: 200, Least: 20, Most: 300, Repeat: 1,
		How: Instruction{
			Text: "Look it up in the frame maker’s manual: how deep any post must sit in the seat tube. It is often " +
				"below the top tube’s joint.",
			Slip: "You took the post’s own mark for the frame’s.",
			Take: "the frame’s manual", Minutes: 5, Figure: "post-in-the-frame"}}
	FreeDepth = &Quantity{Key: "free-depth", Label: "Free depth in the seat tube", Unit: Mm, Low: 80, High: 400,
		Least: 40, Most: 600, Repeat: 5,
		How: Instruction{
			Text: "With the post out, slide a thin rod into the seat tube from the top until it touches the first " +
				"obstacle, a bend, a pivot or a bottle bolt. Do it in front and behind and force nothing. Measure " +
				"from the tube’s top edge to that point; the smaller one counts.",
			Slip: "The rod slips past an obstacle on one side.",
			Take: "thin rod, tape measure", Minutes: 6, Figure: "measure-free-depth"}}
)
