// Package catalog is the one list of all calculators and standing figures, in
// guide order.
package catalog

import (
	"slices"

	"plumbline/calculators"
	"plumbline/calculators/cockpit"
	"plumbline/calculators/feet"
	"plumbline/calculators/finish"
	"plumbline/calculators/frame"
	"plumbline/calculators/saddle"
	"plumbline/calculators/start"
)

// section is what one package has. Each lists its own, so that the engine of one section
// links nothing of the others.
type section struct {
	name        string
	calculators []*calculators.Calculator
	figures     []*calculators.Illustration
}

var sections = []section{
	{"start", start.Calculators(), start.Figures()},
	{"frame", frame.Calculators(), frame.Figures()},
	{"feet", feet.Calculators(), feet.Figures()},
	{"saddle", saddle.Calculators(), saddle.Figures()},
	{"cockpit", cockpit.Calculators(), cockpit.Figures()},
	{"finish", finish.Calculators(), nil},
}

var all, figures = listed()

func listed() (all []*calculators.Calculator, figures []*calculators.Illustration) {
	for _, s := range sections {
		all, figures = append(all, s.calculators...), append(figures, s.figures...)
	}
	return all, figures
}

// Sections lists the packages that have calculators, in guide order.
func Sections() (names []string) {
	for _, s := range sections {
		names = append(names, s.name)
	}
	return names
}

// Section names the package that has the named calculator, "" if none has.
func Section(name string) string {
	for _, s := range sections {
		for _, c := range s.calculators {
			if c.Name == name {
				return s.name
			}
		}
	}
	return ""
}

// All returns the calculators in guide order.
func All() []*calculators.Calculator { return all }

// Figures returns the standing figures in guide order: those that are drawn anew for a
// reader.
func Figures() []*calculators.Illustration { return figures }

// Pictures returns those and the pictures that no number of a reader changes. The
// engine does not call it, so that the linker leaves those out.
func Pictures() []*calculators.Illustration {
	return slices.Concat(figures, start.Stills(), frame.Stills(), feet.Stills(), saddle.Stills(), cockpit.Stills(),
		finish.Stills())
}

// Named returns the calculator of that name, or nil.
func Named(name string) *calculators.Calculator {
	for _, c := range all {
		if c.Name == name {
			return c
		}
	}
	return nil
}
