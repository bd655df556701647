package estimate

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

// broomrape reads the counts of Crowder (1978), Table 3: plates by seed and extract.
func broomrape(t *testing.T) map[string][]Count {
	groups := map[string][]Count{}
	for _, r := range rows(t, "orobanche.csv") {
		name := r["seed"] + "_" + r["extract"]
		groups[name] = append(groups[name], Count{X: r.number(t, "y"), N: r.number(t, "n")})
	}
	return groups
}

// The dispersion of the saturated quasi-binomial model is X2/df of rule "Scatter". (The file's design effects come
// of another estimator, from each group's own variance, and so cannot be ours.)
func TestScatterAgreesWithQuasiBinomial(t *testing.T) {
	want := expected(t, "orobanche")
	var all [][]Count
	for name, group := range broomrape(t) {
		all = append(all, group)
		p, _ := ShareInterval(group, 0, 17, 0.95)
		near(t, name, p, want(name, "pooled_proportion"), 1e-12)
	}
	s := ScatterOf(all)
	if s.DF != 17 {
		t.Errorf("df %d, want 17", s.DF)
	}
	near(t, "X2/df", s.X2/float64(s.DF), want("quasibinomial", "pearson_dispersion"), 1e-9)
	// The beta-binomial's likelihood estimate, 0.0124, is another estimator of the same thing: near, not equal.
	near(t, "rho", s.Rho(), want("beta_binomial_ml", "rho_icc"), 0.015)
}

// By hand: 8 and 4 of 10. p = 0.6, X2 = 2 x 2^2/2.4 = 10/3, denominator 2 x 9 x 0.5 = 9, rho = (10/3 - 1)/9 = 7/27.
// D = 1 + (200/20 - 1) 7/27 = 10/3.
func TestScatterByHand(t *testing.T) {
	s := ScatterOf([][]Count{{{8, 10}, {4, 10}}})
	near(t, "X2", s.X2, 10.0/3, 1e-12)
	near(t, "denominator", s.Denominator, 9, 1e-12)
	near(t, "rho", s.Rho(), 7.0/27, 1e-12)
	near(t, "D", DesignEffect([]float64{10, 10}, s.Rho()), 10.0/3, 1e-12)
	if s.DF != 1 {
		t.Errorf("df %d, want 1", s.DF)
	}
}

// Groups that can show no scatter leave no trace, nor do batches without cells.
func TestScatterLeavesOut(t *testing.T) {
	kept := []Count{{8, 10}, {4, 10}}
	want := ScatterOf([][]Count{kept})
	got := ScatterOf([][]Count{
		{{5, 10}}, {{0, 10}, {0, 12}}, {{10, 10}, {12, 12}}, nil, {{5, 10}, {0, 0}}, append(kept, Count{0, 0}),
	})
	if got != want {
		t.Errorf("got %+v, want %+v", got, want)
	}
}

func TestRhoIsHeld(t *testing.T) {
	for _, c := range []struct {
		s    Scatter
		want float64
	}{
		{Scatter{}, 0},
		{Scatter{X2: 5, DF: 1}, 0},                   // one cell a batch: no denominator
		{Scatter{X2: 1, DF: 3, Denominator: 9}, 0},   // less scatter than chance gives
		{Scatter{X2: 90, DF: 3, Denominator: 9}, .5}, // more than is believed
	} {
		if got := c.s.Rho(); got != c.want {
			t.Errorf("%+v: %v, want %v", c.s, got, c.want)
		}
	}
}

// A crop leans on its book by three degrees of freedom (rule "Scatter"). By hand: X2 20, df 5, G 100 in a book of rho 0.1:
// m = 20, (20 - 5 + 60 x 0.1)/(100 + 60) = 21/160. Without sums of its own a crop has the book's rho.
func TestLeaningByHand(t *testing.T) {
	book := Scatter{X2: 30, DF: 10, Denominator: 200}
	for _, c := range []struct {
		crop, book Scatter
		rho, df    float64
	}{
		{Scatter{X2: 20, DF: 5, Denominator: 100}, book, 21.0 / 160, 8},
		{Scatter{}, book, 0.1, 3},
		{Scatter{X2: 4, DF: 2}, book, (4 - 2 + 60*0.1) / 60, 5}, // one cell a batch: the book's m = 20
		{Scatter{X2: 0, DF: 50, Denominator: 100}, book, 0, 53},
		{Scatter{X2: 900, DF: 5, Denominator: 100}, book, 0.5, 8},
		{Scatter{}, Scatter{}, 0, 3},
		{Scatter{}, Scatter{X2: 9, DF: 4}, 0, 3},
	} {
		rho, df := c.crop.Leaning(c.book)
		near(t, "rho", rho, c.rho, 1e-15)
		near(t, "df", df, c.df, 0)
	}
}

