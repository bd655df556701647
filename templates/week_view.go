package templates

import (
	"html/template"
	"slices"

	"traybook/records"
	"traybook/report"
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

func weekView(p *place) any {
	v := weekPage{Title: p.spec.title, AsOf: longDate(p.r.LastDate), Nothing: true, Data: p.dataFile("week"),
		Sheets: p.moreOn("sheets.html", "Sheets to print for these batches")}
	for _, b := range p.r.Batches {
		v.Nothing = v.Nothing && b.Ended()
		v.Assumed = v.Assumed || b.EndHow == report.Assumed
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

func (p *place) lines(what report.WeekWhat) []report.WeekLine {
	var out []report.WeekLine
	for _, l := range p.r.Week {
		if l.What == what {
			out = append(out, l)
		}
	}
	return out
}

// shortLines puts first what a new sowing can still mend.
func (p *place) shortLines() []report.WeekLine {
	lines := p.lines(report.Short)
	slices.SortStableFunc(lines, func(a, b report.WeekLine) int {
		order := map[bool]int{true: 0, false: 1}
		return order[a.ResowPossible] - order[b.ResowPossible]
	})
	return lines
}

func (p *place) tasks(lines []report.WeekLine, task func(report.WeekLine) weekTask) []weekTask {
	var out []weekTask
	for _, l := range lines {
		if l.Batch != nil {
			out = append(out, task(l))
		}
	}
	return out
}

// batchWords is a batch in a line of work: its code, what it is and where it stands.
func (p *place) batchWords(b *report.Batch) template.HTML {
	return say("%s: %s %s, %s of %s", p.batch(b.Code), name(b.Crop), name(b.Variety), plural(b.Trays, "tray", "trays"), name(b.Tray))
}

func (p *place) countTask(l report.WeekLine) weekTask {
	usual := say("its crop has not been timed here, so %s stand in for how long it takes", days(l.TypicalDays.Value))
	if p.timed(l.Batch.Crop) {
		usual = say("half of what comes up is usually up after %s", days(l.TypicalDays.Value))
	}
	return weekTask{say("Count %s", p.batchWords(l.Batch)), say("Sown on %s, %s ago; %s. No count is written yet.", longDate(l.Batch.Sown), days(l.Value.Value), usual)}
}

// timed reports whether the crop has a time to half up of its own.
func (p *place) timed(crop string) bool {
	for _, b := range p.r.Batches {
		if b.Crop == crop && b.T50.Known {
			return true
		}
	}
	return false
}

func (p *place) lateTask(l report.WeekLine) weekTask {
	return weekTask{say("Set out, pot on or clear %s", p.batchWords(l.Batch)),
		join(say("Planned for %s, %s ago.", longDate(l.Date), days(l.Value.Value)), p.fitWords(l.Batch.Kind, l.Value.Value))}
}

// fitWords says what leeway a late batch has by the looks at others.
func (p *place) fitWords(kind string, late float64) template.HTML {
	for i := len(report.LeewayBands) - 1; i >= 0; i-- {
		band := report.LeewayBands[i]
		if late < float64(band) {
			continue
		}
		for _, f := range p.leewayOf("", kind) {
			if f.DaysLate == band && f.Share.Known {
				return say("In %s, plants looked at %s were still fit in %s, %s.", kindWords(kind), bandWords[band], shareText(f.Rate), batchCount(f.Batches))
			}
		}
		break
	}
	return "Look at 10 to 20 plugs before you decide, and write the look down."
}

// nearlyEnough is the shortage, as a share of the plants wanted, below which care
// does more than a new sowing.
const nearlyEnough = 0.05

func (p *place) shortTask(l report.WeekLine) weekTask {
	b := l.Batch
	short := float64(b.Wanted.Value) - roundPlants(l.Expected.Value)
	why := say("Wanted %s; its %s give %s at the low end of what like batches gave: short by %s.", whole(b.Wanted.Value),
		plural(b.CellsSown.Value, "cell", "cells"), whole(roundPlants(l.Expected.Value)), whole(short))
	switch {
	case short < nearlyEnough*float64(b.Wanted.Value):
		return weekTask{say("Spare every plant of %s", p.batchWords(b)), why}
	case !l.Date.Known():
		return weekTask{say("Check %s", p.batchWords(b)), join(why, "No planned day is written, so it cannot be told until when a new sowing would do.")}
	case l.ResowPossible:
		return weekTask{say("Re-sow for %s by %s", p.batchWords(b), longDate(l.Date)),
			join(why, say("A sowing up to that day should still be ready for %s.", longDate(b.Planned)))}
	}
	return weekTask{say("Find plants elsewhere for %s", p.batchWords(b)),
		join(why, say("To be ready for %s a new sowing was due by %s.", longDate(b.Planned), longDate(l.Date)))}
}

// freeTable is what comes free in the next days, by day.
func (p *place) freeTable() *table {
	t := p.table("free", say("Trays coming free in the two weeks from %s", longDate(p.r.LastDate)), "", plain("Day", "Tray"), nums("Trays"))
	for _, l := range p.lines(report.Freeing) {
		t.add(longDate(l.Date), name(l.Subject), of(l.Value, number))
	}
	t.note("Open batches are taken to leave on their planned day, else after the crop’s usual stay; then the trays are washed.")
	return t
}

func (p *place) roomLine(l report.WeekLine) template.HTML {
	where := map[string]string{report.BenchName: "on the benches", report.ChamberName: "in the chambers"}[l.Subject]
	places := map[string]records.Maybe[float64]{report.BenchName: p.r.Book.Settings.BenchPlaces, report.ChamberName: p.r.Book.Settings.ChamberPlaces}[l.Subject]
	if l.Value.Value < 0 {
		return say("<strong>%s too many</strong> %s, which hold %s.", plural(-l.Value.Value, "tray", "trays"), where, of(places, number))
	}
	return say("<strong>%s left</strong> %s, of %s.", plural(l.Value.Value, "place", "places"), where, of(places, number))
}
