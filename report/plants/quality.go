package plants

import (
	"slices"

	"traybook/records"
	"traybook/report/batch"
	"traybook/report/rate"
)

// looks computes the tables that rest on looks, and the scatter of quality in which
// they stand; level is that of the intervals.
// Scatter between batches is measured over those from seed, as their groups are.
func (f *Figures) looks(level float64) {
	looked := batch.Filter(f.Plants, func(p *Plants) bool { return p.PlantsLooked.Known })
	seeds := batch.Filter(looked, func(p *Plants) bool { return p.FromSeed })
	f.QualityScatter = rate.ScatterOf(seeds, (*Plants).Group, cropOf, qualityCount, level)
	f.Quality, f.QualityCrops = f.qualityBy(seeds, (*Plants).Group), f.qualityBy(seeds, cropGroup)
	f.QualitySeasons = seasonsOf(seeds, qualityCount, f.QualityScatter)
	f.Leeway = leewayOf(looked, f.QualityScatter)
}

// marksBy counts, by group, the looks with only an overall mark of batches from seed.
func marksBy(all []*Plants, group func(*Plants) batch.Group) map[batch.Group]int {
	marks := map[batch.Group]int{}
	for _, p := range all {
		if p.FromSeed {
			marks[group(p)] += p.marks()
		}
	}
	return marks
}

// qualityBy returns a row for every group from seed with a look.
func (f *Figures) qualityBy(looked []*Plants, group func(*Plants) batch.Group) []Quality {
	keys, groups := batch.GroupBy(looked, group)
	slices.SortFunc(keys, batch.Order)
	marks, scatter := marksBy(f.Plants, group), f.QualityScatter
	table := slices.Grow([]Quality(nil), len(keys))
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
