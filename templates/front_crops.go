package templates

import (
	"cmp"
	"html/template"
	"slices"

	"traybook/records"
	"traybook/report/batch"
	"traybook/report/germination"
	"traybook/report/money"
	"traybook/report/rate"
	"traybook/report/words"
	"traybook/templates/draw"
)

// cropLine is a crop of a season: how it came up, now and the season before, and what
// a plant of it cost.
type cropLine struct {
	crop        string
	up          germination.Emergence
	before      rate.Num
	cost        money.Cost
	batches     int
	few, hollow bool
}

// cropParts are the parts of a cost that have a column of their own; all else stands in
// the last.
var cropParts = []money.Category{records.Labour, records.Heat, records.Seed, records.Mix}

// cropRows is the table of a season's crops, the lowest share first, those of too few
// batches below a line; nil where nothing was counted and nothing was paid.
func (p *page) cropRows(season int) *rows {
	lines := p.cropLines(season)
	lowest, costs := 1.0, []float64{}
	for _, l := range lines {
		if l.up.Low.Known && !l.few {
			lowest = min(lowest, l.up.Low.Value)
		} else if l.up.Share.Known {
			lowest = min(lowest, l.up.Share.Value)
		}
		for _, part := range p.cropPartsOf(l.cost) {
			if !l.few {
				costs = append(costs, part)
			}
		}
	}
	axis, most, parts := draw.Shares(p.id("gc"), lowest), fillsColumn(costs), p.id("gp")
	t := p.rows("crops", "crops", p.cropCaption(season, len(costs) > 0), "",
		col{Width: "c-name", Head: "Crop"}, col{Class: "st", Head: "Came up, %", Axis: axis.Head()})
	if len(costs) > 0 {
		t.Cols = append(t.Cols, col{Width: "c-cost", Class: "st c2", Head: say("A plant, %s", p.money.Code()),
			Axis: draw.ColumnsHead(parts, []string{"labour", "heat", "seed", "mix", "all else"})})
	}
	t.Cols = append(t.Cols, col{Width: "c-n", Class: "n", Head: "Batches"})
	for _, few := range []bool{false, true} {
		if few {
			t.under(fewLine("Counted"), "")
		}
		for _, l := range lines {
			if l.few == few {
				p.addCrop(t, l, season, axis, partsAxis{parts, most, len(costs) > 0})
			}
		}
	}
	t.Groups = slices.DeleteFunc(t.Groups, func(g rowGroup) bool { return len(g.Rows) == 0 })
	return t
}

// cropCaption says what the rows draw.
func (p *page) cropCaption(season int, costs bool) template.HTML {
	out := say("Season %s, the lowest share first. Dot: came up, with its range; grey tick: the season before; hollow: fewer than %s counted.",
		words.Year(season), words.Batches(rate.FewBatches))
	if costs {
		out = join(out, "Bars: the parts of a plant’s cost, hollow where most plants are estimated; a bar with a slit goes beyond the scale.")
	}
	return out
}

// cropLines gathers the crops of a season. Crops that nobody counted stand behind those
// with a share, by name; a crop is never left out for want of a figure.
func (p *page) cropLines(season int) []cropLine {
	before := p.before(season)
	var lines []cropLine
	for _, page := range p.crops {
		if page.Season != season {
			continue
		}
		l := cropLine{crop: page.Crop, batches: len(page.Batches)}
		for _, e := range p.r.Germination.Crops {
			switch {
			case e.Crop == l.crop && e.Season == season:
				l.up = e
			case e.Crop == l.crop && e.Season == before:
				l.before = e.Share
			}
		}
		for _, c := range p.r.Money.Crops {
			if c.Season == season && c.Crop == l.crop {
				l.cost = c
			}
		}
		l.few = l.up.Few()
		l.hollow = l.cost.EstimatedShare.Or(0) > 0.5
		lines = append(lines, l)
	}
	slices.SortStableFunc(lines, func(a, b cropLine) int {
		return cmp.Or(cmp.Compare(a.up.Share.Or(2), b.up.Share.Or(2)), cmp.Compare(a.crop, b.crop))
	})
	return lines
}

// before is the last season before one; 0 where there is none.
func (p *page) before(season int) int {
	seasons := batch.Filter(p.r.Batches.Seasons, func(s int) bool { return s < season })
	if len(seasons) == 0 {
		return 0
	}
	return seasons[len(seasons)-1]
}

// cropPartsOf are the parts of a plant's cost in the order of the columns; nil where
// the cost is not known.
func (p *page) cropPartsOf(c money.Cost) []float64 {
	if !c.PerTransplant.Known || !(c.Usable.Value > 0) {
		return nil
	}
	rest := c.PerTransplant.Value
	var out []float64
	for _, category := range cropParts {
		each := c.Behind.Of(category) / c.Usable.Value
		out, rest = append(out, each), rest-each
	}
	return append(out, max(rest, 0))
}

// fillsColumn is the cost that fills a column: that which nine in ten of the parts do
// not exceed, so that one dear crop makes no slivers of the others.
func fillsColumn(parts []float64) float64 {
	if len(parts) == 0 {
		return 1
	}
	sorted := slices.Sorted(slices.Values(parts))
	return max(sorted[(len(sorted)-1)*9/10], 1e-12)
}

// partsAxis is how the parts of a cost are drawn: the grid's name and what fills a
// column; shown is false where the season has no cost.
type partsAxis struct {
	grid  string
	most  float64
	shown bool
}

// countedOf is how many of a crop's batches were counted: 2 of 6. Of one not sown from
// seed, none could be.
func (l cropLine) countedOf() template.HTML {
	if l.up.Batches == 0 || l.up.Batches == l.batches {
		return markup(words.Whole(l.batches))
	}
	return say(`%s<span class="soft"> of %s</span>`, words.Whole(l.up.Batches), words.Whole(l.batches))
}

// addCrop adds a crop's row.
func (p *page) addCrop(t *rows, l cropLine, season int, axis draw.Axis, of partsAxis) {
	marks := []draw.Mark{draw.Before(l.before), draw.Range(l.up.Low, l.up.High), draw.Dot(draw.Crop, l.up.Share, l.few)}
	cells := []any{p.crop(season, l.crop), toldShare(l.up.Rate, axis, marks...)}
	if of.shown {
		cost := say("<b>%s</b>", words.None)
		if parts := p.cropPartsOf(l.cost); parts != nil {
			cost = told(p.money.EachNumber(l.cost.PerTransplant.Value), "", draw.Axis{ID: of.grid, Max: 1}.Row(draw.Columns(parts, of.most, l.hollow)))
		}
		cells = append(cells, cost)
	}
	t.add("", "", append(cells, l.countedOf())...)
}
