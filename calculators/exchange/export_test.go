package exchange

// Parse tells whether s is JSON, and the text of a string.
func Parse(s string) (string, bool) {
	v, _, ok := parse(s)
	return v.text, ok
}
