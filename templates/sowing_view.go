package templates

import (
	"html/template"
	"slices"

	"traybook/records"
	"traybook/report/batch"
	"traybook/report/room"
	"traybook/report/sowing"
	"traybook/report/words"
	"traybook/templates/draw"
)

// sowingPage is how much to sow, what the wishes take, and the seed to buy.
type sowingPage struct {
	Answer  finding
	Lead    template.HTML
	Table   *rows
	Left    *rows
	Wishes  *table
	Wished  template.HTML
	Weeks   *table
	Reorder *table
	Balance *table
}

// head is the page's heading.
func (v sowingPage) head() (heading, lead template.HTML) { return "How much to sow", v.Lead }

// hasSowing reports whether the book tells how much to sow of anything.
func hasSowing(s *site, _ int) bool {
	f := s.r.Sowing
	return len(f.Sowing) > 0 || len(f.Wishes) > 0 || len(f.Balance) > 0
}

// sowingView is the sheet to pin beside the seed box.
func sowingView(p *page) any {
	sure := words.Fixed(100*p.r.Book.Settings.SureOfTarget, 0)
	v := sowingPage{Answer: p.sowFinding(p.season), Table: p.sowRows(), Left: p.mondayRows("free", "week"), Wishes: p.wishTable(), Weeks: p.wishWeeks(), Reorder: p.reorderTable(), Balance: p.balanceTable()}
	v.Lead = say("Cells to sow to have enough plants %s times in 100, from what all seasons so far gave.", sure)
	v.Wished = p.wishWords()
	return v
}

// sowRows is how many cells each crop, variety and tray takes.
func (p *page) sowRows() *rows {
	lowest := 1.0
	for _, r := range p.r.Sowing.Sowing {
		lowest = min(lowest, r.Chance.Rate.Low.Or(r.Chance.Rate.Share.Value))
	}
	axis := draw.Shares(p.id("gs"), lowest)
	sure := words.Fixed(100*p.r.Book.Settings.SureOfTarget, 0)
	t := p.rows("sowing", "sow", say("For 100 plants, and for the batch that is usually wanted: cells and trays to be sure %s times in 100. Over: what being sure leaves, as a rule. +20 %% fails: how often 120 cells would give fewer than 100 plants.", sure),
		"sowing", col{Width: "c-name2", Head: "Crop, variety, tray"}, col{Class: "st", Head: "Usable, %", Axis: axis.Head()},
		col{Width: "c-n4", Class: "n", Head: "For 100"}, col{Width: "c-n4", Class: "n", Head: "For a batch"}, col{Width: "c-n", Class: "n", Head: "Over"}, col{Width: "c-n2", Class: "n", Head: "+20 % fails"}, col{Width: "c-n", Class: "n", Head: "Batches"})
	t.Title = "How much to sow"
	crop := ""
	for _, r := range p.r.Sowing.Sowing {
		if r.Crop != crop {
			crop = r.Crop
			t.under("", "")
			t.of(crop)
		}
		t.add("", "", say(`<span class="v">%s %s</span> %s`, name(r.Crop), name(r.Variety), trayMark(r.Group)),
			toldShare(r.Chance.Rate, axis, draw.Range(r.Chance.Rate.Low, r.Chance.Rate.High), draw.Dot(draw.KindOf(r.Kind), r.Chance.Rate.Share, false)),
			cellsTrays(r.CellsPer100, r.TraysPer100), forBatch(r), words.Of(r.LeftOver, words.Whole[float64]), words.Of(r.PlainFails, words.Percent), words.Whole(r.Chance.Rate.Batches))
	}
	t.note("A dash: no one sowing of up to three cells a plant is that sure; several sowings need fewer.")
	return t
}

// cellsTrays is cells with the trays that they fill.
func cellsTrays(cells, trays sowing.Whole) template.HTML {
	if !cells.Known {
		return words.None
	}
	if !trays.Known {
		return say("<b>%s</b>", words.Whole(cells.Value))
	}
	return say(`<b>%s</b><span class="soft"> in %s</span>`, words.Whole(cells.Value), words.Plural(trays.Value, "tray", "trays"))
}

// forBatch is the cells for the plants that one sowing is usually asked for.
func forBatch(r sowing.Row) template.HTML {
	if !r.Target.Known {
		return words.None
	}
	if !r.CellsToSow.Known {
		return say("%s: %s", words.Whole(r.Target.Value), words.None)
	}
	return say(`<span class="soft">%s: </span><b>%s</b>`, words.Whole(r.Target.Value), words.Whole(r.CellsToSow.Value))
}

// wishTable is what the fields want of the next season, row by row of wishes.csv.
func (p *page) wishTable() *table {
	t := p.table("wishes", "What the fields want, and what to sow for it", "wishes", plain("Crop", "For", "Tray"), nums("Plants", "Cells", "Trays", "Seeds"), plain("Sow by", "Rests on"))
	for _, w := range p.r.Sowing.Wishes {
		basis := template.HTML("too few batches")
		if w.Basis != "" {
			basis = say("%s, %s", words.Batches(w.Chance.Rate.Batches), basisWords(w.Basis))
		}
		t.add(say("%s %s", name(w.Crop), name(w.Variety)), words.ISODate(w.Planned), name(orDash(w.Code)), words.Whole(w.Plants), ofWhole(w.Cells), ofWhole(w.Trays),
			words.Of(w.Seeds, words.Number), words.ISODate(w.SowBy), basis)
	}
	return t
}

