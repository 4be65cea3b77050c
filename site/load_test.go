package site

import (
	"flag"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"
	"testing/fstest"

	"plumbline/calculators/calctest"
	"plumbline/content"
)

var update = flag.Bool("update", false, "write the golden files anew")

// demo loads the small guide in testdata.
func demo(t testing.TB) *Guide {
	t.Helper()
	g, bad := loadFS(os.DirFS("testdata/demo"), nil, "", everything(), nil)
	if bad != nil {
		t.Fatal(lines(bad))
	}
	return g
}

// lines are mistakes as the command prints them, one a line.
func lines(bad []Mistake) string {
	var b strings.Builder
	for _, m := range bad {
		b.WriteString(m.String() + "\n")
	}
	return strings.TrimSuffix(b.String(), "\n")
}

// golden compares got with a file of testdata, or writes it.
func golden(t *testing.T, name, got string) {
	t.Helper()
	file := filepath.Join("testdata", filepath.FromSlash(name))
	if *update {
		if err := os.MkdirAll(filepath.Dir(file), 0o755); err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(file, []byte(got), 0o644); err != nil {
			t.Fatal(err)
		}
		return
	}
	want, err := os.ReadFile(file)
	if err != nil {
		t.Fatal(err)
	}
	if got != string(want) {
		t.Errorf("%s differs from what is made now; look at the difference after go test ./site -update\n%s", file,
			firstDifference(string(want), got))
	}
}

// firstDifference shows the first line in which two texts differ.
func firstDifference(want, got string) string {
	w, g := strings.Split(want, "\n"), strings.Split(got, "\n")
	for i := range min(len(w), len(g)) {
		if w[i] != g[i] {
			return "want " + w[i] + "\ngot  " + g[i]
		}
	}
	return "one is longer than the other"
}

// TestMistakesAreAllNamedWithPlaceAndRemedy lays a folder of deliberate mistakes
// over the small guide; every one must be reported in the same run.
func TestMistakesAreAllNamedWithPlaceAndRemedy(t *testing.T) {
	g, bad := loadFS(os.DirFS("testdata/demo"), os.DirFS("testdata/mistakes"), "shop", everything(), nil)
	if g != nil {
		t.Error("a guide with mistakes is fit to be published")
	}
	if len(bad) < 20 {
		t.Errorf("%d mistakes found, want at least 20", len(bad))
	}
	for _, m := range bad {
		if m.Remedy.None() {
			t.Errorf("no remedy: %s", m)
		}
	}
	golden(t, "mistakes.txt", lines(bad)+"\n")
}

func page(body string) *fstest.MapFile {
	return &fstest.MapFile{Data: []byte("---\ntitle: T\nnav: T\nquestion: Q?\nsummary: S.\n---\n\n" + body)}
}

// TestNamesThatDifferOnlyInCase cannot live in testdata: some systems would not
// keep both files.
func TestNamesThatDifferOnlyInCase(t *testing.T) {
	local := fstest.MapFS{"saddle/Height.md": page("Hello.")}
	_, bad := loadFS(os.DirFS("testdata/demo"), local, "shop", everything(), nil)
	wantMistake(t, bad, "shop/saddle/Height.md: the name differs from “saddle/height.md” only in case")
}

func TestALinkOutOfTheFolderIsNotFollowed(t *testing.T) {
	dir := t.TempDir()
	outside := filepath.Join(t.TempDir(), "secret.md")
	if err := os.WriteFile(outside, []byte("secret"), 0o600); err != nil {
		t.Fatal(err)
	}
	if err := os.MkdirAll(filepath.Join(dir, "saddle"), 0o755); err != nil {
		t.Fatal(err)
	}
	if err := os.Symlink(outside, filepath.Join(dir, "saddle", "height.md")); err != nil {
		t.Skip("no links here: ", err)
	}
	_, bad := Load(dir)
	wantMistake(t, bad, "saddle/height.md: the link leads out of the folder or nowhere")
}

