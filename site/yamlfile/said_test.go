package yamlfile

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// TestUsualMistakesAreToldInOurWords: what people get wrong in YAML, each as the parser finds
// it, with the line.
func TestUsualMistakesAreToldInOurWords(t *testing.T) {
	for text, want := range map[string]string{
		"a:\n\tb: 1\n":          "x.yaml:2:1: this is not valid YAML: there is a tab where only spaces may stand",
		"a: >\n\ttext\n":        "there is a tab where only spaces may stand",
		"a: \"x\nb: 1\n":        "the quote that begins here has no end",
		"name: Larch's: Shop\n": "x.yaml:1:7: this is not valid YAML: there is a colon too many",
		"a: [1, 2\nb: 1\n":      "a bracket above is still open, close it with ] or }",
		"a: ]\n":                "a bracket is closed here that none opened",
		"a: 1\nb: 2\na: 3\n":    "x.yaml:3:1: this is not valid YAML: this key stands here twice, keep one of them",
		"a: @x\n":               "a value cannot begin with this character, put the value in quotes",
		"a: %x\n":               "a value cannot begin with this character",
		"name X\nb: 1\n":        "a line here has no colon",
		"a: \"Bike\" shop\n":    "there is something behind the quotes",
		"a:\n  b: 1\n c: 2\n":   "the line begins further to the right or left",
		"a: \"\\q\"\n":          "the message was “found unknown escape character 'q'”, mend the line",
	} {
		y := Reader{File: "x.yaml"}
		y.Root([]byte(text))
		require.NotEmpty(t, y.Bad, "%q", text)
		assert.Contains(t, y.Bad[0].String(), want, "%q", text)
	}
}
