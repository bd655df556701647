package rate

import (
	"testing"

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
	return ScatterOf(all, func(c counted) key { return key{c.crop, c.group} }, func(k key) string { return k.crop },
		func(c counted) estimate.Count { return c.Count }, level)
}

func countsOf(all []counted) []estimate.Count {
	return Counts(all, func(c counted) estimate.Count { return c.Count })
}

// Rule "Scatter": a crop with three degrees of freedom or more has its own scatter, one
// with fewer the book's, which adds numerators, denominators and degrees up; batches are
// compared within their group only.
func TestScatterOfCropAndBook(t *testing.T) {
	one, two, few := batches("orache", "one", 60, 80, 70), batches("orache", "two", 90, 99, 95), batches("mibuna", "one", 40, 75)
	s := measure(append(append(append([]counted{}, one...), two...), few...), 0.95)
	orache := estimate.ScatterOf([][]estimate.Count{countsOf(one), countsOf(two)})
	book := orache.Add(estimate.ScatterOf([][]estimate.Count{countsOf(few)}))
	if orache.DF != 4 || book.DF != 5 || orache.Rho() == book.Rho() {
		t.Fatalf("the test tells nothing: df %d and %d", orache.DF, book.DF)
	}
	for crop, want := range map[string]estimate.Scatter{"orache": orache, "mibuna": book, "": book, "never sown": book} {
		used, ok := s.Of(crop)
		if !ok || used.DF != float64(want.DF) {
			t.Errorf("%q: %+v, %v", crop, used, ok)
		}
		booktest.Near(t, crop+" rho", used.Rho, want.Rho(), 1e-15)
	}
}

// By hand: two groups of three batches of 100, 60 70 80 and 65 70 75 up: p = 0.7, X2 =
// (100 + 0 + 100)/21 + (25 + 0 + 25)/21 = 250/21, df 4, denominator 6 x 99 x 2/3 = 396:
// rho = (250/21 - 4)/396.
func TestScatterByHand(t *testing.T) {
	s := measure(append(batches("orache", "one", 60, 70, 80), batches("orache", "two", 65, 70, 75)...), 0.95)
	used, _ := s.Of("orache")
	booktest.Near(t, "rho", used.Rho, (250.0/21-4)/396, 1e-15)
	booktest.Near(t, "df", used.DF, 4, 0)
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
	booktest.Known(t, "df", r.DF, 3, 0)
	if !(r.Low.Known && 0 < r.Low.Value && r.Low.Value < 0.7 && 0.7 < r.High.Value && r.High.Value < 1) {
		t.Errorf("interval %v to %v", r.Low, r.High)
	}
	none := measure(enough, 0.95).Rate("orache", nil)
	booktest.Missing(t, "share of nothing", none.Share)
	booktest.Missing(t, "interval of nothing", none.Low)
}

// Rule "Interval of a share", its parts put together by hand: four batches of 100, the
// effective count 400 / (1 + 99 rho), Wilson's ends with t of 3 degrees of freedom at
// the level asked for.
func TestIntervalOfAShare(t *testing.T) {
	all := batches("orache", "one", 60, 70, 80, 70)
	for _, level := range []float64{0.80, 0.95} {
		s := measure(all, level)
		used, _ := s.Of("orache")
		want := estimate.Wilson(0.7, 400/(1+99*used.Rho), estimate.T(level, 3))
		r := s.Rate("orache", countsOf(all))
		booktest.Known(t, "low", r.Low, want.Low, 1e-12)
		booktest.Known(t, "high", r.High, want.High, 1e-12)
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
		booktest.Known(t, "df of the book", r.DF, 3, 0)
		if up == 0 && (r.Low.Value != 0 || !(r.High.Value > 0)) || up == 100 && (r.High.Value != 1 || !(r.Low.Value < 1)) {
			t.Errorf("%v up: %v to %v", up, r.Low, r.High)
		}
	}
}
