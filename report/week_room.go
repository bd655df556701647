package report

import (
	"traybook/records"
	"traybook/report/batch"
	"traybook/report/room"
)

// freeingDays is how far ahead trays coming free are told, today counted (rule
// "Work due").
const freeingDays = 14

// freeing adds up the trays that come free in the next days: emptied, by the plan
// or as long as the crop usually stands where that is not written, and washed.
func freeing(b *batch.Batches) []WeekLine {
	type when struct {
		date records.Date
		code string
	}
	days, standing := batch.GroupBy(b.List, func(one *batch.Batch) when {
		return when{likelyEnd(one, b.Stays) + records.Date(b.Settings.TrayTurnaround), one.Tray}
	})
	var lines []WeekLine
	for _, w := range days {
		if w.date < b.Today || w.date >= b.Today+freeingDays {
			continue
		}
		trays := 0.0
		for _, one := range standing[w] {
			trays += one.Trays
		}
		lines = append(lines, WeekLine{What: Freeing, Date: w.date, Subject: w.code, Value: records.Known(trays)})
	}
	return lines
}

// likelyEnd is the end of a batch, of an open one the day it will likely leave.
func likelyEnd(b *batch.Batch, stays batch.Stays) records.Date {
	switch {
	case b.Ended():
		return b.End
	case b.Planned.Known():
		return b.Planned
	}
	return b.Sown + records.Date(stays.Of(b.Crop).Median)
}

// roomLeft says what is left today on the benches and in the chambers.
func roomLeft(b *batch.Batches) []WeekLine {
	var lines []WeekLine
	for _, l := range room.Today(b) {
		lines = append(lines, WeekLine{What: RoomLeft, Date: b.Today, Subject: l.Place, Value: records.Known(l.Left)})
	}
	return lines
}
