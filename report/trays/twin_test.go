package trays

import (
	"math"
	"math/rand/v2"
	"testing"

	"traybook/records"
	"traybook/report/internal/booktest"
)

// saidOfTwins is how often the average tray is said to pay, and a further one is bought,
// of books by chance: shares of 1.
type saidOfTwins struct{ middle, low, some, sure float64 }

// twins simulates books of a tray against its twin: no true difference, a price equal to
// gain x life when plants gained are 0.
func twins(t *testing.T, gains func(*rand.Rand) []float64) saidOfTwins {
	random := rand.New(rand.NewPCG(7, 28))
	const books, each = 2000, 1.0 / 2000
	var said saidOfTwins
	for range books {
		pb := newPairBook(gains(random)...)
		pb.heavy.Price, pb.heavy.Uses, pb.usable = records.Known(3.0), records.Known(3.0), 50
		pb.heavy.Count, pb.thin.Count = records.Known(1), uncounted
		f := tell(pb.book(t).Book())
		count := func(share *float64, is bool) {
			if is {
				*share += each
			}
		}
		verdict, buy := f.Payback[0].Verdict, f.Decisions[0].Buy
		count(&said.middle, verdict == PaysLow || verdict == PaysMiddle)
		count(&said.low, verdict == PaysLow)
		count(&said.some, buy.N > 0)
		count(&said.sure, buy.Sure())
	}
	return said
}

// byChance is n matched sowings, of which HEAVY gives more or fewer plants of 100 by the
// chance of each match alone, a standard deviation.
func byChance(random *rand.Rand, n int, sd float64) []float64 {
	gains := make([]float64, n)
	for i := range gains {
		gains[i] = math.Round(random.NormFloat64() * sd)
	}
	return gains
}

// By symmetry a twin pays in the middle or better in half of the books, and even at the
// low end in one of forty (half of 1 - confidence).
func TestTwinPaysAtTheRightRate(t *testing.T) {
	said := twins(t, func(random *rand.Rand) []float64 { return byChance(random, 8, 5.7) })
	booktest.Near(t, "in the middle", said.middle, TwinPaysMiddle, 0.03)
	booktest.Near(t, "even at the low end", said.low, TwinPaysLow, 0.01)
	booktest.Near(t, "some to buy", said.some, TwinPaysMiddle, 0.03)
	booktest.Near(t, "buying said outright", said.sure, TwinPaysLow, 0.01)
}

// A crop whose matches differ six times as much as the others' makes the low end more
// careful, not less.
func TestTwinWithAWildCrop(t *testing.T) {
	said := twins(t, func(random *rand.Rand) []float64 {
		return append(byChance(random, 4, 12), byChance(random, 4, 2)...)
	})
	if said.low > 0.02 || said.sure > 0.02 {
		t.Errorf("even at the low end %v, bought outright %v", said.low, said.sure)
	}
}

// The bad case: a crop that makes half of the matches takes to HEAVY, or against it, as a
// whole. Too many books say so.
func TestTwinThatOneCropTakesTo(t *testing.T) {
	said := twins(t, func(random *rand.Rand) []float64 {
		shift := math.Round(random.NormFloat64() * 12)
		gains := byChance(random, 8, 3)
		for i := range 4 {
			gains[i] += shift
		}
		return gains
	})
	booktest.Near(t, "even at the low end", said.low, TwinPaysLowOneCrop, 0.03)
	booktest.Near(t, "bought outright", said.sure, TwinPaysLowOneCrop, 0.03)
	booktest.Near(t, "in the middle", said.middle, TwinPaysMiddle, 0.03)
}
