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

func (s sameSeed) compare(o sameSeed) int {
	return cmp.Or(cmp.Compare(s.crop, o.crop), cmp.Compare(s.variety, o.variety), cmp.Compare(s.lot, o.lot), cmp.Compare(s.seedsPerCell, o.seedsPerCell))
}

// compared is the batches that tell anything of a pair, by tray code, and the place of each
// batch's seed among all, in their order; each may be in many pairs.
type compared struct {
	in   map[string][]*money.Borne
	seed []int32 // by Nth
}

func comparedOf(all []*money.Borne) compared {
	seed, _ := batch.RankBy(all, seedOf, sameSeed.compare)
	of := compared{map[string][]*money.Borne{}, seed}
	for _, code := range batch.SplitBy(batch.Filter(all, compares), (*money.Borne).TrayRank).Groups {
		of.in[code[0].Tray] = code
	}
	return of
}

// match finds the matched sowings of the pair, in the order of days, then seeds; values are
// those of a plant, by crop.
func (pr *pair) match(of compared, values map[string]Num) {
	both := slices.Concat(of.in[pr.tray.Code], of.in[pr.other.Code])
	var together [][]*money.Borne // seed by seed
	for _, rest := range batch.SplitBy(both, func(b *money.Borne) int32 { return of.seed[b.Nth] }).Groups {
		slices.SortFunc(rest, sownOrder)
		for len(rest) > 0 {
			n := sownTogether(rest)
			if pr.inBoth(rest[:n]) {
				together = append(together, rest[:n])
			}
			rest = rest[n:]
		}
	}
	slices.SortStableFunc(together, func(a, b []*money.Borne) int { return cmp.Compare(a[0].Sown, b[0].Sown) })
	pr.matches = slices.Grow(pr.matches, len(together))
	for _, batches := range together {
		pr.add(batches, values[batches[0].Crop])
	}
}

// inBoth reports whether batches were sown in both codes.
func (pr *pair) inBoth(batches []*money.Borne) bool {
	others := 0
	for _, b := range batches {
		if b.Tray == pr.other.Code {
			others++
		}
	}
	return others > 0 && others < len(batches)
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

// add makes a match of batches of one seed sown within its days, in both codes.
func (pr *pair) add(batches []*money.Borne, value Num) {
	of := seedOf(batches[0])
	m := Match{Tray: pr.tray.Code, Other: pr.other.Code, Number: len(pr.matches) + 1, Crop: of.crop, Variety: of.variety, Lot: of.lot,
		SeedsPerCell: of.seedsPerCell, Batches: make([]string, 0, len(batches)), FirstSown: batches[0].Sown, LastSown: batches[len(batches)-1].Sown, Value: value}
	for _, b := range batches {
		cells, usable := &m.CellsTray, &m.UsableTray
		if b.Tray == pr.other.Code {
			cells, usable = &m.CellsOther, &m.UsableOther
		}
		*cells += float64(b.CellsSown.Value)
		*usable += b.Usable.Value
		m.Batches = append(m.Batches, b.Code)
	}
	m.Difference = m.UsableTray/m.CellsTray - m.UsableOther/m.CellsOther
	pr.matches = append(pr.matches, m)
}

// firstDates is the number of different days on which matches begin.
func (pr *pair) firstDates() int {
	days := map[records.Date]bool{}
	for i := range pr.matches {
		days[pr.matches[i].FirstSown] = true
	}
	return len(days)
}

// differences are those of all matches.
func (pr *pair) differences() []float64 {
	d := make([]float64, len(pr.matches))
	for i := range pr.matches {
		d[i] = pr.matches[i].Difference
	}
	return d
}
