package calculators_test

// morePoints are the two further points, beside the worked example, at which each
// calculator is simulated.
var morePoints = map[string][]string{
	"saddle-height": {
		"inseam=720±4 crank-length=165±0.5 pedals=flat sex=f trochanter-height=779±5",
		"inseam=905±5 crank-length=175±0.5 sex=m",
	},
}

// bends are the readings whose interval is known to miss.
var bends = []bend{
	{"saddle-height", "example", "knee-bend", medianSwitches, 1.5},
	{"saddle-height", "example", "method-spread", spreadFolds, 26.7},
	{"saddle-height", morePoints["saddle-height"][0], "saddle-height", medianSwitches, 0.75},
	{"saddle-height", morePoints["saddle-height"][0], "pedal-to-saddle", medianSwitches, 0.75},
	{"saddle-height", morePoints["saddle-height"][0], "knee-bend", medianSwitches, 0.503},
	{"saddle-height", morePoints["saddle-height"][0], "method-spread", spreadFolds, 6.04},
	{"saddle-height", morePoints["saddle-height"][1], "saddle-height", medianSwitches, 1.14},
	{"saddle-height", morePoints["saddle-height"][1], "pedal-to-saddle", medianSwitches, 1.11},
	{"saddle-height", morePoints["saddle-height"][1], "knee-bend", medianSwitches, 1.72},
	{"saddle-height", morePoints["saddle-height"][1], "method-spread", spreadFolds, 23.8},
}

// The reasons for a bend.
const (
	medianSwitches = "another row becomes the median within the inputs' errors"
	spreadFolds    = "the lowest or highest row becomes another one, and a spread is never below zero"
)
