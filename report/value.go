package report

import "traybook/records"

// plantValues returns what one more usable plant of each crop is worth (rule 30):
// transplant_value, else seed, mix and sowing labour over usable plants of its
// batches from seed with usable out or counted: what a cell fewer to sow saves.
// Missing for all crops where the book has none of these costs.
func (p *accounts) plantValues() map[string]Num {
	values := map[string]Num{}
	written := p.r.Book.Settings.TransplantValue
	money, usable := map[string]float64{}, map[string]float64{}
	for _, b := range p.r.Batches {
		values[b.Crop] = written
		if b.FromSeed && b.Measured() {
			money[b.Crop] += b.Parts.Seed + b.Parts.Mix + p.sowing[b]
			usable[b.Crop] += b.Usable.Value
		}
	}
	if written.Known || !(p.has[records.Seed] || p.has[records.Mix] || p.hasSow) {
		return values
	}
	for crop := range values {
		values[crop] = ratio(records.Known(money[crop]), records.Known(usable[crop]))
	}
	return values
}
