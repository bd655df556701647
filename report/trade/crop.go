package trade

import (
	"sync"

	"traybook/records"
)

// CropFacts is what is usual for a crop. Ranges run from Low to High, both included.
type CropFacts struct {
	Name                              string
	ChamberLowC, ChamberHighC         float64 // germination temperature, Celsius
	ChamberDaysLow, ChamberDaysHigh   float64 // in the chamber; common practice, no source
	WeeksLow, WeeksHigh               float64 // from sowing to the field
	SeedsPerGramLow, SeedsPerGramHigh float64
	MinimumGermination                records.Maybe[float64] // legal minimum, share of 1: 7 CFR 201.31; unknown where the kind is not listed
	TemperaturesAndWeeksReadInASource bool                   // false: some or all of them from memory
}

// SeedsPerGram is the middle of the usual range (rule 58).
func (c CropFacts) SeedsPerGram() float64 { return (c.SeedsPerGramLow + c.SeedsPerGramHigh) / 2 }

// Crop looks a crop up by its name, without case: the table's name or its part before a parenthesis. ok is false for
// a crop that the table does not know.
func Crop(name string) (facts CropFacts, ok bool) {
	facts, ok = crops()[key(name)]
	return facts, ok
}

var crops = sync.OnceValue(func() map[string]CropFacts {
	var all []CropFacts
	for _, r := range read("crops.csv") {
		all = append(all, cropFacts(r))
	}
	return byName(func(c CropFacts) string { return c.Name }, all)
})

func cropFacts(r row) CropFacts {
	value := func(column string) float64 { return r.number(column).Value }
	facts := CropFacts{
		Name:        r["crop"],
		ChamberLowC: value("chamber_low_c"), ChamberHighC: value("chamber_high_c"),
		ChamberDaysLow: value("chamber_days_low"), ChamberDaysHigh: value("chamber_days_high"),
		WeeksLow: value("weeks_low"), WeeksHigh: value("weeks_high"),
		SeedsPerGramLow: value("seeds_per_g_low"), SeedsPerGramHigh: value("seeds_per_g_high"),
		MinimumGermination:                r.number("fsa_min_germ_pct"),
		TemperaturesAndWeeksReadInASource: r["verified"] == "yes",
	}
	facts.MinimumGermination.Value /= 100
	return facts
}
