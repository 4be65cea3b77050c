package main

import (
	"bytes"
	"fmt"
	"io"
	"regexp"
	"strings"

	"github.com/alecthomas/kong"

	"plumbline/calculators/words"
	"plumbline/site/told"
)

// description stands at the top of the help.
const description words.English = "A mountain-bike fit guide that computes: publish it under your own name, " +
	"or ask one calculator here."

// helpTexts are what the help says of commands, arguments and flags, by the names that their
// tags have.
var helpTexts = map[string]words.English{
	"publish": "Build the guide, or your own folder laid over it, into a folder for a web server.",
	"preview": "Show the guide on this machine and publish it again whenever a file is saved.",
	"book": "Write the whole guide as one book: a page made for printing and an EPUB, with somebody’s own numbers " +
		"where a record is named.",
	"intake": "Read the measurements that clients sent, as links, mail or files: an index, those first who need " +
		"attention, and a sheet for each. The exit status is 0 if all was read, 1 if something could not be read, " +
		"2 if the command was not understood.",
	"adopt":   "Begin a guide of your own: a small folder with every setting explained.",
	"changes": "Show what is new in the built-in chapters that you have replaced.",
	"proof":   "Read a guide as an editor would: what to mend, and what to think about.",
	"hosting": "Print settings with which a web server sends the guide as it should.",
	"calc":    "Answer one calculator; alone, list them all.",
	"licences": "Print the licences of the project, of Go and of every library in this program " +
		"and in the guide.",
	"version": "Print the version, the commit and the stamp of the engine.",
	"language": "Print in this language: en, or one that the guide is translated into, such as de. Without it a " +
		"command " +
		"that reads your folder prints in the language of your guide. JSON and CSV stay as they are.",

	"adopt_contact": "Your mail or web address. Clients send their measurements to a mail address.",
	"adopt_dir":     "A new folder, or one without these files. Nothing is ever written over.",
	"adopt_name":    "Your shop’s name, or your own.",
	"adopt_chapters": "Built-in chapters to copy into the folder, as part/chapter: yours then take their place. " +
		"With none, a new folder is begun.",
	"changes_guide": "Your folder.",
	"changes_done":  "Note that you have taken over what you want of this built-in chapter.",
	"book_out":      "The folder for book.html and book.epub. Files of these names are written over.",
	"book_units":    "Write lengths in mm, cm or in; when left out, as the record or the guide does.",
	"book_record": "A measurement record, as a page saves it: JSON, CSV or a link in a text file. Every figure and " +
		"every number in the book is then that rider’s.",
	"book_rider": "Whose record to take from a file of several riders.",
	"book_bike":  "Which bike to take from a file of several bikes.",
	"calc_name":  "The calculator, for example saddle-height.",
	"calc_values": "Inputs, for example inseam=830, inseam=83cm, 'inseam=32 3/4 in', inseam=830±3. A bare number " +
		"is in mm, degrees, kg or percent. A list is read from a file: sizes=@sizes.csv.",
	"calc_json":      "Print the whole answer as JSON, in base units at full precision.",
	"calc_units":     "Print lengths in mm, cm or in.",
	"hosting_server": "nginx, caddy, apache, or storage for a host that only takes files.",
	"hosting_guide":  "Your folder, whose languages the settings are for too.",
	"hosting_path":   "Where the guide is on the server.",
	"hosting_folder": "Where it lies on the server’s disk.",
	"intake_from": "What clients sent: links, mail (.eml, mbox), files with links, JSON or CSV, folders of such " +
		"files, or - for standard input. Links to other files are not followed.",
	"intake_csv":     "Print one row for each value, doubt, answer and missing measurement.",
	"intake_clients": "Print CSV with one row for each client.",
	"intake_full":    "Print every value, every answer and every caution below each sheet.",
	"intake_html":    "Write a printable page for each client and an index into a new or empty folder.",
	"intake_json": "Print an array with one object a line: the record, what is doubtful, every answer, " +
		"what is missing.",
	"intake_notes": "Your own notes on clients, in YAML: a note, words to the client, settings to try next, and from " +
		"them a link back to the client. A file called notes.yaml in a folder of replies is read by itself.",
	"intake_units": "Print lengths on the sheet in mm, cm or in. JSON and CSV are in base units.",
	"preview_at": "Where to listen, on this machine only; 127.0.0.1:8040 when left out, " +
		"port 0 takes any free one.",
	"preview_guide": "Your folder, laid over the built-in guide.",
	"preview_lan": "Show it to the other devices of your network too, such as the phone on the bench: under an " +
		"address that cannot be guessed, with a code to scan.",
	"proof_guide":   "Your folder; its own chapters are read. Without it, the built-in guide is read.",
	"proof_sarif":   "Write the remarks as SARIF 2.1.0 too, for editors and build servers.",
	"publish_guide": "Your folder, laid over the built-in guide: same path replaces, new path adds.",
	"publish_quick": "Compress less, to have a look: seconds instead of a minute, and readers wait a little longer.",
	"publish_out": "Where the site goes. Only a folder that plumbline made, a new one or an empty one " +
		"is written.",
}

// helpIn are the help texts in a language, as the parser wants them.
func helpIn(r *words.Reader) kong.Vars {
	said := kong.Vars{}
	for key, english := range helpTexts {
		said[key] = english.Say(r)
	}
	return said
}

