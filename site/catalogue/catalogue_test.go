package catalogue

import (
	"slices"
	"strings"
	"testing"

	"github.com/andybalholm/brotli"
	"github.com/chai2010/gettext-go/po"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"golang.org/x/text/language"

	"plumbline/calculators/measure"
	"plumbline/calculators/words"
	"plumbline/content"
)

const german = `msgid ""
msgstr ""
"Language: de\n"
"X-Unit-Space: narrow\n"
"Plural-Forms: nplurals=2; plural=(n != 1);\n"

msgid "Inside leg"
msgstr "Schrittlänge"

#, fuzzy
msgid "Saddle height"
msgstr "Satelhöhe"

msgid "One other guess hardly matters"
msgid_plural "{0} other guesses hardly matter"
msgstr[0] "Eine weitere Schätzung ist fast ohne Einfluss"
msgstr[1] "{0} weitere Schätzungen sind fast ohne Einfluss"

msgid "{0}: {1}, plus or minus {2}."
msgstr "{0}: plus oder minus {2}, {1}."

msgid "Crank length"
msgstr ""

msgid "Said long ago"
msgstr "Früher"
`

func TestACatalogueIsRead(t *testing.T) {
	c, faults := Read("de", []byte(german))
	require.Empty(t, faults)
	r := &words.Reader{Language: c.Language()}
	assert.Equal(t, "Schrittlänge", words.Of("Inside leg").Say(r))
	assert.Equal(t, "Saddle height", words.Of("Saddle height").Say(r), "a fuzzy translation is not said")
	assert.Equal(t, "Crank length", words.Of("Crank length").Say(r))
	assert.Equal(t, 1, c.Fuzzy)
	all, _ := Read("de")
	assert.Equal(t, all.Empty-4, c.Empty)
	guesses := func(n int) string {
		return words.Count(n, "One other guess hardly matters", "{0} other guesses hardly matter").Say(r)
	}
	assert.Equal(t, "Eine weitere Schätzung ist fast ohne Einfluss", guesses(1))
	assert.Equal(t, "3 weitere Schätzungen sind fast ohne Einfluss", guesses(3))
	assert.Equal(t, "a: plus oder minus c, b.", words.Of("{0}: {1}, plus or minus {2}.", words.Name("a"),
		words.Name("b"), words.Name("c")).Say(r))
	assert.False(t, r.Language.Has("Said long ago"))
	assert.Equal(t, "83,5\u202fcm", measure.Millimetres(835).Say(&words.Reader{Language: c.Language(), Units: "cm"}))
}

// A shop lays its own words over ours.
func TestALaterCatalogueLiesOver(t *testing.T) {
	c, faults := Read("de", []byte(german), []byte("msgid \"Inside leg\"\nmsgstr \"Innenbeinlänge\"\n"))
	require.Empty(t, faults)
	r := &words.Reader{Language: c.Language()}
	assert.Equal(t, "Innenbeinlänge", words.Of("Inside leg").Say(r))
	assert.True(t, c.Language().Has("{0}: {1}, plus or minus {2}."))
	assert.Equal(t, "\u202f", r.UnitSpace(), "the head of the first still holds")
}

func TestFaultyTranslationsAreNamed(t *testing.T) {
	for said, want := range map[string]string{
		"msgid \"{0}: {1}, plus or minus {2}.\"\nmsgstr \"{0}: {1}.\"\n":     "has {2}, and its translation has not",
		"msgid \"Inside leg\"\nmsgstr \"Schritt {0}\"\n":                     "has no {0}, and its translation has",
		"msgid \"Inside leg\"\nmsgstr \"Schritt\\nlänge\"\n":                 "one line without tabs",
		"msgid \"Inside leg\"\nmsgstr \"Schrittlänge\"\nno such line here\n": "no gettext catalogue",
		"msgid \"One other guess hardly matters\"\nmsgid_plural \"{0} other guesses hardly matter\"\n" +
			"msgstr[0] \"eine\"\n": "has 1 forms, and the language has 2",
	} {
		c, faults := Read("de", []byte(said))
		require.Len(t, faults, 1, said)
		assert.Contains(t, faults[0].What.Say(nil), want)
		assert.Equal(t, 1, faults[0].Line)
		assert.False(t, c.Language().Has("Inside leg"))
	}
}

