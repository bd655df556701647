package sowing

import (
	"fmt"
	"math/rand/v2"
	"testing"

	"gonum.org/v1/gonum/stat/distuv"

	"traybook/records"
	"traybook/report/internal/booktest"
)

// house is what a book by chance is drawn from: crops of two varieties of so many batches
// each, over three seasons; how alike cells of a batch are, and batches of a season.
type house struct {
	crops, batches int
	rho, rhoSeason float64
}

// share draws a share about a mean whose repeats are alike with correlation rho.
func share(mean, rho float64, random *rand.Rand) float64 {
	if rho == 0 {
		return mean
	}
	k := 1/rho - 1
	return distuv.Beta{Alpha: mean * k, Beta: (1 - mean) * k, Src: random}.Rand()
}

// usable draws how many of so many cells gave a plant.
func usable(cells int, p float64, random *rand.Rand) int {
	return int(distuv.Binomial{N: float64(cells), P: p, Src: random}.Rand())
}

// book draws a book and the true rate of every crop and variety, 0.6 to 0.95.
func (h house) book(t testing.TB, random *rand.Rand) (b *booktest.Book, truth map[string]float64) {
	b, truth = booktest.New(t), map[string]float64{}
	for v := range 2 * h.crops {
		crop, variety := fmt.Sprint("crop ", v/2), fmt.Sprint("variety ", v%2)
		mean := 0.6 + 0.35*random.Float64()
		truth[crop+variety] = mean
		var seasons [3]float64
		for s := range seasons {
			seasons[s] = share(mean, h.rhoSeason, random)
		}
		for i := range h.batches {
			trays := 1 + random.IntN(3)
			s := b.Sow(fmt.Sprint(crop, variety, i), fmt.Sprintf("%d-03-01", 2023+i%3), crop, variety, "AIR", float64(trays))
			s.Wanted = records.Known(80 * trays)
			b.Leave(s, (s.Sown + 40).String(), usable(100*trays, share(seasons[i%3], h.rho, random), random), 0)
		}
	}
	return b, truth
}

// reached is the share of next seasons in which the cells told for 100 plants give them,
// and of groups that are told a number, over so many books.
func (h house) reached(t testing.TB, books int) (reached, told float64) {
	random := rand.New(rand.NewPCG(uint64(h.batches), uint64(1e6*h.rho+1e3*h.rhoSeason)))
	rows, with, enough := 0, 0, 0
	for range books {
		b, truth := h.book(t, random)
		for _, r := range figures(t, b.Book()).Sowing {
			rows++
			if !r.CellsPer100.Known {
				continue
			}
			with++
			next := share(share(truth[r.Crop+r.Variety], h.rhoSeason, random), h.rho, random)
			if usable(r.CellsPer100.Value, next, random) >= 100 {
				enough++
			}
		}
	}
	return float64(enough) / float64(with), float64(with) / float64(rows)
}

// Asked to be 90 % sure, the cells told reach the plants wanted in 85 to 93 % of seasons,
// from few batches and from many, in a farm of four crops.
func TestCellsToldReachThePlantsWanted(t *testing.T) {
	for _, h := range []house{{crops: 4, rho: 0.02, rhoSeason: 0.005}, {crops: 4, rho: 0.05}} {
		for _, h.batches = range []int{3, 5, 6, 10, 20} {
			reached, told := h.reached(t, 300)
			t.Logf("%+v: %.3f reached, %.3f told", h, reached, told)
			if reached < SimulatedLeast || reached > SimulatedMost || told < 0.9 {
				t.Errorf("%+v: %.3f of seasons reached, %.3f of groups told; want %v to %v, above 0.9", h, reached, told, SimulatedLeast, SimulatedMost)
			}
		}
	}
}

// The bad case: cells of a batch alike by 0.1 and only three batches. Groups that did well
// by chance are told a number, those that did badly none, and the plants are reached less
// often than asked, though not by much.
func TestWildScatterAndThreeBatches(t *testing.T) {
	reached, told := house{crops: 4, batches: 3, rho: 0.1}.reached(t, 400)
	t.Logf("%.3f reached, %.3f told", reached, told)
	if reached < SimulatedWild-0.005 || reached > SimulatedWild+0.005 || told > 0.95 {
		t.Errorf("%.3f of seasons reached, %.3f of groups told", reached, told)
	}
}
