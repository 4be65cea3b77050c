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
		p.prose("      ", in.How)
	}
	fmt.Fprintf(s.out, "\nAnswers\n\n")
	for _, m := range c.Answers {
		p.prose("  ", m.Name+": "+m.Label+", "+m.Between+".")
	}
	fmt.Fprintf(s.out, "\nWorked example\n\n  plumbline calc %s%s\n", c.Name, exampleArguments(c))
	return nil
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
			keys = append(keys, c.Key+" ("+c.Label+")")
		}
		return "One of " + strings.Join(keys, ", ") + "."
	case measure.List:
		var keys []string
		for _, c := range in.Columns {
			keys = append(keys, c.Key)
		}
		return "A table with the columns name, " + strings.Join(keys, ", ") + "; from a file with @."
	}
	t := words.Of("Usually {0} to {1}, at most {2} to {3}; usual repeat error ± {4} (one standard deviation).",
		in.Amount(in.Low), in.Amount(in.High), in.Amount(in.Least), in.Amount(in.Most),
		measure.Amount{Value: in.Repeat, Unit: in.Unit, Extra: 1})
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
			b.WriteString(" " + in.Key + "=@" + in.Key + ".csv")
			continue
		}
		b.WriteString(" " + in.Key + "=" + in.Example)
	}
	return b.String()
}
