package templates

import (
	"html/template"

	"traybook/report"
	"traybook/report/germination"
)

// weekAlarms is where it was too warm or too cold of late.
type weekAlarms struct {
	Title template.HTML
	Lines []template.HTML
}

// weekAlarms tells the alarms of the last days, days on end as one; nil where there is
// none.
func (p *page) weekAlarms() *weekAlarms {
	var alarms []germination.Alarm
	for _, l := range p.r.Lines(report.AlarmLine) {
		alarms = append(alarms, *l.Alarm)
	}
	if len(alarms) == 0 {
		return nil
	}
	v := &weekAlarms{Title: p.alarmTitle(alarms)}
	for _, s := range spells(alarms) {
		v.Lines = append(v.Lines, p.spellWords(s))
	}
	return v
}

// alarmTitle is the finding: what was too warm or too cold, by name where it was one
// place.
func (p *page) alarmTitle(alarms []germination.Alarm) template.HTML {
	first := alarms[0]
	one, warm, cold := true, false, false
	for _, a := range alarms {
		one = one && a.Place == first.Place && a.House == first.House
		warm, cold = warm || a.High, cold || !a.High
	}
	where := template.HTML("Where batches stood it")
	if one {
		where = upper(p.placeName(first))
	}
	how := "too warm"
	switch {
	case warm && cold:
		how = "too warm and too cold"
	case cold:
		how = "too cold"
	}
	return say("%s was %s", where, how)
}
