package money

import (
	"traybook/records"
	"traybook/report/batch"
)

// lastSeasons is the number of finished seasons over which uses are averaged (rule
// "Life of a tray").
const lastSeasons = 3

// Years in use that stand in where none are written: alone, and beside written uses.
const (
	yearsUnknown  = 1.0
	yearsWithUses = 15.0 // common practice, no source
)

// EndsByAssumedYears reports whether the 15 years taken are what ends the life: beside
// uses that are sooner spent they move nothing.
func (l Life) EndsByAssumedYears() bool {
	return l.YearsAssumed && l.Seasons.Value >= yearsWithUses
}

// sownTrays is the trays sown of each code, by season and in all.
type sownTrays struct {
	in  map[codeSeason]float64
	all map[string]float64
}

type codeSeason struct {
	code   string
	season int
}

func sownTraysOf(b *batch.Batches) sownTrays {
	sown := sownTrays{map[codeSeason]float64{}, map[string]float64{}}
	for _, code := range batch.SplitBy(b.List, (*batch.Batch).TrayRank).Groups {
		sown.all[code[0].Tray] = traysOf(code)
		for _, of := range batch.SplitBy(code, (*batch.Batch).SeasonRank).Groups {
			sown.in[codeSeason{of[0].Tray, of[0].Season}] = traysOf(of)
		}
	}
	return sown
}

func traysOf(batches []*batch.Batch) float64 {
	trays := 0.0
	for _, b := range batches {
		trays += b.Trays
	}
	return trays
}

// livesOf returns the life of every tray code at its uses a season.
func livesOf(b *batch.Batches) map[string]Life {
	sown, lives, seasons := sownTraysOf(b), map[string]Life{}, b.FinishedSeasons(lastSeasons)
	for code, c := range b.Codes {
		life := LifeAt(c, usesPerSeason(b, c, sown, seasons))
		life.Shown = shownOf(c, sown.all[code])
		lives[code] = life
	}
	return lives
}

// usesPerSeason is the mean of the yearly ratios over those of the last three finished
// seasons in which the code was owned; where that is 0 or there is none, the ratio of
// the season at hand, else unknown.
func usesPerSeason(b *batch.Batches, c *batch.TrayCode, sown sownTrays, finished []int) Num {
	total, n := 0.0, 0
	for _, season := range finished {
		if uses := usesIn(b, c, sown, season); uses.Known {
			total, n = total+uses.Value, n+1
		}
	}
	if total > 0 {
		return records.Known(total / float64(n))
	}
	hand, _ := b.AtHand() // without a sowing nothing was used in it
	if uses := usesIn(b, c, sown, hand); uses.Value > 0 {
		return uses
	}
	return Num{}
}

// usesIn is trays sown over trays owned in a season; missing where none was owned or
// nobody knows how many.
func usesIn(b *batch.Batches, c *batch.TrayCode, sown sownTrays, season int) Num {
	owned := c.OwnedIn(b.Settings.SeasonDays(season))
	if owned.Or(0) == 0 {
		return Num{}
	}
	return records.Known(sown.in[codeSeason{c.Code, season}] / float64(owned.Value))
}

// shownOf says what the book shows of a code's life.
func shownOf(c *batch.TrayCode, uses float64) Shown {
	shown := Shown{Gone: c.Gone(), Uses: uses}
	if bought, known := c.Bought(); known {
		shown.Bought = records.Known(bought)
	}
	return shown
}

// LifeAt returns the life of a code's trays at so many uses a season, above 0 where
// known: whichever of years and uses comes first ends it. Years that are not written are
// taken, marked: 15 beside uses, else one season (rule "Life of a tray").
func LifeAt(code *batch.TrayCode, uses Num) Life {
	l := Life{UsesPerSeason: uses, Uses: code.Uses, Seasons: code.Lasts}
	if !code.Lasts.Known {
		years := yearsUnknown
		if code.Uses.Known {
			years = yearsWithUses
		}
		l.Seasons, l.Assumed, l.YearsAssumed = records.Known(years), !code.Uses.Known, code.Uses.Known
	}
	if !uses.Known {
		return l
	}
	l.Uses = smaller(code.Uses, l.Seasons.Value*uses.Value)
	if code.Uses.Known {
		l.Seasons = smaller(l.Seasons, code.Uses.Value/uses.Value)
	}
	return l
}

func smaller(a Num, b float64) Num {
	if a.Known {
		b = min(a.Value, b)
	}
	return records.Known(b)
}
