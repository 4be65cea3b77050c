//go:build unix

package site

import (
	"context"
	"errors"
	"fmt"
	"math/rand/v2"
	"os"
	"os/exec"
	"os/signal"
	"path/filepath"
	"strings"
	"syscall"
	"testing"
	"time"

	"golang.org/x/sys/unix"
)

// The tests in this file run this test program a second time as a publisher that
// they can kill or starve. publisherEnv tells it what to do.
const publisherEnv = "PLUMBLINE_TEST_PUBLISH"

// TestMain is the second program's beginning as well.
func TestMain(m *testing.M) {
	if dir := os.Getenv(publisherEnv); dir != "" {
		os.Exit(publisher(dir))
	}
	os.Exit(m.Run())
}

// publisher publishes the small guide with another name, without end if it is
// to be killed, else once under a limit for the size of a file.
func publisher(dir string) int {
	if n := numberFrom(publisherEnv+"_CHAPTERS", 0); n > 0 {
		return publishMany(dir, n)
	}
	limited := os.Getenv(publisherEnv+"_LIMIT") != ""
	once := limited || os.Getenv(publisherEnv+"_ONCE") != ""
	if limited {
		signal.Ignore(syscall.SIGXFSZ)
		limit := unix.Rlimit{Cur: 4 << 10, Max: 4 << 10}
		if err := unix.Setrlimit(unix.RLIMIT_FSIZE, &limit); err != nil {
			fmt.Println("no limit: ", err)
			return 3
		}
	}
	o := Options{cacheDir: os.Getenv(publisherEnv + "_CACHE"), engine: smallEngine}
	if os.Getenv(publisherEnv+"_RENAME") != "" {
		o.swap = func(_, _ string) error { return errors.ErrUnsupported }
	}
	for n := 0; ; n++ {
		g, bad := loadFS(os.DirFS("testdata/demo"), nil, "", everything(), nil)
		if bad != nil {
			fmt.Println(lines(bad))
			return 3
		}
		g.Tagline = fmt.Sprintf("Publication %d of %d.", n, os.Getpid()) // every page differs
		if _, err := Publish(context.Background(), g, dir, o); err != nil {
			fmt.Println(err)
			return 1
		}
		fmt.Println("published")
		if once {
			return 0
		}
	}
}

// start runs the publisher.
func start(t *testing.T, dir string, env ...string) *exec.Cmd {
	t.Helper()
	me, err := os.Executable()
	if err != nil {
		t.Fatal(err)
	}
	cmd := exec.Command(me)
	cmd.Env = append(os.Environ(), append(env, publisherEnv+"="+dir,
		publisherEnv+"_CACHE="+filepath.Join(os.TempDir(), "plumbline-test-cache"))...)
	return cmd
}

// whole checks that a folder holds one publication, complete and unmixed.
func whole(t *testing.T, dir string) {
	t.Helper()
	sums, ours := readMarker(dir)
	if !ours {
		t.Fatal("the folder has no marker")
	}
	all := everyFile(t, dir)
	if len(all) != len(sums)+1 {
		t.Errorf("%d files, and the marker lists %d", len(all), len(sums))
	}
	tagline := ""
	for p, text := range all {
		if p == markerFile {
			continue
		}
		if f := (written{p, sha(text)}); sums[p] != fmt.Sprintf("%x", f.sum) {
			t.Errorf("%s is not what the marker says", p)
		}
		if filepath.Ext(p) == ".html" {
			_, rest, _ := strings.Cut(text, `<p class="name">Larch Hollow Cycles<span>`)
			line, _, _ := strings.Cut(rest, "<")
			if tagline == "" {
				tagline = line
			}
			if line != tagline || line == "" {
				t.Errorf("%s is of %q, another page of %q", p, line, tagline)
			}
		}
	}
}

