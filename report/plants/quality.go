package plants

import (
	"slices"

	"traybook/records"
	"traybook/report/batch"
	"traybook/report/estimate"
	"traybook/report/rate"
)

// looks computes the tables that rest on looks, and the scatter of quality in which
// they stand; level is that of the intervals.
// Scatter between batches is measured over those from seed, as their groups are.
func (f *Figures) looks(level float64) {
	looked := batch.Filter(f.Plants, func(p *Plants) bool { return p.PlantsLooked.Known })
	seeds := batch.Filter(looked, func(p *Plants) bool { return p.FromSeed })
	groups := batch.SplitBy(seeds, (*Plants).GroupRank)
	f.QualityScatter = rate.ScatterOf(groups.Met(), cropOf, qualityCount, level)
	f.Quality = f.qualityBy(groups, (*Plants).GroupRank, (*Plants).Group)
	f.QualityCrops = f.qualityBy(batch.SplitBy(seeds, (*Plants).SeasonCropRank), (*Plants).SeasonCropRank, cropGroup)
	f.QualitySeasons = seasonsOf(seeds, qualityCount, f.QualityScatter)
	f.Leeway = leewayOf(looked, f.QualityScatter)
}

// marksBy counts, by rank, the looks with only an overall mark of batches from seed.
func marksBy(all []*Plants, rank func(*Plants) int32) []int {
	var marks []int
	for _, p := range all {
		if m := p.marks(); m > 0 && p.FromSeed {
			marks = append(marks, make([]int, max(0, int(rank(p))+1-len(marks)))...)
			marks[rank(p)] += m
		}
	}
	return marks
}

// qualityBy returns a row for every group from seed with a look, by rank.
func (f *Figures) qualityBy(groups batch.Split[*Plants], rank func(*Plants) int32, group func(*Plants) batch.Group) []Quality {
	marks, counts := marksBy(f.Plants, rank), []estimate.Count(nil)
	table := slices.Grow([]Quality(nil), len(groups.Groups))
	for _, of := range groups.Groups {
		q := Quality{Group: group(of[0])}
		if at := int(rank(of[0])); at < len(marks) {
			q.Marks = marks[at]
		}
		counts = rate.AppendCounts(counts[:0], of, qualityCount)
		q.Rate = f.QualityScatter.Rate(q.Crop, counts)
		for _, p := range of {
			q.addScores(&p.days[len(p.days)-1])
		}
		table = append(table, q)
	}
	return table
}

// addScores adds the plants at each score of a look that was scored so.
func (q *Quality) addScores(d *lookDay) {
	if !d.scored {
		return
	}
	for i, plants := range d.scores {
		q.S[i] = records.Known(q.S[i].Value + plants)
	}
}
