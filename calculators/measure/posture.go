package measure

// Postures that the reader sets. They are wishes rather than measurements, so
// their repeat error is zero; a video still can be read to about five degrees.
var (
	TrunkAngle = angle("trunk-angle", "Trunk angle", 20, 80, 0, -10, 100,
		"Have a helper take a picture from the side at hip height. It is the angle from the horizontal of the line from the hip bone to the shoulder point.")
	ElbowBend = angle("elbow-bend", "Elbow bend", 0, 120, 0, 0, 150,
		"Have a helper take a picture from the side in riding position. It is how far the elbow is bent, zero being a straight arm.")
	StandingKnee = angle("standing-knee", "Knee bend, standing", 10, 100, 0, 0, 140,
		"Stand ready on level pedals and have a helper take a picture from the side. It is how far the knees are bent, as a mean of both, zero being straight legs.")
)
