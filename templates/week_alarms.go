package templates

import (
	"html/template"
	"slices"

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
	v := &weekAlarms{Title: alarmTitle(alarms)}
	for _, s := range spells(alarms) {
		v.Lines = append(v.Lines, p.spellWords(s))
	}
	return v
}

// alarmTitle is the finding; where it was, and when, the lines say.
func alarmTitle(alarms []germination.Alarm) template.HTML {
	warm := slices.ContainsFunc(alarms, func(a germination.Alarm) bool { return a.High })
	cold := slices.ContainsFunc(alarms, func(a germination.Alarm) bool { return !a.High })
	switch {
	case warm && cold:
		return "Too warm and too cold where batches stood"
	case cold:
		return "Too cold where batches stood"
	}
	return "Too warm where batches stood"
}
