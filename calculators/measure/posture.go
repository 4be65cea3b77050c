package measure

// Postures that the reader sets. They are wishes rather than measurements, so
// their repeat error is zero; a video still can be read to about five degrees.
var (
	TrunkAngle = &Quantity{Key: "trunk-angle", Label: "Trunk angle", Unit: Deg, Low: 20, High: 80, Least: -10, Most: 100,
		How: "Have a helper take a picture from the side at hip height. It is the angle from the horizontal of the line from the hip bone to the shoulder point."}
	ElbowBend = &Quantity{Key: "elbow-bend", Label: "Elbow bend", Unit: Deg, High: 120, Most: 150,
		How: "Have a helper take a picture from the side in riding position. It is how far the elbow is bent, zero being a straight arm."}
	StandingKnee = &Quantity{Key: "standing-knee", Label: "Knee bend, standing", Unit: Deg, Low: 10, High: 100, Most: 140,
		How: "Stand ready on level pedals and have a helper take a picture from the side. It is how far the knees are bent, as a mean of both, zero being straight legs."}
)
