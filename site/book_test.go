package site

import (
	"archive/zip"
	"bytes"
	"encoding/xml"
	"errors"
	"io"
	"os"
	"os/exec"
	"path"
	"path/filepath"
	"strconv"
	"strings"
	"testing"
	"testing/fstest"
	"time"

	"golang.org/x/net/html"

	"plumbline/calculators/catalog"
	"plumbline/calculators/record"
	"plumbline/content"
)

// madeOn is the day on which the books of these tests are made.
var madeOn = time.Date(2026, 1, 31, 12, 0, 0, 0, time.UTC)

// someone is a rider of our own invention, with a scatter of numbers.
const someone = "name=Rosa+Tester&bike=Steel+one&inseam=801&stature=1690&foot-length=251&mass=64&reach=448&stack=618&" +
	"head-angle=65&seat-angle=76.5&chainstay=432&pedals=flat&crank-length=165"

// bookOf makes the built-in guide, with a folder laid over it, into a book.
func bookOf(t testing.TB, local fstest.MapFS, numbers string) *Book {
	t.Helper()
	o := BookOptions{Made: madeOn}
	if numbers != "" {
		r, problems := record.Decode(numbers)
		if problems != nil {
			t.Fatal(problems)
		}
		o.Record = r
	}
	g, bad := loadFS(content.Files, local, "shop", everything(), nil)
	if bad != nil {
		t.Fatal(lines(bad))
	}
	b, err := g.Book(o)
	if err != nil {
		t.Fatal(err)
	}
	return b
}

// unpacked are the files of an EPUB.
func unpacked(t testing.TB, epub []byte) map[string]string {
	t.Helper()
	z, err := zip.NewReader(bytes.NewReader(epub), int64(len(epub)))
	if err != nil {
		t.Fatal(err)
	}
	all := map[string]string{}
	for _, f := range z.File {
		r, err := f.Open()
		if err != nil {
			t.Fatal(err)
		}
		b, err := io.ReadAll(r)
		if err != nil {
			t.Fatal(err)
		}
		all[f.Name] = string(b)
	}
	return all
}

// TestBookHasEverythingOnce looks for every calculator, every chapter and every term, and
// holds each link to its place.
func TestBookHasEverythingOnce(t *testing.T) {
	b := bookOf(t, nil, "")
	page := parsed(t, b.HTML)
	ids := map[string]bool{}
	for n := range page.Descendants() {
		if id := attrOf(n, "id"); id != "" {
			if ids[id] {
				t.Errorf("the id %s stands twice", id)
			}
			ids[id] = true
		}
	}
	inside := 0
	for _, a := range page.all("a") {
		dest := attrOf(a, "href")
		to, in := strings.CutPrefix(dest, "#")
		switch {
		case in && !ids[to]:
			t.Errorf("a link leads to %s, which is nowhere", dest)
		case in:
			inside++
		case !strings.Contains(dest, ":"):
			t.Errorf("a link leads out of the book, to %q", dest)
		}
	}
	if inside < 500 {
		t.Errorf("only %d links stay inside the book", inside)
	}
	g, _ := Load("")
	for _, p := range g.pages {
		if !ids[bookKey(p.URL)] {
			t.Errorf("the book lacks %s", p.Path)
		}
	}
	for _, term := range g.terms {
		if !ids["glossary--"+term.Key] {
			t.Errorf("the book lacks the word %s", term.Name)
		}
	}
	for _, c := range catalog.All() {
		found := false
		for id := range ids {
			found = found || strings.HasSuffix(id, "--"+c.Name+"-1")
		}
		if !found {
			t.Errorf("the book lacks the calculator %s", c.Name)
		}
	}
	for _, tag := range []string{"input", "button", "details", "script", "form", "textarea", "select"} {
		if left := page.all(tag); len(left) > 0 {
			t.Errorf("%d %s stand in the book, which paper cannot use", len(left), tag)
		}
	}
	if page.all("svg") == nil || page.all("span.write") == nil || page.all("span.box") == nil {
		t.Error("the book lacks figures, lines or boxes")
	}
	if b.Own != 0 || b.Example < len(catalog.All()) {
		t.Errorf("without a record %d calculators answer with one, and %d with their example", b.Own, b.Example)
	}
}

