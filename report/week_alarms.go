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

// mostListed is how many batches a note names; how many there are in all it always says.
const mostListed = 30

// listed says how many batches, and which.
func listed(codes []string) string {
	if len(codes) == 1 {
		return "1 batch: " + codes[0]
	}
	named := strings.Join(codes[:min(len(codes), mostListed)], ", ")
	if more := len(codes) - mostListed; more > 0 {
		named += fmt.Sprintf(" and %d more", more)
	}
	return strings.TrimSuffix(fmt.Sprintf("%d batches: %s", len(codes), named), ": ")
}