// What is lent matters the less the more a crop has of its own, and lies between the two.
func TestLeaningLiesBetween(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		of := func(name string) Scatter {
			df := rapid.IntRange(3, 200).Draw(t, name+" df")
			g := rapid.Float64Range(1, 1e5).Draw(t, name+" G")
			return Scatter{X2: float64(df) + g*rapid.Float64Range(0, 0.5).Draw(t, name+" rho"), DF: df, Denominator: g}
		}
		crop, book := of("crop"), of("book")
		rho, df := crop.Leaning(book)
		weight := 3 / (float64(crop.DF) + 3)
		if want := (1-weight)*crop.Rho() + weight*book.Rho(); math.Abs(rho-want) > 1e-9 || df != float64(crop.DF)+3 {
			t.Fatalf("rho %v of %v and %v, want %v", rho, crop.Rho(), book.Rho(), want)
		}
	})
}

func TestDesignEffectEnds(t *testing.T) {
	for _, c := range []struct {
		ns        []float64
		rho, want float64
	}{{nil, .3, 1}, {[]float64{0, -2}, .3, 1}, {[]float64{1, 1, 1}, .3, 1}, {[]float64{72}, 0, 1}, {[]float64{72, 0}, .1, 8.1}} {
		near(t, "D", DesignEffect(c.ns, c.rho), c.want, 1e-12)
	}
}

// Scatter adds up over crops: crops apart and crops together give the same.
func TestScatterAddsOverCrops(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		groups := rapid.SliceOf(rapid.SliceOf(rapid.Custom(func(t *rapid.T) Count {
			n := rapid.IntRange(0, 1280).Draw(t, "n")
			return Count{X: float64(rapid.IntRange(0, n).Draw(t, "x")), N: float64(n)}
		}))).Draw(t, "groups")
		cut := rapid.IntRange(0, len(groups)).Draw(t, "cut")
		all, parts := ScatterOf(groups), ScatterOf(groups[:cut]).Add(ScatterOf(groups[cut:]))
		if all.DF != parts.DF || math.Abs(all.X2-parts.X2) > 1e-9*all.X2 ||
			math.Abs(all.Denominator-parts.Denominator) > 1e-9*all.Denominator {
			t.Fatalf("together %+v, apart %+v", all, parts)
		}
		if rho := all.Rho(); !(rho >= 0 && rho <= maxRho) {
			t.Fatalf("rho %v", rho)
		}
	})
}

// everyOutcome goes through all counts of batches of sizes ns, whose cells hold with chance p and are alike with correlation
// rho, and the chance of each.
func everyOutcome(ns []int, p, rho float64, see func(counts []Count, chance float64)) {
	counts := make([]Count, len(ns))
	var next func(j int, chance float64)
	next = func(j int, chance float64) {
		if j == len(ns) {
			see(counts, chance)
			return
		}
		for x := range ns[j] + 1 {
			counts[j] = Count{X: float64(x), N: float64(ns[j])}
			next(j+1, chance*(BetaBinomialAtLeast(x, ns[j], p, rho)-BetaBinomialAtLeast(x+1, ns[j], p, rho)))
		}
	}
	next(0, 1)
}

// What the scatter and the design effect say is exactly so for beta-binomial batches: sum (x - n p)^2 / n, which is
// X2 p (1 - p) of each outcome, has the mean P (1 - P)(DF + rho Denominator) for the true rate P; the pooled rate has the
// variance P (1 - P) D / N.
func TestScatterIsExactInTheMean(t *testing.T) {
	for _, c := range []struct {
		ns     []int
		p, rho float64
	}{{[]int{2, 3, 5}, 0.3, 0.2}, {[]int{7, 1}, 0.8, 0.05}, {[]int{4, 4, 4}, 0.5, 0}, {[]int{6, 2}, 0.9, 0.5}} {
		squares, variance, spread := 0.0, 0.0, Scatter{}
		var sizes []float64
		everyOutcome(c.ns, c.p, c.rho, func(counts []Count, chance float64) {
			x, n, _ := total(counts)
			if s := ScatterOf([][]Count{counts}); s.DF > 0 {
				squares += chance * s.X2 * x / n * (1 - x/n)
				spread = s
			}
			variance += chance * (x/n - c.p) * (x/n - c.p)
		})
		n := 0.0
		for _, size := range c.ns {
			sizes, n = append(sizes, float64(size)), n+float64(size)
		}
		near(t, "mean of the squares", squares, c.p*(1-c.p)*(float64(spread.DF)+c.rho*spread.Denominator), 1e-12)
		near(t, "variance", variance, c.p*(1-c.p)*DesignEffect(sizes, c.rho)/n, 1e-12)
	}
}
