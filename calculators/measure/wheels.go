package measure

// The wheels. Rims and tyres carry the sizes of ISO 5775-1, width and bead-seat
// diameter, as in 57-622.
var (
	FrontRim = length("front-rim", "Front rim", 406, 622, 0,
		"Read the second number of the ISO marking on the front tyre's side wall, such as 57-622: the diameter on which the tyre's bead sits.").allow(203, 800)
	RearRim = length("rear-rim", "Rear rim", 406, 622, 0,
		"Read the second number of the ISO marking on the rear tyre's side wall, such as 57-622: the diameter on which the tyre's bead sits.").allow(203, 800)
	FrontTyre = length("front-tyre", "Front tyre", 25, 130, 1,
		"Read the first number of the ISO marking on the front tyre's side wall, such as 57-622, or measure its widest point on the rim with callipers.")
	RearTyre = length("rear-tyre", "Rear tyre", 25, 130, 1,
		"Read the first number of the ISO marking on the rear tyre's side wall, such as 57-622, or measure its widest point on the rim with callipers.")
	FrontRadius = length("front-radius", "Front wheel radius", 240, 400, 2,
		"Sit on the bike with the tyres at riding pressure. A helper measures from the centre of the front axle straight down to the ground.")
	RearRadius = length("rear-radius", "Rear wheel radius", 240, 400, 2,
		"Sit on the bike with the tyres at riding pressure. A helper measures from the centre of the rear axle straight down to the ground.")
	CrankLength = length("crank-length", "Crank", 130, 190, 0,
		"Read the length stamped on the crank's inner side, or measure from the centre of the crank's axle to the centre of the pedal's spindle.")
)
