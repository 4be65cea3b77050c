package frame

import (
	"fmt"
	"strings"
	"testing"

	"plumbline/calculators"
	"plumbline/calculators/calctest"
	"plumbline/calculators/panel"
)

// BenchmarkFrame runs every calculator of the section, uncertainty and figure included,
// on its example and on the inputs that ask most of it.
func BenchmarkFrame(b *testing.B) {
	for _, c := range []struct {
		name  string
		of    *calculators.Calculator
		typed string // beyond the example
	}{
		{"geometry", Geometry(), ""}, {"geometry/contradiction", Geometry(), contradiction},
		{"sag", Sag(), ""}, {"change", ChangeOfParts(), ""}, {"change/all", ChangeOfParts(), allChanged},
		{"climb", Climb(), ""}, {"climb/all", Climb(), climbTyped(33)},
		{"size", Size(), ""}, {"size/all", Size(), typedOf(sizeKeys, sizeX, sizeSD)}, {"size/twelve", Size(),
			twelveSizes()},
	} {
		typed := append(panel.Example(c.of), calctest.Pairs(c.typed)...)
		b.Run(c.name, func(b *testing.B) {
			for b.Loop() {
				c.of.Run(typed, nil)
			}
		})
	}
}

// twelveSizes is the longest table that is read: the example's lines over and over.
func twelveSizes() string {
	rows := strings.Split(demoSizes, "\n")
	table := "sizes=" + rows[0]
	for i := range 12 {
		table += "|" + strings.Replace(rows[1+i%5], ",", fmt.Sprintf("%d,", i), 1)
	}
	return table
}
