package literature

// Sources about how far joints move, and what that has been seen to go with.
var (
	Konor2012 = &Source{Key: "konor2012", Authors: "Konor, Morton, Eckerson and Grindstaff", Year: 2012,
		Title:  "Reliability of three measures of ankle dorsiflexion range of motion",
		Where:  "International Journal of Sports Physical Therapy 7(3), 279–287",
		Opened: Memory, Strength: Controlled,
		For: "The knee-to-wall lunge: 9.5 ± 3.1 cm in twenty healthy adults, repeated to 0.4 to 0.6 cm by one " +
			"examiner."}
	Bennell1998 = &Source{Key: "bennell1998", Authors: "Bennell and others", Year: 1998,
		Title:  "Intra-rater and inter-rater reliability of a weight-bearing lunge measure of ankle dorsiflexion",
		Where:  "Australian Journal of Physiotherapy 44(3), 175–180",
		Opened: Memory, Strength: Controlled,
		For: "The knee-to-wall lunge repeats as well between examiners as with one."}
	Youdas2005 = &Source{Key: "youdas2005", Authors: "Youdas and others", Year: 2005,
		Title:  "The influence of gender and age on hamstring muscle length in healthy adults",
		Where:  "Journal of Orthopaedic and Sports Physical Therapy 35(4), 246–252",
		Opened: Memory, Strength: Survey,
		For: "With the thigh upright and the other leg flat, a helper could straighten the knee to 28 ± 11 degrees " +
			"short of straight in women and 39 ± 8 in men; 214 adults."}
	GajdosikLusk1983 = &Source{Key: "gajdosiklusk1983", Authors: "Gajdosik and Lusk", Year: 1983,
		Title:  "Hamstring muscle tightness: reliability of an active-knee-extension test",
		Where:  "Physical Therapy 63(7), 1085–1088",
		Opened: Memory, Strength: Controlled,
		For: "Straightening the knee with the thigh held upright repeats very well in one examiner’s hands."}
	MayorgaVega2014 = &Source{Key: "mayorgavega2014", Authors: "Mayorga-Vega, Merino-Marban and Viciana", Year: 2014,
		Title: "Criterion-related validity of sit-and-reach tests for estimating hamstring and lumbar " +
			"extensibility: a meta-analysis",
		Where:  "Journal of Sports Science and Medicine 13(1), 1–14",
		Opened: Memory, Strength: Review,
		For: "Sit-and-reach follows the hamstrings only in part (correlation about 0.67) and the low back hardly " +
			"(about 0.27)."}
	RoachMiles1991 = &Source{Key: "roachmiles1991", Authors: "Roach and Miles", Year: 1991,
		Title:  "Normal hip and knee active range of motion: the relationship to age",
		Where:  "Physical Therapy 71(9), 656–665",
		Opened: Memory, Strength: Survey,
		For: "The hip bends by 121 ± 13 degrees; 1683 adults of 25 to 74 years."}
)

func ofMobility() []*Source {
	return []*Source{Konor2012, Bennell1998, Youdas2005, GajdosikLusk1983, MayorgaVega2014, RoachMiles1991}
}
