package sowing

import (
	"traybook/records"
	"traybook/report/batch"
	"traybook/report/plants"
	"traybook/report/rate"
	"traybook/report/room"
)

// Num is a figure that may be missing (rule "Missing").
type Num = batch.Num

// Whole is a whole number of cells, trays or plants that may be missing.
type Whole = records.Maybe[int]

// Figures is what to sow next season; each table sorted by its key columns.
type Figures struct {
	Sowing  []Row     // by crop, variety, cells, kind
	Balance []Balance // by season, crop
	Wishes  []Wish    // in the order of wishes.csv
	Weeks   []Week    // the room that all wishes would take, by Monday
	Scatter rate.Scatter
}

// Row is how much to sow of a group (rule "How much to sow"). Season is 0: all
// seasons together.
type Row struct {
	batch.Group
	Chance
	Target                   Whole // plants that one sowing is asked for
	CellsToSow, TraysToSow   Whole // for the target
	CellsPer100, TraysPer100 Whole // for 100 plants
	LeftOver                 Num   // plants beyond the target, as a rule
	PlainFails               Num   // chance that 120 cells give fewer than 100 plants
}

// Basis is what the rate of a wish rests on (rule "Wishes"); empty: too few batches.
type Basis string

// The bases, the nearest first.
const (
	OfVariety Basis = "variety in its cells and kind"
	OfCells   Basis = "crop in its cells and kind"
	OfCrop    Basis = "crop"
)

// Wish is a row of wishes.csv and what it takes (rule "Wishes"). records.Wish holds it
// as written: its Tray may be blank, Code is the one taken.
type Wish struct {
	records.Wish
	Chance
	Row   int // of the file, as a spreadsheet counts: the header is row 1
	Code  string
	How   CodeHow
	Basis Basis
	Cells Whole // cells to sow
	Trays Whole
	Seeds Num
	SowBy records.Date
	Free  records.Date // planned + tray_turnaround: the day its trays are free again
}

// Week is the most that all wishes would take of a place on a day of a week, if all
// were sown by their day: of the benches in places, of a tray code in trays.
type Week struct {
	Monday   records.Date
	Place    string // room.BenchName or a tray code
	Kind     room.PlaceKind
	Taken    float64
	Capacity Num // on the first day with so much
}

// Balance is what a crop gave in a season beside what was wanted of it (rule "What to
// sow more of").
type Balance struct {
	Season  int
	Crop    string
	Batches int
	Sums
	Advice Advice
	ByLot  records.Maybe[string] // but for this lot (empty: batches without one) it would be to sow more
}

// New computes what to sow, what the wishes take and what was short.
func New(b *batch.Batches, p *plants.Figures, wishes []records.Wish) *Figures {
	levels := levelsOf(p.Plants, b.Settings.Confidence)
	f := &Figures{Scatter: levels[0].scatter}
	f.Sowing = table(levels[0], b.Settings.SureOfTarget)
	f.Wishes = wishesOf(b, p, wishes, levels)
	f.Weeks = WeeksOf(b, f.Wishes)
	f.Balance = balance(p.Plants, sureLeaves(f.Sowing))
	return f
}
