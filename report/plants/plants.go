package plants

import (
	"traybook/report/batch"
	"traybook/report/estimate"
	"traybook/report/germination"
)

// New computes the figures of quality and of usable plants. seen stands in the order
// of the batches, as Read gives it.
func New(b *batch.Batches, g *germination.Figures, seen []Seen) *Figures {
	all := make([]*Plants, len(seen))
	for i, c := range g.Counted {
		all[i] = plantsOf(c, seen[i])
	}
	f := &Figures{Plants: all, UsableScatter: scatterUsable(all, b.Settings.Confidence)}
	f.Quality, f.Leeway, f.QualityScatter = looksOf(all, b.Settings.Confidence)
	f.Usable = f.usable()
	f.BookUsable = bookUsable(all)
	f.estimateUsable()
	return f
}

// plantsOf is a batch with its usable plants as far as they are out or counted.
func plantsOf(c *germination.Counted, seen Seen) *Plants {
	p := &Plants{Counted: c, Seen: seen}
	p.Usable, p.UsableHow = measured(&c.Sowing, &c.Counts, &seen, c.Early)
	p.capAtCells()
	return p
}

// cropOf is the crop of a group, by which scatter is told apart.
func cropOf(g batch.Group) string { return g.Crop }

// What each measure counts of a batch (rule "Scatter").
func usableCount(p *Plants) estimate.Count {
	return estimate.Count{X: p.Usable.Value, N: float64(p.CellsSown.Value)}
}
func qualityCount(p *Plants) estimate.Count {
	return estimate.Count{X: p.PlantsFit.Value, N: p.PlantsLooked.Value}
}
