package measure

// The seat post and the tube that holds it.
var (
	TravelPost = &Quantity{Key: "travel-post", Label: "Post travel", Unit: Mm, High: 260, Most: 400,
		How: "Take it from the post maker's sheet, or measure how far the post drops. A fixed post has zero."}
	PostLength = &Quantity{Key: "post-length", Label: "Whole post", Unit: Mm, Low: 200, High: 650, Least: 100,
		Most: 975, Repeat: 2,
		How: "With the post fully up and out of the frame, measure from the middle of the rail clamp to its lowest " +
			"point, actuator and its fitting included."}
	PostHead = &Quantity{Key: "post-head", Label: "Post head", Unit: Mm, Low: 15, High: 45, Least: 7.5,
		Most: 67.5, Repeat: 1,
		How: "Measure from the middle of the rail clamp straight down to the top end of the moving tube."}
	PostCollar = &Quantity{Key: "post-collar", Label: "Post collar", Unit: Mm, Low: 15, High: 60, Least: 7.5,
		Most: 90, Repeat: 1,
		How: "Measure the height of the collar that stays above the frame when the post is pushed all the way in: " +
			"from the seat tube's top edge to the collar's upper rim."}
	PostOffset = &Quantity{Key: "post-offset", Label: "Post offset", Unit: Mm, Low: -30, High: 35, Least: -80,
		Most: 100, Repeat: 1,
		How: "Measure how far the middle of the rail clamp lies behind the post's centre line, square to the post. " +
			"A clamp ahead of the line counts as negative."}
	PostActuator = &Quantity{Key: "post-actuator", Label: "Below the tube", Unit: Mm, High: 60, Most: 120, Repeat: 2,
		How: "Measure what sticks out below the end of the post's outer tube: the actuator and the fitting of its " +
			"cable or hose. Zero for a post without one."}
	PostDiameter = &Quantity{Key: "post-diameter", Label: "Post diameter", Unit: Mm, Low: 25, High: 36,
		Least: 12.5, Most: 54, Repeat: 0.1,
		How: "Read it on the post near the minimum-insertion mark, such as 31.6, or measure with callipers."}
	InsertionPost = &Quantity{Key: "insertion-post", Label: "Post's minimum insertion", Unit: Mm, Low: 40,
		High: 200, Least: 20, Most: 300, Repeat: 1,
		How: "Take it from the post maker's sheet, or measure from the minimum-insertion mark to the lowest point " +
			"of the post's outer tube."}
	InsertionFrame = &Quantity{Key: "insertion-frame", Label: "Frame's minimum insertion", Unit: Mm, Low: 40,
		High: 200, Least: 20, Most: 300, Repeat: 1,
		How: "Take it from the frame maker's manual: how deep any post must sit in the seat tube. It is often " +
			"below the top tube's joint."}
	FreeDepth = &Quantity{Key: "free-depth", Label: "Free depth in the seat tube", Unit: Mm, Low: 80, High: 400,
		Least: 40, Most: 600, Repeat: 5,
		How: "Slide a marked stick into the seat tube until a bend, pivot or bottle bolt stops it. Measure from " +
			"the tube's top edge to that point."}
)
