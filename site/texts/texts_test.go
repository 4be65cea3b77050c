package main

import (
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"slices"
	"testing"

	"github.com/chai2010/gettext-go/po"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"plumbline/calculators/literature"
)

// Who adds a text runs make texts, so that every language learns of it.
func TestEveryTextIsInTheTemplate(t *testing.T) {
	list, err := gather("../..")
	require.NoError(t, err)
	list, err = withPages(list)
	require.NoError(t, err)
	has, err := os.ReadFile(filepath.Join("../..", folder, templateFile))
	require.NoError(t, err)
	require.Equal(t, string(write(list)), string(has), "run make texts")

	// Found in each of the ways in which a text can be said.
	for _, s := range []string{
		"How to measure",                 // returned by a function
		"Suspension",                     // of a type made of texts
		"One other guess hardly matters", // one of two
		"Inside leg",                     // a field
		"{0}: {1}, plus or minus {2}.",
	} {
		assert.True(t, slices.ContainsFunc(list, func(x text) bool { return x.english == s }), s)
	}
}

// The template is read back with the library that reads the catalogues.
func TestTheTemplateIsRead(t *testing.T) {
	list := []text{{"a “{0}”\nb \"c\" \\ d", "", []string{"calculators/saddle", "site"}}, {"Sort", "",
		[]string{"cmd/plumbline"}}, {"{0} day", "{0} days", nil}, {"a way\x04trail", "", nil}}
	f, err := po.Load(write(list))
	require.NoError(t, err)
	require.Len(t, f.Messages, 4)
	assert.Equal(t, "{0} days", f.Messages[2].MsgIdPlural)
	assert.Equal(t, "a way", f.Messages[3].MsgContext)
	assert.Equal(t, "trail", f.Messages[3].MsgId)
	assert.Equal(t, list[0].english, f.Messages[0].MsgId)
	assert.Equal(t, "calculators/saddle, site", f.Messages[0].ExtractedComment)
}

// typed is an apostrophe as a keyboard has it, inside or at the end of a word.
var typed = regexp.MustCompile(`\pL'(\pL|\s)`)

// TestApostrophesAreThoseOfPrint: what comes out of Go and out of the pages' scripts is not typeset again, so it
// has the marks that a chapter is printed with. Marks round a shell's argument stay: they stand outside a word.
func TestApostrophesAreThoseOfPrint(t *testing.T) {
	list, err := gather("../..")
	require.NoError(t, err)
	list, err = withPages(list)
	require.NoError(t, err)
	for _, x := range list {
		assert.False(t, typed.MatchString(x.english) || typed.MatchString(x.more), "%q: write ’", x.english)
	}
	for _, s := range literature.All() {
		assert.False(t, typed.MatchString(s.Title+s.For), "%s, %q: write ’", s.Key, s.Title+s.For)
	}
}

// A translation outlives a change of its English, as a suggestion with the earlier English.
func TestAChangedTextKeepsItsTranslation(t *testing.T) {
	if _, err := exec.LookPath("msgmerge"); err != nil {
		t.Skip("GNU GETTEXT IS NOT INSTALLED: the catalogues were not brought up to date")
	}
	dir := t.TempDir()
	template, german := filepath.Join(dir, "x.pot"), filepath.Join(dir, "de.po")
	require.NoError(t, os.WriteFile(german, []byte(head+`msgid "Raise the saddle by {0}"
msgstr "Stell den Sattel {0} höher"

msgid "No longer said"
msgstr "Gestrichen"
`), 0o644))
	require.NoError(
		t,
		os.WriteFile(template, write([]text{{english: "Raise the saddle by {0}."}, {english: "Stem"}}), 0o644),
	)
	require.NoError(t, offer(template, german))
	text, err := os.ReadFile(german)
	require.NoError(t, err)
	assert.Contains(t, string(text), "#~ msgid \"No longer said\"", "kept at the end")
	f, err := po.Load(text)
	require.NoError(t, err)
	i := slices.IndexFunc(f.Messages, func(m po.Message) bool { return m.MsgId == "Raise the saddle by {0}." })
	require.GreaterOrEqual(t, i, 0)
	m := &f.Messages[i]
	assert.True(t, m.GetFuzzy())
	assert.Equal(t, "Raise the saddle by {0}", m.PrevMsgId)
	assert.Equal(t, "Stell den Sattel {0} höher", m.MsgStr)
	i = slices.IndexFunc(f.Messages, func(m po.Message) bool { return m.MsgId == "Stem" })
	require.GreaterOrEqual(t, i, 0, "a new text comes in")
	assert.Empty(t, f.Messages[i].MsgStr)
}
