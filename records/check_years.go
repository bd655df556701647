package records

// A date is taken to be of another year if it lies so many days from those of the rows
// around it while these lie close together.
const (
	otherYear = 300
	closeBy   = 100
)

// inOrder is the share of rows that must lie close by the one before it for the order
// of a log to say anything of a date.
const inOrder = 0.8

// dayOf is a date of a column and its row.
type dayOf struct {
	nth int32 // of its log
	day Date
}

// fewestRows is how many dates a column has until its first and last are judged, which
// have rows on one side alone.
const fewestRows = 5

// anyYear are the columns whose dates need not follow those of the rows around: an older
// lot may stand anywhere in the list, and a bill may be for a year among those for months.
var anyYear = map[string]bool{"bought": true, "tested": true, "from": true, "until": true}

// checkYears warns of dates that jump to another year and back between the rows above
// and below. In a log whose rows are in no order nothing jumps, and nothing is said.
func (l *loader) checkYears() {
	for _, log := range l.logs {
		for _, col := range dateColumns[log.Name] {
			if !anyYear[col] && log.has(col) {
				log.checkJumps(col, l.daysOf(log, col))
			}
		}
	}
	l.checkLotYears()
}

// checkJumps warns of the dates of a column that jump.
func (l *log) checkJumps(col string, days []dayOf) {
	for _, j := range jumps(days) {
		day := days[j.at].day
		row{l, days[j.at].nth}.doubt("another-year", col, col+" "+day.String()+" beside "+days[j.near].day.String()+" and "+
			days[j.far].day.String()+" in the rows "+j.where, "a date near theirs is expected", "as written it counts for season "+itoa(l.settings.Season(day))+": another year?")
	}
}

// longShelf is how many days a lot may lie until it is first sown before a test of that
// time is taken to show that it was bought later.
const longShelf = 200

// checkLotYears warns of lots bought long after the first sowing from them, and of lots
// bought long before it and tested in between: a packet bears the test it was sold with.
func (l *loader) checkLotYears() {
	first := map[string]Date{}
	for e := range alive(l.sowings) {
		if day, ok := first[e.is.Lot]; !ok || e.is.Sown < day {
			first[e.is.Lot] = e.is.Sown
		}
	}
	for e := range alive(l.lots) {
		bought, tested, sown := e.is.Bought, e.is.Tested, first[e.is.Code]
		if !bought.Known() || !sown.Known() {
			continue
		}
		if days := int(bought - sown); days > oddGap {
			e.doubt("another-year", "bought", "bought "+bought.String()+", and sown from "+plural(days, "day")+" before, on "+sown.String(),
				"a day before the first sowing from the lot is expected", "another year?")
		}
		if sown-bought >= longShelf && bought < tested && tested <= sown {
			e.doubt("another-year", "bought", "bought "+bought.String()+", tested "+tested.String()+" and first sown "+sown.String(),
				"a test before the purchase is expected", "another year?")
		}
	}
}

// daysOf lists the dates of a column, row by row, of rows that are not left out: what
// stands in their cells was found to be days.
func (l *loader) daysOf(of *log, col string) []dayOf {
	all := make([]dayOf, 0, len(of.flags))
	l.datesOf(of.Name, func(r row, in string, day Date) {
		if in == col && day.Known() {
			all = append(all, dayOf{r.nth, day})
		}
	})
	return all
}

// datesOf hands over every date of a log, row by row.
func (l *loader) datesOf(log string, see func(r row, col string, day Date)) {
	switch log {
	case "sowings.csv":
		for e := range alive(l.sowings) {
			see(e.row, "sown", e.is.Sown)
			see(e.row, "chamber_out", e.is.ChamberOut)
			see(e.row, "planned", e.is.Planned)
			see(e.row, "set_out", e.is.SetOut)
		}
	case "out.csv":
		eachDay(l.outs, func(o *Out) Date { return o.Date }, see)
	case "counts.csv":
		eachDay(l.counts, func(c *Count) Date { return c.Date }, see)
	case "scores.csv":
		eachDay(l.scores, func(s *Score) Date { return s.Date }, see)
	case "costs.csv":
		eachDay(l.costs, func(c *Cost) Date { return c.Date }, see)
	case "house.csv":
		eachDay(l.house, func(h *HouseReading) Date { return h.Date }, see)
	case "changes.csv":
		eachDay(l.changes, func(c *Change) Date { return c.Date }, see)
	case "chamber.csv":
		for e := range alive(l.chamber) {
			see(e.row, "time", e.is.Date)
		}
	case "wishes.csv":
		for e := range alive(l.wishes) {
			see(e.row, "planned", e.is.Planned)
		}
	}
}

// eachDay hands over the date of every row.
func eachDay[T any](all entries[T], day func(*T) Date, see func(r row, col string, day Date)) {
	for e := range alive(all) {
		see(e.row, "date", day(e.is))
	}
}

// jump is a date that is odd beside two others, by their places in a column.
type jump struct {
	at, near, far int
	where         string
}

// jumps finds the dates that are odd beside the two around them, and, where rows are
// added at the end, the last one if it falls back, or the first if it is ahead.
func jumps(days []dayOf) []jump {
	var all []jump
	for i := 1; i+1 < len(days); i++ {
		if isOdd(days[i].day, days[i-1].day, days[i+1].day) {
			all = append(all, jump{i, i - 1, i + 1, "above and below"})
		}
	}
	rest := without(days, all)
	n := len(days) - 1
	if n+1 < fewestRows {
		return keptIfOrdered(all, rest)
	}
	if isOdd(days[n].day, days[n-1].day, days[n-2].day) && days[n].day < days[n-1].day && ascending(rest[:len(rest)-1]) {
		all, rest = append(all, jump{n, n - 2, n - 1, "above"}), rest[:len(rest)-1]
	}
	if isOdd(days[0].day, days[1].day, days[2].day) && days[0].day > days[1].day && ascending(rest[1:]) {
		all, rest = append(all, jump{0, 1, 2, "below"}), rest[1:]
	}
	return keptIfOrdered(all, rest)
}

// without lists the dates that are not odd, found in their order.
func without(days []dayOf, odd []jump) []dayOf {
	rest := make([]dayOf, 0, len(days))
	for i, d := range days {
		if len(odd) > 0 && odd[0].at == i {
			odd = odd[1:]
			continue
		}
		rest = append(rest, d)
	}
	return rest
}

// isOdd reports whether a day lies far from two that lie close together.
func isOdd(day, a, b Date) bool {
	return apart(a, b) <= closeBy && apart(day, a) >= otherYear && apart(day, b) >= otherYear
}

// apart is the number of days between two.
func apart(a, b Date) int { return int(max(a-b, b-a)) }

// ascending reports whether more rows come after the one above than before it.
func ascending(days []dayOf) bool {
	up := 0
	for i := 1; i < len(days); i++ {
		switch {
		case days[i].day > days[i-1].day:
			up++
		case days[i].day < days[i-1].day:
			up--
		}
	}
	return up >= 0
}

// keptIfOrdered drops what was found where the other dates are in no order.
func keptIfOrdered(found []jump, rest []dayOf) []jump {
	near := 0
	for i := 1; i < len(rest); i++ {
		if apart(rest[i].day, rest[i-1].day) <= closeBy {
			near++
		}
	}
	if float64(near) < inOrder*float64(len(rest)-1) {
		return nil
	}
	return found
}
