package trays

// lifeFactors is how long the other may last, in its life as written (rule "If").
var lifeFactors = []float64{0.5, 1, 1.5, 2}

// buyIf is the number to buy at each life of the other and each value of a plant; none
// where there is no number to buy.
func (pr *pair) buyIf(back *Payback) []BuyIf {
	if back.Buy == nil {
		return nil
	}
	beyond := back.Uses[min(back.Buy.Owned, len(back.Uses)):]
	var rows []BuyIf
	for _, factor := range lifeFactors {
		life := max(1, factor*back.OtherLife.Uses.Value)
		for _, worth := range []Worth{BoughtIn, Figured, Half} {
			valueAt := back.valueOf(worth)
			if valueAt == nil {
				continue
			}
			s, _ := pr.stakeOf(back, valueAt)
			rows = append(rows, BuyIf{Tray: back.Tray, Other: back.Other, Factor: factor, Value: worth,
				Low: s.count(s.plants.low, life, beyond), N: s.count(s.plants.mid, life, beyond), High: s.count(s.plants.high, life, beyond)})
		}
	}
	return rows
}

// valueOf is the value of a plant by match; nil where plants bought in cannot be shown.
func (back *Payback) valueOf(worth Worth) func(Match) Num {
	switch {
	case worth == Half:
		return half
	case worth == Figured:
		return written
	case back.AtPlugPrice == nil:
		return nil
	}
	return oneValue(back.AtPlugPrice.Value)
}

// If returns the number to buy at a life factor and a value; not ok where there is none.
func (f *Figures) If(tray, other string, factor float64, value Worth) (row BuyIf, ok bool) {
	for _, row := range f.BuyIf {
		if row.Tray == tray && row.Other == other && row.Factor == factor && row.Value == value {
			return row, true
		}
	}
	return BuyIf{}, false
}
