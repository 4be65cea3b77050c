package main

import (
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"

	"github.com/goccy/go-yaml/ast"

	"plumbline/calculators"
	"plumbline/calculators/desk"
	"plumbline/calculators/measure"
	"plumbline/calculators/record"
	"plumbline/calculators/request"
	"plumbline/calculators/words"
	"plumbline/site/told"
	"plumbline/site/yamlfile"
)

// notebook is what a fitter wrote beside the replies: who they are, where their guide is,
// and of each client a note, words to the client, and settings to try next.
type notebook struct {
	from, guide string
	clients     []*clientNotes
	mistakes    []words.Text // each with its file, line and column
	hints       []words.Text
}

// clientNotes are the notes of one client.
type clientNotes struct {
	place   string // file, line and column
	client  string // a name, a name and a bike, or the place of a reply, as the fitter wrote it
	note    string // for the fitter alone
	message string // to the client
	next    []calculators.Pair
	book    *notebook
	laid    bool // somebody of that name is among the replies
}

// longestNotes is the longest file of notes that is looked at, in bytes.
const longestNotes = 4 << 20

// readNotes reads the files, the later ones beside the earlier ones.
func readNotes(files []string) *notebook {
	b := &notebook{}
	for _, file := range files {
		text, err := os.ReadFile(file)
		switch {
		case err != nil:
			b.mistakes = append(b.mistakes, told.Of("{0} cannot be read: {1}", oneLine(file), err))
		case len(text) > longestNotes:
			b.mistakes = append(b.mistakes, told.Of("{0} is too long for notes.", oneLine(file)))
		default:
			b.read(file, text)
		}
	}
	return b
}

// read reads one file. What is wrong in it is said and costs no other note.
func (b *notebook) read(file string, text []byte) {
	y := notesReader{&yamlfile.Reader{File: oneLine(file)}, b}
	for _, e := range y.Root(text) {
		switch e.Key {
		case "from":
			b.from = y.text(e)
		case "guide":
			b.guide = y.address(e)
		case "clients":
			for _, e := range y.Mapping(e.Value, told.Of("“clients”")) {
				b.clients = append(b.clients, y.client(e))
			}
		default:
			y.Known(e, "from", "guide", "clients")
		}
	}
	for _, m := range y.Bad {
		b.mistakes = append(b.mistakes, told.Of("{0}", m))
	}
}

// notesReader reads one file into a notebook.
type notesReader struct {
	*yamlfile.Reader
	book *notebook
}

// text reads a value as it was written, "" where none was.
func (y notesReader) text(e yamlfile.Entry) string {
	if _, none := e.Value.(*ast.NullNode); none {
		return ""
	}
	return record.Plain(y.Raw(e), 2000, true)
}

// sheetPage is the page of a guide that opens somebody's setup.
const sheetPage = "finish/your-setup-sheet.html"

// address reads where the guide is.
func (y notesReader) address(e yamlfile.Entry) string {
	text := y.text(e)
	switch {
	case text == "":
		return ""
	case !strings.HasPrefix(text, "https://") && !strings.HasPrefix(text, "http://"),
		strings.ContainsAny(text, "#?\"<> \n"):
		y.Mistake(e.Value.GetToken(), told.Of("“{0}” is no address of a guide", measure.Quoted(text)),
			told.Of("write it as a browser shows it, with https:// and without #"))
		return ""
	case strings.HasSuffix(text, ".html"):
		return text
	}
	return strings.TrimSuffix(text, "/") + "/" + sheetPage
}

// client reads the notes of one client.
func (y notesReader) client(e yamlfile.Entry) *clientNotes {
	c := &clientNotes{place: y.At(e.At).Place(), client: e.Key, book: y.book}
	if _, note := e.Value.(*ast.StringNode); note { // a note and nothing else
		c.note = y.text(e)
		return c
	}
	for _, e := range y.Mapping(e.Value, told.Of("the notes of a client")) {
		switch e.Key {
		case "note":
			c.note = y.text(e)
		case "message":
			c.message = y.text(e)
		case "next":
			for _, e := range y.Mapping(e.Value, told.Of("“next”")) {
				if p := y.setting(e); p.Typed != "" {
					c.next = append(c.next, p)
				}
			}
		default:
			y.Known(e, "note", "message", "next")
		}
	}
	return c
}

// setting reads a setting to try next; it is empty where none can be read.
func (y notesReader) setting(e yamlfile.Entry) calculators.Pair {
	p, problem, ok := desk.Planned(e.Key, y.text(e), nil)
	if ok {
		return p
	}
	said := problem.Text
	if problem.Suggest != "" && !strings.Contains(said.Say(nil), "Did you mean") {
		said = told.Of("{0} Did you mean {1}?", said, problem.Suggest)
	}
	y.Mistake(e.At, said, words.Text{})
	return calculators.Pair{}
}

