package cockpit

import (
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"plumbline/calculators"
	"plumbline/calculators/calctest"
)

// listedByHand returns the sets of parts that a table lists of all of them, nearest
// first: those within 5 mm, or else the nearest five.
func listedByHand(all []handParts) (list []handParts, within bool) {
	for _, p := range all {
		if p.off <= 5 {
			list = append(list, p)
		}
	}
	if len(list) > 0 {
		return list, true
	}
	return all[:5], false
}

// allowedFirstByHand puts what needs more spacers than the limit last.
func allowedFirstByHand(all []handParts, limit float64) (list []handParts) {
	var over []handParts
	for _, p := range all {
		if p.spacers > limit {
			over = append(over, p)
		} else {
			list = append(list, p)
		}
	}
	return append(list, over...)
}

// tableIs holds a table of combinations, its first row, what it says of each set, and the
// row to begin with, counted from 1.
func tableIs(t *testing.T, r *calculators.Result, rows []handParts, star int, within bool,
	mark func(handParts) string) {
	t.Helper()
	table := r.Tables[0]
	require.Equal(t, "combinations", table.Name)
	assert.Equal(t, star, table.Starred)
	assert.Equal(t, within, strings.Contains(table.Caption.Say(nil), "Parts that put the grips within"))
	assert.Contains(t, plain(table.Caption.Say(nil)), "within 5 mm of the target")
	var want, got []string
	for i, p := range rows {
		want = append(want, strings.Join([]string{mm(p.stem), mark(p), deg(p.angle), mm(p.spacers), mm(p.rise),
			tenthMm(p.off)}, " | "))
		var cells []string
		if i < len(table.Rows) {
			for _, cell := range table.Rows[i] {
				cells = append(cells, plain(cell.Say(nil)))
			}
		}
		got = append(got, strings.Join(cells, " | "))
	}
	assert.Equal(t, want, got)
	assert.Len(t, table.Rows, len(rows))
}

// TestStemBeginsWithTheSimplest: of what comes near and the steerer allows, the set with
// the fewest parts to buy is starred, even where it is not among the first ten.
func TestStemBeginsWithTheSimplest(t *testing.T) {
	seen := map[string]bool{}
	for _, change := range []numbers{{}, {"move-x": -3, "move-y": 6}, {"move-x": 4, "move-y": 21},
		{"spacers": 0, "move-x": -17}, {"move-x": 60}, {"stem-length": 72, "move-y": -9},
		{"move-x": -5.5, "move-y": 11.5, "spacers-limit": 12}, {"move-x": 0, "move-y": 0},
		{"move-x": 0, "move-y": 10}, {"stem-angle": 9, "bar-sweep": 30, "move-x": 12, "move-y": -10},
		{"move-x": -9.5, "move-y": 20, "spacers-limit": 37},
		{"stem-angle": -6, "move-x": -9, "move-y": 4}, {"spacers-limit": 0}} {
		n := partsRecord.with(numbers{"move-x": -12, "move-y": 14, "spacers-limit": 31}).with(change)
		_, grip := clampAndGrip(n)
		all := partsByHand(n, grip+complex(n["move-x"], n["move-y"]))
		list, within := listedByHand(all)
		list = allowedFirstByHand(list, n["spacers-limit"])
		best := -1
		for i, p := range list {
			if p.spacers <= n["spacers-limit"] && (best < 0 || p.bought < list[best].bought) {
				best = i
			}
		}
		rows := list[:min(10, len(list))]
		star := best + 1
		if best >= len(rows) {
			rows, star = append(rows[:10:10], list[best]), 11
		}
		r := calctest.Answer(t, Stem(), n.typed())
		tableIs(t, r, rows, star, within, func(p handParts) string {
			say := func(s string) string { seen[s] = true; return s }
			stem, bar := p.stem != n["stem-length"] || p.angle != n["stem-angle"], p.rise != n["bar-rise"]
			switch over := p.spacers - n["spacers-limit"]; {
			case over > 0:
				seen["over"] = true
				return "not an option: " + mm(over) + " of spacers more than the steerer allows"
			case p.stem < 30 || p.stem > 50:
				return say("outside the usual stems: check the frame’s size first")
			case !stem && !bar && p.spacers == n["spacers"]:
				return say("as it is now")
			case !stem && !bar:
				return say("spacers only")
			case stem && bar:
				return say("another stem and another bar")
			case p.stem == n["stem-length"] && p.angle == -n["stem-angle"] && stem:
				return say("the same stem turned over, if its maker allows it")
			case stem:
				return say("another stem")
			}
			return say("another bar")
		})
		assert.Equal(t, within && best < 0, saysPlain(r, "Every combination that comes near needs more spacers"),
			n.typed())
		seen["star 11"] = seen["star 11"] || star == 11
		seen["none"] = seen["none"] || best < 0
		seen["not within"] = seen["not within"] || !within
	}
	assert.Len(t, seen, 11)
}

