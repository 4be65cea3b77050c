package calculators_test

import (
	"math"
	"testing"

	"plumbline/calculators"
	"plumbline/calculators/catalog"
	"plumbline/calculators/panel"
)

// BenchmarkYardstick is plain arithmetic that never changes. What the others take in
// multiples of it can be compared between two runs, whatever else the machine was doing.
func BenchmarkYardstick(b *testing.B) {
	sum := 0.0
	for b.Loop() {
		for i := range 2000 {
			sum += math.Sqrt(float64(i)) * math.Sin(float64(i))
		}
	}
	if math.IsNaN(sum) {
		b.Fatal(sum)
	}
}

// BenchmarkRun runs every calculator on its worked example, uncertainty and
// drawing included (the figure as data; writing it is the panel's part).
func BenchmarkRun(b *testing.B) {
	for _, c := range catalog.All() {
		typed := panel.Example(c)
		b.Run(c.Name, func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				c.Run(typed, nil)
			}
		})
	}
}

// BenchmarkNumbers runs every calculator for its numbers alone: solved, and carried
// through with every input's uncertainty.
func BenchmarkNumbers(b *testing.B) {
	for _, c := range catalog.All() {
		typed := panel.Example(c)
		b.Run(c.Name, func(b *testing.B) {
			for b.Loop() {
				c.Numbers(typed, nil, calculators.Full)
			}
		})
	}
}
