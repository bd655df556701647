package records

// manyOf is a number beyond which a cell is asked about, though it can be right.
type manyOf struct {
	log, col string
	most     float64
	what     string
}

// many are those numbers. Onions and chives get about ten seeds in a cell; the largest
// trays of the trade have some 800 cells.
var many = []manyOf{
	{"sowings.csv", "seeds_per_cell", 30, "is this of a whole tray?"},
	{"trays.csv", "count", 5_000, "is this of cells?"},
	{"trays.csv", "cells", 1_000, "is this of all trays together?"},
	{"trays.csv", "lasts", 40, "these are years: is it right?"},
	{"trays.csv", "places", 4, "does one tray take that much of a bench?"},
	{"trays.csv", "minutes", 30, "these are minutes for one tray: is it right?"},
}

// checkNumbers warns of numbers far above what is usual in their columns.
func (l *loader) checkNumbers() {
	l.checkMany()
	l.checkLooks()
	l.checkSeeds()
}

// checkSeeds warns of ten times the seeds in a cell of the crop's other sowings.
func (l *loader) checkSeeds() {
	of := map[string][]figure{}
	var crops []string
	for e := range alive(l.sowings) {
		crops = append(crops, e.is.Crop)
		of[e.is.Crop] = append(of[e.is.Crop], figure{e.row, float64(e.is.SeedsPerCell)})
	}
	for _, crop := range unique(crops) {
		oddOnes(of[crop], 4, func(f figure, _, high float64) {
			if f.value >= oddTimes*high {
				f.row.doubt("odd-number", "seeds_per_cell", plain(f.value)+" seeds in a cell, at most "+plain(high)+" at other sowings of "+quote(crop),
					"less than "+itoa(oddTimes)+" times that is expected", "is the number right?")
			}
		})
	}
}

// checkMany warns of numbers that are far more than usual.
func (l *loader) checkMany() {
	for _, log := range l.logs {
		for _, m := range many {
			if m.log == log.Name {
				log.checkMost(m)
			}
		}
	}
}

// checkMost warns of the numbers of one column that are far more than usual.
func (l *log) checkMost(m manyOf) {
	if !l.has(m.col) {
		return
	}
	for i := range l.flags {
		r := row{l, int32(i)}
		if r.isOut() {
			continue
		}
		if x, ok := parseNumber(numberCell.strip(r.text(m.col)), r.decimal); ok && x > m.most {
			r.doubt("odd-number", m.col, m.col+" "+plain(x), "no more than "+plain(m.most)+" is expected", m.what)
		}
	}
}

// timesOff is how many times too large a number is asked about where another of its
// row, or of its log, says what it should be near.
const timesOff = 5

// bed is what batches share that are sown for one piece of land.
type bed struct {
	crop    string
	planned Date
	wanted  int
}

// checkWanted warns of plants wanted that are many times the cells sown for them, by all
// batches that want as many of a crop for that day, and of trays with ten times the
// cells that are wanted. One tray is often sown for a few plants, and what is sown again
// may be a part.
func (l *loader) checkWanted() {
	cells := map[bed]int{}
	of := func(s *Sowing) bed { return bed{s.Crop, s.Planned, s.Wanted.Value} }
	for e := range alive(l.sowings) {
		cells[of(e.is)] += l.cellsSown(e.is).Value
	}
	for e := range alive(l.sowings) {
		sown, wanted := l.cellsSown(e.is), e.is.Wanted
		if !sown.Known || !wanted.Known || wanted.Value == 0 || e.is.Replaces != "" {
			continue
		}
		few := wanted.Value >= timesOff*cells[of(e.is)]
		if few || e.is.Trays > 1 && sown.Value >= oddTimes*wanted.Value {
			e.doubt("odd-wanted", "wanted", itoa(wanted.Value)+" plants wanted of "+plural(sown.Value, "cell")+" sown",
				"as many cells as plants, or some more, are expected", "are trays, cells and wanted right?")
		}
	}
}

// checkLooks warns of a look at five times the plants of any other: 100 for 10.
func (l *loader) checkLooks() {
	var all []figure
	for e := range alive(l.scores) {
		plants := int(e.is.Looked.Value)
		for _, n := range e.is.S {
			plants += int(n.Value)
		}
		if plants > 0 {
			all = append(all, figure{e.row, float64(plants)})
		}
	}
	oddOnes(all, 5, func(f figure, _, high float64) {
		if f.value >= timesOff*high {
			col := "looked"
			if f.row.text(col) == "" {
				col = "s1"
			}
			f.row.doubt("odd-number", col, plain(f.value)+" plants looked at, at most "+plain(high)+" at other looks",
				"less than "+itoa(timesOff)+" times that is expected", "is the number right?")
		}
	})
}

// longPeriod is the longest stretch of days that a cost covers without a question.
const longPeriod = 370

// checkLongPeriods warns of costs that cover more than a year.
func (l *loader) checkLongPeriods() {
	for e := range alive(l.costs) {
		from, until, col := e.is.From, e.is.Until, "until"
		if !from.Known() {
			from = e.is.Date
		}
		if !until.Known() {
			until, col = e.is.Date, "from"
		}
		if days := int(until-from) + 1; days > longPeriod {
			e.doubt("long-period", col, "a period of "+plural(days, "day")+", from "+from.String()+" to "+until.String(),
				"no more than a year is expected", "another year?")
		}
	}
}
