package draw

import (
	"math"
	"time"

	"traybook/records"
	"traybook/report/words"
)

// Shares is an axis of shares of 1 in percent, from a round number at or below the lowest
// value to 100. It begins at 80 % at the latest, so that small differences between good
// crops do not look like large ones, and always ends at 100 %.
func Shares(id string, lowest float64) Axis {
	from, step := math.Floor(lowest*5)/5, 0.2
	from = min(max(from, 0), 0.8)
	if from >= 0.8 {
		step = 0.05
	}
	a := Axis{ID: id, Min: from, Max: 1}
	for v := from; v <= 1+1e-9; v += step {
		a.Ticks = append(a.Ticks, Tick{At: v, Word: words.PercentNumber(v)})
	}
	return a
}

// Differences is an axis as far on both sides of nothing as the largest value asks for.
// scale turns a value into what is written: 100 for cells in 100. Nothing stands in the
// middle, whichever way the values lie, so better and worse are seen by their side alone.
func Differences(id string, largest, scale float64) Axis {
	largest = finite(largest)
	step := roundStep(largest*scale, 2) / scale
	end := math.Max(1, math.Ceil(largest/step-1e-9)) * step
	a := Axis{ID: id, Min: -end, Max: end}
	for v := -end; v <= end+step/2; v += step {
		a.Ticks = append(a.Ticks, signedTick(v, scale))
	}
	return a
}

// From is an axis over signed values from the lowest to the highest and nothing. Nothing
// is always on it: bars begin there. An axis without any value still has one step.
func From(id string, lowest, highest, scale float64) Axis {
	lowest, highest = math.Min(finite(lowest), 0), math.Max(finite(highest), 0)
	step := roundStep((highest-lowest)*scale, 4) / scale
	from, to := math.Floor(lowest/step+1e-9)*step, math.Ceil(highest/step-1e-9)*step
	if !(to > from) {
		to = from + step
	}
	a := Axis{ID: id, Min: from, Max: to}
	for v := from; v <= to+step/2; v += step {
		a.Ticks = append(a.Ticks, signedTick(v, scale))
	}
	return a
}

// signedTick is a tick with its sign; the one at nothing is drawn stronger.
func signedTick(v, scale float64) Tick {
	at := words.Round(v*scale, 9)
	word := words.Number(at)
	if at > 0 {
		word = "+" + word
	}
	return Tick{At: v, Word: word, Zero: at == 0}
}

// Amounts is an axis from 0 to a round number at or above the largest value, written by
// write. Money and numbers of trays begin at 0, or their bars would lie.
func Amounts(id string, largest float64, write func(float64) string) Axis {
	largest = finite(largest)
	step := roundStep(largest, 3)
	end := math.Max(1, math.Ceil(largest/step-1e-9)) * step
	a := Axis{ID: id, Max: end}
	for i := 0; float64(i)*step <= end+step/2; i++ {
		a.Ticks = append(a.Ticks, Tick{At: float64(i) * step, Word: write(float64(i) * step)})
	}
	return a
}

// finite keeps what overflowed, or is no number, within what an axis can be made for.
func finite(v float64) float64 {
	if math.IsNaN(v) {
		return 0
	}
	return min(max(v, -1e300), 1e300)
}

// roundStep is 1, 2 or 5 times a power of ten of which about parts cover the range. 1
// where there is nothing to cover. What misses a round step by the noise of binary
// fractions counts as it.
func roundStep(span float64, parts int) float64 {
	rough := span / float64(parts)
	if !(rough > 0) || math.IsInf(rough, 0) {
		return 1
	}
	power := math.Pow(10, math.Floor(math.Log10(rough)))
	for _, m := range []float64{1, 2, 5} {
		if rough <= m*power*(1+1e-9) {
			return m * power
		}
	}
	return 10 * power
}

// Days is an axis over days, from first to last, with a tick at each month's first day;
// every second or third where there are many. Every month has its line, and words as far
// as there is room for about nine.
func Days(id string, first, last records.Date) Axis {
	a := Axis{ID: id, Min: float64(first), Max: float64(max(last, first+1))}
	months := monthsBetween(first, last)
	every := 1 + (len(months)-1)/9
	for i, d := range months {
		word := ""
		if i%max(every, 1) == 0 {
			word = d.Month().String()[:3]
		}
		a.Ticks = append(a.Ticks, Tick{At: float64(d), Word: word})
	}
	return a
}

// monthsBetween lists the first days of months within two days. No more than 200, against
// a mistyped year.
func monthsBetween(first, last records.Date) []records.Date {
	var days []records.Date
	t := first.Time()
	for y, m := t.Year(), t.Month(); len(days) < 200; m++ {
		if m > time.December {
			y, m = y+1, time.January
		}
		d := records.NewDate(y, m, 1)
		if d > last {
			break
		}
		if d >= first {
			days = append(days, d)
		}
	}
	return days
}
