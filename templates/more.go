package templates

import (
	"fmt"
	"html/template"
	"slices"

	"traybook/records"
	"traybook/report/batch"
	"traybook/report/rate"
	"traybook/report/words"
)

// more is something that a page shows on request: tables and charts behind a line
// that can be opened. Print shows it where it was opened.
type more struct {
	Summary template.HTML
	Text    template.HTML
	Figures []*figure
	Tables  []*table
}

// Shown reports whether there is anything behind the line.
func (m more) Shown() bool {
	return slices.ContainsFunc(m.Figures, (*figure).Shown) || slices.ContainsFunc(m.Tables, func(t *table) bool { return !t.Empty() })
}

// dataFile is a link to a data file under something that is no table.
type dataFile struct{ Href, File string }

// dataFile links to data/NAME.csv.
func (p *page) dataFile(name string) dataFile {
	return dataFile{p.href("data/" + name + ".csv"), name + ".csv"}
}

// hasBatches reports whether anything was sown.
func hasBatches(s *site, season int) bool { return len(s.r.Records) > 0 }

// fewLine heads the groups that are not judged: sown, or looked at, too seldom.
func fewLine(done string) template.HTML {
	return say("%s too seldom to judge: fewer than %s", done, words.Batches(rate.FewBatches))
}

// temp writes a temperature in the book's own degrees.
func (p *page) temp(celsius float64) string {
	return words.Degrees(p.r.Book.Settings)(celsius)
}

// tempRange writes two temperatures: 68 to 86 °F.
func (p *page) tempRange(low, high rate.Num) string {
	if !low.Known || !high.Known {
		return words.None
	}
	s := p.r.Book.Settings
	return words.Fixed(s.Degrees(low.Value), 0) + " to " + p.temp(high.Value)
}

// isoWeekOf is the week of a date as calendars number it: week 15.
func isoWeekOf(d records.Date) string {
	_, week := d.Time().ISOWeek()
	return fmt.Sprintf("week%s%d", words.NBSP, week)
}

// kindWords is a kind of tray in a sentence: air-pruning trays.
func kindWords(kind string) template.HTML {
	if kind == "" {
		return "trays of unknown kind"
	}
	return say("%s trays", name(kind))
}

// earlierSeasons are the seasons before the page's own, the latest first.
func (p *page) earlierSeasons() []int {
	before := batch.Filter(p.r.Batches.Seasons, func(season int) bool { return season < p.season })
	slices.Reverse(before)
	return before
}
