package site

import (
	"crypto/sha256"
	"encoding/hex"
	"errors"
	"io/fs"
	"os"
	"path"
	"path/filepath"
	"slices"
	"strings"

	"github.com/rogpeppe/go-internal/diff"

	"plumbline/calculators/measure"
	"plumbline/calculators/words"
	"plumbline/content"
	"plumbline/site/told"
)

// A chapter of the shop's that takes the place of a built-in one remembers, in a line
// “replaces” of its header, which edition of that one it was made from. When a later
// command brings a newer edition, the shop is told and shown what is new in it.

// originalsFolder keeps those editions in the shop's folder, by their marks, so that a
// later command can compare with them. Its name begins with a dot: no guide reads it.
const originalsFolder = ".originals"

// edition is a short mark of a chapter's text.
func edition(text []byte) string {
	sum := sha256.Sum256(text)
	return hex.EncodeToString(sum[:6])
}

// News tells of each chapter in the shop's folder that replaces a built-in one of which
// there is a newer edition now, and of what other languages of the guide lack. dir is the
// folder as the shop names it.
func (g *Guide) News(dir string) (list []words.Text) {
	for _, p := range g.pages {
		if base, ok := g.layers.base[p.Path]; ok && p.local && p.Replaces.Text != "" &&
			p.Replaces.Text != edition(base.text) {
			list = append(
				list,
				told.Of("{0}: the built-in chapter is newer than the one that yours was made from; see {1}",
					p.file, strings.TrimSpace("plumbline changes "+dir)),
			)
		}
	}
	for _, each := range g.others {
		list = append(list, each.olderThanTheirs()...)
		list = append(list, g.missingIn(each)...)
	}
	return append(list, g.olderThanTheirs()...)
}

// missingIn tells what a shop wrote in the guide's own language alone: chapters, and
// what it adds to built-in chapters. Both are shown as they are, marked with their language.
func (g *Guide) missingIn(other *Guide) (list []words.Text) {
	folder := strings.TrimSuffix(other.within, "/")
	var pages []string
	for _, p := range g.pages {
		if to := other.byPath[p.Path]; p.local && to != nil && to.local && to.said == nil {
			pages = append(pages, p.Path)
		}
	}
	if len(pages) > 0 {
		list = append(list, told.Of("{0}: not translated, so shown as you wrote it: {1}; a translation stands in {0}/",
			folder, listed(pages)))
	}
	for _, p := range g.layers.paths {
		if s := other.layers.local[p]; s.local && strings.HasSuffix(p, additionEnding) && s.said == nil {
			list = append(list, told.Of("{0}: what {1} adds is shown as you wrote it; {0}/{2} can translate it", folder,
				s.file, p))
		}
	}
	return list
}

// olderThanTheirs tells of each translated chapter whose original has changed since, and of
// those that do not say what they were made from.
func (g *Guide) olderThanTheirs() (list []words.Text) {
	for _, p := range g.pages {
		if p.original == nil {
			continue
		}
		switch now := edition(p.original.text); p.Original.Text {
		case now:
		case "":
			list = append(list, told.Of("{0}: the translation does not say what it was made from. Add “original: "+
				"{1}” to its header, and you are told when the original changes", p.file, now))
		default:
			list = append(list, told.Of("{0}: the original is newer than the one that this was made from. When "+
				"it is brought up to date, write “original: {1}” into its header", p.file, now))
		}
	}
	return list
}

// checkReplaces checks the line “replaces” of a header.
func (g *Guide) checkReplaces(p *guidePage) []Mistake {
	if _, ok := g.layers.base[p.Path]; ok && p.local || p.Replaces.Text == "" {
		return nil
	}
	at := p.Replaces.At.Position
	return []Mistake{
		{p.file, at.Line + 1, at.Column, told.Of("there is no built-in chapter “{0}” that this could replace", p.Path),
			told.Of("take the line “replaces” out")},
	}
}

// builtIn is a chapter of the built-in guide, by its name with or without .md.
func builtIn(name string) (p string, text []byte, err error) {
	p = strings.TrimSuffix(filepath.ToSlash(name), ".md") + ".md"
	b, err := content.Files.ReadFile(p)
	if err == nil {
		return p, normal(b), nil
	}
	var known []string
	_ = fs.WalkDir(content.Files, ".", func(q string, _ fs.DirEntry, _ error) error {
		if path.Ext(q) == ".md" {
			known = append(known, strings.TrimSuffix(q, ".md"))
		}
		return nil
	})
	remedy := told.Of("write it as part/chapter, like saddle/height; the address of its page has both")
	if near := nearestChapter(strings.TrimSuffix(p, ".md"), known); near != "" {
		remedy = told.Of("did you mean “{0}”?", near)
	}
	return "", nil, told.Wrong("there is no built-in chapter “{0}”, {1}", name, remedy)
}

// nearestChapter is the chapter that somebody most likely meant: one of that file name in any
// part, before one that is spelled nearly so. Translations come last.
func nearestChapter(name string, known []string) string {
	slices.SortStableFunc(known, func(a, b string) int { return strings.Count(a, "/") - strings.Count(b, "/") })
	if i := slices.IndexFunc(known, func(k string) bool { return path.Base(k) == name }); i >= 0 {
		return known[i]
	}
	return measure.NearestName(name, known)
}

