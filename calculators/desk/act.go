package desk

import (
	"slices"
	"strings"

	"plumbline/calculators/measure"
	"plumbline/calculators/record"
	"plumbline/calculators/request"
	"plumbline/calculators/sheet"
	"plumbline/calculators/symptom"
	"plumbline/calculators/words"
)

// act writes the plan of the settings that a chapter is about; nothing where nothing
// is known of any of them.
func (d Desk) act(a Ask) (reply Reply) {
	var settings []*sheet.Setting
	for key := range strings.FieldsSeq(a.Key) {
		if q := measure.Named(key); q != nil {
			if s := sheet.SettingOf(q); s != nil {
				settings = append(settings, s)
			}
		}
	}
	if p := sheet.PlanOf(d.laidOut(a), settings); p != nil {
		reply.HTML = p.HTML(a.reader())
	}
	return reply
}

// felt writes what the symptoms that were ticked come to on this bike; nothing where
// none is known.
func (d Desk) felt(a Ask) (reply Reply) {
	var felt []*symptom.Symptom
	all := symptom.With(symptom.ReadOwn(a.Text))
	for key := range strings.FieldsSeq(a.Key) {
		at := slices.IndexFunc(all, func(s *symptom.Symptom) bool { return s.Key == key })
		if at >= 0 && !slices.Contains(felt, all[at]) {
			felt = append(felt, all[at])
		}
	}
	if felt == nil {
		return reply
	}
	reply.HTML = symptom.TogetherHTML(symptom.Advise(felt, d.laidOut(a)), a.reader(), symptom.Ways{
		Chapter: func(path string) (href, title string) {
			return a.way(path), words.Of("How to do it").Say(a.reader())
		},
	})
	return reply
}

// laidOut is the sheet of a record, without what a fitter asked.
func (d Desk) laidOut(a Ask) *sheet.Sheet {
	r, _ := record.Decode(a.Record)
	r.Drop(request.IsKey)
	r.Drop(request.IsQuestion)
	return sheet.Of(r, d.Calculators)
}
