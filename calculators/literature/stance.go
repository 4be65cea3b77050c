package literature

// Pedals, and the freedom to turn on them.
var (
	StrawKram2016 = &Source{Key: "strawkram2016", Authors: "Straw and Kram", Year: 2016,
		Title:  "Effects of shoe type and shoe-pedal interface on the metabolic cost of bicycling",
		Where:  "Footwear Science 8, 19–22",
		Opened: Abstract, Strength: Controlled,
		For: "About ten riders at 50 to 150 W: the same energy cost in running shoes on flat pedals and in " +
			"cleated shoes."}
	Seo2016 = &Source{Key: "seo2016", Authors: "Seo, Kim, Yang, Kang, Choi, Kim and Tack", Year: 2016,
		Title:  "Differences in the joint movements and muscle activities of novice according to cycle pedal type",
		Where:  "Korean Journal of Sport Biomechanics 26(2), from page 237",
		DOI:    "10.5103/KJSB.2016.26.2.237",
		Opened: Abstract, Strength: Controlled,
		For: "Nine men on flat, toe-clip and cleat pedals: knee and ankle moved further on flats, and novices " +
			"gained nothing from cleats."}
	Boyd1997 = &Source{Key: "boyd1997", Authors: "Boyd, Neptune and Hull", Year: 1997,
		Title:  "Pedal and knee loads using a multi-degree-of-freedom pedal platform in cycling",
		Where:  "Journal of Biomechanics 30(5), 505–511",
		Opened: Abstract, Strength: Controlled,
		For: "Ten riders on four platforms: loads fell at the pedal, but at the knee the fall was mostly not " +
			"significant, because people differ."}
	WoottenHull1992 = &Source{Key: "woottenhull1992", Authors: "Wootten and Hull", Year: 1992,
		Title:  "Design and evaluation of a multi-degree-of-freedom foot/pedal interface for cycling",
		Where:  "International Journal of Sport Biomechanics 8, 152–164",
		Opened: Abstract, Strength: Controlled,
		For: "How much the foot moves on a pedal that lets it turn and tilt."}
)

// How feet point.
var (
	Morton1932 = &Source{Key: "morton1932", Authors: "Morton", Year: 1932,
		Title:  "The angle of gait",
		Where:  "Journal of Bone and Joint Surgery, October 1932",
		Opened: Abstract, Strength: Survey,
		For: "People walk with each foot turned out by about 7.5 degrees, mostly between 5 and 10, and one " +
			"person’s steps vary."}
	Losel1996 = &Source{Key: "losel1996", Authors: "Lösel, Burgess-Milliron, Micheli and Edington", Year: 1996,
		Title:    "A simplified technique for determining foot progression angle in children 4 to 16 years of age",
		Where:    "Journal of Pediatric Orthopaedics 16(5), 570–574",
		Recalled: "authors and title from memory",
		DOI:      "10.1097/01241398-199609000-00004",
		Opened:   Abstract, Strength: Survey,
		For: "400 children walked with the feet turned out by 7.3 degrees, give or take 4.4, at 16 years; from 8 " +
			"in to 16 out is normal."}
)

// Hip joints and stance.
var (
	Bell1989 = &Source{Key: "bell1989", Authors: "Bell, Brand and Pedersen", Year: 1989,
		Title:  "Prediction of hip joint centre location from external landmarks",
		Where:  "Human Movement Science 8, 3–16",
		Opened: Abstract, Strength: Controlled,
		For: "Each hip joint lies 14 % of the distance between the front hip points inwards from its point, so " +
			"the joints are 0.72 of that distance apart."}
	Harrington2007 = &Source{Key: "harrington2007", Authors: "Harrington, Zavatsky, Lawson, Yuan and Theologis",
		Year: 2007,
		Title: "Prediction of the hip joint centre in adults, children, and patients with cerebral palsy based " +
			"on magnetic resonance imaging",
		Where:  "Journal of Biomechanics 40(3), 595–602",
		DOI:    "10.1016/j.jbiomech.2006.02.003",
		Opened: Abstract, Strength: Controlled,
		For: "In scans of 32 people the width of the pelvis tells how far apart the hip joints are; older " +
			"rules missed by up to 31 mm."}
	Thorsen2020 = &Source{Key: "thorsen2020", Authors: "Thorsen, Strohacker, Weinhandl and Zhang", Year: 2020,
		Title:    "Increased Q-factor increases frontal-plane knee joint loading in stationary cycling",
		Where:    "Journal of Sport and Health Science",
		Recalled: "title from memory",
		DOI:      "10.1016/j.jshs.2019.07.011",
		Opened:   Abstract, Strength: Controlled,
		For: "Wider than 150 mm, discomfort rose a little and not significantly; effort and pain did not " +
			"clearly change."}
	Thorsen2021 = &Source{Key: "thorsen2021", Authors: "Thorsen, Hummer, Reinbolt, Weinhandl and Zhang", Year: 2021,
		Title:    "Increased Q-factor increases medial compartment knee joint contact force during cycling",
		Where:    "Journal of Biomechanics",
		Recalled: "title from memory",
		DOI:      "10.1016/j.jbiomech.2021.110271",
		Opened:   SecondHand, Strength: Controlled,
		For: "A wider Q-factor puts more force on the inner half of the knee; only the title was read."}
)

