package trays

import (
	"traybook/records"
	"traybook/report/money"
	"traybook/report/rate"
)

// plantValues returns by crop what one more usable plant is worth (rule "Value of a
// plant"): written, the book's transplant_value, where that is known, else what a cell
// fewer to sow saves; missing for all crops where the book has none of these costs.
func plantValues(written Num, m *money.Figures) map[string]Num {
	values := map[string]Num{}
	spent, usable := map[string]float64{}, map[string]float64{}
	for _, b := range m.Borne {
		values[b.Crop] = written
		if b.FromSeed && b.Measured() {
			spent[b.Crop] += b.Parts.Of(records.Seed) + b.Parts.Of(records.Mix) + b.Sowing
			usable[b.Crop] += b.Usable.Value
		}
	}
	if written.Known || !(m.Has[records.Seed] || m.Has[records.Mix] || m.HasSow) {
		return values
	}
	for crop := range values {
		values[crop] = rate.Ratio(records.Known(spent[crop]), records.Known(usable[crop]))
	}
	return values
}

// meanValue is the mean over the matches with a value, and their number.
func (pr *pair) meanValue() (Num, int) {
	total, n := 0.0, 0
	for _, m := range pr.matches {
		if m.Value.Known {
			total += m.Value.Value
			n++
		}
	}
	return rate.Ratio(records.Known(total), records.Known(float64(n))), n
}

// inMoney returns d x cells x value of the matches: at their own values, leaving
// out matches without one, or at a value given for all.
func (pr *pair) inMoney(value Num) []float64 {
	var gained []float64
	for _, m := range pr.matches {
		v := m.Value
		if value.Known {
			v = value
		}
		if v.Known {
			gained = append(gained, m.Difference*float64(pr.tray.Cells)*v.Value)
		}
	}
	return gained
}
