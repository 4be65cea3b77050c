package browser

import (
	"bufio"
	"bytes"
	"encoding/json"
	"fmt"
	"io"
	"net"
	"net/http"
	"os"
	"os/exec"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/require"
)

// kit is one tab of a WebKitGTK, driven over WebDriver (a W3C recommendation). It has no
// headless mode, so it draws on a screen that nobody sees.
type kit struct {
	testing.TB
	session string // its address
}

// openKit starts a WebKit of its own, or skips the test where there is none.
func openKit(t *testing.T) *kit {
	t.Helper()
	driver, err := exec.LookPath("WebKitWebDriver")
	if err != nil {
		t.Skip("NO WEBKIT: it was not driven " +
			"(Debian: apt-get install webkit2gtk-driver xvfb dbus bubblewrap xdg-dbus-proxy)")
	}
	screen := start(t, nil, "Xvfb", "-displayfd", "1", "-screen", "0", "1400x1000x24", "-nolisten", "tcp")
	display, err := bufio.NewReader(screen).ReadString('\n')
	require.NoError(t, err, "the number of the screen")
	free, err := net.Listen("tcp", "127.0.0.1:0")
	require.NoError(t, err)
	port := free.Addr().(*net.TCPAddr).Port
	require.NoError(t, free.Close())
	start(t, []string{"DISPLAY=:" + strings.TrimSpace(display), "HOME=" + t.TempDir()}, "dbus-run-session", "--",
		driver, "--host=127.0.0.1", fmt.Sprintf("--port=%d", port))
	k := &kit{TB: t, session: fmt.Sprintf("http://127.0.0.1:%d/session", port)}
	var made struct{ SessionID string }
	for end := time.Now().Add(time.Minute); ; time.Sleep(100 * time.Millisecond) {
		answer, err := k.ask("", map[string]any{"capabilities": map[string]any{}})
		if err == nil {
			require.NoError(t, json.Unmarshal(answer, &made))
			break
		}
		require.True(t, time.Now().Before(end), "WebKit does not answer: %v", err)
	}
	k.session += "/" + made.SessionID
	t.Cleanup(func() {
		if bye, err := http.NewRequest(http.MethodDelete, k.session, nil); err == nil {
			if answer, err := http.DefaultClient.Do(bye); err == nil {
				answer.Body.Close()
			}
		}
	})
	return k
}

// start runs a program until the test ends, and returns what it prints.
func start(t *testing.T, env []string, name string, args ...string) io.Reader {
	t.Helper()
	program := exec.CommandContext(t.Context(), name, args...)
	program.Env = append(os.Environ(), env...)
	// It may leave children behind that hold its output open.
	program.WaitDelay = time.Second
	out, err := program.StdoutPipe()
	require.NoError(t, err)
	require.NoError(t, program.Start())
	t.Cleanup(func() {
		_ = program.Process.Signal(os.Interrupt)
		time.AfterFunc(2*time.Second, func() { _ = program.Process.Kill() })
		_ = program.Wait()
	})
	return out
}

// ask sends one command and returns its value.
func (k *kit) ask(command string, params any) (json.RawMessage, error) {
	body, err := json.Marshal(params)
	if err != nil {
		return nil, err
	}
	answer, err := http.Post(k.session+command, "application/json", bytes.NewReader(body))
	if err != nil {
		return nil, err
	}
	defer answer.Body.Close()
	var out struct{ Value json.RawMessage }
	if err := json.NewDecoder(answer.Body).Decode(&out); err != nil {
		return nil, err
	}
	if answer.StatusCode != http.StatusOK {
		return nil, fmt.Errorf("%s: %s", command, out.Value)
	}
	return out.Value, nil
}

func (k *kit) show(address string) {
	k.Helper()
	_, err := k.ask("/url", map[string]string{"url": address})
	require.NoError(k, err)
}

func (k *kit) eval(js string) string {
	k.Helper()
	answer, err := k.ask("/execute/sync", map[string]any{"script": "return String(" + js + ")", "args": []any{}})
	require.NoError(k, err, js)
	var text string
	require.NoError(k, json.Unmarshal(answer, &text))
	return text
}

func (k *kit) until(js string) {
	k.Helper()
	for end := time.Now().Add(30 * time.Second); time.Now().Before(end); time.Sleep(50 * time.Millisecond) {
		if k.eval("!!("+js+")") == "true" {
			return
		}
	}
	k.Fatalf("it never came to be that %s", js)
}

// WebKitGTK's driver cannot print.
func TestWebKitAnswersAndGoesOffline(t *testing.T) {
	t.Parallel()
	k := openKit(t)
	answersAsNativeCode(t, k)
	goesOffline(t, k)
}
