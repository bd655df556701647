package trays

import (
	"math"
	"math/rand/v2"
	"testing"

	"gonum.org/v1/gonum/stat/distuv"

	"traybook/records"
	"traybook/report/estimate"
	"traybook/report/internal/booktest"
)

// Trial sizes against R 4.2.2, power.t.test(delta = d, sd = 0.0577350269189626,
// power = .8, type = "paired")$n for d of 0.02, 0.05, 0.10: Guenther's sum, rounded
// up, lies within one sowing of it. Four matches of one tray each scatter with that sd,
// 5 x 2 / sqrt(3) of 100, so one tray of each must.
func TestTrialSizes(t *testing.T) {
	f := newPairBook(-5, 5, -5, 5).tell(t)
	for i, n := range []float64{67.35332, 12.52053, 4.848452} {
		one := f.Trial[2*i]
		booktest.Known(t, "s", one.S, 0.0577350269189626, 1e-12)
		booktest.Near(t, "sowings", float64(one.Sowings.Value), n, 1)
		if one.Trays != 1 || one.Difference != trialDifferences[i] || f.Trial[2*i+1].Trays != 4 {
			t.Errorf("%+v", one)
		}
	}
}

// Four trays of each a date, by hand: of the variance 0.01/3 the cells make 2 x 0.8 x 0.2
// / 100 = 0.0032 with one tray, 0.0008 with four.
func TestTrialOfFourTrays(t *testing.T) {
	f := newPairBook(-5, 5, -5, 5).tell(t)
	for _, tr := range f.Trial {
		if tr.Trays == 4 {
			booktest.Known(t, "s", tr.S, math.Sqrt(0.01/3-0.0032+0.0008), 1e-12)
		}
	}
	if n := f.Trial[1].Sowings; n.Value != int(math.Ceil(7.848880*(0.01/3-0.0024)/0.0004+1.920729)) {
		t.Errorf("%d sowings", n.Value)
	}
}

// Matches that differ less than their cells alone would make them scatter not at all
// beyond those; the matches of all pairs count, by their own cells.
func TestTrialOfAllPairs(t *testing.T) {
	calm := newPairBook(1, -1, 1, -1).tell(t)
	p := calm.plants.BookUsable.Value
	booktest.Known(t, "s of calm matches", calm.Trial[0].S, math.Sqrt(2*p*(1-p)/100), 1e-12)

	pb := newPairBook(-9, 9, -9, 9)
	b := pb.book(t)
	third := b.Tray("MIDDLE", "third kind", 100)
	third.Price, third.Count = records.Known(50.0), records.Known(2)
	for i, up := range []float64{70, 90, 70, 90} { // as HEAVY but a tenth more, in two trays each
		s := sow(b, "M"+string(rune('0'+i)), records.NewDate(2025, 1, 1+10*i).String(), "MIDDLE", 2, 2*up)
		s.Trays = 2
	}
	f := tell(b.Book())
	q := f.plants.BookUsable.Value
	squares := 4*0.09*0.09 + 4*0.1*0.1 + 4*0.01*0.01 // HEAVY/THIN, MIDDLE/THIN, MIDDLE/HEAVY about their means
	chance := 3.0 / 4 * 4 * q * (1 - q) * (2.0/100 + 2*(1.0/100+1.0/200))
	want := math.Sqrt(2*q*(1-q)/100 + (squares-chance)/9)
	for _, tr := range f.Trial {
		if tr.Trays == 1 {
			booktest.Known(t, "s of "+tr.Tray+" and "+tr.Other, tr.S, want, 1e-12)
		}
	}
}

// Without a pair of four matches a trial is laid out by the book's usable rate and
// scatter; where batches are too few for a scatter, none is.
func TestTrialWithoutMatches(t *testing.T) {
	f := newPairBook(-5, 5, -5).tell(t)
	used, ok := f.plants.UsableScatter.Of("")
	if !ok {
		t.Fatal("six batches in two groups have a scatter")
	}
	p := f.plants.BookUsable.Value // 235 + 240 of 600 cells
	booktest.Near(t, "usable rate", p, 475.0/600, 1e-12)
	for _, tr := range f.Trial {
		booktest.Known(t, "s", tr.S, math.Sqrt(2*p*(1-p)*(1/float64(100*tr.Trays)+used.Rho)), 1e-12)
		if !tr.Sowings.Known {
			t.Errorf("%+v", tr)
		}
	}
	few := newPairBook(1, 2).tell(t)
	if len(few.Trial) != 6 {
		t.Fatalf("%+v", few.Trial)
	}
	for _, tr := range few.Trial {
		if tr.S.Known || tr.Sowings.Known {
			t.Errorf("four batches tell no scatter: %+v", tr)
		}
	}
}

// A trial of the size told finds its difference about four times in five: 78 to 84 of
// 100 where dates are many, more where rounding up adds a good part of one, and with one
// date fewer no more than 82. By chance of every cell, and of the date in each of the two
// codes; the paired t test at 95 %.
func TestTrialsHaveThePowerTold(t *testing.T) {
	told := basis{usable: 0.8, beyond: 0.002, known: true}
	pairs, _ := pairsOf(newPairBook(1).tell(t).batches)
	pr := pairs[0]
	for _, tr := range told.sizes(pr) {
		dates := tr.Sowings.Value
		power := powerOf(told, tr, pr.tray.Cells, dates)
		fewer := powerOf(told, tr, pr.tray.Cells, dates-1)
		if power < 0.78 || dates > 10 && power > 0.84 || fewer > 0.82 {
			t.Errorf("%v with %d trays on %d dates: power %v, with one fewer %v", tr.Difference, tr.Trays, dates, power, fewer)
		}
	}
}

// powerOf is the share of trials on so many dates that show the difference, simulated.
func powerOf(of basis, tr Trial, cells, dates int) float64 {
	rng := rand.New(rand.NewPCG(4, 80))
	const trials = 3000
	found := 0
	tr.Sowings.Value = dates
	for range trials {
		if shows(rng, of, tr, cells) {
			found++
		}
	}
	return float64(found) / trials
}

// shows runs one trial and reports whether its interval excludes 0.
func shows(rng *rand.Rand, of basis, tr Trial, cells int) bool {
	d := make([]float64, tr.Sowings.Value)
	for i := range d {
		share := func(mean float64) float64 {
			p := min(max(mean+rng.NormFloat64()*math.Sqrt(of.beyond/2), 0), 1)
			n := float64(tr.Trays * cells)
			return distuv.Binomial{N: n, P: p, Src: rng}.Rand() / n
		}
		d[i] = share(of.usable+tr.Difference/2) - share(of.usable-tr.Difference/2)
	}
	paired, ok := estimate.PairedMean(d, 0.95)
	return ok && paired.CI.Low > 0
}
