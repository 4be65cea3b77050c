package site

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

// CSS Syntax Module Level 3: comments count for nothing (section 4.3.2), white space around
// rules and declarations neither, but between the parts of a selector or a value it does.
func TestTheStyleSheetLosesOnlyWhatCountsForNothing(t *testing.T) {
	for given, want := range map[string]string{ // as it is written, as it is published
		"/* one */\n:root {\n --a: 1px;\n /* 2; } */ --b : 2px ;\n}": ":root{--a: 1px;--b : 2px;}",
		".a .b,\n.c > .d :is(e) { margin: 0 auto }":                  ".a .b,.c > .d :is(e){margin: 0 auto}",
		"p::before { content: \"/* no  { comment */ ;\" }":           "p::before{content: \"/* no  { comment */ ;\"}",
		"p { inline-size: calc(1px + 2px)/**/; flex: 1/**/2 }":       "p{inline-size: calc(1px + 2px);flex: 1 2}",
		"@media (width < 60rem) {\n\tp { color: red }\n}":            "@media (width < 60rem){p{color: red}}",
		"p { background: url(a.svg) , url( b.svg ) }":                "p{background: url(a.svg),url( b.svg )}",
	} {
		assert.Equal(t, want, string(slimStyle([]byte(given))))
	}
}
