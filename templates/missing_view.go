package templates

import (
	"cmp"
	"html/template"
	"slices"
	"strconv"
	"strings"

	"traybook/records"
	"traybook/report"
	"traybook/report/words"
)

// missingPage is what is missing, what each gap costs and what to write down.
type missingPage struct {
	Title    string
	Gaps     []gap
	Lacking  []lackingLog
	Left     []leftOut
	Rows     string // how many rows were left out
	Problems *table
}

// lackingLog is a log that the book does not have.
type lackingLog struct{ Log, Adds string }

// What each log adds to a book, in the order in which it is worth starting them.
var logsAdd = []lackingLog{
	{"trays.csv", "cells of each tray code, its kind and price: plants a tray, room, and whether dearer trays pay"},
	{"out.csv", "what left the house, event by event: usable plants where set_out, plants_out and surplus in sowings.csv do not serve"},
	{"counts.csv", "emergence by variety and cell size"},
	{"costs.csv", "what a transplant cost"},
	{"lots.csv", "the cost of seed, emergence against the packet, and the trail of a lot"},
	{"scores.csv", "quality, and how long plants stay fit past the planned day"},
	{"chamber.csv", "the temperature of the germination chamber beside what came up"},
	{"house.csv", "heat shared out by the weather, cold spells beside poor emergence"},
	{"book.csv", "the farm’s name, wage and other settings; without it the defaults stand"},
}

// missingView tells every gap and every problem of the report.
func missingView(p *page) any {
	v := missingPage{Title: p.spec.title, Left: p.left, Rows: leftOutText(p.faulty), Problems: p.problemsTable()}
	for i, m := range p.r.Missing {
		g := p.gap(i, m)
		p.id(g.ID)
		g.Batches = p.someBatches(m.Batches)
		v.Gaps = append(v.Gaps, g)
	}
	for _, l := range logsAdd {
		if !p.r.Book.Has(l.Log) && !p.toldMissing(l.Log) {
			v.Lacking = append(v.Lacking, l)
		}
	}
	return v
}

// toldMissing reports whether the gaps tell already that the book has no such log.
func (p *page) toldMissing(log string) bool {
	return slices.ContainsFunc(p.r.Missing, func(m report.Missing) bool { return len(m.Batches) == 0 && strings.Contains(m.Remedy, log) })
}

// manyBatches is how many batches a gap names before it only counts the rest.
const manyBatches = 40

// someBatches links to batches, to the first of them where there are many.
func (p *page) someBatches(codes []string) template.HTML {
	if len(codes) <= manyBatches {
		return p.batches(codes)
	}
	return say("%s and %s more", p.batches(codes[:manyBatches]), words.Whole(len(codes)-manyBatches))
}

// problemsTable lists what was found wrong in the logs.
func (p *page) problemsTable() *table {
	t := p.table("problems", "Problems found in the logs and notes", "problems", plain("Place", "Cell", "What", "Found", "Expected", "How to mend it"))
	for _, pr := range p.r.Problems {
		t.add(name(posWords(pr.Pos)), cmp.Or(pr.Cell, words.None), pr.Severity, prose(name(pr.Found)), prose(name(pr.Expected)), prose(name(pr.Remedy)))
	}
	return t
}

// posWords writes a place as an editor understands it.
func posWords(at records.Pos) string {
	out := at.File
	if at.Line > 0 {
		out += ":" + strconv.Itoa(at.Line)
		if at.Column > 0 {
			out += ":" + strconv.Itoa(at.Column)
		}
	}
	return out
}
