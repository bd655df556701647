package plants

import (
	"slices"

	"traybook/records"
	"traybook/report/batch"
	"traybook/report/rate"
)

// looksOf computes the tables that rest on looks, and the scatter of quality in which
// they stand; level is that of the intervals.
// Scatter between batches is measured over those from seed, as their groups are.
func looksOf(all []*Plants, level float64) ([]Quality, []Leeway, rate.Scatter) {
	looked := batch.Filter(all, func(p *Plants) bool { return p.PlantsLooked.Known })
	seeds := batch.Filter(looked, func(p *Plants) bool { return p.FromSeed })
	scatter := rate.ScatterOf(seeds, (*Plants).Group, cropOf, qualityCount, level)
	return qualityOf(seeds, marksOf(all), scatter), leewayOf(looked, scatter), scatter
}

// marksOf counts, by group, the looks with only an overall mark of batches from seed.
func marksOf(all []*Plants) map[batch.Group]int {
	marks := map[batch.Group]int{}
	for _, p := range all {
		if p.FromSeed {
			marks[p.Group()] += p.marks()
		}
	}
	return marks
}

// qualityOf returns a row for every group from seed with a look.
func qualityOf(looked []*Plants, marks map[batch.Group]int, scatter rate.Scatter) []Quality {
	keys, groups := batch.GroupBy(looked, (*Plants).Group)
	slices.SortFunc(keys, batch.Order)
	var table []Quality
	for _, g := range keys {
		q := Quality{Group: g, Marks: marks[g], Rate: scatter.Rate(g.Crop, rate.Counts(groups[g], qualityCount))}
		for _, p := range groups[g] {
			q.addScores(p.days[len(p.days)-1])
		}
		table = append(table, q)
	}
	return table
}

// addScores adds the plants at each score of a look that was scored so.
func (q *Quality) addScores(d lookDay) {
	if !d.scored {
		return
	}
	for i, plants := range d.scores {
		q.S[i] = records.Known(q.S[i].Value + plants)
	}
}
