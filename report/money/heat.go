package money

import "traybook/records"

// warmEnough is the mean outdoor temperature, Celsius, from which no heating is
// counted (rule "Heat").
const warmEnough = 15

// outdoors returns the degrees below 15 C of every day of house.csv that has
// the outdoor low and high; of several rows of a day the last stands.
func outdoors(readings []records.HouseReading) map[records.Date]float64 {
	cold := map[records.Date]float64{}
	for _, h := range readings {
		if h.OutLow.Known && h.OutHigh.Known {
			cold[h.Date] = max(0, warmEnough-(h.OutLow.Value+h.OutHigh.Value)/2)
		}
	}
	return cold
}

// heated knows the heated days of a book, and how cold it was.
type heated struct {
	cold  map[records.Date]float64 // by day, where both outdoor readings are written
	first records.Date             // of the days that bills of heat cover
	days  []heatedDays             // before each of those days and after the last
	month func(int) bool
}

// heatedDays counts days: all, those without both readings, and each of them in heating
// months alone.
type heatedDays struct{ all, blank, heated, heatedBlank int }

// newHeated counts the days of all bills of heat once: 100,000 bills may cover them.
func newHeated(a *accounts, rows []*costRow) *heated {
	h := &heated{cold: outdoors(a.book.House), month: a.all.Settings.Heating, days: []heatedDays{{}}}
	last := records.Date(-1)
	for _, row := range rows {
		if row.Shared() && row.Category == records.Heat && row.start <= row.end {
			if last < 0 || row.start < h.first {
				h.first = row.start
			}
			last = max(last, row.end)
		}
	}
	for d := h.first; d <= last; d++ {
		h.days = append(h.days, h.days[len(h.days)-1].with(h.of(d)))
	}
	return h
}

// of is a day.
func (h *heated) of(d records.Date) heatedDays {
	is := heatedDays{all: 1}
	if _, known := h.cold[d]; !known {
		is.blank = 1
	}
	if h.month(int(d.Month())) {
		is.heated, is.heatedBlank = is.all, is.blank
	}
	return is
}

func (n heatedDays) with(o heatedDays) heatedDays {
	return heatedDays{n.all + o.all, n.blank + o.blank, n.heated + o.heated, n.heatedBlank + o.heatedBlank}
}

// in counts the days of a bill that ends no sooner than it begins.
func (h *heated) in(start, end records.Date) heatedDays {
	from, to := h.days[start-h.first], h.days[end+1-h.first]
	return heatedDays{to.all - from.all, to.blank - from.blank, to.heated - from.heated, to.heatedBlank - from.heatedBlank}
}

// factors is what a day counts for where heat goes by heated days, by cold or by both: 0
// for one that does not matter.
func (h *heated) factors(key by, first records.Date, days int) []float64 {
	factors := make([]float64, days)
	for i := range factors {
		d := first + records.Date(i)
		switch {
		case key != byCold && !h.month(int(d.Month())):
		case key == byHeated:
			factors[i] = 1
		default:
			factors[i] = h.cold[d]
		}
	}
	return factors
}

// heat spreads a heating bill by tray-days of its heated days, all where none is, each
// weighted by how cold it was where the log has every such day's outdoor low and high;
// where that leaves no weight, by tray-days alone. False where nothing stood on those days:
// an empty house was heated, and no batch of another day has to do with it.
func (h *dayRates) heat(row *costRow) bool {
	if row.start > row.end {
		return false
	}
	days, in := h.within(row.start, row.end), h.in(row.start, row.end)
	cold, plain, measured := byHeatedCold, byHeated, in.heatedBlank == 0
	if in.heated == 0 {
		cold, plain, measured = byCold, byStood, in.blank == 0
	}
	return measured && h.share(shareKey{records.Heat, cold}).spread(days, row.amount) ||
		h.share(shareKey{records.Heat, plain}).spread(days, row.amount)
}
