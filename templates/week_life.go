package templates

import (
	"html/template"
	"math"
	"slices"

	"traybook/records"
	"traybook/report"
	"traybook/report/batch"
	"traybook/report/rate"
	"traybook/report/words"
	"traybook/templates/draw"
)

// lives draws the lives of the week's batches on one axis of weeks around today, Axis,
// and says which batches they are.
type lives struct {
	p     *page
	today records.Date
	axis  draw.Axis
}

// The weeks that the axis shows at least and at most: before today, and after.
const (
	fewWeeksBefore, mostWeeksBefore = 4, 24
	fewWeeksAfter, mostWeeksAfter   = 2, 6
)

// lifeAxis reaches from the first sowing to the last planned day, in whole weeks. A batch
// forgotten for a year would leave a hair's breadth for all others, so it is bounded; a
// life that began before is cut at the axis.
func (p *page) lifeAxis(jobs []job) lives {
	today := p.r.Batches.Today
	before, after := fewWeeksBefore, fewWeeksAfter
	weeks := func(days records.Date) int { return int(math.Ceil(float64(days) / 7)) }
	for _, j := range jobs {
		before = max(before, weeks(today-j.batch.Sown))
		if j.batch.Planned.Known() {
			after = max(after, weeks(j.batch.Planned-today))
		}
	}
	before, after = min(before, mostWeeksBefore), min(after, mostWeeksAfter)
	day := func(week int) float64 { return float64(today) + 7*float64(week) }
	a := draw.Axis{ID: p.id("gw"), Min: day(-before), Max: day(after)}
	step := weekStep(before + after)
	for week := -before / step * step; week <= after; week += step {
		word := ""
		if week%(2*step) == 0 {
			word = weekWord(week)
		}
		a.Ticks = append(a.Ticks, draw.Tick{At: day(week), Word: word, Zero: week == 0})
	}
	return lives{p, today, a}
}

// weekStep is how many weeks lie between two lines of the axis. Every second has a word,
// so that on paper none covers another.
func weekStep(weeks int) int {
	if weeks <= 12 {
		return 2
	}
	return 4
}

// weekWord is a week's distance from today: today, −4, +2.
func weekWord(week int) string {
	if week == 0 {
		return "today"
	}
	return words.Signed(float64(week), 0)
}

// workRows starts a list of batches with their lives; last heads the column that says
// what there is to do or to know.
func (p *page) workRows(last string, l lives, jobs []job) *rows {
	return p.rows("work", "wk", lifeCaption(jobs), "", col{Width: "w1", Head: "Batch"}, col{Width: "w2", Class: "what", Head: "What"}, col{Width: "w3", Class: "n", Head: "Trays"},
		col{Class: "dr", Head: "Life so far", Quiet: true, Axis: l.axis.Head()}, col{Width: "w5", Class: "job", Head: markup(last)})
}

// lifeCaption says what the lives draw, as far as there is such a thing among them. A mark
// that no batch has needs no word in the key.
func lifeCaption(jobs []job) template.HTML {
	out := "By tray code. Line: from sowing to today or to its end, in weeks"
	for _, mark := range []struct {
		says string
		of   func(*report.Record) bool
	}{
		{"black: in the chamber", func(b *report.Record) bool { return b.ChamberUntil > b.Sown }},
		{"dot: a count", func(b *report.Record) bool { return len(b.Counts.Rows) > 0 }},
		{"upright: the planned day", func(b *report.Record) bool { return b.Planned.Known() }},
	} {
		if slices.ContainsFunc(jobs, func(j job) bool { return mark.of(j.batch) }) {
			out += "; " + mark.says
		}
	}
	return markup(out + ".")
}

// addByTray adds jobs under the tray codes that they stand in. One walks the benches tray
// by tray, so the list is in that order and not by what is most urgent.
func (l lives) addByTray(t *rows, jobs []job, last func(job) template.HTML) {
	codes, of := batch.GroupBy(jobs, func(j job) string { return j.batch.Tray })
	for _, code := range codes {
		t.under(trayHead(of[code][0].batch), "")
		for _, j := range of[code] {
			l.add(t, j, last(j))
		}
	}
}

// trayHead is a tray code over its batches: its mark, its cells and its kind.
func trayHead(b *report.Record) template.HTML {
	if b.Kind == "" {
		return markup(name(b.Tray))
	}
	return say("%s%s, %s %s", draw.Key(draw.KindOf(b.Kind)), name(b.Tray), cellsText(groupOf(b)), name(b.Kind))
}

// groupOf is the group in which a batch is counted, as far as its tray goes.
func groupOf(b *report.Record) batch.Group { return batch.Group{Cells: b.TrayCells, Kind: b.Kind} }

// add adds one batch.
func (l lives) add(t *rows, j job, last template.HTML) {
	b := j.batch
	t.add("", "", l.p.batch(b.Code), say("%s %s", name(b.Crop), name(b.Variety)), words.Number(b.Trays), l.draw(b), last)
}

// draw draws a batch from its sowing to today, or to its end, with its counts. What lies
// before the axis begins is cut off. Trays counted one by one on the same day are one dot.
func (l lives) draw(b *report.Record) template.HTML {
	end := l.today
	if b.Ended() {
		end = min(b.End, l.today)
	}
	at := func(d records.Date) rate.Num { return records.Maybe[float64]{Value: float64(d), Known: d.Known()} }
	chamber := b.ChamberUntil
	if chamber.Known() {
		chamber = min(chamber, end)
	}
	from := max(float64(b.Sown), l.axis.Min)
	marks := []draw.Mark{draw.Standing(draw.KindOf(b.Kind), from, float64(end), at(chamber), at(b.Planned))}
	last := records.Date(0)
	for _, c := range b.Counts.Rows {
		if c.Date != last && float64(c.Date) >= l.axis.Min {
			marks = append(marks, draw.Count(float64(c.Date)))
		}
		last = c.Date
	}
	return l.axis.Row(marks...)
}
