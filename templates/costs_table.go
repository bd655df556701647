package templates

import (
	"html/template"
	"slices"

	"traybook/report"
	"traybook/report/batch"
	"traybook/report/money"
	"traybook/report/words"
)

// costColumn is a column of a table of costs; it stands where a row has something
// to tell in it, with where nil always.
type costColumn struct {
	head  string
	where func(money.Cost) bool
	of    func(*page, money.Cost) string
}

// costFigures are the columns of every table of costs, in their order.
var costFigures = []costColumn{
	{"A transplant", nil, func(p *page, c money.Cost) string { return words.Of(c.PerTransplant, p.money.EachNumber) }},
	{"Usable plants", nil, func(_ *page, c money.Cost) string { return words.Of(c.Usable, words.Whole[float64]) }},
	{"Estimated", estimated, func(_ *page, c money.Cost) string { return words.Of(c.EstimatedShare, words.Percent) }},
	{"In all", nil, func(p *page, c money.Cost) string { return words.Of(c.Total, p.money.SumNumber) }},
	{"In failed cells", nil, func(_ *page, c money.Cost) string { return words.Of(c.FailedShare, words.Percent) }},
	{"Batches", nil, func(_ *page, c money.Cost) string { return words.Whole(c.Rests) }},
	{"Of all", func(c money.Cost) bool { return c.Batches > c.Rests }, func(_ *page, c money.Cost) string { return words.Whole(c.Batches) }},
}

// estimated reports whether some plants of a cost are guessed.
func estimated(c money.Cost) bool { return c.EstimatedShare.Known && c.EstimatedShare.Value >= 0.005 }

// costsTable is a table of costs, with the columns that have something to tell of
// its rows; first are the cells before them.
func (p *page) costsTable(id string, caption template.HTML, data string, heads []column, rows []money.Cost, first func(row int) []any) *table {
	shown := batch.Filter(costFigures, func(c costColumn) bool { return c.where == nil || slices.ContainsFunc(rows, c.where) })
	t := p.table(id, caption, data, heads)
	for _, column := range shown {
		t.Columns = append(t.Columns, nums(column.head)...)
	}
	t.Summed = data == "batches"
	for i, row := range rows {
		if handedOn(row) {
			continue
		}
		cells := first(i)
		for _, column := range shown {
			cells = append(cells, column.of(p, row))
		}
		t.add(cells...)
	}
	t.note(costNote(shown))
	if slices.ContainsFunc(rows, handedOn) {
		t.note("Batches that were potted on whole hand their cost on and have no line.")
	}
	if t.Summed && p.pottedOn() {
		t.note("To add up the rows yourself take those with per_transplant: plants potted on count in the batch they went to.")
	}
	return t
}

// pottedOn reports whether a batch of the book was moved on from another.
func (p *page) pottedOn() bool {
	return slices.ContainsFunc(p.r.Records, func(b *report.Record) bool { return b.From != "" })
}

// handedOn reports whether a group has handed on all it cost, with its plants.
func handedOn(c money.Cost) bool {
	return c.Total.Known && !shows(c.Total.Value) && c.Usable.Known && c.Usable.Value < 0.5
}

// costNote explains the columns that are only sometimes there.
func costNote(shown []costColumn) template.HTML {
	var words []template.HTML
	for _, c := range shown {
		switch c.head {
		case "Estimated":
			words = append(words, "Estimated: of the usable plants, those that no one counted.")
		case "Of all":
			words = append(words, "Batches: those ended and with a figure of usable plants, on which the cost of a transplant rests; the last column says of how many.")
		}
	}
	return join(words...)
}
