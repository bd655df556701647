package templates

import (
	"slices"

	"traybook/records"
	"traybook/report/money"
)

// categories are the pages' words for a category of money and, where a grower can act
// on it, what would lower it.
var categories = map[money.Category]struct{ words, saves string }{
	records.Seed:      {"seed", "fewer seeds a cell or a cheaper lot would save most"},
	records.Mix:       {"mix", "a smaller cell would save most"},
	records.Labour:    {"labour", "fewer minutes a tray would save most"},
	records.Heat:      {"heat", "a later sowing or a shorter stay would save most"},
	records.Power:     {words: "power"},
	records.Water:     {words: "water"},
	records.Feed:      {words: "feed"},
	records.Equipment: {words: "equipment"},
	records.Other:     {words: "other things"},
	money.TrayCharge:  {"trays", "using each tray oftener would save most"},
}

// costPart is what a category takes of a cost, in the book's currency.
type costPart struct {
	Category money.Category
	Words    string
	Money    float64
}

// partsOf are the categories of which the book has any money, in their order.
func (p *page) partsOf(parts money.Parts) []costPart { return p.appendParts(nil, parts) }

// appendParts is partsOf behind others. Parts are in the order of money.Categories.
func (p *page) appendParts(out []costPart, parts money.Parts) []costPart {
	for i, c := range money.Categories {
		if p.r.Money.Has[c] {
			out = append(out, costPart{c, categories[c].words, parts.By[i]})
		}
	}
	return out
}

// hasCosts reports whether any money is written for any season.
func hasCosts(s *site, season int) bool {
	return slices.ContainsFunc(s.r.Money.Ledger, func(l money.LedgerLine) bool { return season == 0 || l.Season == season })
}
