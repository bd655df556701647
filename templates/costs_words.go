package templates

import (
	"cmp"
	"html/template"
	"slices"

	"traybook/report/money"
	"traybook/report/words"
)

// mostParts is how many parts of a cost, and crops with failed cells, a sentence names.
const mostParts = 3

// cropSentences says of each crop, the dearest in all first, what a grower can
// act on.
func (p *page) cropSentences(season int) []template.HTML {
	rows := money.InSeason(p.r.Money.Crops, season)
	slices.SortStableFunc(rows, func(a, b money.Cost) int { return cmp.Compare(b.Total.Or(-1), a.Total.Or(-1)) })
	var out []template.HTML
	for _, c := range rows {
		if c.Total.Known && c.Total.Value > 0 {
			out = append(out, p.cropSentence(season, c))
		}
	}
	return out
}

// cropSentence says what a crop's transplant cost and what would lower it most.
func (p *page) cropSentence(season int, c money.Cost) template.HTML {
	crop := say("<strong>%s</strong>", p.crop(season, c.Crop))
	if !c.PerTransplant.Known {
		return say("%s: %s so far, and no figure of usable plants from an ended batch.", crop, p.money.Sum(c.Total.Value))
	}
	sentence := say("%s: %s a transplant, %s; %s", crop, p.money.Each(c.PerTransplant.Value), words.Batches(c.Rests), p.largestPart(c))
	if c.FailedShare.Known {
		sentence = say("%s; %s of its money went into failed cells", sentence, words.Percent(c.FailedShare.Value))
	}
	return sentence + "."
}

// largestPart names the category that takes most of a cost, and what would lower it:
// fewer failed cells where those take more still.
func (p *page) largestPart(c money.Cost) template.HTML {
	parts, total := p.partsOf(c.Behind), c.Behind.Total()
	if len(parts) == 0 || total <= 0 {
		return "no part known"
	}
	most := slices.MaxFunc(parts, func(a, b costPart) int { return cmp.Compare(a.Money, b.Money) })
	part := say("its largest part is %s (%s)", most.Words, words.Percent(most.Money/total))
	saves := categories[most.Category].saves
	switch {
	case c.FailedShare.Known && c.FailedShare.Value >= most.Money/total:
		return say("%s, but finding out why cells failed would save more", part)
	case saves != "":
		return say("%s: %s", part, saves)
	}
	return part
}

// lostMoney is what failed cells took of what stands behind a cost.
func lostMoney(c money.Cost) float64 { return c.FailedShare.Value * c.Behind.Total() }

// failedWords names the crops with which most money went into failed cells.
func (p *page) failedWords(season int) template.HTML {
	rows := money.InSeason(p.r.Money.Crops, season)
	slices.SortStableFunc(rows, func(a, b money.Cost) int { return cmp.Compare(lostMoney(b), lostMoney(a)) })
	var crops []template.HTML
	for _, c := range rows[:min(mostParts, len(rows))] {
		if lost := lostMoney(c); c.FailedShare.Known && lost >= hair {
			crops = append(crops, say("%s (%s, %s)", p.crop(season, c.Crop), p.money.Sum(lost), words.Batches(c.Rests)))
		}
	}
	if len(crops) == 0 {
		return ""
	}
	return say("Most money went into failed cells with %s: look there first for what went wrong.", list(crops))
}

// unborneWords says what a season spent that no batch bears.
func (p *page) unborneWords(season int) template.HTML {
	sum := p.ledgerSum(season)
	if !shows(sum.Unborne) {
		return say("All %s of the season is borne by batches.", p.money.Sum(sum.Ledger))
	}
	return say("Of %s spent, %s is borne by no batch: an empty house, trays that lay idle, a bill for days on which nothing stood.",
		p.money.Sum(sum.Ledger), p.money.Sum(sum.Unborne))
}

// ledgerSum adds a season's categories up.
func (p *page) ledgerSum(season int) (sum money.LedgerLine) {
	for _, l := range p.r.Money.Ledger {
		if l.Season == season {
			sum.Ledger, sum.Borne, sum.Unborne = sum.Ledger+l.Ledger, sum.Borne+l.Borne, sum.Unborne+l.Unborne
		}
	}
	return sum
}
