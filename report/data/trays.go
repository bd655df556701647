package data

import (
	"traybook/report"
	"traybook/report/rate"
	"traybook/report/trays"
)

// payback has a row for each pair of codes, the dearer first (rule "Pair"): what one has
// over the other and whether that pays its price (rules "Gain a use", "The average tray",
// "Break-even"). Gain and its ends are money a use of one tray; difference and its ends
// are usable plants a cell, so that trays of other sizes read alike. Where the matches are
// too few to tell, the columns that rest on them are empty.
func payback(r *report.Report) File {
	type row = trays.Payback
	c := func(name string, of func(row) rate.Num) column[row] {
		return column[row]{name, func(p row) Cell { return maybe(of(p)) }}
	}
	return table("payback", 2, r.Trays.Payback,
		column[row]{"tray", func(p row) Cell { return str(p.Tray) }},
		column[row]{"other", func(p row) Cell { return str(p.Other) }},
		column[row]{"cells", func(p row) Cell { return num(p.Cells) }},
		column[row]{"matches", func(p row) Cell { return num(p.Matches) }},
		column[row]{"dates", func(p row) Cell { return num(p.Dates) }},
		c("difference", func(p row) rate.Num { return p.Difference }),
		c("difference_low", func(p row) rate.Num { return p.DifferenceLow }),
		c("difference_high", func(p row) rate.Num { return p.DifferenceHigh }),
		c("value", func(p row) rate.Num { return p.Value }),
		c("gain", func(p row) rate.Num { return p.Gain }),
		c("gain_low", func(p row) rate.Num { return p.GainLow }),
		c("gain_high", func(p row) rate.Num { return p.GainHigh }),
		c("price", func(p row) rate.Num { return p.Price }),
		c("other_price", func(p row) rate.Num { return p.OtherPrice }),
		c("life_uses", func(p row) rate.Num { return p.Life.Uses }),
		c("other_life_uses", func(p row) rate.Num { return p.OtherLife.Uses }),
		c("minutes", func(p row) rate.Num { return p.Minutes }),
		c("other_minutes", func(p row) rate.Num { return p.OtherMinutes }),
		c("mix_a_use", func(p row) rate.Num { return p.MixAUse }),
		c("uses_per_season", func(p row) rate.Num { return p.UsesPerSeason }),
		c("payback_uses", func(p row) rate.Num { return p.PaybackUses }),
		c("payback_seasons", func(p row) rate.Num { return p.PaybackSeasons }),
		c("worth_today", func(p row) rate.Num { return p.WorthToday }),
		c("break_even_plants", func(p row) rate.Num { return p.BreakEvenPlants }),
		column[row]{"verdict", func(p row) Cell { return str(p.Verdict) }},
	)
}

// decision is how many more trays of each pair to buy, and what would flip it (rules "How
// many to buy", "What would flip it"). Without an answer owned stands alone. The columns
// from flip_price on say at what value the first tray stops to pay, those from fewer_price
// on where the last of those to buy does. An empty one means that no value of that thing
// alone would change the answer.
func decision(r *report.Report) File {
	type row = trays.Decision
	columns := []column[row]{
		{"tray", func(d row) Cell { return str(d.Tray) }},
		{"other", func(d row) Cell { return str(d.Other) }},
		{"owned", func(d row) Cell { return maybe(d.Owned) }},
	}
	for _, c := range []column[*trays.Buy]{
		{"buy_low", func(b *trays.Buy) Cell { return num(b.Low) }},
		{"buy", func(b *trays.Buy) Cell { return num(b.N) }},
		{"buy_high", func(b *trays.Buy) Cell { return num(b.High) }},
		{"outlay", func(b *trays.Buy) Cell { return num(b.Outlay) }},
		{"worth_low", func(b *trays.Buy) Cell { return num(b.WorthLow) }},
		{"worth", func(b *trays.Buy) Cell { return num(b.Worth) }},
		{"worth_high", func(b *trays.Buy) Cell { return num(b.WorthHigh) }},
		{"flip_price", func(b *trays.Buy) Cell { return maybe(b.First.Price) }},
		{"flip_value", func(b *trays.Buy) Cell { return maybe(b.First.Value) }},
		{"flip_life", func(b *trays.Buy) Cell { return maybe(b.First.Life) }},
		{"flip_other_life", func(b *trays.Buy) Cell { return maybe(b.First.OtherLife) }},
		{"fewer_price", func(b *trays.Buy) Cell { return maybe(b.Last.Price) }},
		{"fewer_value", func(b *trays.Buy) Cell { return maybe(b.Last.Value) }},
		{"fewer_life", func(b *trays.Buy) Cell { return maybe(b.Last.Life) }},
		{"fewer_other_life", func(b *trays.Buy) Cell { return maybe(b.Last.OtherLife) }},
		{"half_life_pays", func(b *trays.Buy) Cell { return maybeYes(b.HalfLifePays) }},
	} {
		columns = append(columns, column[row]{c.name, func(d row) Cell {
			if d.Buy == nil {
				return Cell{}
			}
			return c.cell(d.Buy)
		}})
	}
	return table("decision", 2, r.Trays.Decisions, columns...)
}

