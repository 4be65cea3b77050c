package measure

// Repeated readings of one and the same length. Which length it is, and so what
// is plausible, is chosen beside them: the ranges here only keep nonsense out.
var (
	First = length("first", "First reading", 1, 2300, 5,
		"Take the measurement as its own page says, and write the number down before you look at any other.").allow(0, 3500)
	Second = length("second", "Second reading", 1, 2300, 5,
		"Step away, let go of the tape, then take the whole measurement anew.").allow(0, 3500)
	Third = length("third", "Third reading", 1, 2300, 5,
		"Take it once more from the start; a different helper is better still.").allow(0, 3500)
)
