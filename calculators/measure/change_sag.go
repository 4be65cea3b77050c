package measure

// Travel of the next bike.
var (
	NewForkTravel = after(ForkTravel, "New fork travel",
		"Take it from the new fork's sheet. A rigid fork has zero.")
	NewRearTravel = after(RearTravel, "New rear travel",
		"Take it from the new frame's sheet. A hard-tail has zero.")
)
