package report

import (
	"slices"

	"traybook/records"
	"traybook/report/batch"
	"traybook/report/germination"
)

// lotGaps are the cells that lots may lack.
var lotGaps = []struct {
	lack func(germination.Lot) bool
	gap
}{
	{func(l germination.Lot) bool { return !l.Price.Known && len(l.Sown) > 0 },
		gap{"price of a seed lot", "the seed of its batches bears a part of the shared seed bills, if any", "price in lots.csv", "lots.csv", "price", looking, part}},
	{func(l germination.Lot) bool { return !l.SeedsBought.Known && l.Price.Known },
		gap{"seeds in a lot", "its whole price falls on the seed sown so far, as if none were left", "seeds, or grams and seeds_per_gram, in lots.csv",
			"lots.csv", "seeds", looking, part}},
	{func(l germination.Lot) bool { return l.SeedsGuessed },
		gap{"seeds per gram of a lot", "the middle of what is usual for the crop stands in", "seeds_per_gram in lots.csv", "lots.csv", "seeds_per_gram", looking, detail}},
	{func(l germination.Lot) bool { return !l.Label.Known && l.Counted > 0 && !l.Cluster },
		gap{"germination on the packet", "no check of the lot against its packet", "germ_label in lots.csv", "lots.csv", "germ_label", looking, detail}},
}

// lotsMissing lists what seed lots lack, those of one season's batches apart from those
// sown in several, or in none.
func lotsMissing(book *records.Book, b *batch.Batches, g *germination.Figures) []Missing {
	var list []Missing
	for _, l := range lotGaps {
		seasons, split := batch.GroupBy(batch.Filter(g.Lots, l.lack), func(lot germination.Lot) int { return onlySeason(b, lot.Sown) })
		slices.Sort(seasons)
		for _, season := range seasons {
			var sown []string
			var places []Place
			for _, lot := range split[season] {
				sown = append(sown, lot.Sown...)
				places = append(places, l.place(book, lot.At, lot.Code))
			}
			slices.Sort(sown)
			codes := codesOf(split[season], func(lot germination.Lot) string { return lot.Code })
			list = append(list, l.naming(codes).missing(season, len(sown), sown, places))
		}
	}
	return list
}

// onlySeason is the season of batches that are all of one; else 0.
func onlySeason(b *batch.Batches, codes []string) int {
	var seasons []int
	for _, code := range codes {
		seasons = append(seasons, b.Of(code).Season)
	}
	slices.Sort(seasons)
	if seasons = slices.Compact(seasons); len(seasons) == 1 {
		return seasons[0]
	}
	return 0
}
