package site

import (
	"strings"
	"testing"
	"testing/fstest"

	"plumbline/content"
)

// TestAShopHidesAndAddsSectionsWithoutCopyingTheChapter works on the guide's own saddle
// height.
func TestAShopHidesAndAddsSectionsWithoutCopyingTheChapter(t *testing.T) {
	local := fstest.MapFS{
		"guide.yaml": {Data: []byte("hide: [saddle/height#two-lengths-with-one-name]\n")},
		"saddle/height.add.md": {Data: []byte("## Check it on the trail\n\nBehind our shop is a climb for this.\n\n" +
			"## What we lend you\n\nA post with a scale on it. See [tilt](tilt.md).\n")},
	}
	g, bad := loadFS(content.Files, local, "shop", everything(), nil)
	if bad != nil {
		t.Fatal(lines(bad))
	}
	html, err := g.render(g.byPath["saddle/height.md"])
	if err != nil {
		t.Fatal(err)
	}
	text := string(html)
	if strings.Contains(text, "Two lengths with one name") {
		t.Error("the hidden section is shown")
	}
	order := []string{"Check it on the trail", "Behind our shop is a climb", "If it feels wrong", "What we lend you",
		"A post with a scale", "Where the numbers come from"}
	at := -1
	for _, s := range order {
		i := strings.Index(text, s)
		if i < at || i < 0 {
			t.Errorf("%q stands at %d, after %d", s, i, at)
		}
		at = i
	}
}

func TestMistakesInWhatIsAddedAreFoundWhereTheyStand(t *testing.T) {
	local := fstest.MapFS{
		"guide.yaml": {
			Data: []byte(
				"hide:\n  - saddle/height#two-lengths-with-one-name\n  - saddle/height#set-the-pots\n  - nowhere\n" +
					"  - start/before-you-touch-a-bolt#stop-and-call-for-help\n",
			),
		},
		"saddle/height.add.md": {
			Data: []byte("No heading yet.\n\n## Check it on the trail\n\nSee [this](lost.md).\n"),
		},
		"saddle/hight.add.md": {Data: []byte("## New\n\nText.\n")},
	}
	_, bad := loadFS(content.Files, local, "shop", everything(), nil)
	for _, want := range []string{
		"shop/guide.yaml:3:5: “saddle/height.md” has no section “set-the-pots”",
		"shop/guide.yaml:4:5: “nowhere” names no section of a chapter",
		"shop/guide.yaml:5:5: the section “stop-and-call-for-help” of “start/before-you-touch-a-bolt.md” " +
			"carries a caution",
		"shop/saddle/height.add.md:1:1: this stands above every heading",
		"shop/saddle/height.add.md:5:12: there is no page “lost.md”",
		"shop/saddle/hight.add.md:1:1: this adds to “saddle/hight.md”, which is no chapter of the guide, " +
			"did you mean “saddle/height”?",
	} {
		wantMistake(t, bad, want)
	}
}
