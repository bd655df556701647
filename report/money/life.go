package money

import (
	"traybook/records"
	"traybook/report/batch"
)

// lastSeasons is the number of finished seasons over which uses are averaged (rule
// "Life of a tray").
const lastSeasons = 3

// livesOf returns the life of every tray code at its uses a season.
func livesOf(b *batch.Batches) map[string]Life {
	lives := map[string]Life{}
	for code, uses := range usesPerSeason(b) {
		lives[code] = LifeAt(b.Codes[code], uses)
	}
	return lives
}

// usesPerSeason returns, by code, trays sown over trays owned: the mean of the yearly
// ratios over those of the last three finished seasons in which the code was owned;
// unknown where it is 0 or none was owned.
func usesPerSeason(b *batch.Batches) map[string]Num {
	type use struct {
		season int
		code   string
	}
	sown := map[use]float64{}
	for _, one := range b.List {
		sown[use{one.Season, one.Tray}] += one.Trays
	}
	seasons := b.FinishedSeasons(lastSeasons)
	uses := map[string]Num{}
	for code, c := range b.Codes {
		ratios, n := 0.0, 0
		for _, s := range seasons {
			if owned := c.OwnedIn(b.Settings.SeasonDays(s)); owned > 0 {
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

// LifeAt returns the life of a code's trays at so many uses a season, above 0 where
// known: whichever of years and uses comes first ends it; where neither is written it
// is one season, marked (rule "Life of a tray").
func LifeAt(code *batch.TrayCode, uses Num) Life {
	l := Life{UsesPerSeason: uses, Uses: code.Uses, Seasons: code.Lasts}
	if !code.Uses.Known && !code.Lasts.Known {
		l.Assumed, l.Seasons = true, records.Known(1.0)
	}
	if !uses.Known {
		return l
	}
	years := l.Seasons
	if years.Known {
		l.Uses = smaller(l.Uses, years.Value*uses.Value)
	}
	if code.Uses.Known {
		l.Seasons = smaller(years, code.Uses.Value/uses.Value)
	}
	return l
}

func smaller(a Num, b float64) Num {
	if a.Known {
		b = min(a.Value, b)
	}
	return records.Known(b)
}
