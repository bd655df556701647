package trade

import (
	"sync"

	"traybook/records"
)

// Minimum returns the legal minimum germination of a crop, share of 1, hard seed counted in: the crop table's figure, or
// else that of the kind of the same name in the regulation's own list. Unknown where neither has it.
// Source: 7 CFR 201.31 (Federal Seed Act regulations).
func Minimum(crop string) records.Maybe[float64] {
	if facts, ok := Crop(crop); ok {
		return facts.MinimumGermination
	}
	share, _ := find(minimums(), crop)
	return share
}

var minimums = sync.OnceValue(func() map[string]records.Maybe[float64] {
	found := map[string]records.Maybe[float64]{}
	for _, r := range read("minimum_germination.csv") {
		share := r.number("min_germination_pct")
		share.Value /= 100
		found[key(r["kind"])] = share
	}
	return found
})
