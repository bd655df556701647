package templates

import (
	"html/template"
	"slices"

	"traybook/report/chart"
	"traybook/report/trays"
	"traybook/report/words"
)

// traysPage is whether more trays pay, how many, how sure that is, and what room
// there is for them.
type traysPage struct {
	Title    string
	Decision *decision
	Pairs    []trayPair
	Chance   template.HTML
	Trial    *trialPart
	Room     roomPart
	Then     *roomPart
}

// trayPair is all that is known of one pair of trays.
type trayPair struct {
	ID        string
	Title     template.HTML
	Known     bool
	Words     []template.HTML
	Gain      *table
	Matches   *figure
	OneByOne  more
	Next      *table
	NextChart more
	NextWords template.HTML
}

// hasTrays reports whether the book has a tray code.
func hasTrays(s *site) bool { return len(s.r.Book.Trays) > 0 }

// traysView tells pairs with an answer before those without.
func traysView(p *page) any {
	v := traysPage{Title: p.spec.title, Decision: p.decision(), Trial: p.trialPart(), Room: p.roomNow(), Then: p.roomThen()}
	for _, known := range []bool{true, false} {
		for _, pb := range p.r.Trays.Payback {
			if (pb.Verdict != "") == known {
				v.Pairs = append(v.Pairs, p.trayPair(pb))
			}
		}
	}
	if slices.ContainsFunc(v.Pairs, func(t trayPair) bool { return t.Known }) {
		v.Chance = chanceWords()
	}
	return v
}

// chanceWords says how often chance alone would make the tray seem to pay.
func chanceWords() template.HTML {
	return say("How far to trust a verdict: of trays that are in truth no better than the others and cost just what they save, %s of 100 are said to pay “in the middle” by luck alone, and about %s of 100 “even at the low end”.",
		words.Whole(100*trays.TwinPaysMiddle), words.Whole(100*trays.TwinPaysLow))
}

// trayPair tells a pair; of one without a verdict only why, and its matches.
func (p *page) trayPair(pb trays.Payback) trayPair {
	t := trayPair{ID: p.id("pair-" + slug(pb.Tray+" "+pb.Other)), Known: pb.Verdict != "",
		Title: say("%s beside %s: %s cells", name(pb.Tray), name(pb.Other), words.Whole(pb.Cells))}
	t.Matches = p.matchesFigure(pb)
	t.OneByOne = more{Summary: oneByOneWords(pb.Matches), Tables: []*table{p.matchTable(pb)}}
	if !t.Known {
		t.Words = []template.HTML{join(say("The records cannot tell whether %s pays: no figure is given.", name(pb.Tray)), p.whyWords(pb))}
		return t
	}
	t.Words = p.verdictSentences(pb)
	t.Gain = p.gainTable(pb)
	t.Next, t.NextChart, t.NextWords = p.nextTable(pb), p.nextChart(pb), p.nextWords(pb)
	return t
}

// oneByOneWords heads the list of matched sowings.
func oneByOneWords(matches int) template.HTML {
	if matches == 1 {
		return "The matched sowing"
	}
	return say("The %s matched sowings, one by one", words.Whole(matches))
}

// matchesFigure is the dots of a pair with what they say.
func (p *page) matchesFigure(pb trays.Payback) *figure {
	caption := template.HTML("A dot for each time the same seed was sown in both within a week.")
	if pb.Difference.Known {
		per := func(v float64) string { return words.Signed(v*float64(pb.Cells), 1) }
		caption = join(caption, say("On average a tray of %s gave %s usable plants %s, %s.", name(pb.Tray), moreOrFewer(pb.Difference.Value*float64(pb.Cells)),
			words.Interval(pb.DifferenceLow, pb.DifferenceHigh, per), words.Plural(pb.Matches, "match", "matches")), p.breakEvenWords(pb))
	}
	return p.figure(chart.Name("matches", pb.Tray, pb.Other), "Matched sowings", caption, nil)
}

// moreOrFewer writes a difference in words: 6.5 more.
func moreOrFewer(v float64) string {
	return words.TenthsNumber(abs(v)) + " " + map[bool]string{true: "more", false: "fewer"}[v >= 0]
}

// breakEvenWords says how many more plants a use must give.
func (p *page) breakEvenWords(pb trays.Payback) template.HTML {
	switch v := pb.BreakEvenPlants; {
	case !v.Known:
		return ""
	case v.Value <= 0:
		return "It costs no more a use than the other, so it pays even with no more plants."
	default:
		return say("It pays from %s more plants a use.", words.Number(v.Value))
	}
}

// matchTable lists a pair's matched sowings.
func (p *page) matchTable(pb trays.Payback) *table {
	t := p.table("matches-"+slug(pb.Tray+" "+pb.Other), say("Matched sowings of %s and %s", name(pb.Tray), name(pb.Other)), "matches",
		nums("No."), plain("First sown", "Crop", "Variety", "Lot"), nums("Usable in "+pb.Tray, "Usable in "+pb.Other, "More in 100 cells"), plain("Batches"))
	for _, m := range p.r.Trays.Matches {
		if m.Tray == pb.Tray && m.Other == pb.Other {
			t.add(words.Whole(m.Number), words.ISODate(m.FirstSown), name(m.Crop), name(m.Variety), name(orDash(m.Lot)),
				ofCells(m.UsableTray, m.CellsTray), ofCells(m.UsableOther, m.CellsOther), words.Signed(100*m.Difference, 1), prose(p.batches(m.Batches)))
		}
	}
	return t
}

// ofCells is usable plants above the cells they came from.
func ofCells(usable, cells float64) cell { return with(words.Number(usable), "of "+words.Whole(cells)) }
