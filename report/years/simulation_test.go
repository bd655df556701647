package years

import (
	"fmt"
	"math/rand/v2"
	"testing"

	"gonum.org/v1/gonum/stat/distuv"

	"traybook/report/internal/booktest"
	"traybook/report/rate"
)

// truth is what every sowing of a made farm does, in whatever season: by crop, variety and
// kind of tray, and how alike the cells of a batch are.
type truth struct {
	rates [3][3][2]float64
	rho   float64
}

func anyTruth(random *rand.Rand) truth {
	w := truth{rho: 0.005 + 0.095*random.Float64()}
	for crop := range w.rates {
		easy := 0.5 + 0.4*random.Float64()
		for variety := range w.rates[crop] {
			for kind := range w.rates[crop][variety] {
				w.rates[crop][variety][kind] = min(easy+0.15*random.Float64(), 0.98)
			}
		}
	}
	return w
}

// sow grows a season of a mix of its own: of every kind of sowing 0 to 3 batches of 1 to 3
// trays, counted and cleared.
func (w truth) sow(b *booktest.Book, season int, random *rand.Rand) {
	for crop, varieties := range w.rates {
		for variety, kinds := range varieties {
			for kind, mean := range kinds {
				for range random.IntN(4) {
					size := (1 - w.rho) / w.rho
					share := distuv.Beta{Alpha: mean * size, Beta: (1 - mean) * size, Src: random}.Rand()
					trays := 1 + random.IntN(3)
					up := int(distuv.Binomial{N: float64(100 * trays), P: share, Src: random}.Rand())
					s := grown(b, season, fmt.Sprint("crop", crop), fmt.Sprint("v", variety), []string{"AIR", "WALL"}[kind], trays, 0)
					b.Leave(s, fmt.Sprintf("%d-04-10", season), up, 0)
					b.Counts[len(b.Counts)-1].Emerged.Value = int32(up)
				}
			}
		}
	}
}

// Two seasons in which nothing changed but which varieties, trays and crops were grown, 400
// times: a verdict that a season came out clearly higher or lower is false. At 95 % one in
// twenty is to be expected, of the farm and of all crops together; bounded here at one in
// ten, for both measures.
func TestOtherKindsAreNoChange(t *testing.T) {
	if testing.Short() {
		t.Skip("400 made farms")
	}
	const farms = 400
	random := rand.New(rand.NewPCG(11, 7))
	farm, crops, moved := map[Measure]int{}, map[Measure]int{}, 0
	for range farms {
		w, b := anyTruth(random), booktest.New(t)
		w.sow(b, 2024, random)
		w.sow(b, 2025, random)
		f := figures(t, b.Book(), over)
		for _, m := range []Measure{Emergence, Usable} {
			of, _ := f.Farm(2025, m)
			if isClear(of) {
				farm[m]++
			}
			if of.Change < -.02 || of.Change > .02 {
				moved++
			}
			for _, c := range f.Crops(2025, m) {
				if isClear(c) {
					crops[m]++
					break
				}
			}
		}
	}
	for _, m := range []Measure{Emergence, Usable} {
		t.Logf("%s: false verdicts of the farm %.3f, of any crop %.3f", m, float64(farm[m])/farms, float64(crops[m])/farms)
		if of := farms * SimulatedFalse; float64(farm[m]) >= of || float64(crops[m]) >= of {
			t.Errorf("%s: %d of %d farms, %d with a crop", m, farm[m], farms, crops[m])
		}
		if farm[m]+crops[m] == 0 {
			t.Errorf("%s: never a clear verdict: nothing was tried", m)
		}
	}
	if moved < farms/2 {
		t.Errorf("the plain rate moved by 2 points in %d of %d: the mixes do not differ", moved, 2*farms)
	}
}

func isClear(c Change) bool { return c.Verdict == rate.ClearlyHigher || c.Verdict == rate.ClearlyLower }
