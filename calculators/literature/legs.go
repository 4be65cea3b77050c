package literature

// Sources about saddle height, the leg and its measurement.
var (
	Peveler2005 = &Source{Key: "peveler2005", Authors: "Peveler, Bishop, Smith, Richardson, Whitehorn", Year: 2005,
		Where: "Journal of Exercise Physiology online 8(1):51–55", Opened: Abstract,
		For: "The factors 0.883 and 1.09 of inside leg, how inside leg is taken, and that the two methods did not differ in knee angle."}
	HamleyThomas1967 = &Source{Key: "hamleythomas1967", Authors: "Hamley, Thomas", Year: 1967,
		Where: "Journal of Physiology 191:55P–57P", Opened: Memory,
		For: "Saddle height as a share of inside leg, 109 %, from the pedal at its farthest."}
	NordeenSnyder1977 = &Source{Key: "nordeensnyder1977", Authors: "Nordeen-Snyder", Year: 1977,
		Where: "Medicine and Science in Sports 9:113–117", Opened: Memory,
		For: "Oxygen cost lowest with the saddle at the height of the greater trochanter, from the pedal at its farthest."}
	FerrerRoca2012 = &Source{Key: "ferrerroca2012", Authors: "Ferrer-Roca, Roig, Galilea, García-López", Year: 2012,
		Where: "Journal of Strength and Conditioning Research 26(11):3025–3029", Opened: Abstract,
		For: "Saddle height from inside leg and the knee bend wanted while pedalling; 23 male riders. The coefficients are from memory and agree with the range printed in the abstract."}
	FerrerRoca2014 = &Source{Key: "ferrerroca2014", Authors: "Ferrer-Roca and others", Year: 2014,
		Where: "Journal of Strength and Conditioning Research 28(3):784–791", Opened: Abstract,
		For: "How much hip, knee and ankle answer when the saddle moves by 2 % either way."}
	BiniHume2016 = &Source{Key: "binihume2016", Authors: "Bini, Hume", Year: 2016,
		Where: "Human Movement 17(1):36–42", Opened: Abstract,
		For: "The knee bends about 8 ± 5 degrees less sitting still than pedalling at the bottom of the stroke, and the same at three o'clock."}
	BiniHumeCroft2011 = &Source{Key: "binihumecroft2011", Authors: "Bini, Hume, Croft", Year: 2011,
		Where: "Sports Medicine 41(6):463–476", Opened: Abstract,
		For: "Review of saddle height: what is known about injury and performance, and what is not."}
	Gordon2014 = &Source{Key: "gordon2014", Authors: "Gordon and others", Year: 2014, Title: "2012 Anthropometric Survey of U.S. Army Personnel",
		Where: "NATICK/TR-15/007", Opened: Data,
		For: "Body lengths of 4,082 men and 1,986 women; the regressions and their residual errors are our least squares on the open data."}
	HullJorge1985 = &Source{Key: "hulljorge1985", Authors: "Hull, Jorge", Year: 1985,
		Where: "Journal of Biomechanics 18:631–644", Opened: SecondHand,
		For: "The leg, crank and seat as a closed chain of five bars."}
	CommonPractice = &Source{Key: "common-practice", Where: "Common practice in the trade, without a published source", Opened: Practice,
		For: "Habits of fitters and mechanics that nobody has tested."}
)