// basisWords says what the batches of a wish have in common.
func basisWords(b sowing.Basis) string {
	return map[sowing.Basis]string{sowing.OfVariety: "the same variety and tray", sowing.OfCells: "all varieties in that tray", sowing.OfCrop: "the crop in any tray"}[b]
}

// ofWhole is a whole number that may be missing.
func ofWhole(n sowing.Whole) string {
	if !n.Known {
		return words.None
	}
	return words.Whole(n.Value)
}

// wishWords says whether the wishes fit the house.
func (p *page) wishWords() template.HTML {
	weeks := p.r.Sowing.Weeks
	if len(weeks) == 0 {
		return ""
	}
	over := batch.Filter(weeks, sowing.Week.Over)
	if len(over) == 0 {
		return "If all of them were sown by their day, there would be room and trays for them, whatever else stands there left out."
	}
	w := over[0]
	return say("If all of them were sown by their day, there would be too little of %s from the week of %s on: %s of %s.", roomOf(w.Kind, w.Place), words.DayMonth(w.Monday), words.Number(w.Taken), words.Of(w.Capacity, words.Number))
}

// roomOf names a place in a sentence.
func roomOf(kind room.PlaceKind, place string) template.HTML {
	if kind == room.TrayPlace {
		return say("%s trays", name(place))
	}
	return "the benches"
}

// wishWeeks is the room that all wishes together would take, week by week.
func (p *page) wishWeeks() *table {
	weeks := p.r.Sowing.Weeks
	places, of := batch.GroupBy(weeks, func(w sowing.Week) string { return w.Place })
	var mondays []int
	for _, w := range weeks {
		mondays = append(mondays, int(w.Monday))
	}
	slices.Sort(mondays)
	mondays = slices.Compact(mondays)
	t := p.table("wish-weeks", "What all of them would take, by week: if sown by their day, whatever else stands there left out", "", plain("Week of"), nums(placeHeads(places, of)...))
	for _, monday := range mondays {
		cells := []any{}
		for _, place := range places {
			cells = append(cells, weekCell(of[place], monday))
		}
		t.add(append([]any{words.DayMonth(records.Date(monday))}, cells...)...)
	}
	return t
}

// placeHeads heads a column for each place with what it holds.
func placeHeads(places []string, of map[string][]sowing.Week) []string {
	var out []string
	for _, place := range places {
		w := of[place][0]
		head := place
		if w.Kind != room.TrayPlace {
			head = "Benches"
		}
		if w.Capacity.Known {
			head += " of " + words.Number(w.Capacity.Value)
		}
		out = append(out, head)
	}
	return out
}

// weekCell is what a place would hold in a week; empty for none.
func weekCell(weeks []sowing.Week, monday int) cell {
	for _, w := range weeks {
		if int(w.Monday) == monday && w.Taken > 0 {
			c := cell{Value: markup(words.Number(w.Taken))}
			if w.Over() {
				c.Class = "bad"
			}
			return c
		}
	}
	return cell{}
}

// reorderTable is the seed in hand, what the wishes need of it, and what to buy.
func (p *page) reorderTable() *table {
	t := p.table("reorder", "Seed in hand, what the wishes need of it, and what to buy", "", plain("Crop, variety"), nums("In hand", "Needed", "To buy"), plain("Lots"))
	for _, o := range sowing.Reorder(p.r.Sowing.Wishes, p.r.Germination.Lots) {
		if len(p.r.Sowing.Wishes) > 0 && o.Wishes == 0 {
			continue
		}
		var lots []template.HTML
		for _, h := range o.Lots {
			lots = append(lots, say("%s: %s", name(h.Lot), words.Of(h.Left, words.Whole[float64])))
		}
		t.add(say("%s %s", name(o.Crop), name(o.Variety)), words.Of(o.Left, words.Whole[float64]), words.Of(o.Needed, words.Whole[float64]), words.Of(o.Buy, words.Whole[float64]), prose(list(lots))).Crop = o.Crop
	}
	t.note("In hand: bought less sown, over the whole book. A dash: seeds bought are not written.")
	return t
}

// balanceTable is what each crop gave beside what was wanted, in the season.
func (p *page) balanceTable() *table {
	t := p.table("balance", say("Plants wanted and given in %s, batches that have ended", words.Year(p.season)), "balance", plain("Crop"), nums("Batches", "Wanted", "Given", "Short batches", "Plants short", "Left over"), plain("Advice"))
	for _, b := range p.r.Sowing.Balance {
		if b.Season == p.season {
			advice := template.HTML(template.HTMLEscapeString(string(b.Advice)))
			if b.ByLot.Known {
				advice = say("short by one lot: %s", name(orDash(b.ByLot.Value)))
			}
			t.add(name(b.Crop), words.Whole(b.Batches), words.Whole(b.Wanted), words.Whole(words.RoundPlants(b.Usable)), words.Whole(b.ShortBatches),
				words.Whole(words.RoundPlants(b.Short)), words.Whole(words.RoundPlants(b.LeftOver)), advice)
		}
	}
	return t
}
