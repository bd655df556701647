package report

import (
	"cmp"
	"slices"

	"traybook/report/estimate"
)

// Leeway is the usable share of looks by days past the planned date (rule 17).
type Leeway struct {
	Crop     string // empty: all crops
	Kind     string
	DaysLate int // the band's first day: 0, 1, 4, 8, 15
	Rate
}

// LeewayBands are the first days of the bands of rule 17.
var LeewayBands = []int{0, 1, 4, 8, 15}

// lateKey is a row of the table.
type lateKey struct {
	crop, kind string
	band       int
}

// leeway returns the usable share by days past the planned date, by crop and kind
// and, with an empty crop, over all crops by kind (rules 17, 63). Below three
// batches there is no share.
func (r *Report) leeway(looked []*Batch) []Leeway {
	counts := map[lateKey][]estimate.Count{}
	for _, b := range looked {
		if !b.Planned.Known() {
			continue
		}
		for i, c := range b.byBand() {
			if c.N > 0 {
				for _, crop := range []string{"", b.Crop} {
					k := lateKey{crop, b.Kind, LeewayBands[i]}
					counts[k] = append(counts[k], c)
				}
			}
		}
	}
	var table []Leeway
	for k, cs := range counts {
		l := Leeway{Crop: k.crop, Kind: k.kind, DaysLate: k.band, Rate: r.share(ofQuality, k.crop, cs)}
		if l.Few() {
			l.Share, l.Low, l.High, l.Rho, l.DF = Num{}, Num{}, Num{}, Num{}, Num{}
		}
		table = append(table, l)
	}
	slices.SortFunc(table, func(a, b Leeway) int {
		return cmp.Or(cmp.Compare(a.Crop, b.Crop), cmp.Compare(a.Kind, b.Kind), cmp.Compare(a.DaysLate, b.DaysLate))
	})
	return table
}

// byBand adds up the batch's looks of each band of LeewayBands.
func (b *Batch) byBand() []estimate.Count {
	counts := make([]estimate.Count, len(LeewayBands))
	for _, d := range b.looks {
		i := bandOf(int(d.date - b.Planned))
		counts[i].X += d.good
		counts[i].N += d.looked
	}
	return counts
}

// bandOf is the last band whose first day is not after the days past planned; the
// first holds all that was looked at in time.
func bandOf(late int) int {
	band := 0
	for i, first := range LeewayBands {
		if late >= first {
			band = i
		}
	}
	return band
}

// StillFit is the usable share at which a band counts as still fit (rule 17).
const StillFit = 0.80

// LastFit returns the place of the last band of days past planned in which at least
// 80 % of the plants are still fit to set out, -1 where none is. The bands are those
// of one crop (or all) and kind, in order; one known to lie below ends the search,
// one with too few looks does not.
func LastFit(bands []Leeway) int {
	last := -1
	for i, l := range bands {
		if !l.Share.Known {
			continue
		}
		if l.Share.Value < StillFit {
			break
		}
		last = i
	}
	return last
}
