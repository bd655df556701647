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

// Worth says what one more plant is taken to be worth (rule "If").
type Worth string

// The values of a plant, by bytes.
const (
	BoughtIn Worth = "bought in" // plug_price where it fills a gap
	Figured  Worth = "figured"   // rule "Value of a plant"
	Half     Worth = "half"      // half of that, of each match
)

// written is the value of a plant of a match as it stands.
func written(m Match) Num { return m.Value }

// half is half of it.
func half(m Match) Num { return times(m.Value, records.Known(0.5)) }

// oneValue gives every match that has a value the same one.
func oneValue(v Num) func(Match) Num {
	return func(m Match) Num {
		if !m.Value.Known {
			return Num{}
		}
		return v
	}
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

// inMoney returns difference x cells x value of the matches with a value.
func (pr *pair) inMoney(valueAt func(Match) Num) []float64 {
	gained := make([]float64, 0, len(pr.matches))
	for _, m := range pr.matches {
		if v := valueAt(m); v.Known {
			gained = append(gained, m.Difference*float64(pr.tray.Cells)*v.Value)
		}
	}
	return gained
}
