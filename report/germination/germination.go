package germination

import (
	"traybook/records"
	"traybook/report/batch"
	"traybook/report/rate"
)

// New computes what came up. counts is what Count returned of the same batches.
func New(b *batch.Batches, counts []Counts, book *records.Book) *Figures {
	read := readingsOf(book)
	f := &Figures{}
	f.Counted, f.MedianT50 = countedOf(b.List, counts, read)
	in := batch.Filter(f.Counted, (*Counted).EntersEmergence)
	f.Scatter = rate.ScatterOf(batch.SplitBy(in, (*Counted).LikeRank).Met(), cropOf, emergenceCount, b.Settings.Confidence)
	f.Seasons = seasons(in, b.Seasons, f.Scatter)
	f.Crops = crops(in, f.Scatter)
	f.Emergence = emergence(in, leftOut(f.Counted), f.Scatter)
	f.Differences = differences(in, b.Seasons, f.Scatter)
	f.Lots = lots(book, f.Counted, f.Scatter)
	f.Timing = timing(f.Counted)
	f.Losses = losses(f.Counted, book)
	f.Weeks = weeks(in, read, f.Scatter)
	f.Chambers = chambers(f.Counted, read, b.Settings)
	f.Climate = climate(in, read, f.Scatter)
	f.Alarms = alarms(f.Counted, book, read)
	return f
}
