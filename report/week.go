package report

import (
	"cmp"
	"math"
	"slices"

	"traybook/records"
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

// WeekLine is one line of this week's work (rule 40). What the fields hold by
// What:
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
	Batch         *Batch // count, late, short
	ResowPossible bool   // short: the date has not passed
	Expected      Num    // short: plants to expect at the low end
	TypicalDays   Num    // count: the crop's median T50, else 7
}

// usualEmergence is after how many days a sowing is due for a count where its crop
// has no T50 yet; freeingDays how far ahead trays coming free are told (rule 40).
const (
	usualEmergence = 7
	freeingDays    = 14
)

// week lists this week's work as of the last date (rule 40).
func (r *Report) week() {
	low := map[Group]Num{}
	for _, u := range r.Usable {
		low[u.Group] = u.Low
	}
	for _, b := range r.Batches {
		if b.EndHow != Open || b.Sown > r.LastDate {
			continue
		}
		r.toCount(b)
		r.late(b)
		r.short(b, low[b.Group()])
	}
	r.freeing()
	r.roomLeft()
	slices.SortStableFunc(r.Week, func(a, b WeekLine) int {
		return cmp.Or(cmp.Compare(a.What, b.What), cmp.Compare(a.Date, b.Date), cmp.Compare(a.Subject, b.Subject))
	})
}

// toCount: a batch from seed, not counted, sown longer ago than its crop takes.
func (r *Report) toCount(b *Batch) {
	days := r.medianT50[b.Crop].Or(usualEmergence)
	if !b.FromSeed || b.everCounted || float64(r.LastDate-b.Sown) <= days {
		return
	}
	r.Week = append(r.Week, WeekLine{What: ToCount, Batch: b, Subject: b.Code, TypicalDays: records.Known(days),
		Date: b.Sown + records.Date(math.Floor(days)) + 1, Value: records.Known(float64(r.LastDate - b.Sown))})
}

func (r *Report) late(b *Batch) {
	if b.Planned.Known() && b.Planned < r.LastDate {
		r.Week = append(r.Week, WeekLine{What: Late, Batch: b, Subject: b.Code, Date: b.Planned,
			Value: records.Known(float64(r.LastDate - b.Planned))})
	}
}

// short: the cells sown at the low end of the group's usable rate give fewer
// plants than are wanted. A re-sowing needs the crop's median stay.
func (r *Report) short(b *Batch, low Num) {
	if !b.Wanted.Known || !b.CellsSown.Known || !low.Known {
		return
	}
	expected := float64(b.CellsSown.Value) * low.Value
	if !(expected < float64(b.Wanted.Value)) {
		return
	}
	line := WeekLine{What: Short, Batch: b, Subject: b.Code, Expected: records.Known(expected),
		Value: records.Known(float64(b.Wanted.Value) - expected)}
	if b.Planned.Known() {
		line.Date = b.Planned - records.Date(r.stay(b.Crop).median)
		line.ResowPossible = line.Date >= r.LastDate
	}
	r.Week = append(r.Week, line)
}

// freeing adds up the trays that come free in the next days: emptied, by the plan
// or as long as the crop usually stands where that is not written, and washed.
func (r *Report) freeing() {
	type when struct {
		date records.Date
		code string
	}
	trays := map[when]float64{}
	for _, b := range r.Batches {
		free := r.likelyEnd(b) + records.Date(r.Book.Settings.TrayTurnaround)
		if free >= r.LastDate && free < r.LastDate+freeingDays {
			trays[when{free, b.Tray}] += b.Trays
		}
	}
	for w, n := range trays {
		r.Week = append(r.Week, WeekLine{What: Freeing, Date: w.date, Subject: w.code, Value: records.Known(n)})
	}
}

// likelyEnd is the end of a batch, of an open one the day it will likely leave.
func (r *Report) likelyEnd(b *Batch) records.Date {
	switch {
	case b.Ended():
		return b.End
	case b.Planned.Known():
		return b.Planned
	}
	return b.Sown + records.Date(r.stay(b.Crop).median)
}

// roomLeft says what is left today in the chambers and on the benches, where the
// book says how much they hold.
func (r *Report) roomLeft() {
	codes := trayCodes(r)
	var bench, chamber float64
	for _, b := range r.Batches {
		switch {
		case b.Sown > r.LastDate || b.EndHow != Open && b.End <= r.LastDate:
		case b.ChamberOut > r.LastDate:
			chamber += b.Trays
		default:
			bench += b.Trays * placesOf(codes, b.Tray)
		}
	}
	left := func(name string, places Num, used float64) {
		if places.Known {
			r.Week = append(r.Week, WeekLine{What: RoomLeft, Date: r.LastDate, Subject: name, Value: records.Known(places.Value - used)})
		}
	}
	left(BenchName, r.Book.Settings.BenchPlaces, bench)
	left(ChamberName, r.Book.Settings.ChamberPlaces, chamber)
}
