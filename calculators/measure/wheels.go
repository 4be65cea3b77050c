package measure

// The wheels. Rims and tyres carry the sizes of ISO 5775-1, width and bead-seat
// diameter, as in 57-622.
var (
	FrontRim = &Quantity{Key: "front-rim", Label: "Front rim", Unit: Mm, Low: 406, High: 622, Least: 203, Most: 800,
		How: Instruction{
			Text: "Read the second number of the ISO marking on the front tyre’s side wall, such as 57-622: the " +
				"diameter on which the tyre’s bead sits.",
			Figure: "measure-tyre"}}
	RearRim = &Quantity{Key: "rear-rim", Label: "Rear rim", Unit: Mm, Low: 406, High: 622, Least: 203, Most: 800,
		How: Instruction{
			Text: "Read the second number of the ISO marking on the rear tyre’s side wall, such as 57-622: the " +
				"diameter on which the tyre’s bead sits.",
			Figure: "measure-tyre"}}
	FrontTyre = &Quantity{Key: "front-tyre", Label: "Front tyre", Unit: Mm, Low: 25, High: 130, Least: 12.5,
		Most: 195, Repeat: 1,
		How: Instruction{
			Text: "Read the first number of the ISO marking on the front tyre’s side wall, such as 57-622, or " +
				"measure its widest point on the rim with callipers.",
			Figure: "measure-tyre"}}
	RearTyre = &Quantity{Key: "rear-tyre", Label: "Rear tyre", Unit: Mm, Low: 25, High: 130, Least: 12.5,
		Most: 195, Repeat: 1,
		How: Instruction{
			Text: "Read the first number of the ISO marking on the rear tyre’s side wall, such as 57-622, or " +
				"measure its widest point on the rim with callipers.",
			Figure: "measure-tyre"}}
	FrontRadius = &Quantity{Key: "front-radius", Label: "Front wheel radius", Unit: Mm, Low: 240, High: 400,
		Least: 120, Most: 600, Repeat: 2,
		How: Instruction{
			Text: "Sit on the bike with the tyres at riding pressure. A helper measures from the centre of the " +
				"front axle straight down to the floor.",
			Slip: "You measured the wheel without you on the bike. A loaded tyre is lower.",
			Who:  Helper, Take: "tape measure", Minutes: 3, Figure: "measure-front-radius"}}
	RearRadius = &Quantity{Key: "rear-radius", Label: "Rear wheel radius", Unit: Mm, Low: 240, High: 400,
		Least: 120, Most: 600, Repeat: 2,
		How: Instruction{
			Text: "Sit on the bike with the tyres at riding pressure. A helper measures from the centre of the rear " +
				"axle straight down to the floor.",
			Slip: "You stand on one pedal and the bike leans.",
			Who:  Helper, Take: "tape measure", Minutes: 3, Figure: "measure-rear-radius"}}
	CrankLength = &Quantity{Key: "crank-length", Label: "Crank", Unit: SoldInMm, Low: 130, High: 190, Least: 65,
		Most: 285,
		How: Instruction{
			Text: "Read the number on the crank’s inner side, or measure from the centre of the crank axle to the " +
				"centre of the pedal hole.",
			Slip: "You measured the whole arm, end to end.",
			Take: "ruler", Minutes: 1, Figure: "measure-crank-length"}}
)
