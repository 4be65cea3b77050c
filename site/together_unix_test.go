//go:build unix

package site

import (
	"bytes"
	"context"
	"errors"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"strings"
	"syscall"
	"testing"
	"time"

	"plumbline/site/told"
)

// times is how often a test of chance is repeated: few by default, many where a number is
// given, PLUMBLINE_TIMES=200.
func times(t *testing.T, usual int) int {
	t.Helper()
	if testing.Short() {
		t.Skip("starts many programs")
	}
	return numberFrom("PLUMBLINE_TIMES", usual)
}

// TestPublishersDoNotMix starts two and three publishers into one folder, 0 to 0.12 s
// after one another. Each waits for the others: all say that they published, one after
// another, and the folder holds the last one's site alone.
func TestPublishersDoNotMix(t *testing.T) {
	for n := range times(t, 12) {
		dir := filepath.Join(t.TempDir(), "site")
		if n%3 > 0 { // now and then into a folder that does not exist yet
			publish(t, demo(t), dir)
		}
		var all []*exec.Cmd
		var said []*bytes.Buffer
		for range 2 + n%2 {
			cmd, out := start(t, dir, publisherEnv+"_ONCE=yes"), &bytes.Buffer{}
			cmd.Stdout, cmd.Stderr = out, out
			if err := cmd.Start(); err != nil {
				t.Fatal(err)
			}
			all, said = append(all, cmd), append(said, out)
			time.Sleep(time.Duration(n%7) * 20 * time.Millisecond)
		}
		for i, cmd := range all {
			if err := cmd.Wait(); err != nil || !strings.Contains(said[i].String(), "published") {
				t.Errorf("publisher %d: %v: %s", i, err, said[i])
			}
		}
		whole(t, dir)
		onlyThisIn(t, filepath.Dir(dir), "site")
	}
}

// TestTwoPublishersWithoutEndDoNotMix lets two programs publish to one folder again and
// again, and kills both.
func TestTwoPublishersWithoutEndDoNotMix(t *testing.T) {
	dir := filepath.Join(t.TempDir(), "site")
	publish(t, demo(t), dir)
	a, b := start(t, dir), start(t, dir)
	for _, cmd := range []*exec.Cmd{a, b} {
		if err := cmd.Start(); err != nil {
			t.Fatal(err)
		}
	}
	time.Sleep(time.Second)
	for _, cmd := range []*exec.Cmd{a, b} {
		_ = cmd.Process.Kill() // it may have ended by itself
		_ = cmd.Wait()
	}
	whole(t, dir)
	publish(t, demo(t), dir)
	onlyThisIn(t, filepath.Dir(dir), "site")
}

// TestWhoWaitsSaysSoAndGivesUp holds the folder as another publication does.
func TestWhoWaitsSaysSoAndGivesUp(t *testing.T) {
	dir := filepath.Join(t.TempDir(), "site")
	publish(t, demo(t), dir)
	before := everyFile(t, dir)
	other := testOptions(t)
	let, err := other.hold(t.Context(), dir)
	if err != nil {
		t.Fatal(err)
	}
	var said []string
	o := testOptions(t)
	o.Log = func(line string) { said = append(said, line) }
	o.patience = 100 * time.Millisecond
	_, err = Publish(t.Context(), demo(t), dir, o)
	if err == nil || !strings.Contains(err.Error(), "another publication into "+dir+" is still under way") {
		t.Errorf("it gave up with %v", err)
	}
	if len(said) != 1 || !strings.Contains(said[0], "waiting: another publication into "+dir) {
		t.Errorf("it said %q", said)
	}
	ctx, cancel := context.WithTimeout(t.Context(), 50*time.Millisecond)
	defer cancel()
	o.patience = 0
	if _, err := Publish(ctx, demo(t), dir, o); !errors.Is(err, context.DeadlineExceeded) {
		t.Errorf("ended by hand: %v", err)
	}
	same(t, before, everyFile(t, dir))
	time.AfterFunc(100*time.Millisecond, let)
	publish(t, demo(t), dir)
	onlyThisIn(t, filepath.Dir(dir), "site")
}

