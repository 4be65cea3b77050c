package site

import (
	"bytes"
	"crypto/sha256"
	"encoding/hex"
	"fmt"
	"io/fs"
	"path"
	"runtime"
	"slices"
	"strings"
	"sync"
	"sync/atomic"

	"plumbline/site/told"
	"plumbline/templates"
)

// file is one file of the published guide.
type file struct {
	path   string // with /, below the guide's folder
	data   []byte
	br, gz []byte // the same, compressed, where that was done already
}

// engineFiles is what the engines' folder needs from package wasm.
type engineFiles struct {
	engines []file
	exec    []byte
}

// part is a file of the guide that is made when it is wanted, so that of a large guide
// only a few are in memory at a time.
type part struct {
	path string
	make func() (file, error)
}

// files are all files of the guide, in the order of their paths.
func (g *Guide) files(engine engineFiles) ([]part, paths, error) {
	assets, in, err := assetFiles(engine, g)
	if err != nil {
		return nil, in, err
	}
	ready := append(assets, schemaFile(), licencesFile())
	for _, name := range g.hostFiles {
		ready = append(ready, g.hostFile(name))
	}
	if m := g.sitemap(); m != nil {
		ready = append(ready, file{path: sitemapURL, data: m})
	}
	var list []part
	for _, f := range ready {
		list = append(list, part{f.path, func() (file, error) { return f, nil }})
	}
	for _, each := range g.everyLanguage() {
		own, err := each.inItsFolder(in)
		if err != nil {
			return nil, in, err
		}
		list = append(list, own...)
	}
	slices.SortFunc(list, func(a, b part) int { return strings.Compare(a.path, b.path) })
	there := make(map[string]bool, len(list))
	for _, p := range list {
		if there[p.path] {
			return nil, in, told.Wrong("two pages of the guide want the address {0}", p.path)
		}
		there[p.path] = true
	}
	kept := g.keptOffline(len(list))
	for i, p := range list {
		list[i].make = func() (file, error) {
			defer kept.wait.Done()
			f, err := p.make()
			if err == nil {
				kept.note(&f)
				err = check(&f, there, g.mount())
			}
			return f, err
		}
	}
	// It comes last because it waits for the hashes of all others, which are made before it.
	return append(list, part{workerURL, kept.worker}), in, nil
}

// inItsFolder are the files that a guide has in each language of its own: pages, lists and
// pictures. in are the folders that all languages share, seen from the top.
func (g *Guide) inItsFolder(in paths) (list []part, err error) {
	up := rootFrom(g.within)
	if up != "./" {
		in = paths{up + in.assets, up + in.engine}
	}
	made, err := g.made(in)
	if err != nil {
		return nil, err
	}
	manifest, err := g.manifestFile(in)
	if err != nil {
		return nil, err
	}
	ready := append(made, manifest)
	for p, as := range g.shown {
		s, _ := g.layers.file(p)
		data := s.text
		if as.picture != nil {
			data = as.data
		}
		ready = append(ready, file{path: as.url, data: data})
	}
	for _, f := range ready {
		list = append(list, part{f.path, func() (file, error) { return f, nil }})
	}
	for i, p := range g.pages {
		list = append(list, part{p.URL, func() (file, error) {
			b, err := g.page(i, in)
			return file{path: p.URL, data: b}, err
		}})
	}
	list = append(list, g.embedded(in)...)
	if g.Address != "" {
		list = append(list, part{cardURL, g.card})
	}
	for i := range list {
		in, make := g.within+list[i].path, list[i].make
		list[i] = part{in, func() (file, error) {
			f, err := make()
			f.path = in
			return f, err
		}}
	}
	return list, nil
}

// build makes every file of the guide in memory, in the order of their paths.
// Compressed copies are left to whoever writes them.
func (g *Guide) build(engine engineFiles) ([]file, paths, error) {
	list, in, err := g.files(engine)
	if err != nil {
		return nil, in, err
	}
	files := make([]file, len(list))
	err = inParallel(len(list), func(i int) (err error) {
		files[i], err = list[i].make()
		return err
	})
	return files, in, err
}

