package templates

import (
	"slices"

	"traybook/records"
	"traybook/report/batch"
	"traybook/report/words"
)

// changesTable is what the farm did differently, beside each season; never a cause. A
// change stands under the season in which it began, with its end where it has one.
func (p *page) changesTable() *table {
	t := p.table("changes", "What was done differently, as written in changes.csv. That it was the cause, the records cannot say.", "", plain("Season", "From", "Until", "What"))
	for _, c := range p.changesOf(0) {
		until := words.None
		if c.Until.Known() {
			until = words.ISODate(c.Until)
		}
		t.add(words.Year(p.r.Book.Settings.Season(c.Date)), words.ISODate(c.Date), until, prose(name(c.What)))
	}
	return t
}

// changesOf are the changes of a season, of all for 0, by date.
func (p *page) changesOf(season int) []records.Change {
	all := batch.Filter(p.r.Book.Changes, func(c records.Change) bool { return season == 0 || p.r.Book.Settings.Season(c.Date) == season })
	slices.SortStableFunc(all, func(a, b records.Change) int { return int(a.Date - b.Date) })
	return all
}
