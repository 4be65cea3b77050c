package finish

import "slices"

// Chance returns how likely it is that two lists of scores differ in their mean as much
// as these, either way, if only chance had dealt the scores to the lists: the share of
// all ways of dealing them in which the means differ at least as much. The scores are
// whole numbers of a unit, such as quarter points. It returns 1 where a list is empty.
//
// Scores so coarse repeat, so instead of the ways it counts sums, which is exact too:
// 10 and 10 scores have 184,756 ways and fewer than a thousand sums.
//
// Source: Pitman's permutation test (pitman1937), two-sided.
func Chance(before, after []int) float64 {
	n, m := len(before), len(after)
	if n == 0 || m == 0 {
		return 1
	}
	all := slices.Concat(before, after)
	least, total, dealt := slices.Min(all), 0, 0
	for i := range all {
		all[i] -= least // moves every mean by the same, and keeps the sums small
		total += all[i]
		if i >= n {
			dealt += all[i]
		}
	}
	// The difference of the means is (sum·(n+m) − total·m)/(n·m), sum being what the
	// list of m adds up to.
	apart := func(sum int) int { return max(sum*(n+m)-total*m, total*m-sum*(n+m)) }
	as, every := 0.0, 0.0
	for sum, ways := range waysOf(all, m, total) {
		every += ways
		if apart(sum) >= apart(dealt) {
			as += ways
		}
	}
	return as / every
}

// waysOf returns, for each sum from 0 to total, in how many ways m of the numbers add up
// to it. The numbers are not negative, and total is their sum.
func waysOf(numbers []int, m, total int) []float64 {
	ways := make([][]float64, m+1) // by how many numbers were taken, and their sum
	for k := range ways {
		ways[k] = make([]float64, total+1)
	}
	ways[0][0] = 1
	reached := 0
	for _, x := range numbers {
		reached += x
		for k := m; k > 0; k-- { // downwards, so that no number is taken twice
			for sum := reached; sum >= x; sum-- {
				ways[k][sum] += ways[k-1][sum-x]
			}
		}
	}
	return ways[m]
}

// Tells tells whether n and m rides can show any difference at all: whether the clearest
// one possible would be less likely than limit by chance.
func Tells(n, m int, limit float64) bool {
	if n == 0 || m == 0 {
		return false
	}
	ways := 1.0
	for i := 1; i <= m; i++ {
		ways = ways * float64(n+i) / float64(i)
	}
	if n == m {
		ways /= 2 // the same scores the other way round differ as much
	}
	return 1/ways <= limit
}

// Interval returns the smallest and the largest shift of the second list that is not
// refuted: taking it off the second list leaves a difference that chance makes more often
// than limit. It looks no further than most to either side, in the scores' unit, and
// answers false where so few rides refute nothing.
//
// The further a shift lies from the difference of the means, the less likely it is by
// chance, never more: each way of dealing moves its own difference by no more than the
// shift. So halving finds both ends.
func Interval(before, after []int, limit float64, most int) (low, high int, ok bool) {
	n, m := len(before), len(after)
	if !Tells(n, m, limit) {
		return 0, 0, false
	}
	kept := func(shift int) bool {
		moved := make([]int, m)
		for i, x := range after {
			moved[i] = x - shift
		}
		return Chance(before, moved) > limit
	}
	middle := nearest(before, after)
	return -edge(-middle, most, func(s int) bool { return kept(-s) }), edge(middle, most, kept), true
}

// nearest returns the whole number that lies nearest to the difference of the means.
func nearest(before, after []int) int {
	n, m := len(before), len(after)
	sum := 0
	for _, x := range after {
		sum += x * n
	}
	for _, x := range before {
		sum -= x * m
	}
	half := n * m / 2
	if sum < 0 {
		return (sum - half) / (n * m)
	}
	return (sum + half) / (n * m)
}

// edge returns the last number from from on to most that is kept; from is.
func edge(from, most int, kept func(int) bool) int {
	if from >= most || kept(most) {
		return most
	}
	for most-from > 1 {
		if middle := from + (most-from)/2; kept(middle) {
			from = middle
		} else {
			most = middle
		}
	}
	return from
}
