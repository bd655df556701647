package templates

import (
	"cmp"
	"html/template"
	"slices"

	"traybook/report"
	"traybook/report/batch"
	"traybook/report/plants"
	"traybook/report/rate"
	"traybook/report/words"
	"traybook/templates/draw"
)

// byShare puts the lower share first.
func byShare(a, b rate.Rate) int { return cmp.Compare(a.Share.Value, b.Share.Value) }

// groupRate is a rate of a group, or of a crop as a whole, with that of the season before,
// and the cells that follow it in its row.
type groupRate struct {
	batch.Group
	rate.Rate
	before rate.Num
	behind []any
}

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
	for _, below := range []bool{false, true} {
		for i, crop := range batch.Filter(crops, func(c groupRate) bool { return c.Few() == below }) {
			sub := template.HTML("")
			if below && i == 0 {
				sub = fewLine(done)
			}
			t.under(sub, "")
			t.of(crop.Crop)
			p.addCropRates(t, axis, crop, of[crop.Crop])
		}
	}
}

// addCropRates adds a crop and, where it has several, its groups. A crop of one group
// would tell the same twice.
func (p *page) addCropRates(t *rows, axis draw.Axis, crop groupRate, groups []groupRate) {
	row := func(class string, k draw.Kind, label template.HTML, g groupRate) {
		marks := []draw.Mark{draw.Before(g.before), draw.Range(g.Low, g.High), draw.Dot(k, g.Share, g.Few())}
		t.add("", class, append([]any{label, toldShare(g.Rate, axis.Row(marks...))}, g.behind...)...)
	}
	link := p.crop(crop.Season, crop.Crop)
	if len(groups) == 1 {
		g := groups[0]
		row("crop one", draw.KindOf(g.Kind), say(`<span class="v">%s %s</span> %s`, link, name(g.Variety), trayMark(g.Group)), g)
		return
	}
	row("crop", draw.Crop, link, crop)
	for _, g := range groups {
		row("var", draw.KindOf(g.Kind), say(`<span class="v">%s</span> %s`, name(g.Variety), trayMark(g.Group)), g)
	}
}

// ratesBefore are the shares of groups in the season before one, by the group as it is in
// that one. A group that was not sown then has no tick, which is not the same as a share
// of 0.
func ratesBefore[T any](p *page, table []T, season int, of func(T) (batch.Group, rate.Rate)) map[batch.Group]rate.Num {
	before, out := p.before(season), map[batch.Group]rate.Num{}
	for _, row := range table {
		if group, r := of(row); group.Season == before {
			group.Season = season
			out[group] = r.Share
		}
	}
	return out
}

func ofQuality(q plants.Quality) (batch.Group, rate.Rate) { return q.Group, q.Rate }
func ofUsable(u plants.Usable) (batch.Group, rate.Rate)   { return u.Group, u.Rate }

// qualityCrops and usableCrops are the crops of a season that have a rate.
func (p *page) qualityCrops(season int) []cropRate {
	return cropRatesOf(p.r.Plants.QualityCrops, season, ofQuality)
}
func (p *page) usableCrops(season int) []cropRate {
	return cropRatesOf(p.r.Plants.UsableCrops, season, ofUsable)
}

// cropRatesOf picks the crops of a season out of a table of either measure, each with its
// rate.
func cropRatesOf[T any](table []T, season int, of func(T) (batch.Group, rate.Rate)) (out []cropRate) {
	for _, row := range table {
		if g, r := of(row); g.Season == season && r.Share.Known {
			out = append(out, cropRate{g.Crop, r})
		}
	}
	return out
}

// qualityRows is the share fit to set out at the last look of each batch, and the plants
// by score, crop by crop. The column of scores stands only where any plant of the season
// was scored one by one: a farm that writes just how many are fit would have an empty one.
func (p *page) qualityRows(season int) *rows {
	from, unfit, scored := p.r.Book.Settings.UsableFrom, 0.0, false
	for _, q := range p.r.Plants.Quality {
		if share, ok := unfitShare(q.S, from); ok && q.Season == season {
			unfit, scored = max(unfit, share), true
		}
	}
	ramp := draw.Scores(p.id("gs"), unfit)
	ratesOf := func(table []plants.Quality) (out []groupRate) {
		before := ratesBefore(p, table, season, ofQuality)
		for _, q := range table {
			if q.Season != season || !q.Share.Known {
				continue
			}
			g := groupRate{Group: q.Group, Rate: q.Rate, before: before[q.Group]}
			if scored {
				g.behind = append(g.behind, p.rampCell(ramp, q.S))
			}
			g.behind = append(g.behind, words.Whole(q.N), words.Whole(q.Batches))
			out = append(out, g)
		}
		return out
	}
	crops, groups := ratesOf(p.r.Plants.QualityCrops), ratesOf(p.r.Plants.Quality)
	axis := draw.Shares(p.id("gq"), lowestShare(groups))
	t := p.rows("quality", "germ qual", p.qualityCaption(season, scored), "quality", col{Width: "c-name3", Head: "Crop, variety, tray"}, col{Class: "st", Head: "Fit, %", Axis: axis.Head()})
	if scored {
		t.Cols = append(t.Cols, col{Width: "c-ramp", Class: "dr c3", Head: "Plants by score", Quiet: true, Axis: ramp.Head()})
	}
	t.Cols = append(t.Cols, number("Plants"), number("Batches"))
	t.Title = "Fit to set out, by variety and tray"
	p.cropTable(t, axis, "Looked at", crops, groups)
	t.note(p.marksNote(season))
	return t
}

