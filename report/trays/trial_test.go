package trays

import (
	"math"
	"testing"

	"traybook/report/internal/booktest"
)

// Trial sizes against R 4.2.2, power.t.test(delta = d, sd = 0.0577350269189626,
// power = .8, type = "paired")$n for d of 0.02, 0.05, 0.10: Guenther's sum, rounded
// up, lies within one sowing of it.
func TestTrialSizes(t *testing.T) {
	f := newPairBook(-5, 5, -5, 5).tell(t) // sd 5 x 2 / sqrt(3) = 5.7735 of 100
	booktest.Known(t, "s", f.Trial[0].S, 0.0577350269189626, 1e-12)
	for i, n := range []float64{67.35332, 12.52053, 4.848452} {
		booktest.Near(t, "sowings", float64(f.Trial[i].Sowings.Value), n, 1)
	}
}

// With fewer than four matches a trial is laid out by the book's usable rate and
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
		booktest.Known(t, "s", tr.S, math.Sqrt(2*p*(1-p)*(1.0/100+used.Rho)), 1e-12)
		if !tr.Sowings.Known {
			t.Errorf("%+v", tr)
		}
	}
	few := newPairBook(1, 2).tell(t)
	if len(few.Trial) != 3 {
		t.Fatalf("%+v", few.Trial)
	}
	for _, tr := range few.Trial {
		if tr.S.Known || tr.Sowings.Known {
			t.Errorf("four batches tell no scatter: %+v", tr)
		}
	}
}
