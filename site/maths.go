package site

import (
	"slices"

	"plumbline/calculators"
	"plumbline/calculators/catalog"
	"plumbline/calculators/caution"
	"plumbline/calculators/drawing"
	"plumbline/calculators/panel"
	"plumbline/calculators/words"
)

// shelf is the calculators and figures that a page's blocks may name. The generator
// uses it instead of the catalog, so that a test can publish a guide with a
// calculator of its own.
type shelf struct {
	calculators []*calculators.Calculator
	standing    []*calculators.Illustration

	own []calculators.Pair // the numbers of whom figures are drawn for, in base units; nil for the example's
}

// everything is the whole catalog.
func everything() *shelf { return &shelf{calculators: catalog.All(), standing: catalog.Pictures()} }

func (s *shelf) calculator(name string) *calculators.Calculator {
	for _, c := range s.calculators {
		if c.Name == name {
			return c
		}
	}
	return nil
}

func (s *shelf) calculatorNames() (names []string) {
	for _, c := range s.calculators {
		names = append(names, c.Name)
	}
	return names
}

func (s *shelf) figureNames() (names []string) {
	for _, f := range s.standing {
		names = append(names, f.Name)
	}
	return append(names, s.calculatorNames()...)
}

// drawnNames are the figureNames that can be drawn: a calculator may have no figure.
func (s *shelf) drawnNames(in *words.Reader) []string {
	return slices.DeleteFunc(s.figureNames(), func(name string) bool { return s.figure(name, in) == nil })
}

// figure draws a standing figure, or a calculator's figure at its worked
// example; nil where there is none of that name, or it has no figure. A shelf with
// numbers of its own draws for those where it can.
func (s *shelf) figure(name string, in *words.Reader) *drawing.Figure {
	for _, f := range s.standing {
		if f.Name == name {
			return f.Figure(s.own, base(in))
		}
	}
	if c := s.calculator(name); c != nil {
		if s.own != nil {
			if r, problems := c.Run(s.own, base(in)); problems == nil {
				return r.Figure
			}
		}
		// The worked example is in base units, whatever units are shown.
		if r, problems := c.Run(panel.Example(c), base(in)); problems == nil {
			return r.Figure
		}
	}
	return nil
}

// base is a copy of in without units, for values that are given in base units.
func base(in *words.Reader) *words.Reader {
	if in == nil {
		return nil
	}
	b := *in
	b.Units = ""
	return &b
}

func (s *shelf) bench(b *block, level int, in *words.Reader) string {
	return panel.Bench(s.calculator(b.name), b.place, level, in)
}

// moving returns the figure of that name if it moves, else nil.
func (s *shelf) moving(name string) *calculators.Illustration {
	for _, f := range s.standing {
		if f.Name == name && f.Motion != nil {
			return f
		}
	}
	return nil
}

func moving(s *calculators.Illustration, id string, in *words.Reader) string {
	return panel.Moving(s.Motion, s.Figure(nil, in), words.Text{}, id, in, drawing.Anywhere)
}

func drawn(f *drawing.Figure, id string, in *words.Reader, width float64) string {
	return panel.Figure(f, id, in, width)
}

func warned(c *caution.Caution, in *words.Reader) string { return panel.Caution(c, in) }