// Legs of different length.
var (
	Badii2014 = &Source{Key: "badii2014", Authors: "Badii and others", Year: 2014,
		Title:    "Comparison of lifts versus tape measure in determining leg length discrepancy",
		Where:    "Journal of Rheumatology 41(8), 1689–1694",
		Recalled: "authors from memory",
		DOI:      "10.3899/jrheum.131089",
		Opened:   Abstract, Strength: Controlled,
		For: "Against X-ray in 20 people blocks under the foot named the wrong leg once and the tape seven " +
			"times."}
	Alfuth2021 = &Source{Key: "alfuth2021", Authors: "Alfuth, Fichter and Knicker", Year: 2021,
		Title: "Leg length discrepancy: a systematic review on the validity and reliability of clinical " +
			"assessments and imaging diagnostics used in clinical practice",
		Where:  "PLoS ONE 16(12), e0261457",
		DOI:    "10.1371/journal.pone.0261457",
		Opened: Abstract, Strength: Review,
		For: "52 studies: blocks under the foot are the most useful test without X-ray."}
	Sabharwal2008 = &Source{Key: "sabharwal2008", Authors: "Sabharwal and Kumar", Year: 2008,
		Title:  "Methods for assessing leg length discrepancy",
		Where:  "Clinical Orthopaedics and Related Research 466",
		URL:    "https://pmc.ncbi.nlm.nih.gov/articles/PMC2628227/",
		Opened: Text, Strength: Review,
		For: "Tape and blocks serve for a first look only; the mean of two tape readings is acceptable, blocks " +
			"are slightly more reliable. Part of the text was read."}
	Beattie1990 = &Source{Key: "beattie1990", Authors: "Beattie, Isaacson, Riddle and Rothstein", Year: 1990,
		Title: "Validity of derived measurements of leg-length differences obtained by use of a tape " +
			"measure",
		Where:    "Physical Therapy 70, 150–157",
		Recalled: "title from memory",
		Opened:   Abstract, Strength: Controlled,
		For: "In 10 patients and 9 healthy people the tape agreed with X-ray only moderately (0.683), and " +
			"poorly in the healthy (0.359); the mean of two readings is better."}
	Knutson2005 = &Source{Key: "knutson2005", Authors: "Knutson", Year: 2005,
		Title: "Anatomic and functional leg-length inequality: a review and recommendation for clinical " +
			"decision-making, part I",
		Where:  "Chiropractic & Osteopathy 13",
		Opened: Abstract, Strength: Review,
		For: "With exact methods 90 % of people have a difference, 5.2 mm on average, give or take 4.1 mm; it " +
			"matters from about 20 mm."}
	Rannisto2015 = &Source{Key: "rannisto2015", Authors: "Rannisto and others", Year: 2015,
		Title:  "Leg-length discrepancy is associated with low back pain among those who must stand while working",
		Where:  "BMC Musculoskeletal Disorders 16",
		DOI:    "10.1186/s12891-015-0571-9",
		Opened: Abstract, Strength: Survey,
		For: "Of 114 meat cutters 49 % had 6 mm or more; it went with back pain in those who stand, not in " +
			"those who sit."}
	Rannisto2019 = &Source{Key: "rannisto2019", Authors: "Rannisto and others", Year: 2019,
		Title: "Correction of leg-length discrepancy among meat cutters with low back pain: a randomized " +
			"controlled trial",
		Where:  "BMC Musculoskeletal Disorders 20",
		DOI:    "10.1186/s12891-019-2478-3",
		Opened: Abstract, Strength: Randomised,
		For: "42 standing workers with a difference of 5 mm or more and back pain: insoles for 70 % of it " +
			"lowered the pain by 2.6 of 10."}
)

// ofStance lists them.
func ofStance() []*Source {
	return []*Source{
		StrawKram2016, Seo2016, Boyd1997, WoottenHull1992,
		Morton1932, Losel1996,
		Bell1989, Harrington2007, Thorsen2020, Thorsen2021,
		Badii2014, Alfuth2021, Sabharwal2008, Beattie1990, Knutson2005, Rannisto2015, Rannisto2019,
	}
}
