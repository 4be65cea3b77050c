package told

import (
	"errors"
	"fmt"
	"io/fs"
	"net"
	"os"
	"path/filepath"
	"syscall"
	"testing"

	"github.com/stretchr/testify/assert"

	"plumbline/calculators/words"
)

func german() *words.Reader {
	return &words.Reader{Language: words.Speaking(words.Language{Tag: "de", Decimal: ","}, map[words.English]string{
		"{0} cannot be read: {1}":         "{0} lässt sich nicht lesen: {1}",
		"no paper":                        "kein Papier",
		"the message was “{0}”":           "die Meldung war „{0}“",
		"there is no such file or folder": "eine solche Datei gibt es nicht",
		" and ":                           " und ",
	})}
}

func TestAnErrorIsSaidInTheReadersLanguage(t *testing.T) {
	cause := Wrong("no paper")
	err := Wrong("{0} cannot be read: {1}", "a.md", cause)
	assert.EqualError(t, err, "a.md cannot be read: no paper")
	assert.ErrorIs(t, err, cause)
	assert.Equal(t, "a.md lässt sich nicht lesen: kein Papier", Say(err, german()))
	assert.Equal(t, "x: kein Papier", Say(fmt.Errorf("x: %w", cause), german()), "what stands around it stays")
	assert.Equal(t, "kein Papier\ndie Meldung war „EOF“", Say(errors.Join(cause, errors.New("EOF")), german()))

	system := Wrong("{0} cannot be read: {1}", "a.md", fs.ErrNotExist)
	assert.ErrorIs(t, system, fs.ErrNotExist)
	assert.Equal(t, "a.md lässt sich nicht lesen: eine solche Datei gibt es nicht", Say(system, german()))
}

// TestTheSystemsErrorsAreSaidInOurWords has the system make them.
func TestTheSystemsErrorsAreSaidInOurWords(t *testing.T) {
	dir := t.TempDir()
	file := filepath.Join(dir, "file")
	assert.NoError(t, os.WriteFile(file, nil, 0o400))
	_, missing := os.Open(filepath.Join(dir, "none"))
	assert.Equal(t, filepath.Join(dir, "none")+": eine solche Datei gibt es nicht", Say(missing, german()))
	_, folder := os.ReadFile(dir)
	assert.Equal(t, dir+": it is a folder and no file", Say(folder, nil))
	assert.Equal(t, dir+": it is there already", Say(os.Mkdir(dir, 0o755), nil))
	assert.Equal(t, dir+": the folder is not empty", Say(os.Remove(dir), nil))
	_, part := os.Open(filepath.Join(file, "x"))
	assert.Equal(t, filepath.Join(file, "x")+": part of the path is a file and no folder", Say(part, nil))
	link := os.Link(file, file)
	assert.Equal(t, file+": it is there already", Say(link, nil))
	first, err := net.Listen("tcp", "127.0.0.1:0")
	assert.NoError(t, err)
	defer first.Close()
	_, taken := net.Listen("tcp", first.Addr().String())
	assert.Equal(t, "the address is in use already", Say(taken, nil))
	assert.Equal(t, "x: the disk is full", Say(&fs.PathError{Op: "write", Path: "x", Err: syscall.ENOSPC}, nil))
}

func TestHolesTakeWhatIsAtHand(t *testing.T) {
	assert.Equal(t, "a und b", Names([]string{"a", "b"}).Say(german()))
	assert.Equal(t, "none", Names(nil).Say(nil))
	assert.Equal(t, "4,5", Tenths(4.46).Say(german()))
	assert.Equal(t, "3 of 4, x", Of("{0} of {1}, {2}", 3, words.Name("4"), "x").Say(nil))
}
