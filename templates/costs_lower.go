package templates

import (
	"cmp"
	"html/template"
	"slices"

	"traybook/records"
	"traybook/report/batch"
	"traybook/report/money"
	"traybook/report/words"
)

// mostParts is how many parts of a cost, and crops with failed cells, a sentence names.
const mostParts = 3

// lowerPart is what would lower the cost of a plant.
type lowerPart struct {
	Title template.HTML
	Says  []template.HTML
}

// failedCells is the lever of a cost of which failed cells took more than any category.
const failedCells money.Category = "failed cells"

// leverOf is what would lower a cost most: the category that takes most of it, or fewer
// failed cells where those took as much; empty where no part is known. Failed cells cut
// across the categories: what was sown into them took seed, mix, labour and room alike. So
// they are weighed against the largest single part.
func (p *page) leverOf(c money.Cost) money.Category {
	parts, total := p.largestParts(c), c.Behind.Total()
	switch {
	case !c.PerTransplant.Known || len(parts) == 0 || !(total > 0):
		return ""
	case c.FailedShare.Known && c.FailedShare.Value >= parts[0].Money/total:
		return failedCells
	}
	return parts[0].Category
}

// lowerPart says of a season what would lower its costs; nil where nothing can be told. It
// names what is largest, not what is easiest: only the grower knows what can be done about
// it.
func (p *page) lowerPart(season int) *lowerPart {
	c, _ := p.r.Money.Season(season)
	part := &lowerPart{Title: leverTitle(p.leverOf(c))}
	part.Says = append(part.Says, p.failedWords(season))
	levers, crops := p.levers(season)
	for _, lever := range levers {
		part.Says = append(part.Says, p.leverWords(season, lever, crops[lever]))
	}
	part.Says = slices.DeleteFunc(part.Says, func(s template.HTML) bool { return s == "" })
	if len(part.Says) == 0 {
		return nil
	}
	return part
}

// leverTitle is the finding of what would lower a season's cost most.
func leverTitle(lever money.Category) template.HTML {
	switch saves := categories[lever].saves; {
	case lever == failedCells:
		return "Fewer failed cells would save most"
	case saves != "":
		return markup(capital(saves))
	}
	return "What would lower it"
}

// levers are what would lower the cost of a season's crops, that of the most money first,
// with the crops of batches enough that it holds for. Crops of few batches are left out,
// as one that failed would send the reader after the wrong thing.
func (p *page) levers(season int) (levers []money.Category, crops map[money.Category][]money.Cost) {
	rows := batch.Filter(money.InSeason(p.r.Money.Crops, season), func(c money.Cost) bool { return !fewCosts(c) && p.leverOf(c) != "" })
	slices.SortStableFunc(rows, func(a, b money.Cost) int { return cmp.Compare(b.Behind.Total(), a.Behind.Total()) })
	return batch.GroupBy(rows, p.leverOf)
}

// leverWords says for which crops something would save most.
func (p *page) leverWords(season int, lever money.Category, crops []money.Cost) template.HTML {
	if lever == failedCells {
		var of []template.HTML
		slices.SortStableFunc(crops, func(a, b money.Cost) int { return cmp.Compare(b.FailedShare.Value, a.FailedShare.Value) })
		for _, c := range crops[:min(mostParts, len(crops))] {
			of = append(of, say("%s (%s, %s)", p.crop(season, c.Crop), words.Percent(c.FailedShare.Value), words.Batches(c.Rests)))
		}
		return say("Failed cells took more of the money than any other part with %s%s.", list(of), andMore(len(crops)-len(of)))
	}
	var of []template.HTML
	for _, c := range crops {
		of = append(of, p.crop(season, c.Crop))
	}
	out := say("%s was the largest part with %s", capital(categories[lever].words), list(of))
	if saves := categories[lever].saves; saves != "" {
		return say("%s: %s.", out, saves)
	}
	return out + "."
}

// andMore counts what a sentence does not name.
func andMore(n int) template.HTML {
	if n <= 0 {
		return ""
	}
	return say(", and with %s more", words.Whole(n))
}

// lostMoney is what failed cells took of what stands behind a cost.
func lostMoney(c money.Cost) float64 { return c.FailedShare.Or(0) * c.Behind.Total() }

// failedWords names the crops with which most money went into failed cells. Here crops are
// ranked by money, not by share: a small crop that failed whole may have cost less than a
// tenth of a large one.
func (p *page) failedWords(season int) template.HTML {
	rows := money.InSeason(p.r.Money.Crops, season)
	slices.SortStableFunc(rows, func(a, b money.Cost) int { return cmp.Compare(lostMoney(b), lostMoney(a)) })
	all, _ := p.r.Money.Season(season)
	var crops []template.HTML
	for _, c := range rows[:min(mostParts, len(rows))] {
		if lost := lostMoney(c); lost >= hair {
			crops = append(crops, say("%s (%s, %s)", p.crop(season, c.Crop), p.money.Sum(lost), words.Batches(c.Rests)))
		}
	}
	if len(crops) == 0 {
		return ""
	}
	return say("In %s %s went into cells that gave no usable plant, most of it with %s. Look there first for what went wrong.", words.Year(season), p.money.Sum(lostMoney(all)), list(crops))
}

// unpricedWords names the trays of a season that bear no charge, for want of a price. A
// tray without a count bears nothing either, as nobody knows over how many uses its price
// is spread.
func (p *page) unpricedWords(season int) template.HTML {
	if !p.r.Money.Has[money.TrayCharge] {
		return "No tray has both a price and a count in trays.csv, so no cost here holds a tray."
	}
	var codes []string
	for _, b := range p.seasons[season] {
		if b.Tray != "" && !p.priced(b.Tray) && !slices.Contains(codes, b.Tray) {
			codes = append(codes, b.Tray)
		}
	}
	if len(codes) == 0 {
		return ""
	}
	slices.Sort(codes)
	names := make([]template.HTML, len(codes))
	for i, code := range codes {
		names[i] = markup(name(code))
	}
	return say("Without a price and a count in trays.csv: %s. What was sown in them bears nothing for its tray and looks cheaper than it was.", list(names))
}

// priced reports whether a purchase of a tray code has a price and a count.
func (p *page) priced(tray string) bool {
	code := p.r.Batches.Codes[tray]
	return code != nil && slices.ContainsFunc(code.Rows, func(row records.Purchase) bool { return row.Price.Known && row.Count.Or(0) > 0 })
}

// blameWords says what rows by tray cannot tell, and what can.
func (p *page) blameWords() template.HTML {
	out := template.HTML("Other crops stand in other trays, so a dearer row does not blame its tray.")
	if p.paths["trays.html"] {
		return join(out, say("Only %s can.", p.to("trays.html", "matched sowings")))
	}
	return out
}
