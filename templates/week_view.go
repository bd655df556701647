package templates

import (
	"html/template"

	"traybook/records"
	"traybook/report"
	"traybook/report/batch"
	"traybook/report/room"
	"traybook/report/words"
)

// weekPage is what there is to do, as of the last date in the book or --today: alarms,
// what is left and due in large numbers, the batches to see to, the trays that come
// free, and what was sown a year ago.
type weekPage struct {
	Heading, Lead template.HTML
	Alarms        *weekAlarms
	Numbers       []bigNumber
	Work          weekWork
	Trays         weekTrays
	Ago           *rows
}

// head says which week it is, on which day the book stands, and where the forms are.
func (v weekPage) head() (heading, lead template.HTML) { return v.Heading, v.Lead }

// bigNumber is a number set large with what it counts; Bad sets it in the colour of
// what went wrong.
type bigNumber struct {
	Big  string
	What template.HTML
	Bad  bool
}

// weekView sets the week's list; a part with nothing to tell is left out, and a week
// with nothing to do says so.
func weekView(p *page) any {
	today := p.r.Batches.Today
	return weekPage{
		Heading: say("The week of %s", words.LongDate(today)),
		Lead:    join(say("As the book stands on %s.", today.Time().Weekday()), p.moreOn("sheets.html", "Sheets to print")),
		Alarms:  p.weekAlarms(),
		Numbers: p.weekNumbers(),
		Work:    p.weekWork(),
		Trays:   p.weekTrays(),
		Ago:     p.yearAgoRows(),
	}
}

// weekNumbers are what is left and what is due. Chambers are told of only where a batch
// ever stood in one: a farm without any would read a question mark each week.
func (p *page) weekNumbers() []bigNumber {
	s := p.r.Book.Settings
	numbers := []bigNumber{p.placesLeft(room.BenchName, "bench", "bench_places", s.BenchPlaces)}
	if p.hasChamber() {
		numbers = append(numbers, p.placesLeft(room.ChamberName, "chamber", "chamber_places", s.ChamberPlaces))
	}
	for _, due := range []struct {
		what      report.WeekWhat
		one, many string
	}{
		{report.ToCount, "batch to count", "batches to count"},
		{report.Late, "past its day", "past their day"},
		{report.Short, "likely short", "likely short"},
	} {
		n := len(p.r.Lines(due.what))
		what := due.many
		if n == 1 {
			what = due.one
		}
		numbers = append(numbers, bigNumber{Big: words.Whole(n), What: markup(what)})
	}
	return numbers
}

// hasChamber reports whether any batch ever stood in a chamber.
func (p *page) hasChamber() bool {
	return len(batch.Filter(p.r.Records, func(b *report.Record) bool { return b.ChamberUntil.Known() })) > 0
}

// placesLeft is the room left in one place; a question mark where nobody wrote how many
// places there are, and by how much it is too full in place of a number below 0.
func (p *page) placesLeft(place, noun, setting string, places records.Maybe[float64]) bigNumber {
	for _, l := range p.r.Lines(report.RoomLeft) {
		if l.Subject != place || !l.Value.Known {
			continue
		}
		if left := l.Value.Value; left >= 0 {
			return bigNumber{Big: words.Number(left), What: say("of %s %s left", words.Of(places, words.Number), words.Unit(places.Value, noun+" place", noun+" places"))}
		}
		return bigNumber{Big: words.Number(-l.Value.Value), Bad: true,
			What: say("%s too many for %s", words.Unit(-l.Value.Value, "tray", "trays"), words.Plural(places.Value, noun+" place", noun+" places"))}
	}
	return bigNumber{Big: "?", What: say("%s places left: write %s into book.csv", noun, setting)}
}
