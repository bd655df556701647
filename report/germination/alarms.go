package germination

import (
	"cmp"
	"maps"
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
	var list []Alarm
	for _, day := range slices.SortedFunc(maps.Keys(r.chamber), byDay) {
		stood := batch.Filter(in[day.chamber], func(c *Counted) bool { return c.inChamberOn(day.date) })
		warmest, limit := slices.Max(r.chamber[day]), hottest(stood)
		if len(stood) > 0 && warmest > limit+rate.Equal {
			list = append(list, Alarm{Date: day.date, Place: cmp.Or(day.chamber, chamberPlace), Chamber: day.chamber,
				Value: warmest, Limit: limit, High: true, Batches: codes(batch.Filter(stood, tooHotAt(warmest)))})
		}
	}
	return list
}

// inChamberOn reports whether the batch stood in its chamber on a day; a chamber_out
// after its end is a mistype.
func (c *Counted) inChamberOn(d records.Date) bool { return c.InChamber(d) && c.stands(d) }

// stands reports whether the batch stood on a day; an open one has no end yet.
func (c *Counted) stands(d records.Date) bool { return c.Sown <= d && (!c.Ended() || d < c.End) }

// limitOf is the temperature above which little of a crop comes up, where known.
func limitOf(crop string) Num {
	facts, known := trade.Crop(crop)
	return Num{Value: facts.GermMaxC, Known: known}
}

// hottest is the lowest limit of the crops of the batches.
func hottest(batches []*Counted) float64 {
	var limits []float64
	for _, c := range batches {
		if limit := limitOf(c.Crop); limit.Known {
			limits = append(limits, limit.Value)
		}
	}
	if len(limits) == 0 {
		return tooHot
	}
	return slices.Min(limits)
}

// tooHotAt tells the batches whose crop suffers at a temperature.
func tooHotAt(temp float64) func(*Counted) bool {
	return func(c *Counted) bool { return temp > limitOf(c.Crop).Or(tooHot)+rate.Equal }
}

// houseAlarms looks at the lowest low and the highest high of each day in the house. A
// night of frost outranks a day of heat.
func houseAlarms(all []*Counted, rows []records.HouseReading) []Alarm {
	days, of := batch.GroupBy(rows, func(row records.HouseReading) records.Date { return row.Date })
	var list []Alarm
	for _, day := range days {
		var lows, highs temps
		for _, row := range of[day] {
			addKnown(&lows, row.Low)
			addKnown(&highs, row.High)
		}
		a := Alarm{Date: day, Place: HousePlace, House: true, Value: highs.high, Limit: tooHot, High: true}
		switch {
		case lows.n > 0 && lows.low < tooCold-rate.Equal:
			a.Value, a.Limit, a.High = lows.low, tooCold, false
		case highs.n == 0 || highs.high <= tooHot+rate.Equal:
			continue
		}
		a.Batches = codes(batch.Filter(all, func(c *Counted) bool { return c.stands(day) && !c.InChamber(day) }))
		list = append(list, a)
	}
	return list
}

func addKnown(t *temps, temp Num) {
	if temp.Known {
		t.add(temp.Value)
	}
}

// codes lists the batches by code.
func codes(batches []*Counted) []string {
	var list []string
	for _, c := range batches {
		list = append(list, c.Code)
	}
	return list
}
