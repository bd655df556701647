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

// cropPagesOf sorts batches into a page for each season and crop; on it they
// stand by the day sown.
func cropPagesOf(batches []*report.Record) ([]cropPage, cropSlugs) {
	var list []cropPage
	sorted := slices.Clone(batches)
	slices.SortStableFunc(sorted, func(a, b *report.Record) int {
		return cmp.Or(cmp.Compare(a.Season, b.Season), cmp.Compare(a.Crop, b.Crop), cmp.Compare(a.Sown, b.Sown), cmp.Compare(a.Code, b.Code))
	})
	names := cropSlugs{}
	for _, crop := range cropsOf(batches) {
		cropSlug(&names, crop)
	}
	for _, b := range sorted {
		if n := len(list); n == 0 || list[n-1].Season != b.Season || list[n-1].Crop != b.Crop {
			list = append(list, cropPage{Season: b.Season, Crop: b.Crop,
				Path: seasonFile("records/"+cropSlug(&names, b.Crop), b.Season)})
		}
		last := &list[len(list)-1]
		last.Batches = append(last.Batches, b)
	}
	return list, names
}

// cropsOf lists the crops of batches by name.
func cropsOf(batches []*report.Record) []string {
	crops, _ := batch.GroupBy(batches, func(b *report.Record) string { return b.Crop })
	slices.Sort(crops)
	return crops
}

// recordsPages are the records' first page and one for each season and crop.
func recordsPages(s *site) []spec {
	specs := []spec{{path: "records.html", name: "records", kind: "book", title: "Records", group: inBook, label: "Records", top: "Records", view: recordsView}}
	for _, page := range s.crops {
		specs = append(specs, spec{path: page.Path, name: "crop", kind: "rec", title: fmt.Sprintf("%s, %d", capital(page.Crop), page.Season), head: "Records",
			season: page.Season, same: "records/" + page.Crop, parent: "records.html", logs: allLogs, view: cropView(page)})
	}
	return specs
}

// recordsPage lists the pages of records.
type recordsPage struct {
	Seasons []seasonRecords
	Files   *table
	Months  []batchList
	Lots    []batchList
}

// batchList is some batches under a line that opens.
type batchList struct {
	Title, Batches template.HTML
}

// listed sorts batches under a title each, in the order of the titles' keys.
func (p *page) listed(key func(*report.Record) string, title func(key string, n int) template.HTML) []batchList {
	keys, of := batch.GroupBy(p.r.Records, key)
	slices.Sort(keys)
	var out []batchList
	for _, k := range keys {
		if k == "" {
			continue
		}
		var codes []string
		for _, b := range of[k] {
			codes = append(codes, b.Code)
		}
		out = append(out, batchList{title(k, len(codes)), p.batches(codes)})
	}
	return out
}

// seasonRecords is a season's crops.
type seasonRecords struct {
	ID    string
	Title string
	Table *table
}

// recordsView lists the seasons, the latest first, and the logs that were read.
func recordsView(p *page) any {
	v := recordsPage{Files: p.filesTable()}
	v.Months = p.listed(func(b *report.Record) string { return b.Sown.String()[:7] }, func(k string, n int) template.HTML { return say("%s: %s", k, words.Batches(n)) })
	v.Lots = p.listed(func(b *report.Record) string { return b.Lot }, func(k string, n int) template.HTML { return say("%s: %s", name(k), words.Batches(n)) })
	for _, season := range slices.Backward(p.r.Batches.Seasons) {
		t := p.table(fmt.Sprint("records-", season), say("Batches of season %s by crop", fmt.Sprint(season)), "batches", plain("Crop"),
			nums("Batches", "Trays"), plain("First sown", "Last sown"))
		for _, page := range p.crops {
			if page.Season == season {
				trays := 0.0
				for _, b := range page.Batches {
					trays += b.Trays
				}
				t.add(p.to(page.Path, name(page.Crop)), words.Whole(len(page.Batches)), words.Number(trays),
					words.ISODate(page.Batches[0].Sown), words.ISODate(page.Batches[len(page.Batches)-1].Sown))
			}
		}
		v.Seasons = append(v.Seasons, seasonRecords{p.id(fmt.Sprint("season-", season)), fmt.Sprint("Season ", season), t})
	}
	return v
}

// filesTable says what was read.
func (p *page) filesTable() *table {
	t := p.table("files", "The logs as they were read", "", plain("Log"), nums("Rows", "Left out"))
	for _, f := range p.r.Book.Files {
		t.add(f.Name, words.Whole(f.Rows), words.Whole(f.LeftOut))
	}
	return t
}

