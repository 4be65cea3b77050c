package site

import (
	"bytes"
	"compress/gzip"
	"fmt"
	"io"
	"math"
	"path/filepath"
	"strings"
	"testing"
	"testing/fstest"
	"time"

	"github.com/andybalholm/brotli"
	"github.com/yuin/goldmark"
	"github.com/yuin/goldmark/extension"
)

// madeUp is a guide of n invented chapters of the usual length, in parts of
// twenty.
func madeUp(n int) fstest.MapFS {
	guide := fstest.MapFS{"index.md": page("Hello.")}
	var parts strings.Builder
	parts.WriteString("name: Made up\ntagline: T.\ncontact: a@example.org\nnotice: Invented.\nparts:\n")
	for i := range n {
		part := fmt.Sprintf("part%d", i/20)
		if i%20 == 0 {
			fmt.Fprintf(&parts, "  - key: %s\n    title: Part %d\n    chapters:\n", part, i/20)
			guide[part+"/index.md"] = pageTitled(part, "The part.")
		}
		fmt.Fprintf(&parts, "      - chapter%d\n", i)
		guide[fmt.Sprintf("%s/chapter%d.md", part, i)] = pageTitled(fmt.Sprintf("Chapter %d", i), chapterText(i))
	}
	guide["guide.yaml"] = &fstest.MapFile{Data: []byte(parts.String())}
	return guide
}

// chapterText is about 900 words with what chapters have: headings, lists, a
// table, links, a citation, a caution.
func chapterText(i int) string {
	var b strings.Builder
	for s := range 9 {
		fmt.Fprintf(&b, "## Section %d of chapter %d\n\n", s, i)
		for p := range 3 {
			fmt.Fprintf(&b,
				"The saddle moves %d mm in step %d, and the **knee** opens a little. "+
					"You ride a lap, write down what you feel, and look at the [front page](../index.md) once more. "+
					"Nobody has tested habit %d on a trail [@gum2008].\n\n", i%7+s, p, i*9+s)
		}
		b.WriteString("1. Mark the post.\n2. Move it by 5 mm.\n3. Ride, and write it down.\n\n")
	}
	b.WriteString("| What you notice | Likely cause | Next step |\n| --- | --- | ---: |\n")
	for r := range 6 {
		fmt.Fprintf(&b, "| Symptom %d | Too high | %d mm |\n", r, r)
	}
	return b.String() + "\n```caution torque\n```\n"
}

func loadMadeUp(t testing.TB, n int) *Guide {
	t.Helper()
	g, bad := loadFS(madeUp(n), nil, "", everything(), nil)
	if bad != nil {
		t.Fatal(lines(bad[:1]))
	}
	return g
}

// floor is the time that the parts which cannot be left out take on the same
// chapters: goldmark, the page template, gzip 9 and brotli 6.
func floor(t testing.TB, guide fstest.MapFS, g *Guide) time.Duration {
	t.Helper()
	md := goldmark.New(goldmark.WithExtensions(extension.Table))
	start := time.Now()
	z, err := gzip.NewWriterLevel(io.Discard, gzip.BestCompression)
	if err != nil {
		t.Fatal(err)
	}
	br := brotli.NewWriterLevel(io.Discard, pageBrotli)
	for _, p := range g.pages {
		_, at, _ := splitHeader(guide[p.Path].Data)
		var body bytes.Buffer
		if err := md.Convert(guide[p.Path].Data[at:], &body); err != nil {
			t.Fatal(err)
		}
		v := g.view("chapter", p.URL, paths{"assets/page-x/", "assets/engine-x/"})
		v.Title, v.Summary = p.Title, p.Summary
		v.Body = trusted(body.Bytes())
		text, err := v.write()
		if err != nil {
			t.Fatal(err)
		}
		for _, w := range []squeezer{z, br} {
			w.Reset(io.Discard)
			if _, err := w.Write(text); err != nil {
				t.Fatal(err)
			}
			if err := w.Close(); err != nil {
				t.Fatal(err)
			}
		}
	}
	return time.Since(start)
}

// BenchmarkPublishAgainstItsParts reports how many times as long loading and publishing
// take as the sum of the parts, in the same run.
func BenchmarkPublishAgainstItsParts(b *testing.B) {
	const n = 100
	guide := madeUp(n)
	best := math.Inf(1)
	for b.Loop() {
		start := time.Now()
		g := loadMadeUp(b, n)
		quick := testOptions(b)
		quick.Quick = true // as its parts are compressed; the best compression is not what is compared
		if _, err := Publish(b.Context(), g, filepath.Join(b.TempDir(), "site"), quick); err != nil {
			b.Fatal(err)
		}
		took := time.Since(start)
		best = min(best, float64(took)/float64(floor(b, guide, g)))
	}
	b.ReportMetric(best, "parts/op")
}

func BenchmarkPublish(b *testing.B) {
	g := loadMadeUp(b, 100)
	o := testOptions(b)
	o.Log = nil
	dir := b.TempDir()
	n := 0
	for b.Loop() {
		n++
		if _, err := Publish(b.Context(), g, filepath.Join(dir, fmt.Sprint(n)), o); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkLoad(b *testing.B) {
	guide := madeUp(100)
	on := everything()
	for b.Loop() {
		if _, bad := loadFS(guide, nil, "", on, nil); bad != nil {
			b.Fatal(bad[0])
		}
	}
}
