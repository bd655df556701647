package germination

import (
	"cmp"
	"slices"

	"traybook/records"
	"traybook/report/batch"
	"traybook/report/rate"
	"traybook/report/trade"
)

// tooHot and tooCold are the limits, Celsius, of the house, and tooHot of a chamber where
// the trade table knows no crop in it; common practice, no source.
const (
	tooHot  = 40
	tooCold = 1
)

// The places of alarms that have no name of their own.
const (
	HousePlace   = "house"
	chamberPlace = "chamber"
)

// alarms lists the days on which it was too warm or too cold where batches stood, a day
// and place each (rule "Alarms").
func alarms(all []*Counted, book *records.Book, r readings) []Alarm {
	list := append(chamberAlarms(all, r), houseAlarms(all, book.House)...)
	for i := range list {
		list[i].Season = book.Settings.Season(list[i].Date)
	}
	slices.SortFunc(list, func(a, b Alarm) int {
		return cmp.Or(cmp.Compare(a.Date, b.Date), cmp.Compare(a.Place, b.Place), cmp.Compare(a.Chamber, b.Chamber))
	})
	return list
}

// chamberAlarms looks at the warmest reading of each day on which a batch stood in the
// chamber.
func chamberAlarms(all []*Counted, r readings) []Alarm {
	_, in := batch.GroupBy(all, func(c *Counted) string { return c.Chamber })
	limit := limitsOf(all)
	var list []Alarm
	for chamber, days := range r.chamber {
		stays := staysOf(in[chamber], (*Counted).inChamberDays)
		for _, day := range days {
			stood, warmest := stays.on(day.date), day.temps[len(day.temps)-1]
			if lowest := limit.lowest(stood); len(stood) > 0 && warmest > lowest+rate.Equal {
				list = append(list, Alarm{Date: day.date, Place: cmp.Or(chamber, chamberPlace), Chamber: chamber,
					Value: warmest, Limit: lowest, High: true, Batches: codesOf(stood, limit.tooHotAt(warmest))})
			}
		}
	}
	return list
}

// limits is by crop the temperature above which little of it comes up, where known.
type limits map[string]Num

func limitsOf(all []*Counted) limits {
	crops, _ := batch.GroupBy(all, cropOf)
	by := limits{}
	for _, crop := range crops {
		facts, known := trade.Crop(crop)
		by[crop] = Num{Value: facts.GermMaxC, Known: known}
	}
	return by
}

// lowest is that of the crops of the batches.
func (l limits) lowest(stood []stay) float64 {
	lowest := Num{}
	for _, c := range stood {
		if limit := l[c.Crop]; limit.Known && (!lowest.Known || limit.Value < lowest.Value) {
			lowest = limit
		}
	}
	return lowest.Or(tooHot)
}

// tooHotAt tells the batches whose crop suffers at a temperature.
func (l limits) tooHotAt(temp float64) func(*Counted) bool {
	return func(c *Counted) bool { return temp > l[c.Crop].Or(tooHot)+rate.Equal }
}

// houseAlarms looks at the lowest low and the highest high of each day in the house. A
// night of frost outranks a day of heat.
func houseAlarms(all []*Counted, rows []records.HouseReading) []Alarm {
	days, of := batch.GroupBy(rows, func(row records.HouseReading) records.Date { return row.Date })
	slices.Sort(days)
	stays := staysOf(all, (*Counted).inHouseDays)
	var list []Alarm
	for _, day := range days {
		if a := houseAlarm(of[day]); a.Limit > 0 {
			a.Date, a.Place, a.House = day, HousePlace, true
			a.Batches = codesOf(stays.on(day), func(*Counted) bool { return true })
			list = append(list, a)
		}
	}
	return list
}

// houseAlarm is what was wrong on a day in the house; without a limit nothing was.
func houseAlarm(rows []records.HouseReading) Alarm {
	var lows, highs temps
	for _, row := range rows {
		addKnown(&lows, row.Low)
		addKnown(&highs, row.High)
	}
	switch {
	case lows.n > 0 && lows.low < tooCold-rate.Equal:
		return Alarm{Value: lows.low, Limit: tooCold}
	case highs.n > 0 && highs.high > tooHot+rate.Equal:
		return Alarm{Value: highs.high, Limit: tooHot, High: true}
	}
	return Alarm{}
}

func addKnown(t *temps, temp Num) {
	if temp.Known {
		t.add(temp.Value)
	}
}
