package main

import (
	"fmt"
	"strings"

	"plumbline/calculators"
	"plumbline/calculators/measure"
	"plumbline/calculators/words"
)

// explain prints a calculator's inputs with their ranges and how to take them.
func explain(s streams, called string) error {
	c, err := named(called)
	if err != nil {
		return err
	}
	r := s.reading("mm")
	p := report{s.out, r}
	fmt.Fprintf(
		s.out,
		"plumbline calc %s key=value… [--json] [--units mm|cm|in] [--language TAG]\n\n%s\n\n%s\n",
		c.Name,
		c.Question.Say(r),
		say(r, "Inputs"),
	)
	for _, in := range c.Inputs {
		fmt.Fprintf(s.out, "\n  %s  %s\n", in.Key, needed(in).Say(r))
		p.prose("      ", span(in).Say(r))
		for _, line := range taking(in.Quantity, r) {
			p.prose("      ", line)
		}
	}
	fmt.Fprintf(s.out, "\n%s\n\n", say(r, "Answers"))
	for _, m := range c.Answers {
		p.prose("  ", m.Name+": "+m.Label.Say(r)+", "+m.Between.Say(r)+".")
	}
	fmt.Fprintf(s.out, "\n%s\n\n  plumbline calc %s%s\n", say(r, "Worked example"), c.Name, exampleArguments(c))
	return nil
}

// taking tells how q is taken, a paragraph each: what to do, what goes wrong, who and
// what is needed.
func taking(q *measure.Quantity, r *words.Reader) (lines []string) {
	lines = append(lines, strings.TrimSpace(q.How.Text.Say(r)+" "+q.How.Why.Say(r)))
	if q.How.Slip != "" {
		lines = append(lines, say(r, "What goes wrong:")+" "+q.How.Slip.Say(r))
	}
	if q.How.Taken() {
		lines = append(lines, q.How.Needs().Say(r))
	}
	return lines
}

// needed names the input and tells what happens when it is left out.
func needed(in calculators.Input) words.Text {
	switch {
	case in.Assume != nil:
		return words.Of("{0} (assumed when left out)", in.Label)
	case in.Optional:
		return words.Of("{0} (optional)", in.Label)
	}
	return words.Of("{0} (needed)", in.Label)
}

// span tells what may be typed.
func span(in calculators.Input) words.Text {
	switch in.Is() {
	case measure.Pick:
		var keys words.List
		for _, c := range in.Choices {
			keys = append(keys, words.Of("{0} ({1})", name(c.Key), c.Label))
		}
		return words.Of("One of these: {0}.", keys)
	case measure.List:
		var keys []string
		for _, c := range in.Columns {
			keys = append(keys, c.Key)
		}
		return words.Of("A table with the columns {0}; from a file with @.", name("name, "+strings.Join(keys, ", ")))
	}
	t := words.Of("Usually {0} to {1}, at most {2} to {3}; most people repeat it to within {4}.",
		in.Amount(in.Low), in.Amount(in.High), in.Amount(in.Least), in.Amount(in.Most),
		in.Amount(in.Within()))
	if in.Repeat == 0 {
		t = words.Of("Usually {0} to {1}, at most {2} to {3}.", in.Amount(in.Low), in.Amount(in.High),
			in.Amount(in.Least), in.Amount(in.Most))
	}
	return t
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
