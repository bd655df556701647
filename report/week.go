package report

import "traybook/records"

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

// WeekLine is one line of this week's work (rule 40). What the fields hold by
// What:
//
//	count  Date: since when due (sown + median T50); Subject: batch; Value: days since sowing
//	late   Date: planned; Subject: batch; Value: days past planned
//	short  Date: last day to re-sow; Subject: batch; Value: plants likely short
//	free   Date: day; Subject: tray code; Value: trays coming free
//	room   Date: today; Subject: bench or chamber; Value: places left
type WeekLine struct {
	What          WeekWhat
	Date          records.Date
	Subject       string
	Value         Num
	Note          string
	Batch         *Batch // count, late, short
	ResowPossible bool   // short: the date has not passed
	Expected      Num    // short: plants to expect at the low end
	TypicalDays   Num    // count: the crop's median T50, else 7
}
