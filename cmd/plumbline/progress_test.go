package main

import (
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
)

// TestProgressIsToldOfLongWork: a tenth in four seconds leaves 36 more; what is soon done
// says nothing.
func TestProgressIsToldOfLongWork(t *testing.T) {
	at := time.Now()
	told := func(screen bool, every time.Duration) (*strings.Builder, *progress) {
		var b strings.Builder
		return &b, &progress{out: &b, say: streams{}.say, screen: screen, every: every, begun: at,
			now: func() time.Time { return at }}
	}
	file, p := told(false, inTheFile)
	at = at.Add(2 * time.Second)
	p.tell(50, 1000)
	assert.Empty(t, file.String())
	at = at.Add(2 * time.Second)
	p.tell(100, 1000)
	assert.Equal(t, "100 of 1000 files, about 36s left\n", file.String())
	at = at.Add(time.Second)
	p.tell(150, 1000)
	p.tell(1000, 1000)
	assert.Equal(t, 1, strings.Count(file.String(), "\n"), "once in ten seconds")

	screen, p := told(true, onScreen)
	at = at.Add(time.Minute) // an engine is built before the first file
	p.tell(1, 4)
	at = at.Add(4 * time.Second)
	p.tell(2, 4)
	p.tell(4, 4)
	assert.Equal(t, "\r\x1b[K2 of 4 files, about 4s left\r\x1b[K", screen.String())
}