// The order and number of forms are those of GNU gettext's manual, section “Plural forms”.
func TestFormsAreThoseOfGettext(t *testing.T) {
	for tag, want := range map[string]func(n int) int{
		"ja": func(int) int { return 0 },
		"de": func(n int) int { return b(n != 1) },
		"fr": func(n int) int { return b(n > 1) },
		"pl": func(n int) int {
			switch {
			case n == 1:
				return 0
			case n%10 >= 2 && n%10 <= 4 && (n%100 < 10 || n%100 >= 20):
				return 1
			}
			return 2
		},
		"ru": func(n int) int {
			switch {
			case n%10 == 1 && n%100 != 11:
				return 0
			case n%10 >= 2 && n%10 <= 4 && (n%100 < 10 || n%100 >= 20):
				return 1
			}
			return 2
		},
		"cs": func(n int) int { return b(n != 1) + b(n != 1 && (n < 2 || n > 4)) },
	} {
		forms := formsOf(tag)
		for n := range forms {
			assert.Equal(t, want(n), int(forms[n]-'0'), "%s %d", tag, n)
		}
	}
	assert.Equal(t, 6, count(formsOf("ar")))
}

func b(x bool) int {
	if x {
		return 1
	}
	return 0
}

func TestDecimalSigns(t *testing.T) {
	for tag, want := range map[string]string{"de": ",", "fr": ",", "de-CH": ".", "ja": ".", "en-GB": ".", "pt-BR": ",",
		"ar": "."} {
		assert.Equal(t, want, decimal(tag), tag)
	}
}

func TestNamesOfCatalogues(t *testing.T) {
	assert.Equal(t, []string{"de-AT", "de"}, Names("de-AT"))
	assert.Equal(t, []string{"de"}, Names("de"))
	assert.Empty(t, Names("en-GB"))
	assert.Empty(t, Names("no language"))
	assert.Nil(t, Built("en"))
	assert.Nil(t, (*Catalogue)(nil).Language())
}

// Every text has a key of its own.
func TestNoTwoTextsHaveOneKey(t *testing.T) {
	c, _ := Read("de")
	seen := map[uint32]words.English{}
	for english := range c.texts {
		other, twice := seen[words.Key(english)]
		assert.False(t, twice, "%q and %q: change the wording of one", english, other)
		seen[words.Key(english)] = english
	}
	assert.Greater(t, len(seen), 3000)
}

// What an engine learns of a language is at most 40 KB after brotli: each file, and for a section’s
// engine its two together. English in marks is measured too.
func TestTheFilesAreSmall(t *testing.T) {
	for _, c := range append(builtIn(t), Marked("en-XA")) {
		size := map[string]int{}
		all := map[words.English]bool{}
		for _, f := range c.Files() {
			var b strings.Builder
			w := brotli.NewWriterLevel(&b, brotli.BestCompression)
			_, err := w.Write([]byte(f.Text))
			require.NoError(t, err)
			require.NoError(t, w.Close())
			size[f.Name] = b.Len()
			for english := range c.said(func(by []string) bool { return FileOf(by) == f.Name }) {
				assert.False(t, all[english], "%s is in two files", english)
				all[english] = true
			}
		}
		t.Log(c.Tag, size)
		for name, n := range size {
			assert.LessOrEqual(t, n, 44_000, "%s %s", c.Tag, name)
			if name != Whole && name != Shared {
				assert.LessOrEqual(t, n+size[Shared], 44_000, "%s, engine of %s", c.Tag, name)
			}
		}
		for english, x := range c.texts {
			engines := slices.ContainsFunc(x.by, func(p string) bool { return strings.HasPrefix(p, "calculators") })
			assert.Equal(t, engines && x.said != "", all[english], "%s", english)
		}
	}
}

// builtIn are the catalogues that come with the program.
func builtIn(t *testing.T) (list []*Catalogue) {
	require.Contains(t, BuiltIn(), "de")
	for _, tag := range BuiltIn() {
		list = append(list, Built(tag))
	}
	return list
}

// Those that come with the program say every text, without a fault and with the same
// holes, and which language they are.
func TestTheBuiltInCataloguesAreSound(t *testing.T) {
	for _, c := range builtIn(t) {
		file, err := content.Files.ReadFile(Folder + "/" + c.Tag + Ending)
		require.NoError(t, err)
		_, faults := Read(c.Tag, file)
		assert.Empty(t, faults, c.Tag)
		assert.Zero(t, c.Empty, "%s: texts without a translation; run make texts, then translate them", c.Tag)
		assert.Zero(t, c.Fuzzy, "%s: fuzzy translations, which are not said: mend them and take the mark away", c.Tag)
		f, err := po.Load(file)
		require.NoError(t, err)
		assert.Equal(t, language.Make(c.Tag).String(), f.MimeHeader.Language)
	}
}
