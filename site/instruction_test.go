package site

import (
	"regexp"
	"slices"
	"strings"
	"testing"
	"testing/fstest"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"github.com/yuin/goldmark/ast"

	"plumbline/calculators/catalog"
	"plumbline/calculators/measure"
	"plumbline/content"
)

// synonyms are other names that the trade and this guide's chapters use for what a
// form asks for. Common practice.
var synonyms = map[string]string{
	"inside leg": "inseam", "inseam": "inseam", "hip height": "trochanter-height",
	"hip-bone height": "trochanter-height",
	"shoulder width":  "shoulder-width", "shoulder to grip": "arm-length", "arm length": "arm-length",
	"hip width": "hip-width", "q-factor": "q-factor", "foot offset": "foot-offset", "toe-out": "toe-out",
	"press-up hand width": "push-up-width", "hand length": "hand-length", "sit bone width": "sit-bone-width",
	"setback": "saddle-setback", "saddle setback": "saddle-setback", "grip position": "grip-x",
	"bottom-bracket height": "bb-height", "chainstay length": "chainstay", "wheel radius": "rear-radius",
	"effective seat angle": "seat-angle", "seat-tube angle": "seat-tube-angle", "seat-tube length": "seat-tube-length",
	"crank length": "crank-length", "foot length": "foot-length", "heel to ball": "heel-to-ball-inner",
	"stem length": "stem-length", "bar rise": "bar-rise", "rise": "bar-rise", "sweep": "bar-sweep", "roll": "bar-roll",
	"bar sweep": "bar-sweep", "lever reach": "lever-reach", "lever angle": "lever-angle", "fork length": "fork-length",
	"fork offset": "fork-offset", "saddle thickness": "saddle-stack", "free depth": "free-depth",
	"leg length difference": "leg-difference", "leg difference": "leg-difference", "the bar now": "bar-width",
	"hanging": "toe-out", "total": "mass",
}

// measuring tells whether a heading, or a page's title, opens a part on measuring.
var measuring = regexp.MustCompile(`(?i)\b(measure|collect|take|find|weigh)\b`)

// ownWords are the quantities that a page describes under a heading on measuring, in
// its own words: a heading or a bold label is the quantity's name, and no measure
// block of the page has it.
func ownWords(p *guidePage) (keys []string) {
	names := map[string]string{}
	for name, key := range synonyms {
		names[name] = key
	}
	for _, q := range measure.All() {
		if q.How.Taken() {
			names[strings.ToLower(string(q.Label))] = q.Key
		}
	}
	under := strings.HasPrefix(p.Title, "Measure ")
	told := func(text string) {
		name := strings.ToLower(strings.Trim(text, " .:,*"))
		if key := names[name]; key != "" && under && !p.takes(key) && !slices.Contains(keys, key) {
			keys = append(keys, key)
		}
	}
	_ = ast.Walk(p.tree, func(n ast.Node, entering bool) (ast.WalkStatus, error) {
		if !entering {
			return ast.WalkContinue, nil
		}
		switch n := n.(type) {
		case *ast.Heading:
			said := string(inlineText(n, p.body()))
			if n.Level == 2 {
				under = strings.HasPrefix(p.Title, "Measure ") || measuring.MatchString(said)
			}
			told(said)
		case *ast.Emphasis:
			// A label opens its item or paragraph and ends in a point or a colon.
			if text := string(inlineText(n, p.body())); n.Level == 2 && n.PreviousSibling() == nil &&
				strings.ContainsAny(text[len(text)-1:], ".:") {
				told(text)
			}
		}
		return ast.WalkContinue, nil
	})
	return keys
}

// TestEachMeasurementIsToldOnce: a chapter that names a measurement as something to
// take pulls the one instruction in, and every measurement of a form is in a chapter.
func TestEachMeasurementIsToldOnce(t *testing.T) {
	g, bad := loadFS(content.Files, fstest.MapFS{}, "", everything(), nil)
	require.Empty(t, bad)
	for _, p := range g.pages {
		assert.Empty(t, ownWords(p), "%s tells in its own words how to take these: use a measure block", p.Path)
	}
	for _, c := range catalog.All() {
		for _, in := range c.Inputs {
			if in.How.Taken() && !slices.ContainsFunc(g.pages, func(p *guidePage) bool { return p.takes(in.Key) }) {
				t.Errorf("%s asks for %s, and no chapter shows how it is taken", c.Name, in.Key)
			}
		}
	}
}

// TestOwnWordsAreFound: what the test above looks for is found where it stands.
func TestOwnWordsAreFound(t *testing.T) {
	head := "---\ntitle: Seat\nnav: Seat\nquestion: Where?\nsummary: Here.\n---\n\n"
	page := func(text string) *guidePage {
		p, _ := parsePage(source{path: "x/y.md", file: "x/y.md", text: []byte(head + text)})
		return p
	}
	assert.Equal(t, []string{"inseam"}, ownWords(page("## Measure your leg\n\n1. **Inside leg.** Pull a book up.\n")))
	assert.Equal(t, []string{"chainstay"}, ownWords(page("## Measure\n\n### Chainstay\n\nFrom axle to axle.\n")))
	assert.Empty(t, ownWords(page("## Measure\n\n**Inside leg.** See below.\n\n```measure inseam\n```\n")),
		"the block is there")
	assert.Empty(t, ownWords(page("## Set it\n\n- **Chainstay:** leave it.\n")), "not under a heading on measuring")
}

// TestAMeasureBlock: the picture once, the text, the usual mistake, who is needed.
func TestAMeasureBlock(t *testing.T) {
	g, bad := loadFS(content.Files, fstest.MapFS{}, "", everything(), nil)
	require.Empty(t, bad)
	html, err := g.render(g.byPath["feet/cleat-fore-and-aft.md"])
	require.NoError(t, err)
	text := string(html)
	assert.Equal(t, 1, strings.Count(text, `id="figure-measure-heel-to-ball-m"`), "two lengths share one picture")
	assert.Contains(t, text, `<section class="taking" id="measure-heel-to-ball-outer">`)
	assert.Contains(t, text, "What goes wrong:")
	assert.Contains(
		t,
		text,
		`data-take="foot-length"><p><a href="../start/measure-yourself.html#measure-foot-length">`,
		"without script a fold leads to the picture",
	)
}

// TestMistakesInAMeasureBlock: an unknown key, a key twice, no key, no heading above.
func TestMistakesInAMeasureBlock(t *testing.T) {
	for text, what := range map[string]string{
		"## M\n\n```measure inseem\n```\n":                        "there is no measurement “inseem”",
		"## M\n\n```measure inseam stature inseam\n```\n":         "“inseam” stands on this page already",
		"## M\n\n```measure\n```\n":                               "this measure block names no measurement",
		"```measure inseam\n```\n":                                "no heading stands above this measure block",
		"## M\n\n```measure inseam\nlines\n```\n":                 "a measure block takes no lines",
		"## M\n\n[x](#measure-stature)\n\n```measure inseam\n```": "has no heading “#measure-stature”",
	} {
		own := fstest.MapFS{"saddle/tilt.md": {Data: []byte("---\ntitle: Seat\nnav: Seat\nquestion: " +
			"Where?\nsummary: Here.\n---\n\n" + text)}}
		_, bad := loadFS(content.Files, own, "", everything(), nil)
		assert.True(
			t,
			slices.ContainsFunc(bad, func(m Mistake) bool { return strings.Contains(m.What.Say(nil), what) }),
			"%q: %s",
			text,
			lines(bad),
		)
	}
}
