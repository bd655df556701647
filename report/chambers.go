package report

import (
	"cmp"
	"slices"

	"traybook/records"
	"traybook/report/trade"
)

// chamberKey is a row of the chambers.
type chamberKey struct {
	season  int
	chamber string
}

// chambers returns a row for every season and chamber with a batch from seed that
// was counted or with a reading; readings by their own date's season.
func (r *Report) chambers() []ChamberFigure {
	climate := r.climate()
	stood := filter(r.Batches, climate.stoodIn)
	_, groups := groupBy(stood, func(b *Batch) chamberKey { return chamberKey{b.Season, b.Chamber} })
	days := map[chamberKey][]placeDay{}
	for _, b := range stood {
		b.warmed = climate.inChamber(b).n > 0
	}
	for k := range climate.chamber {
		key := chamberKey{r.Book.Settings.Season(k.date), k.chamber}
		days[key] = append(days[key], k)
	}
	keys := map[chamberKey]bool{}
	for k := range days {
		keys[k] = true
	}
	for k := range groups {
		keys[k] = true
	}
	var table []ChamberFigure
	for k := range keys {
		table = append(table, r.chamber(k, groups[k], days[k], climate))
	}
	slices.SortFunc(table, func(a, b ChamberFigure) int {
		return cmp.Or(cmp.Compare(a.Season, b.Season), cmp.Compare(a.Chamber, b.Chamber))
	})
	return table
}

func (r *Report) chamber(k chamberKey, batches []*Batch, days []placeDay, c climate) ChamberFigure {
	f := ChamberFigure{Season: k.season, Chamber: k.chamber}
	f.Rate = poolShare(countsOf(filter(batches, (*Batch).entersEmergence), emergenceCount))
	slices.SortFunc(days, func(a, b placeDay) int { return cmp.Compare(a.date, b.date) })
	var t temps
	for _, day := range days {
		for _, temp := range c.chamber[day] {
			t.add(temp)
		}
	}
	f.Readings, f.MeanTemp = t.n, t.mean()
	f.LowTemp, f.HighTemp = Num{Value: t.low, Known: t.n > 0}, Num{Value: t.high, Known: t.n > 0}
	f.DaysIn = daysIn(batches)
	crops, byCrop := groupBy(batches, func(b *Batch) string { return b.Crop })
	slices.Sort(crops)
	for _, crop := range crops {
		f.Crops = append(f.Crops, chamberCrop(crop, byCrop[crop], c))
	}
	return f
}

// daysIn is the median stay in the chamber of the batches of which its end is written.
func daysIn(batches []*Batch) Num {
	var days []float64
	for _, b := range batches {
		if b.ChamberOut.Known() {
			days = append(days, float64(max(b.ChamberOut-b.Sown, 0)))
		}
	}
	return median(days)
}

// chamberCrop sets the readings while a crop's batches stood in the chamber beside
// the crop's usual range; each reading once, however many batches stood there.
func chamberCrop(crop string, batches []*Batch, c climate) ChamberCrop {
	f := ChamberCrop{Crop: crop, Batches: len(batches)}
	facts, usual := trade.Crop(crop)
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

// longestInChamber bounds the days looked up for a mistyped date.
const longestInChamber = 60

// daysInside lists the days on which any of the batches is known to have stood in
// its chamber.
func daysInside(batches []*Batch) []placeDay {
	seen := map[placeDay]bool{}
	var days []placeDay
	for _, b := range batches {
		for d := b.Sown; b.ChamberOut.Known() && d <= min(b.ChamberOut, b.Sown+longestInChamber); d++ {
			if k := (placeDay{b.Chamber, d}); !seen[k] {
				seen[k] = true
				days = append(days, k)
			}
		}
	}
	slices.SortFunc(days, func(a, b placeDay) int {
		return cmp.Or(cmp.Compare(a.date, b.date), cmp.Compare(a.chamber, b.chamber))
	})
	return days
}
