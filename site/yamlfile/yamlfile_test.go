package yamlfile_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"plumbline/site/told"
	"plumbline/site/yamlfile"
)

// said are the mistakes of a reader, one a line.
func said(y *yamlfile.Reader) (list []string) {
	for _, m := range y.Bad {
		list = append(list, m.String())
	}
	return list
}

// TestEveryMistakeIsToldWithItsPlace has several in one file: none hides another (YAML 1.2,
// 3.2.1.1 for keys that stand twice).
func TestEveryMistakeIsToldWithItsPlace(t *testing.T) {
	y := &yamlfile.Reader{File: "a.yaml", Above: 10}
	list := y.Root([]byte("name: a: b\nlist: one\nempty:\nnmae: x\nlist: [two]\nmany: [1, x, ]\n"))
	require.Len(t, list, 4, "name cannot be read, and the second list is left out")
	assert.Empty(t, y.List(list[0]))
	assert.Empty(t, y.Raw(list[1]))
	assert.False(t, y.Known(list[2], "name", "list", "many"))
	assert.Equal(t, []yamlfile.Item{{Text: "1", At: y.List(list[3])[0].At, File: "a.yaml"}}, y.List(list[3])[:1])
	assert.True(t, y.Broken)
	assert.Equal(t, []string{"name", "list"}, y.Lost)
	require.Len(t, y.Bad, 5)
	for i, want := range []string{
		"a.yaml:11:7: this is not valid YAML: ", "a.yaml:15:1: this is not valid YAML: this key stands here twice",
		"a.yaml:12:7: “list” must be a list, write [one], or one value a line after a dash",
		"a.yaml:13:1: the key “empty” has no value, write one or take the key out",
		"a.yaml:14:1: the key “nmae” is not known here, did you mean “name”?",
	} {
		assert.Contains(t, said(y)[i], want)
	}
	y = &yamlfile.Reader{File: "b.yaml"}
	assert.Nil(t, y.Root([]byte("- a\n")))
	assert.Equal(t, []string{"b.yaml:1:1: this file must be lines of “key: value”"}, said(y))
	assert.Equal(t, "b.yaml: odd", yamlfile.Mistake{File: "b.yaml", What: told.Of("odd")}.String())
}
