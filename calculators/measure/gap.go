package measure

// TreeGap is the narrowest place that a bar has to pass.
var TreeGap = &Quantity{Key: "tree-gap", Label: "Tightest gap between trees", Unit: Mm, Low: 550, High: 1500, Least: 275, Most: 2250, Repeat: 10,
	How: "Lay the tape between the two trees of the tightest gap that you ride through regularly, at the height of your bar."}
