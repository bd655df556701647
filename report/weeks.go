package report

import (
	"cmp"
	"fmt"
	"slices"

	"traybook/records"
)

// weekKey is a row of the sowing weeks.
type weekKey struct {
	season     int
	crop, week string
}

// weeks returns what came up by crop and ISO week of sowing, beside how warm it was.
func (r *Report) weeks(counted []*Batch) []SowingWeek {
	keys, groups := groupBy(counted, func(b *Batch) weekKey { return weekKey{b.Season, b.Crop, isoWeek(b.Sown)} })
	slices.SortFunc(keys, func(a, b weekKey) int {
		return cmp.Or(cmp.Compare(a.season, b.season), cmp.Compare(a.crop, b.crop), cmp.Compare(a.week, b.week))
	})
	climate := r.climate()
	var table []SowingWeek
	for _, k := range keys {
		w := SowingWeek{Season: k.season, Crop: k.crop, Week: k.week, Rate: poolShare(countsOf(groups[k], emergenceCount))}
		w.Temp, w.TempOf = climate.around(groups[k])
		table = append(table, w)
	}
	return table
}

// isoWeek writes the ISO 8601 week of a date: 2025-W14.
func isoWeek(d records.Date) string {
	year, week := d.Time().ISOWeek()
	return fmt.Sprintf("%04d-W%02d", year, week)
}

// germinationDays is how long after sowing the temperature beside a sowing is read.
const germinationDays = 7

// around is the mean temperature from sowing until 7 days after: over the batches
// with readings of their chamber, else over those with readings of the house.
func (c climate) around(batches []*Batch) (mean Num, of string) {
	var chamber, house temps
	for _, b := range batches {
		if m := c.inChamber(b).mean(); m.Known {
			chamber.add(m.Value)
		}
		var days temps
		for d := b.Sown; d <= b.Sown+germinationDays; d++ {
			if temp, known := c.house[d]; known {
				days.add(temp)
			}
		}
		if m := days.mean(); m.Known {
			house.add(m.Value)
		}
	}
	switch {
	case chamber.n > 0:
		return chamber.mean(), "chamber"
	case house.n > 0:
		return house.mean(), "house"
	}
	return Num{}, ""
}

// inChamber is the readings of a batch's chamber while it stood there.
func (c climate) inChamber(b *Batch) temps {
	var t temps
	if !c.stoodIn(b) {
		return t
	}
	until := b.Sown + germinationDays
	if b.ChamberOut.Known() {
		until = min(until, b.ChamberOut)
	}
	for d := b.Sown; d <= until; d++ {
		for _, temp := range c.chamber[placeDay{b.Chamber, d}] {
			t.add(temp)
		}
	}
	return t
}
