package measure

// Feeling is what troubles a rider about where the hands are.
var Feeling = &Quantity{Key: "feeling", Label: "What troubles you", Unit: One, High: 2, Most: 2,
	How:     "Pick what you notice on the trail, and a first small move of the grips is proposed. A move that you type yourself wins over it.",
	Choices: []Choice{{"stretched", "Too stretched"}, {"wanders", "Front wheel wanders on climbs"}, {"pitched", "Pitched forward on descents"}}}
