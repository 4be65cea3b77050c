package main

import (
	"math"
	"slices"
	"strings"

	"plumbline/calculators/cockpit"
	"plumbline/calculators/desk"
	"plumbline/calculators/drawing"
	"plumbline/calculators/intake"
	"plumbline/calculators/measure"
	"plumbline/calculators/record"
	"plumbline/calculators/words"
)

// comparison lays two states of one client beside one another: two visits, two bikes, a
// bike before and after its changes, or as it is and as the fitter would set it.
type comparison struct {
	title         string
	left, right   string // what the states are called
	before, after *record.Record
	otherBike     bool // what one of them does not say cannot be taken from the other
	chosen        bool // the second state was written down and not measured
}

// comparisons are all that a record can be compared with.
func (a *arrival) comparisons(r *words.Reader) (list []comparison) {
	if a.Record == nil || a.Replaced() {
		return nil
	}
	now := record.Now(a.Record)
	if earlier, kin := a.VisitBefore(); earlier != nil {
		list = append(
			list,
			comparison{
				title:     say(r, "Against {0}", name(earlier.Called(kin))),
				left:      earlier.Called(kin),
				right:     a.Called(kin),
				before:    record.Now(earlier.Record),
				after:     now,
				otherBike: kin == intake.OtherBike,
			},
		)
	}
	if before, since := a.unchanged(r); before != nil {
		list = append(
			list,
			comparison{title: say(r, "Before and after the changes"), left: since, right: say(r, "With the changes"),
				before: before, after: record.Next(a.Record)},
		)
	}
	if advice := a.advice(); advice != nil {
		list = append(
			list,
			comparison{
				title:  say(r, "As it is and as you set it"),
				left:   say(r, "As it is"),
				right:  say(r, "As you set it"),
				before: now,
				after:  record.Next(advice.Over(a.Record)),
				chosen: true,
			},
		)
	}
	return list
}

// unchanged is the bike before any change that the record knows of, and how that is
// called; nil where it knows of none.
func (a *arrival) unchanged(reader *words.Reader) (before *record.Record, called string) {
	for _, c := range a.log {
		if c.Key != "" {
			return record.State(a.Record, a.log, "0000-01-01"), say(reader, "Before {0}", name(c.On))
		}
	}
	r := *a.Record
	r.Entries = slices.Clone(r.Entries)
	changed := false
	for _, e := range r.Entries {
		if e.Was != "" && e.Was != e.Text {
			old, _ := record.Decode(string(record.Escape([]byte(e.Key+"="), e.Was)))
			if was := old.At(e.Key); was != nil {
				r.Put(*was)
				changed = true
			}
		}
	}
	if !changed {
		return nil, ""
	}
	return &r, say(reader, "Before")
}

// differ is one line of a comparison.
type differ struct {
	Label, Before, After, Change string
	Beyond                       bool // the difference is more than its error
}

// rows are the values that both states have and in which they differ.
func (c comparison) rows(r *words.Reader) (rows []differ) {
	for _, d := range intake.Differences(c.before, c.after) {
		if d.Before == d.After {
			continue
		}
		before, after := d.Values()
		row := differ{Label: d.Quantity.Label.Say(r), Before: before.Say(r), After: after.Say(r), Beyond: !d.Same}
		switch {
		case d.Quantity.Is() == measure.Pick:
		case c.chosen:
			by := d.After - d.Before
			size := intake.Exactly{Value: math.Abs(by), Unit: d.Quantity.Unit}
			row.Change = intake.Signed{By: by, Amount: size}.Say(r)
		default:
			row.Change = d.By().Say(r) + ", " + d.Explained().Say(r)
		}
		rows = append(rows, row)
	}
	return rows
}

// onlyOne says what one state has and the other has not, "" if nothing.
func (c comparison) onlyOne(r *words.Reader) string {
	var parts []string
	for _, x := range []struct {
		called     string
		this, that *record.Record
	}{{c.left, c.before, c.after}, {c.right, c.after, c.before}} {
		var list []*measure.Quantity
		for i := range x.this.Entries {
			if e := &x.this.Entries[i]; e.Read() {
				if other := x.that.Of(e.Quantity); other == nil || !other.Read() {
					list = append(list, e.Quantity)
				}
			}
		}
		if list != nil {
			parts = append(parts, say(r, "Only in “{0}”: {1}.", name(x.called), labels(list)))
		}
	}
	return strings.Join(parts, " ")
}

// figure lays the two states over one another, nil where they are drawn alike or too little
// of a bike is known.
func (c comparison) figure() *drawing.Figure {
	before, after, ok := desk.Drawable(c.before, c.after, c.otherBike)
	if !ok {
		return nil
	}
	return cockpit.Overlay(before.Pairs(), after.Pairs(),
		[2]words.Text{words.Of("{0}", words.Name(c.left)), words.Of("{0}", words.Name(c.right))})
}
