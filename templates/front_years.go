package templates

import (
	"html/template"
	"math"

	"traybook/report/rate"
	"traybook/report/words"
	"traybook/report/years"
)

// yearsFinding answers how a season compares with the one before it, like sowings with
// like sowings. The large number is of emergence, in cells of a hundred, as that is
// counted on most farms; the other measures stand on the page of years.
func (p *page) yearsFinding(season int) finding {
	c, ok := p.r.Years.Farm(season, years.Emergence)
	f := finding{Big: "?", What: "against the season before", Side: p.yearsSide(season)}
	more := p.moreOn("years.html", "Year over year")
	if !ok {
		f.Title, f.Say = "There is no season to compare this one with", []template.HTML{p.noEarlier(season)}
		f.Note = more
		return f
	}
	f.Title, f.What = changeTitle(c), say("in 100 cells, like sowings, against %s", words.Year(c.From))
	if like, low, high := likeChange(c); like.Known {
		f.Big = words.Signed(100*like.Value, 1)
		f.Range = rangeText(low, high, func(v float64) string { return words.Signed(100*v, 1) })
	}
	f.Say = []template.HTML{join(p.likeWords(c), p.usualWords(c)), p.partWords(c)}
	f.Note = join(p.runningWords(c), more)
	return f
}

// noEarlier says why a season stands alone. A season under way is compared only up to the
// same day of the year, so the one before may have nothing that counts yet.
func (p *page) noEarlier(season int) template.HTML {
	if p.before(season) == 0 {
		return "It is the first season of the book."
	}
	return "One of the two has no count that can be used by the same day of the year."
}

// likeChange is what like sowings did, apart from how much of the season they are: same
// over share, and its range; missing where nothing was sown alike.
func likeChange(c years.Change) (like, low, high rate.Num) {
	if !(c.Share > 0) {
		return
	}
	over := func(n rate.Num) rate.Num { return rate.Num{Value: n.Value / c.Share, Known: n.Known} }
	return c.LikeForLike(), over(c.Low), over(c.High)
}

// changeTitle is the finding of a farm's change of emergence, a wording for each verdict;
// never a cause.
func changeTitle(c years.Change) template.HTML {
	before := words.Year(c.From)
	switch {
	case !(c.Share > 0):
		return say("Nothing was sown alike in %s", before)
	case c.Verdict == rate.ClearlyHigher && c.Habit() == years.Within:
		return say("Like sowings came up better than in %s, as seasons do", before)
	case c.Verdict == rate.ClearlyHigher:
		return say("Like sowings came up better than in %s", before)
	case c.Verdict == rate.ClearlyLower && c.Habit() == years.Within:
		return say("Like sowings came up worse than in %s, as seasons do", before)
	case c.Verdict == rate.ClearlyLower:
		return say("Like sowings came up worse than in %s", before)
	case c.Verdict == rate.NoDifference:
		return say("Like sowings: no clear difference from %s", before)
	}
	return say("Too few batches to set like sowings beside those of %s", before)
}

// likeWords says how like sowings did, and how much of the season they are.
func (p *page) likeWords(c years.Change) template.HTML {
	like, _, _ := likeChange(c)
	if !like.Known {
		return say("No variety stood in the same tray in both %s and %s.", words.Year(c.From), words.Year(c.To))
	}
	if words.Fixed(math.Abs(100*like.Value), 1) == "0.0" {
		return say("Like sowings, %s of the cells, came up as in %s, to within 0.1 in 100.", words.Percent(c.Share), words.Year(c.From))
	}
	return say("Like sowings, %s of the cells, came up %s in 100 than in %s.", words.Percent(c.Share), moreFewer(100*like.Value), words.Year(c.From))
}

// moreFewer is a signed number in words: 2.1 more, 0.5 fewer.
func moreFewer(v float64) string {
	how := "more"
	if v < 0 {
		how = "fewer"
	}
	return words.Fixed(math.Abs(v), 1) + " " + how
}

// usualWords says what this farm's seasons usually differ by, beside a clear change.
func (p *page) usualWords(c years.Change) template.HTML {
	clear := c.Verdict == rate.ClearlyHigher || c.Verdict == rate.ClearlyLower
	switch {
	case !clear:
		return ""
	case !c.Usual.Known:
		return "Two seasons cannot tell weather from work."
	case c.Habit() == years.Within:
		return say("That is no more than this farm’s seasons differ, %s in 100. Two seasons cannot tell weather from work.", words.Fixed(100*c.Usual.Value, 1))
	}
	return say("That is more than they usually differ, up to %s in 100. Two seasons cannot tell weather from work.", words.Fixed(100*c.Usual.Value, 1))
}

// partWords says what parts the farm's change is made of.
func (p *page) partWords(c years.Change) template.HTML {
	var parts []template.HTML
	if c.Share > 0 {
		parts = append(parts, say("like sowings %s", words.Signed(100*c.Same, 1)))
	}
	parts = append(parts, say("other varieties and trays %s", words.Signed(100*c.OtherKinds, 1)))
	if c.OtherCrops.Known {
		parts = append(parts, say("growing other crops %s", words.Signed(100*c.OtherCrops.Value, 1)))
	}
	return say("The whole farm’s change, %s in 100: %s.", words.Signed(100*c.Change, 1), list(parts))
}

// runningWords says up to which day both seasons of a running one are counted.
func (p *page) runningWords(c years.Change) template.HTML {
	if !c.ToDay.Known() {
		return ""
	}
	return say("The season is under way: of both only what stood by %s counts, %s and %s.", words.DayMonth(c.ToDay), words.Batches(c.Before.Batches), words.Batches(c.After.Batches))
}

// yearsSide sets the season beside the one before it, in the three measures.
func (p *page) yearsSide(season int) template.HTML {
	line := func(word string, m years.Measure, write, change func(float64) string) template.HTML {
		c, ok := p.r.Years.Farm(season, m)
		if !ok {
			return ""
		}
		like, _, _ := likeChange(c)
		return say(`<tr><th scope="row">%s</th><td class="soft">%s</td><td>%s</td><td>%s</td></tr>`, word, words.Of(c.Before.Figure, write), words.Of(c.After.Figure, write), words.Of(like, change))
	}
	points := func(v float64) string { return words.Signed(100*v, 1) }
	body := line("came up", years.Emergence, words.Percent, points) + line("fit to set out", years.Usable, words.Percent, points) +
		line("a plant, "+p.money.Code(), years.Cost, p.money.EachNumber, p.signedEach)
	if body == "" {
		return ""
	}
	c, _ := p.r.Years.Farm(season, years.Emergence)
	if c.To == 0 {
		c, _ = p.r.Years.Farm(season, years.Usable)
	}
	return say(`<table class="mini four"><caption>All sowings; last, like sowings</caption><thead><tr><td></td><th scope="col">%s</th><th scope="col">%s</th><th scope="col">alike</th></tr></thead><tbody>%s</tbody></table>`,
		words.Year(c.From), words.Year(season), body)
}

// signedEach writes a change of a plant's cost.
func (p *page) signedEach(v float64) string {
	if v > 0 {
		return "+" + p.money.EachNumber(v)
	}
	return p.money.EachNumber(v)
}