// TestAPublishedFolderInsideIsNoPartOfTheGuide keeps a guide that is published
// into its own folder from reading what it wrote.
func TestAPublishedFolderInsideIsNoPartOfTheGuide(t *testing.T) {
	local := fstest.MapFS{"public/.plumbline": {}, "public/stray.md": page("Stray."),
		"notes/.hidden.md": page("Hidden.")}
	if _, bad := loadFS(os.DirFS("testdata/demo"), local, "shop", everything(), nil); bad != nil {
		t.Error(lines(bad))
	}
}

func TestAFolderThatDoesNotExistIsNamed(t *testing.T) {
	_, bad := Load(filepath.Join(t.TempDir(), "nowhere"))
	wantMistake(t, bad, "cannot be opened")
}

func TestYAMLThatCannotBeRead(t *testing.T) {
	for name, text := range map[string]string{
		"a tab":            "name: A\n\tparts: b\n",
		"an open bracket":  "parts: [a, b\n",
		"a colon in words": "notice: one: two\n",
		"a key twice":      "name: A\nname: B\n",
		"a list of lists":  "- a\n- b\n",
	} {
		_, bad := loadFS(os.DirFS("testdata/demo"), fstest.MapFS{"guide.yaml": {Data: []byte(text)}}, "shop",
			everything(), nil)
		if len(bad) == 0 || bad[0].File != "shop/guide.yaml" || bad[0].Line == 0 {
			t.Errorf("%s: %v", name, bad)
		}
	}
}

// TestAShopStatesOnlyWhatDiffers lays four lines over the built-in guide.
func TestAShopStatesOnlyWhatDiffers(t *testing.T) {
	local := fstest.MapFS{
		"guide.yaml": {Data: []byte("name: Alder Bank Bikes\nnotice: Alder Bank Bikes is an invented shop.\n" +
			"contact: https://example.org/alder\n" +
			"booking: https://example.org/book\nlocal: The workshop is closed on Mondays.\nunits: in\n" +
			"parts:\n  - key: saddle\n    chapters: [tilt, height]\n" +
			"  - key: feet\n    chapters: [flat-or-clipped]\n")},
		"glossary.yaml": {Data: []byte("collar:\n  says: What we call the seat clamp.\n")},
		"saddle/tilt.md": page("A page of our own. " +
			"See [the height](height.md#set-it)."),
	}
	g, bad := loadFS(os.DirFS("testdata/demo"), local, "shop", everything(), nil)
	if bad != nil {
		t.Fatal(lines(bad))
	}
	if g.Name != "Alder Bank Bikes" || g.Tagline != "A very small guide for the tests." || g.Units != "in" ||
		g.Booking != "https://example.org/book" {
		t.Errorf("settings: %+v", g.settings)
	}
	if p := g.parts; len(p) != 2 || p[0].Title != "Saddle" || p[0].Chapters[0].Path != "saddle/tilt.md" {
		t.Errorf("parts: %+v", g.parts)
	}
	if g.terms[1].Says != "What we call the seat clamp." {
		t.Errorf("terms: %+v", g.terms)
	}
}

func TestChaptersLeftOut(t *testing.T) {
	local := fstest.MapFS{
		"guide.yaml":      {Data: []byte("leave_out: [saddle/tilt, saddle/tlit]\n")},
		"saddle/index.md": page("Set the [tilt](tilt.md)."),
	}
	_, bad := loadFS(os.DirFS("testdata/demo"), local, "shop", everything(), nil)
	wantMistake(t, bad, "leave_out names “saddle/tlit”")
	if len(bad) != 1 {
		t.Error(lines(bad))
	}
}

// pageTitled is a page with that title.
func pageTitled(title, text string) *fstest.MapFile {
	p := page(text)
	p.Data = []byte(strings.Replace(string(p.Data), "title: T\n", "title: "+title+"\n", 1))
	return p
}

