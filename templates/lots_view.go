package templates

import (
	"cmp"
	"html/template"
	"slices"

	"traybook/records"
	"traybook/report"
	"traybook/report/batch"
	"traybook/report/germination"
	"traybook/report/words"
)

// lotsPage is the seed lots of a season: what came up of them, and their trail.
type lotsPage struct {
	season  int
	part    string        // crop, on a page of its lots alone
	Parts   template.HTML // links to such pages
	Below   finding
	Lots    *rows
	Trail   *rows
	Data    dataFile
	Without template.HTML // batches without a lot
	Treated template.HTML
	Caution bool // some lot is treated, or may be
}

// head names the season.
func (v lotsPage) head() (heading, lead template.HTML) {
	if v.part != "" {
		return say("Seed lots, %s: %s", words.Year(v.season), name(v.part)), "What came up of each packet, and where its seed went."
	}
	return say("Seed lots, %s", words.Year(v.season)), "What came up of each packet, and where its seed went."
}

// hasLots reports whether a batch of the season names a lot of the book. A lot that only
// stands in lots.csv makes no page; it stands with those of the season in which it was
// bought, if there is one.
func hasLots(s *site, season int) bool {
	return slices.ContainsFunc(s.seasons[season], func(b *report.Record) bool { return s.lots[b.Lot] != "" })
}

// lotsView tells the lots sown in one season.
func lotsView(p *page) any {
	lots := p.lotsOf(p.season)
	treated, caution := p.treatedWords(lots)
	v := lotsPage{season: p.season, Below: p.lotsFinding(lots), Without: p.withoutLot(), Treated: treated, Caution: caution, Parts: p.lotLinks(-1), Data: p.dataFile("lots")}
	if v.Parts == "" {
		v.Lots, v.Trail = p.lotRows(lots), p.trailRows(lots, p.unsownLots(p.season))
	}
	return v
}

// lotAnchors gives each lot of lots.csv an anchor on its pages, the same on all.
func lotAnchors(lots []germination.Lot) map[string]string {
	at := map[string]string{}
	var ids slugs
	for _, l := range lots {
		at[l.Code] = "lot-" + ids.unique(l.Code, "x")
	}
	return at
}

// writeLot links to a lot's row on the page of a season in which it was sown; a code that
// lots.csv lacks stands alone.
func (p *page) writeLot(w *pen, season int, code string) {
	if id, ok := p.lots[code]; ok {
		p.linkTo(w, p.lotPage(season, code), id, (*pen).name, code)
	} else {
		w.name(code)
	}
}

// lotsOf are the lots with a batch in a season, those furthest below their packets first
// and those of which the gap says little last.
func (p *page) lotsOf(season int) []germination.Lot {
	sown := map[string]bool{}
	for _, b := range p.seasons[season] {
		sown[b.Lot] = true
	}
	lots := batch.Filter(p.r.Germination.Lots, func(l germination.Lot) bool { return sown[l.Code] })
	slices.SortStableFunc(lots, func(a, b germination.Lot) int { return cmp.Compare(b.Gap().Or(-2), a.Gap().Or(-2)) })
	return lots
}

// unsownLots are those bought in a season and never sown; those without a date stand with
// the last season.
func (p *page) unsownLots(season int) []germination.Lot {
	last := p.r.Batches.Seasons[len(p.r.Batches.Seasons)-1]
	return batch.Filter(p.r.Germination.Lots, func(l germination.Lot) bool {
		of := last
		if l.Bought.Known() {
			of = p.r.Book.Settings.Season(l.Bought)
		}
		return len(l.Sown) == 0 && of == season
	})
}

// lotsBy are the lots of one answer.
func lotsBy(lots []germination.Lot, below germination.Below) []germination.Lot {
	return batch.Filter(lots, func(l germination.Lot) bool { return l.Below == below })
}

// lotsFinding says how many lots of a season came up below their packets. Only lots with a
// packet's figure and one seed a cell can be judged; how many those are stands beside the
// number.
func (p *page) lotsFinding(lots []germination.Lot) finding {
	below, unsure := lotsBy(lots, germination.BelowYes), lotsBy(lots, germination.BelowUnsure)
	judged := len(below) + len(unsure) + len(lotsBy(lots, germination.BelowNo))
	f := finding{ID: "below", Title: lotsTitle(below, unsure, judged), Big: words.Whole(len(below)), What: say("of %s came up below their packets", words.Plural(judged, "lot", "lots"))}
	f.Note = say("%s sown in %s; %s a packet’s figure and counts enough.", words.Plural(len(lots), "lot", "lots"), words.Year(p.season), haveWords(judged))
	f.Side = `<p class="nt"><strong>Emergence in a mix is not a laboratory test.</strong> Cold, wet or crusted mix, mice and a dry corner all stand in these figures. They tell which packet to ask about, not who is to blame.</p>`
	if judged == 0 {
		f.Big, f.What = "?", "lots came up below their packets"
		f.Say = []template.HTML{"None can be set against its packet yet. That takes the packet’s figure (germ_label in lots.csv), one seed a cell, and batches that were counted."}
		return f
	}
	for _, l := range below[:min(mostNamed, len(below))] {
		f.Say = append(f.Say, p.belowWords(l))
	}
	if n := len(below) - mostNamed; n > 0 {
		f.Say = append(f.Say, say("And %s more, in the rows below.", words.Whole(n)))
	}
	return withUnsure(f, unsure)
}

