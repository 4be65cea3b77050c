package browser

import (
	"context"
	"fmt"
	"io/fs"
	"net/http/httptest"
	"os"
	"os/exec"
	"testing"

	"github.com/chromedp/chromedp"

	"plumbline/site"
)

// The one browser and the one published guide of this test binary.
var (
	chromium  context.Context
	server    *httptest.Server
	published fs.FS // its files
	folder    string

	chromiumPath string // where its program is
)

func TestMain(m *testing.M) { os.Exit(run(m)) }

func run(m *testing.M) int {
	program := ""
	// The same browser without windows takes half of the processors' time.
	for _, name := range []string{"chromium-headless-shell", "chromium", "chromium-browser", "google-chrome",
		"chrome"} {
		if path, err := exec.LookPath(name); err == nil {
			program = path
			break
		}
	}
	if program == "" {
		fmt.Println("*** THE BROWSER TESTS ARE SKIPPED: there is no Chromium in the search path (Debian: apt-get " +
			"install chromium)")
		if os.Getenv("PLUMBLINE_NEED_BROWSER") == "1" {
			return 1
		}
		return 0
	}
	chromiumPath = program
	dir, err := os.MkdirTemp("", "plumbline-browser-")
	if err != nil {
		fmt.Println(err)
		return 1
	}
	defer os.RemoveAll(dir)
	guide, mistakes := site.Load("")
	if guide == nil {
		fmt.Println("the built-in guide has mistakes:", mistakes)
		return 1
	}
	if _, err := site.Publish(context.Background(), guide, dir+"/guide", site.Options{Quick: true}); err != nil {
		fmt.Println(err)
		return 1
	}
	folder = dir + "/guide"
	published = os.DirFS(folder)
	server = httptest.NewServer(site.Handler(dir + "/guide"))
	defer server.Close()
	options := append(chromedp.DefaultExecAllocatorOptions[:],
		chromedp.ExecPath(program), chromedp.NoSandbox, chromedp.DisableGPU,
		chromedp.Flag("disable-quic", true), chromedp.Flag("disable-component-update", true),
		chromedp.Flag("disable-sync", true), chromedp.Flag("disable-background-networking", true),
		chromedp.Flag("site-per-process", true), // as with windows: a frame of another site is a process of its own
		// Each tab has a window, and a window's own buttons, which nobody sees, are pages
		// too: they cost as much time as what is tested.
		chromedp.Flag("disable-features", "Translate,InitialWebUI,WebUIReloadButton,WebUIToolbar"))
	allocator, stop := chromedp.NewExecAllocator(context.Background(), options...)
	defer stop()
	var close context.CancelFunc
	chromium, close = chromedp.NewContext(allocator)
	defer close()
	if err := chromedp.Do(chromium); err != nil {
		fmt.Println("Chromium does not start:", err)
		return 1
	}
	return m.Run()
}
