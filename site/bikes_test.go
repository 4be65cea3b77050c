package site

import (
	"encoding/json"
	"os"
	"strings"
	"testing"
	"testing/fstest"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"plumbline/content"
)

// brookEnd is the built-in guide under the folder of an invented shop.
func brookEnd(t *testing.T) *Guide {
	t.Helper()
	g, bad := loadFS(content.Files, os.DirFS("testdata/brook-end"), "shop", everything(), nil)
	require.Empty(t, lines(bad))
	return g
}

// TestAShopsBikesAreListedAndOffered compares the tables with the charts as they stand in
// the shop's folder, sizes across in one and down in the other.
func TestAShopsBikesAreListedAndOffered(t *testing.T) {
	g := brookEnd(t)
	all := built(t, g)
	page := parsed(t, all[bikesURL])
	complete(t, bikesURL, page)
	text := string(all[bikesURL])
	for _, want := range []string{"Heron 120 2026", "Otter Hardtail", "The light one of our two",
		`href="https://brook-end.example/heron"`,
		`<tr data-key="stack" data-units="mm"><th scope="row">Stack <span class="unit">mm</span></th>` +
			`<td>606</td><td>617</td><td>630</td></tr>`,
		// By hand: 606, 617 and 630 mm are 60.6, 61.7 and 63.0 cm, and 23.858, 24.291 and 24.803 in.
		`<tr data-key="stack" data-units="cm" hidden><th scope="row">Stack <span class="unit">cm</span></th>` +
			`<td>60.6</td><td>61.7</td><td>63.0</td></tr>`,
		`<tr data-key="stack" data-units="in" hidden><th scope="row">Stack <span class="unit">in</span></th>` +
			`<td>23.86</td><td>24.29</td><td>24.80</td></tr>`,
		`<tr data-key="head-angle"><th`, `<td>76.4</td><td>76.2</td><td>76.0</td>`} {
		assert.Contains(t, text, want)
	}
	var list struct {
		Bikes []struct {
			Name, Chart string
			Sizes       []struct{ Name, Mine string }
		}
	}
	require.NoError(t, json.Unmarshal(all[bikesListURL], &list))
	require.Len(t, list.Bikes, 2)
	assert.Equal(t, "Heron 120 2026", list.Bikes[0].Name)
	assert.Equal(t, "reach=457&stack=617&head-angle=66&seat-angle=76.2&seat-tube-length=425&fork-offset=44&"+
		"chainstay=434&bb-drop=36", list.Bikes[0].Sizes[1].Mine)
	assert.Contains(t, list.Bikes[1].Chart, "Large;475;640;64.5;75;450")
	for _, p := range []string{"index.html", "saddle/height.html", "embed/size-match.html"} {
		html := string(all[p])
		assert.Contains(t, html, bikesListURL+`"`, p)
	}
	assert.Contains(t, string(all["index.html"]), `href="bikes.html"`)
	assert.Contains(t, string(all[indexURL]), "bikes.html#heron-120")
	assert.Contains(t, string(all[sitemapURL]), "https://brook-end.example/fit/bikes.html")
}

// TestWithoutBikesNothingSpeaksOfThem looks at the built-in guide, which sells none.
func TestWithoutBikesNothingSpeaksOfThem(t *testing.T) {
	all := built(t, demo(t))
	assert.Nil(t, all[bikesURL])
	assert.NotContains(t, string(all["index.html"]), "bikes.html")
	assert.NotContains(t, string(all["index.html"]), "data-bikes")
}

