package templates

import (
	"html/template"
	"slices"

	"traybook/records"
	"traybook/report"
	"traybook/report/batch"
	"traybook/report/plants"
	"traybook/report/room"
	"traybook/report/words"
)

// weekPage is what there is to do, as of the last date in the book or --today.
type weekPage struct {
	Title, AsOf string
	Nothing     bool // no batch is open
	Assumed     bool // the end of one is not written
	Sections    []weekSection
	Free        *table
	Room        []template.HTML
	Sheets      template.HTML
	Data        dataFile
}

// weekSection is one kind of work; Empty says so where there is none.
type weekSection struct {
	ID, Title, Why, Empty string
	Lines                 []weekTask
}

// weekTask is what to do, and why.
type weekTask struct{ Do, Why template.HTML }

// weekView sets the week's list; every part says so where there is nothing to do.
func weekView(p *page) any {
	v := weekPage{Title: p.spec.title, AsOf: words.LongDate(p.r.Batches.Today), Nothing: true, Data: p.dataFile("week"),
		Sheets: p.moreOn("sheets.html", "Sheets to print for these batches")}
	for _, b := range p.r.Records {
		v.Nothing = v.Nothing && b.Ended()
		v.Assumed = v.Assumed || b.EndHow == batch.Assumed
	}
	v.Sections = []weekSection{
		{"count", "To count", "Open, from seed, not counted yet, and sown longer ago than the crop usually takes to come up.", "Nothing to count: every open batch that is due has been counted.", p.tasks(p.lines(report.ToCount), p.countTask)},
		{"late", "Late", "Still in the house past the day the field was planned for.", "Nothing is late: no open batch is past its planned day.", p.tasks(p.lines(report.Late), p.lateTask)},
		{"short", "Likely short", "Fewer plants than wanted, if they turn out as poorly as like batches may.", "Nothing looks short: no open batch with plants wanted written is likely to give fewer.", p.tasks(p.shortLines(), p.shortTask)},
	}
	v.Free = p.freeTable()
	for _, l := range p.lines(report.RoomLeft) {
		v.Room = append(v.Room, p.roomLine(l))
	}
	return v
}

// lines are the lines of one part of the week, in their order.
func (p *page) lines(what report.WeekWhat) []report.WeekLine {
	var out []report.WeekLine
	for _, l := range p.r.Week {
		if l.What == what {
			out = append(out, l)
		}
	}
	return out
}

// shortLines puts first what a new sowing can still mend.
func (p *page) shortLines() []report.WeekLine {
	lines := p.lines(report.Short)
	slices.SortStableFunc(lines, func(a, b report.WeekLine) int {
		order := map[bool]int{true: 0, false: 1}
		return order[a.ResowPossible] - order[b.ResowPossible]
	})
	return lines
}

// tasks puts lines about batches into words.
func (p *page) tasks(lines []report.WeekLine, task func(report.WeekLine) weekTask) []weekTask {
	var out []weekTask
	for _, l := range lines {
		if l.Batch != nil {
			out = append(out, task(l))
		}
	}
	return out
}

// batchWords is a batch in a line of work: its code, what it is and where it stands.
func (p *page) batchWords(b *report.Record) template.HTML {
	return say("%s: %s %s, %s of %s", p.batch(b.Code), name(b.Crop), name(b.Variety), words.Plural(b.Trays, "tray", "trays"), name(b.Tray))
}

// countTask says what to count and since when it is due.
func (p *page) countTask(l report.WeekLine) weekTask {
	usual := say("its crop has not been timed here, so %s stand in for how long it takes", words.Days(l.TypicalDays.Value))
	if p.r.Germination.MedianT50[l.Batch.Crop].Known {
		usual = say("half of what comes up is usually up after %s", words.Days(l.TypicalDays.Value))
	}
	return weekTask{say("Count %s", p.batchWords(l.Batch)), say("Sown on %s, %s ago; %s. No count is written yet.", words.LongDate(l.Batch.Sown), words.Days(l.Value.Value), usual)}
}