// inParallel runs n jobs on all processors. Where some fail it leaves the rest undone and
// returns the error of the first.
func inParallel(n int, job func(i int) error) error {
	var wg sync.WaitGroup
	errs := make([]error, n)
	var next atomic.Int64
	var failed atomic.Bool
	for range min(n, runtime.GOMAXPROCS(0)) {
		wg.Go(func() {
			for i := int(next.Add(1)) - 1; i < n && !failed.Load(); i = int(next.Add(1)) - 1 {
				if errs[i] = job(i); errs[i] != nil {
					failed.Store(true)
				}
			}
		})
	}
	wg.Wait()
	for _, err := range errs {
		if err != nil {
			return err
		}
	}
	return nil
}

// assetFiles are the files of the two hashed folders, with the brand and the language of g.
func assetFiles(engine engineFiles, g *Guide) (files []file, in paths, err error) {
	var page, core []file
	var style bytes.Buffer
	for _, name := range templates.Styles {
		b, err := templates.Files.ReadFile("style/" + name)
		if err != nil {
			return nil, in, err
		}
		style.Write(b)
		style.WriteByte('\n')
	}
	page = append(page, file{path: "style.css", data: slices.Concat(slimStyle(style.Bytes()), g.brand.css())})
	icon, err := g.brand.icon()
	if err != nil {
		return nil, in, err
	}
	page = append(page, file{path: "icon.svg", data: icon})
	if m := g.brand.drawn; m != nil {
		page = append(page, file{path: m.name(), data: m.data})
	}
	if page, err = modules(page, "page"); err != nil {
		return nil, in, err
	}
	texts, err := g.textModules()
	if err != nil {
		return nil, in, err
	}
	page = append(page, texts...)
	if core, err = modules(core, "engine"); err != nil {
		return nil, in, err
	}
	core = slices.Concat(core, engine.engines, g.textFiles(), []file{{path: "wasm_exec.js", data: engine.exec}})
	in = paths{"assets/page-" + sum(page) + "/", "assets/engine-" + sum(core) + "/"}
	for _, f := range page {
		f.path = in.assets + f.path
		files = append(files, f)
	}
	for _, f := range core {
		f.path = in.engine + f.path
		files = append(files, f)
	}
	return files, in, nil
}

// modules adds the scripts of a template folder, except the tests beside them.
func modules(files []file, folder string) ([]file, error) {
	list, err := fs.ReadDir(templates.Files, folder)
	if err != nil {
		return nil, err
	}
	for _, e := range list {
		if e.IsDir() || path.Ext(e.Name()) != ".js" || strings.HasSuffix(e.Name(), ".test.js") {
			continue
		}
		b, err := templates.Files.ReadFile(folder + "/" + e.Name())
		if err != nil {
			return nil, err
		}
		if b, err = slim(e.Name(), b); err != nil {
			return nil, err
		}
		files = append(files, file{path: e.Name(), data: b})
	}
	return files, nil
}

// sum is a hash of files, by which their folder is named.
func sum(files []file) string {
	files = slices.Clone(files)
	slices.SortFunc(files, func(a, b file) int { return strings.Compare(a.path, b.path) })
	h := sha256.New()
	for _, f := range files {
		fmt.Fprintf(h, "%s %d\n", f.path, len(f.data))
		h.Write(f.data)
	}
	return hex.EncodeToString(h.Sum(nil))[:12]
}

// check is the last check before a file is written: every relative address in a page
// must lead to a file of the guide. mount is what links of the page for lost addresses
// begin with.
func check(f *file, there map[string]bool, mount string) error {
	if path.Ext(f.path) == ".html" {
		for _, attribute := range []string{` href="`, ` src="`} {
			rest := f.data
			for {
				_, after, ok := bytes.Cut(rest, []byte(attribute))
				if !ok {
					break
				}
				end := bytes.IndexByte(after, '"')
				if end < 0 {
					break
				}
				dest := string(after[:end])
				rest = after[end:]
				dest, _, _ = strings.Cut(dest, "#")
				if dest == "" || strings.Contains(dest, ":") {
					continue
				}
				if f.path == lostURL {
					dest = strings.TrimPrefix(dest, mount)
				}
				if to := path.Join(path.Dir(f.path), dest); !there[to] {
					return told.Wrong("{0} leads to {1}, which is not in the guide", f.path, to)
				}
			}
		}
	}
	return nil
}
