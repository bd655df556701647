package germination

import (
	"cmp"
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

// chambers returns a row for every season and chamber with a name in which a batch
// stood, and for every one with a reading; readings by their own date's season (rule
// "Losses, weeks, chambers").
func chambers(all []*Counted, r readings, settings records.Settings) []Chamber {
	stood := batch.Filter(all, func(c *Counted) bool { return c.ChamberUntil.Known() })
	keys, _ := batch.GroupBy(batch.Filter(stood, (*Counted).inNamed), chamberKeyOf)
	_, in := batch.GroupBy(stood, chamberKeyOf)
	days := map[chamberKey][]dayRead{}
	for chamber, read := range r.chamber {
		seasons, split := batch.GroupBy(read, func(d dayRead) int { return settings.Season(d.date) })
		for _, season := range seasons {
			k := chamberKey{season, chamber}
			keys, days[k] = append(keys, k), split[season]
		}
	}
	slices.SortFunc(keys, byChamber)
	var table []Chamber
	for _, k := range slices.Compact(keys) {
		table = append(table, r.figure(k, in[k], days[k]))
	}
	return table
}

// inNamed reports whether the batch stood in a chamber with a name.
func (c *Counted) inNamed() bool { return c.Chamber != "" }

// figure is one row: its batches, and its readings of days, in their order.
func (r readings) figure(k chamberKey, batches []*Counted, days []dayRead) Chamber {
	f := Chamber{Season: k.season, Chamber: k.chamber, DaysIn: daysIn(batches)}
	entered := batch.Filter(batches, func(c *Counted) bool { return c.EntersEmergence() && c.inNamed() })
	f.Rate = rate.Pool(rate.Counts(entered, emergenceCount))
	var t temps
	for _, day := range days {
		for _, temp := range day.temps {
			t.add(temp)
		}
	}
	f.Readings, f.MeanTemp = t.n, t.mean()
	f.LowTemp, f.HighTemp = Num{Value: t.low, Known: t.n > 0}, Num{Value: t.high, Known: t.n > 0}
	names, byCrop := batch.GroupBy(batches, cropOf)
	slices.Sort(names)
	for _, crop := range names {
		f.Crops = append(f.Crops, r.crop(crop, byCrop[crop]))
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

// crop sets the readings while a crop's batches, of one chamber, stood in it beside the
// temperatures at which the crop comes up well; each reading once, however many batches
// stood there.
func (r readings) crop(name string, batches []*Counted) ChamberCrop {
	f := ChamberCrop{Crop: name, Batches: len(batches)}
	facts, known := trade.Crop(name)
	low, high := facts.Usual()
	if known {
		f.UsualLow, f.UsualHigh = records.Known(low), records.Known(high)
	}
	var t temps
	outside := 0
	for _, temp := range r.whileInside(batches) {
		t.add(temp)
		if temp < low-rate.Equal || temp > high+rate.Equal {
			outside++
		}
	}
	f.MeanTemp = t.mean()
	if known && t.n > 0 {
		f.Outside = records.Known(float64(outside) / float64(t.n))
	}
	return f
}

// whileInside is the readings, by day, of the days on which any of the batches, which
// share a chamber, stood in it (rule "Chamber stays").
func (r readings) whileInside(batches []*Counted) []float64 {
	stays := staysOf(batches, (*Counted).inChamberDays)
	var temps []float64
	for _, day := range r.between(batches[0].Chamber, stays.first(), stays.last()) {
		if len(stays.on(day.date)) > 0 {
			temps = append(temps, day.temps...)
		}
	}
	return temps
}
