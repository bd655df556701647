package plants

import (
	"cmp"
	"slices"

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

// lateKey is a row of the table.
type lateKey struct {
	crop, kind string
	band       int // its first day
}

// leewayOf returns the usable share by days past the planned date, by crop and kind
// and, with an empty crop, over all crops by kind (rule "Leeway").
func leewayOf(looked []*Plants, scatter rate.Scatter) []Leeway {
	counts := lateCounts(looked)
	var table []Leeway
	for k, cs := range counts {
		l := Leeway{Crop: k.crop, Kind: k.kind, DaysLate: k.band, Rate: scatter.Rate(k.crop, cs)}
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

// lateCounts gathers what batches with a planned date count for each row: a batch
// stands once in a row of its crop and once in one of all crops.
func lateCounts(looked []*Plants) map[lateKey][]estimate.Count {
	counts := map[lateKey][]estimate.Count{}
	for _, p := range looked {
		if !p.Planned.Known() {
			continue
		}
		for i, c := range p.byBand() {
			if !(c.N > 0) {
				continue
			}
			for _, crop := range []string{"", p.Crop} {
				k := lateKey{crop, p.Kind, LeewayBands[i]}
				counts[k] = append(counts[k], c)
			}
		}
	}
	return counts
}

// byBand adds up the batch's looks of each band of LeewayBands.
func (p *Plants) byBand() []estimate.Count {
	counts := make([]estimate.Count, len(LeewayBands))
	for _, d := range p.days {
		i := BandOf(int(d.date - p.Planned))
		counts[i].X += d.fit
		counts[i].N += d.looked
	}
	return counts
}
