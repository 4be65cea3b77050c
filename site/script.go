package site

import (
	"bytes"
	"fmt"

	"github.com/tdewolff/minify/v2"
	"github.com/tdewolff/minify/v2/js"
)

// slim takes comments and white space out of a page module and shortens the names
// that no other module uses.
func slim(name string, script []byte) ([]byte, error) {
	var out bytes.Buffer
	m := &js.Minifier{}
	if err := m.Minify(minify.New(), &out, bytes.NewReader(script), nil); err != nil {
		return nil, fmt.Errorf("%s: %w", name, err)
	}
	return out.Bytes(), nil
}
