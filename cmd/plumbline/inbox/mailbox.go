package inbox

import (
	"bufio"
	"io"

	"github.com/emersion/go-mbox"

	"plumbline/calculators/words"
	"plumbline/site/told"
)

// readMailbox reads a file of many mails, as mail programs export a folder.
func readMailbox(name string, r io.Reader, reader *words.Reader, each func(Found)) {
	box := mailbox{Reader: mbox.NewReader(r)}
	one, err := box.NextMessage()
	for n := 1; err == nil; n++ {
		box.now, box.next = one, nil
		readMail(told.Of("{0}, mail {1}", name, n).Say(reader), &box, each)
		if _, err = io.Copy(io.Discard, &box); err == nil {
			one, err = box.next, box.err
		}
	}
	if err != io.EOF {
		each(Found{From: name, Err: told.Wrong("the mailbox cannot be read further: {0}", err)})
	}
}

// mailbox reads one mail of a box. The library ends a mail at every line that begins with
// “From ”. Many programs escape no such line of a text; what stands behind one that no
// header follows is read as more of the same mail.
type mailbox struct {
	*mbox.Reader
	now, next io.Reader
	err       error // why there is no next one
}

// mostHeader is how much of a mail is looked at to see whether it begins with a header.
const mostHeader = 8 << 10

func (m *mailbox) Read(p []byte) (int, error) {
	for m.next == nil && m.err == nil {
		if n, err := m.now.Read(p); n > 0 || err != io.EOF {
			return n, err
		}
		var more io.Reader
		if more, m.err = m.NextMessage(); m.err != nil {
			break
		}
		piece := bufio.NewReaderSize(more, mostHeader)
		if head, _ := piece.Peek(mostHeader); isMail(head) {
			m.next = piece
		} else {
			m.now = piece
		}
	}
	return 0, io.EOF
}
