package templates

import (
	"io/fs"
	"path"
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// A rule that looks with :has() for what an element holds and ends on any element at all,
// as ".board:has(.long) > *" does, makes a browser style the whole page anew for each
// element that a script puts in: 28 ms instead of 0.7 on Measure yourself. So such a rule
// names what it ends on. On paper nothing is put in.
func TestARuleThatLooksInsideNamesWhatItEndsOn(t *testing.T) {
	comment := regexp.MustCompile(`(?s)/\*.*?\*/`)
	selectors := regexp.MustCompile(`(?s)([^{}@;]*:has\([^{}]*)\{`)
	bare := regexp.MustCompile(`[\s>+~](\*|:not\([^()]*\)|:[a-z-]+)+$`)
	looked := 0
	for _, name := range Styles {
		if name == "print.css" {
			continue
		}
		text, err := fs.ReadFile(Files, path.Join("style", name))
		require.NoError(t, err)
		style, _, _ := strings.Cut(comment.ReplaceAllString(string(text), ""), "@media print")
		for _, found := range selectors.FindAllStringSubmatch(style, -1) {
			for line := range strings.SplitSeq(found[1], ",\n") {
				looked++
				if line = strings.TrimSpace(line); strings.Contains(line, ":has(") && bare.MatchString(line) {
					t.Errorf("%s: %q ends on any element", name, line)
				}
			}
		}
	}
	require.Greater(t, looked, 20)
}
