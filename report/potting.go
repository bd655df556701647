package report

import (
	"cmp"
	"slices"

	"traybook/records"
)

// pottingOn hands the cost of batches that were potted on or pricked out to the
// batches that came of them (rules 25, 52). Batches are settled by sown, then
// batch, so that what was carried to a batch is carried on from it.
func (p *accounts) pottingOn() {
	potted := map[string]Num{}
	for _, o := range p.r.Book.Outs {
		if o.To == records.ToPottedOn {
			potted[o.Batch] = records.Known(potted[o.Batch].Value + float64(o.Plants))
		}
	}
	heirs := map[*Batch][]*Batch{}
	var givers []*Batch
	for _, b := range p.r.Batches {
		from := p.r.byCode[b.From]
		if b.From == "" || from == nil || b.Sown <= from.Sown {
			continue
		}
		if heirs[from] == nil {
			givers = append(givers, from)
		}
		heirs[from] = append(heirs[from], b)
	}
	slices.SortFunc(givers, func(a, b *Batch) int {
		return cmp.Or(cmp.Compare(a.Sown, b.Sown), cmp.Compare(a.Code, b.Code))
	})
	for _, from := range givers {
		handOn(from, heirs[from], potted[from.Code])
	}
}

// handOn carries a batch's cost to its heirs. Potted is the plants that its own
// rows say were potted on; without such rows the heirs' cells count.
func handOn(from *Batch, heirs []*Batch, potted Num) {
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
	given, total := share*from.Parts.Total(), sum(claims)
	if !(total > 0) {
		return
	}
	from.Parts.Carried -= given
	for i, heir := range heirs {
		heir.Parts.Carried += given * (claims[i] / total)
	}
}

// usableLeft is a batch's usable plants without those potted on (rule 52).
func (b *Batch) usableLeft() Num {
	if !b.Usable.Known {
		return Num{}
	}
	return records.Known(max(0, b.Usable.Value-b.PlantsMoved))
}
