package plants

import (
	"traybook/report/batch"
	"traybook/report/estimate"
	"traybook/report/germination"
	"traybook/report/rate"
)

// New computes the figures of quality and of usable plants. seen stands in the order
// of the batches, as Read gives it.
func New(b *batch.Batches, g *germination.Figures, seen []Seen) *Figures {
	all, of := make([]*Plants, len(seen)), make([]Plants, len(seen))
	for i, c := range g.Counted {
		all[i] = &of[i]
		all[i].take(c, &seen[i])
	}
	f := &Figures{Plants: all}
	f.looks(b.Settings.Confidence)
	f.Fits = fitsOf(f.Leeway)
	f.usable(b.Settings.Confidence)
	return f
}

// take fills in a batch with its usable plants as far as they are out or counted.
func (p *Plants) take(c *germination.Counted, seen *Seen) {
	p.Counted, p.Seen = c, seen
	p.Usable, p.UsableHow = measured(&c.Sowing, &c.Counts, seen, c.Early)
	p.capAtCells()
}

// cropOf is the crop of a batch, by which scatter is told apart.
func cropOf(p *Plants) string { return p.Crop }

// cropGroup puts all varieties and trays of a crop in a season together. Its interval
// still rests on the crop's own scatter (rule "Scatter").
func cropGroup(p *Plants) batch.Group { return batch.Group{Season: p.Season, Crop: p.Crop} }

// seasonsOf is the rate of each season, all crops together, with an interval by the
// scatter of the whole book (rule "Scatter").
func seasonsOf(in []*Plants, count func(*Plants) estimate.Count, scatter rate.Scatter) map[int]rate.Rate {
	rates := map[int]rate.Rate{}
	for _, of := range batch.SplitBy(in, (*Plants).SeasonRank).Groups {
		rates[of[0].Season] = scatter.Rate("", rate.Counts(of, count))
	}
	return rates
}

// What each measure counts of a batch (rule "Scatter").
func usableCount(p *Plants) estimate.Count {
	return estimate.Count{X: p.Usable.Value, N: float64(p.CellsSown.Value)}
}
func qualityCount(p *Plants) estimate.Count {
	return estimate.Count{X: p.PlantsFit.Value, N: p.PlantsLooked.Value}
}
