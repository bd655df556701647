package germination

import (
	"fmt"
	"math"
	"slices"
	"testing"

	"traybook/report/batch"
	"traybook/report/estimate"
	"traybook/report/internal/booktest"
	"traybook/report/rate"
)

// plain reads rule "Varieties" word for word, batch by batch and slowly, for one crop and
// season: a second computation to hold the first against.
type plain struct {
	in     []*Counted // of the crop, up to the season
	spread rate.Spread
	t      float64
}

// compare is a variety against the others of some batches: batches on both sides,
// difference, standard error.
func (p plain) compare(in []*Counted, variety string) (n, others int, d, se float64) {
	var sumW, sumWD, sumW2V float64
	strata, of := batch.GroupBy(in, stratumOf)
	for _, s := range strata {
		one := batch.Filter(of[s], func(c *Counted) bool { return c.Variety == variety })
		rest := batch.Filter(of[s], func(c *Counted) bool { return c.Variety != variety })
		if len(one) == 0 || len(rest) == 0 {
			continue
		}
		a, z := rate.Counts(one, emergenceCount), rate.Counts(rest, emergenceCount)
		x1, x2 := rate.Pool(a), rate.Pool(z)
		v := x1.Variance(a, p.spread.Rho) + x2.Variance(z, p.spread.Rho)
		q := (x1.X + x2.X + 0.5) / (x1.N + x2.N + 1)
		v = max(v, q*(1-q)*(p.effect(a)/x1.N+p.effect(z)/x2.N))
		w := x1.N * x2.N / (x1.N + x2.N)
		n, others = n+len(one), others+len(rest)
		sumW, sumWD, sumW2V = sumW+w, sumWD+w*(x1.Share.Value-x2.Share.Value), sumW2V+w*w*v
	}
	return n, others, sumWD / sumW, math.Sqrt(sumW2V) / sumW
}

func (p plain) effect(counts []estimate.Count) float64 {
	var ns []float64
	for _, c := range counts {
		ns = append(ns, c.N)
	}
	return estimate.DesignEffect(ns, p.spread.Rho)
}

// clear is 1 or -1 where the interval lies above or below 0, and there are batches enough.
func (p plain) clear(in []*Counted, variety string) int {
	n, others, d, se := p.compare(in, variety)
	switch {
	case n < 3 || others < 3:
		return 0
	case d-p.t*se > 0:
		return 1
	case d+p.t*se < 0:
		return -1
	}
	return 0
}

// settled maps each variety that is judged to the batches of the round that settled it.
func (p *plain) settled(level float64) map[string][]*Counted {
	last, left := map[string][]*Counted{}, p.in
	for round := 1; ; round++ {
		varieties, _ := batch.GroupBy(left, varietyOf)
		slices.Sort(varieties)
		var judged []string
		for _, v := range varieties {
			if n, others, _, _ := p.compare(left, v); n >= 3 && others >= 3 {
				judged = append(judged, v)
				last[v] = left
			}
		}
		if round == 1 {
			p.t = estimate.T(1-(1-level)/float64(len(judged)), p.spread.DF)
		}
		apart, most := "", 0.0
		for _, v := range judged {
			if _, _, d, se := p.compare(left, v); p.clear(left, v) != 0 && math.Abs(d)/se > most*(1+1e-9) {
				apart, most = v, math.Abs(d)/se
			}
		}
		if apart == "" || len(varieties) == 2 {
			return last
		}
		left = batch.Filter(left, func(c *Counted) bool { return c.Variety != apart })
	}
}

// words is the verdict of a variety, with the lot that it rests on.
func (p *plain) words(in []*Counted, variety string) string {
	is := p.clear(in, variety)
	if is == 0 {
		return "no clear difference"
	}
	own := batch.Filter(in, func(c *Counted) bool { return c.Variety == variety })
	lots, _ := batch.GroupBy(own, lotOf)
	slices.Sort(lots)
	_, _, with, _ := p.compare(in, variety)
	found, most := "", -1.0
	for _, lot := range lots {
		rest := batch.Filter(in, func(c *Counted) bool { return c.Variety != variety || c.Lot != lot })
		_, _, d, _ := p.compare(rest, variety)
		if math.IsNaN(d) {
			d = 0
		}
		if p.clear(rest, variety) != is && math.Abs(d-with) > most+1e-9 && !slices.Equal(lots, []string{""}) {
			found, most = lot, math.Abs(d-with)
			if found == "" {
				found = "none written"
			}
		}
	}
	way := map[int]string{1: "higher", -1: "lower"}[is]
	if found != "" {
		return way + ", by one lot: " + found
	}
	return "clearly " + way
}

// Of any book every verdict, number of batches and interval is that of the plain reading.
func TestVarietiesArePlainlyThose(t *testing.T) {
	told := map[string]int{}
	for seed := range uint64(12) {
		b := booktest.Farm(t, seed, 2, 90)
		worse(b, int(seed))
		f := figures(b, "2023-01-01")
		for _, d := range f.Differences {
			in := batch.Filter(f.Counted, func(c *Counted) bool { return c.EntersEmergence() && c.Crop == d.Crop && c.Season <= d.Season })
			p := &plain{in: in}
			p.spread, _ = f.Scatter.Of(d.Crop)
			round, judged := p.settled(0.95)[d.Variety]
			if !judged {
				round = in
			}
			n, others, difference, se := p.compare(round, d.Variety)
			what := fmt.Sprint(seed, " ", d.Season, " ", d.Variety)
			if n != d.Batches || others != d.OtherBatches || judged != d.Low.Known {
				t.Fatalf("%s: %+v; want %d and %d batches", what, d, n, others)
			}
			known(t, what, d.Difference, difference, 1e-9)
			if judged {
				known(t, what+" low", d.Low, difference-p.t*se, 1e-9)
				if got, want := d.Words(), p.words(round, d.Variety); got != want {
					t.Fatalf("%s: %q, want %q", what, got, want)
				}
			}
			told[string(d.Verdict)]++
		}
	}
	for _, v := range []rate.Verdict{rate.ClearlyHigher, rate.ClearlyLower, rate.HigherByLot, rate.LowerByLot, rate.NoDifference, rate.TooFew} {
		if told[string(v)] == 0 {
			t.Errorf("no book told %q: %v", v, told)
		}
	}
}

// worse lets some varieties and some lots of a farm come up worse, and makes one rare.
func worse(b *booktest.Book, seed int) {
	bad := map[string]bool{}
	for i := range b.Sowings {
		s := &b.Sowings[i]
		if nth := s.Variety[len(s.Variety)-1]; nth == '3' && i%11 > 0 {
			s.Variety = s.Variety[:len(s.Variety)-1] + "2"
		}
		nth := int(s.Variety[len(s.Variety)-1])
		bad[s.Code] = (nth+seed)%4 == 0 || s.Lot != "" && (int(s.Lot[1])+nth+seed)%5 == 0
	}
	for i := range b.Counts {
		if c := &b.Counts[i]; bad[b.Code(c.Batch)] {
			c.Emerged.Value = c.Emerged.Value * 2 / 3
		}
	}
}
