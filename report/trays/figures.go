package trays

import (
	"traybook/records"
	"traybook/report/batch"
	"traybook/report/money"
)

// Num is a figure that may be missing.
type Num = batch.Num

// Figures is whether trays pay and how many more to buy, in all tables; each sorted
// by its key columns.
type Figures struct {
	PlantValue map[string]Num // by crop, money: one more usable plant
	Payback    []Payback
	Matches    []Match
	NextTray   []NextTray
	Trial      []Trial
}

// Payback is a pair of tray codes (rule "Pair"): Tray is the dearer. Figures are
// missing where the records cannot tell; Why then says so.
type Payback struct {
	Tray, Other                               string
	Cells                                     int
	Matches, Dates                            int
	Difference, DifferenceLow, DifferenceHigh Num // share of cells sown
	Value                                     Num // money, one more usable plant
	Gain, GainLow, GainHigh                   Num // money a use
	GainTray, GainPlants, GainMinutes         Num // the three parts of Gain
	Price, OtherPrice                         Num
	Life, OtherLife                           money.Life
	Minutes, OtherMinutes                     Num
	UsesPerSeason                             Num
	PaybackUses, PaybackSeasons               Num
	WorthToday                                Num
	BreakEvenPlants                           Num // plants a use
	FlipValue, FlipPrice                      Num
	HalfLifePays                              records.Maybe[bool]
	Verdict                                   PaysVerdict
	AtPlugPrice                               *PlugPrice // the same at plug_price, where given
	MinutesLeftOut                            bool
	Valued                                    int    // matches with a value, which gain rests on
	Why                                       Reason // for missing figures; empty: none is missing
	Buy                                       *Buy
	Uses                                      []float64 // a season, of tray 1, 2, ... of both codes on one row (rule "The next tray")
}

// PlugPrice is the answer with a bought-in transplant's price as value.
type PlugPrice struct {
	Value, Gain, GainLow, GainHigh, PaybackUses, WorthToday Num
	Verdict                                                 PaysVerdict
}

// Buy is how many more trays to buy (rule "How many to buy"): the middle and the two
// ends, unrounded numbers of trays beyond those owned.
type Buy struct {
	Owned, N, Low, High int
	PeakInUse           int // trays of both codes needed at once, in the seasons replayed
	Seasons             []int
}

// PairBuy is how many more trays of a pair to buy "if"; nil where the records
// cannot tell.
type PairBuy struct {
	Tray, Other string
	*Buy
}

// Match is one matched sowing (rule "Matched sowings").
type Match struct {
	Tray, Other        string
	Number             int
	Crop, Variety, Lot string
	SeedsPerCell       int
	FirstSown          records.Date
	LastSown           records.Date
	CellsTray          float64
	UsableTray         float64
	CellsOther         float64
	UsableOther        float64
	Difference         float64 // rate in tray - rate in other
	Value              Num     // of one more usable plant of its crop
	Batches            []string
}

// NextTray is the nth tray of a pair (rule "The next tray").
type NextTray struct {
	Tray, Other             string
	Nth                     int
	Owned                   int
	Uses                    float64 // a season, mean
	PaybackSeasons          Num
	WorthToday              Num
	Pays, PaysLow, PaysHigh records.Maybe[bool]
}

// Trial is a side-by-side trial that would tell a difference (rule "Trial").
type Trial struct {
	Tray, Other string
	Difference  float64 // 0.02, 0.05, 0.10
	S           Num
	Sowings     records.Maybe[int] // sowing dates with one tray of each
}
