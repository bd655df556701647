package report

import (
	"fmt"
	"slices"
	"strings"

	"traybook/records"
)

// Options are what a build may ask for beside the book itself.
type Options struct {
	Today  records.Date // replaces the last date in the book where known
	Season int          // the season reviewed on the front page; 0: the last
	Grow   float64      // every batch's trays times this, on the "if" of the room; 0 or 1: as it is
	Switch []Switch     // tray codes to swap, on the "if" of the room
}

// Switch is one tray code sown in place of another.
type Switch struct{ From, To string }

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
// where the season asked for has no sowing.
func New(book *records.Book, problems []records.Problem, o Options) (*Report, error) {
	r := &Report{Book: book, Problems: problems, Options: o, byCode: map[string]*Batch{}}
	r.batches()
	if err := r.chooseSeason(); err != nil {
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

// chooseSeason lists the seasons and picks the one reviewed.
func (r *Report) chooseSeason() error {
	for _, b := range r.Batches {
		r.Seasons = append(r.Seasons, b.Season)
	}
	slices.Sort(r.Seasons)
	r.Seasons = slices.Compact(r.Seasons)
	r.Season = r.Options.Season
	if r.Season == 0 && len(r.Seasons) > 0 {
		r.Season = r.Seasons[len(r.Seasons)-1]
	}
	if r.Options.Season != 0 && !slices.Contains(r.Seasons, r.Options.Season) {
		return fmt.Errorf("season %d has no sowing in this book; its seasons are %s", r.Options.Season, strings.Trim(fmt.Sprint(r.Seasons), "[]"))
	}
	return nil
}
