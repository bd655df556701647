package report

// Share is a rate X/N over batches with its interval. Rate is missing where N
// is 0; Low and High where there are too few batches (rule 6). Rho and DF are
// those used for the interval, missing where there is none.
type Share struct {
	Batches         int
	X, N            float64
	Rate, Low, High Num
	Rho, DF         Num
}

// FewBatches is the number below which a group is "sown too seldom to judge"
// (rule 12).
const FewBatches = 3

// Few reports whether the share rests on too few batches to be judged.
func (s Share) Few() bool { return s.Batches < FewBatches }

// Verdict is a comparison in words (rules 13, 57).
type Verdict string

// The verdicts.
const (
	ClearlyHigher Verdict = "clearly higher"
	ClearlyLower  Verdict = "clearly lower"
	NoDifference  Verdict = "no clear difference"
	TooFew        Verdict = "too few batches"
)
