package templates

import (
	"html/template"
	"strings"

	"traybook/report/money"
	"traybook/report/trays"
	"traybook/report/words"
)

// traysPage is whether more trays pay, how many, how sure that is, and what room
// there is for them.
type traysPage struct {
	Heading, Lead template.HTML
	Answers       []finding
	Without       template.HTML
	Owned         []template.HTML
	Chance        template.HTML
	Pairs         []trayPair
	Trial         *trialPart
	Room          roomPart
	Then          *roomPart
	Others        template.HTML // links to the other pages of pairs, where there are several
	Part          bool          // it is such a page, with pairs alone
}

// head says the answer in the heading.
func (v traysPage) head() (heading, lead template.HTML) { return v.Heading, v.Lead }

// trayPair is what stands behind the answer of one pair.
type trayPair struct {
	Name         template.HTML
	MatchesTitle template.HTML
	Matches      *rows
	Gain         *rows
	GainTitle    template.HTML
	NextTitle    template.HTML
	Next         *rows
	If           *ifTable
}

// hasTrays reports whether the book has a tray code.
func hasTrays(s *site, season int) bool { return len(s.r.Book.Trays) > 0 }

// traysView tells pairs with an answer before those without.
func traysView(p *page) any {
	v := traysPage{Heading: "Trays and room", Trial: p.trialPart(), Room: p.roomNow(), Then: p.roomThen(), Without: p.notCounted()}
	all := p.pairs()
	p.addPairs(&v, all[:min(len(all), pairsOnPage)])
	v.Others = p.pairLinks(len(all), 0)
	if len(all) == 0 {
		v.Answers = []finding{p.traysFinding()}
	} else {
		v.Heading, v.Lead = say("Trays: %s", lowerFirst(all[0].buyTitle())), say("What the records up to %s say about buying more of the dearer trays.", words.LongDate(p.r.Batches.Today))
	}
	if len(v.Owned) > 0 {
		v.Chance = chanceWords()
	}
	return v
}

// lowerFirst takes the capital of a sentence's first word away where it goes on after a
// colon.
func lowerFirst(h template.HTML) template.HTML {
	if h == "" {
		return h
	}
	return template.HTML(strings.ToLower(string(h[:1])) + string(h[1:]))
}

// trayPair is nil where there is nothing to show of a pair.
func (p *page) trayPair(a pairOf) *trayPair {
	if a.Matches == 0 {
		return nil
	}
	part := &trayPair{Name: say("%s beside %s", name(a.tray()), name(a.other())), MatchesTitle: p.matchTitle(a), Matches: p.matchRows(a)}
	if a.Gain.Known {
		part.Gain, part.GainTitle = p.gainRows(a), say("A use of %s gains %s", name(a.tray()), p.money.Sum(a.Gain.Value))
	}
	if a.Decision.Buy != nil {
		part.NextTitle, part.Next, part.If = p.nextTitle(a), p.nextRows(a), p.ifTable(a)
	}
	return part
}

// notCounted says what no answer about trays counts in.
func (p *page) notCounted() template.HTML {
	var minutes, mix []template.HTML
	for _, pb := range p.r.Trays.Payback {
		if pb.MinutesLeftOut {
			minutes = append(minutes, markup(name(pb.Tray)))
		}
		if pb.MixLeftOut {
			mix = append(mix, markup(name(pb.Tray)))
		}
	}
	out := template.HTML("Not counted: losses in the field, earliness, roots, storage, and disease carried over in used trays.")
	if len(minutes) > 0 {
		out = join(out, say("Nor the minutes a use of %s, which are not written.", list(minutes)))
	}
	if len(mix) > 0 {
		out = join(out, say("Nor the extra mix of %s: cell_ml or the cost of mix is not written.", list(mix)))
	}
	if n := p.r.Trays.LeftOut; n > 0 {
		out = join(out, say("Nor %s: the %s sown most often are set side by side.", words.Count(n, "tray code", "tray codes"), words.Whole(trays.MostCodes)))
	}
	return join(out, "Not tax advice.")
}

// chanceWords says how often chance alone would make the tray seem to pay.
func chanceWords() template.HTML {
	return say("How far to trust a verdict: of trays that are in truth no better than the others and cost just what they save, %s of 100 are said to pay “in the middle” by luck alone, and about %s of 100 “even at the low end”.",
		words.Whole(100*trays.TwinPaysMiddle), words.Whole(100*trays.TwinPaysLow))
}

// ownedSentences say whether the trays that are owned paid, and what the book shows of
// their lives: the average tray, not the next.
func (p *page) ownedSentences(a pairOf) []template.HTML {
	if a.Verdict == "" {
		return nil
	}
	out := join(say("<b>%s</b> %s: a use gained %s %s.", name(a.tray()), paysWords(a.Verdict), words.Of(a.Gain, p.money.Sum), words.Interval(a.GainLow, a.GainHigh, p.money.SumNumber)), p.paybackSentence(a))
	return []template.HTML{join(out, p.shownSentence(a.tray()), p.shownSentence(a.other()))}
}

// paysWords is a verdict as a sentence takes it.
func paysWords(v trays.PaysVerdict) string {
	return map[trays.PaysVerdict]string{
		trays.PaysLow:    "pays even at the low end of what the records show",
		trays.PaysMiddle: "pays in the middle of what the records show, but not at its low end",
		trays.PaysHigh:   "pays only at the high end of what the records show",
		trays.PaysNever:  "does not pay, not even at the high end of what the records show",
	}[v]
}

// paybackSentence says in how many uses a tray has paid for itself, beside its life.
func (p *page) paybackSentence(a pairOf) template.HTML {
	if !a.PaybackUses.Known {
		return "It never earns back its price: in the middle of what the records show, a use gains nothing."
	}
	out := say("It has paid for itself after %s", words.Tenths(a.PaybackUses.Value, "use", "uses"))
	if a.PaybackSeasons.Known {
		out = say("%s, %s", out, words.Tenths(a.PaybackSeasons.Value, "season", "seasons"))
	}
	return say("%s; %s.", out, lifeWords(a.Life))
}

// shownSentence is what the book shows of a code's life.
func (p *page) shownSentence(code string) template.HTML {
	s := p.r.Money.Lives[code].Shown
	if !s.Bought.Known || s.Bought.Value == 0 {
		return ""
	}
	return say("%s: %s of %s trays are gone so far, after %s.", name(code), words.Whole(s.Gone), words.Whole(s.Bought.Value), words.Tenths(s.Uses, "tray-use", "tray-uses"))
}

// lifeWords says how long a tray lasts.
func lifeWords(l money.Life) template.HTML {
	if !l.Uses.Known {
		return "how many uses it survives is not known"
	}
	out := say("it lasts %s", words.Tenths(l.Uses.Value, "use", "uses"))
	if l.Seasons.Known {
		out = say("%s, which is %s", out, words.Tenths(l.Seasons.Value, "season", "seasons"))
	}
	switch {
	case l.Assumed:
		return say("%s (its life is not written, so one season is taken)", out)
	case l.EndsByAssumedYears():
		return say("%s (its years are not written, so 15 are taken)", out)
	}
	return out
}

// usesOf is a life in uses.
func usesOf(l money.Life) template.HTML {
	return markup(words.Of(l.Uses, func(v float64) string { return words.Tenths(v, "use", "uses") }))
}
