package report

import (
	"slices"

	"traybook/records"
)

// dayRates spreads rows with a period. A row becomes money a tray on each day (or a
// tray sown, a plant gone out, that day), and at last each batch takes what its
// own days hold: a row costs its days, not days times batches.
type dayRates struct {
	p     *accounts
	first records.Date // day 0 of the slices
	cold  map[records.Date]float64
	// By day: trays standing, trays sown, usable plants of batches that ended.
	stood, sown, usable []float64
	perTray             map[records.Category][]float64
	perSown, perPlant   []float64
}

// newHouse says what stood on each day and which days each row covers.
func (p *accounts) newHouse(rows []costRow) *dayRates {
	p.setPeriods(rows)
	h := &dayRates{p: p, cold: outdoors(p.r.Book.House), perTray: map[records.Category][]float64{}}
	last := records.Date(0)
	for _, b := range p.r.Batches {
		if h.first == 0 || b.Sown < h.first {
			h.first = b.Sown
		}
		last = max(last, b.Sown, b.End)
	}
	for _, days := range []*[]float64{&h.stood, &h.sown, &h.usable, &h.perSown, &h.perPlant} {
		*days = make([]float64, max(0, last-h.first+1))
	}
	for _, b := range p.r.Batches {
		h.enter(b)
	}
	return h
}

// enter puts a batch on the days it stood. Adding day by day keeps an empty day
// exactly empty, whatever parts of trays came and went.
func (h *dayRates) enter(b *Batch) {
	h.sown[b.Sown-h.first] += b.Trays
	for d := b.Sown; d < b.End; d++ {
		h.stood[d-h.first] += b.Trays
	}
	if b.Ended() && b.End >= h.first {
		h.usable[b.End-h.first] += b.Usable.Or(0)
	}
}

// spread shares a row out; false where nothing stood (was sown, ended) in its
// period (rule 45).
func (h *dayRates) spread(row *costRow) bool {
	days := h.within(row.start, row.end)
	switch {
	case row.Category == records.Heat:
		return h.heat(row)
	case row.task() == records.SowingTask:
		return rate(h.perSown, h.sown, days, row.amount)
	case row.task() == records.OutTask:
		return rate(h.perPlant, h.usable, days, row.amount) || h.failed(row)
	}
	return rate(h.of(row.Category), h.stood, days, row.amount)
}

// failed spreads labour of setting out over the batches that ended in its period
// without a usable plant: by their tray-days in it, else by trays.
func (h *dayRates) failed(row *costRow) bool {
	var ended []*Batch
	for _, b := range h.p.r.Batches {
		if b.Ended() && b.End >= row.start && b.End <= row.end {
			ended = append(ended, b)
		}
	}
	inPeriod := func(b *Batch) float64 { return b.Trays * float64(max(0, b.End-max(b.Sown, row.start))) }
	return h.p.split(row, ended, inPeriod) || h.p.split(row, ended, byTrays)
}

// of is the money a tray and day of a category.
func (h *dayRates) of(c records.Category) []float64 {
	if h.perTray[c] == nil {
		h.perTray[c] = make([]float64, len(h.stood))
	}
	return h.perTray[c]
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

// rate adds an amount, split by what each day holds, as money for one of it.
func rate(per, holds []float64, days span, amount float64) bool {
	total := sum(holds[days.from:days.to])
	if !(total > 0) {
		return false
	}
	for d := days.from; d < days.to; d++ {
		per[d] += amount / total
	}
	return true
}

func sum(xs []float64) float64 {
	total := 0.0
	for _, x := range xs {
		total += x
	}
	return total
}

// heat spreads a heating bill by tray-days, each day weighted by how cold it was
// where the log has every day's outdoor low and high; where that leaves no
// weight, by tray-days alone, of the heated days, else of the period (rules 22, 50).
func (h *dayRates) heat(row *costRow) bool {
	days := heatDays(h.p.r.Book.Settings, row.start, row.end)
	measured := !slices.ContainsFunc(days, func(d records.Date) bool { _, known := h.cold[d]; return !known })
	if measured && h.heatBy(row, days, func(d records.Date) float64 { return h.cold[d] }) {
		return true
	}
	if h.heatBy(row, days, func(records.Date) float64 { return 1 }) {
		return true
	}
	return rate(h.of(records.Heat), h.stood, h.within(row.start, row.end), row.amount)
}

func (h *dayRates) heatBy(row *costRow, days []records.Date, cold func(records.Date) float64) bool {
	total := 0.0
	inside := func(d records.Date) bool { return h.first != 0 && d >= h.first && int(d-h.first) < len(h.stood) }
	for _, d := range days {
		if inside(d) {
			total += h.stood[d-h.first] * cold(d)
		}
	}
	if !(total > 0) {
		return false
	}
	per := h.of(records.Heat)
	for _, d := range days {
		if inside(d) {
			per[d-h.first] += row.amount * cold(d) / total
		}
	}
	return true
}

// overStay adds up the days that a batch stood.
func (h *dayRates) overStay(b *Batch, per []float64) float64 {
	if b.End <= b.Sown {
		return 0
	}
	return sum(per[b.Sown-h.first : b.End-h.first])
}

// settle lets every batch bear what its days hold.
func (h *dayRates) settle() {
	for _, b := range h.p.r.Batches {
		for c, per := range h.perTray {
			b.Parts.bear(c, b.Trays*h.overStay(b, per))
		}
		sowing := h.perSown[b.Sown-h.first] * b.Trays
		h.p.sowing[b] += sowing
		b.Parts.Labour += sowing
		if b.Ended() && b.End >= h.first {
			b.Parts.Labour += h.perPlant[b.End-h.first] * b.Usable.Or(0)
		}
	}
}
