package templates

import (
	"cmp"
	"fmt"
	"html/template"
	"slices"
	"strings"

	"traybook/records"
	"traybook/report"
	"traybook/report/batch"
	"traybook/report/words"
)

// site is what all pages of one report share.
type site struct {
	r         *report.Report
	charts    Charts
	money     words.Money
	plan      []spec                  // the pages there are, in order
	left      []leftOut               // the pages there are not
	paths     map[string]bool         // of the pages there are
	outs      batch.Rows[records.Out] // by batch, in the order in which they are told
	crops     []cropPage              // of records
	cropNames cropSlugs
	cropAt    map[cropSeason]string    // paths of the crops' records
	seasons   map[int][]*report.Record // batches by season, in order
	out       pen                      // the page being written
	spare     spare                    // memory for pages; nil: each takes its own
	nav       navigation
	kinds     map[int][]string // of tray, by season, as they are asked for
	gapLines  map[gapsOf]template.HTML
	anchors   anchors              // of the batches
	lotPages  map[int][]lotPart    // parts of a season's lots, where they are too many for a page
	lotAt     map[lotSeason]string // their paths
	lots      map[string]string    // anchor of a seed lot, by code
	faulty    []faultyFile         // logs with rows that errors keep out
	longNotes map[int]bool         // by season, as they are asked for
	single    bool                 // one page alone: nothing to link to
}

// leftOut is a page that the book has no data for.
type leftOut struct{ Title, Lack string }

// newSite lays out the pages that the report has data for.
func newSite(r *report.Report, charts Charts) *site {
	s := &site{r: r, charts: charts, money: words.NewMoney(r.Book.Settings.Currency), paths: map[string]bool{}, faulty: faultyFiles(r)}
	s.outs = outsOf(r)
	s.kinds, s.gapLines, s.longNotes = map[int][]string{}, map[gapsOf]template.HTML{}, map[int]bool{}
	_, s.seasons = batch.GroupBy(r.Records, func(b *report.Record) int { return b.Season })
	s.crops, s.cropNames = cropPagesOf(r.Records, func(b *report.Record) int { return storySize(r.Book, b, s.outs.Of(b.Nth)) })
	s.cropAt = make(map[cropSeason]string, len(s.crops))
	for _, c := range s.crops {
		s.cropAt[cropSeason{c.Crop, c.Season}] = c.Path
	}
	s.anchors = batchAnchors(s.crops, len(r.Records))
	s.lots = lotAnchors(r.Germination.Lots)
	s.planLots()
	for _, c := range chapters {
		if r.Options.Public && c.own {
			continue
		}
		specs := c.specs(s)
		if len(specs) == 0 {
			s.left = append(s.left, leftOut{c.title, c.lack})
		}
		s.plan = append(s.plan, specs...)
	}
	for _, sp := range s.plan {
		s.paths[sp.path] = true
	}
	s.nav = navigationOf(s.plan)
	return s
}

// outsOf are the rows of out.csv by batch, each batch's by day.
func outsOf(r *report.Report) batch.Rows[records.Out] {
	codes := make([]string, len(r.Records))
	for i, b := range r.Records {
		codes[i] = b.Code
	}
	outs := batch.RowsOf(codes, r.Book.Outs, func(o *records.Out) string { return o.Batch })
	for i := range codes {
		slices.SortStableFunc(outs.Of(i), func(a, b *records.Out) int {
			return cmp.Or(cmp.Compare(a.Date, b.Date), cmp.Compare(a.To, b.To), cmp.Compare(a.Plants, b.Plants), cmp.Compare(a.Note, b.Note))
		})
	}
	return outs
}

// farm is the name on the review.
func (s *site) farm() string { return cmp.Or(s.r.Book.Settings.Farm, "The farm") }

// render writes a page and those that hold what is too much for it, one after the other.
func (s *site) render(sp spec, yield func(File) bool) (more bool, err error) {
	p := newPage(s, sp)
	view := sp.view(p)
	if p.err != nil {
		return false, fmt.Errorf("page %s: %w", sp.path, p.err)
	}
	p.cutLong()
	for _, x := range append([]extra{{sp, view}}, p.extras...) {
		of := p
		if x.spec.path != sp.path {
			of = newPage(s, x.spec)
		}
		body, err := s.write(of, x.view)
		if err != nil || !yield(File{x.spec.path, body, s.spare}) {
			return false, err
		}
	}
	return true, nil
}

// longEnded is a view whose end is too long for html/template, which would copy it twice:
// behind what its template shows it writes the rest itself.
type longEnded interface {
	writeEnd(*pen)
}

// write sets a view into its page.
func (s *site) write(p *page, view any) ([]byte, error) {
	sp := p.spec
	sh := s.frame(p, view)
	return s.written(func() error {
		sh.writeTop(&s.out, p)
		if err := pages.ExecuteTemplate(&s.out, sp.name+".html", view); err != nil {
			return fmt.Errorf("page %s: %w", sp.path, err)
		}
		if of, ok := view.(longEnded); ok {
			of.writeEnd(&s.out)
		}
		sh.writeEnd(&s.out, p)
		return nil
	})
}

// written is what is written into the page by some of its parts, which it does not keep.
func (s *site) written(write func() error) ([]byte, error) {
	from := len(s.out.out)
	err := write()
	html := s.spare.copyOf(s.out.out[from:])
	s.out.out = s.out.out[:from]
	return html, err
}

// banner says on each page that rows were left out, and where they stand.
type banner struct {
	Text, Href string // no address in a public edition, which has no page of what is missing
	One        bool
}

// banner is nil where no row was left out.
func (s *site) banner(p *page) *banner {
	text := s.leftOutText()
	if text == "" {
		return nil
	}
	b := &banner{Text: text, One: strings.HasPrefix(text, "1"+words.NBSP)}
	if s.paths["missing.html"] {
		b.Href = p.root + "missing.html#problems"
	}
	return b
}

// faultyFile is a log with rows that an error keeps out of every figure.
type faultyFile struct {
	name string
	rows int
}

// faultyFiles are the logs with such rows. A row left out with a mere warning, as
// one that repeats what another log tells, takes nothing from a figure.
func faultyFiles(r *report.Report) []faultyFile {
	type line struct {
		file string
		line int
	}
	wrong, harmless := map[line]bool{}, map[line]bool{}
	for _, p := range r.Problems {
		at := line{p.File, p.Line}
		wrong[at] = wrong[at] || p.Severity >= records.Error
		if p.Check == repeatsCheck {
			harmless[at] = true
		}
	}
	spared := map[string]int{}
	for at := range harmless {
		if !wrong[at] {
			spared[at.file]++
		}
	}
	var out []faultyFile
	for _, f := range r.Book.Files {
		if n := f.LeftOut - spared[cmp.Or(f.As, f.Name)]; n > 0 {
			out = append(out, faultyFile{f.Name, n})
		}
	}
	return out
}

// repeatsCheck names the one check whose warning leaves a row out.
const repeatsCheck = "repeats"

// leftOutText says how many rows of how many files, or sheets of a workbook, no figure uses.
func (s *site) leftOutText() string {
	rows, of := 0, words.Plural(len(s.faulty), "file", "files")
	if s.r.Book.Workbook() {
		of = words.Plural(len(s.faulty), "sheet", "sheets")
	}
	for _, f := range s.faulty {
		rows += f.rows
	}
	if rows == 0 {
		return ""
	}
	return fmt.Sprintf("%s of %s %s left out", words.Plural(rows, "row", "rows"), of,
		map[bool]string{true: "was", false: "were"}[rows == 1])
}
