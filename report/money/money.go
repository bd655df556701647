package money

import (
	"math"

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
		Cost: a.table((*Borne).GroupRank, byGroup), Crops: a.table((*Borne).SeasonCropRank, byCrop),
		Seasons: a.table((*Borne).SeasonRank, bySeason), Sizes: a.sizes(),
		Months: a.months(), MixPerML: a.mixPerML(),
	}
}

// accounts is what each batch bears and the ledger says while the money is shared
// out; New alone holds one.
type accounts struct {
	all        *batch.Batches
	book       *records.Book
	borne      []*Borne   // in the order of the batches
	sums       []sums     // of each, while money is shared out
	seasons    [][]*Borne // the batches of each
	bySeason   map[int][]*Borne
	lives      map[string]Life
	lines      map[ledgerKey]*ledgerSum
	idle       map[unborneKey]*tally
	has        map[Category]bool
	hasSow     bool
	priced     map[string]bool    // lots with a price, once asked for
	claims     map[claim][]*Borne // batches that direct rows may go to, once asked for
	mostPlain  int                // work up to which rows are shared out one by one
	mostFailed int                // batches looked at for rows that failed ones bear
}

func newAccounts(b *batch.Batches, p *plants.Figures, book *records.Book) *accounts {
	a := &accounts{
		all: b, book: book, lives: livesOf(b),
		borne: make([]*Borne, len(p.Plants)), sums: make([]sums, len(p.Plants)),
		lines: map[ledgerKey]*ledgerSum{}, idle: map[unborneKey]*tally{}, has: map[Category]bool{}, mostPlain: mostPlain, mostFailed: mostFailed,
	}
	of := make([]Borne, len(p.Plants))
	for i, one := range p.Plants {
		of[i].Plants, a.borne[i] = one, &of[i]
	}
	a.seasons, a.bySeason = batch.SplitBy(a.borne, (*Borne).SeasonRank).Groups, map[int][]*Borne{}
	for _, of := range a.seasons {
		a.bySeason[of[0].Season] = of
	}
	return a
}

// of is the batch with a code, or nil.
func (a *accounts) of(code string) *Borne {
	if b := a.all.Of(code); b != nil {
		return a.borne[b.Nth]
	}
	return nil
}

// sums is what a batch bears while money is shared out.
type sums struct {
	partsTally
	sowing tally
}

// bearer lets batches bear parts of a row: a share of 1, or less.
func (a *accounts) bearer(row *costRow) func(b *Borne, share float64) {
	place, sows, largest := placeOf(row.Category), row.sows(), max(row.largest, math.Abs(row.amount))
	return func(b *Borne, share float64) {
		part, of := tally{row.amount * share, largest * share}, &a.sums[b.Nth]
		of.bear(place, part)
		if sows {
			of.sowing.join(part, 1)
		}
	}
}

// bearDays lets a batch bear money of days, of the category at a place, for each of so many
// trays or plants.
func (a *accounts) bearDays(b *Borne, place int, each tally, times float64) {
	var all tally
	all.join(each, times)
	a.sums[b.Nth].bear(place, all)
}

// firstBorne closes what each batch bears of its own, before cost is handed on.
func (a *accounts) firstBorne() {
	for _, b := range a.borne {
		of := &a.sums[b.Nth]
		b.Parts, b.Sowing = of.parts(), of.sowing.value()
	}
}
