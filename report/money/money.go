package money

import (
	"traybook/records"
	"traybook/report/batch"
	"traybook/report/plants"
)

// New shares all money of a book out among its batches and says what a transplant
// cost. p holds the plants of the batches of b, in their order.
func New(b *batch.Batches, p *plants.Figures, book *records.Book) *Figures {
	a := newAccounts(b, p, book)
	a.costRows()
	a.lots()
	a.trayCharges()
	a.firstBorne()
	a.pottingOn()
	a.batchCosts()
	return &Figures{
		Borne: a.borne, Ledger: a.ledger(), Unborne: a.unborneSums(), Has: a.has, HasSow: a.hasSow, Lives: a.lives,
		Cost: a.table(byGroup), Crops: a.table(byCrop), Seasons: a.table(bySeason), Sizes: a.table(bySize),
		Months: a.months(), MixPerML: a.mixPerML(),
	}
}

// accounts is what each batch bears and the ledger says while the money is shared
// out; New alone holds one.
type accounts struct {
	all      *batch.Batches
	book     *records.Book
	borne    []*Borne // in the order of the batches
	byCode   map[string]*Borne
	bySeason map[int][]*Borne
	lives    map[string]Life
	lines    map[ledgerKey]*ledgerSum
	idle     map[unborneKey]*tally
	has      map[Category]bool
	hasSow   bool
}

func newAccounts(b *batch.Batches, p *plants.Figures, book *records.Book) *accounts {
	a := &accounts{
		all: b, book: book, lives: livesOf(b),
		byCode: map[string]*Borne{}, bySeason: map[int][]*Borne{},
		lines: map[ledgerKey]*ledgerSum{}, idle: map[unborneKey]*tally{}, has: map[Category]bool{},
	}
	for _, one := range p.Plants {
		borne := &Borne{Plants: one}
		a.borne = append(a.borne, borne)
		a.byCode[one.Code] = borne
		a.bySeason[one.Season] = append(a.bySeason[one.Season], borne)
	}
	return a
}

// firstBorne closes what each batch bears of its own, before cost is handed on.
func (a *accounts) firstBorne() {
	for _, b := range a.borne {
		b.Parts, b.Sowing = b.sums.parts(), b.sowing.value()
	}
}
