//go:build unix

package main

import (
	"encoding/csv"
	"fmt"
	"io"
	"os"
	"os/exec"
	"path/filepath"
	"runtime/debug"
	"strconv"
	"strings"
	"syscall"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// hostile are files that strangers send, and what is said of each: it is told and passed
// over, or it is read as far as it is a reply.
func hostile(i int) (name, text, said string) {
	kinds := []struct{ name, text, said string }{
		{"cut.txt", "https://x.example/#name=Cut&inseam=83", ""},
		{"photo.jpg", "\xff\xd8\xff\xe0\x00\x10JFIF\x00", "a photo or drawing"},
		{"paper.pdf", "%PDF-1.7\n%\xe2\xe3\xcf\xd3\n", "a PDF"},
		{"empty.txt", " \n", "the file is empty"},
		{"deep.json", strings.Repeat("[", 200_000) + strings.Repeat("]", 200_000), "values inside values"},
		{"half.json", `{"format":"plumbline-record","values":[{"key":`, "the text ends"},
		{"bytes.bin", "\x00\x01\x02\x00", "a file of bytes"},
		{"words.txt", "Dear fitter,\nI have no numbers yet.\n", "no record was found"},
		{"many.json", `{"values":[{"key":"inseam","value":1,"readings":[` + strings.Repeat("1,", 60_000) + `1]}]}`,
			"so many values"},
		{"codes.txt", "https://x.example/#name=%1b%5d0%3bowned%07%1b%5b2J&inseam=830\n", ""},
		{"formula.txt", "https://x.example/#name=%3dHYPERLINK(%22http%3a%2f%2fx%22)&inseam=830&note=%2bcmd\n", ""},
		{"mail.eml", "From: a@x.example\nSubject: =?x?q?\nContent-Type: multipart/mixed; boundary=y\n\n--y\n\n", "no"},
	}
	k := kinds[i%len(kinds)]
	return fmt.Sprintf("x%04d-%s", i, k.name), k.text, k.said
}

// TestHostileRepliesCostNobodyElsesAnswer puts strangers' files among the replies: a
// tenth as many, one line of many megabytes, a pipe and a link. Everybody else's row is
// what it is without them; nothing waits, nothing is held in memory, no code reaches the
// terminal and no formula a spreadsheet. PLUMBLINE_REPLIES=10000 tries as many as a shop
// may get in years, and a line of a gigabyte.
func TestHostileRepliesCostNobodyElsesAnswer(t *testing.T) {
	if testing.Short() {
		t.Skip("reads hundreds of replies")
	}
	n, err := strconv.Atoi(os.Getenv("PLUMBLINE_REPLIES"))
	megabytes := 1024
	if err != nil {
		n, megabytes = 300, 128
	}
	dir := t.TempDir()
	lines, err := os.ReadFile(batch(t, n))
	require.NoError(t, err)
	const files = 10
	all := strings.SplitAfter(strings.TrimSuffix(string(lines), "\n"), "\n")
	for i := range files {
		part := strings.Join(all[i*n/files:(i+1)*n/files], "")
		require.NoError(t, os.WriteFile(filepath.Join(dir, fmt.Sprintf("reply%02d.txt", i)), []byte(part+"\n"), 0o600))
	}
	alone := ran(t, "intake", "--csv", dir)
	require.Equal(t, statusDone, alone.status)

	for i := range n / 10 {
		name, text, _ := hostile(i)
		require.NoError(t, os.WriteFile(filepath.Join(dir, name), []byte(text), 0o600))
	}
	endless(t, filepath.Join(dir, "x-line.txt"), megabytes, "", "")
	endless(t, filepath.Join(dir, "x-note.json"), megabytes, `[{"note":"`, `"}]`)
	require.NoError(t, syscall.Mkfifo(filepath.Join(dir, "x-pipe"), 0o600))
	require.NoError(t, os.Symlink("/dev/zero", filepath.Join(dir, "x-zero")))

	among := ran(t, "intake", "--csv", dir)
	assert.Equal(t, statusNo, among.status, "something could not be read")
	t.Logf("%d replies and %d strangers: %v, %v of the processors, %d MB", n, n/10+4,
		among.took.Round(time.Millisecond), among.cpu.Round(time.Millisecond), among.memory>>10)
	// What is promised: 10,000 in 10 s on two processors, in 200 MB.
	assert.Less(t, among.memory, int64(200<<10), "KB")
	assert.Less(t, among.cpu, 2*(time.Second+time.Duration(n)*900*time.Microsecond))
	own := map[string]bool{}
	eachRow(t, among.out, func(row []string) {
		own[strings.Join(row, "\x00")] = true
		for _, cell := range row {
			if _, err := strconv.ParseFloat(cell, 64); cell != "" && err != nil {
				assert.NotContains(t, "=+-@\t\r", cell[:1], "a spreadsheet computes %q", cell)
			}
		}
	})
	lost := 0
	eachRow(t, alone.out, func(row []string) {
		if !own[strings.Join(row, "\x00")] {
			lost++
		}
	})
	assert.Zero(t, lost, "rows of others that are lost or changed")

	said := ran(t, "intake", dir)
	sheets := said.wrong
	text, err := os.ReadFile(said.out)
	require.NoError(t, err)
	sheets += string(text)
	assert.NotContains(t, sheets, "\x1b")
	assert.NotContains(t, sheets, "\x07")
	for _, want := range []string{"x-pipe", "a device or a pipe", "x-zero", "a link to another file", "x-line.txt",
		"too long"} {
		assert.True(t, strings.Contains(sheets, want), want)
	}
	for i := range min(n/10, 12) {
		name, _, said := hostile(i)
		if said != "" {
			assert.True(t, strings.Contains(sheets, name) && strings.Contains(sheets, said), "%s: %s", name, said)
		}
	}
}

// endless writes a file with many megabytes of one letter, and never has it in memory.
func endless(t *testing.T, name string, megabytes int, before, after string) {
	t.Helper()
	f, err := os.Create(name)
	require.NoError(t, err)
	defer f.Close()
	_, err = f.WriteString(before)
	for range megabytes {
		if err == nil {
			_, err = f.WriteString(strings.Repeat("x", 1<<20))
		}
	}
	require.NoError(t, err)
	_, err = f.WriteString(after)
	require.NoError(t, err)
}

// eachRow reads a table that is too large to be held.
func eachRow(t *testing.T, file string, do func([]string)) {
	t.Helper()
	f, err := os.Open(file)
	require.NoError(t, err)
	defer f.Close()
	for r := csv.NewReader(f); ; {
		row, err := r.Read()
		if err == io.EOF {
			return
		}
		require.NoError(t, err)
		do(row)
	}
}

// outcome is what the command did, as a program of its own.
type outcome struct {
	out       string // the file with what it wrote
	wrong     string // what it wrote to the error stream
	status    int
	took, cpu time.Duration
	memory    int64 // KB at the most
}

// ran runs the command. What it writes stays in a file: Linux begins to count a program's
// memory with what the one has that starts it (setmax_mm_hiwater_rss at exec), so that a
// table of 150 MB held here would count there.
func ran(t *testing.T, args ...string) outcome {
	t.Helper()
	me, err := os.Executable()
	require.NoError(t, err)
	out, err := os.Create(filepath.Join(t.TempDir(), "out"))
	require.NoError(t, err)
	defer out.Close()
	var said strings.Builder
	cmd := exec.Command(me)
	cmd.Args = append([]string{"plumbline"}, args...)
	cmd.Stdout, cmd.Stderr = out, &said
	// What this test had at most and has no more is forgotten (proc(5), clear_refs).
	// Elsewhere there is no such file.
	debug.FreeOSMemory()
	_ = os.WriteFile("/proc/self/clear_refs", []byte("5"), 0)
	began := time.Now()
	_ = cmd.Run() // its status tells
	state := cmd.ProcessState
	return outcome{out.Name(), said.String(), state.ExitCode(), time.Since(began),
		state.UserTime() + state.SystemTime(), state.SysUsage().(*syscall.Rusage).Maxrss}
}