// TestSameBeginsWithUsualParts: the first set within 5 mm that the steerer allows and
// whose stem is a usual one, or else the first that the steerer allows.
func TestSameBeginsWithUsualParts(t *testing.T) {
	seen := map[string]bool{}
	for _, change := range []numbers{{}, {"new-spacers-limit": 4}, {"new-spacers-limit": 0, "grip-x": 447},
		{"grip-x": 380, "grip-y": 760}, {"grip-x": 520}, {"grip-x": 482, "new-spacers-limit": 12},
		{"grip-y": 737, "grip-x": 449, "new-spacers-limit": 6}, {"grip-x": 490, "grip-y": 730},
		{"grip-y": 700, "grip-x": 430, "new-spacers-limit": 1}, {"grip-y": 752, "new-spacers-limit": 2},
		{"grip-x": 454, "grip-y": 722, "new-spacers-limit": 0}, {"grip-x": 445, "grip-y": 738},
		{"grip-x": 481, "grip-y": 722},
		{"grip-x": 499, "grip-y": 706, "new-spacers-limit": 4}, {"new-spacers-limit": 19.5}} {
		n := sameRecord.with(numbers{"new-spacers-limit": 18}).with(change)
		all := partsByHand(newParts(n), n.grips())
		list, within := listedByHand(all)
		best, allowed := -1, -1
		for i, p := range all {
			if p.spacers > n["new-spacers-limit"] {
				continue
			}
			if allowed < 0 {
				allowed = i
			}
			if best < 0 && p.off <= 5 && p.stem >= 30 && p.stem <= 50 {
				best = i
			}
		}
		if best < 0 {
			best = allowed
		}
		seen["usual"], seen["none"] = seen["usual"] || best != allowed, seen["none"] || best < 0
		begin := all[max(best, 0)]
		if best >= len(list) {
			list = append(list[:len(list):len(list)], begin)
			seen["from afar"] = true
		}
		list = allowedFirstByHand(list, n["new-spacers-limit"])
		rows, star := list[:min(10, len(list))], 0
		if best >= 0 {
			star = slices.Index(list, begin) + 1
		}
		if star > 10 {
			rows, star = append(rows[:10:10], begin), 11
		}
		r := calctest.Answer(t, Same(), n.typed())
		tableIs(t, r, rows, star, within, func(p handParts) string {
			switch over := p.spacers - n["new-spacers-limit"]; {
			case over > 0:
				return "not an option: " + mm(over) + " of spacers more than the steerer allows"
			case p.stem < 30 || p.stem > 50:
				return "outside the usual stems"
			case p.rise != n["new-bar-rise"]:
				return "needs a different bar"
			}
			return "with the bar named"
		})
		out := best < 0 || begin.off > 5
		assert.Equal(t, out, saysPlain(r, "No usual parts that the steerer allows bring the grips within 5 mm"),
			n.typed())
		seen["out"] = seen["out"] || out
		if out {
			_, ends := clampAndGrip(newParts(n).with(numbers{"stem-length": begin.stem, "stem-angle": begin.angle,
				"spacers": begin.spacers, "bar-rise": begin.rise}))
			miss := ends - n.grips()
			assert.True(t, saysPlain(
				r,
				"The nearest leave them "+plain(
					signedMm(real(miss)),
				)+" forward and "+plain(
					signedMm(imag(miss)),
				)+" up of it",
			), "%v", miss)
		}
	}
	assert.Len(t, seen, 4)
}

// TestStemAnswersInASentence: what to change, or that the steerer does not allow it.
func TestStemAnswersInASentence(t *testing.T) {
	const parts = "reach=460 stack=625 head-angle=65.5 spacers=15 stem-length=45 stem-angle=0 bar-rise=25 "
	for typed, want := range map[string]string{
		"move-x=0 move-y=0":   "Keep the parts you have",
		"move-x=-4 move-y=9":  "Use 10 mm more spacers",
		"move-x=4 move-y=-9":  "Use 10 mm fewer spacers",
		"move-x=200 move-y=0": "Nothing comes close",
		"move-x=-10 move-y=22 spacers-limit=0 spacers-above=0": "steerer",
	} {
		assert.Contains(t, plain(calctest.Answer(t, Stem(), parts+typed).Verdict.Say(nil)), want, typed)
	}
}
