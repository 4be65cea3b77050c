package main

import (
	"strings"

	"github.com/chai2010/gettext-go/po"

	"plumbline/calculators/words"
)

// head begins the template, as gettext wants it.
const head = `# The texts of Plumbline in English. Written by make texts; edit a language's .po instead.
#
# “{0}” to “{9}” are filled with numbers and names, and may stand in any order.
msgid ""
msgstr ""
"Project-Id-Version: Plumbline\n"
"MIME-Version: 1.0\n"
"Content-Type: text/plain; charset=UTF-8\n"
"Content-Transfer-Encoding: 8bit\n"

`

// write returns the template. The comment of each text names the packages that say it,
// and no line of the source, because that would change with every line above it.
func write(list []text) []byte {
	var b strings.Builder
	b.WriteString(head)
	for _, t := range list {
		m := po.Message{MsgId: t.english, MsgIdPlural: t.more}
		if context, english, has := strings.Cut(t.english, words.Context); has {
			m.MsgContext, m.MsgId = context, english
		}
		if t.more != "" {
			m.MsgStrPlural = make([]string, 2)
		}
		m.ExtractedComment = strings.Join(t.by, ", ")
		b.WriteString(m.String())
		b.WriteByte('\n')
	}
	return []byte(b.String())
}
