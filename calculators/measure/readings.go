package measure

// Repeated readings of one and the same length. Their own error is what a tape of
// whole millimetres leaves; how well a person repeats shows in their spread. Which
// length it is, and so what
// is plausible, is chosen beside them: the ranges here only keep nonsense out.
var (
	First = length("first", "First reading", 1, 2300, 0.5,
		"Take the measurement as its own page says, and write the number down before you look at any other.").allow(0, 3500)
	Second = length("second", "Second reading", 1, 2300, 0.5,
		"Step away, let go of the tape, then take the whole measurement anew.").allow(0, 3500)
	Third = length("third", "Third reading", 1, 2300, 0.5,
		"Take it once more from the start; a different helper is better still.").allow(0, 3500)
	SharedError = length("shared-error", "Error that all readings share", -30, 30, 0,
		"Leave it empty. It stands for a landmark felt in the wrong place or a book held out of square, which repeats with every reading and does not show in their spread.").allow(-100, 100)
	OwnDifference = length("own-difference", "How far you are from the average", -100, 100, 0,
		"Leave it empty. It stands for how far people of one height differ, which is the larger part of any estimate's error.").allow(-200, 200)
)
