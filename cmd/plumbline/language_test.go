package main

import (
	"bytes"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"
	"unicode"

	"github.com/alecthomas/kong"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"plumbline/calculators/words"
	"plumbline/site"
	"plumbline/site/catalogue"
)

// marked reads a language in which each text stands between ⟦ and ⟧, so that a word beside
// them went around the catalogue.
func marked() *words.Reader { return &words.Reader{Language: catalogue.Marked("de").Language()} }

// outside are the words of a text outside the marks, but for those that are no language:
// names of files, keys, flags and commands, and what has been given.
func outside(s string, given ...string) (list []string) {
	for _, g := range given {
		s = strings.ReplaceAll(s, g, " ")
	}
	var b strings.Builder
	depth := 0
	for _, c := range s {
		switch {
		case c == '⟦':
			depth++
		case c == '⟧':
			depth--
		case depth == 0:
			b.WriteRune(c)
		}
	}
	for _, w := range strings.FieldsFunc(b.String(), unicode.IsSpace) {
		word := strings.Trim(w, ".,;:()[]<>|'\"…")
		if strings.IndexFunc(word, unicode.IsLetter) >= 0 && !strings.ContainsAny(word, "-/=_@+.:") {
			list = append(list, word)
		}
	}
	return list
}

// TestNoHelpGoesAroundTheCatalogue: the help of the whole command and of each.
func TestNoHelpGoesAroundTheCatalogue(t *testing.T) {
	var c commands
	parser, err := kong.New(&c, kong.Name("plumbline"), kong.Description(description.Say(marked())), helpIn(marked()))
	require.NoError(t, err)
	lists := [][]string{{"--help"}}
	for _, n := range parser.Model.Children {
		lists = append(lists, []string{n.Name, "--help"})
		for _, f := range n.Flags {
			assert.Empty(t, outside(f.Help), "%s --%s", n.Name, f.Name)
		}
		for _, p := range n.Positional {
			assert.Empty(t, outside(p.Help), "%s %s", n.Name, p.Name)
		}
		assert.Empty(t, outside(n.Help), n.Name)
		assert.NotEmpty(t, n.Help, n.Name)
	}
	english := regexp.MustCompile(`Usage:|\bflags\b|<command>|<dir>|<chapters>|=DIR|=FILE|=ADDRESS|=CHAPTER|` +
		`Flags:|Arguments:|Commands:|Run "|context-sensitive|\bPrint|\bShow|\bWrite`)
	for _, args := range lists {
		var out, errs bytes.Buffer
		assert.Equal(t, statusDone, run(append(args, "--language", "de"), streams{out: &out, err: &errs}))
		assert.Empty(t, errs.String())
		assert.Contains(t, out.String(), "Aufruf: plumbline")
		assert.Empty(t, english.FindAllString(out.String(), -1), "%v", args)
	}
}

// TestTheParserIsUnderstood: whatever the parser says of a wrong command line is told in our
// own words.
func TestTheParserIsUnderstood(t *testing.T) {
	for line, want := range map[string]string{
		"publsh":                "es gibt keinen Befehl „publsh“; meintest du publish?",
		"frobnicate":            "„frobnicate“ ist mehr, als dieser Befehl nimmt.",
		"licences more":         "„more“ ist mehr, als dieser Befehl nimmt.",
		"calc --unit mm":        "die Option --unit gibt es nicht; meintest du --units?",
		"publish --frobnicate":  "die Option --frobnicate gibt es nicht.",
		"publish":               "--out=ORDNER fehlt.",
		"publish -o":            "--out braucht einen Wert dahinter.",
		"calc --units yd":       "--units ist „yd“ und sollte eines von diesen sein",
		"intake --json --csv x": "--json und --csv gehen nicht zusammen.",
		"intake":                "<link|datei> ... fehlt.",
		"calc --json=3":         "--json nimmt true, false oder nichts dahinter, und „3“ ist nichts davon.",
		"--units mm":            "die Option --units gibt es nicht.",
		"adopt":                 "<ordner> fehlt.",
	} {
		var out, errs bytes.Buffer
		args := append([]string{"--language=de"}, strings.Fields(line)...)
		assert.Equal(t, statusUsage, run(args, streams{out: &out, err: &errs}), line)
		assert.Contains(t, errs.String(), want, line)
		assert.Contains(t, errs.String(), "Siehe plumbline --help.", line)
	}
}