// lateTask says what is late and what leeway it has.
func (p *page) lateTask(l report.WeekLine) weekTask {
	return weekTask{say("Set out, pot on or clear %s", p.batchWords(l.Batch)),
		join(say("Planned for %s, %s ago.", words.LongDate(l.Date), words.Days(l.Value.Value)), p.fitWords(l.Batch.Kind, l.Value.Value))}
}

// fitWords says what leeway a late batch has by the looks at others.
func (p *page) fitWords(kind string, late float64) template.HTML {
	for i := len(plants.LeewayBands) - 1; i >= 0; i-- {
		band := plants.LeewayBands[i]
		if late < float64(band) {
			continue
		}
		for _, f := range p.leewayOf("", kind) {
			if f.DaysLate == band && f.Share.Known {
				return say("In %s, plants looked at %s were still fit in %s, %s.", kindWords(kind), words.DaysLate(band), words.ShareText(f.Rate), words.Batches(f.Batches))
			}
		}
		break
	}
	return "Look at 10 to 20 plugs before you decide, and write the look down."
}

// nearlyEnough is the shortage, as a share of the plants wanted, below which care
// does more than a new sowing.
const nearlyEnough = 0.05

// shortTask says how many plants are likely missing, and what can still be done.
func (p *page) shortTask(l report.WeekLine) weekTask {
	b := l.Batch
	short := float64(b.Wanted.Value) - words.RoundPlants(l.Expected.Value)
	why := say("Wanted %s; its %s give %s at the low end of what like batches gave: short by %s.", words.Whole(b.Wanted.Value),
		words.Plural(b.CellsSown.Value, "cell", "cells"), words.Whole(words.RoundPlants(l.Expected.Value)), words.Whole(short))
	switch {
	case short < nearlyEnough*float64(b.Wanted.Value):
		return weekTask{say("Spare every plant of %s", p.batchWords(b)), why}
	case !l.Date.Known():
		return weekTask{say("Check %s", p.batchWords(b)), join(why, "No planned day is written, so it cannot be told until when a new sowing would do.")}
	case l.ResowPossible:
		return weekTask{say("Re-sow for %s by %s", p.batchWords(b), words.LongDate(l.Date)),
			join(why, say("A sowing up to that day should still be ready for %s.", words.LongDate(b.Planned)))}
	}
	return weekTask{say("Find plants elsewhere for %s", p.batchWords(b)),
		join(why, say("To be ready for %s a new sowing was due by %s.", words.LongDate(b.Planned), words.LongDate(l.Date)))}
}

// freeTable is what comes free in the next days, by day.
func (p *page) freeTable() *table {
	t := p.table("free", say("Trays coming free in the two weeks from %s", words.LongDate(p.r.Batches.Today)), "", plain("Day", "Tray"), nums("Trays"))
	for _, l := range p.lines(report.Freeing) {
		t.add(words.LongDate(l.Date), name(l.Subject), words.Of(l.Value, words.Number))
	}
	t.note("Open batches are taken to leave on their planned day, else after the crop’s usual stay; then the trays are washed.")
	return t
}

// roomLine says what is left on the benches or in the chambers, or by how much they
// are too full.
func (p *page) roomLine(l report.WeekLine) template.HTML {
	where := map[string]string{room.BenchName: "on the benches", room.ChamberName: "in the chambers"}[l.Subject]
	places := map[string]records.Maybe[float64]{room.BenchName: p.r.Book.Settings.BenchPlaces, room.ChamberName: p.r.Book.Settings.ChamberPlaces}[l.Subject]
	if l.Value.Value < 0 {
		return say("<strong>%s too many</strong> %s, which hold %s.", words.Plural(-l.Value.Value, "tray", "trays"), where, words.Of(places, words.Number))
	}
	return say("<strong>%s left</strong> %s, of %s.", words.Plural(l.Value.Value, "place", "places"), where, words.Of(places, words.Number))
}