// TestAShopAddsWithoutRestatingTheParts adds a chapter to a part and a part of its own.
func TestAShopAddsWithoutRestatingTheParts(t *testing.T) {
	local := fstest.MapFS{
		"guide.yaml": {Data: []byte("add:\n  saddle: [our-saddles]\n  shop:\n    title: Our workshop\n    " +
			"chapters: [hours, missing]\n")},
		"saddle/our-saddles.md": pageTitled("saddle/our-saddles.md", "What we lend."),
		"shop/index.md":         pageTitled("shop/index.md", "Who we are."),
		"shop/hours.md":         pageTitled("shop/hours.md", "When we are there."),
	}
	_, bad := loadFS(os.DirFS("testdata/demo"), local, "shop", everything(), nil)
	wantMistake(t, bad, "shop/guide.yaml:5:23: there is no page “shop/missing.md”")
	if len(bad) != 1 {
		t.Fatal(lines(bad))
	}
	before := demo(t)
	local["shop/missing.md"] = pageTitled("shop/missing.md", "Found.")
	g, bad := loadFS(os.DirFS("testdata/demo"), local, "shop", everything(), nil)
	if bad != nil {
		t.Fatal(lines(bad))
	}
	if len(g.parts) != len(before.parts)+1 {
		t.Fatalf("%d parts, want one more than %d", len(g.parts), len(before.parts))
	}
	own := g.parts[len(g.parts)-1]
	if own.Title != "Our workshop" || len(own.Chapters) != 2 {
		t.Errorf("%+v", own)
	}
	if g.byPath["saddle/our-saddles.md"] == nil || g.byPath["saddle/tilt.md"] == nil {
		t.Error("the part has not both its own chapters and the added one")
	}
}

// TestLinksToWhatIsLeftOutBecomeWords leaves out two chapters of a small guide.
func TestLinksToWhatIsLeftOutBecomeWords(t *testing.T) {
	local := fstest.MapFS{
		"guide.yaml": {Data: []byte("leave_out: [saddle/tilt]\n")},
		"saddle/index.md": page("Set the [*tilt* of it](tilt.md#how) last, and see [height](height.md).\n\n" +
			"- [Tilt](tilt.md): which way it points\n- [Height](height.md)\n\n" +
			"Then:\n\n- [Tilt](tilt.md)\n\nThat is all."),
	}
	g, bad := loadFS(os.DirFS("testdata/demo"), local, "shop", everything(), nil)
	if bad != nil {
		t.Fatal(lines(bad))
	}
	html, err := g.render(g.byPath["saddle/index.md"])
	if err != nil {
		t.Fatal(err)
	}
	text := string(html)
	for _, gone := range []string{"tilt.html", "which way it points", "<ul>\n</ul>"} {
		if strings.Contains(text, gone) {
			t.Errorf("%q still stands in\n%s", gone, text)
		}
	}
	for _, stays := range []string{"Set the <em>tilt</em> of it last", `<li><a href="height.html">Height</a></li>`,
		"That is all."} {
		if !strings.Contains(text, stays) {
			t.Errorf("%q is gone from\n%s", stays, text)
		}
	}
}

// TestAnyChapterCanBeLeftOut leaves out each chapter of the guide by itself, and then
// all of a part but one. Nothing else has to be written for it.
func TestAnyChapterCanBeLeftOut(t *testing.T) {
	whole, bad := Load("")
	if bad != nil {
		t.Fatal(lines(bad))
	}
	out := func(paths ...string) {
		local := fstest.MapFS{"guide.yaml": {Data: []byte("leave_out: [" + strings.Join(paths, ", ") + "]\n")}}
		if _, bad := loadFS(content.Files, local, "shop", everything(), nil); bad != nil {
			t.Errorf("without %s:\n%s", paths, lines(bad))
		}
	}
	for _, part := range whole.parts {
		var names []string
		for _, c := range part.Chapters {
			names = append(names, strings.TrimSuffix(c.Path, ".md"))
		}
		if !testing.Short() {
			for _, name := range names {
				out(name)
			}
		}
		out(names[1:]...)
	}
}

