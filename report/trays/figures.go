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
	Decisions  []Decision
	BuyIf      []BuyIf
	Matches    []Match
	NextTray   []NextTray
	Trial      []Trial
	LeftOut    int // tray codes beyond MostCodes, which are in no pair
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
	GainTray, GainPlants, GainMinutes         Num // the parts of Gain, and
	GainMix                                   Num // the last: the mix that a use saves, below 0 where it takes more
	Price, OtherPrice                         Num
	Life, OtherLife                           money.Life // rule "Life in a pair"
	OtherRaised                               bool       // the other's life as written is shorter than its trays have stood already
	Minutes, OtherMinutes                     Num
	MixAUse                                   Num // money: the mix that a use takes beyond the other's
	UsesPerSeason                             Num
	PaybackUses, PaybackSeasons               Num
	WorthToday                                Num
	BreakEvenPlants                           Num // plants a use
	Verdict                                   PaysVerdict
	AtPlugPrice                               *PlugPrice    // the same for plants bought in, where that can be shown
	MinutesLeftOut, MixLeftOut                bool          // not counted: not written
	Valued                                    int           // matches with a value, which gain rests on
	Why                                       Reason        // for missing figures; empty: none is missing
	NotCompared                               []NotCompared // sown in the other, and left out of the next tray
	Buy                                       *Buy          // that of the pair's Decision
	Uses                                      []float64     // a season, of tray 1, 2, ... of both codes on one row (rule "The next tray")
}

// PlugPrice is the answer where an extra plant saves buying one in: worth plug_price
// where it fills a gap, and nothing where none is wanted (rule "Value of a plant").
type PlugPrice struct {
	Value                   Num     // plug_price x Gap, money
	Gap                     float64 // share of the extra plants that fill a gap
	Batches                 int     // of the other with plants wanted, which Gap rests on
	Gain, GainLow, GainHigh Num
	PaybackUses, WorthToday Num
	Verdict                 PaysVerdict
}

// NotCompared is a crop without a matched sowing, and its trays sown in the other over
// the seasons gone through (rule "The next tray").
type NotCompared struct {
	Crop  string
	Trays float64
}

// Decision is how many more trays of a pair to buy (rule "How many to buy").
type Decision struct {
	Tray, Other string
	Owned       records.Maybe[int] // trays of the dearer code today; unknown where a count of it is blank
	Why         Reason             // why there is no Buy
	Buy         *Buy               // nil without a gain, or where Owned is unknown
}

// Buy is a number of trays beyond those owned: the middle and the two ends, told as
// they are, and what would flip it.
type Buy struct {
	Owned, N, Low, High int
	PeakInUse           int // trays of both codes needed at once, in the seasons gone through
	Seasons             []int
	Outlay              float64 // N x price
	Worth               float64 // today, of the N trays; at the ends of the gain:
	WorthLow, WorthHigh float64
	OtherLives          []float64 // of the other, in uses, over which Low and High run; as written first
	TurnsOnOtherLife    bool      // the middle is 0 at one of OtherLives and not at another
	First               Flips     // where the answer becomes none
	Last                Flips     // where it becomes fewer; empty where N is below 2
	HalfLifePays        records.Maybe[bool]
}

// Flips is the one value of each thing at which a tray is worth just its price today,
// all else as it is (rule "What would flip it"); missing where there is none.
type Flips struct {
	Price, Value, Life, OtherLife Num // money, money a plant, uses, uses
	LifeSeasons                   Num // Life at that tray's uses a season
}

// BuyIf is how many to buy if the other lasted Factor times as long and a plant were
// worth so much (rule "If").
type BuyIf struct {
	Tray, Other  string
	Factor       float64
	Value        Worth
	Low, N, High int
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
	Trays       int     // of each code on a date: 1 or 4
	S           Num     // standard deviation of a date's difference
	Sowings     records.Maybe[int]
}
