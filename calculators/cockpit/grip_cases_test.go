package cockpit

import (
	"math"
	"math/cmplx"
	"testing"

	"plumbline/calculators"
	"plumbline/calculators/calctest"
	"plumbline/calculators/measure"
)

// partsStandIns stand in for the parts that nobody measured: common practice.
var partsStandIns = numbers{"stem-angle": 0, "bar-roll": 0, "headset-height": 10, "stem-clamp-height": 40}

// partsSD are their standard uncertainties.
var partsSD = numbers{"stem-angle~": 3, "headset-height~": 4, "stem-clamp-height~": 2, "bar-sweep~": 8}

// clampAndGrip returns where a record's bar clamp and grips are: up the steering axis,
// ahead square to it, and on the bar.
func clampAndGrip(n numbers) (clamp, grip complex128) {
	n = n.complete(partsStandIns)
	if angle, ok := n["back-sweep"]; ok {
		// The sweep starts 60 mm from the middle and ends in the middle of the grip.
		bar := n.complete(numbers{"bar-width": 780, "grip-length": 130})
		swept := (bar["bar-width"]-bar["grip-length"])/2 - 60
		n = n.complete(numbers{"bar-sweep": -real(scaled(swept, toward(90+angle)))})
	}
	n = n.complete(numbers{"bar-sweep": 38})
	clamp = complex(n["reach"], n["stack"])
	clamp += scaled(n["headset-height"]+n["spacers"]+n["stem-clamp-height"]/2, toward(180-n["head-angle"]))
	clamp += scaled(n["stem-length"], toward(90-n["head-angle"]+n["stem-angle"]))
	return clamp, clamp + complex(-n["bar-sweep"], n["bar-rise"])*toward(-n["bar-roll"])
}

// seatLineAt returns how far ahead the seat line is at a height: through the tube's
// point at which the effective angle is read, along the tube; without the tube's own
// angle straight through the bottom bracket.
func seatLineAt(n numbers, y float64) float64 {
	n = n.complete(numbers{"seat-angle-height": n["stack"], "seat-tube-angle": n["seat-angle"]})
	cot := func(degrees float64) float64 { return 1 / math.Tan(degrees*math.Pi/180) }
	h := n["seat-angle-height"]
	return -h*cot(n["seat-angle"]) - (y-h)*cot(n["seat-tube-angle"])
}

// saddleOnLine returns the saddle of a record, on the seat line unless its setback was
// measured.
func saddleOnLine(n numbers) complex128 {
	if _, ok := n["saddle-setback"]; ok {
		return n.saddleOf()
	}
	y := root(100, 1500, func(y float64) float64 { return math.Hypot(seatLineAt(n, y), y) - n["saddle-height"] })
	return complex(seatLineAt(n, y), y)
}

func gripByHand(n numbers) map[*calculators.Output]float64 {
	clamp, grip := clampAndGrip(n)
	saddle := saddleOnLine(n)
	reach := n["reach"] - (imag(clamp)-n["stack"])/math.Tan(n["head-angle"]*math.Pi/180)
	want := map[*calculators.Output]float64{
		gripX: real(grip), gripY: imag(grip), gripFromSaddle: cmplx.Abs(grip - saddle), gripDrop: imag(saddle - grip),
		reachAtBar: reach, roomAtBar: reach - seatLineAt(n, imag(clamp)),
	}
	for _, s := range gripStepsByHand {
		_, then := clampAndGrip(n.complete(partsStandIns).complete(numbers{"bar-sweep": 38}).plus(s.key, s.by))
		want[s.step.ahead], want[s.step.up] = real(then-grip), imag(then-grip)
		want[s.step.fromSaddle] = cmplx.Abs(then-saddle) - cmplx.Abs(grip-saddle)
	}
	return want
}

// gripStepsByHand are the rows of the table in its order: what each adds to which part.
var gripStepsByHand = []struct {
	step gripStep
	key  string
	by   float64
}{{gripSpacer, "spacers", 10}, {gripRoll, "bar-roll", 1}, {gripStem, "stem-length", 10},
	{gripStemAngle, "stem-angle", 6}, {gripRise, "bar-rise", 10}, {gripSweep, "bar-sweep", 10}}

// plus returns the record with more in one place.
func (n numbers) plus(key string, more float64) numbers { return n.with(numbers{key: n[key] + more}) }

