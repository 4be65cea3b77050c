package site

import (
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"strings"

	"plumbline/calculators/words"
	"plumbline/site/told"
)

// readmeFile explains a shop's folder to whoever opens it. It is no page of the guide.
const readmeFile = "README.md"

// Adoption is what a new folder is begun with. Name and Contact may be empty.
type Adoption struct {
	Name, Contact string
	Reader        *words.Reader // whose language it is written in; nil is English
}

// Adopt begins a shop's folder in dir: guide.yaml with every setting explained, a part
// of the shop's own with one chapter to write over, and a README. It returns the paths
// of what it wrote. It never writes over a file: where one of them is there already it
// writes nothing and names it.
func Adopt(dir string, a Adoption) ([]string, error) {
	files := []struct{ path, text string }{
		{settingsFile, a.settings()},
		{"shop/index.md", a.part()},
		{"shop/how-we-fit.md", a.chapter()},
		{readmeFile, a.readme()},
	}
	for _, f := range files {
		name := filepath.Join(dir, filepath.FromSlash(f.path))
		if _, err := os.Lstat(name); err == nil {
			return nil, told.Wrong("{0} is there already; nothing was written. Name another folder", name)
		} else if !errors.Is(err, fs.ErrNotExist) {
			return nil, told.Wrong("{0} cannot be looked at: {1}", name, told.Plain(err))
		}
	}
	var wrote []string
	for _, f := range files {
		name := filepath.Join(dir, filepath.FromSlash(f.path))
		// What came into being since is not written over either.
		if err := writeNew(name, []byte(f.text)); err != nil {
			return wrote, err
		}
		wrote = append(wrote, name)
	}
	return wrote, nil
}

// settings writes guide.yaml: what was given stands in it, the part of the shop's own is
// added, and every other setting is explained and commented out.
func (a Adoption) settings() string {
	var b strings.Builder
	comment(&b, a.say("The settings of your guide. A line that begins with # is a comment: take the # away to use it."))
	comment(&b, a.say("“plumbline preview” shows what you change at every save, and every mistake with its remedy."))
	for _, s := range documented {
		b.WriteByte('\n')
		comment(&b, a.say(s.says))
		switch {
		case s.key == "name" && a.Name != "":
			fmt.Fprintf(&b, "name: %s\n", quotedYAML(a.Name))
		case s.key == "contact" && a.Contact != "":
			fmt.Fprintf(&b, "contact: %s\n", quotedYAML(a.Contact))
		case s.key == "notice" && a.Name != "":
			fmt.Fprintf(
				&b,
				"notice: %s\n",
				quotedYAML(a.say("{0} publishes this guide as general information for healthy adult riders. It does "+
					"not replace the maker’s manual, local law, or the advice of a clinician.", a.Name)),
			)
		case s.key == "language" && a.Reader != nil && a.Reader.Language != nil:
			fmt.Fprintf(&b, "language: %s\n", a.Reader.Language.Tag)
		case s.key == "add":
			fmt.Fprintf(&b, "add:\n  shop:\n    title: %s\n    chapters: [how-we-fit]\n", a.say(ourWorkshop))
		default:
			for line := range strings.Lines(s.example + "\n") {
				b.WriteString("# " + line)
			}
		}
	}
	return b.String()
}

// say says a text of the new folder.
func (a Adoption) say(english words.English, holes ...any) string {
	return told.Of(english, holes...).Say(a.Reader)
}

// quotedYAML writes a text so that YAML reads it as it is.
func quotedYAML(s string) string { return "'" + strings.ReplaceAll(s, "'", "''") + "'" }

// comment writes a text as comments of at most 88 letters.
func comment(b *strings.Builder, text string) {
	line := "#"
	for _, w := range strings.Fields(text) {
		if len(line)+1+len(w) > 88 {
			b.WriteString(line + "\n")
			line = "#"
		}
		line += " " + w
	}
	b.WriteString(line + "\n")
}

const (
	ourWorkshop words.English = "Our workshop"
	howWeFit    words.English = "How we fit"
)

func (a Adoption) part() string {
	return "---\ntitle: " + a.say(ourWorkshop) + "\nnav: " + a.say(ourWorkshop) +
		"\nquestion: " + a.say("Who are we, and how do we fit bikes?") +
		"\nsummary: " + a.say("How we work, and how you come to an appointment with us.") + "\n---\n\n" +
		a.say(
			"We fit mountain bikes. What you set up yourself with this guide you need not pay us for; for the rest we "+
				"are here.",
		) + "\n"
}

