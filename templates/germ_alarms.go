package templates

import (
	"html/template"
	"math"
	"slices"

	"traybook/report/batch"
	"traybook/report/germination"
	"traybook/report/rate"
	"traybook/report/words"
	"traybook/templates/draw"
)

// spell is days on end on which an alarm stood in one place.
type spell struct {
	first, last germination.Alarm
	worst       germination.Alarm
	days        int
	batches     []string
}

// spellGap is how many days may lie between two alarms of one spell.
const spellGap = 3

// spells gathers the alarms of a season by place, in order of day. A cold night and a cold
// night two days later are one cold spell to whoever ran the heater. Too warm and too cold
// never join, nor do two places.
func spells(alarms []germination.Alarm) []spell {
	var out []spell
	for _, a := range alarms {
		i := slices.IndexFunc(out, func(s spell) bool {
			return s.last.Place == a.Place && s.last.High == a.High && a.Date-s.last.Date <= spellGap
		})
		if i < 0 {
			i = len(out)
			out = append(out, spell{first: a, worst: a})
		}
		s := &out[i]
		s.last, s.days = a, s.days+1
		if math.Abs(a.Value-a.Limit) > math.Abs(s.worst.Value-s.worst.Limit) {
			s.worst = a
		}
		s.batches = append(s.batches, a.Batches...)
	}
	for i := range out {
		slices.Sort(out[i].batches)
		out[i].batches = slices.Compact(out[i].batches)
	}
	return out
}

// alarmSentences tell when it was too warm or too cold where batches stood.
func (p *page) alarmSentences(season int) []template.HTML {
	of := batch.Filter(p.r.Germination.Alarms, func(a germination.Alarm) bool { return a.Season == season })
	var out []template.HTML
	for _, s := range spells(of) {
		out = append(out, p.spellWords(s))
	}
	return out
}

// spellWords tells a spell: where, when, how bad, and which batches stood there. Up to
// eight batches are named with a link each; more are only counted.
func (p *page) spellWords(s spell) template.HTML {
	what, reached := "too warm", "up to"
	if !s.worst.High {
		what, reached = "too cold", "down to"
	}
	when := say("on %s", words.LongDate(s.first.Date))
	if s.days > 1 {
		when = say("on %s from %s to %s", words.Plural(s.days, "day", "days"), words.DayMonth(s.first.Date), words.LongDate(s.last.Date))
	}
	out := say("%s was %s %s: %s %s.", upper(p.placeName(s.worst)), what, when, reached, p.temp(s.worst.Value))
	if n := len(s.batches); n > 0 && n <= 8 {
		return join(out, say("It touched %s.", p.batches(s.batches)))
	} else if n > 0 {
		return join(out, say("It touched %s.", words.Batches(n)))
	}
	return out
}

// placeName is the house or a chamber in a sentence.
func (p *page) placeName(a germination.Alarm) template.HTML {
	switch {
	case a.House:
		return "the house"
	case a.Chamber == "":
		return "the chamber"
	}
	return say("the chamber %s", name(a.Chamber))
}

// upper writes the first letter of words of ours large.
func upper(h template.HTML) template.HTML { return template.HTML(capital(string(h))) }

// climateRows sets how warm the house was beside what came up, for the crops that have two
// bands with batches enough (rule "Climate"). A crop with one band has nothing to stand
// beside. The table claims no cause: warm days come with other things, such as a later
// sowing.
func (p *page) climateRows() *rows {
	judged := func(c germination.Climate) bool { return !c.Few() && c.Share.Known }
	good := batch.Filter(p.r.Germination.Climate, judged)
	crops, of := batch.GroupBy(good, func(c germination.Climate) string { return c.Crop })
	lowest := 1.0
	for _, c := range good {
		if len(of[c.Crop]) > 1 {
			lowest = min(lowest, c.Low.Or(c.Share.Value))
		}
	}
	axis := draw.Shares(p.id("gt"), lowest)
	t := p.rows("climate", "", "What came up by the mean of the house’s daily highs in the first week a batch stood there; all seasons, bands of three batches or more.", "climate",
		col{Width: "c-name2", Head: "Crop, highs in the house"}, col{Class: "st", Head: "Came up, %", Axis: axis.Head()}, col{Width: "c-n2", Class: "n", Head: "Batches"})
	for _, crop := range crops {
		if len(of[crop]) < 2 {
			continue
		}
		t.under("", "")
		for i, c := range of[crop] {
			head := say(`<span class="v"></span>%s`, p.bandWords(c.Band))
			if i == 0 {
				head = say(`<span class="v">%s</span> %s`, name(crop), p.bandWords(c.Band))
			}
			t.add("", "", head, toldShare(c.Rate, axis, draw.Range(c.Low, c.High), draw.Dot(draw.Crop, c.Share, false)), words.Whole(c.Batches))
		}
	}
	return t
}

// bandWords is a band of highs: 77 to 86 °F. Bands are of Celsius and are written in the
// book's own degrees.
func (p *page) bandWords(band int) string {
	next := map[int]float64{20: 25, 25: 30, 30: 35}
	s := p.r.Book.Settings
	switch {
	case band == germination.BelowAllBands:
		return "below " + p.temp(20)
	case next[band] == 0:
		return p.temp(float64(band)) + " and above"
	}
	return words.Fixed(s.Degrees(float64(band)), 0) + " to " + p.temp(next[band])
}

// few reports whether a rate rests on too few batches to be named.
func few(r rate.Rate) bool { return r.Few() || !r.Share.Known }
