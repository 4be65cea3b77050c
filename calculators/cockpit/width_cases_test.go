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
		n = n.complete(numbers{"grip-length": 130, "shoulder-width": shoulders, "arm-length": arm})
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
		want[reachLost] = ahead(want[barWidth]) - ahead(want[barWidth]+20)
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
		// How much reach there is against the start, from what each step takes.
		reach := 0.0
		for from := math.Min(bar, 731); from < math.Max(bar, 731); from += 20 {
			reach -= widthByHand("f")(widthRecord.with(numbers{"push-up-width": from}))[reachLost]
		}
		if bar < 731 {
			reach = -reach
		}
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
		"grip-length": 2}
	propagates(t, Width(), widthRecord, "sex=m", sd, widthByHand("m"))
	for _, sex := range []string{"", "f"} {
		byStature := bodySD(sex, numbers{"stature": 1809, "inseam": 871})
		delete(byStature, "trunk-length~")
		delete(byStature, "trochanter-height~")
		choice := map[string]string{"f": "sex=f"}[sex]
		propagates(t, Width(), numbers{"stature": 1809}, choice,
			byStature.with(numbers{"stature": 5, "grip-length~": 8}), widthByHand(sex))
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
				"arm-length~": spreadOf("acromionradialelength") + spreadOf("forearmcenterofgriplength")},
			widthByHand(sex))
	}
}
