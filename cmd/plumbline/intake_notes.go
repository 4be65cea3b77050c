package main

import (
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"

	"github.com/goccy/go-yaml/ast"
	"github.com/goccy/go-yaml/parser"

	"plumbline/calculators"
	"plumbline/calculators/desk"
	"plumbline/calculators/measure"
	"plumbline/calculators/record"
	"plumbline/calculators/request"
	"plumbline/calculators/words"
	"plumbline/site/told"
)

// notebook is what a fitter wrote beside the replies: who they are, where their guide is,
// and of each client a note, words to the client, and settings to try next.
type notebook struct {
	from, guide string
	clients     []*clientNotes
	mistakes    []words.Text // each with its file and line
	hints       []words.Text
}

// clientNotes are the notes of one client.
type clientNotes struct {
	place   string // file and line
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
	f, err := parser.ParseBytes(text, 0)
	if err != nil {
		why, _, _ := strings.Cut(strings.TrimSpace(err.Error()), "\n")
		b.mistakes = append(b.mistakes, told.Of("{0}: this is not valid YAML: {1}. Mend the line or put the text in "+
			"quotes.", oneLine(file), why))
		return
	}
	y := notesReader{b, file}
	for _, doc := range f.Docs {
		y.each(doc.Body, "the file must be lines of “key: value”.", func(key string, v *ast.MappingValueNode) {
			switch key {
			case "from":
				b.from = y.text(v)
			case "guide":
				b.guide = y.address(v)
			case "clients":
				y.each(
					v.Value,
					"“clients” must be lines of “key: value”.",
					func(name string, v *ast.MappingValueNode) { y.client(name, v) },
				)
			default:
				y.unknown(v, key, "from", "guide", "clients")
			}
		})
	}
}

// notesReader reads one file into a notebook.
type notesReader struct {
	*notebook
	file string
}

// mistake says what is wrong at a node.
func (y notesReader) mistake(n ast.Node, english words.English, holes ...any) {
	y.mistakes = append(y.mistakes, told.Of("{0}: {1}", y.place(n), told.Of(english, holes...)))
}

func (y notesReader) place(n ast.Node) string {
	if t := n.GetToken(); t != nil && t.Position != nil {
		return fmt.Sprintf("%s:%d", oneLine(y.file), t.Position.Line)
	}
	return oneLine(y.file)
}

// each calls do for every key of a mapping.
func (y notesReader) each(n ast.Node, wrong words.English, do func(key string, v *ast.MappingValueNode)) {
	var list []*ast.MappingValueNode
	switch m := n.(type) {
	case nil, *ast.NullNode, *ast.CommentGroupNode:
	case *ast.MappingNode:
		list = m.Values
	case *ast.MappingValueNode:
		list = []*ast.MappingValueNode{m}
	default:
		y.mistake(n, wrong)
	}
	for _, v := range list {
		do(v.Key.GetToken().Value, v)
	}
}

// text reads a value as it was written.
func (y notesReader) text(v *ast.MappingValueNode) string {
	switch n := v.Value.(type) {
	case *ast.StringNode:
		return record.Plain(n.Value, 2000, true)
	case *ast.LiteralNode:
		return record.Plain(n.Value.Value, 2000, true)
	case *ast.IntegerNode, *ast.FloatNode, *ast.BoolNode:
		return record.Plain(n.GetToken().Value, 2000, true)
	case *ast.NullNode:
		return ""
	}
	y.mistake(v.Value, "“{0}” must be one text; put it in quotes if it has a colon or a bracket in it.",
		v.Key.GetToken().Value)
	return ""
}

// sheetPage is the page of a guide that opens somebody's setup.
const sheetPage = "finish/your-setup-sheet.html"

// address reads where the guide is.
func (y notesReader) address(v *ast.MappingValueNode) string {
	text := y.text(v)
	switch {
	case text == "":
		return ""
	case !strings.HasPrefix(text, "https://") && !strings.HasPrefix(text, "http://"),
		strings.ContainsAny(text, "#?\"<> \n"):
		y.mistake(v.Value, "“{0}” is no address of a guide. Write it as a browser shows it, with https:// and without "+
			"#.",
			measure.Quoted(text))
		return ""
	case strings.HasSuffix(text, ".html"):
		return text
	}
	return strings.TrimSuffix(text, "/") + "/" + sheetPage
}

