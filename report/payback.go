package report

import "traybook/records"

// PaysVerdict says whether a tray pays (rule 31), in words; empty: unknown.
type PaysVerdict string

// The verdicts of rule 31.
const (
	PaysLow    PaysVerdict = "pays even at the low end"
	PaysMiddle PaysVerdict = "pays in the middle of what the records show"
	PaysHigh   PaysVerdict = "pays only at the high end"
	PaysNever  PaysVerdict = "does not pay"
)

// Payback is a pair of tray codes of the same cells and different kind: Tray is
// the dearer (rules 28-32, 51, 65). Figures are missing where the records cannot
// tell; Why then says so.
type Payback struct {
	Tray, Other                               string
	Cells                                     int
	Matches, Dates                            int
	Difference, DifferenceLow, DifferenceHigh Num // share of cells sown
	Value                                     Num // money, one more usable plant
	Gain, GainLow, GainHigh                   Num // money a use
	GainTray, GainPlants, GainMinutes         Num // the three parts of Gain
	Price, OtherPrice                         Num
	Life, OtherLife                           Life
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
	Why                                       string // reason for missing figures, a sentence
	Buy                                       *Buy
}

// PlugPrice is the answer with a bought-in transplant's price as value.
type PlugPrice struct {
	Value, Gain, GainLow, GainHigh, PaybackUses, WorthToday Num
	Verdict                                                 PaysVerdict
}

// Life is the life of a tray code (rules 24, 54).
type Life struct {
	Uses, Seasons Num
	UsesPerSeason Num
	Assumed       bool // neither lasts nor uses written: 1 season
}

// Buy is how many more trays to buy (rule 33): the middle and the two ends,
// unrounded numbers of trays beyond those owned.
type Buy struct {
	Owned, N, Low, High int
	PeakInUse           int // trays of both codes needed at once, in the seasons replayed
	Seasons             []int
}

// Match is one matched sowing (rule 29).
type Match struct {
	Tray, Other        string
	Number             int
	Crop, Variety, Lot string
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

// NextTray is the nth tray of a pair (rule 33, 66).
type NextTray struct {
	Tray, Other             string
	Nth                     int
	Owned                   int
	Uses                    float64 // a season, mean
	PaybackSeasons          Num
	WorthToday              Num
	Pays, PaysLow, PaysHigh records.Maybe[bool]
}

// Trial is a side-by-side trial that would tell a difference (rule 35).
type Trial struct {
	Tray, Other string
	Difference  float64 // 0.02, 0.05, 0.10
	S           Num
	Sowings     records.Maybe[int] // sowing dates with one tray of each
}
