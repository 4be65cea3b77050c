// Command plumbline builds the fit guide and answers its calculators in a
// terminal. See "plumbline --help".
//
// Exit status: 0 when all went well, 1 when the content or the computation said
// no, 2 for a wrong call or an input that cannot be read.
package main

import (
	"errors"
	"fmt"
	"io"
	"os"
	"strings"

	"github.com/alecthomas/kong"
)

// The exit statuses.
const (
	statusDone  = 0
	statusNo    = 1 // content or computation said no
	statusUsage = 2 // wrong call or unreadable input
)

// commands is the whole command line.
type commands struct {
	Publish publish        `cmd:"" help:"${publish}"`
	Preview preview        `cmd:"" help:"Show the guide on this machine and publish it again whenever a file is saved."`
	Book    bookCommand    `cmd:"" help:"${book}"`
	Intake  intakeCommand  `cmd:"" help:"${intake}"`
	Adopt   adopt          `cmd:"" help:"Begin a guide of your own: a small folder with every setting explained."`
	Changes changesCommand `cmd:"" help:"Show what is new in the built-in chapters that you have replaced."`
	Proof   proof          `cmd:"" help:"Read a guide as an editor would: what to mend, and what to think about."`
	Hosting hosting        `cmd:"" help:"Print settings with which a web server sends the guide as it should."`
	Calc    calc           `cmd:"" help:"Answer one calculator; alone, list them all."`

	Licences licencesCommand `cmd:"" help:"${licences}"`
	Version  versionFlag     `help:"Print the version, the commit and the stamp of the engine."`
}

// longHelp are the help texts that are too long to stand beside what they explain.
var longHelp = kong.Vars{
	"adopt_contact": "Your mail or web address. Clients send their measurements to a mail address.",
	"adopt_dir":     "A new folder, or one without these files. Nothing is ever written over.",
	"adopt_chapters": "Built-in chapters to copy into the folder, as part/chapter: yours then take their place. " +
		"With none, a new folder is begun.",
	"changes_done": "Note that you have taken over what you want of this built-in chapter.",
	"book": "Write the whole guide as one book: a page made for printing and an EPUB, with somebody's own " +
		"numbers where a record is named.",
	"book_out":      "The folder for book.html and book.epub. Files of these names are written over.",
	"book_units":    "Write lengths in mm, cm or in; when left out, as the record or the guide does.",
	"book_language": "Write the book in this language of the guide; when left out, in the guide’s own.",
	"book_record": "A measurement record, as a page saves it: JSON, CSV or a link in a text file. Every figure and " +
		"every number in the book is then that rider's.",
	"calc_values": "Inputs, for example inseam=830, inseam=83cm, 'inseam=32 3/4 in', inseam=830±3. A bare number " +
		"is in mm, degrees, kg or percent. A list is read from a file: sizes=@sizes.csv.",
	"intake": "Read the measurements that clients sent, as links, mail or files: an index, those first who need " +
		"attention, and a sheet for each. The exit status is 0 if all was read, 1 if something could not be read, " +
		"2 if the command was not understood.",
	"intake_from": "What clients sent: links, mail (.eml, mbox), files with links, JSON or CSV, folders of such " +
		"files, or - for standard input. Links to other files are not followed.",
	"intake_full": "Print every value, every answer and every caution below each sheet.",
	"intake_html": "Write a printable page for each client and an index into a new or empty folder.",
	"intake_json": "Print an array with one object a line: the record, what is doubtful, every answer, " +
		"what is missing.",
	"intake_notes": "Your own notes on clients, in YAML: a note, words to the client, settings to try next, and from " +
		"them a link back to the client. A file called notes.yaml in a folder of replies is read by itself.",
	"intake_units": "Print lengths on the sheet in mm, cm or in. JSON and CSV are in base units.",
	"language": "Print in this language: en, or one that the guide is translated into, such as de. JSON and CSV " +
		"stay as they are.",
	"licences": "Print the licences of the project, of Go and of every library in this program " +
		"and in the guide.",
	"preview_at": "Where to listen, on this machine only; 127.0.0.1:8040 when left out, " +
		"port 0 takes any free one.",
	"proof_guide": "Your folder; its own chapters are read. Without it, the built-in guide is read.",
	"proof_sarif": "Write the remarks as SARIF 2.1.0 too, for editors and build servers.",
	"publish":     "Build the guide, or your own folder laid over it, into a folder for a web server.",
	"preview_lan": "Show it to the other devices of your network too, such as the phone on the bench: under an " +
		"address that cannot be guessed, with a code to scan.",
	"publish_guide": "Your folder, laid over the built-in guide: same path replaces, new path adds.",
	"publish_out": "Where the site goes. Only a folder that plumbline made, a new one or an empty one " +
		"is written.",
}

// streams is where a command reads and writes.
type streams struct {
	out, err io.Writer
}

// refusal is an error whose text has already been shown, or that is shown as it
// is, with the exit status that belongs to it.
type refusal struct {
	status int
	text   string // empty: everything has been said
}

func (r refusal) Error() string { return r.text }

func main() { os.Exit(run(os.Args[1:], streams{os.Stdout, os.Stderr})) }

// run parses and carries out one command line and returns the exit status.
func run(args []string, s streams) int {
	if name, in, ok := helpWanted(args); ok {
		return finish(explain(s, name, in), s)
	}
	var c commands
	exited := -1
	parser, err := kong.New(&c,
		kong.Name("plumbline"),
		kong.Description("A mountain-bike fit guide that computes: publish it under your own name, "+
			"or ask one calculator here."),
		longHelp,
		kong.UsageOnError(),
		kong.Writers(s.out, s.err),
		kong.Exit(func(status int) { exited = status }),
		kong.BindTo(s.out, (*io.Writer)(nil)),
		kong.Bind(s),
	)
	if err != nil {
		panic(err) // the declaration above is wrong; no argument can cause it
	}
	if len(args) == 0 {
		args = []string{"--help"}
	}
	ctx, err := parser.Parse(args)
	if exited >= 0 {
		return statusDone // --help has printed and wants to leave
	}
	if err != nil {
		fmt.Fprintf(s.err, "plumbline: %v\nSee plumbline --help.\n", err)
		return statusUsage
	}
	return finish(ctx.Run(s), s)
}

// finish says what went wrong, if anything, and turns it into a status.
func finish(err error, s streams) int {
	if err == nil {
		return statusDone
	}
	status := statusNo
	var r refusal
	if errors.As(err, &r) {
		status = r.status
	}
	if text := strings.TrimRight(err.Error(), "\n"); text != "" {
		fmt.Fprintln(s.err, "plumbline: "+text)
	}
	return status
}

// helpWanted tells whether a calculator is to be explained, which the parser
// cannot do: its help knows flags, not inputs. in is the language to explain it in.
func helpWanted(args []string) (name string, in spoken, ok bool) {
	in.Language = "en"
	if len(args) < 2 || args[0] != "calc" {
		return "", in, false
	}
	for i, a := range args[1:] {
		tag, joined := strings.CutPrefix(a, "--language=")
		switch {
		case joined:
			in.Language = tag
		case args[i] == "--language": // the argument before this one
			in.Language = a
		case a == "--help" || a == "-h":
			ok = true
		case name == "" && !strings.HasPrefix(a, "-"):
			name = a
		}
	}
	return name, in, ok && name != ""
}
