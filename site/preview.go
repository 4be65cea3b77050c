package site

import (
	"bytes"
	"context"
	"errors"
	"fmt"
	"html/template"
	"io/fs"
	"net"
	"net/http"
	"path"
	"strconv"
	"strings"
	"sync"
	"time"

	"plumbline/calculators/words"
	"plumbline/site/told"
	"plumbline/templates"
)

// previewAddress is where a preview listens when nothing else is asked for.
const previewAddress = "127.0.0.1:8040"

// Preview shows the guide that the shop's folder makes, on this machine alone,
// until ctx ends. Pages follow the folder: after each change they are made anew
// in memory and the browser loads them by itself. Mistakes are shown at the top
// of the page and told to o.Log, and the last good pages stay. addr is host and
// port; "" takes the usual one, and the host must be this machine.
func Preview(ctx context.Context, overlayDir, addr string, o Options) error {
	if addr == "" {
		addr = previewAddress
	}
	if err := ownAddress(addr); err != nil {
		return err
	}
	o.Quick = true
	engine, err := o.theEngine(ctx)
	if err != nil {
		return err
	}
	listener, err := listenAt(ctx, addr)
	if err != nil {
		return err
	}
	p := newPreviewer(overlayDir, engine, o)
	if err := p.refresh(); err != nil {
		return errors.Join(err, listener.Close())
	}
	o.log("preview at {0}  (end it with Ctrl-C)", "http://"+listener.Addr().String()+"/")
	return p.run(ctx, listener)
}

// ownAddress tells whether an address can be reached from this machine alone.
func ownAddress(addr string) error {
	host, _, err := net.SplitHostPort(addr)
	if err != nil {
		return told.Wrong("“{0}” is no address; write host and port, like {1}", addr, previewAddress)
	}
	if !ownName(host) {
		return told.Wrong(
			"the preview is for this machine alone and does not listen at “{0}”; use 127.0.0.1, or publish and "+
				"serve the folder",
			host,
		)
	}
	return nil
}

// ownName tells whether a host name means this machine.
func ownName(host string) bool {
	if strings.EqualFold(host, "localhost") {
		return true
	}
	ip := net.ParseIP(host)
	return ip != nil && ip.IsLoopback()
}

// previewer holds the pages of a preview.
type previewer struct {
	dir    string
	engine engineFiles
	o      Options
	load   func() (*Guide, []Mistake)
	top    string // the path under which the guide is shown, "/" or one that nobody guesses

	mu       sync.RWMutex
	files    map[string][]byte
	folders  map[string]bool
	assets   string
	mistakes []Mistake
	version  int
	changed  chan struct{} // closed at the next version
}

func newPreviewer(dir string, engine engineFiles, o Options) *previewer {
	kept := newMemory()
	return &previewer{dir: dir, engine: engine, o: o, top: "/", changed: make(chan struct{}),
		load: func() (*Guide, []Mistake) { return load(dir, kept) }}
}

// refresh reads the folder and makes the pages. With mistakes the last good
// pages stay.
func (p *previewer) refresh() error {
	start := time.Now()
	g, mistakes := p.load()
	var files map[string][]byte
	assets, in, err := assetFiles(p.engine, &Guide{})
	if err != nil {
		return err
	}
	if g != nil {
		if files, err = inMemory(g, p.engine); err != nil {
			// No reader of the pages ever looks at the terminal.
			mistakes = []Mistake{{File: p.dir, What: told.Of("{0}", err)}}
		}
	}
	p.mu.Lock()
	defer p.mu.Unlock()
	if files == nil && p.files == nil {
		files = map[string][]byte{}
		for _, f := range assets {
			files[f.path] = f.data
		}
	}
	if files != nil {
		p.files, p.folders = files, foldersOf(files)
	}
	p.mistakes, p.assets = mistakes, in.assets
	p.version++
	close(p.changed)
	p.changed = make(chan struct{})
	for _, m := range mistakes {
		p.o.log("{0}", m)
	}
	if mistakes == nil {
		p.o.log("{0} pages, {1}", len(g.pages), p.o.since(start))
		for _, news := range g.News(p.dir) {
			p.o.log("{0}", news)
		}
	}
	return nil
}

// inMemory makes all files of a guide.
func inMemory(g *Guide, engine engineFiles) (map[string][]byte, error) {
	list, _, err := g.build(engine)
	if err != nil {
		return nil, err
	}
	files := map[string][]byte{}
	for _, f := range list {
		files[f.path] = f.data
		if f.br != nil {
			files[f.path+".br"] = f.br
		}
	}
	return files, nil
}

func foldersOf(files map[string][]byte) map[string]bool {
	all := map[string]bool{".": true}
	for p := range files {
		for i := range len(p) {
			if p[i] == '/' {
				all[p[:i]] = true
			}
		}
	}
	return all
}

// read implements store.
func (p *previewer) read(name string) ([]byte, bool, error) {
	p.mu.RLock()
	defer p.mu.RUnlock()
	if b, ok := p.files[name]; ok {
		return b, false, nil
	}
	if p.folders[name] {
		return nil, true, nil
	}
	if p.mistakes != nil && p.files["index.html"] == nil && (strings.HasSuffix(name, ".html")) {
		var b bytes.Buffer
		err := previewPages().ExecuteTemplate(&b, "nothing",
			p.view())
		return b.Bytes(), false, err
	}
	return nil, false, fs.ErrNotExist
}

