package estimate

import (
	"math"
	"math/rand/v2"
	"runtime"
	"testing"

	"gonum.org/v1/gonum/stat/distuv"
)

// A simulated group: its true rate and its batches.
type simulatedGroup struct {
	rate    float64
	batches []Count
}

// share draws a share about mean whose repeats are alike with correlation rho.
func share(mean, rho float64, source rand.Source) float64 {
	if mean <= 0 || mean >= 1 {
		return mean
	}
	size := (1 - rho) / rho
	return distuv.Beta{Alpha: mean * size, Beta: (1 - mean) * size, Src: source}.Rand()
}

// simulatedBatch sows 0.5 to 10 trays: the batch has a rate of its own about the group's, each tray one about the batch's.
func simulatedBatch(rate, cells float64, of simulatedScatter, random *rand.Rand) Count {
	var batch Count
	ofBatch := share(rate, of.batch, random)
	for halves := 1 + random.IntN(20); halves > 0; halves -= 2 {
		n := cells * math.Min(float64(halves)/2, 1)
		batch.N += n
		batch.X += distuv.Binomial{N: n, P: share(ofBatch, of.tray, random), Src: random}.Rand()
	}
	return batch
}

// simulatedScatter is how alike the cells of a batch are, and beyond that those of a tray; a scant crop has few batches.
type simulatedScatter struct {
	batch, tray float64
	scant       bool
}

// simulatedCrop has 3 to 6 groups of 1 to 4 batches, rates from 0.5 to 0.99; a scant one two groups of two.
func simulatedCrop(of simulatedScatter, random *rand.Rand) []simulatedGroup {
	groups := make([]simulatedGroup, 3+random.IntN(4))
	if of.scant {
		groups = groups[:2]
	}
	for g := range groups {
		groups[g].rate = 0.5 + 0.49*random.Float64()
		cells, batches := []float64{72, 128}[random.IntN(2)], 1+random.IntN(4)
		if of.scant {
			batches = 2
		}
		for range batches {
			groups[g].batches = append(groups[g].batches, simulatedBatch(groups[g].rate, cells, of, random))
		}
	}
	return groups
}

// books are the ways in which the crops of a book scatter. The first crop is the wild one where there is one.
var books = map[string]func(random *rand.Rand) []simulatedScatter{
	"alike": func(random *rand.Rand) []simulatedScatter {
		one := simulatedScatter{batch: 0.005 + 0.145*random.Float64(), tray: 0.005}
		return []simulatedScatter{one, one, one, one}
	},
	"own": func(random *rand.Rand) (all []simulatedScatter) {
		for range 4 {
			all = append(all, simulatedScatter{batch: 0.005 + 0.095*random.Float64(), tray: 0.005 + 0.045*random.Float64()})
		}
		return all
	},
	"wild": func(*rand.Rand) []simulatedScatter {
		calm := simulatedScatter{batch: 0.01, tray: 0.005}
		return []simulatedScatter{{batch: 0.20, tray: 0.005, scant: true}, calm, calm, calm}
	},
}

func scatterOfCrop(groups []simulatedGroup) Scatter {
	var s Scatter
	for _, g := range groups {
		s = s.Add(ScatterOf([][]Count{g.batches}))
	}
	return s
}

// A tally of intervals that held the true rate.
type tally struct{ held, all int }

func (y *tally) add(ci Interval, truth float64) {
	y.all++
	if ci.Low <= truth && truth <= ci.High {
		y.held++
	}
}

func (y tally) percent() float64 { return 100 * float64(y.held) / float64(y.all) }

// coverage holds the tallies: rule "Interval of a share", those of the first crop and of one-batch groups apart too, and for
// comparison those that take every cell as chosen by itself.
type coverage struct{ batches, first, oneBatch, cells tally }

func (c *coverage) addBook(crops [][]simulatedGroup) {
	var book Scatter
	for _, groups := range crops {
		book = book.Add(scatterOfCrop(groups))
	}
	if book.DF < 3 {
		return
	}
	for i, groups := range crops {
		rho, df := scatterOfCrop(groups).Leaning(book)
		for _, g := range groups {
			p, ci := ShareInterval(g.batches, rho, df, 0.95)
			_, n, _ := total(g.batches)
			c.batches.add(ci, g.rate)
			c.cells.add(Wilson(p, n, Z(0.95)), g.rate)
			if i == 0 {
				c.first.add(ci, g.rate)
			}
			if len(g.batches) == 1 {
				c.oneBatch.add(ci, g.rate)
			}
		}
	}
}

// coverageOf simulates seasons whose crops scatter in one way, the same ones always.
func coverageOf(scatter func(*rand.Rand) []simulatedScatter) (c coverage) {
	random := rand.New(rand.NewPCG(1927, 1998))
	for range 1500 {
		var crops [][]simulatedGroup
		for _, of := range scatter(random) {
			crops = append(crops, simulatedCrop(of, random))
		}
		c.addBook(crops)
	}
	return c
}

// The 95 % intervals must hold the truth in as many of 100 groups as the method page says, the bad case told with the good.
// Were the simulation without scatter, intervals from cells alone would do as well: they must fall far short.
func TestSimulatedCoverage(t *testing.T) {
	rounded := 0.05 + 1e-9 // to one decimal
	if runtime.GOARCH != "amd64" {
		rounded = 0.5 // fused multiplication may draw other books: about five standard errors
	}
	for name, want := range map[string]struct{ told, least, most float64 }{
		"alike": {SimulatedCoverage, 95, 97}, "own": {SimulatedOwnCoverage, 94, 97}, "wild": {SimulatedWildCoverage, 83, 89},
	} {
		c := coverageOf(books[name])
		t.Logf("%s: %.2f %% of %d groups held the truth, %.2f %% of the first crop's, %.2f %% of those with one batch; from cells alone %.2f %%",
			name, c.batches.percent(), c.batches.all, c.first.percent(), c.oneBatch.percent(), c.cells.percent())
		got := c.batches.percent()
		if name == "wild" {
			got = c.first.percent()
		}
		near(t, name+" as told", got, want.told, rounded)
		if got < want.least || got > want.most {
			t.Errorf("%s: coverage %.2f %%, want %v to %v", name, got, want.least, want.most)
		}
		if name != "wild" && (c.oneBatch.percent() < 92 || c.oneBatch.percent() > 98) {
			t.Errorf("%s: coverage of groups with one batch %.2f %%", name, c.oneBatch.percent())
		}
		if got := c.cells.percent(); got > 80 {
			t.Errorf("%s: intervals from cells alone hold %.2f %%: the simulation scatters too little", name, got)
		}
	}
}
