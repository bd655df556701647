package estimate

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

// The test cases of OpenFormula (OASIS, ODF 1.2 part 2) and others, see testdata/README.txt. The spreadsheet functions are
// built here from ours: PMT(i; n; pv; fv; due) = -(pv + fv (1+i)^-n) CRF / (1+i)^due, PV(i; n; pmt; fv) = -pmt annuity - fv (1+i)^-n.
func TestMoneyAgreesWithOpenFormula(t *testing.T) {
	later := func(i, n, amount float64) float64 { return amount * math.Pow(1+i, -n) } // one amount, n seasons away
	functions := map[string]func(a []float64) float64{
		"PMT": func(a []float64) float64 {
			a = append(a, 0, 0)
			payment := -(a[2] + later(a[0], a[1], a[3])) * CapitalRecovery(a[0], a[1])
			return payment / math.Pow(1+a[0], a[4])
		},
		"PV":       func(a []float64) float64 { return -a[2]*Annuity(a[0], a[1]) - later(a[0], a[1], a[3]) },
		"CRF":      func(a []float64) float64 { return CapitalRecovery(a[0], a[1]) },
		"RECOVERY": func(a []float64) float64 { return (a[0]-a[1])*CapitalRecovery(a[2], a[3]) + a[1]*a[2] },
	}
	want := expected(t, "money")
	tested := 0
	for _, r := range rows(t, "money.csv") {
		near(t, r["case"], functions[r["function"]](r.numbers(t, "args")), want(r["case"], r["function"]), 1e-6)
		tested++
	}
	if tested != 6 {
		t.Errorf("tested %d cases, want 6", tested)
	}
}

// 2.5 seasons at 10 %, by hand: 1/1.1 + 1/1.21 + 0.5/1.1^2.5 = 0.9090909 + 0.8264463 + 0.5 x 0.7879856 = 2.1295300.
func TestAnnuityOfAPartSeason(t *testing.T) {
	near(t, "2.5 seasons", Annuity(0.10, 2.5), 2.1295300, 1e-7)
	near(t, "half a season", Annuity(0.10, 0.5), 0.5/math.Sqrt(1.1), 1e-12)
	near(t, "no interest", Annuity(0, 2.5), 2.5, 0)
}

// The life that makes an annuity: 12 seasons at 5 % where OpenFormula's PMT(0.05;12;1000) is -112.825410020815
// (testdata/money_expected.csv), and by hand 2.5 seasons at 10 %.
func TestAnnuityLife(t *testing.T) {
	for _, c := range []struct{ i, a, want float64 }{
		{0.05, 1000 / 112.825410020815, 12}, {0.10, 1/1.1 + 1/1.21 + 0.5/math.Pow(1.1, 2.5), 2.5}, {0.10, 0.5 / math.Sqrt(1.1), 0.5},
		{0, 7.25, 7.25}, {-1, 3, 3}, {0, 1e-4, 1e-4},
	} {
		n, ok := AnnuityLife(c.i, c.a)
		near(t, "life", n, c.want, 1e-9)
		if !ok {
			t.Errorf("%+v has no life", c)
		}
	}
	for _, c := range [][2]float64{{0.05, 20}, {0.05, 21}, {0.05, 0}, {0.05, -1}, {0, 2e9}, {0.05, math.NaN()}, {0.05, math.Inf(1)}, {0, math.Inf(1)}} {
		if n, ok := AnnuityLife(c[0], c[1]); ok || n != 0 {
			t.Errorf("%v: %v seasons", c, n)
		}
	}
}

// 0.1 x 1.1^2.5 / (1.1^2.5 - 1) with 1.1^2.5 = 1.2690587, by hand: 0.4716662.
func TestCapitalRecoveryOfAPartSeason(t *testing.T) {
	near(t, "2.5 seasons", CapitalRecovery(0.10, 2.5), 0.12690587/0.2690587, 1e-7)
	near(t, "half a season without interest", CapitalRecovery(0, 0.5), 2, 0)
}

func TestMoneyOutsideItsDomain(t *testing.T) {
	nan := math.NaN()
	for _, c := range []struct{ got, want float64 }{
		{CapitalRecovery(0.1, 0), 1}, {CapitalRecovery(0.1, -1), 1}, {CapitalRecovery(0, nan), 1},
		{CapitalRecovery(-0.1, 4), 0.25}, {CapitalRecovery(nan, 4), 0.25},
		{Annuity(0.1, 0), 0}, {Annuity(0.1, -1), 0}, {Annuity(0.1, nan), 0}, {Annuity(-2, 3), 3},
	} {
		if c.got != c.want {
			t.Errorf("got %v, want %v", c.got, c.want)
		}
	}
}

// Over whole seasons a charge by capital recovery pays the price back exactly; a longer life is worth more; little
// interest is like none.
func TestMoneyLaws(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		i := rapid.Float64Range(0, 0.5).Draw(t, "i")
		n := rapid.IntRange(1, 60).Draw(t, "n")
		if paid := CapitalRecovery(i, float64(n)) * Annuity(i, float64(n)); math.Abs(paid-1) > 1e-12 {
			t.Fatalf("pays back %v of the price", paid)
		}
		life := rapid.Float64Range(0, 60).Draw(t, "life")
		if Annuity(i, life+0.01) <= Annuity(i, life) {
			t.Fatal("a longer life is worth no more")
		}
		if back, ok := AnnuityLife(i, Annuity(i, life)); life > 0 && i*Annuity(i, life) < 1-1e-6 && (!ok || math.Abs(back-life) > 1e-9*max(1, life)) {
			t.Fatalf("a life of %v comes back as %v", life, back)
		}
		if tiny := Annuity(1e-12, life); math.Abs(tiny-life) > 1e-8 {
			t.Fatalf("annuity jumps at no interest: %v, %v", tiny, life)
		}
	})
}
