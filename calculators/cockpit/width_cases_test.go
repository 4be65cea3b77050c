package cockpit

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"

	"plumbline/calculators"
	"plumbline/calculators/calctest"
	"plumbline/calculators/measure"
)

// widthRecord is a rider with a bar that is too wide for the press-ups.
var widthRecord = numbers{"push-up-width": 731, "bar-width": 788, "stature": 1713, "shoulder-width": 383,
	"arm-length": 652, "grip-length": 126}

// widthByHand solves the right-angled triangle of arm, hand and shoulder joint from
// above. The joints are 0.88 of the shoulders' breadth apart (from memory); the hand is
// in the middle of the grip; 11 degrees of spread are common practice.
func widthByHand(sex string) func(numbers) map[*calculators.Output]float64 {
	return func(n numbers) map[*calculators.Output]float64 {
		shoulders, arm := widthBody(n, sex)
		n = n.complete(numbers{"grip-length": 130, "shoulder-width": shoulders, "arm-length": arm,
			"back-sweep": 8, "head-angle": 65.5})
		spread := func(bar float64) float64 { // each hand is this far outside its shoulder joint
			aside := (bar - n["grip-length"] - 0.88*n["shoulder-width"]) / 2
			return root(-89, 89, func(angle float64) float64 {
				return imag(scaled(n["arm-length"],
					toward(angle))) - aside
			})
		}
		ahead := func(bar float64) float64 { return real(scaled(n["arm-length"], toward(spread(bar)))) }
		usual := root(200, 1500, func(bar float64) float64 { return spread(bar) - 11 })
		want := map[*calculators.Output]float64{byShoulders: usual, barWidth: usual, byPressUp: math.NaN(),
			spreadNow: math.NaN()}
		if press, ok := n["push-up-width"]; ok {
			want[barWidth], want[byPressUp] = press, press
		}
		want[armSpread] = spread(want[barWidth])
		want[armsLose] = ahead(want[barWidth]) - ahead(want[barWidth]+40)
		// Each end of the wider bar goes 20 mm out, and back along the line of its sweep.
		want[sweepGives] = imag(scaled(20/real(toward(n["back-sweep"])), toward(n["back-sweep"])))
		want[reachLost] = want[armsLose] - want[sweepGives]
		// A stem is square to the steering axis.
		want[stemMoves] = real(scaled(10, toward(90-n["head-angle"])))
		if bar, ok := n["bar-width"]; ok {
			want[spreadNow] = spread(bar)
		}
		return want
	}
}

// widthBody returns shoulders and arm by the survey: at the stature, or the average of
// a sex.
func widthBody(n numbers, sex string) (shoulders, arm float64) {
	of := func(variable string) float64 {
		if stature, ok := n["stature"]; ok {
			x, _ := surveyed(variable, sex, stature)
			return x
		}
		return bySex(sex, func(s string) float64 { return survey[variable+" "+s]["mean"] })
	}
	return of("biacromialbreadth"), of("acromionradialelength") + of("forearmcenterofgriplength")
}

func TestWidthNumbers(t *testing.T) {
	want := widthByHand("f")(widthRecord)
	var cells []tableCell
	k := calctest.Case{Typed: "sex=f bar-limit=742 bar-straight=214 controls-width=57 tree-gap=810 " +
		widthRecord.typed(), Source: "a right-angled triangle, solved by root finding (width_cases_test.go)"}
	for o, x := range want {
		k.Want = append(k.Want, calctest.Is(o, x, 1e-9))
	}
	for row, bar := range []float64{671, 691, 711, 731, 751, 771, 791} {
		at := widthByHand("f")(widthRecord.with(numbers{"push-up-width": bar}))
		// How much reach there is against the start: the triangle's other side, and the
		// sweep that half the width brings back.
		ahead := func(width float64) float64 {
			aside := (width - 126 - 0.88*383) / 2
			return math.Sqrt(652*652-aside*aside) + width/2*math.Tan(8*math.Pi/180)
		}
		reach := ahead(bar) - ahead(731)
		cells = append(cells, tableCell{"widths", row, "width", bar, measure.Mm},
			tableCell{"widths", row, "spread", at[armSpread], measure.Deg},
			tableCell{"widths", row, "reach", reach, measure.Mm})
	}
	cells = append(cells, tableCell{"methods", 0, "width", 731, measure.Mm},
		tableCell{"methods", 1, "width", want[byShoulders], measure.Mm})
	// 788 less 10 for each step, down to 731 − 20 = 711 and not below it.
	for row, in := range []float64{5, 10, 15, 20, 25, 30, 35} {
		cells = append(cells, tableCell{"trim", row, "in", in, measure.Mm},
			tableCell{"trim", row, "width", 788 - 2*in, measure.Mm})
	}
	cases(t, Width(), k, cells)
	r := calctest.Answer(t, Width(), k.Typed)
	assert.Equal(t, []string{"5\u00a0mm", "10\u00a0mm", "15\u00a0mm", "20\u00a0mm", "25\u00a0mm", "30\u00a0mm",
		"35\u00a0mm"}, calctest.Column(t, r, "trim", "in"))
	// 214 of straight bar hold 126 of grip and 57 of controls with 31 to spare; 742 is
	// the maker's least.
	assert.Equal(t, []string{"two rides, then go on or go back", "two rides, then go on or go back",
		"two rides, then go on or go back",
		"two rides, then go on or go back", "may be tested, but not cut: the maker’s least is 742\u00a0mm",
		"may be tested, but not cut: the maker’s least is 742\u00a0mm",
		"the controls reach 4\u00a0mm into the bend: the test ends before this"},
		calctest.Column(t, r, "trim", "mark"))
	assert.Equal(t, 4, r.Tables[0].Starred, "the start is the middle row")
}

