package main

import (
	"fmt"
	"os"
	"slices"
	"strings"

	"plumbline/calculators"
	"plumbline/calculators/catalog"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
	"plumbline/site/told"
)

// calc is "plumbline calc".
type calc struct {
	Name   string   `arg:"" optional:"" help:"${calc_name}"`
	Values []string `arg:"" optional:"" placeholder:"key=value" help:"${calc_values}"`
	JSON   bool     `help:"${calc_json}"`
	Units  string   `enum:"mm,cm,in" default:"mm" help:"${calc_units}"`
}

// Run answers one calculator, or lists them.
func (c *calc) Run(s streams) error {
	reader := s.reading(c.Units)
	if c.Name == "" {
		list(s, reader)
		return nil
	}
	calculator, err := named(c.Name)
	if err != nil {
		return err
	}
	pairs, problems := c.pairs(calculator)
	if problems != nil {
		return c.fail(s, problems, statusUsage, reader)
	}
	result, problems := calculator.Run(pairs, nil)
	if problems != nil {
		return c.fail(s, problems, failedStatus(problems), reader)
	}
	if c.JSON {
		return writeJSON(s.out, result.Complete())
	}
	report{s.out, reader}.result(calculator, result)
	return nil
}

// named finds a calculator, or says which name was meant.
func named(name string) (*calculators.Calculator, error) {
	if c := catalog.Named(name); c != nil {
		return c, nil
	}
	var names []string
	for _, c := range catalog.All() {
		names = append(names, c.Name)
	}
	if near := measure.NearestName(name, names); near != "" {
		return nil, refusal{statusUsage, told.Of("there is no calculator “{0}”. Did you mean {1}?", name, near)}
	}
	return nil, refusal{statusUsage, told.Of("there is no calculator “{0}”. The calculators are {1}.", name,
		strings.Join(names, ", "))}
}

// pairs splits the arguments into keys and what was typed for them. A key that the
// calculator does not have is a problem here, because somebody typed it for this
// calculator; in a measurement record it may belong to another one.
func (c *calc) pairs(calculator *calculators.Calculator) (pairs []calculators.Pair, problems []calculators.Problem) {
	var keys []string
	for _, in := range calculator.Inputs {
		keys = append(keys, in.Key)
	}
	for _, v := range c.Values {
		key, typed, ok := strings.Cut(v, "=")
		key = strings.TrimSpace(key)
		at := slices.Index(keys, key)
		switch {
		case !ok:
			problems = append(problems, calculators.Problem{Text: words.Of("“{0}” is not of the form key=value.",
				measure.Quoted(v))})
		case at < 0:
			problems = append(problems, calculators.Problem{Input: key, Text: unknown(calculator.Name, key, keys)})
		default:
			typed, why := fromFile(&calculator.Inputs[at], typed)
			if !why.None() {
				problems = append(problems, calculators.Problem{Input: key, Text: why})
			}
			pairs = append(pairs, calculators.Pair{Key: key, Typed: typed})
		}
	}
	return pairs, problems
}

func unknown(name, key string, keys []string) words.Text {
	if near := measure.NearestName(key, keys); near != "" {
		return words.Of("{0} has no input “{1}”. Did you mean {2}?", words.Name(name), measure.Quoted(key),
			words.Name(near))
	}
	return words.Of("{0} has no input “{1}”. Its inputs are {2}.", words.Name(name), measure.Quoted(key),
		words.Name(strings.Join(keys, ", ")))
}

// fromFile reads a list input given as @file.
func fromFile(in *calculators.Input, typed string) (string, words.Text) {
	file, ok := strings.CutPrefix(typed, "@")
	if !ok || in.Is() != measure.List {
		return typed, words.Text{}
	}
	b, err := os.ReadFile(file)
	if err != nil {
		return "", words.Of("The file cannot be read: {0}", words.Name(err.Error()))
	}
	return string(b), words.Text{}
}

// failedStatus is the exit status of a failed run: statusUsage when some problem
// belongs to an input, statusNo when the computation itself failed.
func failedStatus(problems []calculators.Problem) int {
	for _, p := range problems {
		if p.Input != "" {
			return statusUsage
		}
	}
	return statusNo
}

// fail prints every problem at once and answers with the status.
func (c *calc) fail(s streams, problems []calculators.Problem, status int, r *words.Reader) error {
	if c.JSON {
		if err := writeJSON(s.out, map[string]any{"errors": problems}); err != nil {
			return err
		}
		return refusal{status: status}
	}
	var b strings.Builder
	for _, p := range problems {
		if b.Len() > 0 {
			b.WriteString("\nplumbline: ")
		}
		if p.Input != "" {
			b.WriteString(p.Input + ": ")
		}
		b.WriteString(p.Text.Say(r))
	}
	b.WriteString("\n" + say(r, "See {0}.", name("plumbline calc "+c.Name+" --help")))
	return refusal{status, told.Of("{0}", b.String())}
}

// sectionNames head the list of calculators.
var sectionNames = map[calculators.Section]words.English{"start": "Start here", "frame": "Frame", "feet": "Feet",
	"saddle": "Saddle", "cockpit": "Cockpit", "finish": "Finish"}

// list prints every calculator with its question.
func list(s streams, r *words.Reader) {
	section := calculators.Section("")
	for _, c := range catalog.All() {
		if c.Section != section {
			section = c.Section
			fmt.Fprintln(s.out, sectionNames[section].Say(r))
		}
		fmt.Fprintf(s.out, "  %-22s %s\n", c.Name, c.Question.Say(r))
	}
	fmt.Fprintln(s.out, "\n"+say(r, "{0} explains a calculator’s inputs and how to measure them.",
		name("plumbline calc NAME --help")))
}
