package calculators_test

import (
	"testing"

	"plumbline/calculators"
	"plumbline/calculators/catalog"
	"plumbline/calculators/panel"
)

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
