package measure

// What is picked rather than measured. The order is the order of the index.
var (
	Sex = choice("sex", "Sex",
		"It only picks the group of measured people whose proportions fill a gap. Leave it out if you like; the gap is then filled less surely.",
		Choice{"f", "Woman"}, Choice{"m", "Man"})
	Pedals = choice("pedals", "Pedals",
		"Say whether the shoes lock into the pedals or stand on them freely.",
		Choice{"clip", "Clipped in"}, Choice{"flat", "Flat"})
	ForkMeasure = choice("fork-measure", "Fork length is taken",
		"Look at the drawing in the fork maker's sheet: along the steering axis, or as the straight line from crown to axle.",
		Choice{"axis", "Along the steering axis"}, Choice{"straight", "Straight from crown to axle"})
	SitBoneRead = choice("sit-bone-read", "Sit bones are read",
		"Say which points of the two dents you measured between: their deepest points or their outer edges.",
		Choice{"edges", "Between the outer edges"}, Choice{"centres", "Between the centres"})
	Leaning = choice("leaning", "How you sit",
		"Pick what the trunk does on most of your rides while you sit and pedal.",
		Choice{"upright", "Upright"}, Choice{"leaning", "Leaning forward"}, Choice{"low", "Low and stretched"})
	KneeRead = choice("knee-read", "Knee angle is read",
		"Say whether the knee was measured with the crank held still or on a film while pedalling.",
		Choice{"still", "Holding still"}, Choice{"moving", "While pedalling"})
	SagRead = choice("sag-read", "Sag is read",
		"Say whether you sat on the saddle or stood on level pedals when the rubber ring was read.",
		Choice{"seated", "Seated"}, Choice{"standing", "Standing"})
	Helped = choice("helped", "Measured",
		"Say whether somebody held the tape or the book for you.",
		Choice{"alone", "On my own"}, Choice{"help", "With help"})
	DifferenceFound = choice("difference-found", "Difference was found",
		"Say who found the difference and how: a tape or boards at home, or a clinician with an image or an examination.",
		Choice{"home", "At home"}, Choice{"clinician", "By a clinician"})
	WarningSign = choice("warning-sign", "Pain, or a new difference",
		"Say whether anything hurts, swells, locks, is weak or numb, or whether the difference is new, followed a fall, an operation or an illness, or whether you are still growing.",
		Choice{"none", "None of these"}, Choice{"some", "One or more"})
	SizeSystem = choice("size-system", "Size system",
		"Look at the label: millimetres of foot length are Mondopoint, the rest is named beside the number.",
		Choice{"mondopoint", "Mondopoint"}, Choice{"eu", "EU"}, Choice{"uk", "UK"}, Choice{"us-men", "US men"}, Choice{"us-women", "US women"})
	Wanted = choice("quantity", "Measurement",
		"Pick the length of the body that this is about.", riderLengths()...)
)

// RiderLengths are the body lengths in the order of the choice Wanted, so that
// its index finds the quantity.
var RiderLengths = []*Quantity{
	Stature, Inseam, TrochanterHeight, KneeHeight, TrunkLength, ArmLength, ArmSpan, ShoulderWidth,
	ThighLength, ShankLength, FootLength, HeelToBallInner, HeelToBallOuter, HandLength, FingerLength,
	HipWidth, SitBoneWidth, PushUpWidth, LegDifference,
}

// riderLengths makes one choice of each body length.
func riderLengths() []Choice {
	var all []Choice
	for _, q := range RiderLengths {
		all = append(all, Choice{q.Key, q.Label})
	}
	return all
}
