package germination

import (
	"slices"

	"traybook/records"
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

// chamberDay is a chamber on a day.
type chamberDay struct {
	chamber string
	date    records.Date
}

// readings is what was read, by chamber and day, those of a day by temperature, and the
// last row of each day in the house.
type readings struct {
	chamber map[chamberDay][]float64
	house   map[records.Date]records.HouseReading
}

// readingsOf sorts the readings of a chamber's day, so that their order in the log
// changes no digit.
func readingsOf(book *records.Book) readings {
	r := readings{map[chamberDay][]float64{}, map[records.Date]records.HouseReading{}}
	for _, reading := range book.Chamber {
		k := chamberDay{reading.Chamber, reading.Date}
		r.chamber[k] = append(r.chamber[k], reading.Temp)
	}
	for _, day := range r.chamber {
		slices.Sort(day)
	}
	for _, row := range book.House {
		r.house[row.Date] = row
	}
	return r
}

// firstDays is over how many days a batch's warmth is taken, from the day it was sown or
// came into the house.
const firstDays = 7

// inChamber is the readings of a batch's chamber on those of its first days on which it
// stood there.
func (r readings) inChamber(one *Counted) temps {
	var t temps
	for d := one.Sown; d < min(one.Sown+firstDays, one.ChamberUntil); d++ {
		for _, temp := range r.chamber[chamberDay{one.Chamber, d}] {
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
		if row := r.house[d]; row.Low.Known && row.High.Known {
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
		if row := r.house[d]; row.High.Known {
			t.add(row.High.Value)
		}
	}
	return t
}
