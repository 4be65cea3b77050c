package measure

import "strings"

// Nearest returns the quantity that somebody most likely meant by a key that
// does not exist, or nil when nothing is near. It knows the labels too: who types
// "inside-leg" means inseam.
func Nearest(key string) *Quantity {
	key = slug(key)
	if key == "" || len(key) > farthestKey {
		return nil
	}
	var best *Quantity
	// A third of the letters may be wrong; beyond that a guess only misleads.
	least := 1 + max(len(key)/3, 1)
	for _, q := range all {
		for _, name := range []string{q.Key, slug(string(q.Label))} {
			if d := distance(key, name, least); d < least {
				best, least = q, d
			}
		}
	}
	return best
}

// farthestKey is longer than every key and label, so that a long text is not
// compared with all of them for nothing.
const farthestKey = 48

// slug spells a name as keys are spelt.
func slug(name string) string {
	return strings.Map(func(r rune) rune {
		switch r {
		case ' ', '_', '\u00a0':
			return '-'
		case ',', '’', '\'':
			return -1
		}
		return r
	}, strings.ToLower(strings.TrimSpace(name)))
}

// distance counts the letters to insert, drop, replace or swap with a neighbour
// to get from a to b (Damerau and Levenshtein, no letter touched twice). It stops
// at limit, which it returns for everything that is not nearer.
func distance(a, b string, limit int) int {
	if len(a)-len(b) >= limit || len(b)-len(a) >= limit {
		return limit
	}
	older, old, now := make([]int, len(b)+1), make([]int, len(b)+1), make([]int, len(b)+1)
	for j := range old {
		old[j] = j
	}
	for i := 1; i <= len(a); i++ {
		now[0] = i
		for j := 1; j <= len(b); j++ {
			change := old[j-1]
			if a[i-1] != b[j-1] {
				change++
			}
			now[j] = min(change, old[j]+1, now[j-1]+1)
			if i > 1 && j > 1 && a[i-1] == b[j-2] && a[i-2] == b[j-1] {
				now[j] = min(now[j], older[j-2]+1)
			}
		}
		older, old, now = old, now, older
	}
	return min(old[len(b)], limit)
}
