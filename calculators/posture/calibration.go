package posture

// The seated leg model's constants. The first four were fitted; the rest were
// chosen.
//
// A leg with a rigid foot and a hip fixed to the saddle would open its knee by
// 20 degrees over 4 % of saddle height. Measured riders open theirs by 7,
// because heel and pelvis give. The fit makes the model give as they do.
//
// Fitted to: (a) the regression of Ferrer-Roca et al. 2012, J Strength Cond Res
// 26:3025-3029 (23 elite riders), whose saddle height for a knee of 35 degrees
// must give 35.0 ± 0.1 for a man with an inside leg of 846 mm, crank 170, pedal
// 15, sole 15, cleat under the ball, seat line 73.5 degrees; (b) Ferrer-Roca et
// al. 2014, J Strength Cond Res 28:784-791 (14 riders), where -2 % to +2 % of
// saddle height opened the knee by 7, the hip by 4 and the ankle by 8 degrees,
// met within 1 degree each.
//
// Error: professionals at a height of their own choice show a knee of 38 degrees
// with a coefficient of variation of 11.8 % (J Sci Cycling 2020, article 541), so
// one rider's knee may differ from the model by 4 to 5 degrees. The slope between
// riders is not the slope of one rider: the regression's heights for 30 and 40
// degrees give about 33.6 and 36.4 here, and at its height for 35 degrees a rider
// with a short leg gets less than 35, one with a long leg more.
const (
	// HipHeight is how far the effective hip lies above the saddle's top, mm. It
	// swallows padding, the pelvis's drop and the landmark's distance from the
	// joint: a fitted number, not anatomy.
	HipHeight = 19.0
	// HeelGive is how much the heel rises for each percent of saddle height above
	// neutral, degrees.
	HeelGive = 1.25
	// PelvisAlong and PelvisForward are how much of a rise of the saddle the hip
	// gives back down the seat line, and forward.
	PelvisAlong   = 0.27
	PelvisForward = 0.61

	// HeelMean, HeelSwing and HeelPhase are the foot's rule at neutral height:
	// φ = 20° − 12°·sin(θ − 20°).
	HeelMean  = 20.0
	HeelSwing = 12.0
	HeelPhase = 20.0
	// AnkleShare is how far the ankle joint lies ahead of the heel, as a share of
	// the foot's length; from memory, absorbed by the fit.
	AnkleShare = 0.22
	// NeutralKnee is the knee bend at the bottom from which every give is
	// measured, degrees.
	NeutralKnee = 35.0
	// GiveLimit is the share of the spindle-to-saddle height beyond which heel
	// and pelvis give no further: a dropped saddle.
	GiveLimit = 0.05
	// StaticLess is how much less the knee bends when the rider sits still at the
	// bottom of the stroke, and StaticLessSD how much that differs between
	// riders, degrees: 1 to 8 in the literature (8.2 ± 5 in Bini and Hume 2016,
	// Human Movement 17:36-42).
	StaticLess   = 5.0
	StaticLessSD = 5.0
)
