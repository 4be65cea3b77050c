package site

import (
	"fmt"
	"net/url"
	"path"
	"regexp"
	"slices"
	"strings"
	"unicode"

	"golang.org/x/text/unicode/norm"

	"plumbline/calculators/words"
	"plumbline/site/told"
)

// Files have the names that people give them. What becomes an address of the guide has to
// be written in small letters, digits and hyphens: a chapter's name is refused where it
// is not, and a picture or table is published under a name that is made from its own.

// germanic are letters that are written as two where there is no mark above them.
var germanic = strings.NewReplacer(
	"ä",
	"ae",
	"ö",
	"oe",
	"ü",
	"ue",
	"ß",
	"ss",
	"æ",
	"ae",
	"ø",
	"oe",
	"å",
	"aa",
	"œ",
	"oe",
	"đ",
	"d",
	"ł",
	"l",
	"þ",
	"th",
	"ð",
	"d",
)

// addressed is a name as it can stand in an address.
func addressed(name string) string {
	name = germanic.Replace(strings.ToLower(norm.NFC.String(name)))
	var b strings.Builder
	gap := false
	for _, r := range norm.NFD.String(name) {
		switch {
		case r < unicode.MaxASCII && (unicode.IsLetter(r) || unicode.IsDigit(r)) || r == '_' || r == '.':
			if gap && b.Len() > 0 {
				b.WriteByte('-')
			}
			gap = false
			b.WriteRune(r)
		case unicode.Is(unicode.Mn, r): // the mark above a letter, or below
		default:
			gap = true
		}
	}
	if b.Len() == 0 {
		return fmt.Sprintf("file-%s", edition([]byte(name)))
	}
	return b.String()
}

var plainName = regexp.MustCompile(`^[A-Za-z0-9_.-]+$`)

// misnamedPage tells whether the name of a chapter or of its folder cannot stand in an
// address.
func misnamedPage(p string) (what, remedy words.Text) {
	var parts []string
	good := true
	for part := range strings.SplitSeq(p, "/") {
		good = good && plainName.MatchString(part)
		ext := ""
		if path.Ext(part) == ".md" {
			ext = ".md"
		}
		parts = append(parts, addressed(strings.TrimSuffix(part, ext))+ext)
	}
	if good {
		return words.Text{}, words.Text{}
	}
	return told.Of(
			"the name of a chapter is its address, and “{0}” cannot stand in one",
			p,
		), told.Of(
			"name it {0}",
			strings.Join(
				parts,
				"/",
			),
		)
}

// fileAt finds the picture or table that an address in a chapter means: the name as it is
// typed, or as an address with signs like %20 in it. A letter with a mark may be stored as
// one letter or as two.
func (g *Guide) fileAt(p *guidePage, dest string) (source, bool) {
	names := []string{dest}
	if u, err := url.PathUnescape(dest); err == nil && u != dest {
		names = append(names, u)
	}
	for _, name := range names {
		to := path.Join(path.Dir(p.Path), name)
		if !isFile(to) {
			continue // most links lead to pages, of which a large guide has many
		}
		if s, ok := g.layers.file(to); ok {
			return s, true
		}
		for _, q := range g.layers.paths {
			if isFile(q) && norm.NFC.String(q) == norm.NFC.String(to) {
				s, _ := g.layers.file(q)
				return s, true
			}
		}
	}
	return source{}, false
}

// isFile tells whether a path is that of a picture or a table.
func isFile(p string) bool {
	ext := strings.ToLower(path.Ext(p))
	return slices.Contains(pictures, ext) || slices.Contains(tables, ext)
}
