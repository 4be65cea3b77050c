package literature

// Sources about feet, pedals and cranks.
var (
	VanSickleHull2007 = &Source{Key: "vansicklehull2007", Authors: "Van Sickle and Hull", Year: 2007,
		Title:  "Is economy of competitive cyclists affected by the anterior–posterior foot position on the pedal?",
		Where:  "Journal of Biomechanics 40, 1262–1267",
		Opened: Abstract, Strength: Controlled,
		For: "Eleven riders at 203 W: no change of oxygen cost between a spindle under the ball, one halfway to " +
			"the heel and one between the two."}
	Paton2009 = &Source{Key: "paton2009", Authors: "Paton", Year: 2009,
		Title:  "Effects of shoe cleat position on physiology and performance of competitive cyclists",
		Where:  "International Journal of Sports Physiology and Performance 4, 517–523",
		Opened: SecondHand, Strength: Controlled,
		For: "The same comparison with the same finding, in ten riders."}
	PatonJardine2012 = &Source{Key: "patonjardine2012", Authors: "Paton and Jardine", Year: 2012,
		Title:  "The effects of cycling cleat position on subsequent running performance in a simulated duathlon",
		Where:  "Journal of Science and Cycling 1(1), 15–20",
		Opened: Abstract, Strength: Controlled,
		For: "Twelve riders ran 2.2 % faster after cycling with the cleat at the middle of the foot; cycling " +
			"itself hardly changed."}
	Millour2020 = &Source{Key: "millour2020", Authors: "Millour, Janson, Duc, Puel and Bertucci", Year: 2020,
		Title: "Effect of cycling shoe cleat position on biomechanical and physiological responses during " +
			"cycling and subsequent running parts of a simulated sprint triathlon: a pilot study",
		Where:  "Journal of Science and Cycling 9(1)",
		DOI:    "10.28985/0620.jsc.02",
		Opened: Abstract, Strength: Controlled,
		For: "Seven triathletes, spindle 5 mm behind the ball against 5 mm ahead of it: ridden steadily, one " +
			"calf muscle worked 7 % less; in sprints calf, thigh and shin muscles worked 8.8 to 16.4 % more."}
	RamosOrtega2012 = &Source{Key: "ramosortega2012", Authors: "Ramos-Ortega, Munuera and Domínguez", Year: 2012,
		Title:  "Antero-posterior position of the cleat for road cycling",
		Where:  "Science & Sports 27, e55–e61",
		Opened: Abstract, Strength: Survey,
		For: "The cleat’s place could not be predicted from shoe or foot: the equations were rejected."}
	Litzenberger2008 = &Source{Key: "litzenberger2008", Authors: "Litzenberger and others", Year: 2008,
		Title:    "Influence of pedal foot position on muscular activity during ergometer cycling",
		Where:    "The Engineering of Sport 7 (Springer)",
		Recalled: "title and book from memory",
		Opened:   Abstract, Strength: Controlled,
		For: "Spindle further back under the foot: the calf worked more than 20 % less and the shin muscle was " +
			"active for longer, in twelve people who were no cyclists."}

	MartinSpirduso2001 = &Source{Key: "martinspirduso2001", Authors: "Martin and Spirduso", Year: 2001,
		Title:  "Determinants of maximal cycling power: crank length, pedaling rate and pedal speed",
		Where:  "European Journal of Applied Physiology 84, 413–418",
		Opened: SecondHand, Strength: Controlled,
		For: "Sixteen riders sprinted on cranks of 120 to 220 mm; the differences were small. The 4 %, and the " +
			"optimum at 20 % of leg length or 41 % of the shin bone, are from memory."}
	McDaniel2002 = &Source{Key: "mcdaniel2002", Authors: "McDaniel, Durstine, Hand and Martin", Year: 2002,
		Title:  "Determinants of metabolic cost during submaximal cycling",
		Where:  "Journal of Applied Physiology 93, 823–828; read as its congress version",
		Opened: Abstract, Strength: Controlled,
		For: "Nine trained men: power and pedal speed explain the oxygen cost, and cranks of 145, 170 and 195 mm " +
			"add nothing of their own."}
	Barratt2016 = &Source{Key: "barratt2016", Authors: "Barratt, Martin, Elmer and Korff", Year: 2016,
		Title:  "Effects of pedal speed and crank length on pedaling mechanics during submaximal cycling",
		Where:  "Medicine and Science in Sports and Exercise 48(4), 705–713",
		Opened: Abstract, Strength: Controlled,
		For: "Longer cranks make knee and hip move more and hardly change the turning forces at the joints."}

	DisleyLi2014a = &Source{Key: "disleyli2014a", Authors: "Disley and Li", Year: 2014,
		Title:  "Metabolic and kinematic effects of self-selected Q-factor during bike fit",
		Where:  "Research in Sports Medicine 22(1), 12–22",
		DOI:    "10.1080/15438627.2013.852093",
		Opened: Abstract, Strength: Controlled,
		For: "Ten riders chose a Q-factor of 142 mm on average."}
	DisleyLi2014b = &Source{Key: "disleyli2014b", Authors: "Disley and Li", Year: 2014,
		Title:  "The effect of Q Factor on gross mechanical efficiency and muscular activation in cycling",
		Where:  "Scandinavian Journal of Medicine and Science in Sports 24, from page 117",
		DOI:    "10.1111/j.1600-0838.2012.01479.x",
		Opened: Memory, Strength: Controlled,
		For: "Q-factors of 150 and 180 mm cost 1.5 to 2 % of efficiency against 90 and 120 mm, in 24 riders."}
	Johnston2017 = &Source{Key: "johnston2017", Authors: "Johnston and others", Year: 2017,
		Title: "The influence of extrinsic factors on knee biomechanics during cycling: a systematic review of " +
			"the literature",
		Where:  "International Journal of Sports Physical Therapy 12(7), 1023–1033",
		DOI:    "10.16603/ijspt20171023",
		Opened: Abstract, Strength: Review,
		For: "A review of fourteen studies, four of them on people with knee pain: no single setting of the bike " +
			"is directly tied to knee injury."}

	ISO9407 = &Source{Key: "iso9407", Authors: "International Organization for Standardization", Year: 2019,
		Title:  "Shoe sizes: Mondopoint system of sizing and marking",
		Where:  "ISO 9407:2019, read as a preview",
		Opened: SecondHand, Strength: Standard,
		For: "Mondopoint is the foot’s length in mm. The steps of 5 or 7.5 mm come from DIN 66074-2:1975, as " +
			"quoted by the specification that ISO 19407 replaces."}
	ISO19407 = &Source{Key: "iso19407", Authors: "International Organization for Standardization", Year: 2023,
		Title: "Footwear: sizing, conversion of sizing systems",
		Where: "ISO 19407:2023, which replaces ISO/TS 19407:2015; previews of both and quotations from the older " +
			"one",
		Opened: SecondHand, Strength: Standard,
		For: "The steps and starting points of EU, UK and US sizes, read in the older text, and that labels in " +
			"shops differ from them; a guideline."}

	Friberg1983 = &Source{Key: "friberg1983", Authors: "Friberg", Year: 1983,
		Title:  "Clinical symptoms and biomechanics of lumbar spine and hip joint in leg length inequality",
		Where:  "Spine 8(6), 643–651",
		DOI:    "10.1097/00007632-198309000-00010",
		Opened: Abstract, Strength: Cohort,
		For: "In 798 patients with back or hip trouble and 359 people without, sciatica and hip pain mostly sat " +
			"on the side of the longer leg; lifts helped many, without a control group."}
)

// ofFeet lists them.
func ofFeet() []*Source {
	return []*Source{
		VanSickleHull2007, Paton2009, PatonJardine2012, Millour2020, RamosOrtega2012, Litzenberger2008,
		MartinSpirduso2001, McDaniel2002, Barratt2016, DisleyLi2014a, DisleyLi2014b, Johnston2017,
		ISO9407, ISO19407, Friberg1983,
	}
}
