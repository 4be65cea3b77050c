package measure

import "strings"

// NearestName returns the known name that somebody most likely meant by a name
// that does not exist, or "" when none is near enough to be a slip. Capitals do
// not count. Of several equally near names it returns the first.
func NearestName(name string, known []string) string {
	// A third of the letters may be wrong; beyond that a guess only misleads.
	best, least := "", 1+max(len(name)/3, 1)
	for _, k := range known {
		d := EditDistance(name, k)
		// A name that lacks only its beginning or its end is as near as one slip.
		if len(name) >= 4 && (strings.HasSuffix(k, name) || strings.HasPrefix(k, name)) {
			d = min(d, 1)
		}
		if d < least {
			best, least = k, d
		}
	}
	return best
}

// EditDistance counts the bytes to insert, drop, replace or swap with a neighbour
// to get from a to b, capitals aside (the optimal string alignment form of
// Damerau's distance, from memory).
func EditDistance(a, b string) int {
	return distance(strings.ToLower(a), strings.ToLower(b), len(a)+len(b)+1)
}
