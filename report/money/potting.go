package money

import (
	"cmp"
	"slices"

	"traybook/records"
	"traybook/report/batch"
)

// pottingOn hands the cost of batches that were potted on or pricked out to the
// batches that came of them (rule "Potting on"). Batches are settled by sown, then
// batch, so that what was carried to a batch is carried on from it.
func (a *accounts) pottingOn() {
	potted := a.pottedOn()
	givers, heirs := batch.GroupBy(batch.Filter(a.borne, a.cameOf), func(b *Borne) *Borne { return a.of(b.From) })
	slices.SortFunc(givers, func(x, y *Borne) int {
		return cmp.Or(cmp.Compare(x.Sown, y.Sown), cmp.Compare(x.Code, y.Code))
	})
	for _, from := range givers {
		a.handOn(from, heirs[from], potted[from.Code])
	}
}

// pottedOn returns the plants that rows of out.csv say were potted on, by batch.
func (a *accounts) pottedOn() map[string]Num {
	potted := map[string]Num{}
	for _, o := range a.book.Outs {
		if o.To == records.ToPottedOn {
			potted[o.Batch] = records.Known(potted[o.Batch].Value + float64(o.Plants))
		}
	}
	return potted
}

// cameOf reports whether a batch came of another, sown before it.
func (a *accounts) cameOf(b *Borne) bool {
	if b.From == "" {
		return false
	}
	from := a.of(b.From)
	return from != nil && b.Sown > from.Sown
}

// handOn carries a batch's cost to its heirs. Potted is the plants that its own
// rows say were potted on; without such rows the heirs' cells count.
func (a *accounts) handOn(from *Borne, heirs []*Borne, potted Num) {
	cells, trays := make([]float64, len(heirs)), make([]float64, len(heirs))
	for i, b := range heirs {
		cells[i], trays[i] = float64(b.CellsSown.Or(0)), b.Trays
	}
	claims := cells
	if sum(cells) == 0 {
		claims = trays
	}
	from.PlantsMoved = potted.Or(sum(cells))
	share := 1.0
	if usable := from.Usable.Or(0); usable > 0 {
		share = min(1, from.PlantsMoved/usable)
	}
	given, all := share*from.Parts.Total(), sum(claims)
	if !(all > 0) {
		return
	}
	a.carry(from, -given)
	for i, heir := range heirs {
		a.carry(heir, given*(claims[i]/all))
	}
}

// carry lets a batch take cost over, or, below 0, hand it on.
func (a *accounts) carry(b *Borne, amount float64) {
	of := &a.sums[b.Nth].carried
	of.add(amount)
	b.Parts.Carried = of.value()
}

// UsableLeft is a batch's usable plants without those potted on (rule "Potting on").
func (b *Borne) UsableLeft() Num {
	if !b.Usable.Known {
		return Num{}
	}
	return records.Known(max(0, b.Usable.Value-b.PlantsMoved))
}
