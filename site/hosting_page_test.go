package site

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// TestThePageOfSettingsSaysWhatTheCommandWrites compares the text of each block with what
// the command writes, which the real servers were tested with.
func TestThePageOfSettingsSaysWhatTheCommandWrites(t *testing.T) {
	g := demo(t)
	g.Address = "https://brook-end.example/fit/"
	all := built(t, g)
	page := parsed(t, all[hostingURL])
	complete(t, hostingURL, page)
	blocks := page.all("pre.code")
	require.Len(t, blocks, len(Hosts()))
	for i, name := range Hosts() {
		want, err := Hosting(name, "/fit/", hostFolder, nil)
		require.NoError(t, err)
		assert.Equal(t, strings.Join(strings.Fields(want), " "), said(blocks[i]), name)
	}
	assert.Contains(t, string(all[elsewhereURL]), `href="hosting.html"`)
	assert.Contains(t, string(all[hostingURL]), "plumbline hosting nginx --path /fit/")
	assert.NotContains(t, string(all["index.html"]), hostingURL, "riders have no use for it")
}
