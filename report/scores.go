package report

import (
	"cmp"
	"slices"

	"traybook/records"
)

// lookDay is a batch's looks of one day, added up (rule 63). scores are plants at each
// score, where scored so.
type lookDay struct {
	date         records.Date
	looked, good float64
	scores       [5]float64
	scored       bool
}

// readScores takes a batch's rows of scores.csv. A row with only an overall mark
// is no look; its date counts all the same.
func (b *Batch) readScores(rows []records.Score, usableFrom int) {
	b.Looks = slices.Clone(rows)
	slices.SortStableFunc(b.Looks, func(x, y records.Score) int {
		return cmp.Or(cmp.Compare(x.Date, y.Date), cmp.Compare(x.Line, y.Line))
	})
	for _, s := range b.Looks {
		b.lastWritten = max(b.lastWritten, s.Date)
		looked, good, scored := lookOf(s, usableFrom)
		if !(looked > 0) {
			continue
		}
		if n := len(b.looks); n == 0 || b.looks[n-1].date != s.Date {
			b.looks = append(b.looks, lookDay{date: s.Date})
		}
		d := &b.looks[len(b.looks)-1]
		d.looked, d.good, d.scored = d.looked+looked, d.good+good, d.scored || scored
		for i, plants := range s.S {
			d.scores[i] += float64(plants.Or(0))
		}
	}
	if n := len(b.looks); n > 0 {
		b.QualityOf, b.QualityGood = records.Known(b.looks[n-1].looked), records.Known(b.looks[n-1].good)
	}
}

// lookOf reads plants looked at and those fit to set out off a row: written so, or
// the plants at each score, a blank score among written ones holding none. looked
// is 0 for a row that is no look.
func lookOf(s records.Score, usableFrom int) (looked, good float64, scored bool) {
	for i, plants := range s.S {
		if !plants.Known {
			continue
		}
		scored = true
		looked += float64(plants.Value)
		if i+1 >= usableFrom {
			good += float64(plants.Value)
		}
	}
	if scored || !s.Looked.Known || !s.Usable.Known {
		return looked, good, scored
	}
	return float64(s.Looked.Value), float64(s.Usable.Value), false
}

// quality is the usable share of the latest look (rule 16).
func (b *Batch) quality() Num {
	if !b.QualityOf.Known {
		return Num{}
	}
	return records.Known(b.QualityGood.Value / b.QualityOf.Value)
}
