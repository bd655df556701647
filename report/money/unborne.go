package money

import (
	"cmp"
	"slices"
)

// Why says why no batch bears a sum (rule "Ledger").
type Why string

// The reasons: a bill or hours for days on which nothing stood, was sown or left; a row
// that names a batch, crop or tray of which there is no batch; a season in which nothing
// was sown; trays that nothing was sown in.
const (
	EmptyHouse  Why = "empty house"
	NoSuchBatch Why = "no such batch"
	NothingSown Why = "nothing sown"
	IdleTrays   Why = "idle trays"
)

// UnborneSum is the money of a season and category that no batch bears for one reason,
// in the book's currency.
type UnborneSum struct {
	Season   int
	Category Category
	Why      Why
	Amount   float64
}

type unborneKey struct {
	ledgerKey
	why Why
}

// unborne notes why a sum is borne by none.
func (a *accounts) unborne(season int, c Category, why Why, amount float64) {
	key := unborneKey{ledgerKey{season, c}, why}
	if a.idle[key] == nil {
		a.idle[key] = &tally{}
	}
	a.idle[key].add(amount)
}

// whyUnborne is why a row that no batch bears is borne by none.
func (row *costRow) whyUnborne() Why {
	switch {
	case !row.Shared():
		return NoSuchBatch
	case periodical(row.Category):
		return EmptyHouse
	}
	return NothingSown
}

// unborneSums returns the sums by season, category and reason.
func (a *accounts) unborneSums() []UnborneSum {
	var sums []UnborneSum
	for key, sum := range a.idle {
		sums = append(sums, UnborneSum{key.season, key.category, key.why, sum.value()})
	}
	slices.SortFunc(sums, func(x, y UnborneSum) int {
		return cmp.Or(cmp.Compare(x.Season, y.Season), cmp.Compare(x.Category, y.Category), cmp.Compare(x.Why, y.Why))
	})
	return sums
}
