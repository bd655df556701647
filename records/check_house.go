package records

// checkHouse reports a lowest temperature above the highest of the same day.
func (l *loader) checkHouse() {
	for e := range alive(l.house) {
		for _, d := range []struct {
			col, other string
			low, high  Maybe[float64]
		}{{"low", "high", e.is.Low, e.is.High}, {"out_low", "out_high", e.is.OutLow, e.is.OutHigh}} {
			if d.low.Known && d.high.Known && d.low.Value > d.high.Value {
				e.problem("low-above-high", d.col, d.col+" "+quote(e.text(d.col))+", "+d.other+" "+quote(e.text(d.other)),
					"a lowest temperature no higher than the highest is expected", "do the two stand in each other's place?")
			}
		}
	}
}
