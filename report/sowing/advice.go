package sowing

import (
	"slices"

	"traybook/records"
	"traybook/report/batch"
	"traybook/report/plants"
	"traybook/report/rate"
)

// Advice is what a season's balance of a crop asks for; empty: nothing.
type Advice string

// The advices.
const (
	SowMore Advice = "sow more"
	SowLess Advice = "sow less"
)

// The bounds of the advices, as shares; choices of ours (rule "What to sow more of").
const (
	shortOfOver   = 0.25 // short plants, of those left over
	shortOfWanted = 0.05 // short plants, of those wanted
	overOfWanted  = 0.3  // plants left over, of those wanted
)

// advise says what the batches of a row ask for; sure is what being sure leaves over.
func (b *Balance) advise(of []*plants.Plants, sure float64) {
	switch {
	case b.Batches < rate.FewBatches:
	case b.ShortBatches == 0 && b.LeftOver > b.Wanted*max(overOfWanted, sure)+noise:
		b.Advice = SowLess
	case sowMore(of):
		b.adviseMore(of)
	}
}

// adviseMore asks for more, unless it was one lot that was short.
func (b *Balance) adviseMore(of []*plants.Plants) {
	lot, written := mostShort(of)
	rest := batch.Filter(of, func(p *plants.Plants) bool { return p.Lot != lot })
	if written && !sowMore(rest) {
		b.ByLot = records.Known(lot)
		return
	}
	b.Advice = SowMore
}

// sowMore reports whether some batches were short often and by much.
func sowMore(of []*plants.Plants) bool {
	s := sumsOf(of)
	return len(of) >= rate.FewBatches && 3*s.ShortBatches >= len(of) &&
		s.Short > s.LeftOver*shortOfOver+noise && s.Short > s.Wanted*shortOfWanted+noise
}

// mostShort is the lot with most plants short, of equal ones the first by bytes;
// batches without a lot are one, but written is false where none has any.
func mostShort(of []*plants.Plants) (lot string, written bool) {
	lots, split := batch.GroupBy(of, func(p *plants.Plants) string { return p.Lot })
	slices.Sort(lots)
	most := -1.0
	for _, l := range lots {
		if short := sumsOf(split[l]).Short; short > most+noise {
			lot, most = l, short
		}
	}
	return lot, lots[len(lots)-1] != ""
}

// sureLeaves is by crop the largest share of its target that being sure leaves over.
func sureLeaves(rows []Row) map[string]float64 {
	shares := map[string]float64{}
	for _, r := range rows {
		if r.LeftOver.Known {
			shares[r.Crop] = max(shares[r.Crop], r.LeftOver.Value/float64(r.Target.Value))
		}
	}
	return shares
}
