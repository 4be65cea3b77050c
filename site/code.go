package site

import (
	"bytes"
	"sync"

	"github.com/alecthomas/chroma/v2"
	"github.com/alecthomas/chroma/v2/formatters/html"
	"github.com/alecthomas/chroma/v2/lexers"
	"github.com/alecthomas/chroma/v2/styles"
)

// Colouring costs several times a whole chapter's Markdown, so each snippet is
// coloured once and remembered by its content.
var coloured sync.Map // language + "\x00" + code to []byte

// knownLanguage tells whether code of that language can be coloured.
func knownLanguage(lang string) bool { return lang == "" || lang == "text" || lexers.Get(lang) != nil }

// inColour writes code as HTML with classes; the style sheet has the colours.
func inColour(code, lang string) []byte {
	key := lang + "\x00" + code
	if done, ok := coloured.Load(key); ok {
		return done.([]byte)
	}
	out := paint(code, lang)
	coloured.Store(key, out)
	return out
}

func paint(code, lang string) []byte {
	lexer := lexers.Get(lang)
	if lang == "" || lang == "text" || lexer == nil {
		return escaped(code)
	}
	tokens, err := chroma.Coalesce(lexer).Tokenise(nil, code)
	if err != nil {
		return escaped(code)
	}
	var b bytes.Buffer
	f := html.New(html.WithClasses(true), html.PreventSurroundingPre(true))
	if err := f.Format(&b, styles.Fallback, tokens); err != nil {
		return escaped(code)
	}
	return b.Bytes()
}
