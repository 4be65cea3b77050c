package site

import (
	"slices"
	"strings"

	"github.com/yuin/goldmark/ast"

	"plumbline/calculators/words"
	"plumbline/site/told"
)

// The headings by which a chapter that computes is ordered: the reader who stands
// in a garage comes first, the one who wants to know why comes after.
// They are known by their ids, which are the same in every language (language.go).
const (
	trailID = "check-it-on-the-trail"
	feelID  = "if-it-feels-wrong"
)

// actIDs are those of the headings of a chapter's acts. A chapter has one of them.
var actIDs = []string{"set-it", "choose-it", "try-it", "read-it", "decide"}

// isAct tells whether a heading is that of a chapter's acts.
func (h heading) isAct() bool { return h.level == 2 && slices.Contains(actIDs, h.id) }

// rank is the place of a section in a chapter: acts, trail, what to do if it feels
// wrong, the rest.
func (h heading) rank() int {
	switch {
	case h.isAct():
		return 1
	case h.id == trailID:
		return 2
	case h.id == feelID:
		return 3
	}
	return 4
}

// restAt is the id of the heading below which a chapter with acts has done with acts and
// the check on the trail; "" where it has no acts. A garage print ends above it.
func (p *guidePage) restAt() string {
	acts := slices.IndexFunc(p.headings, heading.isAct)
	if acts < 0 {
		return ""
	}
	for _, h := range p.headings[acts:] {
		if h.level == 2 && h.rank() > 2 {
			return h.id
		}
	}
	return ""
}

// needsAt is the id of the heading below which stands what a chapter takes: that of its
// acts, or the first one below what fills the page by itself; "" for the top.
func (p *guidePage) needsAt() string {
	filled := len(p.blocks) > 0 && p.blocks[0].kind == sheetBlock
	for _, h := range p.headings {
		if h.isAct() || filled && h.level == 2 && h.at > p.blocks[0].at {
			return h.id
		}
	}
	return ""
}

// checkOrder checks that a chapter that computes and has acts answers first: the
// calculator stands above all headings, then come the acts, as a numbered list, the
// check on the trail and what to do if it feels wrong, and only then everything else.
// A chapter whose sections are measurements, such as Measure yourself, has no acts and
// takes the order that serves it.
func (p *guidePage) checkOrder() (bad []Mistake) {
	acts := slices.IndexFunc(p.headings, heading.isAct)
	first := slices.IndexFunc(p.blocks, func(b *block) bool { return b.kind == calculatorBlock })
	if first < 0 {
		return nil
	}
	if acts < 0 {
		return p.checkActless(first)
	}
	if !oneSentence(p.Summary) {
		bad = append(
			bad,
			p.inHeader(
				"summary:",
				told.Of("the summary has more than one sentence, and the calculator comes right below it"),
				told.Of("keep what the reader gets out of the chapter, in one sentence"),
			),
		)
	}
	if b := p.blocks[first]; p.headings[0].at < b.at {
		bad = append(
			bad,
			p.mistake(
				b.at,
				told.Of("“{0}” stands above the calculator, and a chapter answers first", p.headings[0].text),
				told.Of("move this block to the top of the text, above all headings"),
			),
		)
	}
	before := heading{}
	for _, h := range p.headings {
		if h.level != 2 {
			continue
		}
		if h.rank() < before.rank() && before.text != "" {
			bad = append(
				bad,
				p.mistake(
					h.at,
					told.Of("“{0}” comes after “{1}”", h.text, before.text),
					told.Of(
						"put the sections in the order {0}, Check it on the trail, If it feels wrong, then the rest",
						p.headings[acts].text,
					),
				),
			)
		}
		before = h
	}
	if !p.lists(acts) {
		bad = append(bad, p.mistake(p.headings[acts].at, told.Of("“{0}” has no numbered list", p.headings[acts].text),
			told.Of("write what the reader does as 1., 2., 3.")))
	}
	return bad
}

// checkActless finds a chapter that tells what to do under no heading of its acts.
func (p *guidePage) checkActless(calculator int) (bad []Mistake) {
	for _, h := range p.headings {
		if h.id == trailID {
			bad = append(
				bad,
				p.mistake(
					h.at,
					told.Of("the chapter computes and has a section “{0}”, but none of its acts", h.text),
					told.Of("write ## Set it above it, with a numbered list"),
				),
			)
		}
	}
	return bad
}

// lists tells whether there is a numbered list under heading i, before the next of the
// second level.
func (p *guidePage) lists(i int) bool {
	end := len(p.text)
	for _, h := range p.headings[i+1:] {
		if h.level == 2 {
			end = h.at
			break
		}
	}
	found := false
	_ = ast.Walk(p.tree, func(n ast.Node, entering bool) (ast.WalkStatus, error) {
		if l, ok := n.(*ast.List); ok && entering && l.IsOrdered() {
			at := blockStart(l)
			if first := l.FirstChild(); at == 0 && first != nil && first.FirstChild() != nil {
				at = blockStart(first.FirstChild())
			}
			found = found || at > p.headings[i].at && at < end
		}
		return ast.WalkContinue, nil
	})
	return found
}

// inHeader is a mistake at the header's first line that begins so.
func (p *guidePage) inHeader(begins string, what, remedy words.Text) Mistake {
	for i, line := range strings.Split(string(p.text[:p.at]), "\n") {
		if strings.HasPrefix(line, begins) {
			return Mistake{p.file, i + 1, 1, what, remedy}
		}
	}
	return Mistake{p.file, 1, 1, what, remedy}
}

// oneSentence tells whether a summary is one sentence.
func oneSentence(s string) bool {
	return !strings.Contains(strings.TrimSuffix(s, "."), ". ")
}

// needs says what the chapter's acts take, "" if its header does not.
func (p *guidePage) needs(r *words.Reader) string {
	var b strings.Builder
	line := func(name words.English, value string) {
		if value != "" {
			b.WriteString(
				"<div><dt>" + string(escaped(name.Say(r))) + "</dt><dd>" + string(escaped(value)) + "</dd></div>\n",
			)
		}
	}
	line("You need", strings.Join(p.Needs, "; "))
	line("Time", p.Time)
	if b.Len() == 0 {
		return ""
	}
	return "<dl class=\"needs\">\n" + b.String() + "</dl>\n"
}

// benchLevel is the level of a bench's own heading: the second above all sections,
// the third inside one.
func (p *guidePage) benchLevel(b *block) int {
	for _, h := range p.headings {
		if h.level > 1 && h.at < b.at {
			return 3
		}
	}
	return 2
}
