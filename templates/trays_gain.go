package templates

import (
	"html/template"

	"traybook/report/trays"
	"traybook/report/words"
)

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
