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

// Sources about telling a difference from chance.
var (
	Pitman1937 = &Source{Key: "pitman1937", Authors: "E. J. G. Pitman", Year: 1937,
		Title: "Significance tests which may be applied to samples from any populations",
		Where: "Supplement to the Journal of the Royal Statistical Society 4(1): 119–130", DOI: "10.2307/2984124",
		Opened: Memory, Strength: Theory,
		For: "Two lists are compared with every other way of dealing the same numbers to them, so that no form of " +
			"scatter has to be assumed."}
	NIST2012 = &Source{Key: "nist2012", Authors: "National Institute of Standards and Technology, SEMATECH",
		Year:  2012,
		Title: "e-Handbook of Statistical Methods", Where: "Section 7.2.2.2",
		DOI:    "10.18434/M32189",
		Opened: Memory, Strength: Theory,
		For: "How many measurements show a difference of a given size against a given scatter."}
)

// All returns every source, for the guide's list. The engine never calls it.
func All() []*Source {
	return slices.Concat([]*Source{
		Peveler2005, HamleyThomas1967, NordeenSnyder1977, FerrerRoca2012, FerrerRoca2014,
		BiniHume2016, BiniHumeCroft2011, Gordon2014, HullJorge1985, GUM2008, Pitman1937, NIST2012, CommonPractice,
		Meijaard2007, Moore2012, Riel2005, DeLeva1996, ISO4210Part2, CFR1512, MacRae2000, Nielens2004,
	}, ofFeet(), ofStance(), ofSaddle(), ofCockpit(), ofMobility())
}
