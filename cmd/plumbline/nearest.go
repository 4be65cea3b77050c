package main

// nearest returns the name closest to what was typed, or "" when none is close
// enough to be a slip: at most one edit in three letters.
func nearest(typed string, names []string) string {
	best, least := "", len(typed)/3+2
	for _, n := range names {
		if d := edits(typed, n); d < least {
			best, least = n, d
		}
	}
	return best
}

// edits counts the single-letter insertions, deletions and replacements between
// two words (Levenshtein 1966, from memory).
func edits(a, b string) int {
	row := make([]int, len(b)+1)
	for j := range row {
		row[j] = j
	}
	for i := range len(a) {
		corner := row[0]
		row[0] = i + 1
		for j := range len(b) {
			cost := 1
			if a[i] == b[j] {
				cost = 0
			}
			corner, row[j+1] = row[j+1], min(row[j+1]+1, row[j]+1, corner+cost)
		}
	}
	return row[len(b)]
}