// TestTheNoticeOfTheDemoShopDoesNotSpeakForAnother guards a real shop against
// publishing under its name that it is an invented one.
func TestTheNoticeOfTheDemoShopDoesNotSpeakForAnother(t *testing.T) {
	local := fstest.MapFS{"guide.yaml": {Data: []byte("units: cm\nname: Alder Bank Bikes\n")}}
	_, bad := loadFS(content.Files, local, "shop", everything(), nil)
	wantMistake(t, bad, "shop/guide.yaml:2:1: the name is yours but the notice still speaks of Larch Hollow Cycles")
	wantMistake(t, bad, "shop/guide.yaml:2:1: the name is yours but the contact is still that of Larch Hollow Cycles")
}

// TestTheBuiltInGuideHasNoMistakes is what an author runs after every edit.
func TestTheBuiltInGuideHasNoMistakes(t *testing.T) {
	g, bad := Load("")
	if bad != nil {
		t.Fatal(lines(bad))
	}
	for _, p := range g.layers.paths {
		if filepath.Ext(p) == ".md" && g.byPath[p] == nil {
			t.Errorf("content/%s is in no part of guide.yaml", p)
		}
	}
}

func wantMistake(t *testing.T, bad []Mistake, part string) {
	t.Helper()
	if !strings.Contains(lines(bad), part) {
		t.Errorf("want a mistake with\n\t%s\ngot\n%s", part, lines(bad))
	}
}

// TestAnUnknownFigureIsAnsweredWithTheFigures asks for figures that do not exist.
func TestAnUnknownFigureIsAnsweredWithTheFigures(t *testing.T) {
	saying := func(name string) string {
		local := fstest.MapFS{"saddle/tilt.md": page("```figure " + name + "\n```\n")}
		_, bad := loadFS(os.DirFS("testdata/demo"), local, "shop", everything(), nil)
		if len(bad) != 1 {
			t.Fatalf("%s: %v", name, lines(bad))
		}
		return bad[0].String()
	}
	got := saying("nonsense")
	start, list, ok := strings.Cut(got, "the figures are, nearest name first, ")
	if !ok || start != "shop/saddle/tilt.md:8:11: there is no figure “nonsense”, " {
		t.Fatal(got)
	}
	names := strings.Split(strings.Replace(list, " and ", ", ", 1), ", ")
	on := everything()
	for _, name := range names {
		if on.figure(name, nil) == nil {
			t.Errorf("%q is offered and cannot be drawn", name)
		}
	}
	for _, f := range on.standing {
		if !strings.Contains(list, f.Name) {
			t.Errorf("%s is not offered", f.Name)
		}
	}
	// Eight letters too many are more than a slip, but whole-rider is still nearest.
	if got := saying("zzz-whole-rider-zzz"); !strings.Contains(got, "nearest name first, whole-rider,") {
		t.Error(got)
	}
	if got := saying("whole-ridr"); !strings.HasSuffix(got, "did you mean “whole-rider”?") {
		t.Error(got)
	}
}

// TestABlockWithHeadingsNeedsOneAboveIt: the panel of a calculator is titled at the
// third level, so a chapter in which it follows the title at once skips the second.
func TestABlockWithHeadingsNeedsOneAboveIt(t *testing.T) {
	const bench, steps = "```calculator saddle-height\n```\n", "```prepare\n```\n"
	for text, want := range map[string]string{
		steps: "shop/saddle/tilt.md:8:4: no heading stands above this prepare block",
		"### Deep\n\n" +
			bench: "shop/saddle/tilt.md:8:1: the heading “Deep” skips a level, write ## Deep",
		"# Title again\n\n" + bench: "“Title again” is a first-level heading",
	} {
		local := fstest.MapFS{"saddle/tilt.md": page(text)}
		_, bad := loadFS(os.DirFS("testdata/demo"), local, "shop", everything(), nil)
		wantMistake(t, bad, want)
	}
	// Nothing is skipped in these.
	for _, text := range []string{"Words alone.", bench, "Words.\n\n" + bench + "\n## Late\n",
		"## Above\n\n" + bench + "\n### Below\n",
		"## Above\n\n### Deeper\n\n" + bench} {
		local := fstest.MapFS{"saddle/tilt.md": page(text)}
		g, bad := loadFS(os.DirFS("testdata/demo"), local, "shop", everything(), nil)
		if bad != nil {
			t.Errorf("%q: %v", text, lines(bad))
			continue
		}
		complete(t, "saddle/tilt.html", parsed(t, built(t, g)["saddle/tilt.html"]))
	}
}

