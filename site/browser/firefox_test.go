package browser

import (
	"bufio"
	"encoding/base64"
	"encoding/json"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"golang.org/x/net/websocket"

	"plumbline/calculators/sheet"
)

// fox is one tab of a Firefox, driven over WebDriver BiDi (a W3C draft).
type fox struct {
	testing.TB
	socket *websocket.Conn
	count  int
	tab    string
}

// openFox starts a Firefox of its own, or skips the test where there is none.
func openFox(t *testing.T) *fox {
	t.Helper()
	program, err := exec.LookPath("firefox-esr")
	if err != nil {
		if program, err = exec.LookPath("firefox"); err != nil {
			t.Skip("NO FIREFOX: only Chromium was driven (Debian: apt-get install firefox-esr)")
		}
	}
	cmd := exec.CommandContext(t.Context(), program, "--headless", "--no-remote", "--profile", t.TempDir(),
		"--remote-debugging-port=0", "--remote-allow-origins=http://localhost", "about:blank")
	cmd.Env = append(os.Environ(), "HOME="+t.TempDir())
	said, err := cmd.StderrPipe()
	if err != nil {
		t.Fatal(err)
	}
	if err := cmd.Start(); err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() {
		cmd.Process.Kill()
		cmd.Wait()
	})
	address := make(chan string, 1)
	go func() {
		for lines := bufio.NewScanner(said); lines.Scan(); {
			if _, at, ok := strings.Cut(lines.Text(), "WebDriver BiDi listening on "); ok {
				address <- at
			}
		}
	}()
	f := &fox{TB: t}
	select {
	case at := <-address:
		if f.socket, err = websocket.Dial(at+"/session", "", "http://localhost"); err != nil {
			t.Fatal(err)
		}
		t.Cleanup(func() { f.socket.Close() })
	case <-time.After(time.Minute):
		t.Fatal("Firefox did not say within a minute where it listens")
	}
	f.ask("session.new", `{"capabilities": {}}`)
	var tree struct{ Contexts []struct{ Context string } }
	f.into(&tree, "browsingContext.getTree", `{}`)
	f.tab = tree.Contexts[0].Context
	return f
}

// ask sends one command and returns its result.
func (f *fox) ask(method, params string) json.RawMessage {
	f.Helper()
	f.count++
	if err := websocket.Message.Send(f.socket, fmt.Sprintf(`{"id": %d, "method": %q, "params": %s}`,
		f.count, method, params)); err != nil {
		f.Fatal(err)
	}
	for {
		f.socket.SetReadDeadline(time.Now().Add(time.Minute))
		var text string
		if err := websocket.Message.Receive(f.socket, &text); err != nil {
			f.Fatalf("%s: %v", method, err)
		}
		var reply struct {
			ID      int
			Type    string
			Message string
			Result  json.RawMessage
		}
		if err := json.Unmarshal([]byte(text), &reply); err != nil {
			f.Fatal(err)
		}
		switch {
		case reply.ID != f.count: // an event
		case reply.Type != "success":
			f.Fatalf("%s: %s", method, reply.Message)
		default:
			return reply.Result
		}
	}
}

func (f *fox) into(out any, method, params string) {
	f.Helper()
	if err := json.Unmarshal(f.ask(method, params), out); err != nil {
		f.Fatal(err)
	}
}

func (f *fox) show(address string) {
	f.Helper()
	f.ask(
		"browsingContext.navigate",
		fmt.Sprintf(`{"context": %q, "url": %q, "wait": "complete"}`, f.tab, address),
	)
}

// eval returns the string that an expression of the page comes to.
func (f *fox) eval(js string) string {
	f.Helper()
	code, _ := json.Marshal("String(" + js + ")")
	var out struct {
		Result           struct{ Value string }
		ExceptionDetails struct{ Text string }
	}
	f.into(
		&out,
		"script.evaluate",
		fmt.Sprintf(`{"expression": %s, "target": {"context": %q}, "awaitPromise": true}`, code, f.tab),
	)
	if out.ExceptionDetails.Text != "" {
		f.Fatalf("%s: %s", js, out.ExceptionDetails.Text)
	}
	return out.Result.Value
}

func (f *fox) until(js string) {
	f.Helper()
	for end := time.Now().Add(30 * time.Second); time.Now().Before(end); time.Sleep(50 * time.Millisecond) {
		if f.eval("!!("+js+")") == "true" {
			return
		}
	}
	f.Fatalf("it never came to be that %s", js)
}

// pdf prints the page with Firefox's usual margins, on paper given in cm.
func (f *fox) pdf(width, height float64) []byte {
	f.Helper()
	var out struct{ Data string }
	f.into(
		&out,
		"browsingContext.print",
		fmt.Sprintf(`{"context": %q, "page": {"width": %g, "height": %g}}`, f.tab, width, height),
	)
	file, err := base64.StdEncoding.DecodeString(out.Data)
	if err != nil {
		f.Fatal(err)
	}
	return file
}

func TestFirefoxAnswersPrintsAndGoesOffline(t *testing.T) {
	t.Parallel()
	f := openFox(t)
	answersAsNativeCode(t, f)

	f.show(server.URL + "/") // a change of the fragment alone would not load the page
	f.show(server.URL + setupPage + "#" + fullRecord())
	f.until(fmt.Sprintf(`document.querySelectorAll(".setup td.steps ol").length === %d`, len(sheet.Settings)))
	for _, paper := range []struct {
		name          string
		width, height float64 // cm
	}{{"A4", 21, 29.7}, {"Letter", 21.59, 27.94}} {
		file := f.pdf(paper.width, paper.height)
		if *look != "" {
			if err := os.WriteFile(filepath.Join(*look, "sheet-firefox-"+paper.name+".pdf"), file, 0o644); err != nil {
				t.Fatal(err)
			}
		}
		if n := leaves(file); n != 1 {
			t.Errorf("Firefox prints the sheet on %d pages of %s", n, paper.name)
		}
	}
	goesOffline(t, f)
}
