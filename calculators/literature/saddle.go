package literature

// Sources about the saddle: knee readings, setback, tilt, width.
var (
	Holmes1994 = &Source{Key: "holmes1994", Authors: "Holmes, Pruitt and Whalen", Year: 1994,
		Where: "Clinics in Sports Medicine 13, 187–205", Opened: SecondHand,
		For: "A knee bend of 25 to 35 degrees at the bottom, read with the rider still."}
	Fonda2014 = &Source{Key: "fonda2014", Authors: "Fonda, Šarabon and Li", Year: 2014,
		Where: "Journal of Sports Sciences 32(10), 940–946", Opened: Abstract,
		For: "Film from the side reads the knee about 2.2 degrees low."}
	PriegoQuesada2016 = &Source{Key: "priegoquesada2016", Authors: "Priego Quesada and others", Year: 2016,
		Where: "Journal of Science and Cycling 5(1), 26–31", Opened: Abstract,
		For: "Taking one’s own reading when standing off before comparing."}
	JSC2020 = &Source{Key: "jsc2020", Authors: "authors not shown in what we read", Year: 2020,
		Where: "Journal of Science and Cycling, article 541, on the knee and ankle angles of 17 professional cyclists", Opened: Abstract,
		For: "How much riders differ at a height of their own choice: knee 38 degrees, scatter 11.8 % of that."}

	Bini2013 = &Source{Key: "bini2013", Authors: "Bini and others", Year: 2013,
		Where: "Physical Therapy in Sport 14, 23–27", Opened: Abstract,
		For: "Sitting further back raised the shear in the knee by 19 %; the load behind the kneecap did not change. 21 riders."}
	Menard2020 = &Source{Key: "menard2020", Authors: "Ménard and others", Year: 2020,
		Where: "Sports Biomechanics 19, 245–257", Opened: Abstract,
		For: "Three cm forward did not load the kneecap more; three cm back raised the compression in the knee by 14 %. Ten riders."}

	Salai1999 = &Source{Key: "salai1999", Authors: "Salai and others", Year: 1999,
		Where: "British Journal of Sports Medicine 33, 398–400", Opened: Abstract,
		For: "More than 70 % of club riders with low back pain improved after the nose was tilted down."}
	WilkinsonKram2021 = &Source{Key: "wilkinsonkram2021", Authors: "Wilkinson and Kram", Year: 2021,
		Where: "preprint on saddle tilt and efficiency in uphill cycling, later in the European Journal of Applied Physiology", Opened: Abstract,
		For: "Eight degrees nose-down on a slope of eight degrees: 1.4 % better efficiency. 19 riders."}
	Humboldt2026 = &Source{Key: "humboldt2026", Authors: "author not shown in what we read", Year: 2026,
		Where: "master's thesis, Cal Poly Humboldt, on saddle tilt and efficiency on steep grades", Opened: Abstract,
		For: "About 3 % better efficiency with the nose down on a grade of 20 %. 18 riders."}
	SabetiAschraf2010 = &Source{Key: "sabetiaschraf2010", Authors: "Sabeti-Aschraf and others", Year: 2010,
		Where: "Open Sports Sciences Journal 3, 1–6", Opened: Abstract,
		For: "In one mountain-bike race the saddle’s inclination went with pain in the buttocks."}

	Lin2023 = &Source{Key: "lin2023", Authors: "Lin, Wang and Chen", Year: 2023,
		Where: "Journal of Sports Science and Medicine 22, 424", Opened: Abstract,
		For: "Sit bones 155 ± 14 mm apart in ten women, and the best pressure and comfort on a saddle 10 mm wider."}
	Potter2008 = &Source{Key: "potter2008", Authors: "Potter and others", Year: 2008,
		Where: "Medicine and Science in Sports and Exercise 40(6), 1126–1134", Opened: Abstract,
		For: "Women’s sit bones stand further apart on average; eleven women and eleven men."}
	Schwarzer2002 = &Source{Key: "schwarzer2002", Authors: "Schwarzer, Sommer and others", Year: 2002,
		Where: "European Urology 41, 139–143", Opened: Abstract,
		For: "How far the oxygen fell on four saddles: width and shape counted, padding did not protect. 20 men."}
)

// ofSaddle lists them.
func ofSaddle() []*Source {
	return []*Source{
		Holmes1994, Fonda2014, PriegoQuesada2016, JSC2020,
		Bini2013, Menard2020, Salai1999, WilkinsonKram2021, Humboldt2026, SabetiAschraf2010,
		Lin2023, Potter2008, Schwarzer2002,
	}
}
