package report

import (
	"math"

	"traybook/records"
)

// lastSeasons is the number of finished seasons over which uses are averaged
// (rule 24), and of seasons that are replayed (rule 33).
const lastSeasons = 3

// finishedSeasons returns the seasons that are finished, or the season at hand
// where none is (rule 41).
func (r *Report) finishedSeasons() []int {
	var finished []int
	for _, s := range r.Seasons {
		if r.Finished(s) {
			finished = append(finished, s)
		}
	}
	if n := len(r.Seasons); len(finished) == 0 && n > 0 {
		return r.Seasons[n-1:]
	}
	return finished
}

// usesPerSeason returns, by code, trays sown over trays owned: the mean over
// those of the last three finished seasons in which the code was owned; unknown
// where it is 0 or none was owned (rules 24, 54).
func usesPerSeason(r *Report, codes map[string]*trayCode) map[string]Num {
	type use struct {
		season int
		code   string
	}
	sown := map[use]float64{}
	for _, b := range r.Batches {
		sown[use{b.Season, b.Tray}] += b.Trays
	}
	seasons := last(r.finishedSeasons(), lastSeasons)
	uses := map[string]Num{}
	for code, c := range codes {
		ratios, n := 0.0, 0
		for _, s := range seasons {
			first, after := r.Book.Settings.SeasonDays(s)
			if owned := c.ownedIn(first, after); owned > 0 {
				ratios += sown[use{s, code}] / float64(owned)
				n++
			}
		}
		uses[code] = Num{}
		if n > 0 && ratios > 0 {
			uses[code] = records.Known(ratios / float64(n))
		}
	}
	return uses
}

// last returns the last n of a list, or all.
func last[T any](xs []T, n int) []T { return xs[max(0, len(xs)-n):] }

// lifeAt returns the life of a code's trays at so many uses a season: whichever
// of years and uses comes first ends it; where neither is written it is one
// season, marked (rules 24, 54).
func (c *trayCode) lifeAt(uses Num) Life {
	l := Life{UsesPerSeason: uses, Uses: c.uses, Seasons: c.lasts}
	if !c.uses.Known && !c.lasts.Known {
		l.Assumed, l.Seasons = true, records.Known(1.0)
	}
	if !uses.Known {
		return l
	}
	years := l.Seasons
	if years.Known {
		l.Uses = smaller(l.Uses, years.Value*uses.Value)
	}
	if c.uses.Known {
		l.Seasons = smaller(years, c.uses.Value/uses.Value)
	}
	return l
}

func smaller(a Num, b float64) Num {
	if a.Known {
		b = math.Min(a.Value, b)
	}
	return records.Known(b)
}
