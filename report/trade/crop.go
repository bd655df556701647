package trade

import (
	"sync"

	"traybook/records"
)

// CropFacts is what is usual for a crop. Ranges run from Low to High, both included.
// SOURCES.md says of each column whether it was read in a source.
type CropFacts struct {
	Name                              string
	ChamberLowC, ChamberHighC         float64                // germination temperature, Celsius
	WeeksLow, WeeksHigh               float64                // from sowing to the field
	SeedsPerGramLow, SeedsPerGramHigh float64                // common practice; the packet outranks it
	MinimumGermination                records.Maybe[float64] // legal minimum, share of 1: 7 CFR 201.31; unknown where the kind is not listed
}

// SeedsPerGram is the middle of the usual range: it stands for a packet that names
// grams alone (rule "Seed").
func (c CropFacts) SeedsPerGram() float64 { return (c.SeedsPerGramLow + c.SeedsPerGramHigh) / 2 }

// Crop looks a crop up by its name, without case: the table's name or its part before
// a parenthesis. ok is false for a crop that the table does not know. It takes no
// other name for a crop: a farm's own word must not borrow the figures of another.
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
		WeeksLow: value("weeks_low"), WeeksHigh: value("weeks_high"),
		SeedsPerGramLow: value("seeds_per_g_low"), SeedsPerGramHigh: value("seeds_per_g_high"),
		MinimumGermination: r.number("fsa_min_germ_pct"),
	}
	facts.MinimumGermination.Value /= 100 // percent in the regulation
	return facts
}
