package plants

import (
	"traybook/records"
	"traybook/report/batch"
	"traybook/report/germination"
	"traybook/report/rate"
)

// Read returns what the logs say of the plants of every batch, in the order of sown.
// A score from Settings.UsableFrom on is a plant fit to set out.
func Read(sown []batch.Sowing, book *records.Book) []Seen {
	codes := batch.CodesOf(sown)
	scores := batch.RowsOf(codes, book.Scores, func(s *records.Score) string { return s.Batch })
	outs := batch.RowsOf(codes, book.Outs, func(o *records.Out) string { return o.Batch })
	all, days := make([]Seen, len(sown)), make([]lookDay, 0, len(book.Scores)) // no more days than rows
	for i := range sown {
		days = all[i].readScores(scores.Of(i), book.Settings.UsableFrom, days)
		all[i].readOuts(&sown[i], outs.Of(i))
	}
	return all
}

// Traces returns what counts, looks and outs say of the end of every batch, in the
// order of sown. Whether a batch gave nothing is asked before any end is known, so
// that none counts as open and counted early here (rule "End of a batch").
func Traces(sown []batch.Sowing, counts []germination.Counts, seen []Seen) []batch.Trace {
	traces := make([]batch.Trace, len(sown))
	for i := range sown {
		s := &seen[i]
		usable, _ := measured(&sown[i], &counts[i], s, false)
		traces[i] = batch.Trace{
			Cleared: s.Cleared,
			Last:    max(s.lastWritten, counts[i].Last),
			Nothing: usable.Known && usable.Value == 0,
		}
	}
	return traces
}

// measured returns the usable plants of a batch where all that became of it is
// written, or else its cells by its own emergence and looks, none where none came up
// (rule "Usable plants"). early says that it is open and counted too early. They may
// be more than the cells sown.
func measured(sown *batch.Sowing, counts *germination.Counts, seen *Seen, early bool) (Num, How) {
	if seen.allOut {
		return records.Known(seen.WrittenOut), ByOut
	}
	emergence, fit := rate.Ratio(counts.Emerged, counts.Looked), seen.fitShare()
	if !sown.CellsSown.Known || !emergence.Known || early {
		return Num{}, ""
	}
	if emergence.Value == 0 {
		fit = records.Known(0.0)
	}
	if !fit.Known {
		return Num{}, ""
	}
	return records.Known(max(float64(sown.CellsSown.Value)*emergence.Value*fit.Value, seen.WrittenOut)), ByCount
}
