package templates

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"traybook/report"
	"traybook/report/batch"
)

// cropPage is a records page: a crop in a season, with its batches in order. A page that
// would be too long tells them on parts of its own, by month sown.
type cropPage struct {
	Season  int
	Crop    string
	Path    string
	Batches []*report.Record
	Parts   []cropPart
}

// cropPart is the batches of a crop and season that were sown in one month, or some of
// them.
type cropPart struct {
	Path    string
	Title   string // March 2025
	Batches []*report.Record
}

// cropPagesOf sorts batches into a page for each season and crop; on it they stand by the
// day sown. Paths of crops are found in the order of their names before any batch is
// asked, so that a new batch moves no page of another crop. size is what a batch takes.
func cropPagesOf(batches []*report.Record, size func(*report.Record) int) ([]cropPage, cropSlugs) {
	var list []cropPage
	sorted := slices.Clone(batches)
	slices.SortStableFunc(sorted, func(a, b *report.Record) int {
		return cmp.Or(cmp.Compare(a.Season, b.Season), cmp.Compare(a.Crop, b.Crop), cmp.Compare(a.Sown, b.Sown), cmp.Compare(a.Code, b.Code))
	})
	names := cropSlugs{}
	for _, crop := range cropsOf(batches) {
		cropSlug(&names, crop)
	}
	for _, of := range runs(sorted, func(b *report.Record) cropSeason { return cropSeason{b.Crop, b.Season} }) {
		page := cropPage{Season: of[0].Season, Crop: of[0].Crop, Batches: of}
		page.Path = seasonFile("records/"+cropSlug(&names, page.Crop), page.Season)
		page.Parts = monthsOf(page, size)
		list = append(list, page)
	}
	return list, names
}

// runs cuts a list where the key changes; the parts share its memory.
func runs[T any, K comparable](list []T, key func(T) K) (parts [][]T) {
	from := 0
	for i := range list {
		if i+1 == len(list) || key(list[i+1]) != key(list[i]) {
			parts, from = append(parts, list[from:i+1]), i+1
		}
	}
	return parts
}

// cropsOf lists the crops of batches by name.
func cropsOf(batches []*report.Record) []string {
	crops, _ := batch.GroupBy(batches, func(b *report.Record) string { return b.Crop })
	slices.Sort(crops)
	return crops
}

// monthsOf are the parts of a page by month, a month too long by number; none where all
// fits on the page. Months are of the day sown, which is how a grower looks for a batch.
func monthsOf(page cropPage, size func(*report.Record) int) (parts []cropPart) {
	if all := chunks(page.Batches, size, mostBytes, mostBytes); len(all) < 2 {
		return nil
	}
	stem := strings.TrimSuffix(page.Path, ".html") + "/"
	for _, of := range runs(page.Batches, monthOf) {
		month, title := monthOf(of[0]), of[0].Sown.Time().Format("January 2006")
		for i, batches := range chunks(of, size, mostBytes, mostBytes) {
			part := cropPart{stem + month + ".html", title, batches}
			if i > 0 {
				part.Path, part.Title = fmt.Sprintf("%s%s-%d.html", stem, month, i+1), fmt.Sprintf("%s, part %d", title, i+1)
			}
			parts = append(parts, part)
		}
	}
	return parts
}

// monthOf is the month in which a batch was sown: 2025-03.
func monthOf(b *report.Record) string { return b.Sown.String()[:len("2025-03")] }

// told are the pages that tell a crop's batches: its parts or, without any, the page.
func (c cropPage) told() []cropPart {
	if len(c.Parts) > 0 {
		return c.Parts
	}
	return []cropPart{{c.Path, "", c.Batches}}
}

// anchors say where the story of each batch stands: its page, one of pages, and its
// anchor there, both by Nth.
type anchors struct {
	pages []string
	page  []int32
	id    []string
}

// of is where the story of a batch stands.
func (a anchors) of(b *report.Record) (page, id string) { return a.pages[a.page[b.Nth]], a.id[b.Nth] }

// batchAnchors are the anchors of all batches. Two codes that differ only in signs that no
// address holds get different anchors, in the order in which they stand.
func batchAnchors(crops []cropPage, batches int) anchors {
	at := anchors{page: make([]int32, batches), id: make([]string, batches)}
	for _, page := range crops {
		var ids slugs // the same whether a page has parts or not
		for _, part := range page.told() {
			for _, b := range part.Batches {
				at.page[b.Nth], at.id[b.Nth] = int32(len(at.pages)), batchID(&ids, b)
			}
			at.pages = append(at.pages, part.Path)
		}
	}
	return at
}

// batchID is the anchor of a batch on its page of records.
func batchID(ids *slugs, b *report.Record) string {
	return "batch-" + ids.unique(b.Code, "x")
}

// recordsPages are the records' first page, one for each season where the first would be
// too long, and one for each season and crop with its parts.
func recordsPages(s *site) []spec {
	specs := []spec{{path: "records.html", name: "records", kind: "book", title: "Records", group: inBook, label: "Records", top: "Records", view: recordsView}}
	if s.recordsLong() {
		for _, season := range s.r.Batches.Seasons {
			specs = append(specs, recordsOfSeason(season))
		}
	}
	for _, page := range s.crops {
		specs = append(specs, cropSpec(page, page.Path, "", cropView(page)))
		for i, part := range page.Parts {
			specs = append(specs, cropSpec(page, part.Path, ": "+part.Title, cropPartView(page, i)))
		}
	}
	return specs
}

// cropSpec is a page of a crop's records.
func cropSpec(of cropPage, path, part string, view func(*page) any) spec {
	sp := spec{path: path, name: "crop", kind: "rec", title: fmt.Sprintf("%s, %d%s", capital(of.Crop), of.Season, part), head: "Records",
		season: of.Season, parent: "records.html", logs: allLogs, view: view}
	if part == "" {
		sp.same = "records/" + of.Crop
	}
	return sp
}
