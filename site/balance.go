package site

import (
	"regexp"
	"strconv"
	"unicode/utf8"
)

// balance deals sections out to two columns of a wide page, each to the one that ends
// higher up, so that no hole is left beside a tall one. Where there is room for one column
// alone, and for who has the page read aloud, they stand in their order.
type balance struct{ left, right float64 }

// What a section takes in pixels in a column of a page of 820 or 1360: its heading and its
// field, a figure's frame and caption, a figure of the column's width, a letter's share of a
// line. Columns that differ by less than near end at one height for the eye, and then the
// next section begins on the left, where lines begin.
const (
	sectionHeight = 180
	frameHeight   = 80
	columnWidth   = 400
	letterHeight  = 0.6
	near          = 60
)

var (
	viewBox  = regexp.MustCompile(`viewBox="0 0 ([0-9.]+) ([0-9.]+)"`)
	unworded = regexp.MustCompile(`(?s)<svg.*?</svg>|<[^>]*>`)
)

// second tells whether the next section, which is this HTML, stands in the second column.
func (b *balance) second(html string) bool {
	height := sectionHeight + letterHeight*float64(utf8.RuneCountInString(unworded.ReplaceAllString(html, "")))
	for _, box := range viewBox.FindAllStringSubmatch(html, -1) {
		wide, _ := strconv.ParseFloat(box[1], 64)
		high, _ := strconv.ParseFloat(box[2], 64)
		height += frameHeight + columnWidth*high/max(wide, 1)
	}
	if b.right+near < b.left {
		b.right += height
		return true
	}
	b.left += height
	return false
}
