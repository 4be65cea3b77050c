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
		{"climb", Climb(), ""}, {"climb/all", Climb(), climbTyped(35)},
		{"size", Size(), ""}, {"size/all", Size(), typedOf(sizeKeys, sizeX, sizeSD)},
		{"size/forty", Size(), fortySizes()},
	} {
		typed := append(panel.Example(c.of), calctest.Pairs(c.typed)...)
		b.Run(c.name, func(b *testing.B) {
			for b.Loop() {
				c.of.Run(typed, nil)
			}
		})
	}
}

// fortySizes is the longest table that is read: the example's lines over and over.
func fortySizes() string {
	rows := strings.Split(demoSizes, "\n")
	table := "sizes=" + rows[0]
	for i := range 40 {
		table += "|" + strings.Replace(rows[1+i%5], ",", fmt.Sprintf("%d,", i), 1)
	}
	return table
}
