package rate

import (
	"traybook/records"
	"traybook/report/batch"
	"traybook/report/estimate"
)

// Num is a figure that may be missing.
type Num = batch.Num

// Rate is a share X/N over batches with its interval. Share is missing where N is 0;
// Low and High where there are too few batches. Rho and DF are those used for the
// interval, missing where there is none.
type Rate struct {
	Batches          int
	X, N             float64
	Share, Low, High Num
	Rho, DF          Num
}

// FewBatches is the number below which a group is "sown too seldom to judge".
const FewBatches = 3

// Few reports whether the rate rests on too few batches to be judged.
func (r Rate) Few() bool { return r.Batches < FewBatches }

// Pool pools batches into a rate, without an interval.
func Pool(counts []estimate.Count) Rate {
	var r Rate
	for _, c := range counts {
		if c.N > 0 {
			r.Batches, r.X, r.N = r.Batches+1, r.X+c.X, r.N+c.N
		}
	}
	if r.N > 0 {
		r.Share = records.Known(r.X / r.N)
	}
	return r
}

// Variance is that of the pooled share, widened by its batches' scatter (rule
// "Variance of a rate").
func (r Rate) Variance(counts []estimate.Count, rho float64) float64 {
	var sum, squares float64
	for _, c := range counts {
		if c.N > 0 {
			sum, squares = sum+c.N, squares+c.N*c.N
		}
	}
	return estimate.PooledVariance(r.X, r.N, estimate.DesignEffectOf(sum, squares, rho))
}

// PerSeed turns a share of cells and its ends into shares of seeds, k in a cell
// (rule "Per seed").
func (r Rate) PerSeed(k records.Maybe[int]) (share, low, high Num) {
	each := func(n Num) Num {
		if !n.Known || !k.Known {
			return Num{}
		}
		return records.Known(estimate.PerSeed(n.Value, k.Value))
	}
	return each(r.Share), each(r.Low), each(r.High)
}

// Verdict is a comparison in words.
type Verdict string

// The verdicts. HigherByLot and LowerByLot are clear only as long as one lot is in it;
// which one stands beside them.
const (
	ClearlyHigher Verdict = "clearly higher"
	ClearlyLower  Verdict = "clearly lower"
	HigherByLot   Verdict = "higher, by one lot"
	LowerByLot    Verdict = "lower, by one lot"
	NoDifference  Verdict = "no clear difference"
	TooFew        Verdict = "too few batches"
)

// Equal is how far apart two figures may be and still count as one (rule "Missing").
const Equal = 1e-9

// VerdictOf puts the interval of a difference in words; an end at 0 is not clear of it.
func VerdictOf(low, high float64) Verdict {
	switch {
	case low > Equal:
		return ClearlyHigher
	case high < -Equal:
		return ClearlyLower
	}
	return NoDifference
}

// Ratio is a over b; missing where either is or b is not above 0.
func Ratio(a, b Num) Num {
	if !a.Known || !b.Known || !(b.Value > 0) {
		return Num{}
	}
	return records.Known(a.Value / b.Value)
}

// Median is missing where there is nothing.
func Median(xs []float64) Num {
	if len(xs) == 0 {
		return Num{}
	}
	return records.Known(estimate.Median(xs))
}