func (a Adoption) chapter() string {
	return "---\ntitle: " + a.say(howWeFit) + "\nnav: " + a.say(howWeFit) +
		"\nquestion: " + a.say("What happens at an appointment, and what do you bring?") +
		"\nsummary: " + a.say("Measure at home, send us your numbers, and your appointment is for riding and "+
		"setting.") +
		"\n---\n\n## " + a.say("Before you come") + "\n\n" +
		a.say(
			"Fill in [Prepare for a fitting](../finish/prepare-for-a-fitting.md) and send us what you measured. "+
				"Half an "+
				"hour with a tape is enough.",
		) + "\n\n## " + a.say("What we do") + "\n\n" +
		a.say("Write here, in your own words, what happens at an appointment, what it costs and how long it takes.") +
		"\n\n" + a.say("A calculator can stand on any page. This one is the saddle’s:") +
		"\n\n```calculator saddle-height\n```\n\n```caution post-insertion\n```\n\n```caution torque\n```\n"
}

func (a Adoption) readme() string {
	var b strings.Builder
	b.WriteString("# " + a.say("Your guide") + "\n\n")
	b.WriteString(
		a.say("This folder holds what is yours: your name, your contact and your own chapters. Everything else "+
			"comes from the guide that is built into the command.") + "\n\n",
	)
	for _, line := range []string{
		a.say("guide.yaml has your settings. Each is explained in the file."),
		a.say("A folder is a part of the guide, a file in it a chapter, in Markdown. A file at the same path as a " +
			"built-in " +
			"chapter takes its place; a new one is named in guide.yaml under “add”."),
		a.say("To change a built-in chapter, copy it here: {0}. When a later plumbline has a newer one, publishing "+
			"tells "+
			"you, and {1} shows what is new.", "`plumbline adopt . saddle/height`", "`plumbline changes .`"),
		a.say("To add to a built-in chapter, write a file of its name that ends in .add.md, like {0}. What stands "+
			"there under a heading of the chapter is added to that section; other headings become sections of "+
			"their own.", "`saddle/height.add.md`"),
		a.say("bikes/ has the bikes that you sell, a file each, which ends in .csv: the maker’s size chart as you " +
			"copied it, below the lines that name the bike. They get a page of their own, and forms offer their " +
			"sizes by name."),
		a.say("symptoms.yaml says symptoms in your words, with the first move that you would try."),
		a.say("Pictures stand beside the chapters that show them: PNG, JPEG or WebP, at any size."),
		a.say("Another language has a folder of its own, like {0} for German.", "`de/`"),
	} {
		b.WriteString("- " + line + "\n")
	}
	b.WriteString("\n" + a.say("The name of a chapter is in the address of its page: {0} is {1}.", "saddle/height.html",
		"saddle/height") + "\n\n" + a.say("A bike, for example {0}:", "bikes/heron.csv") + "\n\n" + adoptedBike +
		"\n" + a.say("A symptom in {0}:", "symptoms.yaml") + "\n\n" + a.symptom() + "\n")
	b.WriteString(a.say("See it while you write:") + "\n\n    plumbline preview .\n\n" +
		a.say("Publish it into a folder, and put that folder on any web server:") +
		"\n\n    plumbline publish . -o ../published\n\n" +
		a.say(
			"Nothing is published as long as there is a mistake; each is told with file, line and remedy. This "+
				"README is "+
				"not published.",
		) + "\n")
	return b.String()
}

// adoptedBike and symptom are examples, as a README has code.
const adoptedBike = `    ---
    name: Heron
    year: 2026
    ---
    Size;S;M;L
    Reach;430;455;480
    Stack;610;620;630
    Head angle;64.5;64.5;64.5
    Seat angle;76;76.5;77
    Seat tube;390;420;445
`

func (a Adoption) symptom() string {
	return "    hands:\n      label: " + a.say("My hands go to sleep") +
		"\n      first:\n        do: " + a.say("Turn the bar a little, so that your wrists are straight.") +
		"\n        why: " + a.say("Most hands that we see are bent up at the wrist.") + "\n"
}
