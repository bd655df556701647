package report

import (
	"traybook/records"
	"traybook/report/estimate"
)

// PaysVerdict says whether a tray pays (rule 31), in words; empty: unknown.
type PaysVerdict string

// The verdicts of rule 31.
const (
	PaysLow    PaysVerdict = "pays even at the low end"
	PaysMiddle PaysVerdict = "pays in the middle of what the records show"
	PaysHigh   PaysVerdict = "pays only at the high end"
	PaysNever  PaysVerdict = "pays not at all"
)

// Reason says why a pair has no gain, or no verdict; the pages put it in words.
type Reason string

// The reasons, in the order in which they are looked for.
const (
	NoMatches   Reason = "no matched sowings"
	FewMatches  Reason = "too few matched sowings"    // fewer than EnoughMatches
	FewDates    Reason = "too few sowing dates"       // on fewer than EnoughDates
	NoValue     Reason = "value of a plant unknown"   // no transplant_value and no cost for any of its crops
	NoOtherLife Reason = "life of the other unknown"  // its uses not written, and it was not used
	FewValues   Reason = "too few matches with value" // one: a middle without a range
	NoLife      Reason = "life of the tray unknown"   // its uses not written, and it was not used
)

// EnoughMatches and EnoughDates are the fewest matches, on so many first dates, that
// tell anything (rule 29).
const (
	EnoughMatches = 4
	EnoughDates   = 3
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
	Valued                                    int    // matches with a value, which gain rests on
	Why                                       Reason // for missing figures; empty: none is missing
	Buy                                       *Buy
	Uses                                      []float64 // a season, of tray 1, 2, ... of both codes on one row (rule 33)
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

// payback computes a pair's figures: price, life and minutes always, the others
// where there are matches enough.
func (p *accounts) payback(pr *pair) Payback {
	tray, other := pr.tray, pr.other
	back := Payback{Tray: tray.code, Other: other.code, Cells: tray.cells, Matches: len(pr.matches), Dates: pr.firstDates(),
		Price: tray.price, OtherPrice: other.price, Life: tray.life, OtherLife: other.life, Minutes: tray.minutes,
		OtherMinutes: other.minutes, UsesPerSeason: tray.life.UsesPerSeason, Why: pr.enough()}
	_, minutes := p.extraMinutes(pr)
	back.MinutesLeftOut = !minutes.Known
	if back.Why == "" {
		p.fromMatches(&back, pr)
	}
	return back
}

// fromMatches fills what rests on the matches.
func (p *accounts) fromMatches(back *Payback, pr *pair) {
	paired, _ := estimate.PairedMean(pr.differences(), p.r.Book.Settings.Confidence)
	back.Difference, back.DifferenceLow, back.DifferenceHigh = records.Known(paired.Mean), records.Known(paired.CI.Low), records.Known(paired.CI.High)
	back.Value, back.Valued = meanValue(pr.matches)
	g := p.gain(pr, pr.inMoney(Num{}))
	back.GainTray, back.GainPlants, back.GainMinutes = g.tray, g.plants, g.minutes
	back.Gain, back.GainLow, back.GainHigh = g.mid, g.low, g.high
	back.PaybackUses = ratio(back.Price, g.mid)
	back.PaybackSeasons = ratio(back.PaybackUses, back.UsesPerSeason)
	back.WorthToday = p.worthToday(back.Price, g.mid, back.UsesPerSeason, back.Life.Seasons)
	back.Verdict = paysVerdict(back.Price, back.Life.Uses, g)
	back.Why = whyNot(back)
	p.flips(back, pr)
	back.AtPlugPrice = p.atPlugPrice(back, pr)
}

// whyNot names the first gap behind a missing gain or verdict.
func whyNot(back *Payback) Reason {
	switch {
	case back.Valued == 0:
		return NoValue
	case !back.OtherLife.Uses.Known:
		return NoOtherLife
	case !back.Life.Uses.Known:
		return NoLife
	case !back.GainLow.Known:
		return FewValues
	}
	return ""
}

// meanValue is the mean over the matches with a value, and their number (rule 65).
func meanValue(matches []Match) (Num, int) {
	total, n := 0.0, 0
	for _, m := range matches {
		if m.Value.Known {
			total += m.Value.Value
			n++
		}
	}
	return ratio(records.Known(total), records.Known(float64(n))), n
}