// AdoptChapters copies chapters of the built-in guide into the folder dir, where they
// take the place of the built-in ones. It returns the paths of the copies, and writes
// nothing over.
func AdoptChapters(dir string, names []string) (wrote []string, err error) {
	type piece struct{ path, text string }
	var pieces []piece
	for _, name := range names {
		p, text, err := builtIn(name)
		if err != nil {
			return nil, err
		}
		file := filepath.Join(dir, filepath.FromSlash(p))
		if _, err := os.Lstat(file); err == nil {
			return nil, told.Wrong("{0} is there already; nothing was written", file)
		}
		pieces = append(pieces, piece{p, string(marked(text, edition(text)))})
	}
	for _, x := range pieces {
		file := filepath.Join(dir, filepath.FromSlash(x.path))
		if err := writeNew(file, []byte(x.text)); err != nil {
			return wrote, err
		}
		wrote = append(wrote, file)
		_, text, err := builtIn(x.path)
		if err == nil {
			err = keepOriginal(dir, text)
		}
		if err != nil {
			return wrote, err
		}
	}
	return wrote, nil
}

// keepOriginal keeps an edition in the shop's folder.
func keepOriginal(dir string, text []byte) error {
	err := writeNew(filepath.Join(dir, originalsFolder, edition(text)+".md"), text)
	if errors.Is(err, fs.ErrExist) {
		return nil
	}
	return err
}

// writeNew writes a file that is not there yet.
func writeNew(name string, data []byte) error {
	if err := os.MkdirAll(filepath.Dir(name), 0o755); err != nil {
		return err
	}
	f, err := os.OpenFile(name, os.O_WRONLY|os.O_CREATE|os.O_EXCL, 0o644)
	if err != nil {
		return err
	}
	_, err = f.Write(data)
	return errors.Join(err, f.Close())
}

// marked is a chapter whose header says what edition it replaces.
func marked(text []byte, mark string) []byte {
	line := "replaces: " + mark
	head, at, ok := splitHeader(text)
	if !ok {
		return text
	}
	lines := strings.Split(strings.TrimSuffix(string(head), "\n"), "\n")
	if i := slices.IndexFunc(lines, func(l string) bool { return strings.HasPrefix(l, "replaces:") }); i >= 0 {
		lines[i] = line
	} else {
		lines = append(lines, line)
	}
	return []byte("---\n" + strings.Join(lines, "\n") + "\n---\n" + string(text[at:]))
}

// Change is what is new in a built-in chapter that a shop has replaced.
type Change struct {
	Chapter string // part/chapter
	// What says how the two stand to each other.
	What words.Text
	// Diff is what is new in the built-in chapter, or how the shop's differs from it, as a
	// unified diff; "" where there is nothing to show.
	Diff string
	// Newer tells that the built-in chapter is newer than the edition that was replaced.
	Newer bool
}

// What a comparison calls the two chapters.
const (
	today words.English = "built in now"
	yours words.English = "yours"
)

// Changes compares every chapter in the shop's folder that replaces a built-in one with
// what is built in now.
func Changes(dir string, r *words.Reader) (list []Change, err error) {
	root, err := openFolder(dir)
	if err != nil {
		return nil, err
	}
	defer root.Close()
	files, _ := gather(root.FS(), dir, true)
	for p, own := range files {
		if path.Ext(p) != ".md" || strings.HasSuffix(p, additionEnding) {
			continue
		}
		name, now, err := builtIn(p)
		if err != nil {
			continue
		}
		c := Change{Chapter: strings.TrimSuffix(name, ".md")}
		h, _, _ := readHeader(own)
		from := h.Replaces.Text
		switch {
		case from == "":
			c.What = told.Of("your chapter does not say what it was made from. This is how it differs from the "+
				"built-in one. Add “replaces: {0}” to its header, and you are told when that one changes", edition(now))
			c.Diff = compared(name, today.Say(r), now, yours.Say(r), own.text)
		case from == edition(now):
			c.What = told.Of("the built-in chapter is the one that yours was made from")
		default:
			c.Newer = true
			old, err := root.ReadFile(path.Join(originalsFolder, from+".md"))
			if err == nil && edition(old) == from {
				c.What = told.Of("this is new in the built-in chapter")
				c.Diff = compared(name, words.Of("built in when you copied it").Say(r), old, today.Say(r), now)
				break
			}
			c.What = told.Of(
				"the built-in chapter is newer than the one that yours was made from, which is not in the " +
					"folder any more. This is how yours differs from it",
			)
			c.Diff = compared(name, today.Say(r), now, yours.Say(r), own.text)
		}
		list = append(list, c)
	}
	slices.SortFunc(list, func(a, b Change) int { return strings.Compare(a.Chapter, b.Chapter) })
	return list, nil
}

// compared is a unified diff of two editions of a chapter.
func compared(name, oldTitle string, old []byte, newTitle string, now []byte) string {
	text := string(diff.Diff(name+" ("+oldTitle+")", old, name+" ("+newTitle+")", now))
	// The library begins with the command that would make the same.
	if first, rest, ok := strings.Cut(text, "\n"); ok && strings.HasPrefix(first, "diff ") {
		return rest
	}
	return text
}

// Caught notes that a shop has taken over what it wanted of the built-in chapter: its own
// one replaces today's edition from now on.
func Caught(dir, name string) error {
	p, now, err := builtIn(name)
	if err != nil {
		return err
	}
	file := filepath.Join(dir, filepath.FromSlash(p))
	own, err := os.ReadFile(file)
	if err != nil {
		return told.Wrong("{0} cannot be read: {1}", file, told.Plain(err))
	}
	own = normal(own)
	if _, _, ok := splitHeader(own); !ok {
		return told.Wrong("{0} has no header", file)
	}
	if err := keepOriginal(dir, now); err != nil {
		return err
	}
	return os.WriteFile(file, marked(own, edition(now)), 0o644)
}
