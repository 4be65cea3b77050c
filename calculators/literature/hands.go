package literature

// Sources about arms, hands and what they hold.
var (
	Holliday2021 = &Source{Key: "holliday2021", Authors: "Holliday and Swart", Year: 2021,
		Title:  "Anthropometrics, flexibility and training history as determinants for bicycle configuration",
		Where:  "Sports Medicine and Health Science 3(2), 93–100",
		DOI:    "10.1016/j.smhs.2021.02.007",
		Opened: Abstract, Strength: Survey,
		For: "What fifty trained road cyclists chose: elbow bent by 19 ± 8 degrees, shoulder opened by 112 ± 7; " +
			"and that every published rule for reach and bar height it lists is personal opinion."}
	Lin2025 = &Source{Key: "lin2025", Authors: "Lin, Tsai and Chen", Year: 2025,
		Title:  "Handlebar width choices must be considered for female cyclists",
		Where:  "PubMed number 39846669",
		URL:    "https://pubmed.ncbi.nlm.nih.gov/39846669/",
		Opened: Abstract, Strength: Controlled,
		For: "Ten women: on a bar about as wide as the shoulders the arm muscles worked less than on their own " +
			"bar; a road bar, on a smooth surface, and nothing is said against a wide one."}
	Keir2007 = &Source{Key: "keir2007", Authors: "Keir and others", Year: 2007,
		Title:  "Guidelines for wrist posture based on carpal tunnel pressure thresholds",
		Where:  "Human Factors 49, 88–99",
		Opened: Abstract, Strength: Controlled,
		For: "How far the wrist may bend before the pressure inside it passes a customary line in a quarter of " +
			"people, none of whom gripped."}
	ODriscoll1992 = &Source{Key: "odriscoll1992", Authors: "O’Driscoll and others", Year: 1992,
		Title:    "The relationship between wrist position, grasp size, and grip strength",
		Where:    "Journal of Hand Surgery 17A, 169–177",
		Recalled: "title and pages from memory",
		Opened:   Abstract, Strength: Controlled,
		For: "The wrist at which people squeeze hardest: about 35 degrees of extension."}
	KongLowe2005 = &Source{Key: "konglowe2005", Authors: "Kong and Lowe", Year: 2005,
		Title:  "Optimal cylindrical handle diameter for grip force tasks",
		Where:  "International Journal of Industrial Ergonomics 35(6), 495–507",
		Opened: Abstract, Strength: Controlled,
		For: "24 people squeezed bare metal cylinders as hard as they could: 30 to 40 mm were the most " +
			"comfortable, the best 19.7 % of the hand’s length."}
	HwangGrips = &Source{Key: "hwanggrips", Authors: "Hwang and others",
		Title:  "Determination of bicycle handle diameters considering hand anthropometric data and user satisfaction",
		Where:  "Meeting of the Human Factors and Ergonomics Society; year and pages not shown in what we read",
		Opened: Abstract, Strength: Controlled,
		For: "17 people liked bicycle grips of about 23 % of hand length best: 40.9 to 45.7 mm."}
	Lee2009 = &Source{Key: "lee2009", Authors: "Lee, Kong, Lowe and Song", Year: 2009,
		Title:    "Handle grip span for optimising finger-specific force capability as a function of hand size",
		Where:    "Ergonomics 52(5), 601–608",
		Recalled: "authors and title from memory",
		Opened:   Abstract, Strength: Controlled,
		For: "Of two-handled tools 46 men rated spans of 50 and 55 mm best and strongest, 65 mm worst; all " +
			"fingers pulled, so it says little about one finger on a lever."}
	ISO4210Levers = &Source{Key: "iso4210levers", Authors: "International Organization for Standardization",
		Year:  2015,
		Title: "Cycles: safety requirements for bicycles, parts 2 and 4, on brake levers",
		Where: "ISO 4210-2, clause 4.6.2.2, from memory; ISO 4210-4, clause 4.1, read in a national edition that " +
			"adopts it",
		Opened: SecondHand, Strength: Standard,
		For: "A gauge is laid over grip and lever, so the span goes from outside to outside; its limit of 90 mm " +
			"is from memory."}
	Patterson2003 = &Source{Key: "patterson2003", Authors: "Patterson, Jaggars and Boyer", Year: 2003,
		Title:  "Ulnar and median nerve palsy in long-distance cyclists: a prospective study",
		Where:  "American Journal of Sports Medicine 31, 585–589",
		Opened: Abstract, Strength: Cohort,
		For: "After 600 km, 23 of 25 riders had symptoms in the hands."}
)

// ofCockpit lists the sources that only the cockpit's calculators cite.
func ofCockpit() []*Source {
	return []*Source{Holliday2021, Lin2025, Keir2007, ODriscoll1992, KongLowe2005, HwangGrips, Lee2009,
		Patterson2003, ISO4210Levers}
}
