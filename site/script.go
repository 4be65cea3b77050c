package site

import (
	"bytes"
	"fmt"
	"strings"

	"github.com/tdewolff/minify/v2"
	"github.com/tdewolff/minify/v2/js"
	"github.com/tdewolff/parse/v2"
	"github.com/tdewolff/parse/v2/css"
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

// slimStyle takes comments out of the style sheet, and the white space that only sets out
// rules and declarations.
func slimStyle(style []byte) []byte {
	var out bytes.Buffer
	lexer := css.NewLexer(parse.NewInputBytes(bytes.Clone(style)))
	space := false // there is white space since what was written last
	var last []byte
	for {
		kind, text := lexer.Next()
		switch kind {
		case css.ErrorToken:
			return out.Bytes()
		case css.WhitespaceToken, css.CommentToken:
			space = true
			continue
		}
		const parting = "{};,"
		if space && !strings.Contains(parting, string(text[:1])) && !strings.Contains(parting, string(last)) {
			out.WriteByte(' ')
		}
		space, last = false, text[len(text)-1:]
		out.Write(text)
	}
}
