package measure

// Repeated readings of one and the same length. How well a person repeats shows in their
// scatter, so a single one has no error of its own. Which length it is, and so what is
// plausible, is chosen beside them: the ranges here only keep nonsense out.
var (
	First = &Quantity{Key: "first", Of: OfRider, Label: "First reading", Unit: Mm, Low: 1, High: 2300, Most: 3500,
		How: Instruction{
			Text: "Take the measurement as its own page says, and write the number down before you look at any " +
				"other."}}
	Second = &Quantity{Key: "second", Of: OfRider, Label: "Second reading", Unit: Mm, Low: 1, High: 2300, Most: 3500,
		How: Instruction{
			Text: "Step away, let go of the tape, then take the whole measurement anew."}}
	Third = &Quantity{Key: "third", Of: OfRider, Label: "Third reading", Unit: Mm, Low: 1, High: 2300, Most: 3500,
		How: Instruction{
			Text: "Take it once more from the start; a different helper is better still."}}
	SharedError = &Quantity{Key: "shared-error", Of: OfRider, Label: "Error that all readings share", Unit: Mm,
		Low:  -30,
		High: 30, Least: -100, Most: 100,
		How: Instruction{
			Text: "Leave it empty. It stands for a landmark felt in the wrong place or a book held out of square, " +
				"which repeats with every reading and does not show in their spread."}}
	OwnScatter = &Quantity{Key: "own-scatter", Of: OfRider, Label: "Your own scatter", Unit: Mm, Low: -100,
		High: 100, Least: -1000, Most: 1000,
		How: Instruction{
			Text: "Leave it empty. It stands for what your readings differ by, as far as it is still in the middle " +
				"one."}}
	OwnDifference = &Quantity{Key: "own-difference", Of: OfRider, Label: "How far you are from the average", Unit: Mm,
		Low: -100, High: 100, Least: -200, Most: 200,
		How: Instruction{
			Text: "Leave it empty. It stands for how far people of one height differ, which is the larger part of " +
				"any estimate’s error."}}
)
