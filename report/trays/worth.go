package trays

import (
	"math"

	"traybook/report/estimate"
)

// sum adds terms of money; what is left of those that cancel out but for the noise
// of floating point is 0 (rule "Missing").
func sum(terms ...float64) float64 {
	total, largest := 0.0, 0.0
	for _, t := range terms {
		total, largest = total+t, max(largest, math.Abs(t))
	}
	if math.Abs(total) < noise*largest {
		return 0
	}
	return total
}

// noise is the part of the largest term below which a sum is 0, and plants below which
// none are gained.
const noise = 1e-9

// A term is what a tray is held for: uses a season and its life in uses.
type term struct{ uses, life float64 }

// annuity is what a gain of 1 a use is worth today over the term, by season:
//
//	uses a season x annuity(life in uses / uses a season)
func (t term) annuity(interest float64) float64 {
	return t.uses * estimate.Annuity(interest, t.life/t.uses)
}

// worth is what a tray is worth today (rule "The average tray"), in money: what its
// uses gain over its life, less its price.
func (pr *pair) worth(gain float64, over term) float64 {
	return sum(gain*over.annuity(pr.settings.DiscountRate), -pr.tray.Price.Value)
}
