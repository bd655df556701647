package records

import "fmt"

// outside is the dates of one column and season that has no sowings.
type outside struct {
	log, col string
	season   int
}

// seasonless gathers the dates in seasons without sowings.
type seasonless struct {
	settings Settings
	sown     map[int]bool // seasons with sowings
	rows     map[outside]int
	first    map[outside]*row
	order    []outside
}

// checkSeasons warns, once a column and season, of dates in a season without
// sowings. What belongs to a batch may reach into the year after its sowing,
// and the days a cost covers may reach a year from its date.
func (l *loader) checkSeasons() {
	seen := seasonless{l.settings, map[int]bool{}, map[outside]int{}, map[outside]*row{}, nil}
	for e := range alive(l.sowings) {
		seen.sown[l.settings.Season(e.is.Sown)] = true
	}
	if len(seen.sown) == 0 {
		return
	}
	l.datesSeen(seen.see)
	for _, k := range seen.order {
		found := fmt.Sprintf("%s lies in season %d, which has no sowings", quote(seen.first[k].text(k.col)), k.season)
		if n := seen.rows[k]; n > 1 {
			found += fmt.Sprintf(" (%d rows)", n)
		}
		seen.first[k].problem("season", k.col, found, "a date in a season with sowings is expected", "is the year right?")
	}
}

// see takes one date and the date near which it should be, if any.
func (s *seasonless) see(r *row, col string, d, near Date) {
	if !d.Known() || near.Known() && d-near <= 366 && near-d <= 366 || s.sown[s.settings.Season(d)] {
		return
	}
	k := outside{r.Name, col, s.settings.Season(d)}
	if s.rows[k]++; s.rows[k] == 1 {
		s.first[k] = r
		s.order = append(s.order, k)
	}
}

// datesSeen hands over every date but those of purchases and tests, with the
// date near which it should be.
func (l *loader) datesSeen(see func(r *row, col string, d, near Date)) {
	for e := range alive(l.sowings) {
		see(e.row, "chamber_out", e.is.ChamberOut, e.is.Sown)
		see(e.row, "planned", e.is.Planned, e.is.Sown)
		see(e.row, "set_out", e.is.SetOut, e.is.Sown)
	}
	for _, r := range l.batchRows() {
		if s := l.batch(r.batch); s != nil {
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
}
