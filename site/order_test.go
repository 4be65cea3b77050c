package site

import (
	"os"
	"strings"
	"testing"
	"testing/fstest"
)

// inOrder is a chapter that answers first.
const inOrder = "```calculator saddle-height\n```\n\n## Set it\n\n1. Mark the post.\n\n" +
	"## Check it on the trail\n\nRide.\n\n" +
	"## If it feels wrong\n\nGo back.\n\n## What it changes for you\n\nThe knee.\n\n" +
	"## Measure it\n\n```measure inseam\n```\n"

// TestAChapterThatComputesAnswersFirst moves one section at a time out of its place.
func TestAChapterThatComputesAnswersFirst(t *testing.T) {
	load := func(text, summary string) []Mistake {
		p := page(text)
		p.Data = []byte(strings.Replace(string(p.Data), "summary: ", "summary: "+summary, 1))
		_, bad := loadFS(os.DirFS("testdata/demo"), fstest.MapFS{"saddle/tilt.md": p}, "shop", everything(), nil)
		return bad
	}
	if bad := load(inOrder, ""); bad != nil {
		t.Fatal(lines(bad))
	}
	swap := func(from, to string) string { return strings.Replace(inOrder, from, to, 1) }
	const bench = "```calculator saddle-height\n```\n\n"
	for name, c := range map[string]struct{ text, summary, want string }{
		"two sentences above the bench": {inOrder, "One thing. ",
			"shop/saddle/tilt.md:5:1: the summary has more than one sentence"},
		"a section above the bench": {"## What it changes\n\nMuch.\n\n" + inOrder, "",
			"shop/saddle/tilt.md:12:4: “What it changes” stands above the calculator"},
		"the bench after the acts": {strings.Replace(swap(bench, ""), "## Check", bench+"## Check", 1), "",
			"shop/saddle/tilt.md:12:4: “Set it” stands above the calculator"},
		"a section before the acts": {swap("## Set it", "## Why\n\nSo.\n\n## Set it"), "",
			"shop/saddle/tilt.md:15:1: “Set it” comes after “Why”"},
		"the reasons before the trail": {swap("## Check it on the trail", "## Why\n\nSo.\n\n## Check it on the trail"),
			"", "“Check it on the trail” comes after “Why”"},
		"the trail after the mending": {strings.NewReplacer("Check it on the trail", "If it feels wrong",
			"If it feels wrong", "Check it on the trail").Replace(inOrder), "",
			"“Check it on the trail” comes after “If it feels wrong”"},
		"acts that are no list":      {swap("1. Mark", "Mark"), "", "“Set it” has no numbered list"},
		"acts without their heading": {swap("## Set it", "## What to do"), "", "but none of its acts"},
	} {
		t.Run(name, func(t *testing.T) { wantMistake(t, load(c.text, c.summary), c.want) })
	}
	// Without a calculator, or where the sections are measurements, the order is free.
	for _, text := range []string{swap(bench, ""),
		"## Measure it\n\n```measure inseam\n```\n\n## Repeat it\n\n" + bench} {
		if bad := load(text, "One thing. "); bad != nil {
			t.Error(lines(bad))
		}
	}
}
