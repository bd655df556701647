package plants

import (
	"traybook/records"
	"traybook/report/batch"
	"traybook/report/germination"
	"traybook/report/rate"
)

// Num is a figure that may be missing.
type Num = batch.Num

// How says where a batch's usable plants come from (rule "Usable plants").
type How string

// The sources of usable plants, best first; empty: unknown.
const (
	ByOut     How = "out"
	ByCount   How = "counted"
	AtLeast   How = "at least"
	Estimated How = "estimated"
)

// Seen is what the logs say of one batch's plants: its looks and what left the house.
// (Looked, beside PlantsLooked, is the cells looked at in its counts.)
type Seen struct {
	Looks        []*records.Score // its rows of scores.csv in the book, by date, marks included
	PlantsLooked Num              // plants looked at in its latest look (rule "Looks")
	PlantsFit    Num              // of them fit to set out
	WrittenOut   float64          // plants written as gone or left over so far, not dead
	FieldOut     Num              // plants out to the field, where written
	OutWritten   bool             // plants gone are written, be it 0: plants_out or an out row not of dead ones
	HasOuts      bool             // it has rows in out.csv
	allOut       bool             // every plant out and what was left over is written
	Cleared      records.Date     // the date of its out row with last = yes
	lastWritten  records.Date     // latest date of a look, an out row, chamber_out or set_out
	days         []lookDay        // its looks by date, those of a day added up
}

// Plants is a batch, how it came up and its plants.
type Plants struct {
	*germination.Counted
	*Seen
	Usable    Num // plants (rule "Usable plants")
	UsableHow How
	Capped    bool // more usable plants written than cells sown: kept at those
}

// Figures is quality and usable plants in all tables; each sorted by its key columns.
type Figures struct {
	Plants         []*Plants // in the order of the batches
	UsableScatter  rate.Scatter
	QualityScatter rate.Scatter
	Quality        []Quality
	QualityCrops   []Quality         // by season and crop, all its varieties and trays together
	QualitySeasons map[int]rate.Rate // of a season, all crops together
	Leeway         []Leeway
	Fits           []Fit // the words of Leeway, by crop and kind
	Usable         []Usable
	UsableCrops    []Usable          // as QualityCrops
	UsableSeasons  map[int]rate.Rate // as QualitySeasons
	BookUsable     Num               // the book's usable rate over measured batches with cells
}

// Quality is the usable share of the latest looks of a group.
type Quality struct {
	batch.Group
	rate.Rate        // usable of looked
	S         [5]Num // plants at each score, where scored so
	Marks     int    // looks with only an overall mark: shown, never a share
}

// Leeway is the usable share of looks by days past the planned date.
type Leeway struct {
	Crop     string // empty: all crops
	Kind     string
	DaysLate int // the band's first day: 0, 1, 4, 8, 15
	rate.Rate
}

// Usable is the usable rate of a group: usable plants of cells sown over its batches
// with usable by out or counted.
type Usable struct {
	batch.Group
	rate.Rate
	LeftOut int
}

// AllOut reports whether every plant out and what was left over is written, so that no
// look is needed to know what a batch gave.
func (s *Seen) AllOut() bool { return s.allOut }

// Measured reports whether the batch's usable plants may enter rates.
func (p *Plants) Measured() bool { return p.UsableHow == ByOut || p.UsableHow == ByCount }

// EntersUsable reports whether the batch enters usable rates: measured, its cells known.
func (p *Plants) EntersUsable() bool { return p.Measured() && p.CellsSown.Or(0) > 0 }