// haveWords is "7 have", "1 has" or "none has".
func haveWords(n int) string {
	switch n {
	case 0:
		return "none has"
	case 1:
		return "1 has"
	}
	return words.Whole(n) + " have"
}

// withUnsure adds the lots of too few batches to tell.
func withUnsure(f finding, unsure []germination.Lot) finding {
	if len(unsure) > 0 {
		f.Say = append(f.Say, say("Lower than a mix allows, but of too few batches to tell, or sown on one day only: %s.", lotNames(unsure)))
	}
	return f
}

// lotNames names lots.
func lotNames(lots []germination.Lot) template.HTML {
	names := make([]template.HTML, len(lots))
	for i, l := range lots {
		names[i] = batchCode(l.Code)
	}
	return listSome(names, mostInList)
}

// lotsTitle is the finding of each verdict: some below, none but some in doubt, none,
// nothing to judge.
func lotsTitle(below, unsure []germination.Lot, judged int) template.HTML {
	switch {
	case judged == 0:
		return "No lot can be set against its packet yet"
	case len(below) == 1:
		return say("%s came up below its packet", lotNames(below))
	case len(below) > 0:
		names := make([]template.HTML, len(below))
		for i, l := range below {
			names[i] = batchCode(l.Code)
		}
		return say("%s came up below their packets", namedList(names))
	case len(unsure) > 0:
		return "No lot is sure to lie below its packet"
	case judged == 1:
		return "The one lot that can be judged came up within what a mix allows"
	case judged == 2:
		return "Both lots that can be judged came up within what a mix allows"
	}
	return say("All %s lots that can be judged came up within what a mix allows", words.Whole(judged))
}

// belowWords is a flagged lot as a sentence or two.
func (p *page) belowWords(l germination.Lot) template.HTML {
	out := say("%s, %s %s: of 100 seeds %s came up %s, %s. Its packet says %s, of which a mix takes up to %s here.", p.to(p.lotAddress(p.season, p.lots[l.Code], l.Code), batchCode(l.Code)), name(l.Crop), name(l.Variety),
		words.PercentNumber(l.SeedRate.Value), words.Interval(l.SeedLow, l.SeedHigh, words.PercentNumber), words.Batches(l.Counted), words.PercentNumber(l.Label.Value), words.PercentNumber(l.Allowance.Value))
	if belowLegal(l) {
		out = join(out, say("It lies below the legal minimum of %s too: worth a test by a laboratory, and a call to the supplier.", words.Percent(l.Minimum.Value)))
	}
	return out
}

// belowLegal reports whether even the high end of what came up lies below the legal
// minimum, where the book asks for that.
func belowLegal(l germination.Lot) bool {
	return l.Minimum.Known && l.SeedHigh.Known && l.SeedHigh.Value < l.Minimum.Value
}

// treatedWords name the lots of a season that are marked as treated, and those that are
// both treated and organic, which cannot be; caution is whether any may be treated. A
// blank is not a no. Treated seed asks for gloves, so a lot of which nobody wrote brings
// the caution too.
func (p *page) treatedWords(lots []germination.Lot) (says template.HTML, caution bool) {
	lots = append(slices.Clone(lots), p.unsownLots(p.season)...)
	var treated, both, blank []germination.Lot
	for _, l := range lots {
		switch {
		case l.Treated.Or(false) && l.Organic.Or(false):
			both = append(both, l)
		case l.Treated.Or(false):
			treated = append(treated, l)
		case l.Treated == records.Maybe[bool]{}:
			blank = append(blank, l)
		}
	}
	if len(treated)+len(both)+len(blank) == 0 {
		return "No lot of this season is treated, as written.", false
	}
	if len(treated) > 0 {
		says = say("Marked as treated: %s.", lotNames(treated))
	}
	if len(both) > 0 {
		says = join(says, say("Marked as both organic and treated, which asks for a second look at the packet: %s.", lotNames(both)))
	}
	if n := len(blank); n > 0 {
		says = join(says, say("Of %s it is not written whether %s treated.", words.Plural(n, "lot", "lots"), words.Unit(float64(n), "it is", "they are")))
	}
	return says, true
}
