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
	"slices"
	"strings"

	"github.com/alecthomas/kong"

	"plumbline/calculators/words"
	"plumbline/site"
	"plumbline/site/told"
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
	Preview preview        `cmd:"" help:"${preview}"`
	Book    bookCommand    `cmd:"" help:"${book}"`
	Intake  intakeCommand  `cmd:"" help:"${intake}"`
	Adopt   adopt          `cmd:"" help:"${adopt}"`
	Changes changesCommand `cmd:"" help:"${changes}"`
	Proof   proof          `cmd:"" help:"${proof}"`
	Hosting hosting        `cmd:"" help:"${hosting}"`
	Calc    calc           `cmd:"" help:"${calc}"`

	Licences licencesCommand `cmd:"" help:"${licences}"`
	Version  versionFlag     `help:"${version}"`
	Language string          `placeholder:"TAG" help:"${language}"`
}

// streams is where a command reads and writes.
type streams struct {
	out, err io.Writer
	voice    *voice // nil is English
}

// refusal is an error whose text has already been shown, or that is shown as it
// is, with the exit status that belongs to it.
type refusal struct {
	status int
	text   words.Text // none: everything has been said
}

// Error says it in English.
func (r refusal) Error() string { return r.text.Say(nil) }

func main() { os.Exit(run(os.Args[1:], streams{out: os.Stdout, err: os.Stderr})) }

// run parses and carries out one command line and returns the exit status.
func run(args []string, s streams) int {
	asked := languageAsked(args)
	s.voice = &voice{asked, site.SpeakerOf(asked)}
	// A guide may be in a language that its shop has brought along, and so may a book of it.
	if !spoken(asked) && args[0] != "book" {
		return finish(unspoken(asked), s)
	}
	if name, ok := helpWanted(args); ok {
		return finish(explain(s, name), s)
	}
	var c commands
	exited := -1
	parser, err := kong.New(&c,
		kong.Name("plumbline"),
		kong.Description(description.Say(s.reader())),
		helpIn(s.reader()),
		kong.Help(ownHelp(s.reader())),
		kong.PostBuild(func(k *kong.Kong) error {
			k.Model.HelpFlag.Help = s.say("Explain the command.")
			nameUsage(k.Model.Node, s.reader())
			return nil
		}),
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
		usageError(err, s.err, s.reader())
		return statusUsage
	}
	return finish(ctx.Run(s), s)
}

// finish says what went wrong, if anything, and turns it into a status.
func finish(err error, s streams) int {
	if err == nil {
		return statusDone
	}
	status, text := statusNo, told.Say(err, s.reader())
	var r refusal
	if errors.As(err, &r) {
		status, text = r.status, r.text.Say(s.reader())
	}
	if text = strings.TrimRight(text, "\n"); text != "" {
		fmt.Fprintln(s.err, "plumbline: "+text)
	}
	return status
}

// helpWanted tells whether a calculator is to be explained, which the parser
// cannot do: its help knows flags, not inputs.
func helpWanted(args []string) (name string, ok bool) {
	at := slices.Index(args, "calc")
	if at < 0 ||
		at > 0 && strings.Join(args[:at], " ") != languageFlag+" "+args[at-1] &&
			!strings.HasPrefix(args[0], languageFlag+"=") {
		return "", false
	}
	for i, a := range args[at+1:] {
		switch {
		case args[at+i] == languageFlag: // the argument before this one
		case a == "--help" || a == "-h":
			ok = true
		case name == "" && !strings.HasPrefix(a, "-"):
			name = a
		}
	}
	return name, ok && name != ""
}
