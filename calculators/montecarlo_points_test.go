package calculators_test

// morePoints are the two further points, beside the worked example, at which each
// calculator is simulated.
var morePoints = map[string][]string{
	"saddle-height": {"inseam=720±4 crank-length=165±0.5 pedals=flat sex=f trochanter-height=779±5", "inseam=905±5 crank-length=175±0.5 sex=m"},
}

// bends are the readings whose interval is known to miss.
var bends = []bend{}
