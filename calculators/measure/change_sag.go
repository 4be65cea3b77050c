package measure

// Travel of the next bike.
var (
	NewForkTravel = &Quantity{Key: "new-fork-travel", Label: "New fork travel", Unit: Mm, High: 220, Most: 350,
		How: "Take it from the new fork's sheet. A rigid fork has zero."}
	NewRearTravel = &Quantity{Key: "new-rear-travel", Label: "New rear travel", Unit: Mm, High: 240, Most: 380,
		How: "Take it from the new frame's sheet. A hard-tail has zero."}
)
