package site

import (
	"bytes"
	"fmt"
	"regexp"
	"slices"
	"strconv"
	"strings"

	"plumbline/calculators/words"
)

// wayView is where a page stands on the newcomer's way through the guide.
type wayView struct {
	teller
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
	w := wayView{teller: teller{g.reader}}
	var total spent
	for i, p := range g.path {
		said, t := g.stepTime(p)
		s := stepView{entryView: entry1(url, p), Number: i + 1, Time: said, Here: p.URL == url}
		if s.Here {
			w.Step = i + 1
		}
		w.Steps = append(w.Steps, s)
		total.minutes += t.minutes
		total.rides += t.rides
	}
	for i := range w.Steps {
		w.Steps[i].Done = i+1 < w.Step
	}
	if w.Step > 0 && w.Step < len(w.Steps) {
		w.Next = &w.Steps[w.Step]
	}
	w.Time = hours(total.minutes).Say(g.reader)
	if total.rides > 0 {
		w.Rides = spelled(total.rides, g.reader)
	}
	return w
}

// stepTime says what a step takes: a step that measures, only what the later ones need.
func (g *Guide) stepTime(p *guidePage) (said string, t spent) {
	if list := g.neededLater(p); len(list) > 0 {
		t.minutes = minutesOf(list)
		return words.Of("{0} minutes", digits(t.minutes)).Say(g.reader), t
	}
	t, _ = readTime(p.Clock, p.said)
	return p.Time, t
}

// digits is a number without decimals in a sentence.
func digits(n int) words.Name { return words.Name(strconv.Itoa(n)) }

// onward writes what stands directly under a page's answer: on a step, what comes next. The
// way to do what it says stands a heading below, at the list of acts. That a step is the
// last one is said at its page's end alone, because there the way ends.
func (g *Guide) onward(p *guidePage) (string, error) {
	w := g.way(p.URL)
	if w.Step == 0 || w.Next == nil {
		return "", nil
	}
	var b bytes.Buffer
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

// otherTime is the same in another language than English: “30 Minuten, dann zwei Fahrten”.
var otherTime = regexp.MustCompile(`^(\d+) (\pL+)[^,]*(?:,(.*))?$`)

// numerals are the numbers that a text spells out.
var numerals = []words.English{"no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten",
	"eleven", "twelve"}

// readTime reads a chapter's time in its language; of “two or three rides” the smaller number counts.
// It tells whether the text says any time at all.
func readTime(text string, t *tongue) (spent, bool) {
	m := timeForm.FindStringSubmatch(text)
	// How a setting is ridden is told in rides alone, which its own chapter counts.
	if m == nil && strings.Contains(text, " rides") {
		return spent{}, true
	}
	if m == nil && t != nil {
		return t.readTime(text)
	}
	if m == nil {
		return spent{}, false
	}
	minutes, err := strconv.Atoi(m[1])
	return spent{minutes, max(slices.Index(numerals, words.English(m[2])), 0)}, err == nil
}

// readTime reads the time of a chapter that is written in another language.
func (t *tongue) readTime(text string) (spent, bool) {
	m := otherTime.FindStringSubmatch(text)
	if m == nil || m[2] != words.English("minutes").Say(t.reader) {
		return spent{}, strings.Contains(text, " "+words.English("rides").Say(t.reader))
	}
	minutes, err := strconv.Atoi(m[1])
	for _, w := range strings.Fields(m[3]) {
		for n, numeral := range numerals {
			if w == numeral.Say(t.reader) {
				return spent{minutes, n}, err == nil
			}
		}
	}
	return spent{minutes: minutes}, err == nil
}

// hours says minutes to the nearest half hour, as a person would.
func hours(minutes int) words.Text {
	if minutes < 50 {
		return words.Of("{0} minutes", digits(minutes))
	}
	halves := (minutes + 15) / 30
	switch {
	case halves == 2:
		return words.Of("about an hour")
	case halves%2 == 1:
		return words.Of("about {0}½ hours", digits(halves/2))
	}
	return words.Of("about {0} hours", digits(halves/2))
}

// spelled spells a small number out.
func spelled(n int, r *words.Reader) string {
	if n < len(numerals) {
		return numerals[n].Say(r)
	}
	return strconv.Itoa(n)
}
