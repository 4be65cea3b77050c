package caution

// The cautions of pedals and cleats.
var (
	ClipRelease = &Caution{"clip-release", "Release",
		"New to clipped shoes, or a cleat moved? Set the slackest release, hold on to something solid, then practise on grass with both feet before any trail."}
	PedalThread = &Caution{"pedal-thread", "Pedal thread",
		"Pedals keep their full thread in the crank. Use a washer or spacer only if the crank's maker allows it, and have a damaged thread seen to before you ride."}
)
