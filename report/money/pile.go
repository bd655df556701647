package money

import (
	"math"

	"traybook/records"
	"traybook/report/batch"
)

// alike is what rows without a period have in common that go to the same batches by the
// same weights.
type alike struct {
	season   int
	category Category
	task     records.Task
	claim
}

// claim is the batches of a season of a crop, a tray code or both; of neither, all.
type claim struct {
	season     int
	crop, tray string
}

func (row *costRow) alike() alike {
	return alike{row.season, row.Category, row.task(), claim{row.season, row.Crop, row.Tray}}
}

// pilable reports whether a row goes to batches by what alike holds.
func (row *costRow) pilable() bool {
	return row.Batch == "" && !(row.Shared() && periodical(row.Category))
}

// claimants returns the batches that a row without a batch or a period goes to, in their
// order.
func (a *accounts) claimants(row *costRow) []*Borne {
	if row.Shared() {
		return a.bySeason[row.season]
	}
	if a.claims == nil {
		a.claims = map[claim][]*Borne{}
		for _, b := range a.borne {
			for _, of := range []claim{{b.Season, b.Crop, ""}, {b.Season, "", b.Tray}, {b.Season, b.Crop, b.Tray}} {
				a.claims[of] = append(a.claims[of], b)
			}
		}
	}
	return a.claims[claim{row.season, row.Crop, row.Tray}]
}

// piles shares out rows that are alike as one row each, where there are so many that rows
// times batches are more than mostPlain, and says whether a batch bears them.
func (a *accounts) piles(rows []*costRow) (borne map[alike]bool) {
	keys, groups := batch.GroupBy(batch.Filter(rows, (*costRow).pilable), (*costRow).alike)
	borne = map[alike]bool{}
	for _, key := range keys {
		if of := groups[key]; len(of)*len(a.claimants(of[0])) > a.mostPlain {
			borne[key] = a.allocate(piled(of), nil)
		}
	}
	return borne
}

// piled is alike rows as one.
func piled(rows []*costRow) *costRow {
	one := *rows[0]
	one.amount = 0
	for _, row := range rows {
		one.amount += row.amount
		one.largest = max(one.largest, math.Abs(row.amount))
	}
	return &one
}
