package germination

import (
	"cmp"
	"slices"

	"traybook/records"
	"traybook/report/batch"
)

// temps is temperatures added up, Celsius.
type temps struct {
	n              int
	sum, low, high float64
}

func (t *temps) add(temp float64) {
	if t.n == 0 {
		t.low, t.high = temp, temp
	}
	t.n++
	t.sum += temp
	t.low, t.high = min(t.low, temp), max(t.high, temp)
}

// mean is missing where nothing was read.
func (t temps) mean() Num {
	if t.n == 0 {
		return Num{}
	}
	return records.Known(t.sum / float64(t.n))
}

// dayRead is a chamber's readings of a day, by temperature.
type dayRead struct {
	date  records.Date
	temps []float64
}

// readings is what was read, by chamber, then by date, and the last row of each day in
// the house.
type readings struct {
	chamber map[string][]dayRead
	house   map[records.Date]*records.HouseReading
}

// readingsOf sorts the readings of a chamber's day, so that their order in the log
// changes no digit.
func readingsOf(book *records.Book) readings {
	r := readings{map[string][]dayRead{}, make(map[records.Date]*records.HouseReading, len(book.House))}
	_, split := batch.GroupBy(book.Chamber, func(c records.ChamberReading) string { return c.Chamber })
	for chamber, rows := range split {
		r.chamber[chamber] = daysRead(rows)
	}
	for i := range book.House {
		r.house[book.House[i].Date] = &book.House[i]
	}
	return r
}

// daysRead splits the readings of one chamber by date.
func daysRead(rows []records.ChamberReading) []dayRead {
	slices.SortFunc(rows, func(a, b records.ChamberReading) int {
		return cmp.Or(cmp.Compare(a.Date, b.Date), cmp.Compare(a.Temp, b.Temp))
	})
	temps := make([]float64, len(rows))
	var days []dayRead
	for i, row := range rows {
		temps[i] = row.Temp
		if i == 0 || row.Date != rows[i-1].Date {
			days = append(days, dayRead{date: row.Date, temps: temps[i:i]})
		}
		day := &days[len(days)-1]
		day.temps = day.temps[:len(day.temps)+1]
	}
	return days
}

// between are the days of a chamber that were read from one day until the day before
// another.
func (r readings) between(chamber string, from, until records.Date) []dayRead {
	days := r.chamber[chamber]
	return days[dayAt(days, from):dayAt(days, max(from, until))]
}

// dayAt is the place of the first day on or after a date.
func dayAt(days []dayRead, date records.Date) int {
	at, _ := slices.BinarySearchFunc(days, date, func(d dayRead, date records.Date) int { return cmp.Compare(d.date, date) })
	return at
}

// firstDays is over how many days a batch's warmth is taken, from the day it was sown or
// came into the house.
const firstDays = 7

// inChamber is the readings of a batch's chamber on those of its first days on which it
// stood there.
func (r readings) inChamber(one *Counted) temps {
	var t temps
	for _, day := range r.between(one.Chamber, one.Sown, min(one.Sown+firstDays, one.ChamberUntil)) {
		for _, temp := range day.temps {
			t.add(temp)
		}
	}
	return t
}

// inHouse is the middle of each day's low and high in the house over the first days
// after the sowing.
func (r readings) inHouse(one *Counted) temps {
	var t temps
	for d := one.Sown; d < one.Sown+firstDays; d++ {
		if row := r.house[d]; row != nil && row.Low.Known && row.High.Known {
			t.add((row.Low.Value + row.High.Value) / 2)
		}
	}
	return t
}

// highs is each day's high in the house over a batch's first days there.
func (r readings) highs(one *Counted) temps {
	var t temps
	from := max(one.Sown, one.ChamberUntil)
	for d := from; d < from+firstDays; d++ {
		if row := r.house[d]; row != nil && row.High.Known {
			t.add(row.High.Value)
		}
	}
	return t
}
