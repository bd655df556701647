package report

import "traybook/records"

// accounts holds what the money figures share while they are made.
type accounts struct {
	r        *Report
	codes    map[string]*trayCode
	bySeason map[int][]*Batch
	lines    map[ledgerKey]*LedgerLine
	sowing   map[*Batch]float64 // sowing labour borne, a part of Parts.Labour (rule 30)
	has      map[records.Category]bool
	hasSow   bool // the book has a row of sowing labour
}

// money computes what the batches bear and what a transplant cost, and whether
// trays pay (rules 19-33, 35). It needs the batches' figures.
func (r *Report) money() {
	r.Payback, r.Matches, r.NextTray, r.Trial = nil, nil, nil, nil
	p := newPurse(r)
	p.costRows()
	p.lots()
	p.trayCharges()
	p.pottingOn()
	r.hasCategory = p.has
	p.batchCosts()
	r.Cost = p.costTable()
	r.Ledger = p.ledger()
	p.pairs()
	r.Missing = append(r.Missing, p.trayGaps()...)

}

func newPurse(r *Report) *accounts {
	p := &accounts{
		r: r, codes: trayCodes(r),
		bySeason: map[int][]*Batch{}, lines: map[ledgerKey]*LedgerLine{},
		sowing: map[*Batch]float64{}, has: map[records.Category]bool{},
	}
	for _, b := range r.Batches {
		b.Parts, b.Cost, b.PlantsMoved, b.PerTransplant = Parts{}, Num{}, 0, Num{}
		p.bySeason[b.Season] = append(p.bySeason[b.Season], b)
	}
	return p
}