// partsRecord is a cockpit of which everything was measured, with a saddle.
var partsRecord = numbers{"reach": 451, "stack": 617, "head-angle": 64.7, "headset-height": 11, "spacers": 17,
	"stem-clamp-height": 38,
	"stem-length":       47, "stem-angle": -4, "bar-rise": 27, "bar-sweep": 36, "bar-roll": 3, "seat-angle": 76.2,
	"saddle-height": 721}

func TestGripNumbers(t *testing.T) {
	const source = "plane geometry with turned complex numbers (grip_cases_test.go)"
	measured := partsRecord.with(numbers{"saddle-setback": 158, "seat-tube-angle": 71.3, "seat-angle-height": 652})
	want := gripByHand(measured)
	var cells []tableCell
	k := calctest.Case{Typed: measured.typed(), Source: source}
	for o, x := range want {
		k.Want = append(k.Want, calctest.Is(o, x, 1e-9))
	}
	for row, s := range gripStepsByHand {
		cells = append(cells, tableCell{"steps", row, "forward", want[s.step.ahead], measure.Mm},
			tableCell{"steps", row, "up", want[s.step.up], measure.Mm},
			tableCell{"steps", row, "saddle-to-grip", want[s.step.fromSaddle], measure.Mm})
	}
	// No saddle, no seat line: what rests on them is left out.
	bare := calctest.Case{Typed: "reach=451 stack=617 head-angle=64.7 spacers=17 stem-length=47 bar-rise=27",
		Source: source,
		Want: []calctest.Want{calctest.None(gripFromSaddle), calctest.None(gripDrop), calctest.None(roomAtBar),
			calctest.None(gripSpacer.fromSaddle)}}
	// The published cockpit (rows cockpit.grip and cockpit.eff_tt_at_bar_height of the
	// frame's check values): at the bar, 678.320 mm up, the axis has lost 48.320·cot 65°
	// of 475 mm, and the seat line is 678.320·cot 77° behind.
	published := calctest.Case{Source: "testdata/published/checks-frame.json",
		Typed: "reach=475 stack=630 head-angle=65 seat-angle=77 headset-height=5 spacers=5 stem-clamp-height=40 " +
			"stem-length=50 stem-angle=0 bar-rise=20 bar-sweep=35 bar-roll=5",
		Want: []calctest.Want{calctest.Is(gripX, 474.513142, 1e-6), calctest.Is(gripY, 701.294492, 1e-6),
			calctest.Is(reachAtBar, 475-48.320147/2.144506921, 1e-5),
			calctest.Is(roomAtBar, 475-48.320147/2.144506921+678.320147/4.331475874, 1e-5)}}
	cases(t, Grip(), k, cells, bare, published)
}

func TestGripUncertainty(t *testing.T) {
	sd := numbers{"reach": 2, "stack": 1.7, "head-angle": 0.3, "headset-height": 0.6, "spacers": 0.4,
		"stem-clamp-height": 0.7, "stem-length": 0.9,
		"stem-angle": 1.1, "bar-rise": 1.9, "bar-sweep": 2.3, "bar-roll": 0.8, "seat-angle": 0.35,
		"saddle-height": 3.1}
	propagates(t, Grip(), partsRecord.with(numbers{"seat-tube-angle": 71.3, "seat-angle-height": 652}), "",
		sd.with(numbers{"seat-tube-angle": 0.45}), gripByHand)
	least := numbers{"reach": 479, "stack": 634, "head-angle": 63.8, "spacers": 12, "stem-length": 42, "bar-rise": 34,
		"seat-angle": 77.7, "saddle-height": 748}
	propagates(t, Grip(), least, "", partsSD.with(numbers{"reach": 2, "stem-length": 1, "bar-rise": 2}), gripByHand)
	// A sweep in degrees: 20 mm of doubt where it starts are 20·sin 9° of doubt behind.
	doubt := partsSD.with(numbers{"back-sweep": 0.6, "bar-sweep~": 20 * math.Sin(9*math.Pi/180)})
	place := func(n numbers) map[*calculators.Output]float64 {
		_, at := clampAndGrip(n)
		return map[*calculators.Output]float64{gripX: real(at), gripY: imag(at)}
	}
	swept := least.with(numbers{"back-sweep": 9})
	propagates(t, Grip(), swept, "", doubt, place)
	propagates(t, Grip(), swept.with(numbers{"bar-width": 764, "grip-length": 126}), "",
		doubt.with(numbers{"bar-width": 3}), place)
}
