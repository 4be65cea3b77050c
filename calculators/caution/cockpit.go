package caution

// The cautions about what the hands hold on to.
var (
	SteererAndStem = &Caution{"steerer-and-stem", Check, "Steerer, stem and bar",
		"Keep to the maker’s greatest spacer stack and to the depth of steerer the stem needs. Before you ride, " +
			"hold the front wheel between your knees and twist the bar: neither may turn against the other."}
	HoseCheck = &Caution{"hose-check", Check, "Hoses, cables and wires",
		"After any change at the bar or the post, turn the bar to both locks and lower and raise the post. No " +
			"hose, cable or wire may pull tight, kink, or reach a tyre."}
	CarbonParts = &Caution{"carbon-parts", Check, "Carbon parts",
		"Carbon can fail later from damage you cannot see today. Use the paste, the clamp and the limits that " +
			"its maker names, and let a workshop look at any part that was overtightened, scored or hit."}
	BrakeCheck = &Caution{"brake-check", Check, "Brakes",
		"Before the first ride, check which lever works which brake, and that you can reach each one with a bent " +
			"finger while the hand keeps its hold on the grip."}
	NoWayBack = &Caution{"no-way-back", Know, "No way back",
		"Cutting a bar or a steerer cannot be undone. Ride the new position first, measure twice, and cut only what " +
			"the maker’s own limits allow."}
)
