package inbox

import (
	"bytes"
	"io"
	"mime"
	"net/http"
	"regexp"
	"strings"

	"golang.org/x/text/encoding/unicode"
	"golang.org/x/text/transform"

	"plumbline/calculators/words"
	"plumbline/site/told"
)

// fromUTF16 reads a file as UTF-8 that a program saved as UTF-16: with a byte order
// mark, or, where it has none, with a zero in every second byte of its first letters.
func fromUTF16(head []byte, r io.Reader) (io.Reader, bool) {
	little := bytes.HasPrefix(head, []byte{0xff, 0xfe}) || zeroAt(head, 1)
	big := bytes.HasPrefix(head, []byte{0xfe, 0xff}) || zeroAt(head, 0)
	if little == big {
		return nil, false
	}
	order := unicode.LittleEndian
	if big {
		order = unicode.BigEndian
	}
	return transform.NewReader(r, unicode.UTF16(order, unicode.UseBOM).NewDecoder()), true
}

// zeroAt tells whether of the first eight pairs of bytes the byte at that place is
// zero and the other is not.
func zeroAt(head []byte, place int) bool {
	if len(head) < 16 {
		return false
	}
	for i := 0; i < 16; i += 2 {
		if head[i+place] != 0 || head[i+1-place] == 0 {
			return false
		}
	}
	return true
}

// binary names what is no text: a photo, a PDF, an archive. It returns none for text.
func binary(head []byte) words.Text {
	kind, _, _ := mime.ParseMediaType(http.DetectContentType(head[:min(len(head), 512)]))
	switch {
	case strings.HasPrefix(kind, "text/"):
		return words.Text{}
	case kind == "application/octet-stream":
		if bytes.IndexByte(head[:min(len(head), 512)], 0) < 0 {
			return words.Text{} // text with a stray control character
		}
		return told.Of("a file of bytes")
	case strings.HasPrefix(kind, "image/"):
		return told.Of("a photo or drawing ({0})", kind)
	case strings.HasPrefix(kind, "video/"), strings.HasPrefix(kind, "audio/"):
		return told.Of("a recording ({0})", kind)
	case kind == "application/pdf":
		return told.Of("a PDF")
	case kind == "application/zip", strings.HasSuffix(kind, "gzip"), strings.Contains(kind, "compressed"):
		return told.Of("an archive or an office document ({0})", kind)
	}
	return told.Of("a file of kind {0}", kind)
}

// aField is the first line of a mail: the name of a header field as RFC 5322 has it.
var aField = regexp.MustCompile(`^[!-9;-~]{2,60}:[ \t]`)

// oneOfMail are fields that every mail has one of, and that no other text begins with.
var oneOfMail = regexp.MustCompile(
	`(?im)^(received|return-path|mime-version|message-id|delivered-to|from|to|subject|date):[ \t]`,
)

// isMail tells whether a file begins with the header of a mail.
func isMail(head []byte) bool {
	if !aField.Match(head) {
		return false
	}
	header := head
	for _, end := range []string{"\r\n\r\n", "\n\n"} {
		if i := bytes.Index(head, []byte(end)); i >= 0 && i < len(header) {
			header = head[:i]
		}
	}
	return len(oneOfMail.FindAll(header, 2)) == 2
}