// unfitShare is the share of plants scored below fit; ok is false where none was scored.
// from is the score, counted from 1, at which the farm calls a plant fit.
func unfitShare(s [5]rate.Num, from int) (share float64, ok bool) {
	total, unfit := 0.0, 0.0
	for i, n := range s {
		total += n.Or(0)
		if i+1 < from {
			unfit += n.Or(0)
		}
	}
	if !(total > 0) {
		return 0, false
	}
	return unfit / total, true
}

// rampCell draws the plants of a group by score, with the numbers for a reader. A drawing
// alone tells nothing to who hears the page, so the five numbers stand beside it, hidden
// from sight.
func (p *page) rampCell(axis draw.Axis, s [5]rate.Num) template.HTML {
	total := 0.0
	parts := make([]string, len(s))
	for i, n := range s {
		total += n.Or(0)
		parts[i] = words.Whole(n.Or(0))
	}
	if !(total > 0) {
		return `<span class="soft">not scored</span>`
	}
	return say(`<span class="vh">%s</span>%s`, list(parts), axis.Row(draw.Ramp(s, p.r.Book.Settings.UsableFrom)))
}

// qualityCaption says what is drawn; where plants were scored it is the key to the colours
// too, in the farm's own words for each score.
func (p *page) qualityCaption(season int, scored bool) template.HTML {
	out := say("Plants fit to set out at the last look of each batch, %s; the least fit crop first. Black: the crop as a whole%s. Hollow: fewer than %s.",
		words.Year(season), p.tickWords(season), words.Batches(rate.FewBatches))
	if !scored {
		return out
	}
	swatches := template.HTML("")
	for i, word := range p.r.Book.Settings.ScoreWords {
		swatches += say(` <span class="kd"><span class="sw q%s"></span> %s</span>`, words.Whole(i+1), p.scoreWord(i, word))
	}
	return join(out, say("Right, in 100 plants scored:%s", swatches))
}

// marksNote says how many looks gave one overall mark only. One mark for a whole tray
// cannot be turned into a share of its plants.
func (p *page) marksNote(season int) template.HTML {
	marks := 0
	for _, q := range p.r.Plants.QualityCrops {
		if q.Season == season {
			marks += q.Marks
		}
	}
	if marks == 0 {
		return ""
	}
	return say("%s with one overall mark only: shown in the records, never turned into a share.", words.Plural(marks, "look", "looks"))
}

// usableRows is the share of the cells sown that gave a usable plant, crop by crop. Cells
// are those sown, looked at or not, so it lies below what came up.
func (p *page) usableRows(season int) *rows {
	ratesOf := func(table []plants.Usable) (out []groupRate) {
		before := ratesBefore(p, table, season, ofUsable)
		for _, u := range table {
			if u.Season == season && u.Share.Known {
				out = append(out, groupRate{u.Group, u.Rate, before[u.Group], []any{words.Whole(u.N), enteredOf(u)}})
			}
		}
		return out
	}
	crops, groups := ratesOf(p.r.Plants.UsableCrops), ratesOf(p.r.Plants.Usable)
	axis := draw.Shares(p.id("gu"), lowestShare(groups))
	t := p.rows("usable", "germ", say("Usable plants of the cells sown, %s; the lowest crop first. Black: the crop as a whole%s. Hollow: fewer than %s.", words.Year(season), p.tickWords(season), words.Batches(rate.FewBatches)),
		"usable", col{Width: "c-name3", Head: "Crop, variety, tray"}, col{Class: "st", Head: "Usable, %", Axis: axis.Head()}, number("Cells"), number("Batches"))
	t.Title = "Usable plants, by variety and tray"
	p.cropTable(t, axis, "Sown", crops, groups)
	return t
}

// enteredOf is how many batches enter a usable rate, of how many.
func enteredOf(u plants.Usable) template.HTML {
	if u.LeftOut == 0 {
		return markup(words.Whole(u.Batches))
	}
	return say(`%s<span class="soft"> of %s</span>`, words.Whole(u.Batches), words.Whole(u.Batches+u.LeftOut))
}

// leftOutWords say which batches of a season enter no usable rate, and why. The reasons do
// not overlap: each batch is counted under the first that holds, so the numbers add up to
// the batches that the rate lacks.
func (p *page) leftOutWords(season int) template.HTML {
	var open, part, unwritten, cells int
	for _, b := range batch.Filter(p.seasons[season], func(b *report.Record) bool { return !b.EntersUsable() }) {
		switch {
		case b.Measured():
			cells++
		case !b.Ended():
			open++
		case b.UsableHow == plants.AtLeast:
			part++
		default:
			unwritten++
		}
	}
	var out []template.HTML
	for _, left := range []struct {
		n   int
		why string
	}{{open, "still open"}, {part, "of which only a part of the plants is written"}, {unwritten, "of which no one wrote how many plants there were"}, {cells, "of unknown cells"}} {
		if left.n > 0 {
			out = append(out, say("%s %s", words.Batches(left.n), left.why))
		}
	}
	if len(out) == 0 {
		return ""
	}
	return say("Left out: %s.", list(out))
}
