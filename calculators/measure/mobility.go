package measure

// How far the rider's joints move, by home tests. The repeat errors are a little wider
// than those of examiners: 4 to 6 mm for the lunge (Konor et al. 2012) and 2 to 3
// degrees for joint angles by instrument (both from memory).
var (
	LungeLeft = &Quantity{Key: "lunge-left", Label: "Knee to wall, left", Unit: Mm, Low: 0, High: 200, Most: 300,
		Repeat: 6,
		How: Instruction{Text: "Stand barefoot facing a wall, left foot square to it. Bend that knee until it touches the wall over " +
			"the second toe, with the heel on the floor. Slide the foot back until the heel is just about to " +
			"lift, and measure from the big toe to the wall.", Figure: "measure-knee-height"}}
	LungeRight = &Quantity{Key: "lunge-right", Label: "Knee to wall, right", Unit: Mm, Low: 0, High: 200, Most: 300,
		Repeat: 6,
		How:    Instruction{Text: "As on the left: heel down, knee touching the wall, and the tape from the big toe to the wall.", Figure: "measure-knee-height"}}
	KneeShortLeft = &Quantity{Key: "knee-short-left", Label: "Knee short of straight, left", Unit: Deg, Low: 0,
		High: 70, Most: 100, Repeat: 4,
		How: Instruction{Text: "Lie on your back, right leg flat. A helper holds the left thigh upright and straightens the knee, " +
			"gently, until it stops by itself. Lay a phone with a level on the shin: enter how far the shin is " +
			"from upright. Never into pain.", Figure: "measure-knee-height"}}
	KneeShortRight = &Quantity{Key: "knee-short-right", Label: "Knee short of straight, right", Unit: Deg, Low: 0,
		High: 70, Most: 100, Repeat: 4,
		How: Instruction{Text: "As on the left: thigh held upright, and how far the shin stops from upright. Never into pain.", Figure: "measure-knee-height"}}
	HipBend = &Quantity{Key: "hip-bend", Label: "Hip bend", Unit: Deg, Low: 80, High: 155, Least: 30, Most: 170,
		Repeat: 5,
		How: Instruction{Text: "Lie on your back, the other leg flat. Pull one knee towards the chest until the other thigh begins to " +
			"lift. Lay a phone with a level along the top of the bent thigh: enter how far it has turned from " +
			"flat, upright being 90. Take the stiffer hip.", Figure: "measure-knee-height"}}
	SitAndReach = &Quantity{Key: "sit-and-reach", Label: "Sit and reach", Unit: Mm, Low: -250, High: 300,
		Least: -500, Most: 500, Repeat: 15,
		How: Instruction{Text: "Sit on the floor with straight knees and the soles against a box. Reach slowly forward with both hands " +
			"and hold. Enter how far the fingertips pass the soles; short of them is negative.", Figure: "measure-knee-height"}}
)
