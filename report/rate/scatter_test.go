package rate

import (
	"testing"

	"traybook/report/batch"
	"traybook/report/estimate"
	"traybook/report/internal/booktest"
)

// counted is a batch of a test: its crop, its group within the crop, and its count.
type counted struct {
	crop, group string
	estimate.Count
}

// batches sows one batch of 100 cells for each number of cells that came up.
func batches(crop, group string, up ...float64) []counted {
	var all []counted
	for _, x := range up {
		all = append(all, counted{crop, group, estimate.Count{X: x, N: 100}})
	}
	return all
}

type key struct{ crop, group string }

func measure(all []counted, level float64) Scatter {
	keys, groups := batch.GroupBy(all, func(c counted) key { return key{c.crop, c.group} })
	each := func(yield func([]counted) bool) {
		for _, k := range keys {
			if !yield(groups[k]) {
				return
			}
		}
	}
	return ScatterOf(each, func(c counted) string { return c.crop }, func(c counted) estimate.Count { return c.Count }, level)
}

func countsOf(all []counted) []estimate.Count {
	return Counts(all, func(c counted) estimate.Count { return c.Count })
}

// Rule "Scatter": the book adds numerators, denominators and degrees of freedom up; a
// crop leans on it by three degrees of freedom, and one never sown has its scatter.
// Batches are compared within their group only.
func TestScatterOfCropAndBook(t *testing.T) {
	one, two, few := batches("orache", "one", 60, 80, 70), batches("orache", "two", 90, 99, 95), batches("mibuna", "one", 40, 75)
	s := measure(append(append(append([]counted{}, one...), two...), few...), 0.95)
	orache, mibuna := estimate.ScatterOf([][]estimate.Count{countsOf(one), countsOf(two)}), estimate.ScatterOf([][]estimate.Count{countsOf(few)})
	book := orache.Add(mibuna)
	lent := func(of estimate.Scatter, m float64) Spread {
		return Spread{(of.X2 - float64(of.DF) + 3*m*book.Rho()) / (of.Denominator + 3*m), float64(of.DF) + 3}
	}
	for crop, want := range map[string]Spread{
		"orache": lent(orache, orache.Denominator/4), "mibuna": lent(mibuna, mibuna.Denominator), "": {book.Rho(), 5}, "never sown": {book.Rho(), 3},
	} {
		used, ok := s.Of(crop)
		if !ok || used.DF != want.DF {
			t.Errorf("%q: %+v, %v", crop, used, ok)
		}
		booktest.Near(t, crop+" rho", used.Rho, want.Rho, 1e-15)
	}
	if o, m := lent(orache, orache.Denominator/4), lent(mibuna, mibuna.Denominator); o.Rho == m.Rho || o.Rho == book.Rho() || m.Rho == book.Rho() {
		t.Error("the test tells nothing")
	}
	booktest.Near(t, "level", s.Level(), 0.95, 0)
}

// By hand: two groups of three batches of 100, 60 70 80 and 65 70 75 up: p = 0.7, X2 =
// (100 + 0 + 100)/21 + (25 + 0 + 25)/21 = 250/21, df 4, G = 6 x 99 x 2/3 = 396: the book's
// rho is (250/21 - 4)/396. Alone in it the crop is lent what it has: its rho is the same,
// with 7 degrees of freedom.
func TestScatterByHand(t *testing.T) {
	s := measure(append(batches("orache", "one", 60, 70, 80), batches("orache", "two", 65, 70, 75)...), 0.95)
	for crop, df := range map[string]float64{"orache": 7, "": 4} {
		used, _ := s.Of(crop)
		booktest.Near(t, "rho", used.Rho, (250.0/21-4)/396, 1e-15)
		booktest.Near(t, "df", used.DF, df, 0)
	}
}

