package literature

// Sources about arms, hands and what they hold.
var (
	Holliday2021 = &Source{Key: "holliday2021", Authors: "Holliday and Swart", Year: 2021,
		Where: "Sports Medicine and Health Science 3(2), 93–100", Opened: Abstract,
		For: "What fifty trained road cyclists chose: elbow bent by 19 ± 8 degrees, shoulder opened by 112 ± 7."}
	Williams2021 = &Source{Key: "williams2021", Authors: "Williams, Zadnik and Panesar-Aguilar", Year: 2021,
		Where: "International Journal of Social Science and Human Research 4(7)", Opened: Abstract,
		For: "In eleven riders arm length went with the chosen reach, trunk length hardly: weak evidence."}
	Lin2025 = &Source{Key: "lin2025", Authors: "Lin, Tsai and Chen", Year: 2025,
		Where: "a study of ten women and the width of road bars, PubMed number 39846669", Opened: Abstract,
		For: "A bar about as wide as the shoulders took the least work from the arms’ muscles; a road bar, on a smooth surface."}
	Keir2007 = &Source{Key: "keir2007", Authors: "Keir and others", Year: 2007,
		Where: "Human Factors 49, 88–99", Opened: Abstract,
		For: "How far the wrist may bend before the pressure inside it passes a customary line in a quarter of people, none of whom gripped."}
	ODriscoll1992 = &Source{Key: "odriscoll1992", Authors: "O’Driscoll and others", Year: 1992,
		Where: "Journal of Hand Surgery", Opened: Abstract,
		For: "The wrist at which people squeeze hardest: about 35 degrees of extension."}
	KongLowe2005 = &Source{Key: "konglowe2005", Authors: "Kong and Lowe", Year: 2005,
		Where: "International Journal of Industrial Ergonomics 35, 495–507", Opened: Abstract,
		For: "Cylinders of 30 to 40 mm are gripped most comfortably; the best is 19.7 % of the hand’s length."}
	ToolSpan2009 = &Source{Key: "toolspan2009", Authors: "authors not shown in what we read", Year: 2009,
		Where: "Ergonomics 52(5), on the grip span of hand tools", Opened: Abstract,
		For: "Of two-handled tools 46 men rated spans of 50 and 55 mm best and strongest, 65 mm worst: an analogy for a lever."}
	Patterson2003 = &Source{Key: "patterson2003", Authors: "Patterson, Jaggars and Boyer", Year: 2003,
		Where: "American Journal of Sports Medicine 31, 585–589", Opened: Abstract,
		For: "After 600 km, 23 of 25 riders had symptoms in the hands."}
)

// ofCockpit lists the sources that only the cockpit's calculators cite.
func ofCockpit() []*Source {
	return []*Source{Holliday2021, Williams2021, Lin2025, Keir2007, ODriscoll1992, KongLowe2005, ToolSpan2009, Patterson2003}
}
