package sowing

import (
	"cmp"
	"slices"

	"traybook/report/batch"
	"traybook/report/plants"
)

// Sums is what batches gave beside what was wanted of them, in plants.
type Sums struct {
	Wanted, Usable float64
	ShortBatches   int     // that gave fewer than wanted
	Short          float64 // what these lacked
	LeftOver       float64 // what the others gave beyond
}

// balance returns a row for every season and crop with a batch to judge (rule "What to
// sow more of"). sure is by crop what being sure leaves over, as a share of the target.
func balance(all []*plants.Plants, sure map[string]float64) []Balance {
	var rows []Balance
	for _, of := range batch.SplitBy(batch.Filter(all, judged), (*plants.Plants).SeasonCropRank).Groups {
		row := Balance{Season: of[0].Season, Crop: of[0].Crop, Batches: len(of), Sums: sumsOf(of)}
		row.advise(of, sure[row.Crop])
		rows = append(rows, row)
	}
	return rows
}

// judged reports whether a batch can be set beside what was wanted of it.
func judged(p *plants.Plants) bool { return p.Ended() && p.Wanted.Known && p.Measured() }

// sumsOf adds up what batches lacked and gave beyond.
func sumsOf(of []*plants.Plants) Sums {
	var s Sums
	for _, p := range of {
		wanted := float64(p.Wanted.Value)
		s.Wanted += wanted
		s.Usable += p.Usable.Value
		switch over := p.Usable.Value - wanted; {
		case over < -noise:
			s.ShortBatches++
			s.Short -= over
		case over > noise:
			s.LeftOver += over
		}
	}
	return s
}

// mostNamed is how many crops the front page names on either side.
const mostNamed = 3

// Named returns the crops of a season with most plants short, and those with most left
// over, the most first; of each up to three.
func (f *Figures) Named(season int) (short, over []Balance) {
	of := batch.Filter(f.Balance, func(b Balance) bool { return b.Season == season })
	return most(of, func(b Balance) float64 { return b.Short }), most(of, func(b Balance) float64 { return b.LeftOver })
}

// most returns the rows with most of something, up to three; rows come by crop, and
// equal ones stay so.
func most(rows []Balance, of func(Balance) float64) []Balance {
	some := batch.Filter(rows, func(b Balance) bool { return of(b) > 0 })
	slices.SortStableFunc(some, func(a, b Balance) int { return cmp.Compare(of(b), of(a)) })
	return some[:min(len(some), mostNamed)]
}
