package measure

// How far the rider's joints move, by home tests. The repeat errors are a little wider
// than those of examiners: 4 to 6 mm for the lunge (Konor et al. 2012) and 2 to 3
// degrees for joint angles by instrument (both from memory).
var (
	LungeLeft = &Quantity{Key: "lunge-left", Of: OfRider, Label: "Knee to wall, left", Unit: Mm, Low: 0,
		High: 200, Most: 300,
		Repeat: 6,
		How: Instruction{
			Text: "Stand barefoot facing a wall, left foot square to it. Bend that knee until it touches the wall " +
				"over the second toe, with the heel on the floor. Slide the foot back until the heel is just about " +
				"to lift, and measure from the big toe to the wall.",
			Slip: "The heel lifts unseen, or the knee falls inwards past the big toe: both make the number too large.",
			Who:  Eased, Take: "wall, tape measure", Minutes: 4, Figure: "measure-lunge-left"}}
	LungeRight = &Quantity{Key: "lunge-right", Of: OfRider, Label: "Knee to wall, right", Unit: Mm, Low: 0,
		High: 200, Most: 300,
		Repeat: 6,
		How: Instruction{
			Text: "As on the left: heel down, knee touching the wall, and the tape from the big toe to the wall.",
			Slip: "This foot is turned out further than the left one, and the two cannot be compared.",
			Who:  Eased, Take: "wall, tape measure", Minutes: 4, Figure: "measure-lunge-left"}}
	KneeShortLeft = &Quantity{Key: "knee-short-left", Of: OfRider, Label: "Knee short of straight, left",
		Unit: Deg, Low: 0,
		High: 70, Most: 100, Repeat: 4,
		How: Instruction{
			Text: "Lie on your back, right leg flat. A helper holds the left thigh upright and straightens the " +
				"knee, gently, until it stops by itself. Lay a phone with a level on the shin: enter how far the " +
				"shin is from upright. Never into pain.",
			Slip: "The thigh gives way towards the feet as the knee straightens, and the shin’s angle is no longer " +
				"the knee’s.",
			Who: Helper, Take: "phone with a level, mat", Minutes: 5, Figure: "measure-knee-short-left"}}
	KneeShortRight = &Quantity{Key: "knee-short-right", Of: OfRider, Label: "Knee short of straight, right",
		Unit: Deg, Low: 0,
		High: 70, Most: 100, Repeat: 4,
		How: Instruction{
			Text: "As on the left: thigh held upright, and how far the shin stops from upright. Never into pain.",
			Slip: "The helper pushes harder on this side. Stop both at the first firm resistance.",
			Who:  Helper, Take: "phone with a level, mat", Minutes: 5, Figure: "measure-knee-short-left"}}
	HipBend = &Quantity{Key: "hip-bend", Of: OfRider, Label: "Hip bend", Unit: Deg, Low: 80, High: 155, Least: 30,
		Most:   170,
		Repeat: 5,
		How: Instruction{
			Text: "Lie on your back, the other leg flat. Pull one knee towards the chest until the other thigh " +
				"begins to lift. Lay a phone with a level along the front of the bent thigh: enter how far it has " +
				"turned from flat, upright being 90. Take the stiffer hip.",
			Slip: "You pull on after the other thigh has lifted: then the pelvis rolls, and the number comes out " +
				"too large.",
			Who: Eased, Take: "phone with a level, mat", Minutes: 4, Figure: "measure-hip-bend"}}
	SitAndReach = &Quantity{Key: "sit-and-reach", Of: OfRider, Label: "Sit and reach", Unit: Mm, Low: -250, High: 300,
		Least: -500, Most: 500, Repeat: 15,
		How: Instruction{
			Text: "Sit on the floor with straight knees and the soles against a box. Reach slowly forward with " +
				"both hands and hold. Enter how far the fingertips pass the soles; short of them is negative.",
			Slip: "The knees bend or you bounce, and the number comes out too large. Read it while you hold still.",
			Who:  Eased, Take: "box or step, tape measure", Minutes: 4, Figure: "measure-sit-and-reach"}}
)
