// Package literature is the list of published sources that the fit maths rests
// on. A calculator cites literature.Peveler2005, so a citation that does not
// exist does not compile, and the engine carries only what it cites.
package literature

// Access tells how much of a source was read when its numbers were taken over.
type Access string

// The kinds of access.
const (
	Text       Access = "text"
	Abstract   Access = "abstract"
	Data       Access = "data"        // the numbers were computed from the published data
	SecondHand Access = "second hand" // read in a text that quotes it
	Memory     Access = "from memory" // nobody opened it
	Practice   Access = "common practice"
)

// Source is one published work, or a habit of the trade that has none.
type Source struct {
	_       [0]func() // spares the engine the code to compare it
	Key     string    // stable: lower-case first author and year
	Authors string
	Year    int
	Title   string // empty where the title was not seen
	Where   string // journal, volume, pages; publisher
	DOI     string
	Opened  Access
	For     string // what is taken from it, one sentence
}