// TestAKilledPublicationLeavesAWholeSite kills a publisher at thirty random moments, or at
// as many as PLUMBLINE_TIMES says. With the exchange in one step the folder must hold a whole site at
// once; with two renames, after the next publication's recovery.
func TestAKilledPublicationLeavesAWholeSite(t *testing.T) {
	kills := times(t, 30) / 2
	for _, way := range []string{"", "rename"} {
		dir := filepath.Join(t.TempDir(), "site")
		publish(t, demo(t), dir)
		random := rand.New(rand.NewPCG(1, uint64(len(way))))
		usual := timeToPublish(t, dir, way)
		reached := 0
		for range kills {
			cmd := start(t, dir, publisherEnv+"_RENAME="+way)
			var out strings.Builder
			cmd.Stdout = &out
			if err := cmd.Start(); err != nil {
				t.Fatal(err)
			}
			time.Sleep(time.Duration(float64(usual) * (0.5 + 2*random.Float64())))
			if err := cmd.Process.Kill(); err != nil {
				t.Fatal(err)
			}
			_ = cmd.Wait() // it was killed
			reached += strings.Count(out.String(), "published")
			if way != "" {
				if err := (disk{}).recoverSite(dir); err != nil {
					t.Fatal(err)
				}
			}
			whole(t, dir)
		}
		if reached == 0 {
			t.Error("no publisher got as far as publishing, so the kills proved nothing")
		}
		t.Logf("%d publications between %d kills", reached, kills)
		publish(t, demo(t), dir)
		onlyThisIn(t, filepath.Dir(dir), "site")
	}
}

// timeToPublish is how long a publisher takes from its start to its first
// publication on this machine under its present load.
func timeToPublish(t *testing.T, dir, way string) time.Duration {
	t.Helper()
	cmd := start(t, dir, publisherEnv+"_RENAME="+way)
	out, err := cmd.StdoutPipe()
	if err != nil {
		t.Fatal(err)
	}
	begun := time.Now()
	if err := cmd.Start(); err != nil {
		t.Fatal(err)
	}
	if _, err := out.Read(make([]byte, 1)); err != nil {
		t.Error(err)
	}
	took := time.Since(begun)
	_ = cmd.Process.Kill() // it may have ended by itself
	_ = cmd.Wait()
	if err := (disk{}).recoverSite(dir); err != nil {
		t.Fatal(err)
	}
	return took
}

// TestAFullDiskLeavesTheOldSite stands in for a full disk with a limit on the
// size of a file, under which writing fails half-way as well.
func TestAFullDiskLeavesTheOldSite(t *testing.T) {
	dir := filepath.Join(t.TempDir(), "site")
	publish(t, demo(t), dir)
	before := everyFile(t, dir)
	out, err := start(t, dir, publisherEnv+"_LIMIT=yes").CombinedOutput()
	var exit *exec.ExitError
	if !errors.As(err, &exit) || exit.ExitCode() != 1 || !strings.Contains(string(out), "was left as it was") ||
		!strings.Contains(string(out), "file too large") {
		t.Errorf("%v: %s", err, out)
	}
	same(t, before, everyFile(t, dir))
	onlyThisIn(t, filepath.Dir(dir), "site")
}

// TestAFolderThatMayNotBeWrittenIsNamed needs rights that can be refused.
func TestAFolderThatMayNotBeWrittenIsNamed(t *testing.T) {
	above := t.TempDir()
	dir := filepath.Join(above, "site")
	publish(t, demo(t), dir)
	before := everyFile(t, dir)
	if os.Geteuid() == 0 {
		// The superuser may write anywhere; a folder in a place that is no
		// folder fails for everybody.
		if _, err := Publish(t.Context(), demo(t), filepath.Join(dir, "index.html", "site"),
			testOptions(t)); err == nil || !strings.Contains(err.Error(), "index.html") {
			t.Errorf("%v", err)
		}
	} else {
		if err := os.Chmod(above, 0o555); err != nil {
			t.Fatal(err)
		}
		t.Cleanup(func() { _ = os.Chmod(above, 0o755) })
		if _, err := Publish(t.Context(), demo(t), dir, testOptions(t)); !errors.Is(err, os.ErrPermission) {
			t.Errorf("%v", err)
		}
	}
	same(t, before, everyFile(t, dir))
}
