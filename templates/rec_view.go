package templates

import (
	"html/template"
	"slices"

	"traybook/report"
	"traybook/report/plants"
	"traybook/report/rate"
	"traybook/report/words"
	"traybook/templates/draw"
)

// cropRecords is the page of a crop in a season: a finding, every batch in a row, then
// each batch with its life.
type cropRecords struct {
	Heading, Lead template.HTML
	Finding       finding
	Table         *rows
	Grid          template.HTML // the axis of the lives, to stand once
	Key           template.HTML
	stories       func(w *pen)  // each batch, one after the other; nil: none
	Parts         template.HTML // links to the parts that tell the batches, where there are any
	Long          bool          // and it is their first page
	Before, After *navLink
}

// head is the crop and the season.
func (v cropRecords) head() (heading, lead template.HTML) { return v.Heading, v.Lead }

// writeEnd writes the stories straight into the page.
func (v cropRecords) writeEnd(w *pen) {
	if v.stories != nil {
		v.stories(w)
	}
	w.put("\n")
}

// turn is the crop before and after it in the season.
func (v cropRecords) turn() (before, after *navLink) { return v.Before, v.After }

// cropView tells the batches of one page of records or, where they are too many, leads to
// the parts that do. The table of all batches stands on the first page in either case;
// only the lives move to the parts.
func cropView(of cropPage) func(*page) any {
	return func(p *page) any {
		v := cropRecords{Heading: say("%s, %s", name(capital(of.Crop)), words.Year(of.Season)), Lead: p.to("records.html", "Records of every batch"),
			Finding: p.cropFinding(of), Table: p.recordRows(of)}
		if len(of.Parts) == 0 {
			p.tell(&v, of, of.Batches)
		}
		v.Parts, v.Long = p.partLinks(of, -1), len(of.Parts) > 0
		v.Before, v.After = p.neighbours(of)
		return v
	}
}

// tell adds the lives and stories of batches, on the axis of the whole page. Lives are
// drawn on one axis so that a long stay looks long beside the others, on each part of a
// cut page alike.
func (p *page) tell(v *cropRecords, of cropPage, batches []*report.Record) {
	longest := 10.0
	for _, b := range of.Batches {
		longest = max(longest, float64(b.End-b.Sown), float64(b.Planned-b.Sown))
	}
	axis, grid := draw.Lives(p.id("gt"), min(longest, longestDrawn))
	v.Grid, v.Key = grid, p.lifeKey()
	v.stories = func(w *pen) { p.writeStories(w, batches, axis) }
}

// cropPartView tells the batches of one part.
func cropPartView(of cropPage, i int) func(*page) any {
	return func(p *page) any {
		part := of.Parts[i]
		v := cropRecords{Heading: say("%s, %s", name(capital(of.Crop)), part.Title),
			Lead:  p.to(of.Path, say("All batches of %s in %s", name(of.Crop), words.Year(of.Season))),
			Parts: p.partLinks(of, i)}
		p.tell(&v, of, part.Batches)
		link := func(i int) *navLink {
			if i < 0 || i >= len(of.Parts) {
				return nil
			}
			return &navLink{p.href(of.Parts[i].Path), of.Parts[i].Title}
		}
		v.Before, v.After = link(i-1), link(i+1)
		return v
	}
}

// partLinks leads to the parts of a crop's records, but for the one with number here.
func (p *page) partLinks(of cropPage, here int) template.HTML {
	var parts []part
	for _, c := range of.Parts {
		parts = append(parts, part{path: c.Path, word: say("%s (%s)", c.Title, words.Whole(len(c.Batches)))})
	}
	return linksTo(p.root, parts, here)
}

// longestDrawn bounds the days of a drawing against a mistyped date.
const longestDrawn = 400

// neighbours are the crops before and after one in the season.
func (p *page) neighbours(of cropPage) (before, after *navLink) {
	i := slices.IndexFunc(p.crops, func(c cropPage) bool { return c.Path == of.Path })
	link := func(i int) *navLink {
		if i < 0 || i >= len(p.crops) || p.crops[i].Season != of.Season {
			return nil
		}
		return &navLink{p.href(p.crops[i].Path), capital(p.crops[i].Crop)}
	}
	return link(i - 1), link(i + 1)
}

// cropFinding is the crop's season in a few words, its batches large. Short are batches
// that ended with fewer plants than were wanted, of those that say both; a batch whose
// plants are estimated is not asked.
func (p *page) cropFinding(of cropPage) finding {
	short, wanted := 0, 0
	trays := 0.0
	for _, b := range of.Batches {
		trays += b.Trays
		if b.Wanted.Known && b.Ended() && b.Measured() {
			wanted++
			if b.Usable.Value < float64(b.Wanted.Value) {
				short++
			}
		}
	}
	f := finding{Title: shortTitle(of, short, wanted), Big: words.Whole(len(of.Batches)), What: say("%s of %s", words.Unit(float64(len(of.Batches)), "batch", "batches"), name(of.Crop))}
	first, last := of.Batches[0].Sown, of.Batches[len(of.Batches)-1].Sown
	when := say("from %s to %s", words.DayMonth(first), words.DayMonth(last))
	if first == last {
		when = say("on %s", words.DayMonth(first))
	}
	say1 := say("%s was sown in %s, %s.", name(capital(of.Crop)), words.Plural(trays, "tray", "trays"), when)
	for _, e := range p.r.Germination.Crops {
		if e.Season == of.Season && e.Crop == of.Crop && e.Share.Known {
			f.Range = say("%s came up", words.Percent(e.Share.Value))
			say1 = join(say1, say("Of the cells looked at, %s came up, %s.", words.ShareText(e.Rate), words.Batches(e.Batches)))
		}
	}
	f.Say = []template.HTML{say1}
	for _, c := range p.r.Money.Crops {
		if c.Season == of.Season && c.Crop == of.Crop && c.PerTransplant.Known {
			f.Note = say("%s at %s each, %s%s.", words.Plural(words.RoundPlants(c.Usable.Value), "plant", "plants"), p.money.Each(c.PerTransplant.Value), words.Batches(c.Rests), estimatedWords(c))
		}
	}
	return f
}