// countRemark says why a batch's counts tell nothing of what came up.
func countRemark(b *report.Record) template.HTML {
	switch {
	case b.Early:
		return "Its last count came too early to stand for the batch."
	case b.FromSeed && !b.Looked.Known:
		return "No count."
	}
	return ""
}

// sownWords tells what was sown into what, and where it came from.
func (p *page) sownWords(b *report.Record) template.HTML {
	out := say("%s, %s of %s", words.LongDate(b.Sown), words.Plural(b.Trays, "tray", "trays"), name(b.Tray))
	if b.Kind != "" {
		out = say("%s (%s)", out, name(b.Kind))
	}
	if b.CellsSown.Known {
		out = say("%s, %s", out, words.Plural(b.CellsSown.Value, "cell", "cells"))
	}
	if b.SeedsPerCell > 1 {
		out = say("%s, %s seeds a cell", out, words.Whole(b.SeedsPerCell))
	}
	if b.Start != "" && b.Start != records.FromSeed {
		out = say("%s, from %s", out, b.Start)
	}
	return join(say("%s.", out), p.originWords(b))
}

// originWords says where a batch comes from: its lot, the batch it was moved
// from, the batch it replaces.
func (p *page) originWords(b *report.Record) template.HTML {
	var out []template.HTML
	switch {
	case b.Lot != "":
		out = append(out, say("Seed lot %s.", p.lot(b.Season, b.Lot)))
	case b.FromSeed:
		out = append(out, "No seed lot written.")
	}
	if b.From != "" {
		out = append(out, say("Moved on from %s.", p.batch(b.From)))
	}
	if b.Replaces != "" {
		out = append(out, say("Sown again for %s.", p.batch(b.Replaces)))
	}
	return join(out...)
}

// chamberWords tells the stay in a chamber, where anything is written of it.
func (p *page) chamberWords(b *report.Record) template.HTML {
	switch {
	case b.Chamber == "" && !b.ChamberOut.Known():
		return ""
	case !b.ChamberOut.Known():
		return say("In %s; the day it came out is not written.", name(b.Chamber))
	}
	stay := words.Days(float64(b.ChamberOut - b.Sown))
	if b.Chamber == "" {
		return say("In the chamber for %s.", stay)
	}
	return say("In %s for %s.", name(b.Chamber), stay)
}

// forField tells the day and the plants that were planned.
func forField(b *report.Record) template.HTML {
	var parts []string
	if b.Planned.Known() {
		parts = append(parts, "for "+words.LongDate(b.Planned))
	}
	if b.Wanted.Known {
		parts = append(parts, words.Plural(b.Wanted.Value, "plant", "plants")+" wanted")
	}
	if len(parts) == 0 {
		return ""
	}
	return say("%s.", capital(strings.Join(parts, ", ")))
}

// countWords tells the counts that are used.
func (p *page) countWords(b *report.Record) template.HTML {
	var lines []template.HTML
	for _, c := range b.Counts.Rows {
		lines = append(lines, countLine(b, *c))
	}
	return lineList(lines)
}

// countLine is one count: day, tray, what was up or empty, what was lost.
func countLine(b *report.Record, c records.Count) template.HTML {
	out := say("day %s", words.Whole(int(c.Date-b.Sown)))
	if c.Tray.Known {
		out = say("%s, tray %s", out, words.Whole(c.Tray.Value))
	}
	of := template.HTML("")
	if c.Cells.Known {
		of = say(" of %s", words.Plural(c.Cells.Value, "cell", "cells"))
	}
	switch {
	case c.Emerged.Known:
		out = say("%s: %s up%s", out, words.Whole(c.Emerged.Value), of)
	case c.Empty.Known:
		out = say("%s: %s empty%s", out, words.Whole(c.Empty.Value), of)
	}
	if c.Lost.Known && c.Lost.Value > 0 {
		out = say("%s; %s lost since", out, words.Whole(c.Lost.Value))
	}
	if cause := c.Cause(); cause != "" {
		out = say("%s (%s)", out, name(cause))
	}
	return join(out, noteWords(c.Note()))
}

// lineList sets lines after one another; nothing of no lines.
func lineList(lines []template.HTML) template.HTML {
	if len(lines) == 0 {
		return ""
	}
	out := lines[0]
	for _, l := range lines[1:] {
		out = say("%s; %s", out, l)
	}
	return say("%s.", upper(out))
}

// noteWords is a note of the grower's, in quotes.
func noteWords(s string) template.HTML {
	if s == "" {
		return ""
	}
	return say("“%s”", name(s))
}
