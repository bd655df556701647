package booktest

import (
	"testing"

	"traybook/records"
)

// log is a record book; its rows are fields of Book.
type log = records.Book

// Book is a record book written in Go: each method adds a row and returns it so
// that a test can change it. A row moves when further rows are added: change it at once.
type Book struct {
	testing.TB
	log
}

// New holds two tray codes of 100 cells, AIR and WALL, and the default settings.
func New(t testing.TB) *Book {
	b := &Book{TB: t}
	b.Settings = records.Settings{SeasonStarts: 1, UsableFrom: 3, Confidence: 0.95, SureOfTarget: 0.9, HeatingFrom: 10, HeatingUntil: 4, TrayTurnaround: 3}
	b.Tray("AIR", "air-pruning", 100)
	b.Tray("WALL", "solid-wall", 100)
	return b
}

// Book returns the record book itself.
func (b *Book) Book() *records.Book { return &b.log }

// Day reads an ISO date.
func (b *Book) Day(s string) records.Date {
	b.Helper()
	return Day(b, s)
}

// Day reads an ISO date.
func Day(t testing.TB, s string) records.Date {
	t.Helper()
	d, ok := records.ParseISO(s)
	if !ok {
		t.Fatalf("no date: %q", s)
	}
	return d
}

// Tray adds a purchase of a tray code without a date, count or price.
func (b *Book) Tray(code, kind string, cells int) *records.Purchase {
	return add(&b.Trays, records.Purchase{Tray: code, Kind: kind, Cells: cells})
}

// Sow adds a batch sown from seed, one a cell.
func (b *Book) Sow(code, sown, crop, variety, tray string, trays float64) *records.Sowing {
	b.Helper()
	return add(&b.Sowings, records.Sowing{Code: code, Sown: b.Day(sown), Crop: crop, Variety: variety, Tray: tray, Trays: trays,
		SeedsPerCell: 1, Start: records.FromSeed})
}

// Leave sets out a batch just added, with plants out and surplus.
func (b *Book) Leave(s *records.Sowing, date string, out, surplus int) {
	b.Helper()
	s.SetOut, s.PlantsOut, s.Surplus = b.Day(date), records.Known(out), records.Known(surplus)
}

// Count adds a count of all of a batch, or of as many cells as the test writes.
func (b *Book) Count(batch, date string, emerged int) *records.Count {
	b.Helper()
	return add(&b.Counts, records.Count{Batch: b.Ref(batch), Date: b.Day(date), Emerged: records.Known(int32(emerged))})
}

// CountsOf adds the counts of another book so many days later, as those of batches with a
// word before their codes.
func (b *Book) CountsOf(other *records.Book, before string, days records.Date) {
	for _, c := range other.Counts {
		said := other.Said(&c)
		c.Batch, c.Date = b.Ref(before+other.Code(c.Batch)), c.Date+days
		b.Say(&c, said)
		b.Counts = append(b.Counts, c)
	}
}

// CountTray adds a count of one tray of a batch.
func (b *Book) CountTray(batch, date string, tray, emerged int) *records.Count {
	b.Helper()
	c := b.Count(batch, date, emerged)
	c.Tray = records.Known(int32(tray))
	return c
}

// Look adds a look at the quality of a batch.
func (b *Book) Look(batch, date string, looked, usable int) *records.Score {
	b.Helper()
	return add(&b.Scores, records.Score{Batch: batch, Date: b.Day(date), Looked: records.Known(int32(looked)), Usable: records.Known(int32(usable))})
}

// Out adds a row of what left a batch; last clears it.
func (b *Book) Out(batch, date string, plants int, to records.Destination, last bool) *records.Out {
	b.Helper()
	return add(&b.Outs, records.Out{Batch: batch, Date: b.Day(date), Plants: plants, To: to, Last: last})
}

// Lot adds a seed lot with the share of seeds that its packet promises.
func (b *Book) Lot(code, crop string, label float64) *records.Lot {
	return add(&b.Lots, records.Lot{Code: code, Crop: crop, GermLabel: records.Known(label)})
}

// Reading adds a temperature read in a chamber, Celsius.
func (b *Book) Reading(chamber, date string, temp float64) *records.ChamberReading {
	b.Helper()
	return add(&b.Chamber, records.ChamberReading{Chamber: chamber, Date: b.Day(date), Temp: temp})
}

// Cost adds a bill; each of with changes one thing about it.
func (b *Book) Cost(date string, c records.Category, amount float64, with ...func(*records.Cost)) *records.Cost {
	b.Helper()
	return add(&b.Costs, Row(b, date, c, amount, with...))
}

// Row is a bill that stands in no book yet.
func Row(t testing.TB, date string, c records.Category, amount float64, with ...func(*records.Cost)) records.Cost {
	t.Helper()
	cost := records.Cost{Date: Day(t, date), Category: c, Amount: records.Known(amount)}
	for _, w := range with {
		w(&cost)
	}
	return cost
}

// add appends a row and returns its place.
func add[T any](rows *[]T, row T) *T {
	*rows = append(*rows, row)
	return &(*rows)[len(*rows)-1]
}
