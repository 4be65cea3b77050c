package drawing

import (
	"testing"

	"plumbline/calculators/words"
)

// busy is a figure of about a hundred marks and ten labels that leaves no label
// a place without a line: the worst case.
func busy() *Figure {
	f := figure()
	for i := range 18 {
		x := float64(i) * 60
		f.Add(
			Line{Role: Ink, Points: []Point{{x, 0}, {x + 40, 300}, {x + 90, 280}}},
			Limb{Role: Body, Fill: Hatch, A: Point{x, 400}, B: Point{x + 100, 700}, Ra: 60, Rb: 40},
			Tube{Role: Ink, Fill: Sheet, A: Point{x, 100}, B: Point{x + 300, 400}, Ra: 20, Rb: 20},
			Cross{Role: Body, At: Point{x, 400}},
			Line{Role: Body, Smooth: true, Closed: true, Points: []Point{{x, 0}, {x + 80, 60}, {x + 120, 200},
				{x + 60, 260}, {x, 180}}},
		)
	}
	f.Add(Wheel{Role: Ink, Centre: Point{200, 300}, Tyre: 372, Rim: 311}, Wheel{Role: Ink, Centre: Point{1400,
		300}, Tyre: 372, Rim: 311})
	for i := range 5 {
		x := float64(i) * 250
		f.Add(
			Dimension{Role: Hot, A: Point{x, 0}, B: Point{x + 100, 600}, Offset: 150, Text: words.Of("640 ± 12 mm")},
			Label{Role: Ink, At: Point{x + 50, 350}, Text: words.Of("a place"), Leader: i%2 == 0},
		)
	}
	return f
}

func BenchmarkCrowded(b *testing.B) {
	f := busy()
	b.ReportAllocs()
	b.ReportMetric(float64(len(f.Marks)), "marks")
	for b.Loop() {
		f.SVG("x", nil, 530)
	}
}
