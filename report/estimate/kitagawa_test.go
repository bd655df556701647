package estimate

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

// Household headship 1970 and 1985 by age: Das Gupta (1993), Table 5.1.
func TestKitagawaAgreesWithDasGupta(t *testing.T) {
	var before, after []Weighted
	for _, r := range rows(t, "dasgupta_headship.csv") {
		before = append(before, Weighted{r.number(t, "size_1970"), r.number(t, "rate_1970")})
		after = append(after, Weighted{r.number(t, "size_1985"), r.number(t, "rate_1985")})
	}
	want := expected(t, "dasgupta_headship")
	rate, mix := Kitagawa(before, after)
	near(t, "rate", rate, want("headship", "kitagawa_rate_component"), 1e-9)
	near(t, "mix", mix, want("headship", "kitagawa_composition_component"), 1e-9)
}

// By hand: one crop kept at 0.8 -> 0.9 with weight 1 -> 1/2, one new at 0.5. The crop kept: rate 0.75 x 0.1 = 0.075, mix 0.85 x
// -0.5; the new one keeps its rate: mix 0.5 x 0.5. Together 0.7 - 0.8.
func TestKitagawaWithANewCrop(t *testing.T) {
	rate, mix := Kitagawa([]Weighted{{40, .8}, {0, 0}, {0, 0}}, []Weighted{{30, .9}, {30, .5}, {0, .3}})
	near(t, "rate", rate, 0.075, 1e-12)
	near(t, "mix", mix, -0.175, 1e-12)
	back, _ := Kitagawa([]Weighted{{30, .9}, {30, .5}}, []Weighted{{40, .8}, {0, 0}})
	near(t, "turned round", back, -0.075, 1e-12)
}

func TestKitagawaWithoutASeason(t *testing.T) {
	some := []Weighted{{40, .8}}
	for _, c := range [][2][]Weighted{{nil, nil}, {some, nil}, {some, {{0, .5}}}, {{{0, .5}}, some}, {some, {{1, 1}, {1, 1}}}} {
		if rate, mix := Kitagawa(c[0], c[1]); rate != 0 || mix != 0 {
			t.Errorf("%v: %v %v", c, rate, mix)
		}
	}
}

// The two parts add up to the change of the pooled rate, whatever grew.
func TestKitagawaAddsUp(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		groups := rapid.IntRange(1, 8).Draw(t, "groups")
		season := func(name string) (all []Weighted, pooled float64) {
			sum, weight := 0.0, 0.0
			for range groups {
				w := Weighted{float64(rapid.IntRange(0, 900).Draw(t, name+" weight")), rapid.Float64Range(0, 1).Draw(t, name+" rate")}
				all, sum, weight = append(all, w), sum+w.Weight*w.Rate, weight+w.Weight
			}
			return all, sum / weight
		}
		before, was := season("before")
		after, is := season("after")
		if math.IsNaN(was + is) {
			t.Skip("a season without weight")
		}
		if rate, mix := Kitagawa(before, after); math.Abs(rate+mix-(is-was)) > 1e-12 {
			t.Fatalf("%v + %v is not %v", rate, mix, is-was)
		}
	})
}
