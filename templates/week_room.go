package templates

import (
	"html/template"
	"slices"

	"traybook/records"
	"traybook/report"
	"traybook/report/batch"
	"traybook/report/words"
	"traybook/templates/draw"
)

// weekTrays is what comes free, by day, and what is left on the Mondays to come.
type weekTrays struct {
	Title template.HTML
	Days  []freeDay
	Note  template.HTML
	Left  *rows
	Data  dataFile // of the whole page
}

// freeDay is a day on which trays come free.
type freeDay struct {
	Day   string
	Trays []template.HTML
}

// mostADay is how many tray codes a day names; the data file of the page has all.
const mostADay = 30

// weekTrays lists only the days on which something comes free. A tray comes free after it
// is emptied and washed, so what leaves today is free some days later.
func (p *page) weekTrays() weekTrays {
	lines := p.r.Lines(report.Freeing)
	v := weekTrays{Title: "No tray comes free in the next two weeks", Left: p.mondayRows("left", ""), Data: p.dataFile("week")}
	if len(lines) == 0 {
		return v
	}
	total := 0.0
	days, of := batch.GroupBy(lines, func(l report.WeekLine) records.Date { return l.Date })
	for _, d := range days {
		day := freeDay{Day: dayName(d)}
		for i, l := range of[d] {
			if total += l.Value.Value; i >= mostADay {
				continue
			}
			day.Trays = append(day.Trays, say("%s%s %s", p.trayKey(l.Subject), words.Number(l.Value.Value), name(l.Subject)))
		}
		if more := len(of[d]) - mostADay; more > 0 {
			day.Trays = append(day.Trays, say("and %s more", words.Plural(more, "code", "codes")))
		}
		v.Days = append(v.Days, day)
	}
	v.Title = say("%s free in the next two weeks", words.Plural(total, "tray comes", "trays come"))
	v.Note = say("Washed, %s after the batch has left. An open batch is taken to leave on its planned day, else after its crop’s usual stay.",
		words.Days(float64(p.r.Book.Settings.TrayTurnaround)))
	return v
}

// dayName is a day of the weeks around today: Wed 20 May.
func dayName(d records.Date) string { return d.Time().Format("Mon 2 Jan") }

// trayKey is the mark of a tray code's kind; nothing where the kind is not known.
func (p *page) trayKey(code string) template.HTML {
	c := p.r.Batches.Codes[code]
	if c == nil || c.Kind == "" {
		return ""
	}
	return draw.Key(draw.KindOf(c.Kind))
}

// mondayRows is a small table of the trays free on each of the coming Mondays, by code;
// empty where nobody knows how many trays are owned. The week's page and the one of how
// much to sow show it alike; data is its data file, empty where the page names that once
// for all it shows. A number below 0 is no mistake of the table: more trays of the code
// stand sown than the book says are owned.
func (p *page) mondayRows(id, data string) *rows {
	lines := p.r.Lines(report.TraysLeft)
	codes, of := batch.GroupBy(lines, func(l report.WeekLine) string { return l.Subject })
	slices.Sort(codes)
	t := p.rows(id, "left", "Trays free on the coming Mondays, if nothing more is sown.", data, col{Width: "w1", Head: "Tray"})
	t.Notes = nil // the page says once which rows were left out
	for i, code := range codes {
		cells := []any{say("%s%s", p.trayKey(code), name(code))}
		for _, l := range of[code] {
			if i == 0 {
				t.Cols = append(t.Cols, col{Class: "n", Head: say("%s", l.Date.Time().Format("2 Jan"))})
			}
			cells = append(cells, leftText(l.Value))
		}
		t.add("", "", cells...)
	}
	return t
}

// leftText is how many trays are free, a dash where that is not known; in red below 0,
// where more are used than owned.
func leftText(left report.Num) template.HTML {
	if left.Value < 0 {
		return say(`<span class="bad">%s</span>`, words.Number(left.Value))
	}
	return markup(words.Of(left, words.Number))
}
