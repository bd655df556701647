package sowing

import (
	"traybook/records"
	"traybook/report/batch"
	"traybook/report/plants"
	"traybook/report/rate"
)

// crop is what a wish needs to know of its crop.
type crop struct {
	codes codes
	seeds Num // median seeds_per_cell of its batches from seed
	stay  int // days that four in five of its stays do not exceed
}

// wishesOf returns what every row of wishes.csv takes (rule "Wishes").
func wishesOf(b *batch.Batches, p *plants.Figures, wishes []records.Wish, levels []level) []Wish {
	crops := cropsOf(b, p.Plants)
	var all []Wish
	for i, w := range wishes {
		of, sown := crops[w.Crop]
		if !sown {
			of.stay = b.Stays.Of(w.Crop).Median
		}
		one := Wish{Wish: w, Row: rowOfFile(w.At, i)}
		one.Code, one.How = of.codes.of(w)
		one.reckon(b, levels, of.seeds)
		if w.Planned.Known() {
			one.SowBy = w.Planned - records.Date(of.stay)
			one.Free = w.Planned + records.Date(b.Settings.TrayTurnaround)
		}
		all = append(all, one)
	}
	return all
}

// rowOfFile is the row as a spreadsheet counts it; of rows that stand in no file the
// i-th, from 0, under a header.
func rowOfFile(at records.At, i int) int {
	const header = 1
	if at.Row > 0 {
		return int(at.Row)
	}
	return header + i + 1
}

// cropsOf gathers by crop what wishes of it need.
func cropsOf(b *batch.Batches, all []*plants.Plants) map[string]crop {
	last := b.FinishedSeasons(1)
	crops := map[string]crop{}
	for _, of := range batch.SplitBy(all, (*plants.Plants).CropRank).Groups {
		name := of[0].Crop
		seeded := batch.Filter(of, func(p *plants.Plants) bool { return p.FromSeed })
		seeds := make([]float64, 0, len(seeded))
		for _, p := range seeded {
			seeds = append(seeds, float64(p.SeedsPerCell))
		}
		crops[name] = crop{
			codes: codesOf(seeded, last),
			seeds: rate.Median(seeds),
			stay:  likelyStay(writtenStays(of), b.Stays.Of(name)),
		}
	}
	return crops
}

// reckon takes the rate of the nearest batches that are enough, and from it cells,
// trays and seeds; seeds is how many a cell takes.
func (w *Wish) reckon(b *batch.Batches, levels []level, seeds Num) {
	g := batch.Group{Crop: w.Crop, Variety: w.Variety}
	if code := b.Codes[w.Code]; code != nil {
		g.Cells, g.Kind = records.Known(code.Cells), code.Kind
	}
	for _, l := range levels {
		if l.basis == OfVariety && w.Variety == "" {
			continue
		}
		if c := l.chance(g); !c.Rate.Few() {
			w.Chance, w.Basis = c, l.basis
			break
		}
	}
	w.Cells = w.cells(w.Plants, b.Settings.SureOfTarget)
	w.Trays = traysOf(w.Cells, g.Cells)
	if w.Cells.Known && seeds.Known {
		w.Seeds = records.Known(float64(w.Cells.Value) * seeds.Value)
	}
}
