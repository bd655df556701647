package report

import (
	"cmp"
	"slices"

	"traybook/records"
)

// costRow is a row of costs.csv as money: hours times the wage.
type costRow struct {
	records.Cost
	amount float64
	season int
	start  records.Date // of a shared row with a period (rules 22, 50)
	end    records.Date
}

// costRows shares every row of costs.csv out among batches (rules 19-23, 45, 50).
func (p *accounts) costRows() {
	rows := p.pricedRows()
	house := p.newHouse(rows)
	for i := range rows {
		row := &rows[i]
		p.has[row.Category] = true
		sowing := row.Category == records.Labour && row.task() == records.SowingTask
		p.hasSow = p.hasSow || sowing
		borne := false
		switch {
		case !row.Shared():
			borne = p.direct(row)
		case periodical(row.Category):
			borne = house.spread(row)
		default:
			borne = p.shared(row)
		}
		p.enter(row.season, row.Category, row.amount, borne)
	}
	house.settle()
}

// pricedRows returns the rows that have an amount, in one order whatever the
// order of the file. Hours without a wage are no cost row (rule 59).
func (p *accounts) pricedRows() []costRow {
	var rows []costRow
	for _, c := range p.r.Book.Costs {
		amount, known := p.amountOf(c)
		if known {
			rows = append(rows, costRow{Cost: c, amount: amount, season: p.r.Book.Settings.Season(c.Date)})
		}
	}
	slices.SortStableFunc(rows, func(a, b costRow) int {
		return cmp.Or(cmp.Compare(a.Date, b.Date), cmp.Compare(a.Category, b.Category), cmp.Compare(a.task(), b.task()),
			cmp.Compare(a.From, b.From), cmp.Compare(a.Until, b.Until), cmp.Compare(a.amount, b.amount),
			cmp.Compare(a.Batch, b.Batch), cmp.Compare(a.Crop, b.Crop), cmp.Compare(a.Tray, b.Tray))
	})
	return rows
}

func (p *accounts) amountOf(c records.Cost) (float64, bool) {
	if c.Amount.Known {
		return c.Amount.Value, true
	}
	wage := p.r.Book.Settings.Wage
	return c.Hours.Value * wage.Value, c.Hours.Known && wage.Known
}

// task is the task of labour, care where none is written.
func (c costRow) task() records.Task {
	if c.Category == records.Labour && c.Task == "" {
		return records.CareTask
	}
	return c.Task
}

// A weight is a batch's claim on a row.
type weight func(*Batch) float64

func byTrays(b *Batch) float64    { return b.Trays }
func bySeeds(b *Batch) float64    { return b.SeedsSown.Or(0) }
func byUsable(b *Batch) float64   { return b.Usable.Or(0) }
func byTrayDays(b *Batch) float64 { return max(b.TrayDays, 0) }

// weightOf is the weight of a row that is not spread over a period (rule 19).
func weightOf(row *costRow, batches []*Batch) weight {
	switch {
	case row.Category == records.Seed:
		return bySeeds
	case row.Category == records.Mix:
		return mixWeight(batches)
	case row.task() == records.SowingTask:
		return byTrays
	case row.task() == records.OutTask:
		return byUsable
	}
	return byTrayDays
}

// mixWeight is cell_ml x cells, or cells where any volume is unknown (rule 21). A
// batch of unknown cells takes none (rule 44).
func mixWeight(batches []*Batch) weight {
	for _, b := range batches {
		if !b.CellML.Known {
			return func(b *Batch) float64 { return float64(b.CellsSown.Value) }
		}
	}
	return func(b *Batch) float64 { return b.CellML.Value * float64(b.CellsSown.Value) }
}

// direct gives a row to the batch, or the season's batches of the crop and tray,
// that it names (rule 19).
func (p *accounts) direct(row *costRow) bool {
	if row.Batch != "" {
		b := p.r.byCode[row.Batch]
		if b != nil {
			p.bear(b, row, row.amount)
		}
		return b != nil
	}
	var batches []*Batch
	for _, b := range p.bySeason[row.season] {
		if (row.Crop == "" || b.Crop == row.Crop) && (row.Tray == "" || b.Tray == row.Tray) {
			batches = append(batches, b)
		}
	}
	return p.split(row, batches, weightOf(row, batches)) || p.split(row, batches, byTrays)
}

// shared spreads a season's seed, mix, feed, equipment and other (rules 20, 21,
// 23); where nothing has a weight, by trays as rule 19 says of direct rows.
func (p *accounts) shared(row *costRow) bool {
	batches := p.bySeason[row.season]
	if row.Category == records.Seed && p.split(row, p.withoutPricedLot(batches), bySeeds) {
		return true
	}
	return p.split(row, batches, weightOf(row, batches)) || p.split(row, batches, byTrays)
}

// split splits a row by weight; false where no batch has any.
func (p *accounts) split(row *costRow, batches []*Batch, w weight) bool {
	total := 0.0
	for _, b := range batches {
		total += w(b)
	}
	if !(total > 0) {
		return false
	}
	for _, b := range batches {
		if claim := w(b); claim > 0 {
			p.bear(b, row, row.amount*(claim/total))
		}
	}
	return true
}

// bear lets a batch bear a part of a row.
func (p *accounts) bear(b *Batch, row *costRow, amount float64) {
	b.Parts.bear(row.Category, amount)
	if row.Category == records.Labour && row.task() == records.SowingTask {
		p.sowing[b] += amount
	}
}
