// Package catalogue reads what translators write, the gettext catalogues in content/texts
// and in a shop's folder, and makes of them a language to read in and the files by which
// the engines learn it.
package catalogue

import (
	"io/fs"
	"path"
	"slices"
	"strings"

	"github.com/chai2010/gettext-go/po"
	"golang.org/x/text/language"

	"plumbline/calculators/words"
	"plumbline/content"
	"plumbline/site/told"
)

// Folder has the catalogues, in content and in a shop's folder, and Ending is that of one.
const (
	Folder = "texts"
	Ending = ".po"
)

// Template is what translations start from. It stands beside the catalogues.
const Template = "plumbline.pot"

// Catalogue is one language.
type Catalogue struct {
	Tag   string // BCP 47
	Fuzzy int    // translations that are left out because they were made for an earlier English
	Empty int    // texts that nobody has translated

	how   words.Language // it writes numbers and counts
	texts map[words.English]text
}

// text is one translation, the forms of a counted one with a tab between, and the packages
// that say it.
type text struct {
	more  string // the English of a text that counts, for another number than one
	said  string
	fuzzy bool
	by    []string
}

// Fault is what is wrong with a catalogue, and where.
type Fault struct {
	Line int
	What words.Text
}

// Built reads the catalogue of the language that comes with the program: that of the tag
// itself, or of its language alone. It is nil for English and where there is none.
func Built(tag string) *Catalogue {
	for _, name := range Names(tag) {
		if file, err := content.Files.ReadFile(path.Join(Folder, name+Ending)); err == nil {
			c, _ := Read(tag, file) // a test reads those that come with the program
			return c
		}
	}
	return nil
}

// BuiltIn are the languages of the catalogues that come with the program.
func BuiltIn() (tags []string) {
	list, _ := fs.Glob(content.Files, path.Join(Folder, "*"+Ending)) // the pattern is sound
	for _, file := range list {
		tags = append(tags, strings.TrimSuffix(path.Base(file), Ending))
	}
	return tags
}

// English tells whether a language needs no catalogue.
func English(tag string) bool {
	t, err := language.Parse(tag)
	base, sure := t.Base()
	return tag == "" || err == nil && base.String() == "en" && sure == language.Exact
}

// Names are the names that a language's catalogue may have, the nearest first: of de-AT
// “de-AT” and “de”; none for English, which needs no catalogue.
func Names(tag string) []string {
	t, err := language.Parse(tag)
	if err != nil || English(tag) {
		return nil
	}
	base, _ := t.Base()
	return slices.Compact([]string{t.String(), base.String()})
}

// Read reads the catalogues of one language, later ones over earlier ones. It leaves out
// what is faulty in them, and what the guide says no more.
func Read(tag string, files ...[]byte) (*Catalogue, []Fault) {
	c := &Catalogue{Tag: tag, texts: map[words.English]text{}}
	template, err := content.Files.ReadFile(path.Join(Folder, Template))
	if err != nil {
		return c, []Fault{{What: told.Of("{0}", err)}}
	}
	var faults []Fault
	narrow := false
	forms := formsOf(tag)
	for i, file := range append([][]byte{template}, files...) {
		f, err := po.Load(file)
		if err != nil {
			return c, append(faults, Fault{1, told.Of("this is no gettext catalogue: {0}", err)})
		}
		narrow = narrow || f.MimeHeader.UnknowFields["X-Unit-Space"] == "narrow"
		for k := range f.Messages {
			m := &f.Messages[k]
			if i == 0 {
				c.texts[key(m)] = text{more: m.MsgIdPlural, by: strings.Split(m.ExtractedComment, ", ")}
			} else if what := c.take(m, forms); !what.None() {
				faults = append(faults, Fault{m.StartLine, what})
			}
		}
	}
	c.how = words.Language{Tag: tag, Decimal: decimal(tag), Space: space(narrow), Forms: forms}
	for _, t := range c.texts {
		switch {
		case t.said != "":
		case t.fuzzy:
			c.Fuzzy++
		default:
			c.Empty++
		}
	}
	return c, faults
}

// key is the English under which the program looks for a text.
func key(m *po.Message) words.English {
	if m.MsgContext != "" {
		return words.English(m.MsgContext + words.Context + m.MsgId)
	}
	return words.English(m.MsgId)
}

// take puts one translation into the catalogue, and says what is wrong with it.
func (c *Catalogue) take(m *po.Message, forms string) (what words.Text) {
	t, known := c.texts[key(m)]
	said := []string{m.MsgStr}
	if m.MsgIdPlural != "" {
		said = m.MsgStrPlural
	}
	if !known || len(said) == 0 || slices.Contains(said, "") {
		return words.Text{}
	}
	if t.fuzzy = m.GetFuzzy(); !t.fuzzy {
		if what = wrong(m, said, forms); what.None() {
			t.said = strings.Join(said, "\t")
		}
	}
	c.texts[key(m)] = t
	return what
}

// wrong says why a translation cannot be used.
func wrong(m *po.Message, said []string, forms string) words.Text {
	if m.MsgIdPlural != "" {
		if want := count(forms); len(said) != want {
			return told.Of("“{0}” has {1} forms, and the language has {2}", m.MsgId, len(said), want)
		}
	}
	for _, s := range said {
		if strings.ContainsAny(s, "\n\t") {
			return told.Of("“{0}” is one line without tabs, and its translation is not", m.MsgId)
		}
		// A counted text may leave its number out: “one day”.
		english := holes(m.MsgId)
		if m.MsgIdPlural != "" {
			english = holes(m.MsgIdPlural)
		}
		for _, h := range holes(s) {
			if !slices.Contains(english, h) {
				return told.Of("“{0}” has no {1}, and its translation has", m.MsgId, h)
			}
		}
		for _, h := range english {
			if !slices.Contains(holes(s), h) && m.MsgIdPlural == "" {
				return told.Of("“{0}” has {1}, and its translation has not", m.MsgId, h)
			}
		}
	}
	return words.Text{}
}

// holes lists the holes of a text, each once, in order.
func holes(s string) (list []string) {
	for i := 0; i+2 < len(s); i++ {
		if s[i] == '{' && s[i+1] >= '0' && s[i+1] <= '9' && s[i+2] == '}' {
			list = append(list, s[i:i+3])
		}
	}
	slices.Sort(list)
	return slices.Compact(list)
}

// Language is the language with all its texts.
func (c *Catalogue) Language() *words.Language {
	if c == nil {
		return nil
	}
	return words.Speaking(c.how, c.said(func([]string) bool { return true }))
}
