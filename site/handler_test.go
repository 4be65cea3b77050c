package site

import (
	"net/http"
	"net/http/httptest"
	"net/url"
	"path/filepath"
	"regexp"
	"strings"
	"testing"
)

// served publishes the small guide and returns what answers for it.
func served(t *testing.T) (http.Handler, string) {
	t.Helper()
	dir := filepath.Join(t.TempDir(), "a")
	publish(t, demo(t), dir)
	return Handler(dir), dir
}

func ask(h http.Handler, method, address string, header ...string) *httptest.ResponseRecorder {
	r := httptest.NewRequest(method, "/", nil)
	r.URL.Path = address
	for i := 0; i < len(header); i += 2 {
		r.Header.Set(header[i], header[i+1])
	}
	w := httptest.NewRecorder()
	h.ServeHTTP(w, r)
	return w
}

func TestHandlerSendsTypesAndPolicy(t *testing.T) {
	h, dir := served(t)
	engine, _ := filepath.Glob(filepath.Join(dir, "assets", "engine-*"))
	page, _ := filepath.Glob(filepath.Join(dir, "assets", "page-*"))
	if len(engine) != 1 || len(page) != 1 {
		t.Fatal(engine, page)
	}
	for address, kind := range map[string]string{
		"/":                   "text/html; charset=utf-8",
		"/saddle/":            "text/html; charset=utf-8",
		"/saddle/height.html": "text/html; charset=utf-8",
		"/find.json":          "application/json",
		"/assets/" + filepath.Base(engine[0]) + "/whole.wasm": "application/wasm",
		"/assets/" + filepath.Base(page[0]) + "/style.css":    "text/css; charset=utf-8",
		"/assets/" + filepath.Base(page[0]) + "/icon.svg":     "image/svg+xml",
		"/assets/" + filepath.Base(page[0]) + "/search.js":    "text/javascript; charset=utf-8",
	} {
		w := ask(h, "GET", address)
		if w.Code != 200 || w.Header().Get("Content-Type") != kind {
			t.Errorf("%s: %d %s", address, w.Code, w.Header().Get("Content-Type"))
		}
		if p := w.Header().Get("Content-Security-Policy"); !strings.HasSuffix(p, "; frame-ancestors 'none'") ||
			!strings.HasPrefix(p, policy) {
			t.Errorf("%s: policy %q", address, p)
		}
		if w.Header().Get("X-Content-Type-Options") != "nosniff" ||
			w.Header().Get("Referrer-Policy") != "no-referrer" {
			t.Errorf("%s: headers %v", address, w.Header())
		}
		forever := strings.HasPrefix(address, "/assets/")
		if got := w.Header().Get("Cache-Control"); strings.Contains(got, "immutable") != forever {
			t.Errorf("%s: Cache-Control %q", address, got)
		}
	}
}

func TestHandlerNegotiatesCompression(t *testing.T) {
	h, _ := served(t)
	for accept, coding := range map[string]string{
		"":                          "",
		"gzip, deflate, br, zstd":   "br",
		"gzip":                      "gzip",
		"br;q=0, gzip":              "gzip",
		"br;q=0,gzip;q=0":           "",
		"*":                         "br",
		"*;q=0":                     "",
		"BR; q=0.5":                 "br",
		"identity":                  "",
		"br;q=rubbish, gzip;q=0.01": "gzip",
	} {
		w := ask(h, "GET", "/saddle/height.html", "Accept-Encoding", accept)
		if got := w.Header().Get("Content-Encoding"); got != coding {
			t.Errorf("%q: %q, want %q", accept, got, coding)
		}
		if w.Header().Get("Vary") != "Accept-Encoding" {
			t.Errorf("%q: no Vary", accept)
		}
		tag := w.Header().Get("ETag")
		if again := ask(h, "GET", "/saddle/height.html", "Accept-Encoding", accept, "If-None-Match",
			"W/"+tag); again.Code != 304 || again.Body.Len() != 0 {
			t.Errorf("%q: %d with the tag it gave", accept, again.Code)
		}
	}
}

// TestHandlerGivesNothingElse asks for what no reader should get.
// TestCalculatorsOfEveryLanguageMayStandInAFrame: those of another language are in its folder.
func TestCalculatorsOfEveryLanguageMayStandInAFrame(t *testing.T) {
	for p, want := range map[string]bool{"embed/a.html": true, "de/embed/a.html": true, "de/fit-calculator.js": true,
		"de/index.html": false, "saddle/embed/a.html": false, "de/embedded.html": false} {
		if got := areaOf(p).foreign; got != want {
			t.Errorf("%s: %v", p, got)
		}
	}
}

