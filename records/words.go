package records

import (
	"slices"
	"strings"
)

// near are other words for those of a column, by log and column.
var near = map[string]map[string]string{
	"costs.csv category": {
		"propane": "heat", "gas": "heat", "natural gas": "heat", "lpg": "heat", "oil": "heat", "heating oil": "heat", "diesel": "heat",
		"wood": "heat", "firewood": "heat", "pellets": "heat", "fuel": "heat", "heating": "heat",
		"soil": "mix", "compost": "mix", "peat": "mix", "coir": "mix", "perlite": "mix", "vermiculite": "mix", "substrate": "mix",
		"potting mix": "mix", "potting soil": "mix", "growing medium": "mix", "media": "mix",
		"wages": "labour", "wage": "labour", "labor": "labour", "work": "labour", "hours": "labour", "salary": "labour", "pay": "labour",
		"electricity": "power", "electric": "power", "light": "power", "lights": "power", "lighting": "power",
		"irrigation": "water", "fertiliser": "feed", "fertilizer": "feed", "nutrients": "feed", "fish emulsion": "feed",
		"tools": "equipment", "machine": "equipment", "machinery": "equipment", "repair": "equipment", "repairs": "equipment", "labels": "other",
		"seeds": "seed",
	},
	"costs.csv task": {
		"seeding": "sowing", "sow": "sowing", "filling": "sowing", "watering": "care", "thinning": "care", "moving": "care",
		"hardening off": "care", "planting": "out", "transplanting": "out", "setting out": "out", "planting out": "out",
	},
	"out.csv to": {
		"planted": "field", "transplanted": "field", "set out": "field", "garden": "field", "bed": "field", "market": "sold", "sale": "sold",
		"sales": "sold", "customer": "sold", "donated": "given", "gift": "given", "gave away": "given", "swapped": "given", "left over": "surplus",
		"leftover": "surplus", "extra": "surplus", "spare": "surplus", "potted up": "potted-on", "potted": "potted-on", "pricked out": "potted-on",
		"died": "dead", "lost": "dead", "thrown out": "dead", "thrown away": "dead", "compost": "dead", "composted": "dead", "discarded": "dead",
	},
	"sowings.csv start": {
		"seeds": "seed", "sown": "seed", "direct": "seed", "plugs": "plug", "seedling": "plug", "seedlings": "plug", "bought": "plug",
		"cuttings": "cutting", "slip": "cutting", "slips": "cutting",
	},
}

// wordRemedy says which word of a column's list was likely meant; empty for none. Trays
// among the costs stand in a log of their own.
func wordRemedy(log, col, s string, words []string) string {
	if col == "category" && slices.Contains([]string{"tray", "trays", "flats"}, s) {
		return "trays bought stand in trays.csv"
	}
	s = strings.Join(strings.Fields(s), " ")
	if meant := near[log+" "+col][s]; meant != "" {
		return didYouMean(meant)
	}
	return didYouMean(nearest(s, words, strings.ToLower))
}
