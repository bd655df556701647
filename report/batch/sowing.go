package batch

import (
	"slices"
	"strings"

	"traybook/records"
)

// Num is a figure that may be missing (rule "Missing").
type Num = records.Maybe[float64]

// Sowing is what a sowing, a row of the book, and its tray code alone tell of a batch. Nth
// is its place in the order of codes, in which every stage keeps its records of the batches.
type Sowing struct {
	*records.Sowing
	Nth       int
	Season    int
	TrayCells records.Maybe[int] // cells of one tray of its code
	Kind      string             // of its tray code; empty: unknown
	CellML    Num                // volume of a cell, millilitres
	CellsSown records.Maybe[int] // rule "Cells sown"
	FromSeed  bool               // rule "From seed"
	SeedsSown Num                // rule "From seed"
	Ranks     Ranks
}

// Sowings returns what was sown, by code (rule "Ties"). All later sums run in this
// order, so that the order of a log's rows changes no digit.
func Sowings(book *records.Book) []Sowing {
	codes := agreed(book.Trays)
	rows := make([]*records.Sowing, len(book.Sowings))
	for i := range book.Sowings {
		rows[i] = &book.Sowings[i]
	}
	slices.SortStableFunc(rows, func(a, b *records.Sowing) int { return strings.Compare(a.Code, b.Code) })
	all, ranked, seasons := make([]Sowing, len(rows)), make([]*Sowing, len(rows)), seasonsOf(book.Settings)
	for i, s := range rows {
		all[i] = sownOf(s, codes[s.Tray], seasons(s.Sown))
		all[i].Nth, ranked[i] = i, &all[i]
	}
	Rank(ranked)
	return all
}

// seasonsOf tells the season of one day after another, most of which are of one.
func seasonsOf(settings records.Settings) func(records.Date) int {
	var season int
	var first, after records.Date
	return func(d records.Date) int {
		if d < first || d >= after {
			season = settings.Season(d)
			first, after = settings.SeasonDays(season)
		}
		return season
	}
}

// CodesOf are the codes of sowings.
func CodesOf(sown []Sowing) []string {
	codes := make([]string, len(sown))
	for i := range sown {
		codes[i] = sown[i].Code
	}
	return codes
}

// agreed returns what every purchase of a tray code agrees on (rule "Tray codes").
func agreed(rows []records.Purchase) map[string]*records.Purchase {
	codes := map[string]*records.Purchase{}
	for _, row := range rows {
		code := codes[row.Tray]
		if code == nil {
			code = &row
			codes[row.Tray] = code
		}
		if !code.CellML.Known {
			code.CellML = row.CellML
		}
	}
	return codes
}

// sownOf reads one sowing; code is nil where trays.csv lacks it.
func sownOf(s *records.Sowing, code *records.Purchase, season int) Sowing {
	if code == nil {
		code = &records.Purchase{}
	}
	b := Sowing{Sowing: s, Season: season, Kind: code.Kind, CellML: code.CellML, CellsSown: records.CellsSown(*s, code.Cells)}
	if code.Cells > 0 {
		b.TrayCells = records.Known(code.Cells)
	}
	b.FromSeed = s.Start == records.FromSeed && s.From == ""
	switch {
	case !b.FromSeed:
		b.SeedsSown = records.Known(0.0)
	case b.CellsSown.Known:
		b.SeedsSown = records.Known(float64(b.CellsSown.Value * s.SeedsPerCell))
	}
	return b
}

// CellsOfTray returns what tray k of the batch holds, 0 where that is unknown.
func (s *Sowing) CellsOfTray(k int) int {
	if !s.TrayCells.Known {
		return 0
	}
	return records.CellsOfTray(*s.Sowing, s.TrayCells.Value, k)
}
