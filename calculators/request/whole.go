package request

import (
	"hash/crc32"
	"strconv"
	"strings"

	"plumbline/calculators/record"
)

// keyEnd closes a reply: how many pairs stand before it, and their check value.
const keyEnd = "ask.end"

// State tells whether a reply came as it was sent.
type State int

// What a check value can tell.
const (
	Unsigned State = iota // nobody wrote a check value: a record, or a reply of an older guide
	Whole                 // all that was sent is there
	Cut                   // the end is missing
	Changed               // the end is there, but what stands before it is not what was sent
)

// StateOf looks at the fragment of a reply, with or without its #. Mail programs cut
// long links at any place; what stands before the cut can still be read.
func StateOf(fragment string) State {
	sum, n := checksum{}, 0
	reply, state := false, Unsigned
	record.Fields(strings.TrimPrefix(fragment, "#"), func(key, value string) {
		switch {
		case key == keyEnd:
			if state = Changed; value == sum.end(n) {
				state = Whole
			}
			return
		case key == keyBack, key == keyFrom:
			reply = true
		}
		sum.add(key, value)
		n++
	})
	if state == Unsigned && reply && begins(fragment) {
		return Cut
	}
	return state
}

// begins tells whether a fragment begins as a reply or as advice with a check value does. Older
// guides put the mark of a reply at the end.
func begins(fragment string) bool {
	fragment = strings.TrimPrefix(fragment, "#")
	return strings.HasPrefix(fragment, keyBack+"=") || strings.HasPrefix(fragment, keyFrom+"=")
}

// signed puts the check value behind a fragment.
func signed(fragment string) string {
	sum, n := checksum{}, 0
	record.Fields(fragment, func(key, value string) {
		sum.add(key, value)
		n++
	})
	return fragment + "&" + keyEnd + "=" + sum.end(n)
}

// checksum is the CRC-32 of decoded pairs, so that a program on the way that writes
// %3B for a semicolon, or the other way round, changes nothing.
type checksum struct{ crc uint32 }

func (c *checksum) add(key, value string) {
	c.crc = crc32.Update(c.crc, crc32.IEEETable, []byte(key+"\x00"+value+"\x00"))
}

func (c *checksum) end(n int) string {
	return strconv.Itoa(n) + "." + strconv.FormatUint(uint64(c.crc), 16)
}