// A calm crop beside a wild one, by hand: orache as above (X2 250/21, df 4, G 396) and
// mibuna of which 4 batches of 100 came up 70 each (X2 0, df 3, G = 4 x 99 x 3/4 = 297).
// The book: X2 250/21, df 7, G 693. Mibuna's m is 99:
//
//	rho_b = (250/21 - 7)/693,  rho = (0 - 3 + 297 rho_b)/(297 + 297), below 0: 0
//	orache: m is 99 too, rho = (250/21 - 4 + 297 rho_b)/(396 + 297)
func TestCropsLeanOnTheBookByHand(t *testing.T) {
	all := append(batches("orache", "one", 60, 70, 80), batches("orache", "two", 65, 70, 75)...)
	s := measure(append(all, batches("mibuna", "one", 70, 70, 70, 70)...), 0.95)
	book := (250.0/21 - 7) / 693
	for crop, want := range map[string]Spread{"": {book, 7}, "mibuna": {0, 6}, "orache": {(250.0/21 - 4 + 297*book) / 693, 7}} {
		used, _ := s.Of(crop)
		booktest.Near(t, crop+" rho", used.Rho, want.Rho, 1e-15)
		booktest.Near(t, crop+" df", used.DF, want.DF, 0)
	}
}

// Three degrees of freedom are enough, two tell nothing: then there is a rate, and no
// interval.
func TestTooFewBatchesHaveNoInterval(t *testing.T) {
	few := batches("orache", "one", 60, 70, 80)
	r := measure(few, 0.95).Rate("orache", countsOf(few))
	booktest.Known(t, "share", r.Share, 0.7, 1e-15)
	for _, n := range []Num{r.Low, r.High, r.Rho, r.DF} {
		booktest.Missing(t, "interval of 2 degrees of freedom", n)
	}
	enough := batches("orache", "one", 60, 70, 80, 70)
	r = measure(enough, 0.95).Rate("orache", countsOf(enough))
	booktest.Known(t, "df", r.DF, 6, 0)
	if !(r.Low.Known && 0 < r.Low.Value && r.Low.Value < 0.7 && 0.7 < r.High.Value && r.High.Value < 1) {
		t.Errorf("interval %v to %v", r.Low, r.High)
	}
	none := measure(enough, 0.95).Rate("orache", nil)
	booktest.Missing(t, "share of nothing", none.Share)
	booktest.Missing(t, "interval of nothing", none.Low)
}

// Rule "Interval of a share", its parts put together by hand: four batches of 100, the
// effective count n = 400 / (1 + 99 rho), Wilson's ends at 0.7 -+ 1/2n with t of 3 + 3
// degrees of freedom at the level asked for.
func TestIntervalOfAShare(t *testing.T) {
	all := batches("orache", "one", 60, 70, 80, 70)
	for _, level := range []float64{0.80, 0.95} {
		s := measure(all, level)
		used, _ := s.Of("orache")
		n, q := 400/(1+99*used.Rho), estimate.T(level, 6)
		r := s.Rate("orache", countsOf(all))
		booktest.Known(t, "low", r.Low, estimate.Wilson(0.7-1/(2*n), n, q).Low, 1e-12)
		booktest.Known(t, "high", r.High, estimate.Wilson(0.7+1/(2*n), n, q).High, 1e-12)
		booktest.Known(t, "rho", r.Rho, used.Rho, 0)
	}
}

// All up, or none: such a group shows no scatter, so alone it has no interval; beside
// others its end is exactly 0 or 1.
func TestAllOrNoneUp(t *testing.T) {
	others := batches("mibuna", "one", 50, 60, 55, 52)
	for _, up := range []float64{0, 100} {
		same := batches("orache", "one", up, up, up, up, up, up)
		alone := measure(same, 0.95).Rate("orache", countsOf(same))
		booktest.Known(t, "share", alone.Share, up/100, 0)
		booktest.Missing(t, "low", alone.Low)
		r := measure(append(same, others...), 0.95).Rate("orache", countsOf(same))
		booktest.Known(t, "df lent by the book", r.DF, 3, 0)
		if up == 0 && (r.Low.Value != 0 || !(r.High.Value > 0)) || up == 100 && (r.High.Value != 1 || !(r.Low.Value < 1)) {
			t.Errorf("%v up: %v to %v", up, r.Low, r.High)
		}
	}
}
