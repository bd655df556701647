package chart

import (
	"cmp"
	"fmt"
	"slices"

	"traybook/records"
	"traybook/report"
	"traybook/report/batch"
	"traybook/report/money"
	"traybook/report/words"
)

// costParts are the categories that the chart tells apart; all others stand together.
var costParts = []money.Category{records.Seed, records.Mix, records.Labour, records.Heat, money.TrayCharge}

// costNames are the names of a bar's pieces.
func costNames() []string {
	var names []string
	for _, c := range costParts {
		if c == money.TrayCharge {
			c = "trays"
		}
		names = append(names, string(c))
	}
	return append(names, "everything else")
}

// costPieces are the pieces of a bar, as costNames names them; the last holds the cost
// carried in potting on, too.
func costPieces(p money.Parts) []float64 {
	var pieces []float64
	for _, c := range costParts {
		pieces = append(pieces, p.Of(c))
	}
	rest := 0.0
	for _, c := range money.Categories {
		if !slices.Contains(costParts, c) {
			rest += p.Of(c)
		}
	}
	return append(pieces, rest+p.Carried)
}

// costs shows what a usable transplant of each crop cost and of what, the
// dearest first.
func costs(r *report.Report, year int) []Spec {
	crops := batch.Filter(r.Money.Crops, func(c money.Cost) bool { return c.Season == year })
	slices.SortStableFunc(crops, func(a, b money.Cost) int {
		return cmp.Compare(b.PerTransplant.Value, a.PerTransplant.Value)
	})
	currency := words.NewMoney(r.Book.Settings.Currency)
	var rows []StackRow
	for _, c := range crops {
		if row, ok := costRow(c, currency); ok {
			rows = append(rows, row)
		}
	}
	if len(rows) == 0 {
		return nil
	}
	h := Head{Name: season("costs", year), Title: shown(fmt.Sprintf("Cost of a usable transplant by crop, %d", year), len(rows), "dearest")}
	axis := Axis{Name: "cost of a usable transplant", Unit: r.Book.Settings.Currency}
	return []Spec{StackedBars(h, rows[:min(len(rows), mostRows)], costNames(), axis)}
}

// costRow is a crop's bar. What was potted on took its share of every part along
// (rule "Potting on"): the parts of what stayed are as much smaller, so that they add
// up to the cost. A crop with a credit larger than the rest of its part has its number
// and no bar.
func costRow(c money.Cost, currency words.Money) (StackRow, bool) {
	if !c.PerTransplant.Known {
		return StackRow{}, false
	}
	row := StackRow{Name: c.Crop, Note: fmt.Sprintf("%s, %s", currency.EachNumber(c.PerTransplant.Value), batches(c.Rests))}
	behind := c.Behind
	if behind.Carried < 0 {
		behind = stayed(behind)
		row.Name += ", after potting on"
	}
	var parts []*float64
	for _, piece := range costPieces(behind) {
		part := piece / c.Usable.Value
		if part < -1e-9 {
			row.Note += ", a credit: no bar"
			return row, true
		}
		parts = append(parts, Num(max(0, part)))
	}
	row.Parts = parts
	return row, true
}

// stayed takes from every part the same share of what was handed on.
func stayed(p money.Parts) money.Parts {
	total := p.Total()
	if !(total-p.Carried > 0) {
		return p
	}
	share := total / (total - p.Carried)
	for i := range p.By {
		p.By[i] *= share
	}
	p.Carried = 0
	return p
}
