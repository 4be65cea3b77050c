package literature

// Sources about bikes as plane figures and as masses on two wheels.
var (
	Meijaard2007 = &Source{Key: "meijaard2007", Authors: "Meijaard, Papadopoulos, Ruina and Schwab", Year: 2007,
		Title:  "Linearized dynamics equations for the balance and steer of a bicycle: a benchmark and review",
		Where:  "Proceedings of the Royal Society A 463, 1955–1982",
		Opened: Text, Strength: Theory,
		For: "A benchmark bicycle whose trail, loads and limits the formulas must reproduce."}
	Moore2012 = &Source{Key: "moore2012", Authors: "J. K. Moore", Year: 2012,
		Title:  "Human Control of a Bicycle",
		Where:  "PhD thesis, University of California, Davis, chapter on physical parameters",
		DOI:    "10.6084/m9.figshare.1198429",
		Opened: Text, Strength: DataSet,
		For: "Trail from radius, head angle and offset; eight measured bikes and the centres of mass of their " +
			"riders."}
	Riel2005 = &Source{Key: "riel2005", Authors: "Joseph S. Riel", Year: 2005,
		Title:  "Maximal Braking on a Standard Bicycle",
		Where:  "Version 1.0 of 5 July 2005, published by its author; one bike, one rider",
		Opened: Text, Strength: Controlled,
		For: "Weighing a bike level and with one end raised, and the braking at which the rear wheel lifts; the " +
			"opening pages were read."}
	DeLeva1996 = &Source{Key: "deleva1996", Authors: "P. de Leva", Year: 1996,
		Title:  "Adjustments to Zatsiorsky-Seluyanov’s segment inertia parameters",
		Where:  "Journal of Biomechanics 29, 1223–1230",
		DOI:    "10.1016/0021-9290(95)00178-6",
		Opened: SecondHand, Strength: DataSet,
		For: "What share of the body’s mass each segment carries, and where along it; read in two public " +
			"transcriptions."}
	ISO4210Part2 = &Source{Key: "iso4210part2", Authors: "International Organization for Standardization", Year: 2015,
		Title: "Cycles: safety requirements for bicycles, part 2",
		Where: "ISO 4210-2:2015, clauses 4.7.4 and 4.7.5, read in a national edition that adopts it; the edition " +
			"of 2023 replaces it and was not opened",
		Opened: SecondHand, Strength: Standard,
		For: "At least 25 % of the weight on the front wheel, rider and saddle as far back as they go."}
	CFR1512 = &Source{Key: "cfr1512", Authors: "US Consumer Product Safety Commission", Year: 1978,
		Title:  "Requirements for bicycles",
		Where:  "Code of Federal Regulations, title 16, part 1512, as amended in 2011",
		URL:    "https://www.ecfr.gov/current/title-16/part-1512",
		Opened: Text, Strength: Standard,
		For: "Room from the pedal’s centre to the front tyre, lean before a pedal strikes, the span of a brake " +
			"lever from outside to outside, the shortest leg that a maker states, and the post’s mark."}
	MacRae2000 = &Source{Key: "macrae2000", Authors: "MacRae, Hise and Allen", Year: 2000,
		Title:  "Effects of front and dual suspension mountain bike systems on uphill cycling performance",
		Where:  "Medicine and Science in Sports and Exercise 32(7), 1276–1280",
		Opened: Abstract, Strength: Controlled,
		For: "Six men climbed in the same time with front and with full suspension."}
	Nielens2004 = &Source{Key: "nielens2004", Authors: "Nielens and Lejeune", Year: 2004,
		Title:  "Bicycle shock absorption systems and energy expended by the cyclist",
		Where:  "Sports Medicine 34(2), 71–80",
		Opened: Abstract, Strength: Review,
		For: "What suspension loses by bobbing is minimal on most ground."}
)
