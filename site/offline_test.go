package site

import (
	"bytes"
	"crypto/sha256"
	"encoding/base64"
	"encoding/json"
	"net/http"
	"net/http/httptest"
	"path"
	"strings"
	"testing"
)

// TestTheServiceWorkerKeepsEveryFileAsItIs reads the list as the browser does: hashes as
// Subresource Integrity (W3C) has them.
func TestTheServiceWorkerKeepsEveryFileAsItIs(t *testing.T) {
	list := built(t, demo(t))
	line, _, _ := bytes.Cut(list[workerURL], []byte(";\n"))
	var guide struct {
		Version string
		Files   map[string]string
	}
	if err := json.Unmarshal(bytes.TrimPrefix(line, []byte("const guide = ")), &guide); err != nil {
		t.Fatal(err)
	}
	if len(guide.Version) != 12 {
		t.Errorf("the version is %q", guide.Version)
	}
	whole := false
	for p, data := range list {
		hash, listed := guide.Files[p]
		section := path.Base(p) == "saddle.wasm"
		whole = whole || listed && path.Base(p) == "whole.wasm"
		if listed == (section || p == workerURL) {
			t.Errorf("%s is listed: %v", p, listed)
		}
		if sum := sha256.Sum256(data); listed && hash != base64.StdEncoding.EncodeToString(sum[:]) {
			t.Errorf("%s is listed with another hash", p)
		}
	}
	if !whole || len(guide.Files) != len(list)-2 {
		t.Errorf("%d of %d files are listed; the whole engine: %v", len(guide.Files), len(list), whole)
	}
}

// TestTheManifestStaysInItsFolder holds what the W3C's Web Application Manifest asks of
// addresses: all are relative to the manifest's own.
func TestTheManifestStaysInItsFolder(t *testing.T) {
	list := built(t, demo(t))
	var m manifest
	if err := json.Unmarshal(list[manifestURL], &m); err != nil {
		t.Fatal(err)
	}
	if m.Name == "" || m.Start != "./" || m.Scope != "./" || m.Display == "" || len(m.Icons) == 0 {
		t.Errorf("the manifest is %+v", m)
	}
	for _, i := range m.Icons {
		if _, ok := list[i.Source]; !ok {
			t.Errorf("the icon %s is not in the guide", i.Source)
		}
	}
	page := string(list["saddle/height.html"])
	for _, want := range []string{` data-worker="../sw.js"`, `<link rel="manifest" href="../manifest.webmanifest">`} {
		if !strings.Contains(page, want) {
			t.Errorf("a page has no %s", want)
		}
	}
}

func TestAPreviewRemovesAServiceWorkerAndRegistersNone(t *testing.T) {
	engine, _ := smallEngine(t.Context(), "")
	p := newPreviewer("", engine, Options{})
	g := demo(t)
	p.load = func() (*Guide, []Mistake) { return g, nil }
	if err := p.refresh(); err != nil {
		t.Fatal(err)
	}
	get := func(address string) string {
		w := httptest.NewRecorder()
		r := httptest.NewRequest(http.MethodGet, address, nil)
		r.Host = "localhost"
		p.ServeHTTP(w, r)
		return w.Body.String()
	}
	if s := get("/sw.js"); !strings.Contains(s, "unregister()") || strings.Contains(s, "const guide") {
		t.Errorf("the preview's service worker is %.200q", s)
	}
	if s := get("/saddle/height.html"); strings.Contains(s, "data-worker") || !strings.Contains(s, "data-engine") {
		t.Errorf("a page of the preview begins with %.300q", s)
	}
}
