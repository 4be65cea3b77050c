package site

import (
	"bytes"
	"crypto/sha256"
	"encoding/hex"
	"io/fs"
	"net/http"
	"os"
	"path"
	"slices"
	"strconv"
	"strings"
)

// Handler serves a published folder the way a web server should: with the
// policy as a header, the right types, compressed copies for those who take
// them, and the hashed folders kept by the browser for good. It looks at the
// folder anew for every request, so that a new publication is seen at once.
func Handler(dir string) http.Handler { return &server{from: folder(dir)} }

// store is where a server finds files: a folder, or a preview's memory.
type store interface {
	// read returns a file; isFolder tells that the name is a folder instead.
	read(p string) (data []byte, isFolder bool, err error)
}

// folder is a store on disk.
type folder string

func (f folder) read(p string) ([]byte, bool, error) {
	on := os.DirFS(string(f))
	info, err := fs.Stat(on, p)
	if err != nil {
		return nil, false, err
	}
	if info.IsDir() {
		return nil, true, nil
	}
	if !info.Mode().IsRegular() {
		return nil, false, fs.ErrNotExist
	}
	b, err := fs.ReadFile(on, p)
	return b, false, err
}

// server serves a store. change may rewrite a page on its way out.
type server struct {
	from   store
	change func(page []byte) []byte
}

// kinds are the media types of what a site has.
var kinds = map[string]string{
	".html":        "text/html; charset=utf-8",
	".css":         "text/css; charset=utf-8",
	".js":          "text/javascript; charset=utf-8",
	".json":        "application/json",
	".webmanifest": "application/manifest+json",
	".csv":         "text/csv; charset=utf-8",
	".txt":         "text/plain; charset=utf-8",
	".xml":         "application/xml",
	".svg":         "image/svg+xml",
	".wasm":        "application/wasm",
	".png":         "image/png",
	".jpg":         "image/jpeg",
	".jpeg":        "image/jpeg",
	".webp":        "image/webp",
}

// ServeHTTP implements http.Handler.
func (s *server) ServeHTTP(w http.ResponseWriter, r *http.Request) {
	for _, h := range areaOf(strings.TrimPrefix(r.URL.Path, "/")).sent() {
		w.Header().Set(h[0], h[1])
	}
	if r.Method != http.MethodGet && r.Method != http.MethodHead {
		w.Header().Set("Allow", "GET, HEAD")
		s.plain(w, http.StatusMethodNotAllowed, "Only reading is possible here.")
		return
	}
	p, ok := wantedPath(r.URL.Path)
	if !ok {
		s.lost(w, r)
		return
	}
	data, isFolder, err := s.from.read(p)
	if isFolder {
		// A folder's address ends in /, or the page's relative links break.
		w.Header().Set("Location", path.Base(p)+"/")
		s.plain(w, http.StatusMovedPermanently, "This address ends in a slash.")
		return
	}
	if err != nil {
		s.lost(w, r)
		return
	}
	s.send(w, r, p, data)
}

// wantedPath is the file that an address names. Compressed copies and names that
// begin with a dot are not served under their own names.
func wantedPath(address string) (string, bool) {
	p := strings.TrimPrefix(address, "/")
	if p == "" || strings.HasSuffix(p, "/") {
		p += "index.html"
	}
	if !fs.ValidPath(p) || strings.ContainsAny(p, "\\\x00") {
		return "", false
	}
	for part := range strings.SplitSeq(p, "/") {
		if strings.HasPrefix(part, ".") {
			return "", false
		}
	}
	return p, path.Ext(p) != ".br" && path.Ext(p) != ".gz"
}

// send answers with a file, or with a compressed copy that the browser accepts.
func (s *server) send(w http.ResponseWriter, r *http.Request, p string, data []byte) {
	h := w.Header()
	kind := kinds[path.Ext(p)]
	if kind == "" {
		kind = "application/octet-stream"
	}
	h.Set("Content-Type", kind)
	h.Set("Cache-Control", areaOf(p).keep)
	changed := false
	if s.change != nil && path.Ext(p) == ".html" {
		data, changed = s.change(data), true
	}
	if compressible(p) {
		h.Set("Vary", "Accept-Encoding")
		for _, c := range [][2]string{{"br", ".br"}, {"gzip", ".gz"}} {
			if changed || !accepts(r.Header.Values("Accept-Encoding"), c[0]) {
				continue
			}
			if packed, _, err := s.from.read(p + c[1]); err == nil {
				data = packed
				h.Set("Content-Encoding", c[0])
				break
			}
		}
	}
	sum := sha256.Sum256(data)
	tag := `"` + hex.EncodeToString(sum[:12]) + `"`
	h.Set("ETag", tag)
	if matches(r.Header.Values("If-None-Match"), tag) {
		h.Del("Content-Type")
		h.Del("Content-Encoding")
		w.WriteHeader(http.StatusNotModified)
		return
	}
	answer(w, r, http.StatusOK, data)
}

func answer(w http.ResponseWriter, r *http.Request, status int, data []byte) {
	w.Header().Set("Content-Length", strconv.Itoa(len(data)))
	w.WriteHeader(status)
	if r.Method != http.MethodHead {
		// Writing fails only when the reader has closed the connection.
		_, _ = w.Write(data)
	}
}

// lost answers with the guide's page for a lost address. Its links begin at the top of
// the guide, as data-root has it, and here they are written for the depth of what was
// asked for: so they hold wherever the guide is mounted.
func (s *server) lost(w http.ResponseWriter, r *http.Request) {
	data, _, err := s.from.read(lostURL)
	if err != nil {
		s.plain(w, http.StatusNotFound, "There is no such page.")
		return
	}
	if _, after, ok := bytes.Cut(data, []byte(` data-root="`)); ok {
		root, _, _ := bytes.Cut(after, []byte(`"`))
		data = bytes.ReplaceAll(
			data,
			slices.Concat([]byte(`="`), root),
			[]byte(`="`+rootFrom(strings.TrimPrefix(r.URL.Path, "/"))),
		)
	}
	if s.change != nil {
		data = s.change(data)
	}
	w.Header().Set("Content-Type", kinds[".html"])
	w.Header().Set("Cache-Control", "no-cache")
	answer(w, r, http.StatusNotFound, data)
}

func (s *server) plain(w http.ResponseWriter, status int, text string) {
	w.Header().Set("Content-Type", "text/plain; charset=utf-8")
	w.WriteHeader(status)
	_, _ = w.Write([]byte(text + "\n"))
}

// accepts tells whether a coding is accepted: named, or meant by *, and not with
// a weight of zero.
func accepts(values []string, coding string) bool {
	star := false
	for _, value := range values {
		for item := range strings.SplitSeq(value, ",") {
			name, parameters, _ := strings.Cut(item, ";")
			name = strings.ToLower(strings.TrimSpace(name))
			if name != coding && name != "*" {
				continue
			}
			weight := 1.0
			if q, ok := strings.CutPrefix(strings.ToLower(strings.ReplaceAll(parameters, " ", "")), "q="); ok {
				x, err := strconv.ParseFloat(q, 64)
				if err != nil {
					x = 0
				}
				weight = x
			}
			if name == coding {
				return weight > 0
			}
			star = weight > 0
		}
	}
	return star
}

// matches tells whether one of the tags that a browser holds is the current one.
func matches(values []string, tag string) bool {
	for _, value := range values {
		for item := range strings.SplitSeq(value, ",") {
			item = strings.TrimSpace(item)
			if item == "*" || strings.TrimPrefix(item, "W/") == tag {
				return true
			}
		}
	}
	return false
}