// TestPictures of the shop's folder are published where the page looks for them.
func TestPictures(t *testing.T) {
	png := pngOf(t, 40, 30)
	local := fstest.MapFS{
		"saddle/bench.png": {Data: []byte(png)},
		"unused.png":       {Data: []byte(png)},
		"saddle/tilt.md":   page("![A level on a saddle](bench.png)"),
	}
	g, bad := loadFS(os.DirFS("testdata/demo"), local, "shop", everything(), nil)
	if bad != nil {
		t.Fatal(lines(bad))
	}
	all := built(t, g)
	if all["saddle/bench.png"] == nil || all["unused.png"] != nil {
		t.Error("a picture is missing, or published without use")
	}
	img := parsed(t, all["saddle/tilt.html"]).all("main img[src]")
	if len(img) != 1 || attribute(img[0], "src") != "bench.png" || attribute(img[0], "alt") != "A level on a saddle" {
		t.Error(string(all["saddle/tilt.html"]))
	}
	for text, part := range map[string]string{
		"![](bench.png)":                      "no text for readers who cannot see it",
		"![x](bnech.png)":                     "there is no picture “bnech.png”",
		"![x](logo.svg)":                      "there is no picture “logo.svg”",
		"![x](height.md)":                     "“height.md” is no picture",
		"![x](data:image/png;base64,AA)":      "links of the kind “data:”",
		"[x](bench.png)":                      "is a picture",
		"![x](https://example.org/bench.png)": "another server",
	} {
		local["saddle/tilt.md"] = page(text)
		_, bad := loadFS(os.DirFS("testdata/demo"), local, "shop", everything(), nil)
		wantMistake(t, bad, part)
	}
}

// TestIdsNeverClash writes headings that want the ids of the frame and of a
// calculator.
func TestIdsNeverClash(t *testing.T) {
	text := "## Main\n\n## Sources\n\n## Saddle height 1\n\n## Sources\n\n" +
		"```calculator saddle-height\n```\n\n```calculator saddle-height\n```\n"
	local := fstest.MapFS{"saddle/tilt.md": page(text),
		"glossary.yaml": {Data: []byte("main:\n  says: A word that the frame uses.\n")}}
	g, bad := loadFS(os.DirFS("testdata/demo"), local, "shop", everything(), nil)
	if bad != nil {
		t.Fatal(lines(bad))
	}
	all := built(t, g)
	for _, p := range []string{"saddle/tilt.html", "glossary.html"} {
		idsOf(t, p, parsed(t, all[p]))
	}
}

// FuzzPage gives the loader any page at all. It may complain; it may not panic,
// and what it accepts must render.
func FuzzPage(f *testing.F) {
	for _, p := range []string{"saddle/height.md", "index.md"} {
		b, err := os.ReadFile("testdata/demo/" + p)
		if err != nil {
			f.Fatal(err)
		}
		f.Add(b)
	}
	f.Add([]byte("---\ntitle: [\n---\n```calculator\n```\n[@"))
	f.Add([]byte("---\n---\n---\n# \n[](x)![](y)<z>"))
	base := os.DirFS("testdata/demo")
	on := everything()
	f.Fuzz(func(t *testing.T, b []byte) {
		calctest.Bounded(t, func() {
			g, bad := loadFS(base, fstest.MapFS{"saddle/tilt.md": {Data: b}}, "shop", on, nil)
			if (g == nil) == (bad == nil) {
				t.Fatal("neither a guide nor a mistake")
			}
			if g != nil {
				if _, _, err := g.build(engineFiles{}); err != nil {
					t.Fatal(err)
				}
			}
		})
	})
}

