package report

import (
	"traybook/records"
	"traybook/report/estimate"
)

// SimulatedCoverage is the share, in percent, of simulated 95 % intervals of rules
// 6 and 7 that held the true rate.
const SimulatedCoverage = estimate.SimulatedCoverage

// SeasonEmergence is the emergence of all counted batches of a season that were
// started from seed, all crops together. Its interval rests on the scatter of the
// whole book (rule 43); missing where that has too few batches (rule 6).
func (r *Report) SeasonEmergence(season int) Share {
	type stratum struct {
		Group
		seeds int
	}
	groups := map[stratum][]estimate.Count{}
	var order []stratum
	var counts []estimate.Count
	for _, b := range r.Batches {
		if !b.FromSeed || !b.Emergence().Known {
			continue
		}
		c := estimate.Count{X: b.Emerged.Value, N: b.Looked.Value}
		key := stratum{b.Group(), b.SeedsPerCell}
		if groups[key] == nil {
			order = append(order, key)
		}
		groups[key] = append(groups[key], c)
		if b.Season == season {
			counts = append(counts, c)
		}
	}
	book := estimate.Scatter{}
	for _, key := range order {
		book = book.Add(estimate.ScatterOf([][]estimate.Count{groups[key]}))
	}
	return r.pooled(counts, book)
}

// pooled is the share of some batches with the interval that a scatter gives.
func (r *Report) pooled(counts []estimate.Count, scatter estimate.Scatter) Share {
	s := Share{Batches: len(counts)}
	for _, c := range counts {
		s.X, s.N = s.X+c.X, s.N+c.N
	}
	if s.N == 0 {
		return s
	}
	s.Rate = records.Known(s.X / s.N)
	if scatter.DF < 3 {
		return s
	}
	s.Rho, s.DF = records.Known(scatter.Rho()), records.Known(float64(scatter.DF))
	_, ends := estimate.ShareInterval(counts, s.Rho.Value, s.DF.Value, r.Book.Settings.Confidence)
	s.Low, s.High = records.Known(ends.Low), records.Known(ends.High)
	return s
}
