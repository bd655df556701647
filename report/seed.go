package report

import (
	"traybook/records"
	"traybook/report/trade"
)

// lots lets each batch bear the seed sown from a priced lot: its price over the
// larger of seeds bought and seeds sown from it in the whole book (rule 20). A
// lot's seed belongs to the sowing's season; seed in hand is in no season.
func (p *accounts) lots() {
	sown := map[string]float64{}
	for _, b := range p.r.Batches {
		sown[b.Lot] += bySeeds(b)
	}
	each := map[string]float64{} // money a seed
	for _, lot := range p.r.Book.Lots {
		if !lot.Price.Known {
			continue
		}
		p.has[records.Seed] = true
		bought, _ := seedsBought(lot)
		if seeds := max(bought.Or(0), sown[lot.Code]); seeds > 0 {
			each[lot.Code] = lot.Price.Value / seeds
		}
	}
	for _, b := range p.r.Batches {
		price, priced := each[b.Lot]
		if !priced || bySeeds(b) == 0 {
			continue
		}
		amount := price * bySeeds(b)
		b.Parts.Seed += amount
		p.enter(b.Season, records.Seed, amount, true)
	}
}

// withoutPricedLot returns the batches that bear no lot's price. Where none of
// them was sown from seed, all that were sown have one (rule 20): the caller then
// finds no weight here.
func (p *accounts) withoutPricedLot(batches []*Batch) []*Batch {
	priced := map[string]bool{}
	for _, lot := range p.r.Book.Lots {
		priced[lot.Code] = lot.Price.Known
	}
	var without []*Batch
	for _, b := range batches {
		if !priced[b.Lot] {
			without = append(without, b)
		}
	}
	return without
}

// seedsBought returns the seeds of a lot as written, else its grams at the seeds
// per gram written, else at the middle of the trade table's range: guessed.
func seedsBought(lot records.Lot) (seeds Num, guessed bool) {
	if lot.Seeds.Known || !lot.Grams.Known {
		return lot.Seeds, false
	}
	if each := lot.SeedsPerGram; each.Known {
		return records.Known(lot.Grams.Value * each.Value), false
	}
	facts, known := trade.Crop(lot.Crop)
	if each := facts.SeedsPerGram(); known && each > 0 {
		return records.Known(lot.Grams.Value * each), true
	}
	return Num{}, false
}
