package trade

import (
	"math"
	"sync"

	"traybook/records"
)

// CropFacts is what is usual for a crop. Ranges run from Low to High, both included.
// SOURCES.md says of each column whether it was read in a source.
type CropFacts struct {
	Name                              string
	ChamberLowC, ChamberHighC         float64                // set points of germination chambers, Celsius: where it comes up fast
	GermLowC, GermHighC               float64                // optimum range of germination, Celsius
	GermMaxC                          float64                // above it little comes up, Celsius (rule "Alarms")
	WeeksLow, WeeksHigh               float64                // from sowing to the field
	SeedsPerGramLow, SeedsPerGramHigh float64                // common practice; the packet outranks it
	MinimumGermination                records.Maybe[float64] // legal minimum, share of 1: 7 CFR 201.31; unknown where the kind is not listed
}

// SeedsPerGram is the middle of the usual range: it stands for a packet that names
// grams alone (rule "Seed").
func (c CropFacts) SeedsPerGram() float64 { return (c.SeedsPerGramLow + c.SeedsPerGramHigh) / 2 }

// Crop looks a crop up by its name as a grower writes it: without case, in the plural,
// with more in brackets, or by another name of names.csv. ok is false for a crop that the
// table does not know: a word that is not listed must not borrow the figures of another.
func Crop(name string) (facts CropFacts, ok bool) { return find(crops(), name) }

var crops = sync.OnceValue(func() map[string]CropFacts {
	var all []CropFacts
	for _, r := range read("crops.csv") {
		all = append(all, cropFacts(r))
	}
	return byName(func(c CropFacts) string { return c.Name }, all)
})

func cropFacts(r row) CropFacts {
	value := func(column string) float64 { return r.number(column).Value }
	celsius := func(column string) float64 { return (value(column) - 32) * 5 / 9 }
	facts := CropFacts{
		Name:        r["crop"],
		ChamberLowC: value("chamber_low_c"), ChamberHighC: value("chamber_high_c"),
		GermLowC: celsius("germ_opt_low_f"), GermHighC: celsius("germ_opt_high_f"), GermMaxC: celsius("germ_max_f"),
		WeeksLow: value("weeks_low"), WeeksHigh: value("weeks_high"),
		SeedsPerGramLow: value("seeds_per_g_low"), SeedsPerGramHigh: value("seeds_per_g_high"),
		MinimumGermination: r.number("fsa_min_germ_pct"),
	}
	facts.MinimumGermination.Value /= 100 // percent in the regulation
	return facts
}

// comesUpWell is the least share of normal seedlings, of the best at any temperature, at
// which a crop is said to come up well; a choice of ours.
const comesUpWell = 0.75

// Usual returns the temperatures, Celsius, at which the crop comes up well, both ends
// included: its optimum range of germination. Fastest is not best: where the emergence
// table has too few normal seedlings at a temperature in the warm part of that range, it
// ends at the warmest tested before, though never below the usual set points of a
// chamber.
func (c CropFacts) Usual() (low, high float64) {
	days, best := EmergenceDays(c.Name), 0.0
	for _, day := range days {
		best = max(best, day.Normal.Value)
	}
	good := math.Inf(1) // the warmest tested so far that will do
	for _, day := range days {
		switch {
		case !day.Normal.Known || day.TempC < c.GermLowC || day.TempC > c.GermHighC:
		case day.Normal.Value >= comesUpWell*best:
			good = day.TempC
		case day.TempC > good:
			return c.GermLowC, max(good, c.ChamberHighC)
		}
	}
	return c.GermLowC, c.GermHighC
}
