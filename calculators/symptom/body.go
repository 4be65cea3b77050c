package symptom

import (
	"plumbline/calculators/literature"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// The sources that speak about whole groups of symptoms.
var (
	knees = []*literature.Source{literature.Johnston2017}
	race  = []*literature.Source{literature.SabetiAschraf2010}
	tilt  = []*literature.Source{literature.Salai1999}
	grips = []*literature.Source{literature.Patterson2003, literature.SabetiAschraf2010}
)

// What a joint says that is not for tools.
var (
	jointFlags = []words.English{"swelling, locking or giving way", "pain at night or at rest",
		"pain after a fall or a twist"}
	nerveFlags = []words.English{"numbness or weakness that lasts beyond the ride or comes back",
		"pain that runs down an arm or a leg"}
)

// The pairs for knee, calf and foot are a clinical convention, written down from
// memory; a review of fourteen studies found no setting directly tied to knee pain.
var all = []*Symptom{
	{Key: "knee-front", Label: "Front of the knee aches", Place: Knee, Flags: jointFlags, Causes: Causes{
		{Why: "The saddle is low, so the knee pushes while sharply bent", Evidence: Clinical, Sources: knees,
			First: "Raise the saddle", Of: measure.SaddleHeight, More: true, Chapter: "saddle/height"},
		{Why: "Gears too hard for the hill", Evidence: Clinical, Sources: knees,
			First: "Shift one gear easier and turn the pedals a little faster for two " +
				"rides.", Chapter: "saddle/checking-the-knee"},
		{Why: "The crank is long for the leg, so the knee bends further at the top", Evidence: Measured,
			First: "Work out what a shorter crank would change before you buy one.", Chapter: "feet/crank-length"},
		{Why: "The saddle is far forward; much more often it is too low", Evidence: Clinical,
			Sources: knees, First: "Move the saddle back, once its height is " +
				"right", Of: measure.SaddleSetback, More: true, Chapter: "saddle/fore-and-aft"},
	}},
	{Key: "knee-back", Label: "Back of the knee aches", Place: Knee,
		Flags: append([]words.English{
			"a calf that is swollen, warm or painful to press, above all with breathlessness: " +
				"call the emergency number"}, jointFlags...), Causes: Causes{
			{Why: "The saddle is high, so the leg reaches for the bottom of the stroke", Evidence: Clinical,
				Sources: knees, First: "Lower the saddle", Of: measure.SaddleHeight, Chapter: "saddle/height"},
			{Why: "The saddle is far back, which lengthens the reach to the pedal", Evidence: Measured,
				Sources: []*literature.Source{literature.Bini2013}, First: "Move the saddle forward, once its " +
					"height is right", Of: measure.SaddleSetback, Chapter: "saddle/fore-and-aft"},
			{Why: "The cleat holds the foot loosely: a lot of float", Evidence: Clinical, Sources: knees,
				First: "Try less float, if your pedals offer it.", Chapter: "feet/rotation-and-float"},
			{Why: "The cleat was moved back and the saddle stayed where it was", Evidence: Geometry,
				First: "Lower the saddle", Of: measure.SaddleHeight, Chapter: "feet/cleat-fore-and-aft"},
		}},
	{Key: "knee-outside", Label: "Outside of the knee aches", Place: Knee, Flags: jointFlags, Causes: Causes{
		{Why: "The saddle is high, so the knee passes the angle at which the outer band rubs", Evidence: Clinical,
			Sources: knees, First: "Lower the saddle", Of: measure.SaddleHeight, Chapter: "saddle/height"},
		{Why: "The cleat holds the toes too far in", Evidence: Clinical, Sources: knees,
			First: "Turn the cleat by one degree so that the toes may point further " +
				"out.", Chapter: "feet/rotation-and-float"},
		{Why: "The stance is narrow for the hips", Evidence: Clinical, Sources: knees,
			First: "Move the cleat inwards, which sets the foot further " +
				"out", Of: measure.CleatShift, More: true, Chapter: "feet/stance-width"},
	}},
	{Key: "knee-inside", Label: "Inside of the knee aches", Place: Knee, Flags: jointFlags, Causes: Causes{
		{Why: "The cleat holds the toes too far out, or holds the foot fast", Evidence: Clinical, Sources: knees,
			First: "Turn the cleat by one degree so that the toes may point further in, or choose more " +
				"float.", Chapter: "feet/rotation-and-float"},
		{Why: "The stance is wide for the hips", Evidence: Clinical, Sources: knees,
			First: "Move the cleat outwards, which sets the foot further " +
				"in", Of: measure.CleatShift, Chapter: "feet/stance-width"},
	}},
	{Key: "calf", Label: "Calf or heel tendon aches", Place: Calf,
		Flags: []words.English{
			"a calf that is swollen, warm or painful to press, above all with breathlessness: call the " +
				"emergency number", "a snap or a sudden blow in the calf"}, Causes: Causes{
			{Why: "The spindle is far forward under the foot, so the calf holds a long lever", Evidence: Clinical,
				First: "Move the cleat " +
					"back", Of: measure.CleatBehindBall, More: true, Chapter: "feet/cleat-fore-and-aft"},
			{Why: "The saddle is high and the toes reach for the pedal", Evidence: Clinical,
				First: "Lower the saddle", Of: measure.SaddleHeight, Chapter: "saddle/height"},
		}},
	{Key: "forefoot", Label: "Forefoot burns or the toes go numb", Place: Forefoot,
		Flags: append([]words.English{"a foot that stays numb or cold off the bike", "a sore that does not heal"},
			nerveFlags[:1]...), Causes: Causes{
			{Why: "The shoe is tight across the ball", Evidence: Trade, First: "Loosen the shoe; in the evening, " +
				"when feet are largest, check its size.", Chapter: "feet/shoe-size"},
			{Why: "The spindle lies under the toe joints", Evidence: Clinical, First: "Move the cleat back",
				Of: measure.CleatBehindBall, More: true, Chapter: "feet/cleat-fore-and-aft"},
			{Why: "The sole bends over the pedal", Evidence: Trade, First: "Ride once in a stiffer shoe, or on a " +
				"larger pedal.", Chapter: "feet/flat-or-clipped"},
		}},
	{Key: "hip", Label: "Hip or groin aches", Place: Hip, Flags: append([]words.English{
		"pain in the groin that comes " +
			"with every step"}, jointFlags...), Causes: Causes{
		{Why: "The hip closes far at the top of the stroke: low saddle, or a crank that is long for the leg",
			Evidence: Geometry, First: "Raise the saddle, if it is below the range",
			Of: measure.SaddleHeight, More: true, Chapter: "saddle/checking-the-knee"},
		{Why: "The saddle is high and the hips rock", Evidence: Trade, First: "Lower the saddle",
			Of: measure.SaddleHeight, Chapter: "saddle/height"},
		{Why: "The crank is long for the leg", Evidence: Measured, First: "Work out what a shorter crank would " +
			"change before you buy one.", Chapter: "feet/crank-length"},
		{Why: "One leg reaches further than the other", Evidence: Trade, First: "Check that saddle, cleats and " +
			"cranks are straight, before you think of the legs.", Chapter: "feet/when-legs-differ"},
	}},
	{Key: "low-back", Label: "Low back aches", Place: LowBack,
		Flags: append([]words.English{
			"back pain with weakness in a leg, a numb saddle area, or trouble with bladder or " +
				"bowel: call the emergency number"}, nerveFlags...), Causes: Causes{
			{Why: "The nose of the saddle points up, so the pelvis rolls back", Evidence: Linked, Sources: tilt,
				First: "Turn the nose down", Of: measure.SaddleTilt, More: true, Chapter: "saddle/tilt"},
			{Why: "The saddle is high and the back sways with every stroke", Evidence: Trade,
				First: "Lower the saddle", Of: measure.SaddleHeight, Chapter: "saddle/height"},
			{Why: "The bar is low or far for the time that you sit", Evidence: Trade,
				First: "Raise the stem by one " +
					"spacer", Of: measure.Spacers, More: true, Chapter: "cockpit/seated-reach"},
			{Why: "Longer or harder rides than the back is used to", Evidence: Trade,
				First: "Ride shorter and easier for a week; get up from the saddle every ten " +
					"minutes.", Chapter: "finish/the-test-ride"},
		}},
	{Key: "seat-sore", Label: "Saddle soreness", Place: Seat, Flags: []words.English{
		"a lump, or a sore that is infected; " +
			"with a fever at once", "numbness: see “Saddle numbness”"}, Causes: Causes{
		{Why: "The saddle leans the wrong way", Evidence: Linked, Sources: race, First: "Turn the nose down",
			Of: measure.SaddleTilt, More: true, Chapter: "saddle/tilt"},
		{Why: "The saddle is high, so the hips rock over it", Evidence: Trade, First: "Lower the saddle",
			Of: measure.SaddleHeight, Chapter: "saddle/height"},
		{Why: "The saddle is too narrow or too round for the sit bones", Evidence: Trade,
			First: "Measure the sit bones, then try one size wider.", Chapter: "saddle/width-and-shape"},
		{Why: "A new saddle, or the first rides of the season", Evidence: Trade,
			First: "Give it some shorter rides before you change anything.", Chapter: "saddle/width-and-shape"},
	}},
	{Key: "seat-numb", Label: "Saddle numbness", Place: Seat, Flags: []words.English{
		"numbness that comes back or outlasts the ride: stop riding, and see a clinician",
		"numbness together with back pain, or with trouble of bladder or bowel: call the emergency number",
		"a change in sexual function, or blood in the urine"}, Causes: Causes{
		{Why: "The nose presses on soft " +
			"parts", Evidence: Clinical, Sources: []*literature.Source{literature.Schwarzer2002}, First: "Stand up " +
			"at once and often; then turn the nose down", Of: measure.SaddleTilt, More: true, Chapter: "saddle/tilt"},
		{Why: "The saddle is high", Evidence: Clinical, First: "Lower the saddle", Of: measure.SaddleHeight,
			Chapter: "saddle/height"},
		{Why: "The saddle is narrow, or of a shape that is not yours", Evidence: Measured,
			Sources: []*literature.Source{literature.Schwarzer2002}, First: "Measure the sit bones, then try " +
				"another width or shape.", Chapter: "saddle/width-and-shape"},
	}},
	{Key: "neck", Label: "Neck aches or stiffens", Place: Neck, Flags: append([]words.English{
		"neck pain after a fall or " +
			"a blow to the head"}, nerveFlags...), Causes: Causes{
		{Why: "The bar is low or far, so the head is held back to see", Evidence: Trade,
			First: "Raise the stem by one spacer", Of: measure.Spacers, More: true, Chapter: "cockpit/seated-reach"},
		{Why: "The bar is wide, the arms are spread and the shoulders drawn up", Evidence: Trade,
			First: "Slide grips and levers inwards before you cut " +
				"anything", Of: measure.LeverInset, More: true, Chapter: "cockpit/bar-width"},
		{Why: "The helmet’s brim or the glasses hide the trail", Evidence: Trade,
			First: "Set the helmet level and look through, not over, the frame of the " +
				"glasses.", Chapter: "cockpit/seated-reach"},
	}},
	{Key: "hands", Label: "Hands go numb, tingle or hurt", Place: Hands, Flags: append([]words.English{
		"weakness in the " +
			"grip, or fingers that stay numb off the bike"}, nerveFlags[:1]...), Causes: Causes{
		{Why: "Too much weight on the hands: the nose of the saddle points down and you slide forward",
			Evidence: Trade, Sources: grips[:1], First: "Turn the nose " +
				"up", Of: measure.SaddleTilt, Chapter: "saddle/tilt"},
		{Why: "The distance from saddle to pedal is wrong", Evidence: Linked, Sources: grips[1:],
			First: "Check the saddle height against your leg.", Chapter: "saddle/height"},
		{Why: "The bar is low", Evidence: Trade, First: "Raise the stem by one spacer", Of: measure.Spacers,
			More: true, Chapter: "cockpit/seated-reach"},
		{Why: "The wrist is bent: lever too high or too low, bar rolled", Evidence: Measured,
			Sources: []*literature.Source{literature.Keir2007}, First: "Turn the levers into the line of the " +
				"forearm", Of: measure.LeverAngle, More: true, Chapter: "cockpit/levers-and-grips"},
		{Why: "The grip is thick or hard for the hand", Evidence: Measured,
			Sources: []*literature.Source{literature.KongLowe2005}, First: "Try another thickness of " +
				"grip.", Chapter: "cockpit/levers-and-grips"},
	}},
	{Key: "arms-tired", Label: "Arms or forearms tire on descents", Place: Arms, Flags: nerveFlags, Causes: Causes{
		{Why: "The brake levers stand far out, so the hand works before it brakes", Evidence: Trade,
			First: "Bring the levers in", Of: measure.LeverReach, Chapter: "cockpit/levers-and-grips"},
		{Why: "Weight hangs on the hands instead of standing on the feet", Evidence: Geometry,
			First:   "Drop the saddle, lower the chest and put the heels down; do not change a setting yet.",
			Chapter: "cockpit/standing-ready"},
		{Why: "The arms are nearly straight: the grips are far or low", Evidence: Geometry,
			First: "Raise the stem by one " +
				"spacer", Of: measure.Spacers, More: true, Chapter: "cockpit/standing-ready"},
		{Why: "The suspension is harsh", Evidence: Trade, First: "Check the fork’s sag before you change the " +
			"cockpit.", Chapter: "frame/sag"},
	}},
	{Key: "front-wanders", Label: "Front wheel wanders or lifts a little on climbs", Place: FrontHub, Causes: Causes{
		{Why: "Every push of the pedal takes load off the front wheel: gear too hard", Evidence: Geometry,
			First: "Shift one gear easier, bend the elbows and lower the " +
				"chest.", Chapter: "frame/climbing-and-descending"},
		{Why: "The saddle is far back over the rear wheel", Evidence: Geometry, First: "Move the saddle forward",
			Of: measure.SaddleSetback, Chapter: "saddle/fore-and-aft"},
		{Why: "The bar is high, so the trunk sits upright", Evidence: Geometry,
			First: "Lower the stem by one spacer", Of: measure.Spacers, Chapter: "cockpit/stem-and-spacers"},
		{Why: "The rear suspension sags too far under a climber", Evidence: Geometry,
			First: "Check the rear sag.", Chapter: "frame/sag"},
	}},
	{Key: "loops-out", Label: "The bike rears up on steep climbs", Place: RearHub, Causes: Causes{
		{Why: "The hill is steeper than where you sit allows", Evidence: Geometry,
			First: "Move to the nose, chest down, and push evenly; walk what stays too " +
				"steep.", Chapter: "frame/climbing-and-descending"},
		{Why: "The saddle is far back", Evidence: Geometry, First: "Move the saddle forward",
			Of: measure.SaddleSetback, Chapter: "saddle/fore-and-aft"},
		{Why: "The seat angle is slack for your saddle height", Evidence: Geometry,
			First: "Work out the seat angle where you sit.", Chapter: "frame/long-low-and-slack"},
	}},
	{Key: "pitched-forward", Label: "You feel pitched forward on descents or when braking", Place: CentreOfM,
		Causes: Causes{
			{Why: "The saddle is up and holds the hips high", Evidence: Geometry,
				First:   "Lower the post before the descent; look at a longer dropper.",
				Chapter: "saddle/dropper-post"},
			{Why: "The weight is far forward: hips ahead of the feet", Evidence: Geometry,
				First: "Stand with heels down and hips back until the hands are " +
					"light.", Chapter: "cockpit/standing-ready"},
			{Why: "The bar is low", Evidence: Geometry, First: "Raise the stem by one spacer", Of: measure.Spacers,
				More: true, Chapter: "cockpit/stem-and-spacers"},
			{Why: "The fork dives: too much sag in front", Evidence: Geometry, First: "Check the fork’s sag.",
				Chapter: "frame/sag"},
		}},
}
