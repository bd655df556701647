package records

import (
	"fmt"
	"slices"
)

// goesOn is the longest break after which a book is taken to go on: bills and readings
// of a winter, between the last date of one season and the first sowing of the next.
const goesOn = 120

// outside is the dates of one column and season that has no sowings.
type outside struct {
	log, col string
	season   int
}

// seasonless gathers the dates in seasons without sowings.
type seasonless struct {
	settings Settings
	sown     map[int]bool  // seasons with sowings
	beyond   map[Date]bool // days before and after those seasons on which the book goes on
	rows     map[outside]int
	first    map[outside]row
	order    []outside
}

// checkSeasons warns, once a column and season, of dates in a season without
// sowings. What belongs to a batch may reach into the year after its sowing,
// the days a cost covers may reach a year from its date, and before the first and
// after the last season the book may go on.
func (l *loader) checkSeasons() {
	seen := seasonless{settings: l.settings, sown: map[int]bool{}, rows: map[outside]int{}, first: map[outside]row{}}
	for e := range alive(l.sowings) {
		seen.sown[l.settings.Season(e.is.Sown)] = true
	}
	if len(seen.sown) == 0 {
		return
	}
	seen.goOn(l.daysOn())
	l.datesSeen(seen.see)
	for _, k := range seen.order {
		found := fmt.Sprintf("%s lies in season %d, which has no sowings", quote(seen.first[k].text(k.col)), k.season)
		if n := seen.rows[k]; n > 1 {
			found += fmt.Sprintf(" (%d rows)", n)
		}
		seen.first[k].doubt("season", k.col, found, "a date in a season with sowings is expected", "is the year right?")
	}
}

// goOn finds the days on which the book goes on without a long break, from the seasons
// with sowings forwards and backwards.
func (s *seasonless) goOn(all []Date) {
	s.beyond = map[Date]bool{}
	in := func(day Date) bool { return s.sown[s.settings.Season(day)] }
	first := slices.IndexFunc(all, in)
	last := len(all) - 1
	for last > 0 && !in(all[last]) {
		last--
	}
	for i := last + 1; i < len(all) && apart(all[i], all[i-1]) <= goesOn; i++ {
		s.beyond[all[i]] = true
	}
	for i := first - 1; i >= 0 && apart(all[i], all[i+1]) <= goesOn; i-- {
		s.beyond[all[i]] = true
	}
}

// see takes one date and the date near which it should be, if any.
func (s *seasonless) see(r row, col string, d, near Date) {
	if !d.Known() || near.Known() && apart(d, near) <= 366 || s.sown[s.settings.Season(d)] || s.beyond[d] {
		return
	}
	k := outside{r.Name, col, s.settings.Season(d)}
	if s.rows[k]++; s.rows[k] == 1 {
		s.first[k] = r
		s.order = append(s.order, k)
	}
}

// datesSeen hands over every date but those of purchases, tests and wishes, with the
// date near which it should be.
func (l *loader) datesSeen(see func(r row, col string, d, near Date)) {
	for e := range alive(l.sowings) {
		see(e.row, "chamber_out", e.is.ChamberOut, e.is.Sown)
		see(e.row, "planned", e.is.Planned, e.is.Sown)
		see(e.row, "set_out", e.is.SetOut, e.is.Sown)
	}
	for r := range l.batchRows() {
		if s := r.sowing; s != nil {
			see(r.row, "date", r.date, s.is.Sown)
		}
	}
	for e := range alive(l.costs) {
		see(e.row, "date", e.is.Date, 0)
		see(e.row, "from", e.is.From, e.is.Date)
		see(e.row, "until", e.is.Until, e.is.Date)
	}
	for e := range alive(l.chamber) {
		see(e.row, "time", e.is.Date, 0)
	}
	for e := range alive(l.house) {
		see(e.row, "date", e.is.Date, 0)
	}
	for e := range alive(l.changes) {
		see(e.row, "date", e.is.Date, 0)
		see(e.row, "until", e.is.Until, e.is.Date)
	}
}
