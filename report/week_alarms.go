package report

import (
	"fmt"
	"strings"

	"traybook/records"
	"traybook/report/germination"
)

// alarmDays is how far back alarms are told, today counted (rule "Alarms").
const alarmDays = 14

// alarmLines are the alarms of the last days up to today, each with the batches that it
// touched.
func alarmLines(alarms []germination.Alarm, today records.Date) []WeekLine {
	var lines []WeekLine
	for i := range alarms {
		a := &alarms[i]
		if a.Date > today || a.Date <= today-alarmDays {
			continue
		}
		lines = append(lines, WeekLine{What: AlarmLine, Date: a.Date, Subject: a.Place, Value: records.Known(a.Value),
			Note: listed(a.Batches), Alarm: a})
	}
	return lines
}

// listed says how many batches, and which.
func listed(codes []string) string {
	if len(codes) == 1 {
		return "1 batch: " + codes[0]
	}
	return strings.TrimSuffix(fmt.Sprintf("%d batches: %s", len(codes), strings.Join(codes, ", ")), ": ")
}
