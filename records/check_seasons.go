package records

import "fmt"

// outside is the dates of one column and season that has no sowings.
type outside struct {
	log, col string
	season   int
}

// checkSeasons warns, once a column and season, of dates in a season without
// sowings. What belongs to a batch may reach into the year after its sowing,
// and the days a cost covers may reach a year from its date.
func (l *loader) checkSeasons() {
	sown := map[int]bool{}
	for e := range alive(l.sowings) {
		sown[l.settings.Season(e.is.Sown)] = true
	}
	if len(sown) == 0 {
		return
	}
	rows := map[outside]int{}
	first := map[outside]*row{}
	var order []outside
	see := func(r *row, col string, d, near Date) {
		season := l.settings.Season(d)
		if !d.Known() || near.Known() && d-near <= 366 && near-d <= 366 || !near.Known() && sown[season] || near.Known() && sown[season] && col != "from" && col != "until" {
			return
		}
		k := outside{r.Name, col, season}
		if rows[k]++; rows[k] == 1 {
			first[k] = r
			order = append(order, k)
		}
	}
	l.datesSeen(see)
	for _, k := range order {
		found := fmt.Sprintf("%s lies in season %d, which has no sowings", quote(first[k].text(k.col)), k.season)
		if n := rows[k]; n > 1 {
			found += fmt.Sprintf(" (%d rows)", n)
		}
		first[k].problem("season", k.col, found, "a date in a season with sowings is expected", "is the year right?")
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