// unknown says that a key is none of those that are known.
func (y notesReader) unknown(v *ast.MappingValueNode, key string, known ...string) {
	if near := measure.NearestName(key, known); near != "" {
		y.mistake(v.Key, "the key “{0}” is not known here. Did you mean “{1}”?", measure.Quoted(key), near)
		return
	}
	y.mistake(
		v.Key,
		"the key “{0}” is not known here. The keys are {1}.",
		measure.Quoted(key),
		strings.Join(known, ", "),
	)
}

// client reads the notes of one client.
func (y notesReader) client(name string, v *ast.MappingValueNode) {
	c := &clientNotes{place: y.place(v.Key), client: name, book: y.notebook}
	if _, note := v.Value.(*ast.StringNode); note { // a note and nothing else
		c.note = y.text(v)
		y.clients = append(y.clients, c)
		return
	}
	y.each(v.Value, "the notes of a client must be lines of “key: value”.", func(key string, v *ast.MappingValueNode) {
		switch key {
		case "note":
			c.note = y.text(v)
		case "message":
			c.message = y.text(v)
		case "next":
			y.each(v.Value, "“next” must be lines of “key: value”.", func(key string, v *ast.MappingValueNode) {
				typed := y.text(v)
				p, problem, ok := desk.Planned(key, typed, nil)
				switch {
				case !ok:
					if problem.Suggest != "" && !strings.Contains(problem.Text.Say(nil), "Did you mean") {
						y.mistake(v.Key, "{0} Did you mean {1}?", problem.Text, problem.Suggest)
						return
					}
					y.mistake(v.Key, "{0}", problem.Text)
				case p.Typed != "":
					c.next = append(c.next, p)
				}
			})
		default:
			y.unknown(v, key, "note", "message", "next")
		}
	})
	y.clients = append(y.clients, c)
}

// layOver lays the notes over the arrivals. A name that two people have is nobody's: it is
// said, and neither gets the note. Settings belong to one bike, as the rider has it now.
func (b *notebook) layOver(list []*arrival) {
	var left []string
	var names []string
	for _, a := range list {
		if a.record != nil {
			names = append(names, a.name())
		}
	}
	for _, c := range b.clients {
		var found, now []*arrival
		riders, bikes := map[int]bool{}, map[string]bool{}
		for _, a := range list {
			if a.record == nil || !c.means(a) {
				continue
			}
			found = append(found, a)
			riders[a.rider] = true
			if !a.replaced() && a.newer == nil {
				now = append(now, a)
				bikes[plainName(a.visit.Bike)] = true
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
				"instead.", c.place, oneLine(c.client), oneLine(found[0].from), oneLine(otherRider(found).from)))
			continue
		case len(now) > 1 && c.next != nil:
			b.mistakes = append(b.mistakes, told.Of("{0}: “{1}” has {2} here. Write for which the settings are, as "+
				"in “{3}, {4}”, or name the "+
				"file.", c.place, oneLine(c.client), words.Count(len(now), "{0} bike", "{0} bikes"),
				now[0].name(), cmpName(now[len(now)-1])))
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
	if a.visit.Bike != "" {
		return a.visit.Bike
	}
	return oneLine(a.from)
}

// otherRider is the first that is not by the rider of the first.
func otherRider(list []*arrival) *arrival {
	i := slices.IndexFunc(list, func(a *arrival) bool { return a.rider != list[0].rider })
	return list[i]
}

// means tells whether notes are about a reply: by the client's name, by the name and the
// bike, or by the file it came from.
func (c *clientNotes) means(a *arrival) bool {
	wrote := plainName(c.client)
	return wrote == plainName(a.name()) || a.visit.Bike != "" && wrote == plainName(a.name()+", "+a.visit.Bike) ||
		c.client == a.from || c.client == filepath.Base(a.from)
}

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
	return a.plan.book.guide + "#" + advice.Fragment(a.record)
}

// unlinked says why there is no link though there are settings.
func (a *arrival) unlinked(r *words.Reader) string {
	if a.advice() == nil || a.plan.book.guide != "" {
		return ""
	}
	return say(r, "For a link that opens the client’s setup with these settings, write in the notes where your guide "+
		"is: {0}", name("guide: https://…"))
}
