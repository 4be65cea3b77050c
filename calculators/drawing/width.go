package drawing

import "strings"

// advances are the widths of the printable ASCII characters in hundredths of
// the letters' height, from space to ~. They are those of a wide sans serif, so
// that a label has room whatever the reader's system font is.
var advances = [95]uint8{
	32, 41, 46, 84, 64, 95, 78, 28, 39, 39, 50, 84, 32, 37, 32, 34, // space to /
	64, 64, 64, 64, 64, 64, 64, 64, 64, 64, 34, 34, 84, 84, 84, 54, // 0 to ?
	100, 69, 69, 70, 77, 64, 58, 78, 76, 30, 30, 66, 56, 87, 75, 79, // @ to O
	61, 79, 70, 64, 62, 74, 69, 99, 69, 62, 69, 39, 34, 39, 84, 50, // P to _
	50, 62, 64, 55, 64, 62, 36, 64, 64, 28, 28, 58, 28, 98, 64, 62, // ` to o
	64, 64, 42, 53, 40, 64, 60, 82, 60, 60, 53, 64, 34, 64, 84, // p to ~
}

// boldness is how much wider bold letters run.
const boldness = 1.12

// textWidth estimates how long a line of text runs, in heights of its letters.
func textWidth(text string, bold bool) float64 {
	hundredths := 0
	for _, c := range text {
		switch {
		case c >= ' ' && c <= '~':
			hundredths += int(advances[c-' '])
		case c == '°':
			hundredths += 50
		case c >= 0x2e80:
			hundredths += 105
		case c >= 0x2000 && c < 0x200b, c == 0xa0:
			hundredths += 60
		case c >= 0x300 && c < 0x370: // combining marks stand over their letter
		default:
			hundredths += 84
		}
	}
	if bold {
		return float64(hundredths) / 100 * boldness
	}
	return float64(hundredths) / 100
}

// longest returns how long a label may run before it is broken, in heights of its
// letters, where the view is this many of them wide.
func longest(across float64) float64 { return max(6.5, min(15, 0.36*across)) }

// broken breaks a text at its spaces into lines that are not too long where that can
// be, and returns them with the longest one's width.
func broken(text string, bold bool, most float64) ([]string, float64) {
	whole := textWidth(text, bold)
	if whole <= most || !strings.Contains(text, " ") {
		return []string{text}, whole
	}
	var lines []string
	var widest float64
	line := ""
	end := func() {
		lines = append(lines, line)
		widest = max(widest, textWidth(line, bold))
	}
	for _, word := range strings.Split(text, " ") { // Fields would break at no-break spaces too
		switch {
		case word == "":
		case line == "":
			line = word
		case textWidth(line+" "+word, bold) > most:
			end()
			line = word
		default:
			line += " " + word
		}
	}
	end()
	return lines, widest
}

// captioned breaks a caption into lines as even as their number allows, so that no word
// stands alone on the last one. A label keeps its first line full: where it stands
// depends on its shape.
func captioned(text string, most float64) []string {
	lines, widest := broken(text, true, most)
	for len(lines) > 1 {
		even, width := broken(text, true, widest-1e-6)
		if len(even) > len(lines) || width >= widest {
			break
		}
		lines, widest = even, width
	}
	return lines
}
