package report

import (
	"math"

	"traybook/records"
	"traybook/report/batch"
	"traybook/report/room"
)

// How far ahead trays coming free are told, days, today counted, and trays left, Mondays
// (rule "Work due").
const (
	freeingDays = 14
	leftMondays = 8
)

// freeing adds up the trays that come free in the next days: emptied, by the plan
// or as long as the crop usually stands where that is not written, and washed.
func freeing(b *batch.Batches) []WeekLine {
	type when struct {
		date records.Date
		code string
	}
	soon := batch.Filter(sownBy(b), func(one *batch.Batch) bool {
		free := freeOn(b, one)
		return free >= b.Today && free < b.Today+freeingDays
	})
	days, standing := batch.GroupBy(soon, func(one *batch.Batch) when { return when{freeOn(b, one), one.Tray} })
	var lines []WeekLine
	for _, w := range days {
		lines = append(lines, WeekLine{What: Freeing, Date: w.date, Subject: w.code, Value: records.Known(traysOf(standing[w]))})
	}
	return lines
}

// sownBy are the batches sown by today.
func sownBy(b *batch.Batches) []*batch.Batch {
	return batch.Filter(b.List, func(one *batch.Batch) bool { return one.Sown <= b.Today })
}

// freeOn is the day on which a batch's trays are empty and washed.
func freeOn(b *batch.Batches, one *batch.Batch) records.Date {
	return likelyEnd(b, one) + records.Date(b.Settings.TrayTurnaround)
}

// likelyEnd is the end of a batch, of an open one the day it will likely leave: not one
// that is past.
func likelyEnd(b *batch.Batches, one *batch.Batch) records.Date {
	switch {
	case one.Ended():
		return one.End
	case one.Planned.Known():
		return max(one.Planned, b.Today)
	}
	return max(one.Sown+records.Date(b.Stays.Of(one.Crop).Median), b.Today)
}

func traysOf(batches []*batch.Batch) float64 {
	trays := 0.0
	for _, one := range batches {
		trays += one.Trays
	}
	return trays
}

// traysLeft says how many trays of each code are free on each of the coming Mondays, if
// nothing more is sown; below 0 where more are used than owned.
func traysLeft(b *batch.Batches) []WeekLine {
	yet := batch.Filter(sownBy(b), func(one *batch.Batch) bool { return freeOn(b, one) > b.Today }) // the first Monday is later
	_, split := batch.GroupBy(yet, func(one *batch.Batch) string { return one.Tray })
	var lines []WeekLine
	for _, code := range b.Codes.Sorted() {
		for week := range records.Date(leftMondays) {
			monday := nextMonday(b.Today) + 7*week
			owned := b.Codes[code].OwnedOn(monday)
			if !owned.Known {
				continue
			}
			used := traysOf(batch.Filter(split[code], func(one *batch.Batch) bool { return freeOn(b, one) > monday }))
			lines = append(lines, WeekLine{What: TraysLeft, Date: monday, Subject: code, Value: records.Known(unlessNoise(float64(owned.Value) - used))})
		}
	}
	return lines
}

// nextMonday is the first Monday after a day.
func nextMonday(d records.Date) records.Date {
	return d + 7 - records.Date((int(d.Time().Weekday())+6)%7)
}

// unlessNoise is a number, or 0 where it is noise of added parts of trays.
func unlessNoise(x float64) float64 {
	if math.Abs(x) < noise {
		return 0
	}
	return x
}

// roomLeft says what is left today on the benches and in the chambers.
func roomLeft(b *batch.Batches) []WeekLine {
	var lines []WeekLine
	for _, l := range room.Today(b) {
		lines = append(lines, WeekLine{What: RoomLeft, Date: b.Today, Subject: l.Place, Value: records.Known(unlessNoise(l.Left))})
	}
	return lines
}
