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

// chamberKey is a row of the chambers.
type chamberKey struct {
	season  int
	chamber string
}

func chamberKeyOf(c *Counted) chamberKey { return chamberKey{c.Season, c.Chamber} }

func byChamber(a, b chamberKey) int {
	return cmp.Or(cmp.Compare(a.season, b.season), cmp.Compare(a.chamber, b.chamber))
}

func byDay(a, b chamberDay) int {
	return cmp.Or(cmp.Compare(a.date, b.date), cmp.Compare(a.chamber, b.chamber))
}

// chambers returns a row for every season and chamber in which a batch stood or with
// a reading; readings by their own date's season (rule "Losses, weeks, chambers").
func chambers(all []*Counted, c climate, settings records.Settings) []Chamber {
	keys, stood := batch.GroupBy(batch.Filter(all, c.stoodIn), chamberKeyOf)
	read, days := batch.GroupBy(slices.SortedFunc(maps.Keys(c.chamber), byDay), func(d chamberDay) chamberKey {
		return chamberKey{settings.Season(d.date), d.chamber}
	})
	keys = append(keys, read...)
	slices.SortFunc(keys, byChamber)
	var table []Chamber
	for _, k := range slices.Compact(keys) {
		table = append(table, c.figure(k, stood[k], days[k]))
	}
	return table
}

// figure is one row: its batches, and its readings of days, in their order.
func (c climate) figure(k chamberKey, batches []*Counted, days []chamberDay) Chamber {
	f := Chamber{Season: k.season, Chamber: k.chamber, DaysIn: daysIn(batches)}
	f.Rate = rate.Pool(rate.Counts(batch.Filter(batches, (*Counted).EntersEmergence), emergenceCount))
	var t temps
	for _, day := range days {
		for _, temp := range c.chamber[day] {
			t.add(temp)
		}
	}
	f.Readings, f.MeanTemp = t.n, t.mean()
	f.LowTemp, f.HighTemp = Num{Value: t.low, Known: t.n > 0}, Num{Value: t.high, Known: t.n > 0}
	names, byCrop := batch.GroupBy(batches, cropOf)
	slices.Sort(names)
	for _, crop := range names {
		f.Crops = append(f.Crops, c.crop(crop, byCrop[crop]))
	}
	return f
}

// daysIn is the median stay in the chamber, days, of the batches of which its end is
// written.
func daysIn(batches []*Counted) Num {
	var days []float64
	for _, one := range batches {
		if one.ChamberOut.Known() {
			days = append(days, float64(max(one.ChamberOut-one.Sown, 0)))
		}
	}
	return rate.Median(days)
}

// crop sets the readings while a crop's batches stood in the chamber beside the
// crop's usual range, both ends of which are usual; each reading once, however many
// batches stood there.
func (c climate) crop(name string, batches []*Counted) ChamberCrop {
	f := ChamberCrop{Crop: name, Batches: len(batches)}
	facts, usual := trade.Crop(name)
	if usual {
		f.UsualLow, f.UsualHigh = records.Known(facts.ChamberLowC), records.Known(facts.ChamberHighC)
	}
	var t temps
	outside := 0
	for _, day := range daysInside(batches) {
		for _, temp := range c.chamber[day] {
			t.add(temp)
			if temp < facts.ChamberLowC || temp > facts.ChamberHighC {
				outside++
			}
		}
	}
	f.MeanTemp = t.mean()
	if usual && t.n > 0 {
		f.Outside = records.Known(float64(outside) / float64(t.n))
	}
	return f
}

// longestInChamber bounds the days looked up, for a mistyped date.
const longestInChamber = 60

// daysInside lists, in order, the days on which any of the batches is known to have
// stood in its chamber, the day of leaving counted.
func daysInside(batches []*Counted) []chamberDay {
	var days []chamberDay
	for _, one := range batches {
		for d := one.Sown; one.ChamberOut.Known() && d <= min(one.ChamberOut, one.Sown+longestInChamber); d++ {
			days = append(days, chamberDay{one.Chamber, d})
		}
	}
	slices.SortFunc(days, byDay)
	return slices.Compact(days)
}
