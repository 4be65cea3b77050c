package literature

// Sources about bikes as plane figures and as masses on two wheels.
var (
	Meijaard2007 = &Source{Key: "meijaard2007", Authors: "Meijaard, Papadopoulos, Ruina and Schwab", Year: 2007,
		Title: "Linearized dynamics equations for the balance and steer of a bicycle: a benchmark and review",
		Where: "Proceedings of the Royal Society A 463, 1955–1982", Opened: Text,
		For: "A benchmark bicycle whose trail, loads and limits the formulas have to give back."}
	Moore2012 = &Source{Key: "moore2012", Authors: "J. K. Moore", Year: 2012,
		Title: "Human Control of a Bicycle",
		Where: "PhD thesis, University of California, Davis, chapter on physical parameters", DOI: "10.6084/m9.figshare.1198429", Opened: Text,
		For: "Trail from radius, head angle and offset; eight measured bikes and the centres of mass of their riders."}
	Riel2005 = &Source{Key: "riel2005", Authors: "B. Riel", Year: 2005,
		Where: "a public summary of measurements on a road bike", Opened: Text,
		For: "Weighing a bike level and with one end raised, and the braking at which the rear wheel lifts."}
	DeLeva1996 = &Source{Key: "deleva1996", Authors: "P. de Leva", Year: 1996,
		Title: "Adjustments to Zatsiorsky-Seluyanov’s segment inertia parameters",
		Where: "Journal of Biomechanics 29, 1223–1230", Opened: SecondHand,
		For: "What share of the body’s mass each segment carries, and where along it; read in two public transcriptions."}
	ISO4210Part2 = &Source{Key: "iso4210part2", Authors: "International Organization for Standardization", Year: 2014,
		Title: "Cycles: safety requirements for bicycles, part 2",
		Where: "ISO 4210-2:2014, clauses 4.7.4 and 4.7.5, read in an identical national edition; a 2023 edition exists and was not opened", Opened: SecondHand,
		For: "At least 25 % of the weight on the front wheel, rider and saddle as far back as they go."}
	CFR1512 = &Source{Key: "cfr1512", Authors: "United States, Consumer Product Safety Commission", Year: 1978,
		Title: "Requirements for bicycles",
		Where: "Code of Federal Regulations, title 16, part 1512 (as amended)", Opened: Text,
		For: "Room between toe and tyre, lean before a pedal strikes, room to stand over the frame, and the post’s mark."}
)
