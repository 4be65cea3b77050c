package desk

import (
	"strings"

	"plumbline/calculators/measure"
	"plumbline/calculators/record"
	"plumbline/calculators/request"
	"plumbline/calculators/sheet"
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
	r, _ := record.Decode(a.Record)
	r.Drop(request.IsKey)
	r.Drop(request.IsQuestion)
	if p := sheet.PlanOf(sheet.Of(r, d.Calculators), settings); p != nil {
		reply.HTML = p.HTML(a.reader())
	}
	return reply
}
