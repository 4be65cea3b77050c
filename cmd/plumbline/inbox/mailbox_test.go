package inbox

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"plumbline/calculators/exchange"
	"plumbline/calculators/links"
	"plumbline/cmd/plumbline/inbox/mailtest"
)

// TestALineOfAMailBeginsNoOther has lines that begin as a mail of a mailbox does: escaped
// (RFC 4155, A), and as programs write them that escape nothing.
func TestALineOfAMailBeginsNoOther(t *testing.T) {
	one, two := reply("Ash", 830), reply("Birch", 790)
	text := func(link string) string { return mailtest.Plain("Hello\nFrom Monday on I ride again.\n" + link + "\n") }
	for name, box := range map[string]string{
		"escaped": mailtest.Mailbox(text(one), text(two)),
		"as it is": "From a@b.example Fri Nov 27 10:00:00 2026\n" + text(one) +
			"\nFrom a@b.example Fri Nov 27 10:00:00 2026\n" + text(two),
		"first letters quoted": strings.ReplaceAll(mailtest.Mailbox(text(one), text(two)), ">From", "=46rom"),
	} {
		t.Run(name, func(t *testing.T) {
			list := in(box)
			require.Len(t, list, 2, "%+v", list)
			assert.Equal(t, []string{"x, mail 1", "x, mail 2"}, []string{list[0].From, list[1].From})
			assert.Equal(
				t,
				[]string{links.Plainly(one), links.Plainly(two)},
				[]string{links.Plainly(list[0].Text), links.Plainly(list[1].Text)},
			)
		})
	}
}

// TestAFileOnAMailIsRead has the same numbers as a link and as the file that the page
// saves.
func TestAFileOnAMailIsRead(t *testing.T) {
	const file = `{"format":"plumbline-record","version":1,"name":"Ash","values":[{"key":"inseam","value":830}]}`
	list := in(mailtest.Attached("Maße – Ash.json", "application/json", file))
	require.Len(t, list, 1)
	r, _ := exchange.Open(list[0].Text)
	require.NotNil(t, r)
	assert.Equal(t, "Ash", r.Name)
	list = in(mailtest.Empty())
	require.Len(t, list, 1)
	assert.ErrorContains(t, list[0].Err, "this mail (“Meine Maße – as asked”) brings a photo")
}
