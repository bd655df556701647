package report

import (
	"slices"

	"traybook/records"
)

// Quality is the usable share of the latest looks of a group (rule 16).
type Quality struct {
	Group
	Rate         // usable of looked
	S     [5]Num // plants at each score, where scored so
	Marks int    // looks with only an overall mark: shown, never a share
}

// plants computes the figures of quality and of usable plants (rules 16-18).
func (r *Report) plants() {
	looked := filter(r.Batches, func(b *Batch) bool { return b.QualityOf.Known })
	seeds := filter(looked, func(b *Batch) bool { return b.FromSeed })
	crop := func(g Group) string { return g.Crop }
	r.scatters[ofQuality] = scatterOf(seeds, (*Batch).Group, crop, qualityCount)
	r.Quality = r.quality(seeds)
	r.Leeway = r.leeway(looked)
	r.measureUsable()
	r.scatterUsable()
	r.Usable = r.usable()
	r.estimateUsable()
}

// quality returns a row for every group from seed with a look.
func (r *Report) quality(looked []*Batch) []Quality {
	marks := map[Group]int{}
	for _, b := range r.Batches {
		if b.FromSeed && b.marks() > 0 {
			marks[b.Group()] += b.marks()
		}
	}
	keys, groups := groupBy(looked, (*Batch).Group)
	slices.SortFunc(keys, groupOrder)
	var table []Quality
	for _, g := range keys {
		q := Quality{Group: g, Marks: marks[g], Rate: r.share(ofQuality, g.Crop, countsOf(groups[g], qualityCount))}
		for _, b := range groups[g] {
			q.addScores(b.looks[len(b.looks)-1])
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

// marks counts the batch's rows with only an overall mark.
func (b *Batch) marks() int {
	marks := 0
	for _, s := range b.Looks {
		if looked, _, _ := lookOf(s, 1); s.Score.Known && looked == 0 {
			marks++
		}
	}
	return marks
}
