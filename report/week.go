package report

import (
	"cmp"
	"slices"

	"traybook/records"
	"traybook/report/batch"
	"traybook/report/germination"
	"traybook/report/plants"
)

// WeekWhat is what a line of the week's work is about.
type WeekWhat string

// The parts of the week, in the order of the page.
const (
	ToCount  WeekWhat = "count"
	Late     WeekWhat = "late"
	Short    WeekWhat = "short"
	Freeing  WeekWhat = "free"
	RoomLeft WeekWhat = "room"
)

// WeekLine is one line of this week's work (rules "Work due", "Short"). What the
// fields hold by What:
//
//	count  Date: since when due (sown + median T50); Subject: batch; Value: days since sowing
//	late   Date: planned; Subject: batch; Value: days past planned
//	short  Date: last day to re-sow; Subject: batch; Value: plants likely short
//	free   Date: day on which they are empty and washed; Subject: tray code; Value: trays coming free
//	room   Date: today; Subject: bench or chamber; Value: places left
type WeekLine struct {
	What          WeekWhat
	Date          records.Date
	Subject       string
	Value         Num
	Note          string
	Batch         *Record // count, late, short
	ResowPossible bool    // short: the date has not passed
	Expected      Num     // short: plants to expect at the low end
	TypicalDays   Num     // count: the crop's median T50, else 7
}

// weekOf lists this week's work as of today, by what, date and subject.
func weekOf(b *batch.Batches, all []*Record, g *germination.Figures, p *plants.Figures) []WeekLine {
	week := slices.Concat(newLookout(b, g, p).lines(all), freeing(b), roomLeft(b))
	slices.SortStableFunc(week, func(a, b WeekLine) int {
		return cmp.Or(cmp.Compare(a.What, b.What), cmp.Compare(a.Date, b.Date), cmp.Compare(a.Subject, b.Subject))
	})
	return week
}