// ownWords are the lines of the parser's own help, which knows no other language, and what
// stands for them. {0} is what the first group found.
var ownWords = []struct {
	line *regexp.Regexp
	says words.English
}{
	{regexp.MustCompile(`^Usage: (.*)$`), "Usage: {0}"},
	{regexp.MustCompile(`^Arguments:$`), "Arguments:"},
	{regexp.MustCompile(`^Flags:$`), "Flags:"},
	{regexp.MustCompile(`^Commands:$`), "Commands:"},
	{regexp.MustCompile(`^Run "(.*) <command> --help" for more information on a command\.$`),
		"{0} NAME --help explains one command."},
}

// ownHelp prints the parser's help in the command's language.
func ownHelp(r *words.Reader) kong.HelpPrinter {
	return func(o kong.HelpOptions, ctx *kong.Context) error {
		var b bytes.Buffer
		out := ctx.Stdout
		ctx.Stdout = &b
		err := kong.DefaultHelpPrinter(o, ctx)
		ctx.Stdout = out
		if err != nil {
			return err
		}
		for line := range strings.Lines(b.String()) {
			if _, err := fmt.Fprintln(out, ownLine(strings.TrimSuffix(line, "\n"), r)); err != nil {
				return err
			}
		}
		return nil
	}
}

// usageWords stand for something in lines of usage: what the parser itself writes there, and
// the names of arguments and of what a flag is followed by.
var usageWords = map[string]words.English{
	"command": "in a line of usage\x04command", "flags": "in a line of usage\x04flags",
	"guide": "in a line of usage\x04guide", "dir": "in a line of usage\x04dir",
	"chapters": "in a line of usage\x04chapters", "name": "in a line of usage\x04name",
	"values": "in a line of usage\x04values", "server": "in a line of usage\x04server",
	"link|file": "in a line of usage\x04link|file",
	"DIR":       "in a line of usage\x04DIR", "FILE": "in a line of usage\x04FILE",
	"NAME": "in a line of usage\x04NAME", "ADDRESS": "in a line of usage\x04ADDRESS",
	"CHAPTER": "in a line of usage\x04CHAPTER", "TAG": "in a line of usage\x04TAG",
}

// usageWord says a word of a line of usage; what is none stays as it is.
func usageWord(word string, r *words.Reader) string {
	if english, ok := usageWords[word]; ok {
		return english.Say(r)
	}
	return word
}

// nameUsage names arguments, and what a flag is followed by, in the reader's language.
func nameUsage(node *kong.Node, r *words.Reader) {
	for _, p := range node.Positional {
		p.Name = usageWord(p.Name, r)
	}
	for _, f := range node.Flags {
		f.PlaceHolder = usageWord(f.PlaceHolder, r)
	}
	for _, child := range node.Children {
		nameUsage(child, r)
	}
}

func ownLine(line string, r *words.Reader) string {
	if rest, ok := strings.CutSuffix(line, " [flags]"); ok {
		line = strings.Replace(rest, "<command>", "<"+usageWord("command", r)+">", 1) +
			" [" + usageWord("flags", r) + "]"
	}
	for _, own := range ownWords {
		if found := own.line.FindStringSubmatch(line); found != nil {
			return told.Of(own.says, strings.Join(found[1:], "")).Say(r)
		}
	}
	return line
}

// usageErrors are what the parser says is wrong with a command line, and how it is told. A
// test provokes each of them.
var usageErrors = []struct {
	says *regexp.Regexp
	told words.English
}{
	{regexp.MustCompile(`^unknown flag (\S+), did you mean "(\S+)"\?$`), "there is no flag {0}; did you mean {1}?"},
	{regexp.MustCompile(`^unknown flag (\S+?)(?:, did you mean one of .*)?$`), "there is no flag {0}."},
	{regexp.MustCompile(`^unexpected argument (\S+), did you mean "(\S+)"\?$`),
		"there is no command “{0}”; did you mean {1}?"},
	{regexp.MustCompile(`^unexpected argument (.*?)(?:, did you mean one of .*)?$`),
		"“{0}” is more than this command takes."},
	{regexp.MustCompile(`^expected one of (.*)$`), "name what to do: {0}."},
	{regexp.MustCompile(`^expected "(.*)"$`), "{0} is missing."},
	{regexp.MustCompile(`^missing flags: (.*)$`), "{0} is missing."},
	{regexp.MustCompile(`^(\S+): missing value, expecting "<arg>.*$`), "{0} needs a value behind it."},
	{regexp.MustCompile(`^(\S+?): expected \S+ value but got .*$`), "{0} needs a value behind it."},
	{regexp.MustCompile(`^(\S+) must be one of (.*) but got "(.*)"$`), "{0} is “{2}”, and should be one of {1}."},
	{regexp.MustCompile(`^(\S+): bool value must be .* but got "(.*)"$`),
		"{0} takes true, false or nothing behind it, and “{1}” is none of them."},
	{regexp.MustCompile(`^(--\S+) and (--\S+) can't be used together$`), "{0} and {1} do not go together."},
}

// usageError tells what is wrong with a command line.
func usageError(err error, w io.Writer, r *words.Reader) {
	message := err.Error()
	said := told.Quoted(message).Say(r)
	for _, u := range usageErrors {
		if found := u.says.FindStringSubmatch(message); found != nil {
			var holes []any
			for _, f := range found[1:] {
				holes = append(holes, f)
			}
			said = told.Of(u.told, holes...).Say(r)
			break
		}
	}
	fmt.Fprintf(w, "plumbline: %s\n%s\n", said, told.Of("See {0}.", "plumbline --help").Say(r))
}
