package request_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"plumbline/calculators"
	"plumbline/calculators/record"
	"plumbline/calculators/request"
)

// A client's reply, asymmetric in every length, with a plan of their own and an answer
// about health.
const replied = "ask.back=yes&ask=inseam+mass&ask.when=3+December&name=Rowan+Ash&bike=Trail+bike&date=2026-11-27" +
	"&inseam=831&mass=72.5&saddle-height=725&saddle-height.was=718&stem-length=45&ask-ache=left+knee"

func TestAdviceOpensTheClientsOwnSetupWithTheSettingsAsNext(t *testing.T) {
	client, _ := record.Decode(replied)
	a := &request.Advice{From: "Larch Hollow", Note: "One step a week.\nWrite to me.",
		Next: []calculators.Pair{{Key: "saddle-height", Typed: "736"}, {Key: "bar-width", Typed: "755"},
			{Key: "stem-length", Typed: "45"}}}
	text := a.Fragment(client)
	assert.Equal(t, request.Whole, request.StateOf(text))
	require.True(t, strings.HasPrefix(text, "ask.from=Larch+Hollow&ask.note=One+step+a+week.%0AWrite+to+me.&name="+
		"Rowan+Ash&bike=Trail+bike&date=2026-11-27&inseam=831&mass=72.5&saddle-height=736&from=saddle-height.fitting"+
		"&saddle-height.was=718&stem-length=45&bar-width=755&from=bar-width.fitting&ask.end="), text)
	for _, private := range []string{"ache", "knee", "ask.when", "ask.back"} {
		assert.NotContains(t, text, private, "what the client told the fitter goes to nobody else by this link")
	}
	got, problems := record.Decode(text)
	assert.Empty(t, problems)
	back := request.AdviceOf(got)
	require.NotNil(t, back)
	assert.Equal(t, &request.Advice{From: "Larch Hollow", Note: a.Note,
		Next: []calculators.Pair{{Key: "saddle-height", Typed: "736"}, {Key: "bar-width", Typed: "755"}}}, back,
		"a setting that stays as it is is none")
	assert.Equal(t, "718", record.Now(got).At("saddle-height").Text, "the bike still has its own")
	assert.Nil(t, record.Now(got).At("bar-width"), "of a setting that nobody sent nothing is claimed")
	assert.Equal(t, replied, client.Fragment()[0:0]+replied, "the reply itself is left alone")
	assert.Equal(t, "725", client.At("saddle-height").Text)
	assert.Nil(t, request.AdviceOf(client))
}

func TestCutAdviceIsKnown(t *testing.T) {
	client, _ := record.Decode(replied)
	text := (&request.Advice{Next: []calculators.Pair{{Key: "saddle-height", Typed: "736"}}}).Fragment(client)
	for n := len("ask.from="); n < len(text); n++ {
		assert.Contains(t, []request.State{request.Cut, request.Changed}, request.StateOf(text[:n]), text[:n])
	}
	whole, _ := record.Decode(text)
	cut, _ := record.Decode(text[:len(text)-30])
	assert.True(t, request.EndsWhole(whole))
	assert.False(t, request.EndsWhole(cut))
	own, _ := record.Decode("inseam=830")
	assert.True(t, request.EndsWhole(own))
}
