package site

import (
	"bufio"
	"context"
	"io"
	"net"
	"net/http"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"
)

// previewed starts a preview of a folder that is the demo guide and a half.
func previewed(t *testing.T, dir string) (address string) {
	t.Helper()
	engine, _ := smallEngine(t.Context(), "")
	listener, err := net.Listen("tcp", "127.0.0.1:0")
	if err != nil {
		t.Fatal(err)
	}
	p := newPreviewer(dir, engine, testOptions(t))
	if dir != "" { // over the small guide, so that the real one's links do not matter
		kept := newMemory()
		p.load = func() (*Guide, []Mistake) {
			return loadFS(os.DirFS("testdata/demo"), os.DirFS(dir), dir, everything(), kept)
		}
	}
	if err := p.refresh(); err != nil {
		t.Fatal(err)
	}
	ctx, cancel := context.WithCancel(context.Background())
	ended := make(chan error, 1)
	go func() { ended <- p.run(ctx, listener) }()
	t.Cleanup(func() {
		cancel()
		if err := <-ended; err != nil {
			t.Error(err)
		}
	})
	return "http://" + listener.Addr().String()
}

func fetch(t *testing.T, address string) string {
	t.Helper()
	r, err := http.Get(address)
	if err != nil {
		t.Fatal(err)
	}
	defer r.Body.Close()
	b, err := io.ReadAll(r.Body)
	if err != nil {
		t.Fatal(err)
	}
	return string(b)
}

// listen follows the event stream of a preview.
func listen(t *testing.T, address string) <-chan string {
	t.Helper()
	r, err := http.Get(address + "/.plumbline/events")
	if err != nil {
		t.Fatal(err)
	}
	versions := make(chan string, 16)
	go func() {
		defer r.Body.Close()
		for lines := bufio.NewScanner(r.Body); lines.Scan(); {
			if v, ok := strings.CutPrefix(lines.Text(), "data: "); ok {
				versions <- v
			}
		}
	}()
	return versions
}

// next waits for a version other than the one before.
func next(t *testing.T, versions <-chan string, before string) string {
	t.Helper()
	for {
		select {
		case v := <-versions:
			if v != before {
				return v
			}
		case <-time.After(5 * time.Second):
			t.Fatal("no change was told")
		}
	}
}

func save(t *testing.T, dir, name, text string) {
	t.Helper()
	file := filepath.Join(dir, filepath.FromSlash(name))
	if err := os.MkdirAll(filepath.Dir(file), 0o755); err != nil {
		t.Fatal(err)
	}
	if err := os.WriteFile(file, []byte(text), 0o644); err != nil {
		t.Fatal(err)
	}
}

// TestPreviewFollowsTheFolder saves a chapter, then a mistake, then its remedy.
// A change must be on the page 0.3 s after it was saved; the test allows for a
// busy machine by taking the best of five.
func TestPreviewFollowsTheFolder(t *testing.T) {
	dir := t.TempDir()
	const chapter = "---\ntitle: Saddle height\nnav: Height\nquestion: How high?\nsummary: S.\n---\n\n## Set it\n\n"
	save(t, dir, "saddle/height.md", chapter+"Version nought.\n")
	address := previewed(t, dir)
	versions := listen(t, address)
	v := next(t, versions, "")
	best := time.Hour
	for _, word := range []string{"one", "two", "three", "four", "five"} {
		start := time.Now()
		save(t, dir, "saddle/height.md", chapter+"Version "+word+".\n")
		for {
			v = next(t, versions, v)
			if strings.Contains(fetch(t, address+"/saddle/height.html"), "Version "+word+".") {
				break
			}
		}
		best = min(best, time.Since(start))
	}
	t.Logf("from saving to the page: %v", best)
	if best > time.Second && !testing.Short() { // the race detector runs short, and slowly
		t.Errorf("a saved chapter took %v to show", best)
	}
	save(t, dir, "saddle/height.md", chapter+"```calculater x\n```\n")
	next(t, versions, v)
	page := fetch(t, address+"/saddle/height.html")
	for _, part := range []string{"One mistake", "height.md</p>",
		"<code>10:4</code> there is no block “calculater”", "Version five."} {
		if !strings.Contains(page, part) {
			t.Errorf("the page with a mistake lacks %q", part)
		}
	}
	save(t, dir, "saddle/height.md", chapter+"Mended.\n")
	for range 10 {
		next(t, versions, "")
		if page = fetch(t, address+"/saddle/height.html"); strings.Contains(page, "Mended.") &&
			!strings.Contains(page, "mistake") {
			return
		}
	}
	t.Error("the remedy does not show")
}

func TestPreviewOfAFolderThatIsWrongFromTheStart(t *testing.T) {
	dir := t.TempDir()
	save(t, dir, "guide.yaml", "nmae: A\n")
	page := fetch(t, previewed(t, dir)+"/")
	if !strings.Contains(page, "The guide cannot be shown yet") || !strings.Contains(page, "did you mean “name”?") ||
		!strings.Contains(page, "reload.js") {
		t.Error(page)
	}
}

func TestPreviewAnswersThisMachineAlone(t *testing.T) {
	address := previewed(t, "")
	for host, want := range map[string]int{"": 200, "localhost": 200, "localhost:9": 200, "127.0.0.1": 200,
		"[::1]:80":    200,
		"example.org": 421, "localhost.example.org": 421, "0.0.0.0": 421, "192.168.1.4": 421,
		"127.0.0.1.example.org": 421} {
		r, err := http.NewRequest("GET", address+"/", nil)
		if err != nil {
			t.Fatal(err)
		}
		if host != "" {
			r.Host = host
		}
		answer, err := http.DefaultClient.Do(r)
		if err != nil {
			t.Fatal(err)
		}
		answer.Body.Close()
		if answer.StatusCode != want {
			t.Errorf("%q: %d, want %d", host, answer.StatusCode, want)
		}
	}
	for _, addr := range []string{":8040", "0.0.0.0:8040", "192.168.1.4:80", "example.org:80", "[::]:80", "8040"} {
		if err := Preview(t.Context(), "", addr, testOptions(t)); err == nil {
			t.Errorf("the preview listens at %s", addr)
		}
	}
}
