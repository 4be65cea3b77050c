package measure

// The feet, and what lies between them and the pedal's spindle.
var (
	FootLength = &Quantity{Key: "foot-length", Of: OfRider, Label: "Foot", Unit: Mm, Low: 200, High: 330, Least: 100,
		Most: 495, Repeat: 2,
		How: Instruction{
			Text: "Late in the day, in riding socks, put a sheet of paper against a wall. Stand on it with your " +
				"heel touching the wall and your weight on that foot. Hold a pencil upright and mark the tip of " +
				"the longest toe. Measure from the wall to the mark, straight and not along the slanting foot. " +
				"Take both feet and enter the longer one.",
			Slip: "You marked the big toe where the second is longer, or the pencil drifts under the foot.",
			Take: "paper, pencil, ruler, wall", Minutes: 5, Figure: "measure-foot-length"}}
	OtherFoot = &Quantity{Key: "other-foot", Of: OfRider, Label: "Other foot", Unit: Mm, Low: 200, High: 330,
		Least: 100,
		Most:  495, Repeat: 2,
		How: Instruction{
			Text: "Measure the other foot in the same way: heel against the wall, weight on it, from the wall to " +
				"the tip of the longest toe.",
			Slip: "The weight stays on the first foot, and the second comes out shorter.",
			Take: "paper, pencil, ruler, wall", Minutes: 3, Figure: "measure-foot-length"}}
	HeelToBallInner = &Quantity{Key: "heel-to-ball-inner", Of: OfRider, Label: "Heel to inner ball", Unit: Mm,
		Low:  130,
		High: 250, Least: 65, Most: 375, Repeat: 3,
		How: Instruction{
			Text: "Stand on paper with your heel against a wall and your weight on the foot. Feel for the widest " +
				"bump on the inner side, the joint at the base of the big toe, and mark its middle beside the " +
				"foot, pencil upright. Measure from the wall, parallel to the foot.",
			Slip: "The pencil leans and the mark drifts under the foot.",
			Take: "paper, pencil, ruler, wall", Minutes: 4, Figure: "measure-heel-to-ball"}}
	HeelToBallOuter = &Quantity{Key: "heel-to-ball-outer", Of: OfRider, Label: "Heel to outer ball", Unit: Mm,
		Low:  130,
		High: 250, Least: 65, Most: 375, Repeat: 3,
		How: Instruction{
			Text: "Stay on the paper, heel against the wall. Feel for the bump on the outer side, the joint at the " +
				"base of the little toe, and mark its middle beside the foot. Measure from the wall, parallel to " +
				"the foot.",
			Slip: "You took the bump half-way along the outer edge, further back, for the joint.",
			Take: "paper, pencil, ruler, wall", Minutes: 3, Figure: "measure-heel-to-ball"}}
	CleatBehindBall = &Quantity{Key: "cleat-behind-ball", Of: OfShoes, Label: "Spindle behind the ball", Unit: Mm,
		Low:  -10,
		High: 60, Least: -40, Most: 150, Repeat: 2,
		How: Instruction{
			Text: "Feel for the inner ball joint through the shoe and stick a piece of tape beside it. Set the " +
				"foot on the pedal, level, as you ride, and hold a set square upright at the spindle. Measure from " +
				"the tape back to the spindle; a spindle ahead of the tape counts as negative.",
			Slip: "The tape marks the widest place of the shoe and not the joint inside it. Check it against the " +
				"paper.",
			Who: Eased, Take: "masking tape, set square, ruler", Minutes: 5, Figure: "measure-cleat-behind-ball"}}
	PedalHeight = &Quantity{Key: "pedal-height", Label: "Spindle to shoe", Unit: Mm, Low: 5, High: 30, Most: 60,
		Repeat: 1,
		How: Instruction{
			Text: "Measure from the middle of the pedal’s spindle up to the face that the shoe stands on, with the " +
				"cleat in place when you ride clipped in.",
			Slip: "You measured the pins too: the sole sinks between them.",
			Take: "ruler", Minutes: 2, Figure: "measure-pedal-height"}}
	SoleHeight = &Quantity{Key: "sole-height", Of: OfShoes, Label: "Sole under the ball", Unit: Mm, Low: 5,
		High: 35, Most: 80,
		Repeat: 2,
		How: Instruction{
			Text: "Measure the thickness of the shoe under the ball of the foot, from the face that stands on the " +
				"pedal to the skin: one ruler inside, one outside, or the outer height less the inner depth. The " +
				"insole counts.",
			Slip: "You measured the side wall of the sole. It is higher than the foot.",
			Take: "two rulers", Minutes: 3, Figure: "measure-sole-height"}}
	QFactor = &Quantity{Key: "q-factor", Label: "Q-factor", Unit: Mm, Low: 130, High: 240, Least: 65, Most: 360,
		Repeat: 1,
		How: Instruction{
			Text: "Hold a straightedge upright across the outer face of one crank where the pedal screws in, and " +
				"another across the other crank. Measure between the two, square to the bike. The maker’s figure " +
				"will do.",
			Why: "Measuring each side from the seat tube and adding the two works as well, but only on a frame " +
				"whose tube is in the middle.",
			Slip: "The straightedges are not parallel. Measure above and below the cranks: both must agree.",
			Who:  Eased, Take: "two straightedges, tape measure", Minutes: 4, Figure: "measure-q-factor"}}
	FootOffset = &Quantity{Key: "foot-offset", Label: "Crank to foot centre", Unit: Mm, Low: 45, High: 75,
		Least: 22.5, Most: 112.5, Repeat: 2,
		How: Instruction{
			Text: "Step on or clip in as you ride. A helper measures from the crank’s outer face to the middle of " +
				"the shoe over the spindle, on both sides. Enter the mean.",
			Slip: "You set the foot where you think it belongs, not where it is after a kilometre of riding.",
			Who:  Helper, Take: "ruler", Minutes: 4, Figure: "measure-foot-offset"}}
	PedalWidth = &Quantity{Key: "pedal-width", Label: "Crank to pedal edge", Unit: Mm, Low: 80, High: 140,
		Least: 40, Most: 210, Repeat: 2,
		How: Instruction{
			Text: "Measure along the spindle from the crank’s outer face to the outermost edge of the pedal.",
			Slip: "The tape starts at the pedal’s body and leaves out the bare end of the spindle.",
			Take: "ruler", Minutes: 2, Figure: "measure-pedal-width"}}
	PedalThickness = &Quantity{Key: "pedal-thickness", Label: "Pedal thickness", Unit: Mm, Low: 8, High: 40,
		Least: 4, Most: 60, Repeat: 1,
		How: Instruction{
			Text: "Measure the pedal’s body at its outer end from the top face to the bottom face, without pins.",
			Slip: "You measured at the spindle, where the body is thicker.",
			Take: "ruler", Minutes: 2, Figure: "measure-pedal-thickness"}}
	PedalSpacer = &Quantity{Key: "pedal-spacer", Label: "Pedal spacer", Unit: Mm, High: 3, Most: 30, Repeat: 0.1,
		How: Instruction{
			Text: "Measure the thickness of all washers and spacers between one pedal’s shoulder and the crank.",
			Slip: "You forgot the washer that stays stuck to the crank.",
			Take: "callipers", Minutes: 2, Figure: "measure-pedal-spacer"}}
	CleatShift = &Quantity{Key: "cleat-shift", Of: OfShoes, Label: "Cleat inwards", Unit: Mm, Low: -5, High: 5,
		Least: -15,
		Most:  15, Repeat: 1,
		How: Instruction{
			Text: "Turn the shoe over. Measure how far the cleat sits inwards of the middle of its slots, towards " +
				"the bike. Outwards counts as negative; a cleat further in sets the foot further out.",
			Slip: "You swapped inwards and outwards because the shoe lies upside down.",
			Take: "ruler", Minutes: 3, Figure: "measure-cleat-shift"}}
	HeelCup = &Quantity{Key: "heel-cup", Of: OfShoes, Label: "Heel cup", Unit: Mm, High: 12, Most: 40, Repeat: 1,
		How: Instruction{
			Text: "Stand the shoe with its heel against a wall. Push a ruler into the shoe along the sole to the " +
				"back of the cup and measure from there to the toe. Take that from the length outside, wall to toe.",
			Slip: "The ruler stops at the padding and not at the cup.",
			Take: "ruler, wall", Minutes: 3, Figure: "measure-heel-cup"}}
	PedalThread = &Quantity{Key: "pedal-thread", Label: "Pedal thread", Unit: Mm, Low: 10, High: 20, Least: 4,
		Most: 40, Repeat: 0.3,
		How: Instruction{
			Text: "Take the pedal out. Measure the length of its thread from the shoulder, or from the washer that " +
				"stays on, to the end.",
			Slip: "You counted the smooth end beyond the last turn.",
			Take: "pedal spanner, callipers", Minutes: 5, Figure: "measure-pedal-thread"}}
	ToeOut = &Quantity{Key: "toe-out", Of: OfRider, Label: "Toes outwards", Unit: Deg, Low: -10, High: 25, Least: -40,
		Most: 60, Repeat: 3,
		How: Instruction{
			Text: "Walk on the spot over a line on card with closed eyes, stop, and let a helper draw round both " +
				"feet. Measure each foot’s angle to the line and enter the mean. Inwards counts as negative.",
			Why:  "A foot that hangs from a table’s edge works too, but it is hard to read from above.",
			Slip: "You look down while you stop, and the feet follow the line.",
			Who:  Helper, Take: "card, pencil, set square", Minutes: 8, Figure: "measure-toe-out-left"}}
	ShoeSize = &Quantity{Key: "shoe-size", Of: OfShoes, Label: "Shoe size", Unit: One, Low: 1, High: 52, Least: 0,
		Most: 400,
		How: Instruction{
			Text:   "Read the size on the label inside a shoe that fits, and choose which system it is in.",
			Figure: "size-labels"}}

	// What new pedals and shoes would be like.
	NewPedals = &Quantity{Key: "new-pedals", Label: "New pedals", Unit: One, High: 1, Most: 1,
		How: Instruction{
			Text:   "Say whether the shoes lock into the pedals that you think of, or stand on them freely.",
			Figure: "flat-and-clipped"},
		Choices: []Choice{{"clip", "Clipped in"}, {"flat", "Flat"}}}
	NewCleatBehindBall = &Quantity{Key: "new-cleat-behind-ball", Of: OfShoes,
		Label: "New spindle behind the ball", Unit: Mm,
		Low: -10, High: 60, Least: -40, Most: 150, Repeat: 2,
		How: Instruction{
			Text: "Mark the inner ball joint on the new shoe’s side and set the foot on the new pedal, level. " +
				"Measure from the mark back to the spindle; a spindle ahead of the mark counts as negative.",
			Slip: "You took the shoe’s widest place for the joint. Feel for the joint through the shoe.",
			Who:  Eased, Take: "ruler, tape to mark with", Minutes: 4, Figure: "measure-cleat-behind-ball"}}

	// The angle of each foot, and what lets it turn.
	ToeOutLeft = &Quantity{Key: "toe-out-left", Of: OfRider, Label: "Left foot’s own angle", Unit: Deg, Low: -10,
		High:  25,
		Least: -40, Most: 60, Repeat: 3,
		How: Instruction{
			Text: "Lay card on the floor and draw a straight line on it. Walk on the spot over the line with " +
				"closed eyes, stop, and let a helper draw round both feet. For each foot, draw the line from the " +
				"middle of the heel to the second toe and measure its angle to the line. Toes inwards counts as " +
				"negative.",
			Slip: "You look down while you stop, and the feet follow the line. Keep the eyes closed.",
			Who:  Helper, Take: "card, pencil, set square", Minutes: 8, Figure: "measure-toe-out-left"}}
	ToeOutRight = &Quantity{Key: "toe-out-right", Of: OfRider, Label: "Right foot’s own angle", Unit: Deg,
		Low: -10, High: 25,
		Least: -40, Most: 60, Repeat: 3,
		How: Instruction{
			Text: "Measure it on the same card as the left one: the line from the middle of the heel to the second " +
				"toe, against the straight line. Toes inwards counts as negative.",
			Slip: "Left and right are swapped when the card is turned round. Write L and R on it first.",
			Who:  Helper, Take: "card, pencil, set square", Minutes: 3, Figure: "measure-toe-out-left"}}
	CleatAngleLeft = &Quantity{Key: "cleat-angle-left", Of: OfShoes, Label: "Left cleat lets toes out by",
		Unit: Deg, Low: -10,
		High: 20, Least: -30, Most: 40, Repeat: 1,
		How: Instruction{
			Text: "Clip the left shoe in by hand, without a foot in it, and turn it to the middle of its float. " +
				"Measure the angle of the sole’s middle line to the bike; toes inwards counts as negative.",
			Slip: "The shoe rests at one stop and not in the middle. Turn it to both stops first.",
			Take: "straightedge, phone or set square", Minutes: 4, Figure: "measure-cleat-angle-left"}}
	CleatAngleRight = &Quantity{Key: "cleat-angle-right", Of: OfShoes, Label: "Right cleat lets toes out by",
		Unit: Deg, Low: -10,
		High: 20, Least: -30, Most: 40, Repeat: 1,
		How: Instruction{
			Text: "Clip the right shoe in by hand, without a foot in it, and turn it to the middle of its float. " +
				"Measure the angle of the sole’s middle line to the bike; toes inwards counts as negative.",
			Slip: "The shoe rests at one stop and not in the middle. Turn it to both stops first.",
			Take: "straightedge, phone or set square", Minutes: 4, Figure: "measure-cleat-angle-left"}}
	PedalFloat = &Quantity{Key: "pedal-float", Label: "Float, stop to stop", Unit: Deg, High: 20, Most: 40,
		Repeat: 0.5,
		How: Instruction{
			Text: "Read it in the sheet of the pedal and cleat: how far the shoe turns in all, from one stop to the " +
				"other, before it begins to release.",
			Slip:   "You read a sheet that prints the float to one side as the whole.",
			Figure: "cleat-turns"}}
	ArmSetIn = &Quantity{Key: "arm-set-in", Label: "Crank arm set in at the axle", Unit: Mm, High: 30, Least: -10,
		Most: 60, Repeat: 2,
		How: Instruction{
			Text: "Lay a straightedge across the crank’s outer face at the pedal, parallel to the bike. Measure " +
				"from it to the arm’s outer face at the crank axle.",
			Slip: "The straightedge follows the slanting arm. Hold it parallel to the wheels.",
			Who:  Eased, Take: "straightedge, ruler", Minutes: 3, Figure: "measure-arm-set-in"}}
	StayWidth = &Quantity{Key: "stay-width", Label: "Stays, outside to outside", Unit: Mm, Low: 80, High: 170,
		Least: 40, Most: 255, Repeat: 3,
		How: Instruction{
			Text: "Measure across the outer faces of both chainstays, about 180 mm behind the crank axle, where " +
				"the heels pass.",
			Slip: "You left out a cable or chain guard on the stay. Count what the heel would touch.",
			Take: "callipers, or two straightedges and a ruler", Minutes: 3, Figure: "measure-stay-width"}}
	RearEndWidth = &Quantity{Key: "rear-end-width", Label: "Rear end, outside to outside", Unit: Mm, Low: 130,
		High: 230, Least: 65, Most: 345, Repeat: 3,
		How: Instruction{
			Text: "Measure across the outermost parts at the rear axle: frame, axle, brake and gear mechanism. " +
				"Where one side stands out further, take twice the distance from the wheel’s middle.",
			Slip: "You forgot the gear mechanism; it is what a heel touches first.",
			Take: "two straightedges, ruler", Minutes: 3, Figure: "measure-rear-end-width"}}
)
