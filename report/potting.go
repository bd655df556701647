package report

import (
	"cmp"
	"slices"

	"traybook/records"
)

// pottingOn hands the cost of batches that were potted on or pricked out to the
// batches that came of them (rules 25, 52). Batches are settled by sown, then
// batch, so that what was carried to a batch is carried on from it.
func (p *purse) pottingOn() {
	potted := map[string]float64{}
	for _, o := range p.r.Book.Outs {
		if o.To == records.ToPottedOn {
			potted[o.Batch] += float64(o.Plants)
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
		return cmp.Or(cmp.Compare(a.Sown, b.Sown), cmp.Compare(a.Batch, b.Batch))
	})
	for _, from := range givers {
		handOn(from, heirs[from], potted[from.Batch])
	}
}

// handOn carries a batch's cost to its heirs. Potted is the plants that its own
// rows say were potted on, 0 where there are none: then the heirs' cells count.
func handOn(from *Batch, heirs []*Batch, potted float64) {
	moved := claims(heirs)
	total := sum(moved)
	if potted > 0 && total > 0 {
		for i := range moved {
			moved[i] *= potted / total
		}
		total = potted
	}
	if !(total > 0) {
		return
	}
	share := 1.0
	if usable := from.Usable.Or(0); usable > 0 {
		share = min(1, total/usable)
	}
	given := share * from.Parts.Total()
	from.PlantsMoved = total
	from.Parts.Carried -= given
	for i, heir := range heirs {
		heir.Parts.Carried += given * (moved[i] / total)
	}
}

// claims are the heirs' cells sown; their trays where no heir's cells are known.
func claims(heirs []*Batch) []float64 {
	cells, trays := make([]float64, len(heirs)), make([]float64, len(heirs))
	for i, b := range heirs {
		cells[i], trays[i] = float64(b.CellsSown.Or(0)), b.Trays
	}
	if sum(cells) > 0 {
		return cells
	}
	return trays
}

// usableLeft is a batch's usable plants without those potted on (rule 52).
func (b *Batch) usableLeft() Num {
	if !b.Usable.Known {
		return Num{}
	}
	return records.Known(max(0, b.Usable.Value-b.PlantsMoved))
}
