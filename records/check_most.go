package records

// The most that a book may hold of what every page, table and list goes through. Beyond it
// there is no farm, and a site would be of gigabytes and of tens of thousands of pages.
const (
	mostBatches     = 120_000
	mostLots        = 50_000
	mostCodes       = 5_000
	mostSeasonCrops = 10_000
)

// mostNames is how many different names all logs together may have, of batches, crops,
// causes and all else. More are no names, and each has to be kept.
const mostNames = 500_000

// tooManyNames reports, once, the log in which they became too many. Nothing is read or
// looked at after that.
func (l *log) tooManyNames() bool {
	if len(l.names.spellings) > mostNames && !l.full {
		l.full = true
		l.report("file", Pos{File: l.file}, "more than "+grouped(mostNames)+" different names of batches, crops, causes and the like by row "+grouped(len(l.flags))+", and the rest was not tried", "a log that names the same again and again is expected", "is this the right file?")
	}
	return l.full
}

// checkMost reports, of each log, what there is more of than a review can tell: nothing is
// built then.
func (l *loader) checkMost() {
	l.tooMany(l.sowings.log, "batches", countOf(l.sowings, func(s *Sowing) string { return s.Code }), mostBatches, "is this the right file?")
	l.tooMany(l.sowings.log, "crops, counted once for each season", countOf(l.sowings, func(s *Sowing) seasonCrop {
		return seasonCrop{l.settings.Season(s.Sown), s.Crop}
	}), mostSeasonCrops, "is the column crop the crop, and variety the variety?")
	l.tooMany(l.lots.log, "lots", countOf(l.lots, func(o *Lot) string { return o.Code }), mostLots, "is this the right file?")
	l.tooMany(l.trays.log, "tray codes", countOf(l.trays, func(p *Purchase) string { return p.Tray }), mostCodes, "give all trays of one kind and size one code")
}

// seasonCrop is what has a page.
type seasonCrop struct {
	season int
	crop   string
}

// countOf is how many different keys the rows that are not left out have.
func countOf[T any, K comparable](all entries[T], key func(*T) K) int {
	keys := map[K]bool{}
	if all.log != nil {
		for e := range alive(all) {
			keys[key(e.is)] = true
		}
	}
	return len(keys)
}

// tooMany reports a log with more than the most.
func (l *loader) tooMany(in *log, what string, n, most int, remedy string) {
	if n > most {
		l.report("file", Pos{File: in.file}, grouped(n)+" "+what, "no more than "+grouped(most)+" are expected", remedy)
	}
}
