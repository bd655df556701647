package report

import (
	"math"

	"traybook/records"
	"traybook/report/batch"
	"traybook/report/germination"
	"traybook/report/plants"
)

// usualEmergence is after how many days a sowing is due for a count where its crop
// has no T50 yet (rule "Work due").
const usualEmergence = 7

// lookout is what the open batches are held against.
type lookout struct {
	today records.Date
	stays batch.Stays
	t50   map[string]Num      // by crop, days
	low   map[batch.Group]Num // low end of the usable rate
}

func newLookout(b *batch.Batches, g *germination.Figures, p *plants.Figures) lookout {
	low := map[batch.Group]Num{}
	for _, u := range p.Usable {
		low[u.Group] = u.Low
	}
	return lookout{today: b.Today, stays: b.Stays, t50: g.MedianT50, low: low}
}

// lines is what is due or wrong of every batch that stands open today.
func (l lookout) lines(all []*Record) []WeekLine {
	var lines []WeekLine
	for _, b := range all {
		if b.EndHow != batch.Open || b.Sown > l.today {
			continue
		}
		for _, look := range []func(*Record) (WeekLine, bool){l.toCount, l.late, l.short} {
			if line, told := look(b); told {
				line.Batch, line.Subject = b, b.Code
				lines = append(lines, line)
			}
		}
	}
	return lines
}

// typicalDays is how long a crop takes to come up: its median T50, else a week.
func typicalDays(t50 map[string]Num, crop string) float64 { return t50[crop].Or(usualEmergence) }

// toCount: a batch from seed, not counted, sown longer ago than its crop takes.
func (l lookout) toCount(b *Record) (WeekLine, bool) {
	days, age := typicalDays(l.t50, b.Crop), float64(l.today-b.Sown)
	return WeekLine{What: ToCount, TypicalDays: records.Known(days), Value: records.Known(age),
		Date: b.Sown + records.Date(math.Floor(days)) + 1}, b.FromSeed && !b.Counts.Written && age > days
}

// late: past the planned day. On that day itself it is not late yet.
func (l lookout) late(b *Record) (WeekLine, bool) {
	return WeekLine{What: Late, Date: b.Planned, Value: records.Known(float64(l.today - b.Planned))},
		b.Planned.Known() && b.Planned < l.today
}

// short: the cells sown at the low end of the group's usable rate give fewer plants
// than are wanted. A re-sowing needs the crop's median stay (rule "Short").
func (l lookout) short(b *Record) (WeekLine, bool) {
	low := l.low[b.Group()]
	if !b.Wanted.Known || !b.CellsSown.Known || !low.Known {
		return WeekLine{}, false
	}
	wanted, expected := float64(b.Wanted.Value), float64(b.CellsSown.Value)*low.Value
	line := WeekLine{What: Short, Expected: records.Known(expected), Value: records.Known(wanted - expected)}
	if b.Planned.Known() {
		line.Date = b.Planned - records.Date(l.stays.Of(b.Crop).Median)
		line.ResowPossible = line.Date >= l.today
	}
	return line, expected < wanted
}
