package site

import (
	"bytes"
	"fmt"
	"regexp"
	"slices"
	"strconv"
	"strings"
)

// wayView is where a page stands on the newcomer's way through the guide.
type wayView struct {
	Steps []stepView
	Step  int       // which of them this page is, from 1; 0 for none
	Next  *stepView // nil on the last step, and off the way
	Time  string    // what the whole way takes at the bench: “about 4 hours”
	Rides string    // how many rides lie between its changes, as a word; "" for none
}

// stepView is one step of the way, seen from a page.
type stepView struct {
	entryView
	Number int
	Time   string // as the chapter says it
	Here   bool
	Done   bool // it lies before this page
}

// way returns where a page stands. Its number is the same wherever the way is shown.
func (g *Guide) way(url string) wayView {
	var w wayView
	var total spent
	for i, p := range g.path {
		s := stepView{entryView: entry1(url, p), Number: i + 1, Time: g.stepTime(p), Here: p.URL == url}
		if s.Here {
			w.Step = i + 1
		}
		w.Steps = append(w.Steps, s)
		t, _ := readTime(s.Time)
		total.minutes += t.minutes
		total.rides += t.rides
	}
	for i := range w.Steps {
		w.Steps[i].Done = i+1 < w.Step
	}
	if w.Step > 0 && w.Step < len(w.Steps) {
		w.Next = &w.Steps[w.Step]
	}
	w.Time = hours(total.minutes)
	if total.rides > 0 {
		w.Rides = counted(total.rides)
	}
	return w
}

// stepTime says what a step takes: a step that measures, only what the later ones need.
func (g *Guide) stepTime(p *guidePage) string {
	if list := g.neededLater(p); len(list) > 0 {
		return strconv.Itoa(minutesOf(list)) + " minutes"
	}
	return p.Time
}

// onward writes what stands directly under a page's answer: the way to do what it
// says, and on a step what comes next.
func (g *Guide) onward(p *guidePage) (string, error) {
	w := g.way(p.URL)
	if w.Step == 0 {
		return g.button(p), nil
	}
	var b bytes.Buffer
	b.WriteString(g.button(p))
	if err := layouts()["chapter"].ExecuteTemplate(&b, "onward", w); err != nil {
		return "", fmt.Errorf("%s: %w", p.file, err)
	}
	return b.String(), nil
}

// answersAt is the block under which a page says what comes next: its first
// calculator, or the block that fills the page; nil for none.
func (p *guidePage) answersAt() *block {
	i := slices.IndexFunc(p.blocks, func(b *block) bool { return b.kind == calculatorBlock || nameless(b.kind) })
	if i < 0 {
		return nil
	}
	return p.blocks[i]
}

// spent is what a chapter takes: minutes with tape and tools, and rides afterwards.
type spent struct{ minutes, rides int }

// timeForm is how a chapter's time is written: “30 minutes, then two or three rides”.
// Words between the two, such as “to measure”, may stand there.
var timeForm = regexp.MustCompile(`^(\d+) minutes\b(?:.*?\bthen (\w+)\b(?: (?:or|to) \w+)? rides?\b)?`)

// numerals are the numbers that a text spells out.
var numerals = []string{"no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten",
	"eleven", "twelve"}

// readTime reads a chapter's time; of “two or three rides” the smaller number counts.
// It tells whether the text says any time at all.
func readTime(text string) (spent, bool) {
	m := timeForm.FindStringSubmatch(text)
	if m == nil {
		// How a setting is ridden is told in rides alone, which its own chapter counts.
		return spent{}, strings.Contains(text, " rides")
	}
	minutes, err := strconv.Atoi(m[1])
	return spent{minutes, max(slices.Index(numerals, m[2]), 0)}, err == nil
}

// hours says minutes to the nearest half hour, as a person would.
func hours(minutes int) string {
	if minutes < 50 {
		return strconv.Itoa(minutes) + " minutes"
	}
	halves := (minutes + 15) / 30
	switch {
	case halves == 2:
		return "about an hour"
	case halves%2 == 1:
		return "about " + strconv.Itoa(halves/2) + "½ hours"
	}
	return "about " + strconv.Itoa(halves/2) + " hours"
}

// counted spells a small number out.
func counted(n int) string {
	if n < len(numerals) {
		return numerals[n]
	}
	return strconv.Itoa(n)
}