// TestNothingThatIsPrintedGoesAroundTheCatalogue carries out commands on a folder that has
// much wrong with it, and on one that has not.
func TestNothingThatIsPrintedGoesAroundTheCatalogue(t *testing.T) {
	dir := t.TempDir()
	var out, errs bytes.Buffer
	s := streams{out: &out, err: &errs, voice: &voice{"de", marked()}}
	good := filepath.Join(dir, "good")
	wrong := filepath.Join(dir, "wrong")
	for name, text := range map[string]string{
		"guide.yaml": "name: X\nunits: yd\ncolours: {first: \"#eeeeee\", second: red}\nleave_out: [no/such]\n" +
			"frob: 1\nlanguages: [en, xx-yy-zz]\nhide: [saddle/height]\nadd:\n  saddle: [own, gone]\nunits: mm\n",
		"saddle/own.md": "---\ntitle: Own\nnav: Own\nquestion: What?\nsummary: This.\nsources: [nobody]\n---\n\n# " +
			"One\n\n" +
			"#### Deep\n\nA [link](gone.md), ![](x.png) and <b>html</b> [@nobody].\n\n```caution nothing\n```\n\n" +
			"```calculator saddle-hight\nx\n```\n\n| a | b |\n| --- | --- |\n| 1 |\n",
		"bikes/heron.csv": "---\nname: Heron\nyear: soon\n---\nsize,reech\nM,x\n",
		"symptoms.yaml":   "knee-frnt:\n  label: x\n",
		"search.yaml":     "same: [[one]]\n",
		"texts/de.po":     "msgid \"Saddle height\"\nmsgstr \"{0}\"\n",
		"page.html":       "x",
		"stray.yml":       "x",
	} {
		require.NoError(t, os.MkdirAll(filepath.Join(wrong, filepath.Dir(name)), 0o755))
		require.NoError(t, os.WriteFile(filepath.Join(wrong, name), []byte(text), 0o600))
	}
	notes := filepath.Join(dir, "notes.yaml")
	require.NoError(t, os.WriteFile(notes, []byte("guide: x\nfrm: y\nclients:\n  Kim:\n    next: [1]\n"), 0o600))
	mail := filepath.Join(dir, "mail.eml")
	require.NoError(t, os.WriteFile(mail, []byte("From: a@b.example\nTo: c@d.example\nSubject: 1\n\n2\n"), 0o600))
	empty := filepath.Join(dir, "empty")
	require.NoError(t, os.WriteFile(empty, nil, 0o600))
	given := []string{dir, "guide.yaml", "plumbline", "Flesch–Kincaid", "Heron", "reech", "Kim", "\x1b[K"}
	for name, do := range map[string]func() error{
		"adopt":          func() error { return (&adopt{Dir: good}).Run(s) },
		"adopt again":    func() error { return (&adopt{Dir: good}).Run(s) },
		"adopt chapters": func() error { return (&adopt{Dir: wrong, Chapters: []string{"saddle/hight"}}).Run(s) },
		"publish wrong":  func() error { return (&publish{Guide: wrong, Out: filepath.Join(dir, "out")}).Run(s) },
		"proof wrong":    func() error { return (&proof{Guide: wrong}).Run(s) },
		"changes": func() error {
			return (&changesCommand{Guide: wrong, Done: []string{"saddle/hight"}}).Run(s)
		},
		"changes none": func() error { return (&changesCommand{Guide: wrong}).Run(s) },
		"book":         func() error { return (&bookCommand{Record: notes, Out: dir}).Run(s) },
		"preview":      func() error { return (&preview{At: "x", Lan: true}).Run(s) },
		"calc":         func() error { return (&calc{Name: "saddle-hight"}).Run(s) },
		"intake":       func() error { return (&intakeCommand{From: []string{mail, empty}, Notes: notes}).Run(s) },
	} {
		out.Reset()
		errs.Reset()
		finish(do(), s)
		printed := out.String() + errs.String()
		assert.NotEmpty(t, printed, name)
		left := slices.DeleteFunc(outside(printed, given...), func(w string) bool { // what a rule of proof is called
			return slices.ContainsFunc(site.Rules(), func(r *site.Rule) bool { return r.ID == w })
		})
		assert.Empty(t, left, "%s: %s", name, printed)
	}
}

// TestAFolderIsReadInItsLanguage: without --language a command speaks as the guide does.
func TestAFolderIsReadInItsLanguage(t *testing.T) {
	dir := filepath.Join(t.TempDir(), "leitfaden")
	var out, errs bytes.Buffer
	s := streams{out: &out, err: &errs}
	require.Equal(t, statusDone, run([]string{"adopt", dir, "--language", "de", "--name", "Erlenhof", "--contact",
		"hallo@erlenhof.example"}, s), errs.String())
	text, err := os.ReadFile(filepath.Join(dir, "guide.yaml"))
	require.NoError(t, err)
	assert.Contains(t, string(text), "\nlanguage: de\n")
	assert.NotContains(t, string(text), "Your ")
	require.NoError(t, os.WriteFile(filepath.Join(dir, "guide.yaml"), append(text, "unit: mm\n"...), 0o600))
	assert.Equal(t, statusNo, run([]string{"publish", dir, "-o", t.TempDir()}, s))
	assert.Contains(t, errs.String(), "den Schlüssel „unit“ gibt es hier nicht, meintest du „units“?")
	errs.Reset()
	assert.Equal(t, statusNo, run([]string{"publish", dir, "-o", t.TempDir(), "--language", "en"}, s))
	assert.Contains(t, errs.String(), "the key “unit” is not known here, did you mean “units”?")
}

// TestTheSystemIsHeardInTheReadersLanguage: what the system says of files is told in our own
// words, and what nobody foresaw is quoted.
func TestTheSystemIsHeardInTheReadersLanguage(t *testing.T) {
	dir := t.TempDir()
	file := filepath.Join(dir, "file")
	require.NoError(t, os.WriteFile(file, []byte("x"), 0o600))
	none, through := filepath.Join(dir, "none"), filepath.Join(file, "x")
	for want, args := range map[string][]string{
		"none: Datei oder Ordner nicht gefunden":                      {"book", "--record", none, "-o", dir},
		"lässt sich nicht ansehen: ein Teil des Pfads ist eine Datei": {"adopt", through},
		"lässt sich nicht lesen: Datei oder Ordner nicht gefunden":    {"intake", none},
	} {
		var out, errs bytes.Buffer
		run(append(args, "--language", "de"), streams{out: &out, err: &errs})
		said := strings.Join(strings.Fields(out.String()+errs.String()), " ")
		assert.Contains(t, said, want, "%v", args)
	}
}
