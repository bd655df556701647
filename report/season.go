package report

import (
	"slices"

	"traybook/report/estimate"
)

// SimulatedCoverage is the share, in percent, of simulated 95 % intervals of rules
// 6 and 7 that held the true rate.
const SimulatedCoverage = estimate.SimulatedCoverage

// SeasonEmergence is the emergence of all counted batches of a season that were
// started from seed, all crops together. Its interval rests on the scatter of the
// whole book (rule 43); missing where that has too few batches (rule 6).
func (r *Report) SeasonEmergence(season int) Rate {
	counted := filter(r.Batches, func(b *Batch) bool { return b.Season == season && b.entersEmergence() })
	return r.share(ofEmergence, "", countsOf(counted, emergenceCount))
}

// CropEmergence is the emergence of each crop of a season, all its varieties and
// trays together, by crop: its batches' rate with an interval by the crop's scatter
// (rule 43).
func (r *Report) CropEmergence(season int) []Emergence {
	counted := filter(r.Batches, func(b *Batch) bool { return b.Season == season && b.entersEmergence() })
	crops, groups := groupBy(counted, func(b *Batch) string { return b.Crop })
	slices.Sort(crops)
	var table []Emergence
	for _, crop := range crops {
		e := Emergence{Group: Group{Season: season, Crop: crop}, SeedsPerCell: seedsPerCell(groups[crop])}
		e.Rate = r.share(ofEmergence, crop, countsOf(groups[crop], emergenceCount))
		for _, b := range groups[crop] {
			e.Trays += b.Trays
		}
		table = append(table, e)
	}
	return table
}
