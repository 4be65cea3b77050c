package literature

// Sources about feet, pedals and cranks.
var (
	VanSickleHull2007 = &Source{Key: "vansicklehull2007", Authors: "Van Sickle and Hull", Year: 2007,
		Where: "Journal of Biomechanics 40, 1262–1267", Opened: SecondHand,
		For: "No significant change of oxygen cost between a spindle under the inner ball and one under the middle of the foot."}
	Paton2009 = &Source{Key: "paton2009", Authors: "Paton", Year: 2009,
		Where: "International Journal of Sports Physiology and Performance 4, 517–523", Opened: SecondHand,
		For: "The same comparison with the same finding."}
	PatonJardine2012 = &Source{Key: "patonjardine2012", Authors: "Paton and Jardine", Year: 2012,
		Where: "Journal of Science and Cycling 1(1), 15–20", Opened: Abstract,
		For: "Twelve riders ran 2.2 % faster after cycling with the cleat at the middle of the foot; cycling itself hardly changed."}
	Millour2020 = &Source{Key: "millour2020", Authors: "Millour and others", Year: 2020,
		Where: "a study of seven triathletes", Opened: Abstract,
		For: "Spindle 5 mm behind the ball against 5 mm ahead of it: one calf muscle worked 7 % less, power unchanged."}
	RamosOrtega2012 = &Source{Key: "ramosortega2012", Authors: "Ramos-Ortega, Munuera and Domínguez", Year: 2012,
		Where: "Science & Sports 27, e55–e61", Opened: Abstract,
		For: "The cleat’s place could not be predicted from shoe or foot: the equations were rejected."}
	Ericson1985 = &Source{Key: "ericson1985", Authors: "Ericson and others", Year: 1985,
		Where: "Scandinavian Journal of Rehabilitation Medicine 17, 53–61", Opened: SecondHand,
		For: "A foot further forward on the pedal lowers the load on the ankle."}

	MartinSpirduso2001 = &Source{Key: "martinspirduso2001", Authors: "Martin and Spirduso", Year: 2001,
		Where: "European Journal of Applied Physiology 84, 413–418", Opened: Memory,
		For: "Maximal power over cranks of 120 to 220 mm differed by about 4 %; the optimum at 20 % of leg length or 41 % of the shin bone. Sixteen cyclists."}
	McDaniel2002 = &Source{Key: "mcdaniel2002", Authors: "McDaniel and others", Year: 2002,
		Where: "Journal of Applied Physiology 93, 823–828", Opened: SecondHand,
		For: "Oxygen cost did not differ between cranks of 145, 170 and 195 mm."}
	Barratt2016 = &Source{Key: "barratt2016", Authors: "Barratt and others", Year: 2016,
		Where: "Medicine and Science in Sports and Exercise 48(4), 705–713", Opened: Abstract,
		For: "Longer cranks make knee and hip move more and hardly change the turning forces at the joints."}

	DisleyLi2014a = &Source{Key: "disleyli2014a", Authors: "Disley and Li", Year: 2014,
		Where: "Research in Sports Medicine 22(1), 12–22", Opened: Abstract,
		For: "Ten riders chose a Q factor of 142 mm on average."}
	DisleyLi2014b = &Source{Key: "disleyli2014b", Authors: "Disley and Li", Year: 2014,
		Where: "Scandinavian Journal of Medicine and Science in Sports 24, 117–121", Opened: Memory,
		For: "Q factors of 150 and 180 mm cost 1.5 to 2 % of efficiency against 90 and 120 mm, in 24 riders."}
	Johnston2017 = &Source{Key: "johnston2017", Authors: "Johnston and others", Year: 2017,
		Where: "International Journal of Sports Physical Therapy 12(7), 1023–1033", Opened: Abstract,
		For: "A review of fourteen studies: no setting of the bike is directly tied to knee injury."}

	ISO9407 = &Source{Key: "iso9407", Authors: "International Organization for Standardization", Year: 2019,
		Title: "Shoe sizes: Mondopoint system of sizing and marking", Where: "ISO 9407", Opened: SecondHand,
		For: "Mondopoint is the foot’s length in mm, in steps of 5 or 7.5 mm."}
	ISOTS19407 = &Source{Key: "isots19407", Authors: "International Organization for Standardization", Year: 2015,
		Title: "Footwear: sizing, conversion of sizing systems", Where: "ISO/TS 19407, preview and quotations", Opened: SecondHand,
		For: "The steps and starting points of EU, UK and US sizes, and that labels in shops differ from them."}

	Friberg1983 = &Source{Key: "friberg1983", Authors: "Friberg", Year: 1983,
		Where: "Spine 8, 643–651", Opened: SecondHand,
		For: "About half of the people examined had legs that differ; three quarters of those with low back pain by 5 mm or more."}
)

// ofFeet lists them.
func ofFeet() []*Source {
	return []*Source{
		VanSickleHull2007, Paton2009, PatonJardine2012, Millour2020, RamosOrtega2012, Ericson1985,
		MartinSpirduso2001, McDaniel2002, Barratt2016, DisleyLi2014a, DisleyLi2014b, Johnston2017,
		ISO9407, ISOTS19407, Friberg1983,
	}
}
