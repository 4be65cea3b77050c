package literature

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"plumbline/calculators/words"
)

func TestAuthorsAreJoinedInTheReadersLanguage(t *testing.T) {
	r := &words.Reader{Language: words.Speaking(words.Language{Tag: "de"}, map[words.English]string{
		" and ":          " und ",
		"{0} and others": "{0} und andere",
	})}
	for authors, want := range map[string]string{
		"Hull and Jorge":               "Hull und Jorge",
		"Keir and others":              "Keir und andere",
		"Salai, Oran and Chechik":      "Salai, Oran und Chechik",
		"Schwarzer, Sommer and others": "Schwarzer, Sommer und andere",
		"":                             "",
	} {
		s := &Source{Authors: authors}
		assert.Equal(t, want, s.By(r))
		assert.Equal(t, authors, s.By(nil))
	}
}
