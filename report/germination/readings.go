package germination

import (
	"slices"

	"traybook/records"
	"traybook/report/rate"
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

// climate is what the readings say, by chamber and day, and by day in the house
// (the middle of low and high).
type climate struct {
	chamber map[chamberDay][]float64
	house   map[records.Date]float64
	unnamed bool // a farm with one chamber need not name it
}

// climateOf sorts the readings, those of a day by temperature, so that their order
// in the log changes no digit.
func climateOf(book *records.Book) climate {
	c := climate{chamber: map[chamberDay][]float64{}, house: houseDays(book.House)}
	for _, reading := range book.Chamber {
		k := chamberDay{reading.Chamber, reading.Date}
		c.chamber[k] = append(c.chamber[k], reading.Temp)
		c.unnamed = c.unnamed || reading.Chamber == ""
	}
	for _, day := range c.chamber {
		slices.Sort(day)
	}
	return c
}

// houseDays is the middle of low and high of each day that has both; of several rows
// of a day their median.
func houseDays(rows []records.HouseReading) map[records.Date]float64 {
	middles := map[records.Date][]float64{}
	for _, row := range rows {
		if row.Low.Known && row.High.Known {
			middles[row.Date] = append(middles[row.Date], (row.Low.Value+row.High.Value)/2)
		}
	}
	days := map[records.Date]float64{}
	for date, of := range middles {
		days[date] = rate.Median(of).Value
	}
	return days
}

// stoodIn reports whether the batch is known to have stood in a chamber that the
// book names; the chamber without a name is one where its readings have none either.
func (c climate) stoodIn(one *Counted) bool {
	return one.Chamber != "" || one.ChamberOut.Known() && c.unnamed
}

// germinationDays is how long after sowing the temperature beside a sowing is read.
const germinationDays = 7

// inChamber is the readings of a batch's chamber while it stood there, at most until
// 7 days after sowing; where chamber_out is not written, all of those days.
func (c climate) inChamber(one *Counted) temps {
	var t temps
	if !c.stoodIn(one) {
		return t
	}
	until := one.Sown + germinationDays
	if one.ChamberOut.Known() {
		until = min(until, one.ChamberOut)
	}
	for d := one.Sown; d <= until; d++ {
		for _, temp := range c.chamber[chamberDay{one.Chamber, d}] {
			t.add(temp)
		}
	}
	return t
}

// inHouse is the house from a batch's sowing until 7 days after, by day.
func (c climate) inHouse(one *Counted) temps {
	var t temps
	for d := one.Sown; d <= one.Sown+germinationDays; d++ {
		if temp, known := c.house[d]; known {
			t.add(temp)
		}
	}
	return t
}
