package site

import (
	"bytes"
	"crypto/sha256"
	"encoding/base64"
	"encoding/json"
	"fmt"
	"path"
	"sync"

	"plumbline/templates"
	"plumbline/wasm"
)

// The service worker, which keeps the guide for when there is no signal, and the
// manifest, by which it can be put on a phone's first screen (Web Application Manifest,
// W3C). Both stand at the top of the guide, because that is how far they reach.
const (
	workerURL   = "sw.js"
	manifestURL = "manifest.webmanifest"
)

// mostKept is the number of pages up to which all are kept on a reader's device.
const mostKept = 300

// manifest is what the W3C's manifest has of ours.
type manifest struct {
	Name       string         `json:"name"`
	ShortName  string         `json:"short_name"`
	About      string         `json:"description,omitempty"`
	Language   string         `json:"lang"`
	ID         string         `json:"id"`
	Start      string         `json:"start_url"`
	Scope      string         `json:"scope"`
	Display    string         `json:"display"`
	Background string         `json:"background_color"`
	Theme      string         `json:"theme_color"`
	Icons      []manifestIcon `json:"icons"`
}

type manifestIcon struct {
	Source string `json:"src"`
	Sizes  string `json:"sizes"`
	Type   string `json:"type"`
}

// pageColour is the colour of a page in base.css.
const pageColour = "#f6f3ea"

// manifestFile is the manifest of the guide.
func (g *Guide) manifestFile(in paths) (file, error) {
	b, err := json.MarshalIndent(manifest{
		Name: g.Name, ShortName: g.Name, About: g.Tagline, Language: g.Language,
		ID: "./", Start: "./", Scope: "./", Display: "minimal-ui", Background: pageColour, Theme: pageColour,
		Icons: []manifestIcon{{in.assets + "icon.svg", "any", "image/svg+xml"}},
	}, "", "  ")
	return file{path: manifestURL, data: append(b, '\n')}, err
}

// offlineList is what the service worker keeps, as it is gathered while files are made.
type offlineList struct {
	pages bool
	wait  sync.WaitGroup // for all files of the list

	mu     sync.Mutex
	hashes map[string]string // by path, as Subresource Integrity (W3C) has them
}

// keptOffline is an empty list that waits for so many files.
func (g *Guide) keptOffline(files int) *offlineList {
	pages := 0
	for _, each := range g.everyLanguage() {
		pages += len(each.pages)
	}
	k := &offlineList{pages: pages <= mostKept, hashes: map[string]string{}}
	k.wait.Add(files)
	return k
}

// note puts a file on the list. The engines of single sections are not kept: the whole one
// stands in for them. Nor is the picture that only others show.
func (k *offlineList) note(f *file) {
	if isCard(f.path) || path.Ext(f.path) == ".wasm" && path.Base(f.path) != wasm.Whole+".wasm" ||
		path.Ext(f.path) == ".html" && !k.pages {
		return
	}
	h := sha256.Sum256(f.data)
	k.mu.Lock()
	defer k.mu.Unlock()
	k.hashes[f.path] = base64.StdEncoding.EncodeToString(h[:])
}

// worker is the service worker, once all files are on the list.
func (k *offlineList) worker() (file, error) {
	k.wait.Wait()
	list, err := json.Marshal(k.hashes) // in the order of the paths
	if err != nil {
		return file{}, err
	}
	script, err := templates.Files.ReadFile("offline/" + workerURL)
	if err != nil {
		return file{}, err
	}
	if script, err = slim(workerURL, script); err != nil {
		return file{}, err
	}
	h := sha256.Sum256(list)
	var b bytes.Buffer
	fmt.Fprintf(&b, "const guide = {\"version\":\"%x\",\"files\":%s};\n%s", h[:6], list, script)
	return file{path: workerURL, data: b.Bytes()}, nil
}

// withoutWorker takes from a page what would register the service worker.
func withoutWorker(page []byte) []byte {
	before, after, ok := bytes.Cut(page, []byte(` data-worker="`))
	if !ok {
		return page
	}
	_, after, _ = bytes.Cut(after, []byte(`"`))
	return bytes.Join([][]byte{before, after}, nil)
}
