package germination

import (
	"cmp"

	"traybook/records"
	"traybook/report/batch"
	"traybook/report/rate"
)

// Num is a figure that may be missing.
type Num = batch.Num

// Counts is what the counts of one batch say (rule "Counts").
type Counts struct {
	Rows       []records.Count // those that are used, by date, then tray
	Looked     Num             // cells looked at, tray by tray the last count
	Emerged    Num             // cells with a living seedling at those counts
	EverUp     Num             // cells in which a seedling ever came up, of Looked
	Written    bool            // it has rows in counts.csv, used or not
	Unnumbered bool            // counts without a tray number stood beside numbered ones
	Last       records.Date    // of all its rows, used or not; unknown where there is none

	T50, MeanDays Num // days; batches from seed counted on two or more days (rule "Timing")
	BeforeDay     Num // in place of T50: day of the first count, where more than half stood by then
}

// Counted is a batch and what is known of how it came up.
type Counted struct {
	*batch.Batch
	Counts
	Early        bool // open and counted too early: left out of the figures of emergence (rule "Counted early")
	CountedEarly bool // its last count came before twice the crop's median T50
	Warmed       bool // readings of its chamber stand beside it
}

// Figures is what came up, in all its tables; each sorted by its key columns.
type Figures struct {
	Counted     []*Counted     // in the order of the batches
	MedianT50   map[string]Num // by crop, days
	Scatter     rate.Scatter
	Seasons     map[int]rate.Rate // emergence of a season, all crops together
	Crops       []Emergence       // by season and crop, all its varieties and trays together
	Emergence   []Emergence
	Differences []Difference
	Lots        []Lot
	Timing      []Timing
	Losses      []Loss
	Weeks       []Week
	Chambers    []Chamber
	Climate     []Climate
	Alarms      []Alarm // of all dates
}

// Emergence is the emergence of a group: emerged of cells looked at, batches started
// from seed. Per seed where the group has one number of seeds a cell.
type Emergence struct {
	batch.Group
	rate.Rate
	Trays                       float64 // sown
	LeftOut                     int     // batches from seed without a usable count
	SeedsPerCell                records.Maybe[int]
	SeedRate, SeedLow, SeedHigh Num
}

// Difference is a variety against the other varieties of its crop over the seasons up
// to the one reviewed, as of the round that settled it (rule "Varieties"). Lot is the one
// lot that the verdicts HigherByLot and LowerByLot rest on; empty: none was written.
type Difference struct {
	Season                int
	Crop, Variety         string
	Batches, OtherBatches int
	Difference, Low, High Num
	Verdict               rate.Verdict
	Lot                   string
}

// noLot stands for batches of which no lot is written, taken as one.
const noLot = "none written"

// Words is the verdict, with the lot that it rests on where it rests on one.
func (d Difference) Words() string {
	if d.Verdict != rate.HigherByLot && d.Verdict != rate.LowerByLot {
		return string(d.Verdict)
	}
	return string(d.Verdict) + ": " + cmp.Or(d.Lot, noLot)
}

// Below says whether a lot came up below its packet (rule "Lots"); empty: not compared.
type Below string

// The answers. BelowUnsure: lower than a mix allows, but of too few batches to tell.
const (
	BelowYes    Below = "yes"
	BelowUnsure Below = "unsure"
	BelowNo     Below = "no"
)

// Lot is a seed lot and what came up of it. Lot is its row of lots.csv.
type Lot struct {
	records.Lot
	Sown                        []string           // codes, sorted, of all batches sown from it
	Counted                     int                // of them counted
	Days                        int                // days on which those were sown
	rate.Rate                                      // per cell of what ever came up: X cells of N looked at
	SeedRate, SeedLow, SeedHigh Num                // per seed: what is compared with the packet; only of one seed a cell
	PerCell                     records.Maybe[int] // seeds a cell, where all batches counted have the same
	Label                       Num
	Allowance                   Num
	Minimum                     Num // 7 CFR 201.31, where the setting legal_minimum says so
	Below                       Below
	SeedsBought, SeedsSown      Num  // seeds in hand = the difference
	SeedsGuessed                bool // seeds per gram taken from the trade table
	Cluster                     bool // beet and chard: not compared
}

// Timing is how fast a group came up.
type Timing struct {
	batch.Group
	Batches                     int
	T50, Earliest, Latest, Mean Num // days
	CountedEarly                int // batches whose last count came early
	Before                      int // batches of which more than half stood at the first count: no T50
	BeforeDay                   Num // the latest of those first counts, days
}

// Loss is cells lost by cause (counts.csv: lost, cause), a batch's season.
type Loss struct {
	Season  int
	Crop    string
	Cause   string // empty: none written
	Cells   int
	Batches int
	ByMonth [13]int // cells lost by month of the count, 1-12
}

// Week is the emergence of a crop by ISO week of sowing.
type Week struct {
	Season    int
	Crop      string
	Week      string // 2025-W14
	rate.Rate        // interval by the crop's scatter
	Temp      Num    // mean Celsius in chamber, else house, over the 7 days from sown
	TempOf    string // chamber, house or empty
}

// Chamber is a germination chamber in a season.
type Chamber struct {
	Season                      int
	Chamber                     string
	rate.Rate                   // emergence of batches that stood in it; none where it has no name
	Readings                    int
	MeanTemp, LowTemp, HighTemp Num // Celsius
	DaysIn                      Num // median days in the chamber, of the stays written
	Crops                       []ChamberCrop
}

// ChamberCrop is a crop in a chamber beside the temperatures at which it comes up well
// (trade table).
type ChamberCrop struct {
	Crop                string
	Batches             int
	UsualLow, UsualHigh Num // Celsius
	MeanTemp            Num // over the readings while its batches stood there
	Outside             Num // share of those readings outside the usual range
}

// Climate is what came up of a crop's batches that stood at highs of one band in the
// house, all seasons together (rule "Climate"). Band is its lower end, Celsius, that of
// the first BelowAllBands.
type Climate struct {
	Crop string
	Band int
	rate.Rate
}

// Alarm is a day on which it was too warm or too cold in one place (rule "Alarms").
type Alarm struct {
	Date         records.Date
	Season       int // of the date
	Place        string
	Chamber      string // its name; empty also for the house, and for a chamber without a name
	House        bool
	Value, Limit float64 // Celsius
	High         bool    // above the limit, else below
	Batches      []string
}

// LotWord is the lot that a verdict rests on, or that none was written.
func (d Difference) LotWord() string { return cmp.Or(d.Lot, noLot) }
