package site

import (
	"fmt"
	"io/fs"
	"path"
	"regexp"
	"slices"
	"strings"
	"unicode"

	"plumbline/calculators/words"
	"plumbline/content"
	"plumbline/site/told"
)

// Remark is what an editor would write on the margin of a guide.
type Remark struct {
	Mistake
	Rule  *Rule
	Error bool // the guide cannot or must not be published as it is; otherwise it is advice
}

// Rule is one thing that a guide is read for.
type Rule struct {
	ID   string
	Says words.English
}

// The rules of proof.
var (
	ruleMistake = &Rule{"mistake", "What keeps a guide from being published: dead links, unknown names, broken " +
		"Markdown."}
	ruleClaim   = &Rule{"claim", "What a study is said to have found names the study."}
	ruleFigure  = &Rule{"figure-words", "A picture says in words what it shows, for those who cannot see it."}
	ruleSource  = &Rule{"source", "A chapter that computes, sets or claims something says what it rests on."}
	ruleCaution = &Rule{"caution", "A chapter in which something is set carries a caution."}
	ruleMeasure = &Rule{"measure", "A chapter with a calculator shows how its first length is measured, or " +
		"links to it."}
	ruleReference = &Rule{"reference", "Words in square brackets lead somewhere."}
	ruleJargon    = &Rule{"jargon", "A word of the trade is explained where it first stands."}
	ruleSentence  = &Rule{"sentence", "A sentence can be read in one breath."}
	ruleGrade     = &Rule{"grade", "A chapter can be read by somebody who left school at sixteen."}
	ruleIdiom     = &Rule{"idiom", "No phrase that a reader could take literally, or may never have read."}
)

// Rules are all of them.
func Rules() []*Rule {
	return []*Rule{ruleMistake, ruleClaim, ruleFigure, ruleSource, ruleCaution, ruleMeasure,
		ruleReference, ruleJargon, ruleSentence,
		ruleGrade, ruleIdiom}
}

// The limits of proof.
const (
	longSentence = 30 // words
	highGrade    = 10.0
	enoughWords  = 100 // below which a grade says nothing
)

// avoidFile lists words to avoid.
const avoidFile = "avoid.yaml"

// Proof reads a guide as an editor would, and returns what to mend and what to think
// about. With a shop's folder it reads the shop's own chapters; "" reads the built-in ones.
func Proof(overlayDir string) ([]Remark, error) {
	if overlayDir == "" {
		return proofFS(content.Files, nil, ""), nil
	}
	root, err := openFolder(overlayDir)
	if err != nil {
		return nil, err
	}
	defer root.Close()
	return proofFS(content.Files, root.FS(), overlayDir), nil
}

// Unread are the languages of a guide of which proof knows no claims, no idioms and no
// formula for how hard a text is: of those it reads all the rest.
func Unread(overlayDir string) (tags []string) {
	for _, tag := range LanguagesOf(overlayDir) {
		if editors[baseOf(tag)] == nil {
			tags = append(tags, tag)
		}
	}
	return tags
}

func proofFS(builtIn, local fs.FS, localName string) (list []Remark) {
	g, bad := assembled(builtIn, local, localName, everything(), nil)
	for _, m := range bad {
		list = append(list, Remark{m, ruleMistake, true})
	}
	for _, each := range g.everyLanguage() {
		phrases, bad := each.layers.avoided(each.Language)
		for _, m := range bad {
			list = append(list, Remark{m, ruleMistake, true})
		}
		for _, p := range each.pages {
			if local != nil && !p.local && p.lines == nil || p.lang != "" && baseOf(p.lang) != baseOf(each.Language) {
				continue // it is read in its own language
			}
			r := &reviewer{g: each, p: each.parsed(p), avoid: phrases, knows: editors[baseOf(each.Language)]}
			r.review()
			for _, remark := range r.list {
				// Of a built-in chapter, what the shop adds to it is read.
				if p.added != nil && remark.File == p.added.file {
					continue // it is read in its own language
				}
				if local == nil || p.local || remark.File != p.file {
					list = append(list, remark)
				}
			}
		}
	}
	return ordered(list)
}

// ordered puts remarks in the order of reading.
func ordered(list []Remark) []Remark {
	var places []Mistake
	for _, r := range list {
		places = append(places, r.Mistake)
	}
	places = sorted(places)
	out := make([]Remark, 0, len(places))
	for _, m := range places {
		out = append(out, list[slices.IndexFunc(list, func(r Remark) bool { return oneMistake(r.Mistake, m) })])
	}
	return out
}

// phrase is something to avoid.
type phrase struct {
	is            *regexp.Regexp
	text, instead string
}

