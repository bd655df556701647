package money

import (
	"slices"

	"traybook/records"
	"traybook/report/batch"
)

// dayRates spreads rows with a period. A row becomes money a tray on each day (or a
// tray sown, a plant gone out, that day), and at last each batch takes what its
// own days hold: a row costs its days, not days times batches.
type dayRates struct {
	*accounts
	first records.Date // day 0 of the slices
	many  bool         // rows times days are more than are added one by one (share.go)
	// By day: trays standing, trays sown, usable plants of batches that ended, their trays; 1.
	stood, sown, usable, ended, ones []float64
	looked                           int // batches, for rows that failed ones bear
	// By day: money for one of each; perTray by category.
	perTray           map[Category][]tally
	perSown, perPlant []tally
	perEnded          []tally // a tray of batches that ended
	shares            map[shareKey]*share
	opened            []*share // the same, as they were begun
	*heated
}

// newDayRates says what stood on each day. rows are those to be spread, among others.
func newDayRates(a *accounts, rows []*costRow) *dayRates {
	h := &dayRates{accounts: a, perTray: map[Category][]tally{}, shares: map[shareKey]*share{}, heated: newHeated(a, rows)}
	last := records.Date(0)
	for _, b := range h.borne {
		if h.first == 0 || b.Sown < h.first {
			h.first = b.Sown
		}
		last = max(last, b.Sown, b.End)
	}
	days := max(0, last-h.first+1)
	h.stood, h.sown, h.usable = make([]float64, days), make([]float64, days), make([]float64, days)
	h.ended, h.ones = make([]float64, days), slices.Repeat([]float64{1}, int(days))
	h.perSown, h.perPlant, h.perEnded = make([]tally, days), make([]tally, days), make([]tally, days)
	for _, b := range h.borne {
		h.enter(b)
	}
	h.many = h.rowDays(rows) > a.mostPlain
	return h
}

// rowDays is how many days all rows with a period have together, of those in the slices.
func (h *dayRates) rowDays(rows []*costRow) (all int) {
	for _, row := range rows {
		if row.Shared() && periodical(row.Category) {
			days := h.within(row.start, row.end)
			all += days.to - days.from
		}
	}
	return all
}

// enter puts a batch on the days it stood. Adding day by day keeps an empty day
// exactly empty, whatever parts of trays came and went.
func (h *dayRates) enter(b *Borne) {
	h.sown[b.Sown-h.first] += b.Trays
	for d := b.Sown; d < b.End; d++ {
		h.stood[d-h.first] += b.Trays
	}
	if b.Ended() && b.End >= h.first {
		h.usable[b.End-h.first] += b.Usable.Or(0)
		h.ended[b.End-h.first] += b.Trays
	}
}

// spread shares a row out; false where nothing stood (was sown, ended) in its period.
func (h *dayRates) spread(row *costRow) bool {
	days := h.within(row.start, row.end)
	switch {
	case row.Category == records.Heat:
		return h.heat(row)
	case row.task() == records.SowingTask:
		return h.share(shareKey{row.Category, bySown}).spread(days, row.amount)
	case row.task() == records.OutTask:
		return h.share(shareKey{row.Category, byPlants}).spread(days, row.amount) || h.failed(row)
	}
	return h.share(shareKey{row.Category, byStood}).spread(days, row.amount)
}

// failed spreads labour of setting out over the batches that ended in its period
// without a usable plant: by their tray-days in it, else by trays. Each such row looks at
// all batches; beyond mostFailed, days tell what ended on them, and their trays count.
func (h *dayRates) failed(row *costRow) bool {
	if h.looked += len(h.borne); h.looked > h.mostFailed {
		return h.share(shareKey{row.Category, byEnded}).spread(h.within(row.start, row.end), row.amount)
	}
	ended := batch.Filter(h.borne, func(b *Borne) bool { return b.Ended() && b.End >= row.start && b.End <= row.end })
	inPeriod := func(b *Borne) float64 { return b.Trays * float64(max(0, b.End-max(b.Sown, row.start))) }
	return h.split(row, ended, inPeriod) || h.split(row, ended, byTrays)
}

// span is a range of days of the slices, to not included.
type span struct{ from, to int }

// within cuts a period to the days on which anything happened.
func (h *dayRates) within(start, end records.Date) span {
	s := span{int(max(start-h.first, 0)), int(min(end-h.first+1, records.Date(len(h.stood))))}
	if s.to < s.from || h.first == 0 {
		return span{}
	}
	return s
}

func sum(xs []float64) float64 {
	total := 0.0
	for _, x := range xs {
		total += x
	}
	return total
}

// settle lets every batch bear what its days hold.
func (h *dayRates) settle() {
	for _, s := range h.opened {
		s.close()
	}
	for c, per := range h.perTray { // each category goes to a part of its own
		place := placeOf(c)
		for _, b := range h.borne {
			h.bearDays(b, place, h.overStay(b, per), b.Trays)
		}
	}
	labour := placeOf(records.Labour)
	for _, b := range h.borne {
		sowing := h.perSown[b.Sown-h.first]
		h.bearDays(b, labour, sowing, b.Trays)
		h.sums[b.Nth].sowing.join(sowing, b.Trays)
		if b.Ended() && b.End >= h.first {
			h.bearDays(b, labour, h.perPlant[b.End-h.first], b.Usable.Or(0))
			h.bearDays(b, labour, h.perEnded[b.End-h.first], b.Trays)
		}
	}
}

// overStay adds up the days that a batch stood.
func (h *dayRates) overStay(b *Borne, per []tally) tally {
	if b.End <= b.Sown {
		return tally{}
	}
	return total(per[b.Sown-h.first : b.End-h.first])
}
