package desk

import (
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
)

// TestManyRepliesInOneFile: programs write many records as an array (RFC 8259, 5), or one a
// line; the page reads both as the command does, and a cut list costs only its end.
func TestManyRepliesInOneFile(t *testing.T) {
	one := func(name string, inseam int) string {
		return fmt.Sprintf(`{"format":"plumbline-record","version":1,"name":%q,"values":`+
			`[{"key":"inseam","value":%d}]}`, name, inseam)
	}
	ash, birch := one("Ash [and] \"Co\", \\", 831), one("Birch", 842)
	for text, want := range map[string][]string{
		"[" + ash + ",\n " + birch + "]": {"x.json, record 1", "x.json, record 2"},
		"[" + ash + "]":                  {"x.json, record 1"},
		ash + "\n\n" + birch + "\n":      {"x.json:1", "x.json:3"},
		ash:                              {"x.json"},
		"[" + ash + ",":                  {"x.json, record 1", "x.json, record 2"},
		"[" + ash + ", 5, " + birch: {"x.json, record 1", "x.json, record 2", "x.json, record 3",
			"x.json, record 4"},
		"[]": {"x.json"},
	} {
		list, more := opened("x.json\x00"+text, nil)
		assert.False(t, more)
		var from []string
		read := 0
		for _, x := range list {
			from = append(from, x.From)
			if x.Record != nil {
				read++
			} else {
				assert.False(t, x.why.None(), text)
			}
		}
		assert.Equal(t, want, from, text)
		assert.Equal(t, strings.Count(text, `"inseam"`), read, text)
	}
	got := mail(Ask{Text: "Subject\x00\x00[" + ash + "," + birch + "]"})
	assert.Equal(t, ash+"\x00"+birch, got.Text, "a file that hangs on a mail too")
}
