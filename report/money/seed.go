package money

import (
	"math"

	"traybook/records"
	"traybook/report/batch"
	"traybook/report/germination"
)

// lots lets each batch bear the seed sown from a priced lot (rule "Seed"). A lot's
// seed belongs to the sowing's season; seed in hand is in no season.
func (a *accounts) lots() {
	each, place := a.seedPrices(), placeOf(records.Seed)
	for _, b := range a.borne {
		price, priced := each[b.Lot]
		if !priced || bySeeds(b) == 0 {
			continue
		}
		amount := price * bySeeds(b)
		a.sums[b.Nth].bear(place, tally{amount, math.Abs(amount)})
		a.enter(b.Season, records.Seed, amount, true)
	}
}

// seedPrices returns money a seed by priced lot: its price over the larger of seeds
// bought and seeds sown from it in the whole book, so that no more than the price is
// ever borne. A lot of which neither is known has none.
func (a *accounts) seedPrices() map[string]float64 {
	sown := map[string]float64{}
	for _, b := range a.borne {
		sown[b.Lot] += bySeeds(b)
	}
	each := map[string]float64{}
	for _, lot := range a.book.Lots {
		if !lot.Price.Known {
			continue
		}
		a.has[records.Seed] = true
		bought, _ := germination.SeedsBought(lot)
		if seeds := max(bought.Or(0), sown[lot.Code]); seeds > 0 {
			each[lot.Code] = lot.Price.Value / seeds
		}
	}
	return each
}

// withoutPricedLot returns the batches that bear no lot's price. Where none of
// them was sown from seed, all that were sown have one: the caller then finds no
// weight here.
func (a *accounts) withoutPricedLot(batches []*Borne) []*Borne {
	if a.priced == nil {
		a.priced = make(map[string]bool, len(a.book.Lots))
		for _, lot := range a.book.Lots {
			a.priced[lot.Code] = lot.Price.Known
		}
	}
	return batch.Filter(batches, func(b *Borne) bool { return !a.priced[b.Lot] })
}
