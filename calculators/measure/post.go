package measure

// The seat post and the tube that holds it.
var (
	TravelPost = length("travel-post", "Post travel", 0, 260, 0,
		"Take it from the post maker's sheet, or measure how far the post drops. A fixed post has zero.").allow(0, 400)
	PostLength = length("post-length", "Whole post", 200, 650, 2,
		"With the post fully up and out of the frame, measure from the middle of the rail clamp to its lowest point, actuator and its fitting included.")
	PostHead = length("post-head", "Post head", 15, 45, 1,
		"Measure from the middle of the rail clamp straight down to the top end of the moving tube.")
	PostCollar = length("post-collar", "Post collar", 15, 60, 1,
		"Measure the height of the collar that stays above the frame when the post is pushed all the way in: from the seat tube's top edge to the collar's upper rim.")
	PostOffset = length("post-offset", "Post offset", -30, 35, 1,
		"Measure how far the middle of the rail clamp lies behind the post's centre line, square to the post. A clamp ahead of the line counts as negative.").allow(-80, 100)
	PostActuator = length("post-actuator", "Below the tube", 0, 60, 2,
		"Measure what sticks out below the end of the post's outer tube: the actuator and the fitting of its cable or hose. Zero for a post without one.").allow(0, 120)
	PostDiameter = length("post-diameter", "Post diameter", 25, 36, 0.1,
		"Read it on the post near the minimum-insertion mark, such as 31.6, or measure with callipers.")
	InsertionPost = length("insertion-post", "Post's minimum insertion", 40, 200, 1,
		"Take it from the post maker's sheet, or measure from the minimum-insertion mark to the lowest point of the post's outer tube.")
	InsertionFrame = length("insertion-frame", "Frame's minimum insertion", 40, 200, 1,
		"Take it from the frame maker's manual: how deep any post must sit in the seat tube. It is often below the top tube's joint.")
	FreeDepth = length("free-depth", "Free depth in the seat tube", 80, 400, 5,
		"Slide a marked stick into the seat tube until a bend, pivot or bottle bolt stops it. Measure from the tube's top edge to that point.")
)
