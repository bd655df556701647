package templates

import (
	"cmp"
	"html/template"
	"slices"

	"traybook/report/batch"
	"traybook/report/rate"
	"traybook/report/words"
	"traybook/templates/draw"
)

// picked points to the rows of a table that are kept, in order. Rows of figures are large:
// what picks and sorts them moves pointers.
func picked[T any](table []T, keep func(*T) bool) []*T {
	n := 0
	for i := range table {
		if keep(&table[i]) {
			n++
		}
	}
	out := make([]*T, 0, n)
	for i := range table {
		if keep(&table[i]) {
			out = append(out, &table[i])
		}
	}
	return out
}

// groupRate is a rate of a group, or of a crop as a whole, with that of the season before,
// and what writes the cells that follow it in its row.
type groupRate struct {
	*batch.Group
	*rate.Rate
	before rate.Num
	behind func(*inPieces)
}

// byShare puts the lower share first.
func byShare(a, b *rate.Rate) int { return cmp.Compare(a.Share.Value, b.Share.Value) }

// lowestShare is where an axis of groups begins: the ends of what can be judged, and the
// shares of all. The interval of a group of few batches would reach far to the left and
// press all others into a corner, so it is not asked.
func lowestShare(groups []groupRate) float64 {
	lowest := 1.0
	for _, g := range groups {
		lowest = min(lowest, g.Share.Or(1))
		if !g.Few() {
			lowest = min(lowest, g.Low.Or(1))
		}
	}
	return lowest
}

// cropTable adds a crop and, indented, its groups, the lowest first; a crop of one group
// is one row. Crops of too few batches stand below a line. Reading from the top finds the
// worst first. The line parts what can be judged from what cannot, so that a single bad
// batch does not lead the table.
func (p *page) cropTable(t *rows, axis draw.Axis, done string, crops, groups []groupRate) {
	lowestFirst := func(a, b groupRate) int { return byShare(a.Rate, b.Rate) }
	slices.SortStableFunc(crops, lowestFirst)
	slices.SortStableFunc(groups, lowestFirst)
	_, of := batch.GroupBy(groups, func(g groupRate) string { return g.Crop })
	var w inPieces
	for _, below := range []bool{false, true} {
		for i, crop := range batch.Filter(crops, func(c groupRate) bool { return c.Few() == below }) {
			sub := template.HTML("")
			if below && i == 0 {
				sub = fewLine(done)
			}
			t.under(sub, "")
			t.of(crop.Crop)
			p.addCropRates(t, &w, axis, crop, of[crop.Crop])
		}
	}
}

// addCropRates adds a crop and, where it has several, its groups. A crop of one group
// would tell the same twice.
func (p *page) addCropRates(t *rows, w *inPieces, axis draw.Axis, crop groupRate, groups []groupRate) {
	row := func(class string, k draw.Kind, g groupRate) {
		w.cut()
		w.share(*g.Rate, axis, draw.Before(g.before), draw.Range(g.Low, g.High), draw.Dot(k, g.Share, g.Few()))
		w.cut()
		g.behind(w)
		t.addCells("", class, w.pieces())
	}
	if len(groups) == 1 {
		p.writeGroup(&w.pen, *groups[0].Group, true)
		row("crop one", draw.KindOf(groups[0].Kind), groups[0])
		return
	}
	t.room(1 + len(groups))
	p.writeCrop(&w.pen, crop.Season, crop.Crop)
	row("crop", draw.Crop, crop)
	for _, g := range groups {
		p.writeGroup(&w.pen, *g.Group, false)
		row("var", draw.KindOf(g.Kind), g)
	}
}

// ratesBefore are the shares of groups in the season before one, by the group as it is in
// that one. A group that was not sown then has no tick, which is not the same as a share
// of 0.
func ratesBefore[T any](p *page, table []T, season int, of func(*T) (*batch.Group, *rate.Rate)) map[batch.Group]rate.Num {
	before := p.before(season)
	rows := picked(table, func(row *T) bool { group, _ := of(row); return group.Season == before })
	out := make(map[batch.Group]rate.Num, len(rows))
	for _, row := range rows {
		group, r := of(row)
		now := *group
		now.Season = season
		out[now] = r.Share
	}
	return out
}

// writeGroup names a group by its variety and tray, the crop with its link before it where
// no row above names that.
func (p *page) writeGroup(w *pen, g batch.Group, crop bool) {
	w.put(`<span class="v">`)
	if crop {
		p.writeCrop(w, g.Season, g.Crop)
		w.put(" ")
	}
	w.name(g.Variety)
	w.put("</span> ")
	w.tray(g)
}

// tray is a kind of tray and its cells: the shape of the kind and 128, with the kind's word
// for a reader.
func (w *pen) tray(g batch.Group) {
	w.put(`<span class="tr">`, string(draw.Key(draw.KindOf(g.Kind))))
	if g.Cells.Known {
		w.whole(g.Cells.Value)
	} else {
		w.put(words.None)
	}
	w.put(` <span class="kw">`)
	w.name(orDash(g.Kind))
	w.put("</span></span>")
}

// trayMark is that for a cell of its own.
func trayMark(g batch.Group) template.HTML {
	w := pen{out: make([]byte, 0, 160)}
	w.tray(g)
	return template.HTML(w.out)
}

// share is a rate in percent with its range and drawing; a dash where there is none, no
// range where too few batches stand behind it.
func (w *pen) share(r rate.Rate, axis draw.Axis, marks ...draw.Mark) {
	if !r.Share.Known {
		w.put("<b>", words.None, "</b>")
		return
	}
	w.put("<b>")
	w.percent(r.Share.Value)
	w.put("</b> <i>")
	if r.Low.Known && r.High.Known {
		w.out = words.AppendFixed(w.out, 100*r.Low.Value, 0)
		w.put(" to ")
		w.out = words.AppendFixed(w.out, 100*r.High.Value, 0)
	}
	w.put("</i> ")
	w.out = axis.AppendRow(w.out, marks...)
}

// toldShare is that for a cell of its own.
func toldShare(r rate.Rate, axis draw.Axis, marks ...draw.Mark) template.HTML {
	w := pen{out: make([]byte, 0, 400)}
	w.share(r, axis, marks...)
	return template.HTML(w.out)
}

// outOf is a number, and of how many where those are more: 3 of 5.
func (w *pen) outOf(some, all int) {
	w.whole(some)
	if some != all {
		w.put(`<span class="soft"> of `)
		w.whole(all)
		w.put("</span>")
	}
}
