package report

import (
	"traybook/records"
	"traybook/report/estimate"
)

// Rate is a rate X/N over batches with its interval. Rate is missing where N
// is 0; Low and High where there are too few batches (rule 6). Rho and DF are
// those used for the interval, missing where there is none.
type Rate struct {
	Batches          int
	X, N             float64
	Share, Low, High Num
	Rho, DF          Num
}

// FewBatches is the number below which a group is "sown too seldom to judge"
// (rule 12).
const FewBatches = 3

// Few reports whether the share rests on too few batches to be judged.
func (s Rate) Few() bool { return s.Batches < FewBatches }

// Verdict is a comparison in words (rules 13, 57).
type Verdict string

// The verdicts.
const (
	ClearlyHigher Verdict = "clearly higher"
	ClearlyLower  Verdict = "clearly lower"
	NoDifference  Verdict = "no clear difference"
	TooFew        Verdict = "too few batches"
)

// poolShare pools batches into a rate, without an interval.
func poolShare(counts []estimate.Count) Rate {
	var s Rate
	for _, c := range counts {
		if c.N > 0 {
			s.Batches, s.X, s.N = s.Batches+1, s.X+c.X, s.N+c.N
		}
	}
	if s.N > 0 {
		s.Share = records.Known(s.X / s.N)
	}
	return s
}

// share pools batches into a rate with its interval, by the scatter of a measure
// in a crop; an empty crop stands for the book (rules 6, 7, 43).
func (r *Report) share(m measure, crop string, counts []estimate.Count) Rate {
	s := poolShare(counts)
	used, ok := r.spreadOf(m, crop)
	if !ok || !s.Share.Known {
		return s
	}
	_, ci := estimate.ShareInterval(counts, used.rho, used.df, r.Book.Settings.Confidence)
	s.Low, s.High = records.Known(ci.Low), records.Known(ci.High)
	s.Rho, s.DF = records.Known(used.rho), records.Known(used.df)
	return s
}
