package templates

import (
	"fmt"
	"html/template"
	"slices"

	"traybook/report/words"
)

// recordsPage lists the pages of records.
type recordsPage struct {
	Seasons []seasonRecords
	Files   *table
	Months  []batchList
	Lots    []batchList
	Parts   template.HTML // links to the parts of the lists, where there are several
}

// seasonRecords is a season's crops. Lists leads to its batches by month and by lot, where
// they stand on a page of the season.
type seasonRecords struct {
	ID    string
	Title string
	Table *table
	Lists template.HTML
}

// listBytes is about what a batch takes in the lists by month and by lot together.
const listBytes = 210

// recordsLong reports whether the lists by month and by lot are too long for one page.
func (s *site) recordsLong() bool { return len(s.r.Records)*listBytes > mostBytes }

// recordsView lists the seasons, the latest first, and the logs that were read.
func recordsView(p *page) any {
	v := recordsPage{Files: p.filesTable()}
	long := p.recordsLong()
	if !long {
		v.Months, v.Lots = p.byMonth(p.r.Records), p.byLot(p.r.Records)
	}
	for _, season := range slices.Backward(p.r.Batches.Seasons) {
		of := p.seasonRecords(season)
		if long {
			of.Lists = p.to(seasonLists(season), say("Batches of %s by month sown and by seed lot", words.Year(season)))
		}
		v.Seasons = append(v.Seasons, of)
	}
	return v
}

// seasonRecords is a season's crops, each with its batches.
func (p *page) seasonRecords(season int) seasonRecords {
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
	return seasonRecords{ID: p.id(fmt.Sprint("season-", season)), Title: fmt.Sprint("Season ", season), Table: t}
}

// filesTable says what was read.
func (p *page) filesTable() *table {
	t := p.table("files", "The logs as they were read", "", plain("Log"), nums("Rows", "Left out"))
	for _, f := range p.r.Book.Files {
		t.add(f.Name, words.Whole(f.Rows), words.Whole(f.LeftOut))
	}
	return t
}
