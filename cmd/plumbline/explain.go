package main

import (
	"fmt"
	"strings"

	"plumbline/calculators"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// explain prints a calculator's inputs with their ranges and how to take them.
func explain(s streams, name string) error {
	c, err := named(name)
	if err != nil {
		return err
	}
	p := report{w: s.out}
	fmt.Fprintf(s.out, "plumbline calc %s key=value… [--json] [--units mm|cm|in]\n\n%s\n\nInputs\n", c.Name,
		c.Question)
	for _, in := range c.Inputs {
		fmt.Fprintf(s.out, "\n  %s  %s%s\n", in.Key, in.Label, needed(in))
		p.prose("      ", span(in))
		for _, line := range taking(in.Quantity) {
			p.prose("      ", line)
		}
	}
	fmt.Fprintf(s.out, "\nAnswers\n\n")
	for _, m := range c.Answers {
		p.prose("  ", m.Name+": "+string(m.Label)+", "+string(m.Between)+".")
	}
	fmt.Fprintf(s.out, "\nWorked example\n\n  plumbline calc %s%s\n", c.Name, exampleArguments(c))
	return nil
}

// taking tells how q is taken, a paragraph each: what to do, what goes wrong, who and
// what is needed.
func taking(q *measure.Quantity) (lines []string) {
	lines = append(lines, strings.TrimSpace(string(q.How.Text+" "+q.How.Why)))
	if q.How.Slip != "" {
		lines = append(lines, "What goes wrong: "+string(q.How.Slip))
	}
	if q.How.Taken() {
		lines = append(lines, q.How.Needs().Say(nil))
	}
	return lines
}

// needed tells what happens when the input is left out.
func needed(in calculators.Input) string {
	switch {
	case in.Assume != nil:
		return " (assumed when left out)"
	case in.Optional:
		return " (optional)"
	}
	return " (needed)"
}

// span tells what may be typed.
func span(in calculators.Input) string {
	switch in.Is() {
	case measure.Pick:
		var keys []string
		for _, c := range in.Choices {
			keys = append(keys, c.Key+" ("+string(c.Label)+")")
		}
		return "One of " + strings.Join(keys, ", ") + "."
	case measure.List:
		var keys []string
		for _, c := range in.Columns {
			keys = append(keys, c.Key)
		}
		return "A table with the columns name, " + strings.Join(keys, ", ") + "; from a file with @."
	}
	t := words.Of("Usually {0} to {1}, at most {2} to {3}; most people repeat it to within {4}.",
		in.Amount(in.Low), in.Amount(in.High), in.Amount(in.Least), in.Amount(in.Most),
		in.Amount(in.Within()))
	if in.Repeat == 0 {
		t = words.Of("Usually {0} to {1}, at most {2} to {3}.", in.Amount(in.Low), in.Amount(in.High),
			in.Amount(in.Least), in.Amount(in.Most))
	}
	return t.Say(nil)
}

// exampleArguments is the worked example as arguments for a shell.
func exampleArguments(c *calculators.Calculator) string {
	var b strings.Builder
	for _, in := range c.Inputs {
		if in.Example == "" {
			continue
		}
		if in.Is() == measure.List {
			// The table itself, so that the example runs in any folder: a shell keeps the
			// line ends inside the quotes.
			b.WriteString(" '" + in.Key + "=" + in.Example + "'")
			continue
		}
		b.WriteString(" " + in.Key + "=" + in.Example)
	}
	return b.String()
}