// buyIf is how many to buy if the other's life and a plant's value were others (rule
// "If"). The life of the other is a factor of the written one, 1 for as written. The pages
// show the same rows as a table of four by two or three.
func buyIf(r *report.Report) File {
	type row = trays.BuyIf
	return table("buy_if", 4, r.Trays.BuyIf,
		column[row]{"tray", func(b row) Cell { return str(b.Tray) }},
		column[row]{"other", func(b row) Cell { return str(b.Other) }},
		column[row]{"life_factor", func(b row) Cell { return num(b.Factor) }},
		column[row]{"value", func(b row) Cell { return str(b.Value) }},
		column[row]{"low", func(b row) Cell { return num(b.Low) }},
		column[row]{"buy", func(b row) Cell { return num(b.N) }},
		column[row]{"high", func(b row) Cell { return num(b.High) }},
	)
}

// matches are the sowings side by side that payback rests on (rule "Matched sowings"). A
// match may take several batches on a side: their cells and plants are added up.
// difference is plants a cell, the tray's rate less the other's.
func matches(r *report.Report) File {
	type row = trays.Match
	return table("matches", 3, r.Trays.Matches,
		column[row]{"tray", func(m row) Cell { return str(m.Tray) }},
		column[row]{"other", func(m row) Cell { return str(m.Other) }},
		column[row]{"match", func(m row) Cell { return num(m.Number) }},
		column[row]{"crop", func(m row) Cell { return str(m.Crop) }},
		column[row]{"variety", func(m row) Cell { return str(m.Variety) }},
		column[row]{"lot", func(m row) Cell { return str(m.Lot) }},
		column[row]{"first_sown", func(m row) Cell { return date(m.FirstSown) }},
		column[row]{"cells_tray", func(m row) Cell { return num(m.CellsTray) }},
		column[row]{"usable_tray", func(m row) Cell { return num(m.UsableTray) }},
		column[row]{"cells_other", func(m row) Cell { return num(m.CellsOther) }},
		column[row]{"usable_other", func(m row) Cell { return num(m.UsableOther) }},
		column[row]{"difference", func(m row) Cell { return num(m.Difference) }},
	)
}

// nextTray has a row for each tray that could be bought beyond those owned (rule "The next
// tray"). uses are a season's mean over the seasons gone through; a further tray is taken
// only when all before it are out. The columns of what pays are empty where the worth of a
// tray is not known.
func nextTray(r *report.Report) File {
	type row = trays.NextTray
	return table("next_tray", 3, r.Trays.NextTray,
		column[row]{"tray", func(n row) Cell { return str(n.Tray) }},
		column[row]{"other", func(n row) Cell { return str(n.Other) }},
		column[row]{"nth", func(n row) Cell { return num(n.Nth) }},
		column[row]{"owned", func(n row) Cell { return num(n.Owned) }},
		column[row]{"uses", func(n row) Cell { return num(n.Uses) }},
		column[row]{"payback_seasons", func(n row) Cell { return maybe(n.PaybackSeasons) }},
		column[row]{"worth_today", func(n row) Cell { return maybe(n.WorthToday) }},
		column[row]{"pays", func(n row) Cell { return maybeYes(n.Pays) }},
		column[row]{"pays_low", func(n row) Cell { return maybeYes(n.PaysLow) }},
		column[row]{"pays_high", func(n row) Cell { return maybeYes(n.PaysHigh) }},
	)
}

// trial is how many sowing dates would tell a difference (rule "Trial"). Dates, not trays:
// what is sown on one day shares the day, and more trays of it tell little more.
func trial(r *report.Report) File {
	type row = trays.Trial
	return table("trial", 4, r.Trays.Trial,
		column[row]{"tray", func(t row) Cell { return str(t.Tray) }},
		column[row]{"other", func(t row) Cell { return str(t.Other) }},
		column[row]{"difference", func(t row) Cell { return num(t.Difference) }},
		column[row]{"trays", func(t row) Cell { return num(t.Trays) }},
		column[row]{"s", func(t row) Cell { return maybe(t.S) }},
		column[row]{"sowings", func(t row) Cell { return maybe(t.Sowings) }},
	)
}
