package measure

// Trim cuts white space off both ends. It does what strings.TrimSpace does, which
// brings the tables of all scripts into the engine.
func Trim(s string) string {
	from, to := len(s), len(s)
	stays := false // whether the last character does
	for i, c := range s {
		if stays {
			to = i
		}
		if stays = !space(c); stays && from == len(s) {
			from = i
		}
	}
	if stays || from == len(s) {
		to = len(s)
	}
	return s[from:to]
}

// space tells whether Unicode calls c white space.
func space(c rune) bool {
	switch c {
	case ' ', '\t', '\n', '\v', '\f', '\r', '\u0085', '\u00a0', '\u1680', '\u2028', '\u2029', '\u202f', '\u205f', '\u3000':
		return true
	}
	return c >= '\u2000' && c <= '\u200a'
}