// TestEveryStepMayFail lets each step with a file or a folder fail once, the disk being
// full. Where the publication says no, the old site is as it was and nothing is left
// beside it; where it says yes, the new one is whole.
func TestEveryStepMayFail(t *testing.T) {
	for _, way := range []string{"exchange", "two renames"} {
		dir := filepath.Join(t.TempDir(), "site")
		publish(t, demo(t), dir)
		var steps []string
		tries := 0
		try := func(n int) error {
			tries++
			count := 0
			o := testOptions(t)
			o.Log = nil
			o.disk.fault = func(step, name string) error {
				if count++; n < 0 {
					steps = append(steps, step+" "+filepath.Base(name))
				}
				if count-1 == n {
					return syscall.ENOSPC
				}
				return nil
			}
			if way != "exchange" {
				o.swap = func(_, _ string) error { return errors.ErrUnsupported }
			}
			g := demo(t)
			g.Tagline = fmt.Sprintf("Publication %d.", tries) // every page differs
			_, err := Publish(context.Background(), g, dir, o)
			return err
		}
		if err := try(-1); err != nil {
			t.Fatal(err)
		}
		fell := 0
		for n := range steps {
			// Files are written alike: of the many in the middle, every 20th is enough. The two
			// ways differ at the end alone.
			if n < len(steps)-20 && (n > 25 && n%20 > 0 || way != "exchange") {
				continue
			}
			before := everyFile(t, dir)
			err := try(n)
			if err != nil {
				fell++
				same(t, before, everyFile(t, dir))
				if !errors.Is(err, syscall.ENOSPC) || !strings.Contains(told.Say(err, nil), "the disk is full") {
					t.Errorf("%s: step %d, %s: %v", way, n, steps[n], err)
				}
			}
			whole(t, dir)
			if t.Failed() {
				t.Fatalf("%s: step %d, %s: %v", way, n, steps[n], err)
			}
		}
		if fell < 8 { // the last steps tidy up, and how many of them are tried depends on their order
			t.Errorf("%s: only %d of %d steps made the publication fail", way, fell, len(steps))
		}
		if !slices.ContainsFunc(steps, func(s string) bool { return strings.HasPrefix(s, "write ") }) {
			t.Errorf("%s: no file was written", way)
		}
		publish(t, demo(t), dir)
		onlyThisIn(t, filepath.Dir(dir), "site")
		t.Logf("%s: %d steps, %d of those tried make it fail", way, len(steps), fell)
	}
}

// TestBothRenamesMayFail: the old site cannot be put back at once, which is said, and the
// next publication puts it back.
func TestBothRenamesMayFail(t *testing.T) {
	dir := filepath.Join(t.TempDir(), "site")
	publish(t, demo(t), dir)
	before := everyFile(t, dir)
	o := testOptions(t)
	o.swap = func(_, _ string) error { return errors.ErrUnsupported }
	o.disk.fault = func(step, name string) error {
		if step == "rename" && name == dir {
			return syscall.EIO
		}
		return nil
	}
	g := demo(t)
	g.Tagline = "Another."
	_, err := Publish(t.Context(), g, dir, o)
	if err == nil || !strings.Contains(err.Error(), "the next publication puts it back") ||
		strings.Contains(err.Error(), "left as it was") {
		t.Errorf("%v", err)
	}
	if err := (disk{}).recoverSite(dir); err != nil {
		t.Fatal(err)
	}
	same(t, before, everyFile(t, dir))
}

// TestAFolderAboveThatMayNotBeWrittenIsExplained refuses the first file in it, as the
// system does for everybody but the superuser.
func TestAFolderAboveThatMayNotBeWrittenIsExplained(t *testing.T) {
	above := t.TempDir()
	for _, err := range []error{os.ErrPermission, syscall.EROFS} {
		o := testOptions(t)
		o.disk.fault = func(step, _ string) error {
			if step == "open" {
				return &os.PathError{Op: step, Path: above, Err: err}
			}
			return nil
		}
		_, said := Publish(t.Context(), demo(t), filepath.Join(above, "site"), o)
		if said == nil || !strings.Contains(said.Error(), above+" may not be written; name a folder inside one") {
			t.Errorf("%v", said)
		}
	}
}

// TestAMountPointIsNamed: it cannot be replaced, which is said before anything is made.
func TestAMountPointIsNamed(t *testing.T) {
	const mounted = "/dev/shm"
	a, err := os.Stat(mounted)
	if err != nil {
		t.Skip(err)
	}
	if b, err := os.Stat("/dev"); err != nil || !otherDevice(a, b) {
		t.Skip(mounted + " is no mount point here")
	}
	_, err = Publish(t.Context(), demo(t), mounted, testOptions(t))
	if err == nil || !strings.Contains(err.Error(), mounted+" is a mount point, which cannot be replaced as a whole; "+
		"name a folder in it, such as "+mounted+"/guide") {
		t.Errorf("%v", err)
	}
}
