package germination

import (
	"cmp"
	"fmt"
	"slices"

	"traybook/records"
	"traybook/report/batch"
	"traybook/report/rate"
)

// weekKey is a row of the sowing weeks.
type weekKey struct {
	season     int
	crop, week string
}

// weeks returns what came up by crop and ISO week of sowing, with an interval by the
// crop's scatter, beside how warm it was (rule "Losses, weeks, chambers").
func weeks(in []*Counted, r readings, scatter rate.Scatter) []Week {
	names := map[records.Date]string{} // of the weeks, by day
	keys, groups := batch.GroupBy(in, func(c *Counted) weekKey {
		if names[c.Sown] == "" {
			names[c.Sown] = isoWeek(c.Sown)
		}
		return weekKey{c.Season, c.Crop, names[c.Sown]}
	})
	slices.SortFunc(keys, func(a, b weekKey) int {
		return cmp.Or(cmp.Compare(a.season, b.season), cmp.Compare(a.crop, b.crop), cmp.Compare(a.week, b.week))
	})
	table := slices.Grow([]Week(nil), len(keys))
	for _, k := range keys {
		w := Week{Season: k.season, Crop: k.crop, Week: k.week, Rate: scatter.Rate(k.crop, rate.Counts(groups[k], emergenceCount))}
		w.Temp, w.TempOf = r.around(groups[k])
		table = append(table, w)
	}
	return table
}

// isoWeek writes the ISO 8601 week of a date: 2025-W14. The year is the one that
// owns the week: the last days of December may belong to the next.
func isoWeek(d records.Date) string {
	year, week := d.Time().ISOWeek()
	return fmt.Sprintf("%04d-W%02d", year, week)
}

// around is the mean temperature over the 7 days from sowing, every batch
// counting once: over the batches with readings of their chamber, else over those
// with readings of the house.
func (r readings) around(batches []*Counted) (mean Num, of string) {
	var chamber, house temps
	for _, one := range batches {
		if m := r.inChamber(one).mean(); m.Known {
			chamber.add(m.Value)
		}
		if m := r.inHouse(one).mean(); m.Known {
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

// Monday is the first day of the week of sowing. The week that holds 4 January is a
// year's first (ISO 8601-1:2019, 3.1.1.23).
func (w Week) Monday() records.Date {
	var year, week int
	if _, err := fmt.Sscanf(w.Week, "%d-W%d", &year, &week); err != nil {
		return 0
	}
	fourth := records.NewDate(year, 1, 4)
	monday := fourth - records.Date((int(fourth.Time().Weekday())+6)%7)
	return monday + records.Date(7*(week-1))
}
