package caution

// The cautions of pedals and cleats.
var (
	ClipRelease = &Caution{"clip-release", Check, "Release",
		"New to clipped shoes, or a cleat moved? Set the slackest release, hold on to something solid, then " +
			"practise on grass with both feet before any trail."}
	PedalThread = &Caution{"pedal-thread", Check, "Pedal thread",
		"Screw both pedals all the way in. Use a washer or spacer only if the crank’s maker allows one, and let a " +
			"workshop look at a damaged thread before you ride."}
)
