package report

import (
	"math"

	"traybook/records"
	"traybook/report/batch"
	"traybook/report/germination"
	"traybook/report/plants"
	"traybook/report/sowing"
)

// After how many days a sowing is due for a count where its crop has no T50 yet, and
// after how many its last count came late enough (rules "Work due", "Counted early").
const (
	usualEmergence = 7
	usualLastCount = 14
)

// lookout is what the batches are held against.
type lookout struct {
	batches  *batch.Batches
	today    records.Date
	yearAgo  records.Date
	t50      map[string]Num // by crop, days
	plants   *plants.Figures
	short    shortage
	replaced map[string]bool // batches that another re-sows
}

func newLookout(b *batch.Batches, all []*Record, g *germination.Figures, p *plants.Figures, s *sowing.Figures) lookout {
	l := lookout{batches: b, today: b.Today, yearAgo: batch.YearsBefore(b.Today, 1), t50: g.MedianT50, plants: p, short: shortageOf(all, s), replaced: map[string]bool{}}
	for _, b := range all {
		if b.Replaces != "" {
			l.replaced[b.Replaces] = true
		}
	}
	return l
}

// looks are what a batch is looked at for, whether it has ended or not.
var looks = map[bool][]func(lookout, *Record) (WeekLine, bool){
	true:  {lookout.fell, lookout.earlier},
	false: {lookout.fell, lookout.earlier, lookout.toCount, lookout.again, lookout.late, lookout.likelyShort, lookout.sownTooFew},
}

// lines is what is due or wrong of every batch sown by today, and what came of those of a
// year ago.
func (l lookout) lines(all []*Record) []WeekLine {
	var lines []WeekLine
	for _, b := range all {
		if b.Sown > l.today {
			continue
		}
		for _, look := range looks[b.Ended()] {
			if line, told := look(l, b); told {
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

// again: a batch from seed of which the last count came early, once it is old enough.
func (l lookout) again(b *Record) (WeekLine, bool) {
	days := float64(usualLastCount)
	if t50 := l.t50[b.Crop]; t50.Known {
		days = 2 * t50.Value
	}
	due := b.Sown + records.Date(math.Ceil(days-noise))
	return WeekLine{What: ToCount, Again: true, Note: "again", TypicalDays: records.Known(days), Value: records.Known(float64(l.today - b.Sown)),
		Date: due}, b.FromSeed && b.Early && due <= l.today
}

// late: past the planned day. On that day itself it is not late yet.
func (l lookout) late(b *Record) (WeekLine, bool) {
	days := int(l.today - b.Planned)
	return WeekLine{What: Late, Date: b.Planned, Value: records.Known(float64(days)), Leeway: l.leeway(b, days)},
		b.Planned.Known() && b.Planned < l.today
}

// leeway is how many plants of a batch's own crop and kind of tray were fit so many days
// past planned; nil where too few batches were looked at then.
func (l lookout) leeway(b *Record, days int) *plants.Leeway {
	band := plants.LeewayBands[plants.BandOf(days)]
	for i := range l.plants.Leeway {
		if of := &l.plants.Leeway[i]; of.Crop == b.Crop && of.Kind == b.Kind && of.DaysLate == band && of.Share.Known {
			return of
		}
	}
	return nil
}

// fellDays is how long a batch that fell short is told, the day of its end counted (rule
// "Short").
const fellDays = 30

// fell: ended of late, gave fewer plants than wanted, and nobody has sown it again.
func (l lookout) fell(b *Record) (WeekLine, bool) {
	if !b.Ended() || b.End > l.today || b.End <= l.today-fellDays {
		return WeekLine{}, false
	}
	short := float64(b.Wanted.Value) - b.Usable.Value
	return WeekLine{What: Fell, Date: b.End, Value: records.Known(short)},
		b.Wanted.Known && b.Measured() && short > noise && !l.replaced[b.Code]
}

// earlierDays is how many days of a year ago are looked at, today's counted (rule "In
// earlier years").
const earlierDays = 7

// earlier: sown a year before the days ahead.
func (l lookout) earlier(b *Record) (WeekLine, bool) {
	if b.Sown < l.yearAgo || b.Sown >= l.yearAgo+earlierDays {
		return WeekLine{}, false
	}
	return WeekLine{What: Earlier, Date: b.Sown, Value: b.Usable, Note: whatCame(b)}, true
}

// whatCame says what came of a batch, in the terms of the data files.
func whatCame(b *Record) string {
	said := b.Crop + " " + b.Variety
	if up := b.Emergence(); up.Known {
		said += ", emergence " + decimal(up.Value)
	}
	if b.UsableHow != "" {
		said += ", usable " + string(b.UsableHow)
	}
	if b.Wanted.Known {
		said += ", wanted " + decimal(float64(b.Wanted.Value))
	}
	return said
}
