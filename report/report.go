package report

import "traybook/records"

// Report is every figure of a book. Slices are sorted by their key columns.
type Report struct {
	Book     *records.Book
	Problems []records.Problem // of the logs and of the figures
	Options  Options
	Seasons  []int // seasons with sowings, ascending
	Season   int   // the season reviewed on the front page
	LastDate records.Date
	Inputs   []records.Input // settings, then computed values
	Batches  []*Batch        // by batch code

	Emergence   []Emergence
	Differences []Difference
	Lots        []LotFigure
	Timing      []Timing
	Losses      []Loss
	Weeks       []SowingWeek
	Chambers    []ChamberFigure
	Quality     []Quality
	Leeway      []Leeway
	Usable      []Usable
	Cost        []Cost
	Ledger      []LedgerLine
	Payback     []Payback
	Matches     []Match
	NextTray    []NextTray
	Trial       []Trial
	Room        []Room
	InUse       []InUse
	Week        []WeekLine
	If          *If // the "if" of Options.Grow and Options.Switch, else nil
	Missing     []Missing

	byCode      map[string]*Batch
	stayOf      map[string]cropStay // by crop (rules 4, 61)
	medianT50   map[string]Num      // by crop, days (rules 15, 40, 56)
	plantValue  map[string]Num      // by crop, money: one more usable plant (rule 30)
	scatters    [3]scatterBook      // by measure (rule 43)
	hasCategory map[records.Category]bool
}

// Batch returns the batch with a code, or nil.
func (r *Report) Batch(code string) *Batch { return r.byCode[code] }

// Finished reports whether a season is finished (rule 41).
func (r *Report) Finished(season int) bool {
	_, after := r.Book.Settings.SeasonDays(season)
	if r.LastDate >= after {
		return true
	}
	for _, b := range r.Batches {
		if b.Season == season && b.EndHow == Open {
			return false
		}
	}
	return true
}

// Missing is something the records cannot tell: what is missing, how many batches
// it touches, what that costs the review, and what to write down.
type Missing struct {
	What    string   // in a grower's words: "date set out"
	Batches []string // codes of the batches it touches, sorted; may be empty
	Costs   string   // what the gap takes away
	Remedy  string   // which column of which log to fill
}

// New computes the report of a book. Problems found while reading the logs are
// carried through to the pages. The order of the book's rows changes no figure,
// but that of several counts of one day the last row stands (rule 9). It fails
// where an option does not fit the book.
func New(book *records.Book, problems []records.Problem, o Options) (*Report, error) {
	r := &Report{Book: book, Problems: problems, Options: o, byCode: map[string]*Batch{}}
	r.batches()
	if err := r.takeOptions(); err != nil {
		return nil, err
	}
	r.germination()
	r.plants()
	r.money()
	r.room()
	r.week()
	r.inputs()
	r.missing()
	return r, nil
}
