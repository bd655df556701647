package templates

import (
	"cmp"
	"fmt"
	"html/template"
	"slices"

	"traybook/report/batch"
	"traybook/report/plants"
	"traybook/report/words"
)

// qualityPage is how good the plants were and how long they stayed fit.
type qualityPage struct {
	Title   string
	Words   []template.HTML // what the leeway says, a sentence a kind of tray
	Leeway  *figure
	ByCrop  more
	Scale   []template.HTML
	Quality *table
	Scores  *figure
	Usable  *table
	Seasons more
}

// hasQuality reports whether any plants were looked at or counted out.
func hasQuality(s *site) bool {
	return len(s.r.Plants.Quality) > 0 || len(s.r.Plants.Leeway) > 0 ||
		slices.ContainsFunc(s.r.Plants.Usable, func(u plants.Usable) bool { return u.Share.Known })
}

// qualityView tells the leeway of all seasons, then the season reviewed.
func qualityView(p *page) any {
	season := p.r.Season
	v := qualityPage{Title: p.spec.title, Words: p.leewaySentences(), Leeway: p.leewayFigure(), ByCrop: p.leewayByCrop(),
		Quality: p.qualityTable(season), Scores: p.scoreFigure(season), Usable: p.usableTable(season)}
	v.Scale = p.scale()
	v.Seasons.Summary = "Earlier seasons"
	for _, other := range p.otherSeasonsBack() {
		v.Seasons.Tables = append(v.Seasons.Tables, p.qualityTable(other), p.usableTable(other))
	}
	return v
}

// scale is the farm's own scale, where plants were scored.
func (p *page) scale() []template.HTML {
	if len(p.r.Plants.Quality) == 0 {
		return nil
	}
	var out []template.HTML
	for i, word := range p.r.Book.Settings.ScoreWords {
		fit := ""
		if i+1 == p.r.Book.Settings.UsableFrom {
			fit = " – fit to set out from here up"
		}
		out = append(out, say("%s: %s%s", words.Whole(i+1), name(word), fit))
	}
	return out
}

// qualityTable is the share fit to set out at the latest look of each batch; groups
// looked at too seldom stand below a line.
func (p *page) qualityTable(season int) *table {
	t := p.table("quality", say("Plants fit to set out, season %s", fmt.Sprint(season)), "quality", groupHeads,
		nums("Fit", "Looked at", "Batches"))
	addJudged(t, p.qualityOf(season), fewLine("Looked at"), plants.Quality.Few, func(q plants.Quality) {
		t.add(append(p.groupCells(q.Group), shareCell(q.Rate), words.Whole(q.N), words.Whole(q.Batches))...)
	})
	t.note(p.marksNote(season))
	return t
}

// scoreFigure is the plants at each score, of groups that were scored plant by
// plant, in the farm's own words; the least fit first.
func (p *page) scoreFigure(season int) *figure {
	t := p.table("scores", say("Plants at each score, season %s", fmt.Sprint(season)), "quality", groupHeads, nums(p.scoreHeads()...))
	for _, q := range p.qualityOf(season) {
		cells, scored := p.groupCells(q.Group), false
		for _, s := range q.S {
			scored = scored || s.Known
			cells = append(cells, words.Of(s, words.Whole[float64]))
		}
		if scored {
			t.add(cells...)
		}
	}
	return p.figure(seasonChart("quality", season), "By score", "Plants at each score of the farm’s own scale, at the latest look of each batch; the least fit first.", t)
}

// qualityOf are a season's groups, the least fit first.
func (p *page) qualityOf(season int) []plants.Quality {
	rows := batch.Filter(p.r.Plants.Quality, func(q plants.Quality) bool { return q.Season == season && q.Share.Known })
	slices.SortStableFunc(rows, func(a, b plants.Quality) int { return cmp.Compare(a.Share.Value, b.Share.Value) })
	return rows
}

// addJudged adds the rows that can be judged, then the others below a line.
func addJudged[T any](t *table, rows []T, title template.HTML, few func(T) bool, add func(T)) {
	line := false
	for _, below := range []bool{false, true} {
		for _, row := range rows {
			if few(row) != below {
				continue
			}
			if below && !line {
				t.under(title)
				line = true
			}
			add(row)
		}
	}
}

// scoreHeads are the scores in the farm's own words: 3 will do.
func (p *page) scoreHeads() []string {
	var heads []string
	for i, word := range p.r.Book.Settings.ScoreWords {
		heads = append(heads, fmt.Sprint(i+1, " ", word))
	}
	return heads
}

// marksNote says how many looks gave one overall mark only.
func (p *page) marksNote(season int) template.HTML {
	marks := 0
	for _, q := range p.r.Plants.Quality {
		if q.Season == season {
			marks += q.Marks
		}
	}
	if marks == 0 {
		return ""
	}
	return say("%s with one overall mark only: shown in the records, never turned into a share.", words.Plural(marks, "look", "looks"))
}

// usableTable is a season's usable plants of the cells sown, the lowest first.
func (p *page) usableTable(season int) *table {
	t := p.table("usable", say("Usable plants of the cells sown, season %s", fmt.Sprint(season)), "usable", groupHeads,
		nums("Usable", "Cells sown", "Batches", "Left out"))
	rows := batch.Filter(p.r.Plants.Usable, func(u plants.Usable) bool { return u.Season == season && u.Share.Known })
	slices.SortStableFunc(rows, func(a, b plants.Usable) int { return cmp.Compare(a.Share.Value, b.Share.Value) })
	addJudged(t, rows, fewLine("Sown"), plants.Usable.Few, func(u plants.Usable) {
		t.add(append(p.groupCells(u.Group), shareCell(u.Rate), words.Whole(u.N), words.Whole(u.Batches), words.Whole(u.LeftOut))...)
	})
	if !t.Empty() {
		t.note("Left out: batches still open, or of which it is not written how many plants there were.")
	}
	return t
}
