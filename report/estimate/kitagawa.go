package estimate

// Weighted is one group's rate and the weight it has in its season: what the rate rests on, in any unit.
type Weighted struct{ Weight, Rate float64 }

// Kitagawa splits the change of a pooled rate from before to after into two parts that add up to it exactly: rate, what the
// same groups did, and mix, what comes of growing others. With w each group's share of its season's weight,
//
//	rate = sum (w_before + w_after)/2 (r_after - r_before)
//	mix  = sum (r_before + r_after)/2 (w_after - w_before)
//
// Both lists name the same groups in the same order; a group that a season lacks has weight 0 there, its rate is then taken
// to be the other season's, and it speaks through the mix alone. Where a season has no weight at all, or the lists differ
// in length, there is no change to split and both parts are 0: the caller must look first.
// Source: Kitagawa (1955), J. Am. Stat. Assoc. 50:1168-1194; Das Gupta (1993), US Census Bureau P23-186, chapter 5.
func Kitagawa(before, after []Weighted) (rate, mix float64) {
	sumBefore, sumAfter := totalWeight(before), totalWeight(after)
	if len(before) != len(after) || sumBefore == 0 || sumAfter == 0 {
		return 0, 0
	}
	for g := range before {
		b, a := before[g], after[g]
		if !(b.Weight > 0) {
			b = Weighted{0, a.Rate}
		}
		if !(a.Weight > 0) {
			a = Weighted{0, b.Rate}
		}
		if b.Weight+a.Weight == 0 {
			continue
		}
		wb, wa := b.Weight/sumBefore, a.Weight/sumAfter
		rate += (wb + wa) / 2 * (a.Rate - b.Rate)
		mix += (b.Rate + a.Rate) / 2 * (wa - wb)
	}
	return rate, mix
}

func totalWeight(groups []Weighted) float64 {
	sum := 0.0
	for _, g := range groups {
		if g.Weight > 0 {
			sum += g.Weight
		}
	}
	return sum
}
