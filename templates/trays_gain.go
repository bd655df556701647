package templates

import (
	"html/template"

	"traybook/report"
)

// verdictSentences say whether a tray pays, in how long, what it is worth and
// what the answer is at the price of a bought-in plant.
func (p *place) verdictSentences(pb report.Payback) []template.HTML {
	out := []template.HTML{say("<strong>%s %s.</strong> %s", name(pb.Tray), paysWords(pb.Verdict), p.paybackWords(pb)), p.worthWords(pb)}
	if pb.AtPlugPrice != nil {
		out = append(out, p.plugWords(pb))
	}
	if pb.Valued < pb.Matches {
		out = append(out, say("What a plant is worth is known for %s of the %s: the gain rests on those.", whole(pb.Valued), plural(pb.Matches, "match", "matches")))
	}
	return out
}

// paysWords is a verdict as a sentence takes it.
func paysWords(v report.PaysVerdict) string {
	return map[report.PaysVerdict]string{
		report.PaysLow:    "pays even at the low end of what the records show",
		report.PaysMiddle: "pays in the middle of what the records show, but not at its low end",
		report.PaysHigh:   "pays only at the high end of what the records show",
		report.PaysNever:  "does not pay, not even at the high end of what the records show",
	}[v]
}

// paybackWords says in how many uses a tray has paid for itself, beside its life.
func (p *place) paybackWords(pb report.Payback) template.HTML {
	if !pb.PaybackUses.Known {
		return say("It never earns back its price of %s: in the middle of what the records show, a use gains nothing.", of(pb.Price, p.money.sum))
	}
	out := say("At %s it has paid for itself after %s", of(pb.Price, p.money.sum), tenths(pb.PaybackUses.Value, "use", "uses"))
	if pb.PaybackSeasons.Known {
		out = say("%s, %s at %s a season", out, tenths(pb.PaybackSeasons.Value, "season", "seasons"), tenths(pb.UsesPerSeason.Value, "use", "uses"))
	}
	return say("%s; %s.", out, lifeWords(pb.Life))
}

// lifeWords says how long a tray lasts.
func lifeWords(l report.Life) template.HTML {
	if !l.Uses.Known {
		return "how many uses it survives is not known"
	}
	out := say("it lasts %s", tenths(l.Uses.Value, "use", "uses"))
	if l.Seasons.Known {
		out = say("%s, which is %s", out, tenths(l.Seasons.Value, "season", "seasons"))
	}
	if l.Assumed {
		return say("%s (its life is not written, so one season is taken)", out)
	}
	return out
}

// worthWords says what a tray is worth today, also where that quarrels with the
// verdict.
func (p *place) worthWords(pb report.Payback) template.HTML {
	if !pb.WorthToday.Known {
		return "What it is worth today cannot be told: how often it is used a season is not known."
	}
	out := say("Counting %s a year for the money tied up, what a tray gains over its life is worth %s more than its price today.",
		percent(p.r.Book.Settings.DiscountRate), p.money.sum(pb.WorthToday.Value))
	if pb.WorthToday.Value < 0 {
		out = say("Counting %s a year for the money tied up, what a tray gains over its life is worth %s less than its price today.",
			percent(p.r.Book.Settings.DiscountRate), p.money.sum(-pb.WorthToday.Value))
	}
	if midPays(pb) && pb.WorthToday.Value < 0 {
		out = join(out, "So it earns its price back, but too slowly to be worth the money meanwhile.")
	}
	if !midPays(pb) && pb.WorthToday.Value > 0 {
		out = join(out, "That is so although its uses, reckoned one by one, do not add up to its price: the two lives are reckoned apart.")
	}
	return out
}

// plugWords is the answer at plug_price.
func (p *place) plugWords(pb report.Payback) template.HTML {
	a := pb.AtPlugPrice
	if a.Verdict == "" || !a.Gain.Known {
		return ""
	}
	out := say("Where one more plant saves buying one in at %s, it %s: a use gains %s %s", p.money.each(a.Value.Value), paysWords(a.Verdict),
		p.money.sum(a.Gain.Value), interval(a.GainLow, a.GainHigh, p.money.sumNumber))
	if a.PaybackUses.Known {
		out = say("%s, and it is paid for after %s", out, tenths(a.PaybackUses.Value, "use", "uses"))
	}
	if a.WorthToday.Known {
		out = say("%s; worth today %s", out, p.money.sum(a.WorthToday.Value))
	}
	return out + "."
}

// gainTable is the gain of one use in its parts.
func (p *place) gainTable(pb report.Payback) *table {
	t := p.table("gain-"+slug(pb.Tray+" "+pb.Other), say("What one use of %s gains over %s, %s", name(pb.Tray), name(pb.Other), p.money.code), "payback",
		plain("Part"), nums("A use"))
	part := func(words, how any) cell { return cell{Value: markup(words), Sub: markup(how), Class: "words"} }
	t.add(part(say("A use of %s not spent", name(pb.Other)), say("%s over %s", of(pb.OtherPrice, p.money.sum), usesOf(pb.OtherLife))), of(pb.GainTray, p.signedSum))
	t.add(part("More usable plants", p.plantsHow(pb)), of(pb.GainPlants, p.signedSum))
	t.add(part("Extra minutes", p.minutesHow(pb)), of(pb.GainMinutes, p.signedSum))
	t.foot(part("Gain a use", say("%s on %s", plural(pb.Valued, "match", "matches"), plural(pb.Dates, "date", "dates"))),
		with(of(pb.Gain, p.signedSum), interval(pb.GainLow, pb.GainHigh, p.signedSum)))
	return t
}

func (p *place) signedSum(v float64) string { return signed(v, p.money.decimals) }

func usesOf(l report.Life) template.HTML {
	return markup(of(l.Uses, func(v float64) string { return tenths(v, "use", "uses") }))
}

func (p *place) plantsHow(pb report.Payback) template.HTML {
	per := func(v float64) string { return signed(v*float64(pb.Cells), 1) }
	return say("%s a tray %s, at %s a plant on average%s", per(pb.Difference.Value), interval(pb.DifferenceLow, pb.DifferenceHigh, per),
		of(pb.Value, p.money.each), p.valueSource())
}

// valueSource says where the worth of a plant comes from.
func (p *place) valueSource() string {
	if p.r.Book.Settings.TransplantValue.Known {
		return " (transplant_value in book.csv)"
	}
	return ": the seed, mix and sowing that a plant fewer to sow saves"
}

func (p *place) minutesHow(pb report.Payback) template.HTML {
	if pb.MinutesLeftOut {
		return "left out: the minutes of both trays, or the wage, are not written"
	}
	return say("%s against %s minutes, at %s an hour", of(pb.Minutes, number), of(pb.OtherMinutes, number), of(p.r.Book.Settings.Wage, p.money.sum))
}
