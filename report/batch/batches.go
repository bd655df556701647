package batch

import (
	"iter"
	"slices"
	"strings"

	"traybook/records"
)

// Batches is every batch of a book, in order of code, and the days, seasons and tray
// codes that they stand in. It is made once and never changed.
type Batches struct {
	Settings records.Settings
	Today    records.Date // rule "Today"
	List     []*Batch     // by code
	Seasons  []int        // seasons with sowings, ascending
	Stays    Stays
	Codes    Codes
}

// New settles the end of every batch that was sown. sown stands in the order of
// codes, as Sowings gives it, and so do traces.
func New(book *records.Book, sown []Sowing, traces []Trace, today records.Date) *Batches {
	all := &Batches{Settings: book.Settings, Today: today, Codes: codesOf(book.Trays)}
	all.List, all.Stays = settle(sown, traces, today)
	for i, b := range all.List {
		if i == 0 || b.Season != all.List[i-1].Season {
			all.Seasons = append(all.Seasons, b.Season)
		}
	}
	slices.Sort(all.Seasons)
	all.Seasons = slices.Compact(all.Seasons)
	return all
}

// Of returns the batch with a code, or nil.
func (a *Batches) Of(code string) *Batch {
	nth, found := slices.BinarySearchFunc(a.List, code, func(b *Batch, code string) int { return strings.Compare(b.Code, code) })
	if !found {
		return nil
	}
	return a.List[nth]
}

// lastDays is how long before its last day, both counted, a season may be finished:
// days, a choice of ours (rule "Seasons").
const lastDays = 90

// Finished reports whether a season is finished (rule "Seasons").
func (a *Batches) Finished(season int) bool {
	_, after := a.Settings.SeasonDays(season)
	if a.Today >= after {
		return true
	}
	return a.Today >= after-lastDays && !slices.ContainsFunc(a.List, func(b *Batch) bool {
		return b.Season == season && b.EndHow == Open
	})
}

// AtHand returns the season at hand: today's where anything was sown in it, else the
// last sown in (rule "Seasons"); ok is false where nothing was ever sown.
func (a *Batches) AtHand() (season int, ok bool) {
	if today := a.Settings.Season(a.Today); slices.Contains(a.Seasons, today) {
		return today, true
	}
	if len(a.Seasons) == 0 {
		return 0, false
	}
	return a.Seasons[len(a.Seasons)-1], true
}

// FinishedSeasons returns the last n seasons that are finished, ascending; the
// season at hand where none is (rule "Seasons").
func (a *Batches) FinishedSeasons(n int) []int {
	finished := Filter(a.Seasons, a.Finished)
	if season, sown := a.AtHand(); sown && len(finished) == 0 {
		finished = []int{season}
	}
	return last(finished, n)
}

// last returns the last n of a list, or all.
func last[T any](xs []T, n int) []T { return xs[max(0, len(xs)-n):] }

// Through yields the seasons from the first to the last sowing's, those without a
// sowing too.
func (a *Batches) Through() iter.Seq[int] {
	return func(yield func(int) bool) {
		for i := 0; len(a.Seasons) > 0 && i <= a.Seasons[len(a.Seasons)-1]-a.Seasons[0]; i++ {
			if !yield(a.Seasons[0] + i) {
				return
			}
		}
	}
}

// LastDate is the latest sown, chamber_out, set_out, out, count or score date of a
// book (rule "Today"); unknown where there is none.
func LastDate(book *records.Book) records.Date {
	var last records.Date
	for _, s := range book.Sowings {
		last = max(last, s.Sown, s.ChamberOut, s.SetOut)
	}
	for _, o := range book.Outs {
		last = max(last, o.Date)
	}
	for _, c := range book.Counts {
		last = max(last, c.Date)
	}
	for _, s := range book.Scores {
		last = max(last, s.Date)
	}
	return last
}