// shortTitle says how many of the batches fell short of what the field wanted.
func shortTitle(of cropPage, short, wanted int) template.HTML {
	switch {
	case wanted == 0:
		return say("%s, batch by batch", name(capital(of.Crop)))
	case short == 0:
		return say("No batch fell short of what the field wanted, of %s", words.Whole(wanted))
	}
	return say("%s of %s fell short of what the field wanted", upper(markup(numberWord(short))), words.Batches(wanted))
}

// recordRows is every batch in a row, by day sown. The axis ends, if not before, some time
// after the first sowing: one mistyped year must not flatten the rest.
func (p *page) recordRows(of cropPage) *rows {
	first, last := of.Batches[0].Sown, of.Batches[0].End
	for _, b := range of.Batches {
		first, last = min(first, b.Sown), max(last, b.End, b.Planned)
	}
	axis := draw.Days(p.id("gy"), first-3, min(last, first+longestDrawn)+3)
	cols := []col{{Width: "c-rec", Head: "Batch, variety, trays"}, {Class: "dr", Head: "In the house", Axis: axis.Head(), Quiet: true},
		{Width: "c-n", Class: "n", Head: "Up"}, {Width: "c-n4", Class: "n", Head: "Plants"}, {Width: "c-n2", Class: "n", Head: "Wanted"}}
	money := hasCosts(p.site, of.Season)
	if money {
		cols = append(cols, col{Width: "c-n2", Class: "n", Head: say("Each, %s", p.money.Code())})
	}
	t := p.rows("batches", "recs", p.recordCaption(of), "batches", cols...)
	var w inPieces
	for _, b := range of.Batches {
		p.writeRecord(&w, b, axis, money)
		t.addCells("", "", w.pieces())
	}
	return t
}

// writeRecord writes the cells of a batch's row.
func (p *page) writeRecord(w *inPieces, b *report.Record, axis draw.Axis, money bool) {
	p.writeBatch(&w.pen, b)
	w.put(` <span class="v">`)
	w.name(b.Variety)
	w.put(`</span> <span class="tr">`)
	w.html(draw.Key(draw.KindOf(b.Kind)))
	w.number(b.Trays)
	w.put(" ")
	w.name(b.Tray)
	w.put("</span>")
	w.cut()
	w.out = axis.AppendRow(w.out, standingOf(b))
	w.cut()
	w.upOf(b)
	w.cut()
	w.plantsOf(b)
	w.cut()
	w.wantedOf(b)
	w.cut()
	if money {
		w.known(b.PerTransplant, p.money.AppendEachNumber)
		w.cut()
	}
}

// recordCaption says what a row's line is.
func (p *page) recordCaption(of cropPage) template.HTML {
	var kinds template.HTML
	for _, k := range p.kindsOf(of.Season) {
		kinds += say(` <span class="kd">%s%s</span>`, draw.Key(draw.KindOf(k)), name(orDash(k)))
	}
	return say("Every batch of %s sown in %s, by day. Line: in the house%s; black: in the chamber; upright: the planned day. Wanted in red: not reached. ≈ estimated, ≥ at least.", name(of.Crop), words.Year(of.Season), kinds)
}

// standingOf is a batch's line in the house.
func standingOf(b *report.Record) draw.Mark {
	day := func(d interface{ Known() bool }, v float64) rate.Num { return rate.Num{Value: v, Known: d.Known()} }
	return draw.Standing(draw.KindOf(b.Kind), float64(b.Sown), float64(b.End), day(b.ChamberUntil, float64(b.ChamberUntil)), day(b.Planned, float64(b.Planned)))
}

// known writes a figure in a way, or a dash where there is none.
func (w *pen) known(n report.Num, write func([]byte, float64) []byte) {
	if !n.Known {
		w.put(words.None)
		return
	}
	w.out = write(w.out, n.Value)
}

// upOf is a batch's emergence.
func (w *pen) upOf(b *report.Record) {
	if b.Early {
		w.put("early")
		return
	}
	w.known(b.Emergence(), words.AppendPercent)
}

// usableSign stands before plants that are not known for sure.
var usableSign = map[plants.How]string{plants.Estimated: "≈ ", plants.AtLeast: "≥ "}

// plantsOf is a batch's usable plants of its cells, and how they are known.
func (w *pen) plantsOf(b *report.Record) {
	if !b.Usable.Known {
		w.put(words.None)
		return
	}
	w.put(usableSign[b.UsableHow])
	w.rounded(words.RoundPlants(b.Usable.Value))
	if b.CellsSown.Known {
		w.put(`<span class="soft"> of `)
		w.whole(b.CellsSown.Value)
		w.put("</span>")
	}
}

// wantedOf is what the field wanted, in red where a batch that has ended gave fewer.
func (w *pen) wantedOf(b *report.Record) {
	switch {
	case !b.Wanted.Known:
	case b.Ended() && b.Measured() && b.Usable.Value < float64(b.Wanted.Value):
		w.put(`<span class="bad">`)
		w.whole(b.Wanted.Value)
		w.put(`<span class="vh"> not reached</span></span>`)
	default:
		w.whole(b.Wanted.Value)
	}
}
