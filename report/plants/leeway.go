package plants

import (
	"cmp"
	"slices"

	"traybook/report/batch"
	"traybook/report/estimate"
	"traybook/report/rate"
)

// LeewayBands are the first days past the planned date of the bands of rule "Leeway";
// the first holds all that was looked at in time.
var LeewayBands = []int{0, 1, 4, 8, 15}

// BandOf returns the place in LeewayBands of a number of days past planned, which may
// be below 0: the last band that has begun by then.
func BandOf(late int) int {
	band := 0
	for i, first := range LeewayBands {
		if late >= first {
			band = i
		}
	}
	return band
}

// lateKey is what a few rows of the table are about, one for each band.
type lateKey struct{ crop, kind string }

// leewayOf returns the usable share by days past the planned date, by crop and kind
// and, with an empty crop, over all crops by kind (rule "Leeway").
func leewayOf(looked []*Plants, scatter rate.Scatter) []Leeway {
	planned := batch.Filter(looked, func(p *Plants) bool { return p.Planned.Known() })
	var table []Leeway
	for _, key := range []func(*Plants) lateKey{
		func(p *Plants) lateKey { return lateKey{kind: p.Kind} },
		func(p *Plants) lateKey { return lateKey{p.Crop, p.Kind} },
	} {
		keys, groups := batch.SplitByKey(planned, (*Plants).GroupRank, key)
		for i, k := range keys {
			table = append(table, k.rows(lateCounts(groups[i]), scatter)...)
		}
	}
	slices.SortFunc(table, func(a, b Leeway) int {
		return cmp.Or(cmp.Compare(a.Crop, b.Crop), cmp.Compare(a.Kind, b.Kind), cmp.Compare(a.DaysLate, b.DaysLate))
	})
	return table
}

// rows are those of one crop and kind, of the bands in which plants were looked at.
func (k lateKey) rows(counts bandCounts, scatter rate.Scatter) []Leeway {
	var rows []Leeway
	for i, cs := range counts {
		if len(cs) == 0 {
			continue
		}
		l := Leeway{Crop: k.crop, Kind: k.kind, DaysLate: LeewayBands[i], Rate: scatter.Rate(k.crop, cs)}
		if l.Few() {
			l.Share, l.Low, l.High, l.Rho, l.DF = Num{}, Num{}, Num{}, Num{}, Num{}
		}
		rows = append(rows, l)
	}
	return rows
}

// bandCounts is what batches count in each band of LeewayBands.
type bandCounts [5][]estimate.Count

// lateCounts gathers what batches with a planned date count, each once in a band.
func lateCounts(planned []*Plants) bandCounts {
	var counts bandCounts
	var many [len(counts)]int
	for _, p := range planned {
		for i, c := range p.byBand() {
			if c.N > 0 {
				many[i]++
			}
		}
	}
	for i, n := range many {
		counts[i] = make([]estimate.Count, 0, n)
	}
	for _, p := range planned {
		for i, c := range p.byBand() {
			if c.N > 0 {
				counts[i] = append(counts[i], c)
			}
		}
	}
	return counts
}

// byBand adds up the batch's looks of each band.
func (p *Plants) byBand() (counts [len(bandCounts{})]estimate.Count) {
	for i := range p.days {
		d := &p.days[i]
		of := &counts[BandOf(int(d.date-p.Planned))]
		of.X, of.N = of.X+d.fit, of.N+d.looked
	}
	return counts
}
