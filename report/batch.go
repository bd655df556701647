package report

import "traybook/records"

// Num is a figure that may be missing (rule 48: missing, never 0).
type Num = records.Maybe[float64]

// EndHow says how the end of a batch is known (rule 4).
type EndHow string

// The ways in which a batch ended.
const (
	Written EndHow = "written"
	Assumed EndHow = "assumed"
	Open    EndHow = "open"
)

// UsableHow says where a batch's usable plants come from (rule 18).
type UsableHow string

// The sources of usable plants, best first; empty: unknown.
const (
	ByOut     UsableHow = "out"
	ByCount   UsableHow = "counted"
	AtLeast   UsableHow = "at least"
	Estimated UsableHow = "estimated"
)

// Batch is one sowing with everything known of it.
type Batch struct {
	records.Sowing
	Season    int
	TrayCells records.Maybe[int] // cells of one tray of its code
	Kind      string             // of its tray code; empty: unknown
	CellML    Num
	CellsSown records.Maybe[int] // rule 2
	FromSeed  bool               // start seed and no From (rule 53)
	SeedsSown Num                // rule 53

	End      records.Date // first day on which it no longer stands
	EndHow   EndHow
	TrayDays float64 // rule 4

	Counts  []records.Count // its counts that are used, by date, then tray
	Looked  Num             // cells looked at, tray by tray the last count (rule 9)
	Emerged Num             // cells with a living seedling at those counts
	EverUp  Num             // cells in which a seedling ever came up, of Looked
	Early   bool            // open and counted too early: left out of rules 10-14, not counted (rule 56)

	T50, MeanDays Num  // days; batches from seed counted on two or more days (rules 15, 64)
	BeforeDay     Num  // in place of T50: day of the first count, where more than half stood by then
	CountedEarly  bool // its last count came before twice the crop's median T50 (rule 15)

	Looks       []records.Score // its rows of scores.csv, by date, marks included
	QualityOf   Num             // plants looked at in its latest look (rule 16)
	QualityGood Num             // of them fit to set out

	WrittenOut float64 // plants written as gone out or left over so far, not dead
	OutWritten bool    // any such figure is written, be it 0
	FieldOut   Num     // plants out to the field, where written
	Usable     Num
	UsableHow  UsableHow
	Capped     bool // more usable plants written than cells sown: held at those (rule 18)

	Parts         Parts   // what it bears, by category; Carried is cost taken over or handed on
	Cost          Num     // total; missing where the book has no cost at all
	PlantsMoved   float64 // plants of it that were potted on (taken off usable in cost figures)
	PerTransplant Num

	everCounted bool         // it has rows in counts.csv, used or not
	unnumbered  bool         // counts without a tray number stood beside numbered ones
	warmed      bool         // readings of its chamber stand beside it
	hasOuts     bool         // it has rows in out.csv
	cleared     records.Date // the date of its out row with last = yes
	lastWritten records.Date // its latest written date (rule 61)
	looks       []lookDay    // its looks, those of a day added up
	countSeries []series     // its counts, tray by tray
}

// Group is the key of most tables. Cells is unknown where the tray code is.
type Group struct {
	Season        int
	Crop, Variety string
	Cells         records.Maybe[int]
	Kind          string
}

// Group returns the batch's group (rule 10).
func (b *Batch) Group() Group {
	return Group{b.Season, b.Crop, b.Variety, b.TrayCells, b.Kind}
}

// Ended reports whether the batch has a written or assumed end (rule 60).
func (b *Batch) Ended() bool { return b.EndHow != Open }

// Emergence is the share of cells looked at with a living seedling at the last
// count (rule 9); missing where it was not counted. Where Early is set the count
// is shown but enters no other figure.
func (b *Batch) Emergence() Num {
	if !b.Looked.Known || b.Looked.Value == 0 {
		return Num{}
	}
	return records.Known(b.Emerged.Value / b.Looked.Value)
}

// entersEmergence reports whether the batch enters the figures of emergence (rules 10-14).
func (b *Batch) entersEmergence() bool {
	return b.FromSeed && !b.Early && b.Looked.Known && b.Looked.Value > 0
}

// Measured reports whether the batch's usable plants may enter rates (rule 18).
func (b *Batch) Measured() bool { return b.UsableHow == ByOut || b.UsableHow == ByCount }
