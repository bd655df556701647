package templates

import (
	"cmp"
	"fmt"
	"html/template"
	"slices"

	"traybook/report/batch"
	"traybook/report/germination"
	"traybook/report/rate"
	"traybook/report/words"
)

// review is the page of a season: the front page for the season reviewed.
type review struct {
	Title    string
	Season   int
	Front    bool
	State    template.HTML // whether the season is finished, and how much was sown
	Answers  []answer
	Decision *decision
	Keep     []template.HTML
	Question []template.HTML
	Judged   template.HTML // what the two lists rest on
	Note     template.HTML
	Figures  []*figure
	Others   []template.HTML // links to the other seasons
}

// answer is a question of the grower's, answered in a sentence or two.
type answer struct {
	Question string
	Text     template.HTML
	More     template.HTML
}

// reviewPages are the front page and one page for each other season, the latest
// first.
func reviewPages(s *site) []spec {
	front := spec{path: "index.html", name: "index", title: "Season review", group: inReview, label: "Season review", logs: allLogs, view: reviewView(s.r.Season)}
	if s.r.Season != 0 {
		front.title = fmt.Sprint("Season ", s.r.Season)
		front.label = front.title
	}
	specs := []spec{front}
	for _, season := range slices.Backward(s.r.Batches.Seasons) {
		if season != s.r.Season {
			specs = append(specs, spec{path: s.seasonPath(season), name: "index", title: fmt.Sprint("Season ", season), group: inReview,
				label: fmt.Sprint("Season ", season), logs: allLogs, view: reviewView(season)})
		}
	}
	return specs
}

// reviewView is the review of one season. What speaks of the whole book, the answer
// about trays, stands on the front page only.
func reviewView(season int) func(*page) any {
	return func(p *page) any {
		v := review{Title: p.spec.title, Season: season, Front: season == p.r.Season}
		v.State = p.seasonState(season)
		v.Answers = p.answers(season)
		if v.Front {
			v.Decision = p.decision()
		}
		v.Keep, v.Question = p.judged(season, rate.ClearlyHigher), p.judged(season, rate.ClearlyLower)
		v.Judged = p.judgedOn(season)
		if n, ok := p.note(season); ok {
			v.Note = p.noteText(n, season)
		}
		v.Figures = p.reviewFigures(season)
		v.Others = p.otherSeasons(season)
		return v
	}
}

// reviewFigures are the chart and the table of each answer, but for those that the
// note has shown already.
func (p *page) reviewFigures(season int) []*figure {
	var out []*figure
	for _, n := range namedFigures {
		if !n.Review || p.noted[n.Name] || n.Name == "trays" && season != p.r.Season {
			continue
		}
		if f := n.of(p, season); f.Shown() {
			out = append(out, f)
		}
	}
	return out
}

// seasonState says how much was sown in a season and whether it is finished.
func (p *page) seasonState(season int) template.HTML {
	batches, trays := 0, 0.0
	for _, b := range p.r.Records {
		if b.Season == season {
			batches++
			trays += b.Trays
		}
	}
	if batches == 0 {
		return "Nothing was sown."
	}
	sown := say("%s in %s", words.Batches(batches), words.Plural(trays, "tray", "trays"))
	if p.r.Batches.Finished(season) {
		return say("%s sown.", sown)
	}
	return say("%s sown. The season is still under way: the figures stand as of %s.", sown, words.LongDate(p.r.Batches.Today))
}

// judged lists the varieties with a verdict, the farthest from the others first.
func (p *page) judged(season int, verdict rate.Verdict) []template.HTML {
	found := batch.Filter(p.comparedAs(season, verdict), func(d germination.Difference) bool { return d.Difference.Known })
	slices.SortStableFunc(found, func(a, b germination.Difference) int {
		return cmp.Compare(abs(b.Difference.Value), abs(a.Difference.Value))
	})
	var out []template.HTML
	for _, d := range found {
		out = append(out, p.differenceWords(d))
	}
	return out
}

// differenceWords is a comparison as a line of the two lists.
func (p *page) differenceWords(d germination.Difference) template.HTML {
	more := map[bool]string{true: "more", false: "fewer"}[d.Difference.Value > 0]
	return say("<strong>%s %s</strong>: in 100 cells %s %s came up than of the crop’s other varieties %s; %s against %s",
		p.crop(d.Season, d.Crop), name(d.Variety), words.Fixed(100*abs(d.Difference.Value), 0), more,
		words.Interval(d.Low, d.High, func(v float64) string { return words.Signed(100*v, 1) }), words.Batches(d.Batches), words.Batches(d.OtherBatches))
}

// judgedOn says what the two lists rest on, or why they are empty.
func (p *page) judgedOn(season int) template.HTML {
	n := 0
	for _, d := range p.r.Germination.Differences {
		if d.Season == season && d.Verdict != rate.TooFew {
			n++
		}
	}
	if n == 0 {
		return ""
	}
	return say("%s had batches enough to be set against the other varieties of their crop: like with like, over all seasons up to this one.",
		words.Plural(n, "variety", "varieties"))
}

// otherSeasons links to the other seasons' reviews.
func (p *page) otherSeasons(season int) []template.HTML {
	var out []template.HTML
	for _, other := range slices.Backward(p.r.Batches.Seasons) {
		if other != season {
			out = append(out, p.to(p.seasonPath(other), fmt.Sprint("Season ", other)))
		}
	}
	return out
}

// abs is how far a number lies from 0.
func abs(v float64) float64 { return max(v, -v) }
