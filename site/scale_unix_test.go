//go:build unix

package site

import (
	"context"
	"fmt"
	"os"
	"path/filepath"
	"runtime/debug"
	"strconv"
	"strings"
	"syscall"
	"testing"
	"time"

	"github.com/stretchr/testify/require"
)

// publishMany publishes an invented guide of many chapters, as a program of its own whose
// time and memory can be measured.
func publishMany(dir string, chapters int) int {
	debug.SetMemoryLimit(Memory)
	g, bad := loadFS(madeUp(chapters), nil, "", everything(), nil)
	if bad != nil {
		fmt.Println(lines(bad[:1]))
		return 3
	}
	steps := 0
	o := Options{cacheDir: os.Getenv(publisherEnv + "_CACHE"), engine: smallEngine,
		Progress: func(done, all int) { steps = all - done }}
	r, err := Publish(context.Background(), g, dir, o)
	if err != nil || steps != 0 {
		fmt.Println(err, steps, "files are left")
		return 1
	}
	fmt.Println(r.Pages, "pages")
	return 0
}

// TestLargeGuidesTakeTimeInProportion publishes a guide of 400 chapters and one of 1,000,
// or of as many as PLUMBLINE_CHAPTERS says, each in a program of its own. Per chapter the
// larger one may take a tenth more of the processors' time, and some for what machines are
// like; and no more memory than Memory and what the program itself takes.
func TestLargeGuidesTakeTimeInProportion(t *testing.T) {
	if testing.Short() {
		t.Skip("takes some ten seconds")
	}
	cost := func(chapters int) (cpu time.Duration, memory int64) {
		dir := filepath.Join(t.TempDir(), "site")
		cmd := start(t, dir, publisherEnv+"_CHAPTERS="+strconv.Itoa(chapters))
		// Linux counts a program's memory from the one that starts it: what the tests before
		// this one had at most, and have no more, is forgotten (proc(5), clear_refs).
		debug.FreeOSMemory()
		_ = os.WriteFile("/proc/self/clear_refs", []byte("5"), 0)
		begun := time.Now()
		out, err := cmd.CombinedOutput()
		want := fmt.Sprintf("%d pages", chapters+chapters/20+1)
		if err != nil || !strings.Contains(string(out), want) {
			t.Fatalf("%v: %s, want %s", err, out, want)
		}
		used := cmd.ProcessState.SysUsage().(*syscall.Rusage)
		cpu = cmd.ProcessState.UserTime() + cmd.ProcessState.SystemTime()
		memory = used.Maxrss // KB on Linux
		t.Logf("%d chapters: %v of the processors, %v in all, %d MB", chapters, cpu, time.Since(begun), memory>>10)
		return cpu, memory
	}
	const small = 400 // more than mostBest, so that both take the compression of large guides
	large := numberFrom("PLUMBLINE_CHAPTERS", 1000)
	one, _ := cost(small)
	many, memory := cost(large)
	if ratio, most := float64(many)/float64(one), 1.3*float64(large)/small; ratio > most {
		t.Errorf("%d chapters take %.1f times the time of %d; at most %.1f", large, ratio, small, most)
	}
	if most := int64(Memory>>10) + 35<<10; memory > most {
		t.Errorf("%d chapters take %d MB; at most %d", large, memory>>10, most>>10)
	}
}

// TestOneChangedChapterIsPublishedInATwentiethOfTheTime changes a chapter of a hundred and
// compares the processors' time to that of the first publication, engines left out.
func TestOneChangedChapterIsPublishedInATwentiethOfTheTime(t *testing.T) {
	if testing.Short() {
		t.Skip("takes some ten seconds")
	}
	files, dir := madeUp(100), filepath.Join(t.TempDir(), "site")
	o := Options{cacheDir: t.TempDir(), engine: smallEngine}
	used := func() time.Duration {
		var u syscall.Rusage
		require.NoError(t, syscall.Getrusage(syscall.RUSAGE_SELF, &u))
		return time.Duration(u.Utime.Nano() + u.Stime.Nano())
	}
	publish := func() time.Duration {
		begun := used()
		g, bad := loadFS(files, nil, "", everything(), nil)
		require.Empty(t, bad)
		_, err := Publish(t.Context(), g, dir, o)
		require.NoError(t, err)
		return used() - begun
	}
	all := publish()
	files["part2/chapter47.md"].Data = append(files["part2/chapter47.md"].Data, "\nOne sentence more.\n"...)
	one := publish()
	t.Logf("a hundred chapters: %v, one changed: %v, %.1f %%", all, one, 100*one.Seconds()/all.Seconds())
	page, err := os.ReadFile(filepath.Join(dir, "part2", "chapter47.html"))
	require.NoError(t, err)
	require.Contains(t, string(page), "One sentence more.")
	if one > all/20 {
		t.Errorf("one changed chapter takes %v, and all hundred take %v", one, all)
	}
}

// TestTheNavigationOfALargeGuideIsBounded counts the links of a chapter's page: neither
// many parts nor many chapters make it grow.
func TestTheNavigationOfALargeGuideIsBounded(t *testing.T) {
	for _, n := range []int{400, 2500} {
		g, bad := loadFS(madeUp(n), nil, "", everything(), nil)
		if bad != nil {
			t.Fatal(lines(bad[:1]))
		}
		b, err := g.page(len(g.pages)/2, paths{"a/", "e/"})
		if err != nil {
			t.Fatal(err)
		}
		page := string(b)
		links := strings.Count(page, "<a ")
		if links > 3*wholeRail {
			t.Errorf("%d chapters: the page has %d links", n, links)
		}
		here := g.parts[g.pages[len(g.pages)/2].part]
		for _, c := range here.Chapters {
			if !strings.Contains(page, ">"+c.Nav+"<") {
				t.Errorf("%d chapters: %s of the page's own part is not listed", n, c.Nav)
			}
		}
	}
	for _, c := range []struct{ n, at, from, to int }{{100, 7, 0, 100}, {101, 0, 0, 100}, {101, 100, 1, 101},
		{1000, 500, 450, 550}, {1000, -1, 0, 100}, {0, -1, 0, 0}} {
		list := around(c.n, c.at, 100, false)
		if len(list) != c.to-c.from || len(list) > 0 && (list[0] != c.from || list[len(list)-1] != c.to-1) {
			t.Errorf("around %d of %d: %v", c.at, c.n, list)
		}
	}
	if len(around(1000, 3, 100, true)) != 1000 {
		t.Error("the page that lists all does not")
	}
}