// TestBookCitesByTheNumberInItsList follows each citation to its line in the list.
func TestBookCitesByTheNumberInItsList(t *testing.T) {
	page := parsed(t, bookOf(t, nil, "").HTML)
	number := map[string]int{}
	for i, li := range page.all(".library li") {
		number["#"+attrOf(li, "id")] = i + 1
	}
	cited := 0
	for _, a := range page.all("span.cite a") {
		var said strings.Builder
		for n := range a.Descendants() {
			if n.Type == html.TextNode {
				said.WriteString(n.Data)
			}
		}
		if want := number[attrOf(a, "href")]; want == 0 || said.String() != strconv.Itoa(want) {
			t.Errorf("[%s] leads to source %d (%s)", said.String(), want, attrOf(a, "href"))
		}
		cited++
	}
	if cited < 100 {
		t.Errorf("only %d citations were followed", cited)
	}
}

// TestBookHasTheRidersNumbers compares what stands in the book with the rule that is
// printed beside it: 0.883 of an inside leg of 801 mm is 707 mm from the bottom bracket
// (LeMond rule as quoted in Peveler and others 2005, moved by the crank), and 109 % of it
// 873 mm from the pedal (Hamley and Thomas 1967), 708 mm from the bottom bracket with
// cranks of 165 mm.
func TestBookHasTheRidersNumbers(t *testing.T) {
	b := bookOf(t, nil, someone)
	page := parsed(t, b.HTML)
	if b.Own < 5 || b.Example < 8 {
		t.Errorf("%d calculators answer with the record, %d with their example", b.Own, b.Example)
	}
	var bench *html.Node
	for _, n := range page.all("section.bench") {
		if attrOf(n, "id") == "saddle-height--saddle-height-1" {
			bench = n
		}
	}
	if bench == nil {
		t.Fatal("there is no saddle height in the chapter Saddle height")
	}
	said := wordsOf(bench)
	for _, want := range []string{"The numbers of Rosa Tester", "801 mm", "109 % of inside leg 708"} {
		if !strings.Contains(said, want) {
			t.Errorf("the bench lacks %q:\n%s", want, said)
		}
	}
	if strings.Contains(said, "Worked example") || strings.Contains(said, "830 mm") {
		t.Errorf("the example's numbers stand beside the rider's:\n%s", said)
	}
	for _, n := range page.all("section.bench") {
		said := wordsOf(n)
		own := strings.Contains(said, "The numbers of Rosa Tester")
		example := strings.Contains(said, "Worked example, not yours")
		if own == example {
			t.Errorf("%s does not say whose numbers it has", attrOf(n, "id"))
		}
		if example && !strings.Contains(said, "For your own numbers this still needs") &&
			!strings.Contains(said, "none of the numbers") {
			t.Errorf("%s does not say what the record lacks", attrOf(n, "id"))
		}
	}
	if !strings.Contains(wordsOf(page.all("section.cover")[0]), "Rosa Tester") {
		t.Error("the cover does not say whose book it is")
	}
}

// wordsOf is the text below n, with single spaces.
func wordsOf(n *html.Node) string {
	var b strings.Builder
	for c := range n.Descendants() {
		if c.Type == html.TextNode {
			b.WriteString(c.Data + " ")
		}
	}
	return strings.Join(strings.Fields(b.String()), " ")
}

// TestEPUBIsWellFormed reads every file of text as XML, and the media type as the first
// bytes say it (EPUB 3.2, Open Container Format, 4.3).
func TestEPUBIsWellFormed(t *testing.T) {
	b := bookOf(t, nil, someone)
	if got := string(b.EPUB[30:58]); got != "mimetypeapplication/epub+zip" {
		t.Errorf("the file begins with %q", got)
	}
	texts := 0
	for name, text := range unpacked(t, b.EPUB) {
		switch path.Ext(name) {
		case ".xhtml", ".opf", ".xml", ".svg":
		default:
			continue
		}
		texts++
		d := xml.NewDecoder(strings.NewReader(text))
		for {
			if _, err := d.Token(); errors.Is(err, io.EOF) {
				break
			} else if err != nil {
				t.Errorf("%s: %v", name, err)
				break
			}
		}
	}
	if texts < 40 {
		t.Errorf("only %d files were read", texts)
	}
}

