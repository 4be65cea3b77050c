package site

import (
	"crypto/sha256"
	"sync"
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

// page parses a page. The tree is always new: the check rewrites it.
func (m *memory) page(s source) *Page {
	p, bad := parsePage(s)
	p.wrong = bad
	return p
}

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
