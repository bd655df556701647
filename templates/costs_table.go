package templates

import (
	"html/template"
	"slices"

	"traybook/report/batch"
	"traybook/report/money"
	"traybook/report/rate"
	"traybook/report/words"
	"traybook/templates/draw"
)

// hair is the money below which nothing is shown: it would be written as 0.00.
const hair = 0.005

// shows reports whether money is more, or less, than nothing as it is written.
func shows(v float64) bool { return abs(v) >= hair }

// handedOn reports whether a group has handed on all it cost, with its plants.
func handedOn(c money.Cost) bool {
	return c.Total.Known && !shows(c.Total.Value) && c.Usable.Known && c.Usable.Value < 0.5
}

// estimated reports whether some plants of a cost are guessed; guessed whether most are.
func estimated(c money.Cost) bool { return c.EstimatedShare.Known && c.EstimatedShare.Value >= 0.005 }
func guessed(c money.Cost) bool   { return c.EstimatedShare.Or(0) > 0.5 }

// fewCosts reports whether a cost rests on too few batches to be judged. It asks for
// batches with a plant to bear the cost, as those without enter none.
func fewCosts(c money.Cost) bool { return c.Rests < rate.FewBatches }

// costTable is rows of costs on one axis: each has what a plant cost, drawn beside what
// it cost in the season before.
type costTable struct {
	*rows
	p    *page
	axis draw.Axis
}

// farDearer is how many times dearer than nine rows in ten the dearest must be to go
// beyond the scale.
const farDearer = 1.5

// costAxis is an axis from 0 for all rows, or where the dearest would make slivers of the
// others, for nine in ten. What goes beyond it is cut with a slit, so that it is seen to
// be longer than it is drawn.
func (p *page) costAxis(id string, of []*money.Cost) draw.Axis {
	var each []float64
	for _, c := range of {
		if c.PerTransplant.Known {
			each = append(each, c.PerTransplant.Value)
		}
	}
	end := fillsColumn(each)
	if len(each) > 0 && slices.Max(each) <= farDearer*end {
		end = slices.Max(each)
	}
	return draw.Amounts(p.id(id), end, plainAmount)
}

// plainAmount writes a round amount with as many decimals as it needs.
func plainAmount(v float64) string {
	for d := range 6 {
		if abs(words.Round(v, d)-v) <= 1e-9*max(1, abs(v)) {
			return words.Fixed(v, d)
		}
	}
	return words.Fixed(v, 6)
}

// costRows starts rows of costs; more are the columns between the first and the costs,
// the numbers behind follow.
func (p *page) costRows(id, class string, caption template.HTML, data string, first col, of []*money.Cost, behind ...col) costTable {
	axis := p.costAxis("g"+slug(id), of)
	cols := append([]col{first, {Class: "st c2", Head: say("A plant, %s", p.money.Code()), Axis: axis.Head()}}, behind...)
	return costTable{p.rows("cost-"+id, "cost "+class, caption, data, cols...), p, axis}
}

// number is a narrow column of numbers.
func number(head template.HTML) col { return col{Width: "c-n2", Class: "n", Head: head} }

// writeTold writes what a plant cost, drawn, with the season before as a tick. A dash stands
// for a cost that is not known. One below 0, where more came back than was spent, has no
// bar.
func (t costTable) writeTold(w *pen, c *money.Cost, before rate.Num) {
	w.put("<b>")
	w.known(c.PerTransplant, t.p.money.AppendEachNumber)
	w.put("</b>")
	if !c.PerTransplant.Known {
		return
	}
	class := ""
	if guessed(*c) {
		class = "h"
	}
	w.put(" <i></i> ")
	w.out = t.axis.AppendRow(w.out, draw.Bar(0, max(c.PerTransplant.Value, 0), class), draw.Earlier(before))
}

// told is that for a cell of its own.
func (t costTable) told(c *money.Cost, before rate.Num) template.HTML {
	w := pen{out: make([]byte, 0, 400)}
	t.writeTold(&w, c, before)
	return template.HTML(w.out)
}

// cell is what a cell of a group cost.
func (t costTable) cell(c *money.Cost) string { return words.Of(c.PerCell, t.p.money.EachNumber) }

// costsBefore are what a plant of each group cost in the season before one, by the group
// as it is in that one.
func (p *page) costsBefore(table []money.Cost, season int) map[batch.Group]rate.Num {
	before := p.before(season)
	rows := picked(table, func(c *money.Cost) bool { return c.Season == before })
	out := make(map[batch.Group]rate.Num, len(rows))
	for _, c := range rows {
		group := c.Group
		group.Season = season
		out[group] = c.PerTransplant
	}
	return out
}

// tickWords says what the grey tick of a row is, where there was a season before.
func (p *page) tickWords(season int) template.HTML {
	if before := p.before(season); before != 0 {
		return say("; grey tick: %s", words.Year(before))
	}
	return ""
}

// restsOn is how many batches a cost rests on, of how many.
func restsOn(c *money.Cost) template.HTML {
	w := pen{out: make([]byte, 0, 40)}
	w.outOf(c.Rests, c.Batches)
	return template.HTML(w.out)
}

// costNotes say under the rows what they leave out.
func (t costTable) costNotes(all []*money.Cost) {
	var soFar []template.HTML
	handed := false
	for _, c := range all {
		handed = handed || handedOn(*c)
		if !c.PerTransplant.Known && !handedOn(*c) && c.Total.Known && shows(c.Total.Value) {
			soFar = append(soFar, say("%s (%s)", groupWords(c.Group), t.p.money.Sum(c.Total.Value)))
		}
	}
	if len(soFar) > 0 {
		t.note(say("Money spent, but no batch that has ended has a figure of usable plants: %s.", listSome(soFar, mostInList)))
	}
	if handed {
		t.note("Batches that were potted on whole hand their cost on and have no line.")
	}
}

// groupWords names a group in a sentence.
func groupWords(g batch.Group) template.HTML {
	switch {
	case g.Crop == "":
		return trayName(g)
	case g.Variety == "":
		return markup(name(g.Crop))
	}
	return say("%s %s %s", name(g.Crop), name(g.Variety), trayName(g))
}

// costsIn are the rows of a season.
func costsIn(table []money.Cost, season int) []*money.Cost {
	return picked(table, func(c *money.Cost) bool { return c.Season == season })
}

// figured are the costs with a figure of their own, the dearest first.
func figured(all []*money.Cost) []*money.Cost {
	out := batch.Filter(all, func(c *money.Cost) bool { return c.PerTransplant.Known && !handedOn(*c) })
	slices.SortStableFunc(out, func(a, b *money.Cost) int { return dearest(*a, *b) })
	return out
}
