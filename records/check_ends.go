package records

// longStay is the most days from sowing to setting out that are not asked about: leeks
// and celeriac take up to half a year.
const longStay = 200

// checkAfterEnd warns of counts, looks and plants out after the day on which the batch
// was done with (rule "End of a batch").
func (l *loader) checkAfterEnd() {
	cleared := l.cleared()
	for r := range l.batchRows() {
		s := r.sowing
		if s == nil {
			continue
		}
		if end := WrittenEnd(*s.is, cleared[r.batch]); end.Known() && r.date > end {
			r.doubt("row-after-end", "date", "date "+r.date.String()+" is after batch "+quote(s.is.Code)+" was done with, "+end.String(),
				"a day no later is expected", "it is used as it stands: is this day right, or that one?")
		}
	}
}

// checkStays warns of batches that were long in the house, or are planned to be: they
// hold benches and trays all that time.
func (l *loader) checkStays() {
	for e := range alive(l.sowings) {
		for _, d := range []struct {
			col string
			day Date
		}{{"planned", e.is.Planned}, {"set_out", e.is.SetOut}} {
			if days := int(d.day - e.is.Sown); d.day.Known() && days > longStay {
				e.doubt("long-stay", d.col, d.col+" "+d.day.String()+" is "+plural(days, "day")+" after sown, "+e.is.Sown.String(),
					"no more than "+plural(longStay, "day")+" are expected", "benches and trays are held that long: is the year right?")
			}
		}
	}
}
