package measure

// The bike alone on a bathroom scale, and what kind of bike stands in where nobody
// weighed it.
var (
	ScaleFront = &Quantity{Key: "scale-front", Label: "Bike’s front wheel on the scale", Unit: Kg, Low: 2, High: 20,
		Least: 1, Most: 40, Repeat: 0.1,
		How: Instruction{
			Text: "Nobody on the bike, bar straight: front wheel on the scale, rear wheel on a block as high. Hold " +
				"the bike upright by a fingertip at the saddle and take the middle of three readings.",
			Slip: "The block is lower than the scale, and the reading comes out too small.",
			Who:  Eased, Take: "bathroom scale that shows 0.1 kg, firm block as high as the scale", Minutes: 5,
			Figure: "bike-on-the-scale"}}
	ScaleRear = &Quantity{Key: "scale-rear", Label: "Bike’s rear wheel on the scale", Unit: Kg, Low: 2, High: 25,
		Least: 1, Most: 50, Repeat: 0.1,
		How: Instruction{
			Text: "Turn the bike round: rear wheel on the scale, front wheel on the block. Both readings add up to " +
				"the bike’s mass.",
			Slip: "You hold the bike up a little. Compare the sum with the whole bike weighed in one go.",
			Who:  Eased, Take: "bathroom scale that shows 0.1 kg, firm block as high as the scale", Minutes: 5,
			Figure: "bike-on-the-scale"}}
	ScaleRise = &Quantity{Key: "scale-rise", Label: "Front wheel raised by", Unit: Mm, Low: 200, High: 600, Least: 100,
		Most: 900, Repeat: 2,
		How: Instruction{
			Text: "Leave the rear wheel on the scale and set the front wheel on something firm, 300 to 500 mm " +
				"higher than before. Measure to the front axle’s middle before and after: the difference is the " +
				"rise.",
			Slip: "You took the block’s height, but the tyre sinks into it or rolls off its middle.",
			Who:  Eased, Take: "firm crate or bench, tape measure", Minutes: 5, Figure: "measure-scale-rise"}}
	ScaleRearRaised = &Quantity{Key: "scale-rear-raised", Label: "Rear wheel’s reading, front raised", Unit: Kg,
		Low:  2,
		High: 27, Least: 1, Most: 55, Repeat: 0.1,
		How: Instruction{
			Text: "Read the scale under the rear wheel again with the front wheel raised, the bike upright and " +
				"neither brake pulled. It reads more than on the level.",
			Slip: "A tenth of a kilogram moves the height of the bike’s mass by about 30 mm. Take the middle of " +
				"three.",
			Who: Helper, Take: "bathroom scale that shows 0.1 kg", Minutes: 5, Figure: "measure-scale-rise"}}
	BikeKind = &Quantity{Key: "bike-kind", Label: "Kind of bike", Unit: One, High: 4, Most: 4,
		How: Instruction{
			Text: "Pick what comes nearest. It stands in for the bike’s mass and for where that mass sits, until " +
				"you weigh the bike."},
		Choices: []Choice{{"trail", "Trail bike"}, {"light", "Cross-country bike"},
			{"downhill", "Enduro or downhill bike"}, {"motor-cranks", "E-bike, motor at the cranks"},
			{"motor-hub", "E-bike, motor in the rear hub"}}}
	Riding = &Quantity{Key: "riding", Label: "How you ride the slope", Unit: One, High: 1, Most: 1,
		How: Instruction{
			Text: "At a steady speed you pedal or brake just enough to hold it. Rolling freely you do neither, and " +
				"the bike gains speed downhill and loses it uphill."},
		Choices: []Choice{{"steady", "Steady speed"}, {"rolling", "Rolling freely"}}}
)
