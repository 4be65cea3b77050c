package literature

import "plumbline/calculators/words"

// Sources about saddle height, the leg and its measurement.
var (
	Peveler2005 = &Source{Key: "peveler2005", Authors: "Peveler, Bishop, Smith, Richardson and Whitehorn", Year: 2005,
		Title:  "Comparing methods for setting saddle height in trained cyclists",
		Where:  "Journal of Exercise Physiology online 8(1), 51–55",
		Opened: Abstract, Strength: Controlled,
		For: "The factors 0.883 and 1.09 of inside leg, how inside leg is taken, and that the two methods did " +
			"not differ in knee angle."}
	HamleyThomas1967 = &Source{Key: "hamleythomas1967", Authors: "Hamley and Thomas", Year: 1967,
		Title:  "Physiological and postural factors in the calibration of the bicycle ergometer",
		Where:  "Journal of Physiology 191, 55P",
		Opened: Memory, Strength: Controlled,
		For: "Saddle height as a share of inside leg, 109 %, from the pedal at its farthest."}
	NordeenSnyder1977 = &Source{Key: "nordeensnyder1977", Authors: "Nordeen-Snyder", Year: 1977,
		Title:  "The effect of bicycle seat height variation upon oxygen consumption and lower limb kinematics",
		Where:  "Medicine and Science in Sports 9(2), 113–117",
		Opened: Memory, Strength: Controlled,
		For: "Oxygen cost lowest with the saddle at the height of the greater trochanter, from the pedal at its " +
			"farthest."}
	FerrerRoca2012 = &Source{Key: "ferrerroca2012", Authors: "Ferrer-Roca, Roig, Galilea and García-López", Year: 2012,
		Title: "Influence of saddle height on lower limb kinematics in well-trained cyclists: static vs. dynamic " +
			"evaluation in bike fitting",
		Where:  "Journal of Strength and Conditioning Research 26(11), 3025–3029",
		Opened: Abstract, Strength: Survey,
		For: "Saddle height from inside leg and the knee bend wanted while pedalling; 23 male riders. The " +
			"coefficients are from memory and agree with the range printed in the abstract."}
	FerrerRoca2014 = &Source{Key: "ferrerroca2014", Authors: "Ferrer-Roca and others", Year: 2014,
		Title: "Acute effects of small changes in bicycle saddle height on gross efficiency and lower limb " +
			"kinematics",
		Where:  "Journal of Strength and Conditioning Research 28(3), 784–791",
		Opened: Abstract, Strength: Controlled,
		For: "How much hip, knee and ankle answer when the saddle moves by 2 % either way."}
	BiniHume2016 = &Source{Key: "binihume2016", Authors: "Bini and Hume", Year: 2016,
		Title: "A comparison of static and dynamic measures of lower limb joint angles in cycling: application " +
			"to bicycle fitting",
		Where:  "Human Movement 17(1), 36–42",
		Opened: Abstract, Strength: Controlled,
		For: "The knee bends about 8 ± 5 degrees less sitting still than pedalling at the bottom of the stroke, " +
			"and the same at three o’clock."}
	BiniHumeCroft2011 = &Source{Key: "binihumecroft2011", Authors: "Bini, Hume and Croft", Year: 2011,
		Title:  "Effects of bicycle saddle height on knee injury risk and cycling performance",
		Where:  "Sports Medicine 41(6), 463–476",
		Opened: Abstract, Strength: Review,
		For: "Review of saddle height: what is known about injury and performance, and what is not."}
	Gordon2014 = &Source{Key: "gordon2014", Authors: "Gordon and others", Year: 2014,
		Title:  "2012 Anthropometric Survey of U.S. Army Personnel",
		Where:  "NATICK/TR-15/007",
		Opened: Data, Strength: DataSet,
		For: "Body lengths of 4082 men and 1986 women; the regressions and their residual errors are our least " +
			"squares on the open data."}
	HullJorge1985 = &Source{Key: "hulljorge1985", Authors: "Hull and Jorge", Year: 1985,
		Title:  "A method for biomechanical analysis of bicycle pedalling",
		Where:  "Journal of Biomechanics 18, 631–644",
		DOI:    "10.1016/0021-9290(85)90019-3",
		Opened: SecondHand, Strength: Theory,
		For: "The leg, crank and seat as a closed chain of five bars."}
	CommonPractice = &Source{Key: "common-practice",
		Where:  string(Habitual),
		Opened: Practice, Strength: Habit,
		For: "Habits of fitters and mechanics that nobody has tested."}
)

// Habitual stands where other sources say in which journal they were published.
const Habitual words.English = "Common practice in the trade, without a published source"
