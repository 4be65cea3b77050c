package literature

// Sources about the saddle: knee readings, setback, tilt, width.
var (
	Holmes1994 = &Source{Key: "holmes1994", Authors: "Holmes, Pruitt and Whalen", Year: 1994,
		Title:  "Lower extremity overuse in bicycling",
		Where:  "Clinics in Sports Medicine 13, 187–205",
		Opened: SecondHand, Strength: Theory,
		For: "A knee bend of 25 to 35 degrees at the bottom, read with the rider still."}
	Fonda2014 = &Source{Key: "fonda2014", Authors: "Fonda, Šarabon and Li", Year: 2014,
		Title:  "Validity and reliability of different kinematics methods used for bike fitting",
		Where:  "Journal of Sports Sciences 32(10), 940–946",
		Opened: Abstract, Strength: Controlled,
		For: "Film from the side reads the knee about 2.2 degrees low."}
	PriegoQuesada2016 = &Source{Key: "priegoquesada2016", Authors: "Priego Quesada, Jacques, Bini and Carpes",
		Year:   2016,
		Title:  "Importance of static adjustment of knee angle to determine saddle height in cycling",
		Where:  "Journal of Science and Cycling 5(1), 26–31",
		Opened: Abstract, Strength: Controlled,
		For: "Taking one’s own reading when standing off before comparing; 17 riders."}
	Millour2020b = &Source{Key: "millour2020b", Authors: "Millour, Duc, Ouvrard, Segui, Puel and Bertucci", Year: 2020,
		Title:  "Variability of ankle kinematics in professional cyclists: consequence on saddle height adjustment",
		Where:  "Journal of Science and Cycling 9(1)",
		DOI:    "10.28985/0620.jsc.03",
		Opened: Abstract, Strength: Survey,
		For: "How much riders differ at a height of their own choice: knee 38 degrees, scatter 11.8 % of that, " +
			"five of seventeen above 40."}

	Bini2013 = &Source{Key: "bini2013", Authors: "Bini, Hume, Lanferdini and Vaz", Year: 2013,
		Title:  "Effects of moving forward or backward on the saddle on knee joint forces during cycling",
		Where:  "Physical Therapy in Sport 14, 23–27",
		Opened: Abstract, Strength: Controlled,
		For: "Sitting further back raised the shear in the knee by 19 %; the load behind the kneecap did not " +
			"change. 21 riders."}
	Menard2020 = &Source{Key: "menard2020", Authors: "Ménard and others", Year: 2020,
		Title:  "Influence of saddle setback on knee joint forces in cycling",
		Where:  "Sports Biomechanics 19, 245–257",
		Opened: Abstract, Strength: Controlled,
		For: "Three cm forward did not load the kneecap more; three cm back raised the compression in the knee " +
			"by 14 %. Ten riders."}

	Salai1999 = &Source{Key: "salai1999", Authors: "Salai, Brosh, Blankstein, Oran and Chechik", Year: 1999,
		Title:  "Effect of changing the saddle angle on the incidence of low back pain in recreational bicyclists",
		Where:  "British Journal of Sports Medicine 33, 398–400",
		Opened: Abstract, Strength: Cohort,
		For: "More than 70 % of club riders with low back pain improved after the nose was tilted down; X-ray " +
			"films were taken on sports, mountain and city bikes."}
	WilkinsonKram2021 = &Source{Key: "wilkinsonkram2021", Authors: "Wilkinson and Kram", Year: 2021,
		Title:  "Nose-down saddle tilt improves gross efficiency during seated-uphill cycling",
		Where:  "Preprint, later in the European Journal of Applied Physiology",
		Opened: Abstract, Strength: Controlled,
		For: "Eight degrees nose-down on a slope of eight degrees: 1.4 % better efficiency. 19 riders."}
	SabetiAschraf2010 = &Source{Key: "sabetiaschraf2010", Authors: "Sabeti-Aschraf and others", Year: 2010,
		Title:  "Overuse injuries correlated to the mountain bike’s adjustment: a prospective field study",
		Where:  "Open Sports Sciences Journal 3, 1–6",
		DOI:    "10.2174/1875399X01003010001",
		Opened: Abstract, Strength: Cohort,
		For: "In one mountain-bike race the saddle’s inclination went with pain in the buttocks."}

	Lin2023 = &Source{Key: "lin2023", Authors: "Lin, Wang and Chen", Year: 2023,
		Title:    "The effect of bicycle saddle widths on saddle pressure in female cyclists",
		Where:    "Journal of Sports Science and Medicine 22, 424",
		Recalled: "title from memory",
		DOI:      "10.52082/jssm.2023.424",
		Opened:   Abstract, Strength: Controlled,
		For: "Sit bones 155 ± 14 mm apart in ten women, and the best pressure and comfort on a saddle 10 mm " +
			"wider."}
	Potter2008 = &Source{Key: "potter2008", Authors: "Potter, Sauer, Weisshaar, Thelen and Ploeg", Year: 2008,
		Title:  "Gender differences in bicycle saddle pressure distribution during seated cycling",
		Where:  "Medicine and Science in Sports and Exercise 40(6), 1126–1134",
		Opened: Abstract, Strength: Controlled,
		For: "Women’s sit bones are further apart on average, and reaching low raised the load in front in women " +
			"only; eleven women and eleven men."}
	Schwarzer2002 = &Source{Key: "schwarzer2002", Authors: "Schwarzer, Sommer and others", Year: 2002,
		Title:  "Cycling and penile oxygen pressure: the type of saddle matters",
		Where:  "European Urology 41, 139–143",
		Opened: Abstract, Strength: Controlled,
		For: "How far the oxygen fell on four saddles: width and shape counted, padding did not protect. 20 men."}
)

// ofSaddle lists them.
func ofSaddle() []*Source {
	return []*Source{
		Holmes1994, Fonda2014, PriegoQuesada2016, Millour2020b,
		Bini2013, Menard2020, Salai1999, WilkinsonKram2021, SabetiAschraf2010,
		Lin2023, Potter2008, Schwarzer2002,
	}
}
