package site

import (
	"context"
	"crypto/rand"
	"crypto/subtle"
	"errors"
	"net"
	"net/http"
	"strings"
	"syscall"

	"github.com/makiuchi-d/gozxing"
	"github.com/makiuchi-d/gozxing/qrcode"

	"plumbline/site/told"
)

// PreviewOnNetwork is Preview for the other devices of a local network too, such as the
// phone on the bench. The guide stands under a path that nobody can guess, a new one each
// time; the address is told with a warning and as a code for the phone's camera. port is
// a number; "" takes the usual one.
func PreviewOnNetwork(ctx context.Context, overlayDir, port string, o Options) error {
	if port == "" {
		_, port, _ = net.SplitHostPort(previewAddress)
	}
	engine, err := o.theEngine(ctx)
	if err != nil {
		return err
	}
	listener, err := listenAt(ctx, ":"+port)
	if err != nil {
		return err
	}
	p := newPreviewer(overlayDir, engine, o)
	p.top = "/" + strings.ToLower(rand.Text()) + "/" // at least 128 bits
	if err := p.refresh(); err != nil {
		return errors.Join(err, listener.Close())
	}
	_, port, _ = net.SplitHostPort(listener.Addr().String())
	for i, host := range ownHosts() {
		at := "http://" + net.JoinHostPort(host, port) + p.top
		if i == 0 {
			code, err := codeFor(at)
			if err != nil {
				return errors.Join(err, listener.Close())
			}
			o.log("{0}", code)
		}
		o.log("preview at {0}", at)
	}
	o.log("Whoever is on this network and has the address can read the guide until you end this with Ctrl-C. " +
		"Use it on your own network, and hand the address to nobody.")
	return p.run(ctx, listener)
}

// takenOnWindows is what Windows says of a port that is taken (WSAEADDRINUSE); no other system
// has an error of that number.
const takenOnWindows = syscall.Errno(10048)

func portTaken(err error) bool {
	return errors.Is(err, syscall.EADDRINUSE) || errors.Is(err, takenOnWindows)
}

// listenAt opens a port. Where it is taken the remedy is named.
func listenAt(ctx context.Context, addr string) (net.Listener, error) {
	listener, err := (&net.ListenConfig{}).Listen(ctx, "tcp", addr)
	if portTaken(err) {
		host, port, _ := net.SplitHostPort(addr)
		return nil, told.Wrong(
			"port {0} is taken, perhaps by another preview: end that one, or take any free port with --at {1}",
			port,
			net.JoinHostPort(host, "0"),
		)
	}
	if err != nil {
		return nil, told.Wrong("the preview cannot listen at {0}: {1}", addr, err)
	}
	return listener, nil
}

// ownHosts are this machine's addresses on its local networks, the likeliest first.
func ownHosts() (list []string) {
	// No packet is sent: this only asks which address would be used.
	if c, err := net.Dial("udp", "192.0.2.1:9"); err == nil {
		host, _, _ := net.SplitHostPort(c.LocalAddr().String())
		_ = c.Close()
		list = append(list, host)
	}
	all, _ := net.InterfaceAddrs()
	for _, a := range all {
		ip, _, err := net.ParseCIDR(a.String())
		if err != nil || ip.To4() == nil || !ip.IsPrivate() || len(list) > 0 && list[0] == ip.String() {
			continue
		}
		list = append(list, ip.String())
	}
	if len(list) == 0 {
		list = append(list, "127.0.0.1")
	}
	return list
}

// beneath is a request as the guide below a path sees it, nil where it asks for anything
// else.
func beneath(r *http.Request, top string) *http.Request {
	if len(r.URL.Path) < len(top) || subtle.ConstantTimeCompare([]byte(r.URL.Path[:len(top)]), []byte(top)) != 1 {
		return nil
	}
	below := r.Clone(r.Context())
	below.URL.Path, below.URL.RawPath = r.URL.Path[len(top)-1:], ""
	return below
}

// codeFor is an address as a QR code (ISO/IEC 18004) in the letters of a terminal: black
// on white whatever its colours are, two rows of squares in one line.
func codeFor(address string) (string, error) {
	const quiet = 4 // the empty margin that the standard wants
	m, err := qrcode.NewQRCodeWriter().Encode(address, gozxing.BarcodeFormat_QR_CODE, 0, 0,
		map[gozxing.EncodeHintType]any{gozxing.EncodeHintType_MARGIN: quiet})
	if err != nil {
		return "", err
	}
	var b strings.Builder
	for y := 0; y < m.GetHeight(); y += 2 {
		b.WriteString("\x1b[30;47m")
		for x := range m.GetWidth() {
			upper, lower := m.Get(x, y), y+1 < m.GetHeight() && m.Get(x, y+1)
			switch {
			case upper && lower:
				b.WriteRune('█')
			case upper:
				b.WriteRune('▀')
			case lower:
				b.WriteRune('▄')
			default:
				b.WriteByte(' ')
			}
		}
		b.WriteString("\x1b[0m\n")
	}
	return b.String(), nil
}
