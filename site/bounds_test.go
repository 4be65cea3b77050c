package site

import (
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"testing/fstest"
	"time"
)

// TestHostileChaptersAreReadInProportion writes chapters that want to be read for ever.
// Four times the text may take little more than four times as long.
func TestHostileChaptersAreReadInProportion(t *testing.T) {
	for name, text := range map[string]func(n int) string{
		"brackets":     func(n int) string { return strings.Repeat("[", 20*n) },
		"citations":    func(n int) string { return strings.Repeat("[@", 20*n) },
		"emphasis":     func(n int) string { return strings.Repeat("*a **b ", 10*n) },
		"code":         func(n int) string { return strings.Repeat("`a ``b ", 10*n) },
		"quotes":       func(n int) string { return strings.Repeat("> ", n) + "a" },
		"inline lists": func(n int) string { return strings.Repeat("- ", n) + "a" },
		"headings": func(n int) string {
			var b strings.Builder
			for i := range n {
				fmt.Fprintf(&b, "## Heading %d\n\n", i)
			}
			return b.String()
		},
		"tables": func(n int) string { return "| a | b |\n| - | - |\n" + strings.Repeat("| 1 | 2 |\n", n) },
	} {
		took := func(n int) time.Duration {
			best := time.Hour
			for range 3 {
				begun := time.Now()
				g, _ := loadFS(os.DirFS("testdata/demo"), fstest.MapFS{"saddle/tilt.md": page(text(n) + "\n")}, "shop",
					everything(), nil)
				if g != nil {
					if _, _, err := g.build(engineFiles{}); err != nil {
						t.Fatal(err)
					}
				}
				best = min(best, time.Since(begun))
			}
			return best
		}
		if one, four := took(500), took(2000); four > 10*one+300*time.Millisecond {
			t.Errorf("%s: %v, four times as many %v", name, one, four)
		}
	}
}

// TestListsInListsEndSomewhere: 2,000 levels took 20 s to read and are told with their
// line, which is counted from the top of the file.
func TestListsInListsEndSomewhere(t *testing.T) {
	nested := func(n int, entry string) string {
		var b strings.Builder
		for i := range n {
			b.WriteString(strings.Repeat("  ", i) + entry + " a\n")
		}
		return b.String()
	}
	for _, entry := range []string{"-", "*", "+"} {
		text := page(nested(2000, entry))
		begun := time.Now()
		_, bad := loadFS(os.DirFS("testdata/demo"), fstest.MapFS{"saddle/tilt.md": text}, "shop", everything(), nil)
		if took := time.Since(begun); took > 5*time.Second {
			t.Errorf("%s: told after %v", entry, took)
		}
		wantMistake(t, bad, "indented by more than 64 columns")
		head, _, _ := strings.Cut(string(text.Data), entry+" a\n")
		for _, m := range bad {
			if want := strings.Count(head, "\n") + 34; strings.Contains(m.What.Say(nil), "indented") && m.Line != want {
				t.Errorf("%s: told at line %d, which is %d", entry, m.Line, want)
			}
		}
	}
	for _, text := range []string{nested(30, "-"), "```text\n" + strings.Repeat(" ", 90) + "- a\n```\n",
		strings.Repeat(" ", 90) + "words\n"} {
		if _, bad := loadFS(os.DirFS("testdata/demo"), fstest.MapFS{"saddle/tilt.md": page(text)}, "shop", everything(),
			nil); bad != nil {
			t.Errorf("%q: %s", text[:20], lines(bad))
		}
	}
}

// TestALinkedFolderIsTold: nothing in it is read, wherever it leads.
func TestALinkedFolderIsTold(t *testing.T) {
	shop, elsewhere := t.TempDir(), t.TempDir()
	for _, dir := range []string{filepath.Join(shop, "saddle"), filepath.Join(shop, "own")} {
		if err := os.Mkdir(dir, 0o755); err != nil {
			t.Fatal(err)
		}
	}
	for name, to := range map[string]string{"feet": elsewhere, "frame": "own", "gone": "nowhere"} {
		if err := os.Symlink(to, filepath.Join(shop, name)); err != nil {
			t.Skip(err)
		}
	}
	_, bad := Load(shop)
	for _, name := range []string{"feet", "frame", "gone"} {
		wantMistake(t, bad, filepath.Join(shop, name)+": this is a link to another folder, which is not followed")
	}
}
