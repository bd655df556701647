package trays

import (
	"traybook/records"
	"traybook/report/batch"
	"traybook/report/money"
	"traybook/report/rate"
)

// lifeAt is the life of a code's trays at so many uses a season (rule "Life in a
// pair"): that of rule "Life of a tray", never less than one use, its seasons those
// that the uses take.
func lifeAt(code *batch.TrayCode, uses Num) money.Life {
	life := money.LifeAt(code, uses)
	if life.Uses.Known {
		life.Uses.Value = max(life.Uses.Value, 1)
	}
	if uses.Known {
		life.Seasons = rate.Ratio(life.Uses, uses)
	}
	return life
}

// lives fills the lives of both codes: what `lasts` gives at the uses a season of the
// tray, whose work the other would do, else at each code's own. own are those of rule
// "Life of a tray", by code.
func (pr *pair) lives(back *Payback, own map[string]money.Life) {
	uses, others := own[pr.tray.Code].UsesPerSeason, own[pr.other.Code].UsesPerSeason
	if uses.Known {
		others = uses
	}
	back.UsesPerSeason = uses
	back.Life, back.OtherLife = lifeAt(pr.tray, uses), lifeAt(pr.other, others)
	back.Life.Shown, back.OtherLife.Shown = own[pr.tray.Code].Shown, own[pr.other.Code].Shown
	if stood := eachBought(back.OtherLife.Shown); stood.Known && back.OtherLife.Uses.Known && stood.Value > back.OtherLife.Uses.Value {
		back.OtherRaised, back.OtherLife.Uses = true, stood
		back.OtherLife.Seasons = rate.Ratio(stood, others)
	}
}

// eachBought is the uses that a tray bought has stood so far: the least that its life
// can be on the mean; missing where it is not known how many were bought.
func eachBought(s money.Shown) Num {
	return rate.Ratio(records.Known(s.Uses), Num{Value: float64(s.Bought.Value), Known: s.Bought.Known})
}

// enoughGone is the fewest trays gone that tell how long one lasts.
const enoughGone = 3

// eachGone is the uses that there were to each tray gone; missing where too few are, or
// it is not known how many were bought.
func eachGone(s money.Shown) Num {
	if !s.Bought.Known || s.Gone < enoughGone {
		return Num{}
	}
	return records.Known(s.Uses / float64(s.Gone))
}

// otherLives are the lives of the other, in uses, over which the number to buy runs
// (rule "How many to buy"): as written, and where the book shows them the uses a tray
// bought so far, not below 1 (and never above the written), and those to a tray gone, not
// below the written. Its life is known.
func otherLives(back *Payback) []float64 {
	written := back.OtherLife.Uses.Value
	lives := []float64{written}
	if stood := eachBought(back.OtherLife.Shown); stood.Known {
		lives = append(lives, max(stood.Value, 1)) // a lower written life was raised to it
	}
	if gone := eachGone(back.OtherLife.Shown); gone.Known {
		lives = append(lives, max(gone.Value, written))
	}
	return lives
}
