package desk

import (
	"plumbline/calculators"
	"plumbline/calculators/measure"
	"plumbline/calculators/sheet"
	"plumbline/calculators/words"
)

// Planned reads a setting that somebody chose for a bike. Without a value the problem says
// what is wrong, what is allowed and what was likely meant.
func Planned(key, typed string, bare *words.Reader) (p calculators.Pair, problem calculators.Problem, ok bool) {
	q := measure.Named(key)
	if q == nil || sheet.SettingOf(q) == nil {
		problem.Input, problem.Text = key, words.Of("“{0}” is not a setting of the sheet.", measure.Quoted(key))
		if near := measure.Nearest(key); near != nil && sheet.SettingOf(near) != nil {
			problem.Text = words.Of("“{0}” is not a setting of the sheet. Did you mean {1} ({2})?", measure.Quoted(key),
				near.Named(), words.Name(near.Key))
		}
		return p, problem, false
	}
	value, why, ok := canonical(q, typed, bare)
	if !ok {
		return p, calculators.Problem{Input: q.Key, Text: why, Suggest: suggested(q, typed, bare)}, false
	}
	return calculators.Pair{Key: q.Key, Typed: value}, problem, true
}
