package site

import (
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"strings"
)

// readmeFile explains a shop's folder to whoever opens it. It is no page of the guide.
const readmeFile = "README.md"

// Adoption is what a new folder is begun with. All may be empty.
type Adoption struct{ Name, Contact string }

// Adopt begins a shop's folder in dir: guide.yaml with every setting explained, a part
// of the shop's own with one chapter to write over, and a README. It returns the paths
// of what it wrote. It never writes over a file: where one of them is there already it
// writes nothing and names it.
func Adopt(dir string, a Adoption) ([]string, error) {
	files := []struct{ path, text string }{
		{settingsFile, a.settings()},
		{"shop/index.md", adoptedPart},
		{"shop/how-we-fit.md", adoptedChapter},
		{readmeFile, adoptedReadme},
	}
	for _, f := range files {
		name := filepath.Join(dir, filepath.FromSlash(f.path))
		if _, err := os.Lstat(name); err == nil {
			return nil, fmt.Errorf("%s is there already; nothing was written. Name another folder", name)
		} else if !errors.Is(err, fs.ErrNotExist) {
			return nil, fmt.Errorf("%s cannot be looked at: %w", name, err)
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
	b.WriteString(
		"# The settings of your guide. A line that begins with # is a comment: take the # away to use it.\n" +
			"# “plumbline preview” shows what you change at every save, and every mistake with its remedy.\n",
	)
	for _, s := range documented {
		b.WriteByte('\n')
		comment(&b, s.says)
		switch {
		case s.key == "name" && a.Name != "":
			fmt.Fprintf(&b, "name: %s\n", quotedYAML(a.Name))
		case s.key == "contact" && a.Contact != "":
			fmt.Fprintf(&b, "contact: %s\n", quotedYAML(a.Contact))
		case s.key == "notice" && a.Name != "":
			fmt.Fprintf(
				&b,
				"notice: %s\n",
				quotedYAML(a.Name+" publishes this guide as general information for healthy "+
					"adult riders. It does not replace the maker's manual, local law, or the advice of a clinician."),
			)
		case s.key == "add":
			b.WriteString("add:\n  shop:\n    title: Our workshop\n    chapters: [how-we-fit]\n")
		default:
			for line := range strings.Lines(s.example + "\n") {
				b.WriteString("# " + line)
			}
		}
	}
	return b.String()
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

const adoptedPart = `---
title: Our workshop
nav: Our workshop
question: Who are we, and how do we fit bikes?
summary: How we work, and how you come to an appointment with us.
---

We fit mountain bikes. What you set up yourself with this guide you need not pay us for; for the rest we are here.
`

const adoptedChapter = `---
title: How we fit
nav: How we fit
question: What happens at an appointment, and what do you bring?
summary: Measure at home, send us your numbers, and your appointment is for riding and setting.
---

## Before you come

Fill in [Prepare for a fitting](../finish/prepare-for-a-fitting.md) and send us what you measured.
Half an hour with a tape is enough.

## What we do

Write here, in your own words, what happens at an appointment, what it costs and how long it takes.

A calculator can stand on any page. This one is the saddle's:

` + "```calculator saddle-height\n```" + `

` + "```caution post-insertion\n```\n\n```caution torque\n```\n"

const adoptedReadme = `# Your guide

This folder holds what is yours: your name, your contact and your own chapters.
Everything else comes from the guide that is built into the command.

- guide.yaml has your settings. Each is explained in the file.
- A folder is a part of the guide, a file in it a chapter, in Markdown.
  A file at the same path as a built-in chapter takes its place;
  a new one is named in guide.yaml under "add".
- To change a built-in chapter, copy it here: plumbline adopt . saddle/height.
  When a later plumbline has a newer one, publishing tells you,
  and plumbline changes . shows what is new.
- bikes/ has the bikes that you sell, a file each: the maker's size chart as you copied it,
  below three lines that name the bike (---, name: …, ---). They get a page of their own,
  and forms offer their sizes by name.
- symptoms.yaml says symptoms in your words, with the first move that you would try.
- Pictures stand beside the chapters that show them: PNG, JPEG, WebP or AVIF.

See it while you write:

    plumbline preview .

Publish it into a folder, and put that folder on any web server:

    plumbline publish . -o ../published

Nothing is published as long as there is a mistake; each is told with file, line and remedy.
This README is not published.
`
