package report

import "traybook/records"

// Emergence is the emergence of a group (rules 10-12): emerged of cells looked
// at, batches started from seed. Per seed (rule 11) where the group has one
// number of seeds a cell.
type Emergence struct {
	Group
	Rate
	Trays                       float64 // sown
	LeftOut                     int     // batches from seed without a usable count
	SeedsPerCell                records.Maybe[int]
	SeedRate, SeedLow, SeedHigh Num
}

// Difference is a variety against the other varieties of its crop over the
// seasons up to the one reviewed (rule 57).
type Difference struct {
	Season                int
	Crop, Variety         string
	Batches, OtherBatches int
	Difference, Low, High Num
	Verdict               Verdict
}

// LotFigure is a seed lot and what came up of it (rules 14, 58).
type LotFigure struct {
	Lot                         records.Lot
	Batches                     []string // codes, sorted, of all batches sown from it
	Counted                     int      // of them counted
	Rate                                 // per cell of what ever came up: X cells of N looked at
	SeedRate, SeedLow, SeedHigh Num      // per seed: what is compared with the packet
	SeedsPerCell                records.Maybe[int]
	Label                       Num
	Allowance                   Num
	Minimum                     Num // 7 CFR 201.31
	Below                       records.Maybe[bool]
	SeedsBought, SeedsSown      Num  // seeds in hand = the difference
	SeedsGuessed                bool // seeds per gram taken from the trade table
	Cluster                     bool // beet and chard: not compared
}

// Gap is how far a lot's seed came up below its packet, for ranking lots. Missing
// where it says little of the seed: no packet or no count, seed balls, and, unless
// the lot is flagged, several seeds to a cell, where one failed cell counts for all.
func (l LotFigure) Gap() Num {
	several := l.SeedsPerCell.Or(1) > 1 && !l.Below.Or(false)
	if !l.Label.Known || !l.SeedRate.Known || l.Cluster || several {
		return Num{}
	}
	return records.Known(l.Label.Value - l.SeedRate.Value)
}

// Timing is how fast a group came up (rules 15, 64).
type Timing struct {
	Group
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

// SowingWeek is the emergence of a crop by ISO week of sowing.
type SowingWeek struct {
	Season int
	Crop   string
	Week   string // 2025-W14
	Rate          // no interval
	Temp   Num    // mean Celsius in chamber, else house, from sowing until 7 days after
	TempOf string // chamber, house or empty
}

// ChamberFigure is a germination chamber in a season.
type ChamberFigure struct {
	Season                      int
	Chamber                     string
	Rate                        // emergence of batches that stood in it
	Readings                    int
	MeanTemp, LowTemp, HighTemp Num // Celsius
	DaysIn                      Num // median days in the chamber
	Crops                       []ChamberCrop
}

// ChamberCrop is a crop in a chamber beside its usual range (trade table).
type ChamberCrop struct {
	Crop                string
	Batches             int
	UsualLow, UsualHigh Num // Celsius
	MeanTemp            Num // over the readings while its batches stood there
	Outside             Num // share of those readings outside the usual range
}