var previewPages = sync.OnceValue(func() *template.Template {
	return template.Must(template.ParseFS(templates.Files, "preview/mistakes.html"))
})

// mistakesView is what a preview says of the guide's mistakes.
type mistakesView struct {
	teller
	Lang, Title, Top, Assets string
	Files                    []fileMistakes
}

// fileMistakes are the mistakes of one file, each with its line and column.
type fileMistakes struct {
	File     string
	Mistakes []struct{ Place, Said string }
}

func (p *previewer) view() mistakesView {
	r := p.o.Reader
	v := mistakesView{
		teller: teller{r},
		Lang:   builtInLanguage,
		Top:    p.top,
		Assets: p.top + p.assets,
		Title: words.Count(len(p.mistakes), "One mistake in the guide’s folder", "{0} mistakes in the guide’s folder").
			Say(r),
	}
	if r != nil && r.Language != nil {
		v.Lang = r.Language.Tag
	}
	for _, m := range p.mistakes {
		i := len(v.Files) - 1
		if i < 0 || v.Files[i].File != m.File {
			v.Files = append(v.Files, fileMistakes{File: m.File})
			i++
		}
		at := ""
		if m.Line > 0 {
			at = fmt.Sprintf("%d:%d", m.Line, m.Column)
		}
		v.Files[i].Mistakes = append(v.Files[i].Mistakes, struct{ Place, Said string }{at, m.Said(r)})
	}
	return v
}

// change adds to a page the reload script and the list of mistakes.
func (p *previewer) change(page []byte) []byte {
	p.mu.RLock()
	defer p.mu.RUnlock()
	page = withoutWorker(page)
	page = bytes.Replace(page, []byte("<html "), []byte(`<html data-version="`+strconv.Itoa(p.version)+`" `), 1)
	page = bytes.Replace(page, []byte("</head>"),
		[]byte("<script type=\"module\" src=\""+p.top+".plumbline/reload.js\"></script>\n</head>"), 1)
	if len(p.mistakes) > 0 {
		var b bytes.Buffer
		if err := previewPages().ExecuteTemplate(&b, "mistakes", p.view()); err == nil {
			page = bytes.Replace(page, []byte(`<header class="top">`), append(b.Bytes(), `<header class="top">`...), 1)
		}
	}
	return page
}

// ServeHTTP implements http.Handler. A page of some other site could make a
// browser ask here under a name of its own; only this machine's names are
// answered.
func (p *previewer) ServeHTTP(w http.ResponseWriter, r *http.Request) {
	host := r.Host
	if h, _, err := net.SplitHostPort(host); err == nil {
		host = h
	}
	if host = strings.Trim(host, "[]"); !ownName(host) && (p.top == "/" || net.ParseIP(host) == nil) {
		http.Error(w, "The preview answers this machine alone.", http.StatusMisdirectedRequest)
		return
	}
	if p.top != "/" {
		if r = beneath(r, p.top); r == nil {
			http.Error(w, "There is nothing here.", http.StatusNotFound)
			return
		}
	}
	switch r.URL.Path {
	case "/.plumbline/events":
		p.events(w, r)
	case "/.plumbline/reload.js", "/" + workerURL:
		b, err := templates.Files.ReadFile("preview/" + path.Base(r.URL.Path))
		if err != nil {
			http.NotFound(w, r)
			return
		}
		w.Header().Set("Content-Type", kinds[".js"])
		w.Header().Set("Cache-Control", "no-cache")
		w.Header().Set("X-Content-Type-Options", "nosniff")
		answer(w, r, http.StatusOK, b)
	default:
		(&server{from: p, change: p.change}).ServeHTTP(w, r)
	}
}

// events tells a page the version of the guide now, and again at each change.
func (p *previewer) events(w http.ResponseWriter, r *http.Request) {
	w.Header().Set("Content-Type", "text/event-stream")
	w.Header().Set("Cache-Control", "no-store")
	control := http.NewResponseController(w)
	beat := time.NewTicker(15 * time.Second)
	defer beat.Stop()
	for {
		p.mu.RLock()
		version, changed := p.version, p.changed
		p.mu.RUnlock()
		if _, err := fmt.Fprintf(w, "retry: 300\ndata: %d\n\n", version); err != nil {
			return
		}
		if control.Flush() != nil {
			return
		}
		select {
		case <-changed:
		case <-beat.C:
		case <-r.Context().Done():
			return
		}
	}
}

// run serves and watches until ctx ends.
func (p *previewer) run(ctx context.Context, listener net.Listener) error {
	watch, err := newWatch(p.dir)
	if err != nil {
		return errors.Join(err, listener.Close())
	}
	defer watch.close()
	ctx, cancel := context.WithCancel(ctx)
	defer cancel()
	web := &http.Server{Handler: p, ReadHeaderTimeout: 10 * time.Second,
		BaseContext: func(net.Listener) context.Context { return ctx }}
	ended := make(chan error, 1)
	go func() { ended <- web.Serve(listener) }()
	for {
		select {
		case <-ctx.Done():
			return errors.Join(ignoring(web.Close(), http.ErrServerClosed), ignoring(<-ended, http.ErrServerClosed))
		case err := <-ended:
			return err
		case <-watch.changed:
			if err := p.refresh(); err != nil {
				p.o.log("{0}", err)
			}
		}
	}
}

func ignoring(err, expected error) error {
	if errors.Is(err, expected) {
		return nil
	}
	return err
}
