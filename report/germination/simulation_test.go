package germination

import (
	"fmt"
	"math/rand/v2"
	"testing"

	"gonum.org/v1/gonum/stat/distuv"

	"traybook/report/internal/booktest"
	"traybook/report/rate"
)

// equalVarieties is a season of one crop in which six varieties come up alike: four
// batches each, cells of a batch correlated by rho (beta-binomial).
func equalVarieties(t testing.TB, source *rand.Rand, share, rho float64) *booktest.Book {
	b := booktest.New(t)
	k := 1/rho - 1
	beta := distuv.Beta{Alpha: share * k, Beta: (1 - share) * k, Src: source}
	for i := range 24 {
		code := fmt.Sprintf("%02d", i)
		b.Sow(code, "2025-03-01", "orache", fmt.Sprint("v", i%6), "AIR", 1)
		b.Count(code, "2025-03-20", int(distuv.Binomial{N: 100, P: beta.Rand(), Src: source}.Rand()))
	}
	return b
}

// Rule "Varieties": among equal varieties the share of seasons in which any is called
// clearly lower stays under 5 %, whatever the scatter between batches.
func TestEqualVarietiesAreSeldomCalledLower(t *testing.T) {
	const seasons = 400
	for _, rho := range []float64{0.01, 0.05, 0.15} {
		source := rand.New(rand.NewPCG(20, uint64(1000*rho)))
		called := 0
		for range seasons {
			for _, d := range figures(equalVarieties(t, source, 0.85, rho), "2025-03-20").Differences {
				if d.Verdict == rate.ClearlyLower {
					called++
					break
				}
			}
		}
		if share := float64(called) / seasons; share >= 0.05 {
			t.Errorf("scatter %v: %.3f of the seasons call an equal variety lower", rho, share)
		}
	}
}

// A variety that comes up much worse is called so nearly always: the verdict is not
// simply shy.
func TestAWorseVarietyIsFound(t *testing.T) {
	source := rand.New(rand.NewPCG(7, 7))
	found := 0
	for range 50 {
		b := equalVarieties(t, source, 0.85, 0.02)
		for i := range b.Counts {
			if b.Sowings[i].Variety == "v0" {
				b.Counts[i].Emerged.Value = b.Counts[i].Emerged.Value * 6 / 10
			}
		}
		for _, d := range figures(b, "2025-03-20").Differences {
			if d.Variety == "v0" && d.Verdict == rate.ClearlyLower {
				found++
			}
		}
	}
	if found < 45 {
		t.Errorf("found %d of 50", found)
	}
}
