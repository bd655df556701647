package trays

import (
	"cmp"
	"slices"

	"traybook/records"
	"traybook/report/batch"
	"traybook/report/money"
)

// matchDays is the number of days after its first sowing within which a match
// takes sowings (rule "Matched sowings").
const matchDays = 7

// sameSeed is what batches of a match share.
type sameSeed struct {
	crop, variety, lot string
	seedsPerCell       int
}

func seedOf(b *money.Borne) sameSeed {
	return sameSeed{b.Crop, b.Variety, b.Lot, b.SeedsPerCell}
}

// match finds the matched sowings of the pair; batches are those of each code, values
// those of a plant, by crop.
func (pr *pair) match(batches map[string][]*money.Borne, values map[string]Num) {
	both := slices.Concat(batches[pr.tray.Code], batches[pr.other.Code])
	alike, of := batch.GroupBy(batch.Filter(both, compares), seedOf)
	for _, seed := range alike {
		rest := slices.SortedFunc(slices.Values(of[seed]), sownOrder)
		for len(rest) > 0 {
			n := sownTogether(rest)
			pr.add(seed, rest[:n], values[seed.crop])
			rest = rest[n:]
		}
	}
	slices.SortFunc(pr.matches, matchOrder)
	for i := range pr.matches {
		pr.matches[i].Number = i + 1
	}
}

// compares reports whether a batch of either code tells anything of the pair: from seed,
// for only then do seed, lot and day say what stood side by side.
func compares(b *money.Borne) bool { return b.FromSeed && b.EntersUsable() }

// sownOrder is by day sown, then batch.
func sownOrder(a, b *money.Borne) int {
	return cmp.Or(cmp.Compare(a.Sown, b.Sown), cmp.Compare(a.Code, b.Code))
}

// sownTogether is how many of batches in order of sowing the first one takes into
// its match.
func sownTogether(batches []*money.Borne) int {
	late := slices.IndexFunc(batches, func(b *money.Borne) bool { return b.Sown > batches[0].Sown+matchDays })
	if late < 0 {
		return len(batches)
	}
	return late
}

func matchOrder(a, b Match) int {
	return cmp.Or(cmp.Compare(a.FirstSown, b.FirstSown), cmp.Compare(a.Crop, b.Crop), cmp.Compare(a.Variety, b.Variety),
		cmp.Compare(a.Lot, b.Lot), cmp.Compare(a.SeedsPerCell, b.SeedsPerCell))
}

// add makes a match of batches sown within its days, if both codes are in it.
func (pr *pair) add(seed sameSeed, batches []*money.Borne, value Num) {
	m := Match{Tray: pr.tray.Code, Other: pr.other.Code, Crop: seed.crop, Variety: seed.variety, Lot: seed.lot,
		SeedsPerCell: seed.seedsPerCell, FirstSown: batches[0].Sown, LastSown: batches[len(batches)-1].Sown, Value: value}
	for _, b := range batches {
		cells, usable := &m.CellsTray, &m.UsableTray
		if b.Tray == pr.other.Code {
			cells, usable = &m.CellsOther, &m.UsableOther
		}
		*cells += float64(b.CellsSown.Value)
		*usable += b.Usable.Value
		m.Batches = append(m.Batches, b.Code)
	}
	if m.CellsTray == 0 || m.CellsOther == 0 {
		return
	}
	m.Difference = m.UsableTray/m.CellsTray - m.UsableOther/m.CellsOther
	pr.matches = append(pr.matches, m)
}

// firstDates is the number of different days on which matches begin.
func (pr *pair) firstDates() int {
	days := map[records.Date]bool{}
	for _, m := range pr.matches {
		days[m.FirstSown] = true
	}
	return len(days)
}

// differences are those of all matches.
func (pr *pair) differences() []float64 {
	var d []float64
	for _, m := range pr.matches {
		d = append(d, m.Difference)
	}
	return d
}
