package words_test

import (
	"encoding/json"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"plumbline/calculators/words"
)

func TestHolesAreFilledInTheirOrder(t *testing.T) {
	for _, c := range []struct {
		text words.Text
		said string
	}{
		{words.Of("Nothing to fill."), "Nothing to fill."},
		{words.Of("{0} and {1}", words.Name("a"), words.Name("b")), "a and b"},
		{words.Of("{1} before {0}", words.Name("a"), words.Name("b")), "b before a"},
		{words.Of("{0}{0}", words.Name("a")), "aa"},
		{words.Of("{0}, {9}.", words.Name("a")), "a, ."},
		{words.Of("in {0}", words.Of("a {0} one", words.Name("deep"))), "in a deep one"},
		{words.Of("{0}", words.Name("{1}")), "{1}"}, // what fills a hole is never looked into
		{words.Of("ten: {0}{1}{2}{3}{4}{5}{6}{7}{8}{9}", names("0123456789")...), "ten: 0123456789"},
		{words.Text{}, ""},
	} {
		assert.Equal(t, c.said, c.text.Say(nil))
	}
}

func names(s string) (all []words.Sayer) {
	for _, r := range s {
		all = append(all, words.Name(string(r)))
	}
	return all
}

func TestBracesThatAreNoHoleAreKept(t *testing.T) {
	for _, s := range []string{"{", "}", "{}", "{a}", "{10}", "{0", "{ 0}", "{-1}", "a{", "{{", "a } b { c", "{{0"} {
		assert.Equal(t, s, words.Of(words.English(s), words.Name("x")).Say(nil))
	}
	assert.Equal(t, "{x}", words.Of("{{0}}", words.Name("x")).Say(nil))
	assert.Equal(t, "{0}", words.Of("{0}").Say(nil), "a text without fillers is said as it stands")
}

func TestAListEndsWithAnAnd(t *testing.T) {
	said := []string{"", "a", "a and b", "a, b and c", "a, b, c and d"}
	for n, want := range said {
		assert.Equal(t, want, words.List(names("abcd"[:n])).Say(nil))
	}
	german := german(map[words.English]string{" and ": " und "})
	assert.Equal(t, "a, b und c", words.List(names("abc")).Say(german))
}

func TestATranslationMayReorderTheHoles(t *testing.T) {
	r := german(map[words.English]string{"{0} of {1}": "{1}: {0}", "saddle": "Sattel"})
	assert.Equal(t, "Sattel: x", words.Of("{0} of {1}", words.Name("x"), words.Of("saddle")).Say(r))
	assert.Equal(t, "saddle", words.Name("saddle").Say(r), "a name is never translated")
}

func TestAMissingTranslationFallsBackAndIsReported(t *testing.T) {
	var missing []string
	r := german(map[words.English]string{"known": "bekannt"})
	r.Language.Missing = func(s words.English) { missing = append(missing, string(s)) }
	assert.Equal(t, "bekannt", words.Of("known").Say(r))
	assert.Equal(t, "unknown x", words.Of("unknown {0}", words.Name("x")).Say(r))
	assert.Empty(t, words.Text{}.Say(r))
	assert.Equal(t, []string{"unknown {0}"}, missing, "the key is reported, and nothing for an empty text")

	r.Language.Missing = nil
	assert.Equal(t, "unknown", words.Of("unknown").Say(r))
}

func TestAReaderThatIsNilReadsPlainEnglish(t *testing.T) {
	var nobody *words.Reader
	assert.Equal(t, "mm", nobody.LengthUnit())
	assert.Equal(t, ".", nobody.DecimalSign())
	assert.Equal(t, "mm", (&words.Reader{}).LengthUnit())
	assert.Equal(t, ".", (&words.Reader{}).DecimalSign())
	assert.Equal(t, "in", (&words.Reader{Units: "in"}).LengthUnit())
	assert.Equal(t, ",", (&words.Reader{Language: &words.Language{Decimal: ","}}).DecimalSign())
	assert.Equal(t, "\u00a0", nobody.UnitSpace())
	assert.Equal(t, "\u202f", (&words.Reader{Language: &words.Language{Space: "\u202f"}}).UnitSpace())
}

func TestATextIsEnglishInJSON(t *testing.T) {
	got, err := json.Marshal(map[string]any{"text": words.Of("“{0}” < 3", words.Name("x"))})
	require.NoError(t, err)
	assert.JSONEq(t, `{"text":"“x” < 3"}`, string(got))
	assert.True(t, words.Text{}.None())
	assert.False(t, words.Of("x").None())
}

func TestNoTextBreaksSaying(t *testing.T) {
	english := rapid.OneOf(rapid.String(), rapid.StringOf(rapid.SampledFrom([]rune("{}0123 aé"))))
	rapid.Check(t, func(t *rapid.T) {
		s := english.Draw(t, "english")
		var fill []words.Sayer
		for _, f := range rapid.SliceOfN(rapid.String(), 0, 11).Draw(t, "fill") {
			fill = append(fill, words.Name(f))
		}
		said := words.Of(words.English(s), fill...).Say(nil)
		if _, after, has := strings.Cut(s, words.Context); has {
			s = after
		}
		if !strings.Contains(s, "{") {
			assert.Equal(t, s, said)
		}
	})
}