// TestABrokenLineHidesNothingElse breaks three keys of guide.yaml, and a header; what else
// is wrong is told in the same run, and nothing is told that only follows from it.
func TestABrokenLineHidesNothingElse(t *testing.T) {
	_, bad := shopOver(map[string]string{
		"guide.yaml": "units: furlongs\nadd: {saddle: [ours\nbooking: x\ntagline: @home\nlanguage: " +
			"tlh-what\nnotice: a: b\n",
		"saddle/tilt.md": "---\ntitle: \"Tilt\nnav: T\ntiem: 1\nquestion: Q?\nsummary: S.\n---\n\n" +
			"See [height](hieght.md).\n",
		"saddle/ours.md": string(page("Ours.").Data),
	})
	for _, want := range []string{
		"guide.yaml:1:8: “furlongs” is not a unit", "guide.yaml:3:1: this is not valid YAML: a bracket above is " +
			"still open",
		"guide.yaml:3:10: “x” is no web address", "guide.yaml:4:10: this is not valid YAML",
		"guide.yaml:5:11: “tlh-what” is no language", "guide.yaml:6:9: this is not valid YAML",
		"tilt.md:2:8: this is not valid YAML", "tilt.md:4:1: the key “tiem” is not known here",
		"tilt.md:9:14: there is no page “hieght.md”",
	} {
		wantMistake(t, bad, want)
	}
	if len(bad) != 9 {
		t.Errorf("%d mistakes are told, want the nine\n%s", len(bad), lines(bad))
	}
}

// FuzzHeader gives the loader any header of a page.
func FuzzHeader(f *testing.F) {
	for _, p := range []string{"saddle/height.md", "index.md"} {
		b, err := os.ReadFile("testdata/demo/" + p)
		if err != nil {
			f.Fatal(err)
		}
		head, _, _ := splitHeader(b)
		f.Add(head)
	}
	f.Add([]byte("title: &a [*a]\nnav: !!binary x\n"))
	f.Fuzz(func(t *testing.T, head []byte) {
		calctest.Bounded(t, func() {
			text := slices.Concat([]byte("---\n"), head, []byte("\n---\nWords.\n"))
			for _, m := range second(readHeader(source{path: "a/b.md", file: "a/b.md", text: text})) {
				if m.What.None() || m.Line < 1 {
					t.Fatalf("%+v says nothing or stands nowhere", m)
				}
			}
		})
	})
}

func second(_ header, _ int, bad []Mistake) []Mistake { return bad }

// FuzzSettings gives the loader any guide.yaml and any other of the files with keys.
func FuzzSettings(f *testing.F) {
	for i, name := range keyed {
		if b, err := os.ReadFile("testdata/demo/" + name); err == nil {
			f.Add(uint(i), b)
		}
	}
	f.Add(uint(0), []byte("parts: &a\n  - *a\n"))
	f.Add(uint(3), []byte("? [a, b]\n: {says: x}\n"))
	base, on := os.DirFS("testdata/demo"), everything()
	f.Fuzz(func(t *testing.T, i uint, b []byte) {
		calctest.Bounded(t, func() {
			local := fstest.MapFS{keyed[i%uint(len(keyed))]: {Data: b}}
			g, bad := loadFS(base, local, "shop", on, nil)
			if (g == nil) == (bad == nil) {
				t.Fatal("neither a guide nor a mistake")
			}
			if g != nil {
				if _, _, err := g.build(engineFiles{}); err != nil {
					t.Fatal(err)
				}
			}
		})
	})
}
