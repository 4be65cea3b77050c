package measure

// The feet, and what lies between them and the pedal's spindle.
var (
	FootLength = &Quantity{Key: "foot-length", Label: "Foot", Unit: Mm, Low: 200, High: 330, Least: 100, Most: 495, Repeat: 2,
		How: "Stand on paper with the heel against a wall and your full weight on that foot. Mark the tip of the longest toe and measure from the wall to the mark. Take both feet and enter the longer one."}
	OtherFoot = &Quantity{Key: "other-foot", Label: "Other foot", Unit: Mm, Low: 200, High: 330, Least: 100, Most: 495, Repeat: 2,
		How: "Measure the other foot in the same way: heel against the wall, full weight on it, from the wall to the tip of the longest toe."}
	HeelToBallInner = &Quantity{Key: "heel-to-ball-inner", Label: "Heel to inner ball", Unit: Mm, Low: 130, High: 250, Least: 65, Most: 375, Repeat: 3,
		How: "Stand on paper with the heel against a wall. Feel for the middle of the joint where the big toe meets the foot, mark it and measure from the wall."}
	HeelToBallOuter = &Quantity{Key: "heel-to-ball-outer", Label: "Heel to outer ball", Unit: Mm, Low: 130, High: 250, Least: 65, Most: 375, Repeat: 3,
		How: "Stand on paper with the heel against a wall. Feel for the middle of the joint where the little toe meets the foot, mark it and measure from the wall."}
	CleatBehindBall = &Quantity{Key: "cleat-behind-ball", Label: "Spindle behind the ball", Unit: Mm, Low: -10, High: 60, Least: -40, Most: 150, Repeat: 2,
		How: "Mark the inner ball joint on the shoe's side, set the foot on the pedal level and hold a set square at the spindle. Measure from the mark back to the spindle; a spindle ahead of the mark counts as negative."}
	PedalHeight = &Quantity{Key: "pedal-height", Label: "Spindle to shoe", Unit: Mm, Low: 5, High: 30, Most: 60, Repeat: 1,
		How: "Measure from the middle of the pedal's spindle up to the face that the shoe stands on, with the cleat in place when you ride clipped in."}
	SoleHeight = &Quantity{Key: "sole-height", Label: "Sole under the ball", Unit: Mm, Low: 5, High: 35, Most: 80, Repeat: 2,
		How: "Measure the thickness of the shoe under the ball of the foot, from the face that stands on the pedal to the skin, insole included."}
	QFactor = &Quantity{Key: "q-factor", Label: "Q factor", Unit: Mm, Low: 130, High: 240, Least: 65, Most: 360, Repeat: 1,
		How: "Put a straightedge across the outer face of one crank where the pedal screws in, and another across the other crank. Measure between the two, square to the bike."}
	FootOffset = &Quantity{Key: "foot-offset", Label: "Crank to foot centre", Unit: Mm, Low: 45, High: 75, Least: 22.5, Most: 112.5, Repeat: 2,
		How: "Stand on the pedal as you ride. A helper measures from the crank's outer face to the middle of the shoe over the spindle."}
	PedalWidth = &Quantity{Key: "pedal-width", Label: "Crank to pedal edge", Unit: Mm, Low: 80, High: 140, Least: 40, Most: 210, Repeat: 2,
		How: "Measure along the spindle from the crank's outer face to the outermost edge of the pedal."}
	PedalThickness = &Quantity{Key: "pedal-thickness", Label: "Pedal thickness", Unit: Mm, Low: 8, High: 40, Least: 4, Most: 60, Repeat: 1,
		How: "Measure the pedal's body at its outer end from the top face to the bottom face, without pins."}
	PedalSpacer = &Quantity{Key: "pedal-spacer", Label: "Pedal spacer", Unit: Mm, High: 3, Most: 30, Repeat: 0.1,
		How: "Measure the thickness of all washers and spacers between one pedal's shoulder and the crank."}
	CleatShift = &Quantity{Key: "cleat-shift", Label: "Cleat inwards", Unit: Mm, Low: -5, High: 5, Least: -15, Most: 15, Repeat: 1,
		How: "Measure how far the cleat sits inwards of the middle of its slots, towards the bike. Outwards counts as negative; a cleat further in sets the foot further out."}
	HeelCup = &Quantity{Key: "heel-cup", Label: "Heel cup", Unit: Mm, High: 12, Most: 40, Repeat: 1,
		How: "Stand the shoe with its heel against a wall. Push a ruler into the shoe along the sole to the back of the cup, measure from its tip to the toe, and take that from the length outside, wall to toe."}
	PedalThread = &Quantity{Key: "pedal-thread", Label: "Pedal thread", Unit: Mm, Low: 10, High: 20, Least: 4, Most: 40, Repeat: 0.3,
		How: "Take the pedal out. Measure the length of its thread from the shoulder, or from the washer that stays on, to the end."}
	ToeOut = &Quantity{Key: "toe-out", Label: "Toes outwards", Unit: Deg, Low: -10, High: 25, Least: -40, Most: 60, Repeat: 3,
		How: "Sit on a table's edge, let the lower legs hang and look down: estimate the angle by which the feet point outwards from straight ahead. Inwards counts as negative."}
	ShoeSize = &Quantity{Key: "shoe-size", Label: "Shoe size", Unit: One, Low: 1, High: 52, Least: 0, Most: 400,
		How: "Read the size on the label inside a shoe that fits, and choose which system it is in."}
	NewPedals = &Quantity{Key: "new-pedals", Label: "New pedals", Unit: One, High: 1, Most: 1,
		How:     "Say whether the shoes lock into the pedals that you think of, or stand on them freely.",
		Choices: []Choice{{"clip", "Clipped in"}, {"flat", "Flat"}}}
	NewCleatBehindBall = &Quantity{Key: "new-cleat-behind-ball", Label: "New spindle behind the ball", Unit: Mm,
		Low: -10, High: 60, Least: -40, Most: 150, Repeat: 2,
		How: "Mark the inner ball joint on the new shoe's side and set the foot on the new pedal, level. Measure from the mark back to the spindle; a spindle ahead of the mark counts as negative."}

	ToeOutLeft = &Quantity{Key: "toe-out-left", Label: "Left foot's own angle", Unit: Deg, Low: -10, High: 25, Least: -40, Most: 60, Repeat: 3,
		How: "Lay card on the floor and draw a straight line on it. Walk on the spot over the line with closed eyes, stop, and let a helper draw round both feet. For each foot, draw the line from the middle of the heel to the second toe and measure its angle to the line. Toes inwards counts as negative."}
	ToeOutRight = &Quantity{Key: "toe-out-right", Label: "Right foot's own angle", Unit: Deg, Low: -10, High: 25, Least: -40, Most: 60, Repeat: 3,
		How: "Measure it on the same card as the left one: the line from the middle of the heel to the second toe, against the straight line. Toes inwards counts as negative."}
	CleatAngleLeft = &Quantity{Key: "cleat-angle-left", Label: "Left cleat lets toes out by", Unit: Deg, Low: -10, High: 20, Least: -30, Most: 40, Repeat: 1,
		How: "Clip the left shoe in by hand, without a foot in it, and turn it to the middle of its float. Measure the angle of the sole's middle line to the bike; toes inwards counts as negative."}
	CleatAngleRight = &Quantity{Key: "cleat-angle-right", Label: "Right cleat lets toes out by", Unit: Deg, Low: -10, High: 20, Least: -30, Most: 40, Repeat: 1,
		How: "Clip the right shoe in by hand, without a foot in it, and turn it to the middle of its float. Measure the angle of the sole's middle line to the bike; toes inwards counts as negative."}
	PedalFloat = &Quantity{Key: "pedal-float", Label: "Float, stop to stop", Unit: Deg, High: 20, Most: 40, Repeat: 0.5,
		How: "Read it in the sheet of the pedal and cleat: how far the shoe turns in all, from one stop to the other, before it begins to release."}
	ArmSetIn = &Quantity{Key: "arm-set-in", Label: "Crank arm set in at the axle", Unit: Mm, High: 30, Least: -10, Most: 60, Repeat: 2,
		How: "Lay a straightedge across the crank's outer face at the pedal, parallel to the bike. Measure from it to the arm's outer face at the crank axle."}
	StayWidth = &Quantity{Key: "stay-width", Label: "Stays, outside to outside", Unit: Mm, Low: 80, High: 170, Least: 40, Most: 255, Repeat: 3,
		How: "Measure across the outer faces of both chainstays, about 180 mm behind the bottom bracket, where the heels pass."}
	RearEndWidth = &Quantity{Key: "rear-end-width", Label: "Rear end, outside to outside", Unit: Mm, Low: 130, High: 230, Least: 65, Most: 345, Repeat: 3,
		How: "Measure across the outermost parts at the rear axle: frame, axle, brake and gear mechanism. Where one side stands out further, take twice the distance from the wheel's middle."}
	FrontHipPoints = &Quantity{Key: "front-hip-points", Label: "Front hip points apart", Unit: Mm, Low: 180, High: 310, Least: 90, Most: 465, Repeat: 5,
		How: "Stand upright and feel for the bony point at the front of the pelvis on each side, where the hip crest ends. A helper measures straight across from one point to the other, not round the belly."}
)
