package batch

import (
	"maps"
	"slices"

	"traybook/records"
	"traybook/report/estimate"
)

// usualChamberDays is how long a batch is taken to stand in a chamber of which no stay
// is written; days, common practice, no source.
const usualChamberDays = 3

// chamberStays is the median written stay in a chamber, whole days, by crop and by the
// chamber's name (rule "Chamber stays").
type chamberStays struct{ crop, chamber map[string]int }

func chamberStaysOf(batches []*Batch) chamberStays {
	written := Filter(batches, func(b *Batch) bool { return b.ChamberOut.Known() })
	_, chambers := GroupBy(written, chamberOf)
	return chamberStays{
		crop:    medianDays(SplitBy(written, (*Batch).CropRank).Groups, func(b *Batch) string { return b.Crop }),
		chamber: medianDays(slices.Collect(maps.Values(chambers)), chamberOf),
	}
}

func chamberOf(b *Batch) string { return b.Chamber }

// medianDays is the median stay of each group, by its key. A chamber_out before the sowing,
// a mistype, is no day.
func medianDays(groups [][]*Batch, key func(*Batch) string) map[string]int {
	median := map[string]int{}
	for _, of := range groups {
		days := daysOf(of, func(b *Batch) records.Date { return b.ChamberOut })
		median[key(of[0])] = int(records.RoundHalfUp(estimate.Median(days)))
	}
	return median
}

// of is how long a batch stays where no one wrote it down: as its crop, else as its
// chamber, else as is usual.
func (s chamberStays) of(b *Batch) int {
	if days, written := s.crop[b.Crop]; written {
		return days
	}
	if days, written := s.chamber[b.Chamber]; written {
		return days
	}
	return usualChamberDays
}

// leaveChamber settles when the batch left its chamber. It never stays past its end; an
// open one has none yet, so that its assumed stay may reach beyond today.
func (b *Batch) leaveChamber(stays chamberStays) {
	switch {
	case b.ChamberOut.Known():
		b.ChamberUntil = b.ChamberOut
	case b.Chamber != "":
		b.ChamberUntil, b.ChamberAssumed = b.Sown+records.Date(stays.of(b)), true
		if b.Ended() {
			b.ChamberUntil = max(min(b.ChamberUntil, b.End), b.Sown)
		}
	}
}

// InChamber reports whether the batch stood in a chamber on a day.
func (b *Batch) InChamber(d records.Date) bool { return b.Sown <= d && d < b.ChamberUntil }
