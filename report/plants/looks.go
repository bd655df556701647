package plants

import (
	"cmp"
	"slices"

	"traybook/records"
	"traybook/report/rate"
)

// lookDay is a batch's looks of one day, added up. scores are plants at each score
// from 1 to 5, where scored so.
type lookDay struct {
	date        records.Date
	looked, fit float64
	scores      [5]float64
	scored      bool
}

// readScores takes a batch's rows of scores.csv (rule "Looks"), a list that it keeps. A
// row with only an overall mark is no look; its date counts all the same. Its days stand
// behind those of other batches, in one list that is returned.
func (s *Seen) readScores(rows []*records.Score, usableFrom int, days []lookDay) []lookDay {
	s.Looks, s.days = rows, days[len(days):]
	slices.SortStableFunc(s.Looks, func(x, y *records.Score) int {
		return cmp.Or(cmp.Compare(x.Date, y.Date), cmp.Compare(x.Line, y.Line))
	})
	for _, row := range s.Looks {
		s.lastWritten = max(s.lastWritten, row.Date)
		s.addLook(row, usableFrom)
	}
	if n := len(s.days); n > 0 {
		s.PlantsLooked, s.PlantsFit = records.Known(s.days[n-1].looked), records.Known(s.days[n-1].fit)
	}
	days = days[:len(days)+len(s.days)]
	s.days = slices.Clip(s.days)
	return days
}

// addLook adds a row to the looks of its day, the latest so far.
func (s *Seen) addLook(row *records.Score, usableFrom int) {
	looked, fit, scored := lookOf(row, usableFrom)
	if !(looked > 0) {
		return
	}
	if n := len(s.days); n == 0 || s.days[n-1].date != row.Date {
		s.days = append(s.days, lookDay{date: row.Date})
	}
	d := &s.days[len(s.days)-1]
	d.looked, d.fit, d.scored = d.looked+looked, d.fit+fit, d.scored || scored
	for i, plants := range row.S {
		d.scores[i] += float64(plants.Or(0))
	}
}

// lookOf reads plants looked at and those fit to set out off a row: written so, or
// the plants at each score, a blank score among written ones holding none. looked
// is 0 for a row that is no look.
func lookOf(row *records.Score, usableFrom int) (looked, fit float64, scored bool) {
	for i, plants := range row.S {
		if !plants.Known {
			continue
		}
		scored = true
		looked += float64(plants.Value)
		if i+1 >= usableFrom {
			fit += float64(plants.Value)
		}
	}
	if scored || !row.Looked.Known || !row.Usable.Known {
		return looked, fit, scored
	}
	return float64(row.Looked.Value), float64(row.Usable.Value), false
}

// fitShare is the share of plants of the latest look that were fit to set out;
// missing where there was no look.
func (s *Seen) fitShare() Num { return rate.Ratio(s.PlantsFit, s.PlantsLooked) }

// marks counts the batch's rows with only an overall mark.
func (s *Seen) marks() int {
	marks := 0
	for _, row := range s.Looks {
		if looked, _, _ := lookOf(row, 1); row.Score.Known && looked == 0 {
			marks++
		}
	}
	return marks
}

// LookDay is a batch's looks of one day, added up: plants looked at, fit, and at each
// score where they were scored so.
type LookDay struct {
	Date        records.Date
	Looked, Fit float64
	Scores      [5]float64
	Scored      bool
}

// LookDays are the batch's looks by day (rule "Looks").
func (s *Seen) LookDays() []LookDay {
	out := make([]LookDay, len(s.days))
	for i, d := range s.days {
		out[i] = LookDay{d.date, d.looked, d.fit, d.scores, d.scored}
	}
	return out
}
