package site

import (
	"context"
	"image"
	"image/color"
	"io"
	"net"
	"net/http"
	"os"
	"regexp"
	"strings"
	"syscall"
	"testing"
	"time"

	"github.com/makiuchi-d/gozxing"
	"github.com/makiuchi-d/gozxing/qrcode"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// scanned reads the code that a terminal shows.
func scanned(t *testing.T, shown string) string {
	t.Helper()
	const large = 6 // pixels a square
	var rows [][]bool
	for line := range strings.Lines(shown) {
		line = strings.TrimSuffix(strings.TrimSuffix(strings.TrimPrefix(line, "\x1b[30;47m"), "\n"), "\x1b[0m")
		var upper, lower []bool
		for _, r := range line {
			upper = append(upper, r == '█' || r == '▀')
			lower = append(lower, r == '█' || r == '▄')
		}
		rows = append(rows, upper, lower)
	}
	img := image.NewGray(image.Rect(0, 0, large*len(rows[0]), large*len(rows)))
	for y := range img.Bounds().Dy() {
		for x := range img.Bounds().Dx() {
			if !rows[y/large][x/large] {
				img.SetGray(x, y, color.Gray{255})
			}
		}
	}
	m, err := gozxing.NewBinaryBitmapFromImage(img)
	require.NoError(t, err)
	read, err := qrcode.NewQRCodeReader().Decode(m, nil)
	require.NoError(t, err)
	return read.GetText()
}

// TestThePhoneOnTheBenchFindsThePreview scans the code, opens the page and finds nothing
// anywhere else.
func TestThePhoneOnTheBenchFindsThePreview(t *testing.T) {
	told := make(chan string, 20)
	ctx, cancel := context.WithCancel(t.Context())
	ended := make(chan error, 1)
	go func() {
		o := Options{engine: smallEngine, Log: func(l string) { told <- l }}
		ended <- PreviewOnNetwork(ctx, t.TempDir(), "0", o)
	}()
	var lines []string
	for len(lines) == 0 || !strings.Contains(lines[len(lines)-1], "hand the address to nobody") {
		select {
		case l := <-told:
			lines = append(lines, l)
		case err := <-ended:
			t.Fatal(err)
		case <-time.After(2 * time.Minute):
			t.Fatal("the preview does not start")
		}
	}
	all := strings.Join(lines, "\n")
	at := regexp.MustCompile(`preview at (http://\S+/[a-z2-7]{26}/)`).FindStringSubmatch(all)
	require.Len(t, at, 2, all)
	for _, l := range lines {
		if strings.Contains(l, "█") {
			assert.Equal(t, at[1], scanned(t, l))
		}
	}
	// Asked for at this machine, under the name of the network.
	host := strings.TrimPrefix(at[1], "http://")
	host, path, _ := strings.Cut(host, "/")
	_, port, err := net.SplitHostPort(host)
	require.NoError(t, err)
	get := func(path, as string) (int, string) {
		r, err := http.NewRequestWithContext(ctx, "GET", "http://127.0.0.1:"+port+path, nil)
		require.NoError(t, err)
		r.Host = as
		a, err := http.DefaultClient.Do(r)
		require.NoError(t, err)
		defer a.Body.Close()
		var b strings.Builder
		_, err = io.Copy(&b, a.Body)
		require.NoError(t, err)
		return a.StatusCode, b.String()
	}
	status, page := get("/"+path, host)
	assert.Equal(t, 200, status)
	script := "/" + path + ".plumbline/reload.js"
	assert.Contains(t, page, `src="`+script+`"`)
	status, _ = get(script, host)
	assert.Equal(t, 200, status)
	for _, p := range []string{"/", "/index.html", "/.plumbline/reload.js", "/" + strings.Repeat("a", 26) + "/",
		"/" + path[:20] + "/"} {
		status, page := get(p, host)
		assert.Equal(t, 404, status, p)
		assert.NotContains(t, page, path, p)
	}
	status, _ = get("/"+path, "shop.example")
	assert.Equal(t, 421, status, "a name could be made to lead here from a page elsewhere")
	cancel()
	require.NoError(t, <-ended)
}

func TestATakenPortNamesTheRemedy(t *testing.T) {
	taken, err := net.Listen("tcp", "127.0.0.1:0")
	require.NoError(t, err)
	defer taken.Close()
	_, port, _ := net.SplitHostPort(taken.Addr().String())
	err = Preview(t.Context(), "", taken.Addr().String(), testOptions(t))
	assert.ErrorContains(
		t,
		err,
		"port "+port+" is taken, perhaps by another preview: end that one, or take any free port "+
			"with --at 127.0.0.1:0",
	)
	// What Windows says: 10048, WSAEADDRINUSE in its winsock2.h.
	assert.True(t, portTaken(&net.OpError{Err: os.NewSyscallError("bind", syscall.Errno(10048))}))
	assert.False(t, portTaken(&net.OpError{Err: os.NewSyscallError("bind", syscall.EACCES)}))
}
