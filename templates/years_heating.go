package templates

import (
	"html/template"
	"slices"

	"traybook/report/batch"
	"traybook/report/words"
	"traybook/report/years"
)

// heatingTable is each season's heat beside its cold.
func (p *page) heatingTable() *table {
	heads := []string{"Cold, degree-days", "Heat, " + p.money.Code(), "A degree-day"}
	fuel := slices.ContainsFunc(p.r.Years.Heating, func(h years.Heating) bool { return h.Fuel.Known })
	if fuel {
		heads = append(heads, "Fuel", "A degree-day")
	}
	t := p.table("heating", "Heat beside the cold of each season", "heating", plain("Season"), nums(heads...))
	for _, h := range p.r.Years.Heating {
		cells := []any{words.Year(h.Season), words.Whole(words.Round(p.degreeDays(h.DegreeDays), 0)), words.Of(h.Heat, p.money.SumNumber), words.Of(h.PerDegreeDay, p.perDegree)}
		if fuel {
			cells = append(cells, say("%s %s", words.Of(h.Fuel, words.Number), name(h.Unit)), words.Of(h.FuelPerDegreeDay, p.fuelPerDegree))
		}
		t.add(cells...)
	}
	t.note(say("Degree-days: on each day of the heating months, how far the mean outdoors lay below %s, added up. Prices change, the house does not: the fuel a degree-day tells waste from cold.", p.temp(15)))
	return t
}

// degreeDays turns Celsius degree-days into the book's own degrees.
func (p *page) degreeDays(v float64) float64 {
	if p.r.Book.Settings.Fahrenheit {
		return v * 9 / 5
	}
	return v
}

// perDegree writes money for a degree-day in the book's own degrees.
func (p *page) perDegree(v float64) string { return p.money.EachNumber(v / p.degreeDays(1)) }

// fuelPerDegree writes fuel for a degree-day in the book's own degrees.
func (p *page) fuelPerDegree(v float64) string { return words.Fixed(v/p.degreeDays(1), 3) }

// heatingWords sets the last season's cold and heat beside the season before.
func (p *page) heatingWords() template.HTML {
	all := batch.Filter(p.r.Years.Heating, func(h years.Heating) bool { return h.PerDegreeDay.Known && h.Season <= p.season })
	if len(all) < 2 {
		return ""
	}
	a, b := all[len(all)-2], all[len(all)-1]
	if !p.r.Batches.Finished(b.Season) { // the cold of a part is not that of a whole season
		return say("In %s so far, a degree-day took %s of heat, against %s in %s.", words.Year(b.Season),
			p.money.Each(b.PerDegreeDay.Value/p.degreeDays(1)), p.money.Each(a.PerDegreeDay.Value/p.degreeDays(1)), words.Year(a.Season))
	}
	return say("%s was %s than %s, by %s in the cold; a degree-day took %s, against %s.", words.Year(b.Season), colder(b.DegreeDays > a.DegreeDays), words.Year(a.Season),
		words.Percent(abs(b.DegreeDays/a.DegreeDays-1)), p.money.Each(b.PerDegreeDay.Value/p.degreeDays(1)), p.money.Each(a.PerDegreeDay.Value/p.degreeDays(1)))
}

func colder(is bool) string {
	if is {
		return "colder"
	}
	return "milder"
}

// changedIn names what was done differently in a season, beside it.
func (p *page) changedIn(season int) template.HTML {
	var what []template.HTML
	for _, c := range p.changesOf(season) {
		what = append(what, markup(name(c.What)))
	}
	if len(what) == 0 {
		return ""
	}
	return say(`<span class="soft lt">changed: %s</span>`, list(what))
}