// TestMistakesInASizeChartNameTheirLine spoils one thing in each chart.
func TestMistakesInASizeChartNameTheirLine(t *testing.T) {
	const head = "---\nname: Heron\n---\nname,reach,stack,head-angle,seat-angle,seat-tube-length\n"
	for text, want := range map[string]string{
		head + "S,432,606,66,76,395\nM,45x7,617,66,76,425\n":               "shop/bikes/b.csv:6:1: ",
		head + "S,432,606,66,76,395\n\nM,4570,617,66,76,425\n":             "shop/bikes/b.csv:7:1: ",
		strings.Replace(head, "stack", "stakc", 1) + "S,432,606,66,76,1\n": "shop/bikes/b.csv:4:1: ",
		"---\nname: Heron\nyear: soon\n---\n":                              "shop/bikes/b.csv:3:7: “soon” is no year",
		"---\nname: Heron\nlink: heron\n---\n": "shop/" +
			"bikes/b.csv:3:7: “heron” is no web address",
		"---\nnmae: Heron\n---\n": "shop/" +
			"bikes/b.csv:2:1: the key “nmae” is not known here",
		"---\nname: Heron\n": "shop/" +
			"bikes/b.csv:1:1: the lines that name the bike have no end",
		"S;432\n": "shop/" +
			"bikes/b.csv:1:1: the bike has no name",
		"---\nname: Heron\n---\n": "shop/bikes/b.csv:4:1: ",
	} {
		local := fstest.MapFS{"bikes/b.csv": {Data: []byte(text)}}
		_, bad := loadFS(os.DirFS("testdata/demo"), local, "shop", everything(), nil)
		wantMistake(t, bad, want)
		for _, m := range bad {
			assert.NotEmpty(t, m.Remedy, m.String())
		}
		t.Log(lines(bad))
	}
	twice := fstest.MapFS{}
	for _, name := range []string{"bikes/a.csv", "bikes/b.csv"} {
		twice[name] = &fstest.MapFile{Data: []byte(head + "S,432,606,66,76,395\n")}
	}
	_, bad := loadFS(os.DirFS("testdata/demo"), twice, "shop", everything(), nil)
	wantMistake(t, bad, "shop/bikes/b.csv:1:1: “Heron” is the name of the bike in shop/bikes/a.csv too")
}

// TestAShopSaysSymptomsInItsOwnWords lays a shop's words over ours.
func TestAShopSaysSymptomsInItsOwnWords(t *testing.T) {
	all := built(t, brookEnd(t))
	text := string(all["finish/find-a-symptom.html"])
	for _, want := range []string{"It hurts below the kneecap", "Put the saddle up, by 5\u00a0mm at most.",
		"Leave the bike alone for two days.", "Advice from those who publish this guide, untested",
		"swelling, locking or giving way", "data-own=\"knee-front\t"} {
		assert.Contains(t, text, want)
	}
	assert.NotContains(t, text, "Front of the knee aches")
	assert.Contains(t, string(all[indexURL]), "It hurts below the kneecap")
}

// TestMistakesInSymptomsAreTold tries what cannot be said, and what may not be changed.
func TestMistakesInSymptomsAreTold(t *testing.T) {
	for text, want := range map[string]string{
		"knee-frnt:\n  label: A\n": "shop/" +
			"symptoms.yaml:1:1: there is no symptom “knee-frnt”, did you mean “knee-front”?",
		"knee-front:\n  flags: []\n": "shop/" +
			"symptoms.yaml:2:3: the signs to stop at, and the cautions, cannot be changed",
		"clinician: []\n": "shop/" +
			"symptoms.yaml:1:1: the signs to stop at, and the cautions, cannot be changed",
		"knee-front:\n  lable: A\n": "shop/" +
			"symptoms.yaml:2:3: the key “lable” is not known here, did you mean “label”?",
		"knee-front:\n  first:\n    why: A\n": "shop/" +
			"symptoms.yaml:2:3: the first move of “knee-front” does not say what to do",
		"hands:\n  first:\n    do: A\n": "shop/" +
			"symptoms.yaml:2:3: the first move of “hands” does not say why",
		"hands:\n  first:\n    do: A\n    why: B\n    more: sadle-height\n": "shop/" +
			"symptoms.yaml:5:11: “sadle-height” is no setting that a move can change, did you mean " +
			"“saddle-height”?",
		"hands:\n  first:\n    do: A\n    why: B\n    chapter: saddle/hight\n": "shop/" +
			"symptoms.yaml:5:14: there is no chapter “saddle/hight”, did you mean “saddle/height”?",
		"hands:\n  first:\n    do: A\n    why: B\n    more: saddle-height\n    less: saddle-height\n": "shop/" +
			"symptoms.yaml:6:5: a first move changes one setting",
	} {
		local := fstest.MapFS{"symptoms.yaml": {Data: []byte(text)}}
		_, bad := loadFS(content.Files, local, "shop", everything(), nil)
		wantMistake(t, bad, want)
		assert.Len(t, bad, 1, lines(bad))
	}
}
