package literature

import "slices"

// Sources about measuring itself.
var (
	GUM2008 = &Source{Key: "gum2008", Authors: "Joint Committee for Guides in Metrology", Year: 2008,
		Title:  "Evaluation of measurement data: Guide to the expression of uncertainty in measurement",
		Where:  "JCGM 100:2008",
		URL:    "https://www.bipm.org/en/committees/jc/jcgm/publications",
		Opened: SecondHand, Strength: Standard,
		For: "How the repeat error of each measurement is carried to the answer, and the factor 2 for about 95 " +
			"%; read in a national handbook and a dictionary."}
)

// All returns every source, for the guide's list. The engine never calls it.
func All() []*Source {
	return slices.Concat([]*Source{
		Peveler2005, HamleyThomas1967, NordeenSnyder1977, FerrerRoca2012, FerrerRoca2014,
		BiniHume2016, BiniHumeCroft2011, Gordon2014, HullJorge1985, GUM2008, CommonPractice,
		Meijaard2007, Moore2012, Riel2005, DeLeva1996, ISO4210Part2, CFR1512, MacRae2000, Nielens2004,
	}, ofFeet(), ofSaddle(), ofCockpit())
}
