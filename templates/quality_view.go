package templates

import (
	"html/template"
	"slices"

	"traybook/report/plants"
	"traybook/report/rate"
	"traybook/report/words"
	"traybook/templates/draw"
)

// qualityPage is how good the plants were, how many cells gave one, and how long they
// stayed fit.
type qualityPage struct {
	season   int
	Fit      finding
	Quality  *rows
	Plants   finding
	Usable   *rows
	Late     template.HTML // the title of the leeway
	Leeway   *rows
	ByCrop   *rows
	TooFew   template.HTML // crops of which the leeway tells nothing
	Unlooked bool          // no batch with a planned day was looked at
	Unsure   bool          // too few were, on any stretch of days
}

// head names the season.
func (v qualityPage) head() (heading, lead template.HTML) {
	return say("Quality and leeway, %s", words.Year(v.season)), "How good the plants were, how many cells gave one, and how late they could still be set out."
}

// hasQuality reports whether any plants were looked at or counted out.
func hasQuality(s *site, season int) bool {
	return slices.ContainsFunc(s.r.Plants.Quality, func(q plants.Quality) bool { return q.Season == season }) ||
		slices.ContainsFunc(s.r.Plants.Usable, func(u plants.Usable) bool { return u.Season == season && u.Share.Known })
}

// qualityView tells one season, then the leeway of all. Quality is told of one season and
// leeway of all: few batches of a season ever wait past their day.
func qualityView(p *page) any {
	season := p.season
	v := qualityPage{season: season, Fit: p.fitFinding(season), Quality: p.qualityRows(season), Plants: p.usableFinding(season), Usable: p.usableRows(season)}
	v.Late, v.Leeway = p.leewayTitle(), p.leewayRows()
	v.ByCrop, v.TooFew = p.leewayByCrop()
	v.Unlooked, v.Unsure = v.Leeway.Empty(), !slices.ContainsFunc(p.r.Plants.Leeway, func(l plants.Leeway) bool { return l.Share.Known })
	return v
}

// fitFinding is the share of plants fit to set out at the last look of each batch. The
// last look of a batch stands for it, as the earlier ones speak of plants that grew on.
func (p *page) fitFinding(season int) finding {
	total := p.r.Plants.QualitySeasons[season]
	f := finding{ID: "fit", What: "of the plants looked at were fit to set out"}
	if !total.Share.Known {
		f.Title, f.Big = "No plants were looked at", "?"
		f.Say = []template.HTML{say("The records cannot tell: no batch of %s has a look at its plants.", words.Year(season))}
		f.Note = "Look at 10 to 20 plugs from corners, edge and middle of a tray. Write how many, and how many are fit, into scores.csv."
		return f
	}
	low, high := standApart(total, p.qualityCrops(season))
	f.Title = apartTitle(total, low, high, apartFindings{"%s plants were less fit than the season’s", "%s plants were fitter than the season’s", "No crop’s plants stood apart", "Too few batches were looked at to set any crop apart"})
	f.Big, f.Unit = words.PercentNumber(total.Share.Value), "%"
	f.Range = seasonRange(total)
	f.Say = []template.HTML{join(say("The last look at each batch of %s counts.", words.Year(season)), p.standApartWords(low, "Less fit"), p.standApartWords(high, "Fitter"))}
	f.Note = say("%s of %s were looked at, %s.", words.Whole(total.Batches), words.Batches(p.sownIn(season)), words.Plural(total.N, "plant", "plants"))
	f.Side = p.scoreSide(season)
	return f
}

// scoreSide is the plants of a season by score, in the farm's own words, with those that
// are fit. Plants are added up over the latest looks of all crops, so a large look weighs
// more than a small one. Nothing is drawn where no look scored plants one by one.
func (p *page) scoreSide(season int) template.HTML {
	var scored [5]float64
	total, most := 0.0, 0.0
	for _, q := range p.r.Plants.QualityCrops {
		for i, n := range q.S {
			if q.Season == season {
				scored[i] += n.Or(0)
				total += n.Or(0)
			}
		}
	}
	for _, n := range scored {
		most = max(most, n)
	}
	if !(total > 0) {
		return ""
	}
	axis := draw.Axis{Max: most}
	out := say(`<table class="mini scores"><caption>%s scored one by one, in 100</caption><tbody>`, words.Plural(total, "plant", "plants"))
	for i, word := range p.r.Book.Settings.ScoreWords {
		class := ""
		if i+1 == p.r.Book.Settings.UsableFrom {
			class = ` class="from"`
		}
		out += say(`<tr%s><th scope="row">%s</th><td>%s</td><td class="d">%s</td></tr>`, template.HTML(class), p.scoreWord(i, word), words.PercentNumber(scored[i]/total),
			axis.Plain(draw.Bar(0, scored[i], "q"+words.Whole(i+1))))
	}
	return out + "</tbody></table>" + say(`<p class="nt">Fit to set out: below the line, from %s up.</p>`, words.Whole(p.r.Book.Settings.UsableFrom))
}

