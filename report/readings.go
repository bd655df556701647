package report

import (
	"slices"

	"traybook/records"
)

// temps is temperatures added up.
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

func (t temps) mean() Num {
	if t.n == 0 {
		return Num{}
	}
	return records.Known(t.sum / float64(t.n))
}

// place and day of readings.
type placeDay struct {
	chamber string
	date    records.Date
}

// climate is what the readings say, by chamber and day, and by day in the house
// (the middle of low and high).
type climate struct {
	chamber map[placeDay][]float64
	house   map[records.Date]float64
	unnamed bool // a farm with one chamber need not name it
}

// climate sorts the readings, those of a day by temperature, so that their order
// in the log changes no digit.
func (r *Report) climate() climate {
	c := climate{chamber: map[placeDay][]float64{}, house: map[records.Date]float64{}}
	for _, reading := range r.Book.Chamber {
		k := placeDay{reading.Chamber, reading.Date}
		c.chamber[k] = append(c.chamber[k], reading.Temp)
		c.unnamed = c.unnamed || reading.Chamber == ""
	}
	for _, day := range c.chamber {
		slices.Sort(day)
	}
	days := map[records.Date][]float64{}
	for _, reading := range r.Book.House {
		if reading.Low.Known && reading.High.Known {
			days[reading.Date] = append(days[reading.Date], (reading.Low.Value+reading.High.Value)/2)
		}
	}
	for date, means := range days {
		c.house[date] = median(means).Value
	}
	return c
}

// stoodIn reports whether the batch is known to have stood in a chamber that the
// book names; the chamber without a name is one where its readings have none either.
func (c climate) stoodIn(b *Batch) bool {
	return b.Chamber != "" || b.ChamberOut.Known() && c.unnamed
}
