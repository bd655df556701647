package report

import (
	"cmp"
	"slices"
	"strings"

	"traybook/records"
	"traybook/report/trade"
)

// usualAllowance is by how much the emergence of a lot in a mix may lie below its
// packet where a crop has too few other lots to tell (rule 14); common practice,
// no source.
const (
	usualAllowance = 0.10
	enoughLots     = 3
)

// lots returns a row for every lot of lots.csv (rules 14, 58).
func (r *Report) lots() []LotFigure {
	_, batches := groupBy(r.Batches, func(b *Batch) string { return b.Lot })
	var table []LotFigure
	for _, lot := range r.Book.Lots {
		table = append(table, r.lotFigure(lot, batches[lot.Code]))
	}
	slices.SortStableFunc(table, func(a, b LotFigure) int { return cmp.Compare(a.Lot.Code, b.Lot.Code) })
	for i := range table {
		table[i].allow(table)
	}
	return table
}

func (r *Report) lotFigure(lot records.Lot, batches []*Batch) LotFigure {
	f := LotFigure{Lot: lot, Label: lot.GermLabel, Cluster: isCluster(lot.Crop), Minimum: trade.Minimum(lot.Crop)}
	f.SeedsBought, f.SeedsGuessed = seedsBought(lot)
	f.SeedsSown = records.Known(0.0)
	for _, b := range batches {
		f.Batches = append(f.Batches, b.Code)
		f.SeedsSown = plus(f.SeedsSown, b.SeedsSown)
	}
	counted := filter(batches, (*Batch).entersEmergence)
	f.Counted = len(counted)
	f.Rate = r.share(ofEmergence, lot.Crop, countsOf(counted, everUpCount))
	f.SeedsPerCell = seedsPerCell(counted)
	f.SeedRate, f.SeedLow, f.SeedHigh = f.perSeed(f.SeedsPerCell)
	return f
}

// plus is missing where either is.
func plus(a, b Num) Num { return Num{Value: a.Value + b.Value, Known: a.Known && b.Known} }

// isCluster tells the crops whose sown unit holds several seeds.
func isCluster(crop string) bool {
	switch strings.ToLower(crop) {
	case "beet", "beets", "beetroot", "chard":
		return true
	}
	return false
}

// allow says by how much the lot may lie below its packet, judged by the crop's
// other lots, and whether it lies lower still.
func (f *LotFigure) allow(lots []LotFigure) {
	if f.Cluster {
		return
	}
	f.Allowance = records.Known(usualAllowance)
	var gaps []float64
	for _, o := range lots {
		if o.Lot.Code != f.Lot.Code && o.Lot.Crop == f.Lot.Crop && o.Label.Known && o.SeedRate.Known {
			gaps = append(gaps, o.Label.Value-o.SeedRate.Value)
		}
	}
	if len(gaps) >= enoughLots {
		f.Allowance = records.Known(max(0, median(gaps).Value))
	}
	if f.Label.Known && f.SeedHigh.Known {
		f.Below = records.Known(f.SeedHigh.Value < f.Label.Value-f.Allowance.Value)
	}
}
