package links_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"plumbline/calculators/calctest"
	"plumbline/calculators/links"
	"plumbline/calculators/measure"
	"plumbline/calculators/record"
	"plumbline/calculators/request"
)

func found(text string) (list []string) {
	f := links.Finder{Each: func(_ int, text string) { list = append(list, text) }}
	n := 0
	for line := range strings.Lines(text) {
		n++
		f.Line(n, strings.TrimRight(line, "\r\n"))
	}
	f.End()
	return list
}

// TestALinkIsFoundAsMailLeavesIt wraps and quotes a reply as RFC 3676 lets programs do, and
// puts it percent-encoded (RFC 3986, 2.1) into another address, as filters do.
func TestALinkIsFoundAsMailLeavesIt(t *testing.T) {
	client, _ := record.Decode("name=Rowan+Ash&inseam=831&stature=1742&note=long+and+longer+and+longer+still")
	sent := "https://larch-hollow.example/s.html#" +
		(&request.Request{Ask: []*measure.Quantity{measure.Inseam}}).Back(client, "2026-11-27")
	for _, text := range []string{
		sent, "Hello,\n<" + sent + ">\nbye",
		"> > " + sent[:70] + "\n> > " + sent[70:140] + "\n> > " + sent[140:] + "\n> Rowan",
		"(" + sent + ").",
	} {
		assert.Equal(t, []string{sent}, found(text), text)
	}
	inside := "https://filter.example/?a=1&url=" + strings.NewReplacer("%", "%25", ":", "%3A", "/", "%2F", "#",
		"%23", "&", "%26", "=", "%3D", "+", "%2B").Replace(sent) + "&z=2"
	assert.Equal(t, []string{sent}, found(inside))
	assert.Empty(t, found("Dear fitter,\nsee https://larch-hollow.example/ and 3://x=1\n"))
	assert.Equal(t, []string{"https://a.example/#inseam=830", "https://b.example/#inseam=840"},
		found("https://a.example/#inseam=830 and https://b.example/#inseam=840"))
}

func TestARequestIsNoReply(t *testing.T) {
	assert.True(t, links.IsRequest("https://x.example/#ask=inseam&ask.by=Larch"))
	assert.False(t, links.IsRequest("https://x.example/#ask=inseam&ask.by=Larch&inseam=830"))
	assert.False(t, links.IsRequest("https://x.example/#inseam=830"))
}

func FuzzLinks(f *testing.F) {
	f.Add("> https://a.example/#inseam=8\n> 30&mass=70\nx://=://#a=%zz")
	f.Fuzz(func(t *testing.T, s string) {
		calctest.Bounded(t, func() { found(s) })
	})
}
