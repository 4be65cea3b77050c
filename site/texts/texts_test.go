package main

import (
	"os"
	"path/filepath"
	"slices"
	"testing"

	"github.com/chai2010/gettext-go/po"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// Who adds a text runs make texts, so that every language learns of it.
func TestEveryTextIsInTheTemplate(t *testing.T) {
	list, err := gather("../..")
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
	list := []text{{"a “{0}”\nb \"c\" \\ d", []string{"calculators/saddle", "site"}}, {"Sort", []string{"cmd/plumbline"}}}
	f, err := po.Load(write(list))
	require.NoError(t, err)
	require.Len(t, f.Messages, 2)
	assert.Equal(t, list[0].english, f.Messages[0].MsgId)
	assert.Equal(t, "calculators/saddle, site", f.Messages[0].ExtractedComment)
}
