package germination

import (
	"cmp"
	"slices"

	"traybook/records"
	"traybook/report/batch"
	"traybook/report/rate"
	"traybook/report/trade"
)

// By how much the emergence of a lot in a mix may lie below its packet, shares of 1: the
// usual where fewer than enoughLots other lots of the crop can tell; else what they miss
// and somewhat more, within bounds. Choices of ours, no source.
const (
	usualAllowance = 0.10
	leastAllowance = 0.05
	mostAllowance  = 0.20
	somewhatMore   = 0.05
	enoughLots     = 3
)

// lots returns a row for every lot of lots.csv, by code (rule "Lots").
func lots(book *records.Book, all []*Counted, scatter rate.Scatter) []Lot {
	_, batches := batch.GroupBy(all, lotOf)
	table := slices.Grow([]Lot(nil), len(book.Lots))
	for _, row := range book.Lots {
		l := lotFigure(row, batches[row.Code], scatter)
		if book.Settings.LegalMinimum {
			l.Minimum = trade.Minimum(row.Crop)
		}
		table = append(table, l)
	}
	slices.SortStableFunc(table, func(a, b Lot) int { return cmp.Compare(a.Code, b.Code) })
	gaps := gapsOf(table)
	for i := range table {
		table[i].compare(gaps[table[i].Crop])
	}
	return table
}

// lotFigure is all but the comparison with the packet, which leans on the other lots.
// Where several seeds were sown to a cell there is no rate: a full cell hides how many of
// its seeds failed.
func lotFigure(row records.Lot, batches []*Counted, scatter rate.Scatter) Lot {
	l := Lot{Lot: row, Label: row.GermLabel, Cluster: isCluster(row.Crop)}
	l.SeedsBought, l.SeedsGuessed = SeedsBought(row)
	l.SeedsSown = records.Known(0.0)
	for _, c := range batches {
		l.Sown = append(l.Sown, c.Code)
		l.SeedsSown = plus(l.SeedsSown, c.SeedsSown)
	}
	counted := batch.Filter(batches, (*Counted).EntersEmergence)
	days, _ := batch.GroupBy(counted, func(c *Counted) records.Date { return c.Sown })
	l.Counted, l.Days = len(counted), len(days)
	l.Rate = scatter.Rate(row.Crop, rate.Counts(counted, everUpCount))
	if l.PerCell = seedsPerCell(counted); l.PerCell == records.Known(1) {
		l.SeedRate, l.SeedLow, l.SeedHigh = l.Share, l.Low, l.High
	}
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

// clusters are the crops, as the trade table names them, whose sown unit holds several
// seeds.
var clusters = []string{"beet", "chard"}

func isCluster(crop string) bool {
	facts, _ := trade.Crop(crop)
	return slices.Contains(clusters, facts.Name)
}

// gapsOf is the gaps of the lots that have one, by crop, sorted.
func gapsOf(table []Lot) map[string][]float64 {
	gaps := map[string][]float64{}
	for _, l := range table {
		if gap := l.Gap(); gap.Known {
			gaps[l.Crop] = append(gaps[l.Crop], gap.Value)
		}
	}
	for _, of := range gaps {
		slices.Sort(of)
	}
	return gaps
}

// compare says by how much the lot may lie below its packet, judged by the crop's other
// lots, and whether it lies lower still. One day's sowings share their weather: they
// cannot tell the seed from it.
func (l *Lot) compare(gaps []float64) {
	if l.Cluster {
		return
	}
	l.Allowance = records.Known(usualAllowance)
	if others, median := l.others(gaps); others >= enoughLots {
		l.Allowance.Value = min(max(leastAllowance, median+somewhatMore), mostAllowance)
	}
	least := l.Label.Value - l.Allowance.Value - rate.Equal
	switch {
	case !l.Label.Known || !l.SeedRate.Known:
	case l.SeedRate.Value >= least:
		l.Below = BelowNo
	case !l.SeedHigh.Known || l.SeedHigh.Value >= least || l.Days == 1:
		l.Below = BelowUnsure
	default:
		l.Below = BelowYes
	}
}

// others is how many of the crop's other lots have a gap, and the median of those gaps; gaps
// are those of the crop, sorted, its own among them where it has one.
func (l *Lot) others(gaps []float64) (n int, median float64) {
	own := len(gaps)
	if gap := l.Gap(); gap.Known {
		own, _ = slices.BinarySearch(gaps, gap.Value)
		n = -1
	}
	if n += len(gaps); n <= 0 {
		return 0, 0
	}
	at := func(i int) float64 { // of the others
		if i >= own {
			i++
		}
		return gaps[i]
	}
	return n, rate.Median([]float64{at((n - 1) / 2), at(n / 2)}).Value // of the middle two, which are one of an odd number
}

// Gap is how far a lot's seed came up below its packet. Missing where either is unknown,
// and for seed balls, of which it says little.
func (l Lot) Gap() Num {
	if !l.Label.Known || !l.SeedRate.Known || l.Cluster {
		return Num{}
	}
	return records.Known(l.Label.Value - l.SeedRate.Value)
}
