package intake

import (
	"cmp"
	"slices"
	"strings"

	"plumbline/calculators/record"
)

// Together finds duplicates, corrected replies, later visits, other bikes and people of one
// name. A corrected reply is laid over the one that it corrects.
func Together(list []*Sent) {
	records := make([]*record.Record, len(list))
	places := make(map[*Sent]int, len(list))
	for i, s := range list {
		records[i], places[s] = s.Record, i
	}
	relations := Relate(records)
	for i, s := range list { // a file tells better than any length whose bikes they are
		if s.Sibling != nil && s.Record != nil && s.Sibling.Record != nil && relations[i].Kin == Alone {
			relations[i] = Relation{OtherBike, places[s.Sibling]}
		}
	}
	done := make([]bool, len(list))
	var settle func(i int)
	settle = func(i int) {
		s := list[i]
		if done[i] {
			return
		}
		done[i] = true
		if s.Relation = relations[i]; s.Kin == Alone {
			return
		}
		settle(s.To)
		s.Earlier = list[s.To]
		switch s.Kin {
		case Corrected:
			s.Earlier.Later = s
			s.Amended = Differences(s.Earlier.Record, s.Record)
			s.Record = record.Merge(s.Earlier.Record, s.Record)
			s.Judge()
		case Again:
			s.Earlier.Newer = s
		case Namesake:
			s.Namesake, s.Earlier.Namesake = s.Earlier, s
		}
	}
	for i := range list {
		settle(i)
	}
	for i, n := range Riders(relations) {
		list[i].Rider = n
	}
}

// VisitBefore is the visit or the bike that a record stands beside, with what that is to it;
// a corrected reply stands beside what the reply that it corrects stood beside.
func (s *Sent) VisitBefore() (*Sent, Kin) {
	for ; s != nil; s = s.Earlier {
		if s.Earlier != nil && (s.Kin == Again || s.Kin == OtherBike) {
			return s.Earlier, s.Kin
		}
		if s.Kin != Corrected {
			break
		}
	}
	return nil, Alone
}

// InOrder returns the places of those that make a client's sheet: riders who need attention
// first, what belongs to one rider side by side, the newest first. Else all stay as they came.
func InOrder(list []*Sent) (order []int) {
	wants, first := map[int]int{}, map[int]int{} // by rider
	for i, s := range list {
		if s.Record == nil || s.Replaced() {
			continue
		}
		order = append(order, i)
		wants[s.Rider] = max(wants[s.Rider], s.Wants())
		if _, ok := first[s.Rider]; !ok {
			first[s.Rider] = i
		}
	}
	slices.SortStableFunc(order, func(i, k int) int {
		a, b := list[i], list[k]
		return cmp.Or(wants[b.Rider]-wants[a.Rider], first[a.Rider]-first[b.Rider],
			strings.Compare(b.Record.Date, a.Record.Date), b.Wants()-a.Wants())
	})
	return order
}
