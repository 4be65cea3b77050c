package site

import (
	"regexp"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"plumbline/calculators/literature"
	"plumbline/content"
)

// TestEverySourceCanBeFoundAndWeighed holds the built-in list to what a reader
// needs: who wrote it, a title or a place with numbers in it, how strong it is,
// and a link that works if there is one. A DOI is a prefix 10.NNNN and a suffix
// (ISO 26324).
func TestEverySourceCanBeFoundAndWeighed(t *testing.T) {
	doi := regexp.MustCompile(`^10\.\d{4,9}/\S+$`)
	l, bad := lay(content.Files, nil, "")
	require.Empty(t, bad)
	b, bad := l.library()
	require.Empty(t, bad)
	for _, key := range b.sourceKeys {
		s := b.sources[key]
		assert.Contains(t, literature.Strengths(), s.Strength, "%s has no strength", key)
		assert.NotEmpty(t, s.For, "%s does not say what is taken from it", key)
		assert.NotEmpty(t, s.Where, "%s says no journal, publisher or place", key)
		if s.Opened == literature.Practice {
			continue
		}
		assert.NotEmpty(t, s.Authors, "%s has no authors", key)
		assert.True(t, s.Title != "" || s.Link() != "" || strings.ContainsAny(s.Where, "0123456789"),
			"%s has neither title nor link nor volume: nobody can find it", key)
		if s.DOI != "" {
			assert.Regexp(t, doi, s.DOI, key)
			assert.Empty(t, s.URL, "%s has a DOI and needs no second address", key)
		}
		if s.URL != "" {
			assert.True(t, strings.HasPrefix(s.URL, "https://"), key)
		}
	}
}

// TestSourcesStandInOrderOfStrength sorts four invented works.
func TestSourcesStandInOrderOfStrength(t *testing.T) {
	list := []sourceView{
		{Key: "habit", Strength: "common practice"},
		{Key: "unread", Strength: "controlled study", Memory: true, Authors: "A"},
		{Key: "read", Strength: "controlled study", Authors: "Z"},
		{Key: "trial", Strength: "randomised trial"},
	}
	slices.SortFunc(list, strongerFirst)
	var keys []string
	for _, s := range list {
		keys = append(keys, s.Key)
	}
	assert.Equal(t, []string{"trial", "read", "unread", "habit"}, keys)
}

func TestATitleThatAsksHasItsOwnMark(t *testing.T) {
	for title, mark := range map[string]string{
		"Does it help?": "<cite>Does it help?</cite>",
		"It helps":      "<cite>It helps.</cite>",
	} {
		var b strings.Builder
		require.NoError(
			t,
			layouts()["sources"].ExecuteTemplate(&b, "source", sourceView{Title: title, Where: "A journal"}),
		)
		assert.Contains(t, b.String(), mark)
	}
}

// TestEveryTermOccurs keeps the built-in glossary to words that a chapter uses.
func TestEveryTermOccurs(t *testing.T) {
	g, bad := loadFS(content.Files, nil, "", everything(), nil)
	require.Empty(t, bad)
	for _, term := range g.terms {
		assert.NotEmpty(t, term.Pages, "no chapter uses “%s”", term.Name)
	}
}

// TestEveryChapterSaysWhatIsKnown: a reader must be able to tell evidence from
// habit on each page of the built-in guide.
func TestEveryChapterSaysWhatIsKnown(t *testing.T) {
	g, bad := loadFS(content.Files, nil, "", everything(), nil)
	require.Empty(t, bad)
	for _, part := range g.parts {
		for _, c := range part.Chapters {
			text := string(c.text)
			for _, phrase := range []string{"**Known well:** ", "**Known poorly:** ", "**not known at all:** "} {
				assert.Contains(t, text, phrase, c.Path)
			}
		}
	}
}

// TestWhatWasUsualTenYearsAgoIsSaidOnce: one claim, one place.
func TestWhatWasUsualTenYearsAgoIsSaidOnce(t *testing.T) {
	g, bad := loadFS(content.Files, nil, "", everything(), nil)
	require.Empty(t, bad)
	said := 0
	for _, p := range g.pages {
		said += strings.Count(string(p.text), "ten years ago")
	}
	assert.Equal(t, 1, said)
}

// TestEverySourceIsCited keeps the built-in list free of works that no page uses.
func TestEverySourceIsCited(t *testing.T) {
	g, bad := loadFS(content.Files, nil, "", everything(), nil)
	require.Empty(t, bad)
	cited := map[string]bool{}
	for _, p := range g.pages {
		for _, key := range g.used(p) {
			cited[key] = true
		}
	}
	for _, key := range g.library.sourceKeys {
		assert.True(t, cited[key], "no page uses %s", key)
	}
}
