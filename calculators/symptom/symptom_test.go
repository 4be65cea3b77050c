package symptom_test

import (
	"math"
	"os"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"golang.org/x/net/html"

	"plumbline/calculators/literature"
	"plumbline/calculators/sheet"
	"plumbline/calculators/symptom"
	"plumbline/calculators/words"
)

func TestEverySymptomIsWhole(t *testing.T) {
	seen := map[string]bool{}
	for _, s := range symptom.All() {
		require.False(t, seen[s.Key], s.Key)
		seen[s.Key] = true
		assert.GreaterOrEqual(t, len(s.Causes), 2, "%s: one cause alone would be a diagnosis", s.Key)
		assert.Same(t, s, symptom.Named(s.Key))
		assert.True(t, slices.ContainsFunc(symptom.Spots(),
			func(p symptom.Spot) bool { return p.Place == s.Place }), s.Key)
		for _, c := range s.Causes {
			assert.NotEmpty(t, c.Why, s.Key)
			assert.NotEmpty(t, c.Evidence, s.Key)
			assert.NotEmpty(t, c.Chapter, s.Key)
			assert.False(t, strings.HasSuffix(string(c.Why), "."), c.Why)
			assert.NotRegexp(t, `[0-9]`, c.First+c.Why, "a number would have to come from the setup sheet")
			for _, source := range c.Sources {
				assert.Contains(t, literature.All(), source)
			}
			if c.Evidence == symptom.Linked {
				assert.NotEmpty(t, c.Sources, "%s: which study?", c.Why)
			}
			if c.Of != nil {
				set := sheet.SettingOf(c.Of)
				require.NotNil(t, set, c.Of.Key)
				require.Greater(t, set.Step, 0.0, c.Of.Key)
				assert.True(t, strings.HasSuffix(c.Change().Say(nil), " at most."), c.Change().Say(nil))
			} else {
				assert.True(t, strings.HasSuffix(string(c.First), "."), c.First)
			}
		}
	}
	// What the finder promises to know.
	for _, key := range []string{"knee-front", "knee-back", "knee-outside", "knee-inside", "hip", "low-back",
		"neck", "hands", "forefoot",
		"seat-sore", "seat-numb", "front-wanders", "loops-out", "pitched-forward", "arms-tired"} {
		assert.True(t, seen[key], key)
	}
}

func TestBodySymptomsHaveTheirOwnFlags(t *testing.T) {
	for _, s := range symptom.All() {
		bike := s.Place == symptom.FrontHub || s.Place == symptom.RearHub || s.Place == symptom.CentreOfM
		assert.Equal(t, bike, len(s.Flags) == 0, s.Key)
	}
}

func TestTheStepIsSaidInTheReadersUnits(t *testing.T) {
	c := symptom.Named("knee-front").Causes[0]
	assert.Equal(t, "Raise the saddle, by 5\u00a0mm at most.", c.Change().Say(nil))
	// 5/25.4 × 16 is 3.15 sixteenths.
	assert.Equal(t, "Raise the saddle, by 3/16\u00a0in at most.", c.Change().Say(&words.Reader{Units: "in"}))
}

func TestFlagsComeFirstAndNothingDiagnoses(t *testing.T) {
	text := symptom.HTML("s", nil, symptom.Ways{
		Chapter: func(path string) (string, string) { return "../" + path + ".html", path },
		Source:  func(key string) string { return "../sources.html#source-" + key },
	}, nil)
	first := strings.Index(text, `class="flags"`)
	require.Positive(t, first)
	assert.Less(t, first, strings.Index(text, `class="places"`))
	assert.Less(t, first, strings.Index(text, `class="symptom"`))
	for _, word := range []string{"syndrome", "tendinitis", "diagnosed", "you have", "arthr", "wedge", "NaN"} {
		assert.NotContains(t, strings.ToLower(text), strings.ToLower(word))
	}
	root, err := html.Parse(strings.NewReader(text))
	require.NoError(t, err)
	ids := map[string]bool{}
	var links []string
	for n := range root.Descendants() {
		for _, a := range n.Attr {
			switch a.Key {
			case "id":
				require.False(t, ids[a.Val], a.Val)
				ids[a.Val] = true
			case "href":
				links = append(links, a.Val)
			case "style":
				require.Fail(t, "style")
			}
		}
	}
	assert.NotContains(t, text, `role="img"`, "links inside a picture would be lost")
	for _, href := range links {
		if strings.HasPrefix(href, "#") {
			assert.True(t, ids[href[1:]], href)
		}
	}
	for _, s := range symptom.All() {
		assert.True(t, ids["s-"+s.Key])
	}
	if out := os.Getenv("SHOW"); out != "" {
		require.NoError(t, os.WriteFile(out, []byte(text), 0o600))
	}
}

// TestTheLinksLieOnTheNumbers compares the middle of each link with that of the circle
// that the drawing itself writes for the number, and its size with a finger: 24 px on a
// drawing 358 px wide, as it is on a phone of 390 (WCAG 2.2, success criterion 2.5.8),
// and no two of them share a pixel.
func TestTheLinksLieOnTheNumbers(t *testing.T) {
	text := symptom.HTML("s", nil, symptom.Ways{}, nil)
	_, rest, ok := strings.Cut(text, `<svg`)
	require.True(t, ok)
	rest, _, ok = strings.Cut(rest, "</svg>")
	require.True(t, ok)
	anchor := regexp.MustCompile(`<a class="spot".*?</a>`)
	links, drawn := strings.Join(anchor.FindAllString(rest, -1), ""), anchor.ReplaceAllString(rest, "")
	width := number(t, regexp.MustCompile(`viewBox="0 0 ([0-9.]+)`).FindStringSubmatch(drawn)[1])
	circle := regexp.MustCompile(`c[xy]="([0-9.]+)" c?[yr]+="([0-9.]+)" r="([0-9.]+)"`)
	wanted := circle.FindAllStringSubmatch(links, -1)
	require.Len(t, wanted, len(symptom.Spots())+13, "the side view's, seven from the front and six from behind")
	for i, link := range wanted {
		found := false
		for _, c := range circle.FindAllStringSubmatch(drawn, -1) {
			found = found || near(c[1], link[1]) && near(c[2], link[2])
		}
		assert.True(t, found, "no number lies under %v", link)
		x, y, r := number(t, link[1]), number(t, link[2]), number(t, link[3])
		assert.GreaterOrEqual(t, 2*r/width*358, 24.0, "spot %d", i+1)
		for j, other := range wanted[:i] {
			apart := math.Hypot(x-number(t, other[1]), y-number(t, other[2]))
			assert.GreaterOrEqual(t, apart, r+number(t, other[3]), "spots %d and %d overlap", i+1, j+1)
		}
	}
}

func number(t *testing.T, s string) float64 {
	t.Helper()
	x, err := strconv.ParseFloat(s, 64)
	require.NoError(t, err)
	return x
}

func near(a, b string) bool {
	x, err1 := strconv.ParseFloat(a, 64)
	y, err2 := strconv.ParseFloat(b, 64)
	return err1 == nil && err2 == nil && math.Abs(x-y) < 0.5
}
