package report

import (
	"cmp"
	"slices"

	"traybook/records"
	"traybook/report/batch"
	"traybook/report/germination"
	"traybook/report/plants"
	"traybook/report/sowing"
)

// WeekWhat is what a line of the week's work is about.
type WeekWhat string

// The parts of the week, in the order of the page.
const (
	AlarmLine WeekWhat = "alarm"
	ToCount   WeekWhat = "count"
	Late      WeekWhat = "late"
	Short     WeekWhat = "short"
	Fell      WeekWhat = "fell"
	Freeing   WeekWhat = "free"
	TraysLeft WeekWhat = "left"
	RoomLeft  WeekWhat = "room"
	Earlier   WeekWhat = "earlier"
)

// WeekLine is one line of this week's work (rules "Alarms", "Work due", "Short", "In
// earlier years"). What the fields hold by What:
//
//	alarm    Date; Subject: chamber or house; Value: Celsius
//	count    Date: since when due; Subject: batch; Value: days since sowing
//	late     Date: planned; Subject: batch; Value: days past planned
//	short    Date: last day to re-sow; Subject: batch; Value: plants likely short
//	fell     Date: its end; Subject: batch; Value: plants that it gave too few
//	free     Date: day on which they are empty and washed; Subject: tray code; Value: trays coming free
//	left     Date: a Monday; Subject: tray code; Value: trays free
//	room     Date: today; Subject: bench or chamber; Value: places left
//	earlier  Date: sown; Subject: batch; Value: usable plants
type WeekLine struct {
	What    WeekWhat
	Date    records.Date
	Subject string
	Value   Num
	Note    string
	Batch   *Record // of lines about one batch

	Again         bool               // count: for the second time, the last came early
	TypicalDays   Num                // count: after how many days it is due
	Leeway        *plants.Leeway     // late: how many were fit as late as this, of its own crop and kind; nil: no share
	Expected      Num                // short: plants to expect
	TooFewSown    bool               // short: not counted yet, and sown too few
	Chance        Num                // short, of one sown too few: chance of as many as wanted
	Rests         Rests              // short: what Expected rests on
	ResowPossible bool               // short: the date has not passed
	Alarm         *germination.Alarm // alarm: with its limit and the batches that it touched
}

// Rests is what a rate rests on: the batches, and what they have in common.
type Rests struct {
	Of      string // "crop", "book", "crop, variety, cells and kind", "crop and cells"
	Batches []string
}

// TooLate reports whether a new sowing could no longer make the date of a short batch.
func (w WeekLine) TooLate() bool { return w.What == Short && !w.ResowPossible }

// weekOf lists this week's work as of today, by what, date and subject.
func weekOf(b *batch.Batches, all []*Record, g *germination.Figures, p *plants.Figures, s *sowing.Figures) []WeekLine {
	l := newLookout(b, all, g, p, s)
	week := slices.Concat(alarmLines(g.Alarms, b.Today), l.lines(all), freeing(b), traysLeft(b), roomLeft(b))
	slices.SortStableFunc(week, func(a, b WeekLine) int {
		return cmp.Or(cmp.Compare(a.What, b.What), cmp.Compare(a.Date, b.Date), cmp.Compare(a.Subject, b.Subject))
	})
	return week
}

// Lines returns the lines of the week about one thing, in their order.
func (r *Report) Lines(what WeekWhat) []WeekLine {
	var lines []WeekLine
	for _, w := range r.Week {
		if w.What == what {
			lines = append(lines, w)
		}
	}
	return lines
}
