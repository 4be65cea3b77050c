package measure

// The feet, and what lies between them and the pedal's spindle.
var (
	FootLength = length("foot-length", "Foot", 200, 330, 2,
		"Stand on paper with the heel against a wall and your full weight on that foot. Mark the tip of the longest toe and measure from the wall to the mark. Take both feet and enter the longer one.")
	OtherFoot = length("other-foot", "Other foot", 200, 330, 2,
		"Measure the other foot in the same way: heel against the wall, full weight on it, from the wall to the tip of the longest toe.")
	HeelToBallInner = length("heel-to-ball-inner", "Heel to inner ball", 130, 250, 3,
		"Stand on paper with the heel against a wall. Feel for the middle of the joint where the big toe meets the foot, mark it and measure from the wall.")
	HeelToBallOuter = length("heel-to-ball-outer", "Heel to outer ball", 130, 250, 3,
		"Stand on paper with the heel against a wall. Feel for the middle of the joint where the little toe meets the foot, mark it and measure from the wall.")
	CleatBehindBall = length("cleat-behind-ball", "Spindle behind the ball", -10, 60, 2,
		"Mark the inner ball joint on the shoe's side, set the foot on the pedal level and hold a set square at the spindle. Measure from the mark back to the spindle; a spindle ahead of the mark counts as negative.").allow(-40, 150)
	PedalHeight = length("pedal-height", "Spindle to shoe", 5, 30, 1,
		"Measure from the middle of the pedal's spindle up to the face that the shoe stands on, with the cleat in place when you ride clipped in.").allow(0, 60)
	SoleHeight = length("sole-height", "Sole under the ball", 5, 35, 2,
		"Measure the thickness of the shoe under the ball of the foot, from the face that stands on the pedal to the skin, insole included.").allow(0, 80)
	QFactor = length("q-factor", "Q factor", 130, 240, 1,
		"Put a straightedge across the outer face of one crank where the pedal screws in, and another across the other crank. Measure between the two, square to the bike.")
	FootOffset = length("foot-offset", "Crank to foot centre", 45, 75, 2,
		"Stand on the pedal as you ride. A helper measures from the crank's outer face to the middle of the shoe over the spindle.")
	PedalWidth = length("pedal-width", "Crank to pedal edge", 80, 140, 2,
		"Measure along the spindle from the crank's outer face to the outermost edge of the pedal.")
	PedalThickness = length("pedal-thickness", "Pedal thickness", 8, 40, 1,
		"Measure the pedal's body at its outer end from the top face to the bottom face, without pins.")
	PedalSpacer = length("pedal-spacer", "Pedal spacer", 0, 3, 0.1,
		"Measure the thickness of all washers and spacers between one pedal's shoulder and the crank.").allow(0, 30)
	CleatShift = length("cleat-shift", "Cleat inwards", -5, 5, 1,
		"Measure how far the cleat sits inwards of the middle of its slots, towards the bike. Outwards counts as negative; a cleat further in sets the foot further out.").allow(-15, 15)
	HeelCup = length("heel-cup", "Heel cup", 0, 12, 1,
		"Stand the shoe with its heel against a wall. Push a ruler into the shoe along the sole to the back of the cup, measure from its tip to the toe, and take that from the length outside, wall to toe.").allow(0, 40)
	PedalThread = length("pedal-thread", "Pedal thread", 10, 20, 0.3,
		"Take the pedal out. Measure the length of its thread from the shoulder, or from the washer that stays on, to the end.").allow(4, 40)
	ToeOut = angle("toe-out", "Toes outwards", -10, 25, 3, -40, 60,
		"Sit on a table's edge, let the lower legs hang and look down: estimate the angle by which the feet point outwards from straight ahead. Inwards counts as negative.")
	ShoeSize = &Quantity{Key: "shoe-size", Label: "Shoe size", Unit: One, Low: 1, High: 52, Least: 0, Most: 400,
		How: "Read the size on the label inside a shoe that fits, and choose which system it is in."}
)
