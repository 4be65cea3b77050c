package main

import (
	"math"
	"strconv"
	"strings"

	"plumbline/calculators/caution"
	"plumbline/calculators/exchange"
	"plumbline/calculators/measure"
	"plumbline/calculators/record"
	"plumbline/calculators/sheet"
)

// clients prints CSV with one row for each client: who, when, what to look at, the
// body, and each setting now and suggested. Numbers are in base units.
type clients struct{}

// clientBody are the rider's own measurements in a row.
var clientBody = []*measure.Quantity{measure.Stature, measure.Mass, measure.Inseam, measure.ArmSpan, measure.ArmLength,
	measure.TrunkLength, measure.ShoulderWidth, measure.FootLength, measure.SitBoneWidth}

// clientSettings are the settings in a row.
func clientSettings() (list []*measure.Quantity) {
	for _, s := range sheet.Settings {
		if s.Is() == measure.Number {
			list = append(list, s.Quantity)
		}
	}
	return list
}

func (clients) before([]*arrival) string {
	head := []string{"from", "client", "rider", "appointment", "bike", "date", "state", "relation", "relation_to",
		"before_appointment", "look_again", "not_sent", "your_notes"}
	for _, q := range clientBody {
		head = append(head, q.Key+"_"+q.Unit.Symbol)
	}
	for _, q := range clientSettings() {
		head = append(head, q.Key+"_now_"+q.Unit.Symbol, q.Key+"_suggested_"+q.Unit.Symbol,
			q.Key+"_uncertainty_"+q.Unit.Symbol, q.Key+"_yours_"+q.Unit.Symbol)
	}
	return csvLine(head)
}

func (clients) between() string                 { return "" }
func (clients) after([]*caution.Caution) string { return "" }

func (clients) sheet(l look) string {
	if l.Record == nil {
		why := l.aside.Say(nil)
		for _, x := range l.Problems {
			why = strings.TrimSpace(why + " " + x.Text.Say(nil))
		}
		row := make([]string, 13+len(clientBody)+4*len(clientSettings()))
		row[0], row[6], row[10] = oneLine(l.From), "not read", why
		if !l.aside.None() {
			row[6] = "passed over"
		}
		return csvLine(row)
	}
	row := []string{oneLine(l.From), l.Shown().Say(nil), strconv.Itoa(l.Rider + 1), l.Visit.When, l.Visit.Bike,
		l.Record.Date, stateNames[l.State], "", "", strings.Join(l.arrival.before(nil), " "),
		strings.Join(l.slips(nil), " "), strings.Join(keys(l.Lacking), " "), strings.Join(l.noted(), " ")}
	if l.Earlier != nil {
		row[7], row[8] = kinNames[l.Kin], oneLine(l.Earlier.From)
	}
	for _, q := range clientBody {
		row = append(row, number(l.Record.Value(q)))
	}
	byQuantity := map[*measure.Quantity]suggested{}
	for _, s := range suggestions(l) {
		byQuantity[s.setting.Quantity] = s
	}
	for _, q := range clientSettings() {
		now, _ := sheet.NowOf(l.Record, sheet.SettingOf(q))
		suggested, margin, yours := "", "", ""
		if s := byQuantity[q]; s.answer != nil {
			suggested, margin = number(float64(s.answer.Value)), number(float64(s.answer.Uncertainty))
		}
		if s := byQuantity[q]; s.yours != nil {
			yours = number(s.yours.Value)
		}
		row = append(row, number(now), suggested, margin, yours)
	}
	return csvLine(row)
}

// number writes a number for a spreadsheet, nothing for none.
func number(x float64) string {
	if math.IsNaN(x) || math.IsInf(x, 0) {
		return ""
	}
	return record.Decimals(x, 3)
}

// csvLine writes one line of CSV that no spreadsheet takes for a formula.
func csvLine(cells []string) string {
	var b strings.Builder
	for i, c := range cells {
		if i > 0 {
			b.WriteByte(',')
		}
		if _, err := strconv.ParseFloat(c, 64); err != nil {
			c = exchange.Harmless(c)
		}
		exchange.Cell(&b, c)
	}
	b.WriteString("\r\n")
	return b.String()
}
