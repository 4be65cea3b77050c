// Command texts lists every text that a reader may see, and offers the new ones to the
// translators: make texts.
//
// It writes content/texts/plumbline.pot, which has the English of them all, and brings
// each language's catalogue beside it up to date with msgmerge of GNU gettext: new texts
// come in empty, a text whose English has changed keeps its translation, marked fuzzy and
// with the English that it was made for, and what is said no more goes to the end. A
// translated chapter that does not say what it was made from is given its original's
// edition.
package main

import (
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strings"

	"plumbline/site"
)

// folder has the template and a catalogue for each language.
const folder = "content/texts"

// templateFile is what translations start from.
const templateFile = "plumbline.pot"

func main() {
	if err := update("."); err != nil {
		fmt.Fprintln(os.Stderr, "texts:", err)
		os.Exit(1)
	}
}

// update brings template and catalogues up to date. root is the top of the source tree.
func update(root string) error {
	list, err := gather(root)
	if err != nil {
		return err
	}
	if list, err = withPages(list); err != nil {
		return err
	}
	template := filepath.Join(root, folder, templateFile)
	if err := os.WriteFile(template, write(list), 0o644); err != nil {
		return err
	}
	catalogues, err := filepath.Glob(filepath.Join(root, folder, "*.po"))
	if err != nil {
		return err
	}
	for _, c := range catalogues {
		if err := offer(template, c); err != nil {
			return err
		}
		tag := strings.TrimSuffix(filepath.Base(c), filepath.Ext(c))
		if _, err := os.Stat(filepath.Join(root, "content", tag)); err != nil {
			continue // no chapter is there in it
		}
		if _, err := site.Stamp(filepath.Join(root, "content"), tag); err != nil {
			return err
		}
	}
	fmt.Printf("%d texts, %d catalogues\n", len(list), len(catalogues))
	return nil
}

// offer brings a catalogue up to date with the template.
func offer(template, catalogue string) error {
	merge := exec.Command("msgmerge", "--quiet", "--update", "--previous", "--no-wrap", "--backup=none", catalogue,
		template)
	merge.Stderr = os.Stderr
	if err := merge.Run(); err != nil {
		return fmt.Errorf("%s could not be brought up to date (msgmerge belongs to GNU gettext): %w", catalogue, err)
	}
	return nil
}