// avoided reads avoid.yaml of both layers, of those that are for a language.
func (l *layers) avoided(tag string) (list []phrase, bad []Mistake) {
	instead := map[string]string{}
	for _, layer := range []map[string]source{l.base, l.baseSaid, l.local, l.localSaid} {
		s, ok := layer[avoidFile]
		if !ok || s.lang != "" && baseOf(s.lang) != baseOf(tag) {
			continue
		}
		y := yamlOf(s.file, 0)
		for _, e := range y.Root(s.text) {
			instead[strings.ToLower(e.Key)] = y.text(e)
		}
		bad = append(bad, y.bad()...)
	}
	for text, with := range instead {
		if with == "" {
			continue
		}
		pattern := `(?i)(^|[^\pL])(` + strings.ReplaceAll(regexp.QuoteMeta(text), "'", "['’]") + `)($|[^\pL])`
		list = append(list, phrase{regexp.MustCompile(pattern), text, with})
	}
	slices.SortFunc(list, func(a, b phrase) int { return strings.Compare(a.text, b.text) })
	return list, bad
}

// reviewer reads one page.
type reviewer struct {
	g     *Guide
	p     *guidePage
	avoid []phrase
	knows *editor // nil for a language whose words proof does not know
	list  []Remark
}

func (r *reviewer) advise(rule *Rule, at int, what, remedy words.Text) {
	r.list = append(r.list, Remark{r.p.mistake(at, what, remedy), rule, false})
}

func (r *reviewer) whole(rule *Rule, what, remedy words.Text) {
	r.list = append(r.list, Remark{Mistake{r.p.file, 1, 1, what, remedy}, rule, false})
}

func (r *reviewer) review() {
	kind, _, _ := r.g.standing(r.p)
	passages := r.p.passages()
	if kind == "chapter" {
		r.structure()
	}
	r.figures()
	r.jargon(passages)
	var all []string
	count := 0
	for i, x := range passages {
		if r.knows != nil && !x.head && !citedNear(passages, i) {
			r.claims(x)
		}
		r.idioms(x)
		r.references(x)
		if x.cell || x.head {
			continue
		}
		for _, s := range sentences(x.text) {
			w := spoken(s.text)
			if len(w) > longSentence {
				r.advise(ruleSentence, x.at[s.from], told.Of("this sentence has {0} words", len(w)),
					told.Of("make two of it; {0} are enough", longSentence))
			}
			all, count = append(all, w...), count+1
		}
	}
	if len(all) >= enoughWords && r.knows != nil {
		if grade := r.knows.grade(all, count); grade > highGrade {
			r.whole(
				ruleGrade,
				told.Of("this page reads like a school book of grade {0} ({1})", fmt.Sprintf("%.0f", grade),
					r.knows.formula),
				told.Of("write shorter sentences and shorter words"),
			)
		}
	}
}

// structure looks for what a chapter should have.
func (r *reviewer) structure() {
	p := r.p
	calculator := slices.IndexFunc(p.blocks, func(b *block) bool { return b.kind == calculatorBlock })
	if r.needsSource() && len(r.g.used(p)) == 0 && !r.mentionsPractice(p.words) {
		r.whole(
			ruleSource,
			told.Of("this chapter names no source"),
			told.Of("cite one with [@key], or say that it is common practice"),
		)
	}
	sets := slices.ContainsFunc(p.headings, func(h heading) bool { return h.id == actIDs[0] })
	stops, checks := r.g.warnings(p)
	if sets && len(stops)+len(checks) == 0 && !p.has(cautionBlock) {
		r.whole(ruleCaution, told.Of("something is set in this chapter and no caution stands in it"),
			told.Of("put one where the risk arises: ```caution torque"))
	}
	if calculator >= 0 && !p.has(measureBlock) && !r.linksToMeasures() {
		r.advise(
			ruleMeasure,
			p.blocks[calculator].at,
			told.Of("no measure block on this page, nor a link to one, tells how its numbers are measured"),
			told.Of("add ```measure KEY, or a link to the chapter that has it"),
		)
	}
}

// needsSource tells whether a page computes, sets or claims something. A list of prices or
// the way to the shop rests on nothing.
func (r *reviewer) needsSource() bool {
	p := r.p
	claims := func(x passage) bool {
		return r.knows != nil && r.knows.claim.MatchString(x.text) && !r.knows.denies.MatchString(x.text)
	}
	return p.has(calculatorBlock) || p.has(formulaBlock) || p.has(measureBlock) ||
		slices.ContainsFunc(p.headings, heading.isAct) || slices.ContainsFunc(p.passages(), claims)
}

// linksToMeasures tells whether the page leads to one that tells how something is measured.
func (r *reviewer) linksToMeasures() bool {
	for _, n := range r.p.links {
		dest, _, _ := strings.Cut(string(n.Destination), "#")
		to := path.Join(path.Dir(r.p.URL), dest)
		for _, page := range r.g.pages {
			if page.URL == to && page.has(measureBlock) {
				return true
			}
		}
	}
	return false
}

func (r *reviewer) mentionsPractice(text string) bool {
	return r.knows == nil || strings.Contains(strings.ToLower(text), r.knows.practice)
}

