package estimate

// Count is x of n in one batch, the replicate: its trays share day, lot, mix and chamber, so they are added up first.
type Count struct{ X, N float64 }

// Scatter holds the parts of the estimate of how alike the cells of a batch are (rule "Scatter"): X2 is Pearson's sum,
// Denominator the sum of (n - 1)(1 - n/N), DF batches less groups. Parts add over crops, so that a crop with too few
// batches can lean on the whole book.
type Scatter struct {
	X2, Denominator float64
	DF              int
}

// maxRho bounds the correlation: cells of one batch more alike than this are not believed (rule "Scatter").
const maxRho = 0.5

// ScatterOf returns the scatter of batches about their group's rate, over the groups that can show any: those of two or
// more batches whose pooled rate p lies strictly between 0 and 1. Per group, with N its sum of n,
//
//	X2 = sum (x - n p)^2 / (n p (1 - p)),  Denominator = sum (n - 1)(1 - n/N),  DF = batches - 1
//
// Batches with n at or below 0 are ignored. No such group gives the zero Scatter: nothing known.
// With p known in its divisor X2 has the mean DF + rho Denominator exactly, which is what the estimate solves for rho.
// Source: the first step of the moment estimator of Williams (1982), Appl. Stat. 31:144-148, the leverage of a batch in its
// group being n/N; checked against the R package PF (tauWt), and the mean by adding up every outcome.
func ScatterOf(groups [][]Count) Scatter {
	var all Scatter
	for _, group := range groups {
		all = all.Add(scatterOfGroup(group))
	}
	return all
}

func scatterOfGroup(group []Count) Scatter {
	x, n, batches := total(group)
	p := x / n
	if batches < 2 || !(p > 0 && p < 1) {
		return Scatter{}
	}
	s := Scatter{DF: batches - 1}
	for _, c := range group {
		if c.N > 0 {
			off := c.X - c.N*p
			s.X2 += off * off / (c.N * p * (1 - p))
			s.Denominator += (c.N - 1) * (1 - c.N/n)
		}
	}
	return s
}

// total adds up the batches that hold anything.
func total(counts []Count) (x, n float64, batches int) {
	for _, c := range counts {
		if c.N > 0 {
			x, n, batches = x+c.X, n+c.N, batches+1
		}
	}
	return x, n, batches
}

// Add returns the scatter of both together.
func (s Scatter) Add(o Scatter) Scatter {
	return Scatter{X2: s.X2 + o.X2, Denominator: s.Denominator + o.Denominator, DF: s.DF + o.DF}
}

// Rho returns the correlation of cells within a batch, (X2 - DF) / Denominator held within 0..0.5; 0 means that batches
// differ no more than chance alone allows. Denominator 0 gives 0. It says nothing below 3 degrees of freedom: the caller
// must look at DF.
func (s Scatter) Rho() float64 {
	return ratioHeld(s.X2-float64(s.DF), s.Denominator)
}

// Prior is how many degrees of freedom the book lends to every crop's scatter (rule "Scatter"): few enough for a crop of many
// batches to speak for itself. After the moderated variances of Smyth (2004), Stat. Appl. Genet. Mol. Biol. 3(1):3, where the
// prior's weight is estimated; three is a choice of ours, held by simulation (SimulatedCoverage, SimulatedWildCoverage).
const Prior = 3

// Leaning returns the correlation of cells within a batch of a crop whose scatter leans on that of its book, and its degrees
// of freedom, DF + 3. With G the denominator, m = G/DF of the crop, of the book where either is 0, and the book's own rho:
//
//	(X2 - DF + 3 m rho_book) / (G + 3 m)
//
// held within 0..0.5; 0 where the denominator is. A crop of which nothing is known so has the book's rho.
func (s Scatter) Leaning(book Scatter) (rho, df float64) {
	m := Prior * s.perDF(book)
	df = float64(s.DF)
	return ratioHeld(s.X2-df+m*book.Rho(), s.Denominator+m), df + Prior
}

// perDF is how much of the denominator a degree of freedom brings, in the book where s has neither.
func (s Scatter) perDF(book Scatter) float64 {
	for _, of := range []Scatter{s, book} {
		if of.DF > 0 && of.Denominator > 0 {
			return of.Denominator / float64(of.DF)
		}
	}
	return 0
}

// ratioHeld is a correlation, held within 0..0.5, and 0 where there is no denominator.
func ratioHeld(over, under float64) float64 {
	if !(under > 0) {
		return 0
	}
	return hold(over/under, 0, maxRho)
}

// DesignEffect returns D, by how much batches of ns cells widen a variance against as many cells chosen one by one:
//
//	D = 1 + (sum n^2 / N - 1) rho,  N = sum n
//
// Sizes at or below 0 are ignored; none gives 1. N/D is the effective count. It is the exact ratio of the two variances where
// any two cells of a batch are alike with correlation rho.
// Source: Kish (1965), Survey Sampling, with the mean size of a batch weighted by size; checked against the R package Hmisc
// (deff), and by adding up every outcome.
func DesignEffect(ns []float64, rho float64) float64 {
	var sum, squares float64
	for _, n := range ns {
		if n > 0 {
			sum, squares = sum+n, squares+n*n
		}
	}
	return DesignEffectOf(sum, squares, rho)
}

// DesignEffectOf is DesignEffect of batches whose sizes add up to sum and their squares to squares.
func DesignEffectOf(sum, squares, rho float64) float64 {
	if !(sum > 0) {
		return 1
	}
	return 1 + (squares/sum-1)*rho
}
