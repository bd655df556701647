package germination

import (
	"cmp"
	"slices"
	"strings"

	"traybook/records"
	"traybook/report/batch"
	"traybook/report/rate"
	"traybook/report/trade"
)

// usualAllowance is by how much the emergence of a lot in a mix may lie below its
// packet where fewer than enoughLots other lots of the crop can tell; common practice,
// no source.
const (
	usualAllowance = 0.10
	enoughLots     = 3
)

// lots returns a row for every lot of lots.csv, by code (rule "Lots").
func lots(rows []records.Lot, all []*Counted, scatter rate.Scatter) []Lot {
	_, batches := batch.GroupBy(all, lotOf)
	var table []Lot
	for _, row := range rows {
		table = append(table, lotFigure(row, batches[row.Code], scatter))
	}
	slices.SortStableFunc(table, func(a, b Lot) int { return cmp.Compare(a.Code, b.Code) })
	for i := range table {
		table[i].allow(table)
	}
	return table
}

// lotFigure is all but the comparison with the packet, which leans on the other lots.
func lotFigure(row records.Lot, batches []*Counted, scatter rate.Scatter) Lot {
	l := Lot{Lot: row, Label: row.GermLabel, Cluster: isCluster(row.Crop), Minimum: trade.Minimum(row.Crop)}
	l.SeedsBought, l.SeedsGuessed = SeedsBought(row)
	l.SeedsSown = records.Known(0.0)
	for _, c := range batches {
		l.Sown = append(l.Sown, c.Code)
		l.SeedsSown = plus(l.SeedsSown, c.SeedsSown)
	}
	counted := batch.Filter(batches, (*Counted).EntersEmergence)
	l.Counted = len(counted)
	l.Rate = scatter.Rate(row.Crop, rate.Counts(counted, everUpCount))
	l.PerCell = seedsPerCell(counted)
	l.SeedRate, l.SeedLow, l.SeedHigh = l.PerSeed(l.PerCell)
	return l
}

// plus is missing where either is.
func plus(a, b Num) Num { return Num{Value: a.Value + b.Value, Known: a.Known && b.Known} }

// SeedsBought returns the seeds of a lot as written, else its grams at the seeds
// per gram written, else at the middle of the trade table's range: guessed. Missing
// where neither is known.
func SeedsBought(lot records.Lot) (seeds Num, guessed bool) {
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

// clusters are the crops whose sown unit holds several seeds.
var clusters = []string{"beet", "beets", "beetroot", "chard"}

func isCluster(crop string) bool { return slices.Contains(clusters, strings.ToLower(crop)) }

// allow says by how much the lot may lie below its packet, judged by the crop's
// other lots, and whether its whole interval lies lower still.
func (l *Lot) allow(all []Lot) {
	if l.Cluster {
		return
	}
	l.Allowance = records.Known(usualAllowance)
	if gaps := l.gapsOfOthers(all); len(gaps) >= enoughLots {
		// Lots that beat their packets are no reason to ask more of this one.
		l.Allowance = records.Known(max(0, rate.Median(gaps).Value))
	}
	if l.Label.Known && l.SeedHigh.Known {
		l.Below = records.Known(l.SeedHigh.Value < l.Label.Value-l.Allowance.Value)
	}
}

// gapsOfOthers is packet less rate a seed of the crop's other lots that have both.
func (l *Lot) gapsOfOthers(all []Lot) []float64 {
	var gaps []float64
	for _, o := range all {
		if o.Code != l.Code && o.Crop == l.Crop && o.Label.Known && o.SeedRate.Known {
			gaps = append(gaps, o.Label.Value-o.SeedRate.Value)
		}
	}
	return gaps
}

// Gap is how far a lot's seed came up below its packet, for ranking lots. Missing
// where it says little of the seed: no packet or no count, seed balls, and, unless
// the lot is flagged, several seeds to a cell, where one failed cell counts for all.
func (l Lot) Gap() Num {
	several := l.PerCell.Or(1) > 1 && !l.Below.Or(false)
	if !l.Label.Known || !l.SeedRate.Known || l.Cluster || several {
		return Num{}
	}
	return records.Known(l.Label.Value - l.SeedRate.Value)
}
