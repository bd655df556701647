package templates

import (
	"html/template"

	"traybook/report/money"
	"traybook/report/trays"
	"traybook/report/words"
)

// verdictSentences say whether a tray pays, in how long, what it is worth and
// what the answer is at the price of a bought-in plant.
func (p *page) verdictSentences(pb trays.Payback) []template.HTML {
	out := []template.HTML{say("<strong>%s %s.</strong> %s", name(pb.Tray), paysWords(pb.Verdict), p.paybackWords(pb)), p.worthWords(pb)}
	if pb.AtPlugPrice != nil {
		out = append(out, p.plugWords(pb))
	}
	if pb.Valued < pb.Matches {
		out = append(out, say("What a plant is worth is known for %s of the %s: the gain rests on those.", words.Whole(pb.Valued), words.Plural(pb.Matches, "match", "matches")))
	}
	return out
}

// paysWords is a verdict as a sentence takes it.
func paysWords(v trays.PaysVerdict) string {
	return map[trays.PaysVerdict]string{
		trays.PaysLow:    "pays even at the low end of what the records show",
		trays.PaysMiddle: "pays in the middle of what the records show, but not at its low end",
		trays.PaysHigh:   "pays only at the high end of what the records show",
		trays.PaysNever:  "does not pay, not even at the high end of what the records show",
	}[v]
}

// paybackWords says in how many uses a tray has paid for itself, beside its life.
func (p *page) paybackWords(pb trays.Payback) template.HTML {
	if !pb.PaybackUses.Known {
		return say("It never earns back its price of %s: in the middle of what the records show, a use gains nothing.", words.Of(pb.Price, p.money.Sum))
	}
	out := say("At %s it has paid for itself after %s", words.Of(pb.Price, p.money.Sum), words.Tenths(pb.PaybackUses.Value, "use", "uses"))
	if pb.PaybackSeasons.Known {
		out = say("%s, %s at %s a season", out, words.Tenths(pb.PaybackSeasons.Value, "season", "seasons"), words.Tenths(pb.UsesPerSeason.Value, "use", "uses"))
	}
	return say("%s; %s.", out, lifeWords(pb.Life))
}

// lifeWords says how long a tray lasts.
func lifeWords(l money.Life) template.HTML {
	if !l.Uses.Known {
		return "how many uses it survives is not known"
	}
	out := say("it lasts %s", words.Tenths(l.Uses.Value, "use", "uses"))
	if l.Seasons.Known {
		out = say("%s, which is %s", out, words.Tenths(l.Seasons.Value, "season", "seasons"))
	}
	if l.Assumed {
		return say("%s (its life is not written, so one season is taken)", out)
	}
	return out
}

// worthWords says what a tray is worth today, also where that quarrels with the
// verdict.
func (p *page) worthWords(pb trays.Payback) template.HTML {
	if !pb.WorthToday.Known {
		return "What it is worth today cannot be told: how often it is used a season is not known."
	}
	out := say("Counting %s a year for the money tied up, what a tray gains over its life is worth %s more than its price today.",
		words.Percent(p.r.Book.Settings.DiscountRate), p.money.Sum(pb.WorthToday.Value))
	if pb.WorthToday.Value < 0 {
		out = say("Counting %s a year for the money tied up, what a tray gains over its life is worth %s less than its price today.",
			words.Percent(p.r.Book.Settings.DiscountRate), p.money.Sum(-pb.WorthToday.Value))
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
func (p *page) plugWords(pb trays.Payback) template.HTML {
	a := pb.AtPlugPrice
	if a.Verdict == "" || !a.Gain.Known {
		return ""
	}
	out := say("Where one more plant saves buying one in at %s, it %s: a use gains %s %s", p.money.Each(a.Value.Value), paysWords(a.Verdict),
		p.money.Sum(a.Gain.Value), words.Interval(a.GainLow, a.GainHigh, p.money.SumNumber))
	if a.PaybackUses.Known {
		out = say("%s, and it is paid for after %s", out, words.Tenths(a.PaybackUses.Value, "use", "uses"))
	}
	if a.WorthToday.Known {
		out = say("%s; worth today %s", out, p.money.Sum(a.WorthToday.Value))
	}
	return out + "."
}

// gainTable is the gain of one use in its parts.
func (p *page) gainTable(pb trays.Payback) *table {
	t := p.table("gain-"+slug(pb.Tray+" "+pb.Other), say("What one use of %s gains over %s, %s", name(pb.Tray), name(pb.Other), p.money.Code()), "payback",
		plain("Part"), nums("A use"))
	part := func(words, how any) cell { return cell{Value: markup(words), Sub: markup(how), Class: "words"} }
	t.add(part(say("A use of %s not spent", name(pb.Other)), say("%s over %s", words.Of(pb.OtherPrice, p.money.Sum), usesOf(pb.OtherLife))), words.Of(pb.GainTray, p.money.SignedNumber))
	t.add(part("More usable plants", p.plantsHow(pb)), words.Of(pb.GainPlants, p.money.SignedNumber))
	t.add(part("Extra minutes", p.minutesHow(pb)), words.Of(pb.GainMinutes, p.money.SignedNumber))
	t.foot(part("Gain a use", say("%s on %s", words.Plural(pb.Valued, "match", "matches"), words.Plural(pb.Dates, "date", "dates"))),
		with(words.Of(pb.Gain, p.money.SignedNumber), words.Interval(pb.GainLow, pb.GainHigh, p.money.SignedNumber)))
	return t
}

// usesOf is a life in uses.
func usesOf(l money.Life) template.HTML {
	return markup(words.Of(l.Uses, func(v float64) string { return words.Tenths(v, "use", "uses") }))
}

// plantsHow says how many plants a tray, and at what value each, make the part.
func (p *page) plantsHow(pb trays.Payback) template.HTML {
	per := func(v float64) string { return words.Signed(v*float64(pb.Cells), 1) }
	return say("%s a tray %s, at %s a plant on average%s", per(pb.Difference.Value), words.Interval(pb.DifferenceLow, pb.DifferenceHigh, per),
		words.Of(pb.Value, p.money.Each), p.valueSource())
}

// valueSource says where the worth of a plant comes from.
func (p *page) valueSource() string {
	if p.r.Book.Settings.TransplantValue.Known {
		return " (transplant_value in book.csv)"
	}
	return ": the seed, mix and sowing that a plant fewer to sow saves"
}

// minutesHow says which minutes, at what wage, make the part.
func (p *page) minutesHow(pb trays.Payback) template.HTML {
	if pb.MinutesLeftOut {
		return "left out: the minutes of both trays, or the wage, are not written"
	}
	return say("%s against %s minutes, at %s an hour", words.Of(pb.Minutes, words.Number), words.Of(pb.OtherMinutes, words.Number), words.Of(p.r.Book.Settings.Wage, p.money.Sum))
}