// TestEPUBPassesEpubcheck has the judge of the format judge it, with a shop's own pictures
// and words that XML has to escape.
func TestEPUBPassesEpubcheck(t *testing.T) {
	const jar = "/usr/share/java/epubcheck.jar" // Debian's package epubcheck
	java, err := exec.LookPath("java")
	if _, gone := os.Stat(jar); err != nil || gone != nil {
		if os.Getenv("PLUMBLINE_NEED_EPUBCHECK") == "1" {
			t.Fatal("epubcheck or Java is missing")
		}
		t.Skip("no epubcheck (Debian: apt-get install epubcheck)")
	}
	png := "\x89PNG\r\n\x1a\n\x00\x00\x00\rIHDR\x00\x00\x00\x01\x00\x00\x00\x01\x08\x00\x00\x00\x00:~\x9bU" +
		"\x00\x00\x00\nIDATx\x9cc`\x00\x00\x00\x02\x00\x01H\xaf\xa4q\x00\x00\x00\x00IEND\xaeB`\x82"
	shop := fstest.MapFS{
		"guide.yaml": {Data: []byte("name: Alder & <Ash> Bikes\ncontact: a@alder.example\nnotice: Ours.\n" +
			"tagline: \"Fit, \\\"slowly\\\"\"\n")},
		"saddle/height.add.md": {Data: []byte("## Our own\n\n![A post & a tape](post.png)\n\n" +
			"![A film](<My film.JPG>)\n")},
		"saddle/post.png":    {Data: []byte(png)},
		"saddle/My film.JPG": {Data: []byte(jpegOf(t, 40, 20, 6))},
	}
	b := bookOf(t, shop, someone)
	name := filepath.Join(t.TempDir(), "own.epub")
	if err := os.WriteFile(name, b.EPUB, 0o600); err != nil {
		t.Fatal(err)
	}
	// Java's quick compiler: the judge has ended before the thorough one has paid for itself.
	judge := exec.CommandContext(t.Context(), java, "-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC",
		"-jar", jar, "--failonwarnings", name)
	if out, err := judge.CombinedOutput(); err != nil {
		t.Errorf("epubcheck: %v\n%s", err, out)
	}
	all := unpacked(t, b.EPUB)
	chapter := all["book/saddle-height.xhtml"]
	if all["book/pictures/saddle/post.png"] == "" || !strings.Contains(chapter, "pictures/saddle/post.png") {
		t.Error("the shop's picture is not in the book")
	}
	if film := all["book/pictures/saddle/my-film.jpg"]; !strings.HasPrefix(film, "\xff\xd8\xff") ||
		strings.Contains(film, "SecretCamera") ||
		!strings.Contains(chapter, "pictures/saddle/my-film.jpg") {
		t.Error("a photo is not in the book, or tells its camera")
	}
	for _, kind := range []string{"data:image/png;base64,", "data:image/webp;base64,"} {
		if !strings.Contains(string(b.HTML), kind) {
			t.Errorf("the printed page lacks the shop's picture %s", kind)
		}
	}
}

// TestTwoBooksAreEqual makes the same book twice.
func TestTwoBooksAreEqual(t *testing.T) {
	a, b := bookOf(t, nil, someone), bookOf(t, nil, someone)
	if !bytes.Equal(a.HTML, b.HTML) || !bytes.Equal(a.EPUB, b.EPUB) {
		t.Error("two books of one guide differ")
	}
}

// TestTheBookOfALanguageSpeaksIt: each page’s blocks too, which know nothing of the page.
func TestTheBookOfALanguageSpeaksIt(t *testing.T) {
	g, bad := Load("")
	if bad != nil {
		t.Fatal(lines(bad))
	}
	b, err := g.In("de").Book(BookOptions{Made: madeOn})
	if err != nil {
		t.Fatal(err)
	}
	said := wordsOf(parsed(t, b.HTML).Node)
	for _, want := range []string{"Rechenbeispiel", "Sattelhöhe", "Ein Blatt zum Ausfüllen", "Körpergröße"} {
		if !strings.Contains(said, want) {
			t.Errorf("the book lacks %q", want)
		}
	}
	for _, english := range []string{"Saddle height", "Inside leg", "One reading is good", "Worked example",
		" and others",
		"Work from the top down", "You may leave this out"} {
		if i := strings.Index(said, english); i >= 0 {
			t.Errorf("the German book says %q", said[max(0, i-60):min(len(said), i+90)])
		}
	}
}
