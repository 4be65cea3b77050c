package told

import (
	"errors"
	"fmt"
	"io/fs"
	"testing"

	"github.com/stretchr/testify/assert"

	"plumbline/calculators/words"
)

func german() *words.Reader {
	return &words.Reader{Language: words.Speaking(words.Language{Tag: "de", Decimal: ","}, map[words.English]string{
		"{0} cannot be read: {1}": "{0} lässt sich nicht lesen: {1}",
		"no paper":                "kein Papier",
		" and ":                   " und ",
	})}
}

func TestAnErrorIsSaidInTheReadersLanguage(t *testing.T) {
	cause := Wrong("no paper")
	err := Wrong("{0} cannot be read: {1}", "a.md", cause)
	assert.EqualError(t, err, "a.md cannot be read: no paper")
	assert.ErrorIs(t, err, cause)
	assert.Equal(t, "a.md lässt sich nicht lesen: kein Papier", Say(err, german()))
	assert.Equal(t, "x: kein Papier", Say(fmt.Errorf("x: %w", cause), german()), "what stands around it stays")
	assert.Equal(t, "kein Papier\nEOF", Say(errors.Join(cause, errors.New("EOF")), german()))

	system := Wrong("{0} cannot be read: {1}", "a.md", fs.ErrNotExist)
	assert.ErrorIs(t, system, fs.ErrNotExist)
	assert.Equal(t, "a.md lässt sich nicht lesen: file does not exist", Say(system, german()))
}

func TestHolesTakeWhatIsAtHand(t *testing.T) {
	assert.Equal(t, "a und b", Names([]string{"a", "b"}).Say(german()))
	assert.Equal(t, "none", Names(nil).Say(nil))
	assert.Equal(t, "4,5", Tenths(4.46).Say(german()))
	assert.Equal(t, "3 of 4, x", Of("{0} of {1}, {2}", 3, words.Name("4"), "x").Say(nil))
}
