package measure

// Trim cuts white space off both ends. It does what strings.TrimSpace does, which
// brings the tables of all scripts into the engine.
func Trim(s string) string {
	from, to := len(s), 0
	for i, c := range s {
		if !space(c) {
			from = min(from, i)
			to = i
		}
	}
	if from == len(s) {
		return ""
	}
	// The last character that stays may have several bytes, those behind it none.
	for i := range s[to:] {
		if i > 0 {
			return s[from : to+i]
		}
	}
	return s[from:]
}

// space tells whether Unicode calls c white space.
func space(c rune) bool {
	switch c {
	case ' ', '\t', '\n', '\v', '\f', '\r', '\u0085', '\u00a0', '\u1680', '\u2028', '\u2029', '\u202f', '\u205f', '\u3000':
		return true
	}
	return c >= '\u2000' && c <= '\u200a'
}
