package drawing

// Role is what a mark means. It becomes a class; the style sheet decides how it
// looks, and gives each role more than a colour to be told by.
type Role string

// The roles of a drawing.
const (
	Ink    Role = "ink"    // the bike, and plain dimensions
	Before Role = "before" // the earlier state, under the later one
	Hot    Role = "hot"    // only what the reader sets
	Body   Role = "body"   // only the rider
	Soft   Role = "soft"   // ground, axes, what only helps to read the rest
)

// Pen is a kind of line, after ISO 128-2.
type Pen string

// The pens. The zero Pen is Wide.
const (
	Wide   Pen = "wide"   // visible outlines
	Heavy  Pen = "heavy"  // the few lines that must stand out
	Thin   Pen = "thin"   // minor outlines, extension and dimension lines
	Hidden Pen = "hidden" // short dashes
	Centre Pen = "centre" // long-dash-dot: axes and centre lines
	NoPen  Pen = "nopen"  // no line at all: a filled area only
)

// Fill is what a closed mark is filled with.
type Fill string

// The fills. The zero Fill leaves what lies below in sight.
const (
	Open  Fill = ""
	Sheet Fill = "sheet" // the colour of the sheet: hides what lies below
	Wash  Fill = "wash"  // a light tint of the role
	Solid Fill = "solid" // the role's own colour
	Hatch Fill = "hatch" // light section hatching over the wash
)