// layOver lays the notes over the arrivals. A name that two people have is nobody's: it is
// said, and neither gets the note. Settings belong to one bike, as the rider has it now.
func (b *notebook) layOver(list []*arrival) {
	var left []string
	var names []string
	for _, a := range list {
		if a.Record != nil {
			names = append(names, a.Shown().Say(nil))
		}
	}
	for _, c := range b.clients {
		var found, now []*arrival
		riders, bikes := map[int]bool{}, map[string]bool{}
		for _, a := range list {
			if a.Record == nil || !c.means(a) {
				continue
			}
			found = append(found, a)
			riders[a.Rider] = true
			if !a.Replaced() && a.Newer == nil {
				now = append(now, a)
				bikes[plainName(a.Visit.Bike)] = true
			}
		}
		c.laid = found != nil
		switch {
		case found == nil:
			if near := measure.NearestName(c.client, names); near != "" {
				b.mistakes = append(b.mistakes, told.Of("{0}: none of these replies is from “{1}”. Did you mean “{2}”?",
					c.place, oneLine(c.client), near))
			} else {
				left = append(left, oneLine(c.client))
			}
			continue
		case len(riders) > 1:
			b.mistakes = append(b.mistakes, told.Of("{0}: two people are called “{1}”: {2} and {3}. Name the file "+
				"instead.", c.place, oneLine(c.client), oneLine(found[0].From), oneLine(otherRider(found).From)))
			continue
		case len(now) > 1 && c.next != nil:
			b.mistakes = append(b.mistakes, told.Of("{0}: “{1}” has {2} here. Write for which the settings are, as "+
				"in “{3}, {4}”, or name the "+
				"file.", c.place, oneLine(c.client), words.Count(len(now), "{0} bike", "{0} bikes"),
				now[0].Shown().Say(nil), cmpName(now[len(now)-1])))
		default:
			for _, a := range now {
				a.plan = c
			}
		}
		for _, a := range found {
			a.notes = append(a.notes, c)
		}
	}
	if left != nil {
		n := len(left)
		if n > 5 {
			left = append(left[:5], "…")
		}
		b.hints = append(b.hints, words.Count(n, "Notes on {0} client are about nobody in these replies: {1}.",
			"Notes on {0} clients are about nobody in these replies: {1}.", name(strings.Join(left, "; "))))
	}
}

// cmpName names the bike of an arrival, or where it came from.
func cmpName(a *arrival) string {
	if a.Visit.Bike != "" {
		return a.Visit.Bike
	}
	return oneLine(a.From)
}

// otherRider is the first that is not by the rider of the first.
func otherRider(list []*arrival) *arrival {
	i := slices.IndexFunc(list, func(a *arrival) bool { return a.Rider != list[0].Rider })
	return list[i]
}

// means tells whether notes are about a reply: by the client's name, by the name and the
// bike, or by the file it came from.
func (c *clientNotes) means(a *arrival) bool {
	wrote, file := plainName(c.client), theLine.ReplaceAllString(a.From, "")
	name := a.Shown().Say(nil)
	return wrote == plainName(name) || a.Visit.Bike != "" && wrote == plainName(name+", "+a.Visit.Bike) ||
		slices.Contains([]string{a.From, filepath.Base(a.From), file, filepath.Base(file)}, c.client)
}

// theLine is the line that stands behind the name of a file of several replies.
var theLine = regexp.MustCompile(`:\d+$`)

// plainName is a name as it is compared: letters' size and blanks do not count.
func plainName(s string) string { return strings.ToLower(strings.Join(strings.Fields(s), " ")) }

// advice is what goes back to the client, nil where no settings were written down.
func (a *arrival) advice() *request.Advice {
	if a.plan == nil || a.plan.next == nil {
		return nil
	}
	return &request.Advice{From: a.plan.book.from, Note: a.plan.message, Next: a.plan.next}
}

// link opens the client's setup with the fitter's settings as Next, "" where there are none
// or nobody said where the guide is.
func (a *arrival) link() string {
	advice := a.advice()
	if advice == nil || a.plan.book.guide == "" {
		return ""
	}
	return a.plan.book.guide + "#" + advice.Fragment(a.Record)
}

// unlinked says why there is no link though there are settings.
func (a *arrival) unlinked(r *words.Reader) string {
	if a.advice() == nil || a.plan.book.guide != "" {
		return ""
	}
	return say(r, "For a link that opens the client’s setup with these settings, write in the notes where your guide "+
		"is: {0}", name("guide: https://…"))
}
