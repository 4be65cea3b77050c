package site

import (
	"strings"

	"github.com/goccy/go-yaml/ast"

	"plumbline/calculators/words"
	"plumbline/site/told"
)

// key checks that an entry's key can stand in a citation and in an address.
func (y *yamlReader) key(e entry, wrong words.English) bool {
	if validKey(e.Key) {
		return true
	}
	y.Mistake(e.At, told.Of(wrong, e.Key),
		told.Of("use small letters, digits and hyphens, beginning with a letter"))
	return false
}

// validKey tells whether s is made of a–z, 0–9 and hyphens, a letter first.
func validKey(s string) bool {
	if s == "" || s[0] < 'a' || s[0] > 'z' {
		return false
	}
	return strings.Trim(s, "abcdefghijklmnopqrstuvwxyz0123456789-") == ""
}

// titled turns a key into a heading: "hose-check" is "Hose check".
func titled(key string) string {
	s := strings.ReplaceAll(key, "-", " ")
	return strings.ToUpper(s[:1]) + s[1:]
}

// scalar tells whether a node is one value.
func scalar(n ast.Node) (string, bool) {
	switch v := n.(type) {
	case *ast.StringNode:
		return v.Value, true
	case *ast.LiteralNode:
		return v.Value.Value, true
	}
	return "", false
}