// scoreWord is a score with the farm's word for it: 3 will do.
func (p *page) scoreWord(i int, word string) template.HTML {
	return say("%s %s", words.Whole(i+1), name(word))
}

// usableFinding is the share of the cells sown that gave a usable plant. Only batches of
// which the number is known enter it; estimated ones would lend the season the very rate
// that it is asked for.
func (p *page) usableFinding(season int) finding {
	total := p.r.Plants.UsableSeasons[season]
	f := finding{ID: "plants", What: "of the cells sown gave a usable plant"}
	if !total.Share.Known {
		f.Title, f.Big = "How many plants the cells gave cannot be told", "?"
		f.Say = []template.HTML{say("No batch of %s has its plants written when it left, nor a count and a look.", words.Year(season))}
		f.Note = "Write plants_out and surplus into sowings.csv, or rows into out.csv."
		return f
	}
	low, high := standApart(total, p.usableCrops(season))
	f.Title = apartTitle(total, low, high, apartFindings{"%s gave fewer plants for its cells than the season", "%s gave more plants for its cells than the season", "No crop stood apart by the plants its cells gave", "Too few batches are written up to set any crop apart"})
	f.Big, f.Unit = words.PercentNumber(total.Share.Value), "%"
	f.Range = seasonRange(total)
	f.Say = []template.HTML{join(say("Usable are the plants of %s that were set out or left over, or were counted and looked at.", words.Year(season)),
		p.standApartWords(low, "Fewer"), p.standApartWords(high, "More")), p.leftOutWords(season)}
	f.Note = say("%s, %s.", batchesOf(total.Batches, p.batchesIn(season), "enter it"), words.Plural(total.N, "cell", "cells"))
	f.Side = p.usableSide(season)
	return f
}

// usableSide is the share of the cells that gave a plant, season by season. One season
// alone has nothing to stand beside and no figure.
func (p *page) usableSide(season int) template.HTML {
	var bars []bar
	for _, s := range p.r.Batches.Seasons {
		if r := p.r.Plants.UsableSeasons[s]; r.Share.Known && s <= season {
			bars = append(bars, bar{markup(words.Year(s)), words.PercentNumber(r.Share.Value), r.Share.Value})
		}
	}
	if len(bars) < 2 {
		return ""
	}
	return barTable("Usable plants of 100 cells sown", bars, 0)
}

// batchesIn is how many batches of a season there are.
func (p *page) batchesIn(season int) int { return len(p.seasons[season]) }

// cropRate is a rate of a crop in a season.
type cropRate struct {
	Crop string
	rate.Rate
}

// standApart are the crops of three batches or more whose interval lies wholly below, or
// wholly above, the rate of all, the farthest first.
func standApart(all rate.Rate, crops []cropRate) (low, high []cropRate) {
	for _, c := range crops {
		switch {
		case few(c.Rate) || !c.Low.Known:
		case c.High.Value < all.Share.Value-rate.Equal:
			low = append(low, c)
		case c.Low.Value > all.Share.Value+rate.Equal:
			high = append(high, c)
		}
	}
	slices.SortStableFunc(low, func(a, b cropRate) int { return byShare(&a.Rate, &b.Rate) })
	slices.SortStableFunc(high, func(a, b cropRate) int { return byShare(&b.Rate, &a.Rate) })
	return low, high
}

// apartFindings are the findings for each verdict: a crop below, a crop above, none, too few
// batches.
type apartFindings struct{ low, high, none, tooFew string }

// apartTitle is the finding of the crops that stand apart. A crop below goes before one
// above: it is the one to act on. Where no range can be told, no crop can stand apart
// either, and the title says so.
func apartTitle(total rate.Rate, low, high []cropRate, of apartFindings) template.HTML {
	switch {
	case len(low) > 0:
		return say(of.low, name(capital(low[0].Crop)))
	case len(high) > 0:
		return say(of.high, name(capital(high[0].Crop)))
	case fewAlike(total):
		return noneAlike
	case !total.Low.Known:
		return markup(of.tooFew)
	}
	return markup(of.none)
}

// standApartWords names crops that stand apart, with what they rest on.
func (p *page) standApartWords(crops []cropRate, how string) template.HTML {
	if len(crops) == 0 {
		return ""
	}
	var of []template.HTML
	for _, c := range crops[:min(mostNamed, len(crops))] {
		of = append(of, say("%s with %s, %s", p.crop(p.season, c.Crop), words.ShareText(c.Rate), words.Batches(c.Batches)))
	}
	return say("%s: %s%s.", how, withSemicolons(of), andMore(len(crops)-len(of)))
}

// withSemicolons joins parts that hold commas: a; b; c.
func withSemicolons(parts []template.HTML) template.HTML {
	var out template.HTML
	for i, part := range parts {
		if i > 0 {
			out += "; "
		}
		out += part
	}
	return out
}
