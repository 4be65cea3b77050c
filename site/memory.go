package site

import (
	"crypto/sha256"
	"fmt"
	"path"
	"slices"
	"sync"

	"plumbline/site/catalogue"
)

// memory keeps what was made from content that has not changed, so that a
// preview does only the work of the page that was saved. A nil memory keeps
// nothing.
type memory struct {
	mu    sync.Mutex
	pages map[string]kept
}

// kept is a page with what it was made from.
type kept struct {
	sum  [sha256.Size]byte
	html []byte
}

func newMemory() *memory { return &memory{pages: map[string]kept{}} }

// rendered returns what was made of a page before, if nothing that it shows has
// changed since.
func (m *memory) rendered(path string, sum [sha256.Size]byte) []byte {
	if m == nil {
		return nil
	}
	m.mu.Lock()
	defer m.mu.Unlock()
	if k, ok := m.pages[path]; ok && k.sum == sum {
		return k.html
	}
	return nil
}

func (m *memory) keep(path string, sum [sha256.Size]byte, html []byte) {
	if m == nil {
		return
	}
	m.mu.Lock()
	defer m.mu.Unlock()
	m.pages[path] = kept{sum, html}
}

// told are the files beside its chapters that a page's text is made with.
func (g *Guide) told() []string {
	list := []string{sourcesFile, cautionsFile, glossaryFile}
	for _, name := range catalogue.Names(g.Language) {
		list = append(list, path.Join(catalogue.Folder, name+catalogue.Ending))
	}
	return list
}

// sum is a hash of everything that a page's rendered text depends on.
func (g *Guide) sum(p *guidePage) (sum [sha256.Size]byte) {
	h := sha256.New()
	fmt.Fprintf(h, "%s\n%s\n%d\n", g.Language, g.Units, len(p.text))
	h.Write(p.text)
	for _, step := range g.path { // a step says what comes next
		fmt.Fprintf(h, "%q %q\n", step.Path, step.Title)
	}
	// Where a step opens on a list, what comes next stands under that.
	fmt.Fprintf(h, "%t\n", len(g.neededLater(p)) > 0)
	if slices.ContainsFunc(p.blocks, func(b *block) bool { return nameless(b.kind) }) {
		// The page links to the whole guide and holds the guide's request.
		fmt.Fprintf(h, "%q %q\n", g.Request, g.Requests)
		for _, to := range g.pages {
			fmt.Fprintf(h, "%q %q %t\n", to.Path, to.Nav, to.has(sheetBlock))
		}
	}
	for _, layer := range []map[string]source{g.layers.base, g.layers.baseSaid, g.layers.local, g.layers.localSaid} {
		for _, name := range g.told() {
			fmt.Fprintf(h, "%d\n", len(layer[name].text))
			h.Write(layer[name].text)
		}
	}
	return [sha256.Size]byte(h.Sum(nil))
}