func TestHandlerGivesNothingElse(t *testing.T) {
	h, _ := served(t)
	for _, address := range []string{
		"/.plumbline", "/nowhere.html", "/saddle/nowhere/", "/../publish_test.go", "/saddle/../../a", "//etc/passwd",
		"/saddle\\height.html", "/index.html.br", "/index.html.gz", "/a\x00b", "/assets/", "/assets/page/", "",
		"/saddle//height.html", "/./index.html",
	} {
		if address == "" {
			continue
		}
		w := ask(h, "GET", address)
		if w.Code != 404 {
			t.Errorf("%q: %d", address, w.Code)
		}
		if strings.Contains(w.Body.String(), "page-0") && strings.Contains(w.Body.String(), "<pre>") {
			t.Errorf("%q lists a folder", address)
		}
	}
	if w := ask(h, "GET", "/saddle"); w.Code != 301 || w.Header().Get("Location") != "saddle/" {
		t.Errorf("/saddle: %d %s", w.Code, w.Header().Get("Location"))
	}
	if w := ask(h, "POST", "/"); w.Code != 405 || w.Header().Get("Allow") != "GET, HEAD" {
		t.Errorf("POST: %d", w.Code)
	}
	if w := ask(h, "HEAD", "/"); w.Code != 200 || w.Body.Len() != 0 || w.Header().Get("Content-Length") == "0" {
		t.Errorf("HEAD: %d, %d bytes", w.Code, w.Body.Len())
	}
}

func TestALostAddressFindsItsWayHomeAtAnyDepth(t *testing.T) {
	h, _ := served(t)
	for address, home := range map[string]string{"/x": `href="./index.html"`, "/x/y": `href="../index.html"`,
		"/x/y/z.html": `href="../../index.html"`} {
		if body := ask(h, "GET", address).Body.String(); !strings.Contains(body, home) {
			t.Errorf("%s: no %s", address, home)
		}
	}
}

// TestALostPageIsWholeWhereverTheGuideIs follows every link, script and style of the
// page for a lost address: with the guide at the top of a server and below a path,
// whether or not the guide says where it will be, and as a server would show the file
// that knows nothing of the guide.
func TestALostPageIsWholeWhereverTheGuideIs(t *testing.T) {
	for _, c := range []struct{ address, mount string }{{"", "/"}, {"", "/fit/"},
		{"https://example.org/fit", "/fit/"}, {"https://example.org/", "/"}, {"https://example.org/a/b/", "/x/"}} {
		g := demo(t)
		g.Address = c.address
		dir := filepath.Join(t.TempDir(), "a")
		publish(t, g, dir)
		h := http.StripPrefix(strings.TrimSuffix(c.mount, "/"), Handler(dir))
		for _, lost := range []string{"x", "saddle/hieght.html", "a/b/c/", "saddle/height/x.html"} {
			leadsOn(t, h, c.mount+lost, ask(h, "GET", c.mount+lost).Body.String())
		}
		if c.address != "" && c.mount != "/x/" { // any other server sends the file as it is
			leadsOn(t, h, c.mount+"saddle/hieght.html", ask(h, "GET", c.mount+lostURL).Body.String())
		}
	}
}

var leads = regexp.MustCompile(` (?:href|src|data-find)="([^"#:]+)[^":]*"`)

// leadsOn tells whether everything that a page at an address needs or links to is there.
func leadsOn(t *testing.T, h http.Handler, address, page string) {
	t.Helper()
	base, err := url.Parse(address)
	if err != nil {
		t.Fatal(err)
	}
	found := leads.FindAllStringSubmatch(page, -1)
	if !strings.Contains(page, "data-lost") || len(found) < 12 {
		t.Fatalf("%s: no page for a lost address with %d links:\n%s", address, len(found), page)
	}
	for _, m := range found {
		to, err := base.Parse(m[1])
		if err != nil {
			t.Fatal(err)
		}
		if code := ask(h, "GET", to.Path).Code; code != http.StatusOK {
			t.Errorf("at %s, %s leads to %s: %d", address, m[1], to.Path, code)
		}
	}
}
