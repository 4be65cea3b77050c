package browser

import (
	"flag"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/chromedp/cdproto/emulation"
	"github.com/chromedp/cdproto/page"
	"github.com/chromedp/chromedp"
)

var (
	picture = flag.String("picture", "", "write the README's picture to this file")
	look    = flag.String("look", "", "write pictures of the pages to this folder, to be looked at")
	pages   = flag.String("pages", "index.html,saddle/height.html", "the pages to look at, with commas")
)

// TestPicture makes the README's picture when asked to (make picture): the bench
// of a chapter with a reader's own numbers in it.
func TestPicture(t *testing.T) {
	if *picture == "" {
		t.Skip("no picture was asked for")
	}
	b := open(t, chapter+"#inseam=812&crank-length=170&pedals=flat").ready()
	b.dress(1280, 1010, "light")
	b.until(`document.querySelector(".bench .whose").textContent === "Your numbers"`)
	eval[bool](b, `(document.querySelector(".bench").scrollIntoView({block: "start"}), scrollBy(0, -70), true)`)
	b.shoot(*picture, false)
}

// TestLook writes pictures of whole pages at three widths, light and dark, when
// asked to: go test ./site/browser -run Look -look FOLDER -pages index.html,…
func TestLook(t *testing.T) {
	if *look == "" {
		t.Skip("no pictures were asked for")
	}
	for path := range strings.SplitSeq(*pages, ",") {
		b := open(t, "/"+path)
		if eval[bool](b, `!!document.querySelector(".desk")`) {
			b.drawn()
		}
		path, _, _ = strings.Cut(path, "#")
		for _, width := range []int64{390, 820, 1360} {
			for _, scheme := range []string{"light", "dark"} {
				b.dress(width, 900, scheme)
				name := strings.NewReplacer("/", "-", ".html", "").Replace(path)
				b.shoot(filepath.Join(*look, fmt.Sprintf("%s-%d-%s.png", name, width, scheme)), true)
			}
		}
	}
}

// dress gives the page a window of that size and a colour scheme.
func (b *tab) dress(width, height int64, scheme string) {
	b.Helper()
	media := []*emulation.MediaFeature{{Name: "prefers-color-scheme", Value: scheme}}
	if _, err := chromedp.Call(b.ctx, emulation.SetEmulatedMedia,
		emulation.SetEmulatedMediaParams{Features: media}); err != nil {
		b.Fatal(err)
	}
	size := emulation.SetDeviceMetricsOverrideParams{Width: width, Height: height, DeviceScaleFactor: 1}
	if _, err := chromedp.Call(b.ctx, emulation.SetDeviceMetricsOverride, size); err != nil {
		b.Fatal(err)
	}
}

// shoot writes what the window shows, or the whole page, to a file.
func (b *tab) shoot(file string, whole bool) {
	b.Helper()
	shot, err := chromedp.Call(b.ctx, page.CaptureScreenshot,
		page.CaptureScreenshotParams{CaptureBeyondViewport: &whole, Clip: b.clip(whole)})
	if err != nil {
		b.Fatal(err)
	}
	if err := os.MkdirAll(filepath.Dir(file), 0o755); err != nil {
		b.Fatal(err)
	}
	if err := os.WriteFile(file, shot.Data, 0o644); err != nil {
		b.Fatal(err)
	}
}

// clip is the whole page, or nil for what the window shows.
func (b *tab) clip(whole bool) *page.Viewport {
	if !whole {
		return nil
	}
	size := eval[[]float64](b, `[document.documentElement.clientWidth, document.documentElement.scrollHeight]`)
	return &page.Viewport{Width: size[0], Height: size[1], Scale: 1}
}
