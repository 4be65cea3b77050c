package measure

// Feeling is what troubles a rider about where the hands are.
var Feeling = choice("feeling", "What troubles you",
	"Pick what you notice on the trail, and a first small move of the grips is proposed. A move that you type yourself wins over it.",
	Choice{"stretched", "Too stretched"},
	Choice{"wanders", "Front wheel wanders on climbs"},
	Choice{"pitched", "Pitched forward on descents"})
