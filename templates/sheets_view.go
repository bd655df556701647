package templates

import (
	"fmt"
	"html/template"
	"slices"

	"traybook/records"
	"traybook/report"
	"traybook/report/batch"
	"traybook/report/words"
)

// sheetsPage is forms to print and write on, and labels for the trays.
type sheetsPage struct {
	Title, Farm, AsOf string
	Sample            string        // how many batches the forms hold, how many labels
	Style             template.HTML // on its own file only
	Policy            string
	Link              string // address of the style sheet, on the site's page
	Forms             []form
	LabelsOf          template.HTML // which batches the labels are of
	Labels            []label
	Batches           int           // on the forms
	Pages             template.HTML // links to the pages that the sheets take, where there are several
}

// head says as of which day the sheets are, and for what.
func (v sheetsPage) head() (heading, lead template.HTML) {
	return markup(v.Title), say("As of %s. %s", v.AsOf, v.Sample)
}

// The days around today for which the sheets are: of setting out and of labels the week
// ahead, of labels also the week behind, of looks at quality as from so many days before
// the planned one.
const (
	daysAhead  = 7
	daysBehind = 7
	daysToLook = 10
)

// sheetsView is the forms as a page of the site.
func sheetsView(p *page) any {
	v := p.sheets(0)
	v.Link = p.href("static/sheets.css")
	return p.sheetPages(v)
}

// sheets makes the forms, and labels for what was sown since a day, else in the last seven
// days, today counted, or is written down to be sown in the next seven. Forms hold what is
// due by then, so that they are printed once a week; a batch sown on paper and not yet in
// the book has the blank rows.
func (p *page) sheets(since records.Date) sheetsPage {
	today := p.r.Batches.Today
	if !since.Known() {
		since = today - daysBehind + 1
	}
	count := p.onList(report.ToCount)
	look := p.plannedBy(today + daysToLook)
	out := p.plannedBy(today + daysAhead)
	v := sheetsPage{Title: "Sheets to print", Farm: p.farm(), AsOf: words.LongDate(today)}
	v.Forms = []form{p.countForm(count), p.lookForm(look), p.outForm(out)}
	sown := batch.Filter(p.r.Records, func(b *report.Record) bool { return since <= b.Sown && b.Sown <= today+daysAhead })
	for _, b := range walked(sown) {
		v.Labels = append(v.Labels, labelsOf(b)...)
	}
	v.LabelsOf = say("One for each tray of what was sown from %s on, or stands in the book to be sown by %s.", words.LongDate(since), words.LongDate(today+daysAhead))
	v.Batches = len(distinct(slices.Concat(count, look, out)))
	v.Sample = sheetsSample(v.Batches, len(v.Labels))
	return v
}

// sheetsSample says what the sheets hold.
func sheetsSample(batches, labels int) string {
	of := "No batch is due: the forms are blank."
	if batches > 0 {
		of = fmt.Sprintf("Forms for %s.", words.Batches(batches))
	}
	if labels == 0 {
		return of + " No labels: nothing was sown of late."
	}
	return fmt.Sprintf("%s Labels for %s.", of, words.Plural(labels, "tray", "trays"))
}

// onList are the batches on a part of the week's list, as one walks the benches.
func (p *page) onList(what report.WeekWhat) []*report.Record {
	var out []*report.Record
	for _, l := range p.r.Lines(what) {
		out = append(out, l.Batch)
	}
	return walked(out)
}

// plannedBy are the open batches planned for a day or before, as one walks the benches. A
// batch without a planned day is on no such form: nobody can say when it is due.
func (p *page) plannedBy(last records.Date) []*report.Record {
	return walked(batch.Filter(p.r.Records, func(b *report.Record) bool {
		return !b.Ended() && b.Sown <= p.r.Batches.Today && b.Planned.Known() && b.Planned <= last
	}))
}

// walked are batches in the order of the benches: by tray code, then batch. Paper is
// filled in while walking, so the rows are in the order of the benches.
func walked(batches []*report.Record) []*report.Record {
	out := make([]*report.Record, 0, len(batches))
	for _, j := range jobsOf(batches) {
		out = append(out, j.batch)
	}
	return out
}

// distinct keeps the first of batches that stand twice.
func distinct(batches []*report.Record) []*report.Record {
	var out []*report.Record
	for _, b := range batches {
		if !slices.Contains(out, b) {
			out = append(out, b)
		}
	}
	return out
}
