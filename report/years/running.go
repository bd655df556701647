package years

import (
	"traybook/records"
	"traybook/report/batch"
)

// runningSeason is the book's last season while it is today's and not finished, else 0
// (rule "A running season").
func runningSeason(b *batch.Batches) int {
	if len(b.Seasons) == 0 {
		return 0
	}
	last := b.Seasons[len(b.Seasons)-1]
	if last != b.Settings.Season(b.Today) || b.Finished(last) {
		return 0
	}
	return last
}

// upTo parts batches whose figure stood by a day from those whose figure did not; all
// stand where the day is unknown: no season runs. A measure without such a day has no
// comparison while a season runs: none stands.
func (c *comparison) upTo(day records.Date, all *pool) (stood *pool, later []entry) {
	if !day.Known() {
		return all, nil
	}
	in := func(e entry) bool { return c.stoodBy(e, day) }
	some := batch.Filter(all.entries, in)
	return &pool{like: all.like, entries: some, sum: sumOf(some)}, batch.Filter(all.entries, func(e entry) bool { return !in(e) })
}

func (c *comparison) stoodBy(e entry, day records.Date) bool {
	if c.stood == nil {
		return false
	}
	since := c.stood(e.Borne)
	return since.Known() && since <= day
}
