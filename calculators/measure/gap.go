package measure

// TreeGap is the narrowest place that a bar has to pass.
var TreeGap = length("tree-gap", "Tightest gap between trees", 550, 1500, 10,
	"Lay the tape between the two trees of the tightest gap that you ride through regularly, at the height of your bar.")
