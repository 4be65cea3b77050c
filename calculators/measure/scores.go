package measure

// Scores of rides: how much something troubled the rider, ride by ride.
var (
	Score = &Quantity{Key: "score", Label: "Score", Unit: One, High: 10, Most: 10,
		How: Instruction{Text: "Give 0 for no trouble at all and 10 for unbearable. Half points are as fine as it " +
			"gets."}}
	ScoresBefore = &Quantity{Key: "scores-before", Label: "Scores, old setting", Unit: One, Low: 1, High: 10, Least: 1,
		Most: 10, Rows: 10, Table: Grid, Columns: []*Column{{Score, false}},
		How: Instruction{Text: "Write one score for each ride on the old setting, 0 for no trouble and 10 for " +
			"unbearable, with blanks or semicolons between. Always score the same thing."}}
	ScoresAfter = &Quantity{Key: "scores-after", Label: "Scores, new setting", Unit: One, Low: 1, High: 10, Least: 1,
		Most: 10, Rows: 10, Table: Grid, Columns: []*Column{{Score, false}},
		How: Instruction{Text: "Write one score for each ride on the new setting, scored in the same way. In which " +
			"order you rode does not matter to the numbers; mixed is best."}}
)
