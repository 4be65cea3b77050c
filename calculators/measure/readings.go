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
)