func TestWidthUncertainty(t *testing.T) {
	sd := numbers{"push-up-width": 9, "bar-width": 1, "stature": 5, "shoulder-width": 6, "arm-length": 7,
		"grip-length": 2, "back-sweep~": 1, "head-angle~": 1}
	propagates(t, Width(), widthRecord, "sex=m", sd, widthByHand("m"))
	for _, sex := range []string{"", "f"} {
		byStature := bodySD(sex, numbers{"stature": 1809, "inseam": 871})
		delete(byStature, "trunk-length~")
		delete(byStature, "trochanter-height~")
		choice := map[string]string{"f": "sex=f"}[sex]
		propagates(t, Width(), numbers{"stature": 1809}, choice,
			byStature.with(numbers{"stature": 5, "grip-length~": 8, "back-sweep~": 1,
				"head-angle~": 1}), widthByHand(sex))
		// Without a stature it is the whole sample's average with its spread.
		spreadOf := func(variable string) float64 {
			sd := math.Sqrt(bySex(sex, func(s string) float64 { x := survey[variable+" "+s]["sd"]; return x * x }))
			if sex == "" {
				sd = math.Hypot(sd, (survey[variable+" m"]["mean"]-survey[variable+" f"]["mean"])/2)
			}
			return sd
		}
		propagates(t, Width(), numbers{"bar-width": 764}, choice,
			numbers{"bar-width": 1, "grip-length~": 8, "shoulder-width~": spreadOf("biacromialbreadth"),
				"arm-length~": typicalArmSD(sex), "back-sweep~": 1, "head-angle~": 1},
			widthByHand(sex))
	}
}

// typicalArmSD is the spread of the arm in the whole sample. Both parts lie on a line on
// the stature, which they share, and beside it they are independent (JCGM 100:2008,
// 5.2.2).
func typicalArmSD(sex string) float64 {
	arm := func(s string) (mean, square float64) {
		slope := 0.0
		for _, part := range []string{"acromionradialelength", "forearmcenterofgriplength"} {
			row := survey[part+" "+s]
			mean, slope, square = mean+row["mean"], slope+row["reg_b"], square+row["resid_sd"]*row["resid_sd"]
		}
		return mean, square + math.Pow(slope*survey["stature "+s]["sd"], 2)
	}
	f, fsquare := arm("f")
	m, msquare := arm("m")
	switch sex {
	case "f":
		return math.Sqrt(fsquare)
	case "m":
		return math.Sqrt(msquare)
	}
	return math.Sqrt((fsquare+msquare)/2 + (m-f)*(m-f)/4)
}

// What forty millimetres more of bar do to the hands, by hand for arms of 620 and 700 mm
// on a bar of 780 with joints 334 mm apart (0.88 of 380) and grips of 130: each hand goes
// from 158 to 178 mm outside its joint.
//
//	√(620² − 158²) − √(620² − 178²) = 599.53 − 593.90 = 5.63
//	√(700² − 158²) − √(700² − 178²) = 681.94 − 676.99 = 4.95
//	20·tan 8° = 2.81
//	10·sin 65.5° = 9.10
func TestFortyMillimetresAreNoStem(t *testing.T) {
	for arm, lose := range map[string]float64{"620": 5.63, "700": 4.95} {
		r := calctest.Answer(t, Width(), "push-up-width=780 shoulder-width=380 grip-length=130 arm-length="+arm)
		assert.InDelta(t, lose, calctest.Value(r, armsLose), 0.02)
		assert.InDelta(t, 2.81, calctest.Value(r, sweepGives), 0.005)
		assert.InDelta(t, lose-2.81, calctest.Value(r, reachLost), 0.02)
		assert.InDelta(t, 9.10, calctest.Value(r, stemMoves), 0.005)
	}
}

// Nobody is sent to test a bar that is not sold: a tall man's arms ask for more than 820
// mm, a small woman's for less than 680.
func TestWidthsAreThoseThatAreSold(t *testing.T) {
	for _, typed := range []string{"stature=2050 sex=m", "stature=2050 sex=m push-up-width=900", "stature=1480 sex=f",
		"push-up-width=640", "push-up-width=690", "push-up-width=810"} {
		r := calctest.Answer(t, Width(), typed)
		x := r.At(barWidth)
		assert.GreaterOrEqual(t, float64(x.Low), 680.0, typed)
		assert.LessOrEqual(t, float64(x.High), 820.0, typed)
	}
	tall := calctest.Answer(t, Width(), "push-up-width=900")
	assert.Contains(t, meaning(tall, barWidth), "not sold that wide: 820 mm is about the widest")
	assert.Equal(t, "820\u00a0mm", calctest.Column(t, tall, "widths", "width")[3], "the table is about what can be "+
		"had")
	small := calctest.Answer(t, Width(), "push-up-width=640")
	assert.Contains(t, meaning(small, barWidth), "not sold that narrow: 680 mm")
}
