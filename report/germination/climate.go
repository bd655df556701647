package germination

import (
	"cmp"
	"math"
	"slices"

	"traybook/records"
	"traybook/report/batch"
	"traybook/report/rate"
)

// BelowAllBands is the lower end that stands for the coldest band, which has none.
const BelowAllBands = -99

// bands are the lower ends of the further bands of highs, Celsius, warmest first; a
// choice of ours.
var bands = []int{35, 30, 25, 20}

// enoughDays is on how many of its first days in the house a high must have been read.
const enoughDays = 5

// band is the lower end of the band of a mean of highs, rounded half up to 0.1 C.
func band(mean float64) int {
	tenths := records.RoundHalfUp(10 * mean)
	for _, low := range bands {
		if tenths >= float64(10*low) {
			return low
		}
	}
	return BelowAllBands
}

// climateKey is a row of the climate.
type climateKey struct {
	crop string
	band int
}

// climate sets how warm the house was beside what came up, crop by crop (rule
// "Climate"). in holds the batches that enter emergence.
func climate(in []*Counted, r readings, scatter rate.Scatter) []Climate {
	of := func(c *Counted) climateKey { return climateKey{c.Crop, band(r.highs(c).mean().Or(math.Inf(-1)))} }
	warmed := batch.Filter(in, func(c *Counted) bool { return c.SeedsPerCell == 1 && r.highs(c).n >= enoughDays })
	keys, groups := batch.GroupBy(warmed, of)
	slices.SortFunc(keys, func(a, b climateKey) int {
		return cmp.Or(cmp.Compare(a.crop, b.crop), cmp.Compare(a.band, b.band))
	})
	var table []Climate
	for _, k := range keys {
		table = append(table, Climate{k.crop, k.band, scatter.Rate(k.crop, rate.Counts(groups[k], emergenceCount))})
	}
	return table
}