// figures looks at the words of pictures; one without any is a mistake already.
func (r *reviewer) figures() {
	for _, n := range r.p.images {
		said := strings.TrimSpace(string(inlineText(n, r.p.body())))
		switch low := strings.ToLower(said); {
		case said == "":
		case r.knows != nil && slices.Contains(r.knows.pictures, low) || strings.Contains(low, ".jp") ||
			strings.Contains(low, ".png") || len(spoken(said)) < 2:
			r.advise(
				ruleFigure,
				r.p.where(n, n.Destination),
				told.Of("“{0}” does not say what the picture shows", said),
				told.Of("tell a reader on the telephone what is to be seen"),
			)
		}
	}
}

// claims finds what a study is said to have found, without the study.
func (r *reviewer) claims(x passage) {
	at := r.knows.claim.FindStringIndex(x.text)
	if at == nil || r.knows.denies.MatchString(x.text) {
		return
	}
	m := r.p.mistake(x.at[at[0]], told.Of("“{0}” stands here without its source", x.text[at[0]:at[1]]),
		told.Of("cite it with [@key], or take the claim out"))
	r.list = append(r.list, Remark{m, ruleClaim, true})
}

// citedNear tells whether the section around a passage cites a source.
func citedNear(passages []passage, i int) bool {
	from, to := i, i+1
	for from > 0 && !passages[from].head {
		from--
	}
	for to < len(passages) && !passages[to].head {
		to++
	}
	return slices.ContainsFunc(passages[from:to], func(x passage) bool { return x.cites })
}

// idioms finds words to avoid.
func (r *reviewer) idioms(x passage) {
	for _, ph := range r.avoid {
		for _, at := range ph.is.FindAllStringSubmatchIndex(x.text, -1) {
			remedy := told.Of("write “{0}”", ph.instead)
			if strings.HasPrefix(ph.instead, "(") {
				remedy = told.Of("{0}", strings.Trim(ph.instead, "()"))
			}
			r.advise(ruleIdiom, x.at[at[4]], told.Of("“{0}”", x.text[at[4]:at[5]]), remedy)
		}
	}
}

// bracketed are words in square brackets. As [text], or [text][] with a line “[text]: address”
// somewhere, they would have become a link.
var bracketed = regexp.MustCompile(`\[(\pL[^\[\]]*)\]`)

// references finds words in square brackets that no line gives an address.
func (r *reviewer) references(x passage) {
	for _, at := range bracketed.FindAllStringSubmatchIndex(x.text, -1) {
		said := x.text[at[2]:at[3]]
		r.advise(ruleReference, x.at[at[0]], told.Of("“[{0}]” stays as it is typed: no line gives its address", said),
			told.Of("write [{0}](address), or add a line “[{1}]: address”, or take the brackets away", said, said))
	}
}

// abbreviation is a word in capitals that no glossary may know.
var abbreviation = regexp.MustCompile(`\b[A-Z]{2,5}\b`)

// common are abbreviations that everybody reads.
var common = []string{"OK", "EU", "UK", "US", "USA", "PNG", "JPEG", "PDF", "QR", "GPS", "LED", "TV", "ISO", "EN", "DIN"}

// jargon finds words of the trade in a heading or a table above their first place in the
// text, where the page explains them, and abbreviations that nothing explains.
func (r *reviewer) jargon(passages []passage) {
	for i := range r.g.terms {
		t := &r.g.terms[i]
		for _, x := range passages {
			from, to := t.first(looked(x.text))
			if from < 0 {
				continue
			}
			if x.head && !r.titled(t) {
				r.advise(
					ruleJargon,
					x.at[from],
					told.Of("the heading says “{0}” before the text explains it", x.text[from:to]),
					told.Of("say it in common words, or let a sentence above use the word"),
				)
			}
			break
		}
	}
	said := map[string]bool{}
	for _, x := range passages {
		for _, at := range abbreviation.FindAllStringIndex(x.text, -1) {
			short := x.text[at[0]:at[1]]
			if said[short] || slices.Contains(common, short) || r.spelled(short, passages) || shouted(x.text) {
				continue
			}
			said[short] = true
			r.advise(ruleJargon, x.at[at[0]], told.Of("“{0}” is explained nowhere on this page", short),
				told.Of("write it out at its first use, or explain it in glossary.yaml"))
		}
	}
}

// shouted tells whether a text has no small letter.
func shouted(s string) bool { return !strings.ContainsFunc(s, unicode.IsLower) }

// titled tells whether the page is about a term: its title or question names it.
func (r *reviewer) titled(t *term) bool {
	from, _ := t.first(looked(r.p.Title + " " + r.p.Nav + " " + r.p.Question + " " + r.p.Summary))
	return from >= 0
}

// spelled tells whether an abbreviation is in the glossary or stands in brackets.
func (r *reviewer) spelled(short string, passages []passage) bool {
	for i := range r.g.terms {
		if from, _ := r.g.terms[i].first(looked(short)); from >= 0 {
			return true
		}
	}
	return slices.ContainsFunc(passages, func(x passage) bool {
		return strings.Contains(x.text, "("+short+")") || strings.Contains(x.text, "("+short+",") ||
			strings.Contains(x.text, short+" (")
	})
}
