package main

import (
	"fmt"
	"math"
)

// count is a row of counts.csv.
type count struct {
	on            day
	tray          int
	cells         int // 0: all those sown
	emerged, lost int
	cause, note   string
	empty         int // cells with none, where asEmpty
	asEmpty       bool
}

// look is a row of scores.csv.
type look struct {
	on     day
	shares [5]int // plants at scores 1 to 5
	form   way    // how it is written
	mark   float64
	note   string
}

// grow decides what comes up, counts it and looks at it.
func (f *farm) grow(b *batch) {
	if b.start != "" || b.from != "" {
		b.up, b.living = b.cells, f.luck.of(b.cells, .975)
	} else {
		b.up = f.luck.of(b.cells, f.emergence(b))
		f.count(b)
	}
	f.leave(b)
	f.score(b)
}

// emergence is the chance that a cell of the batch shows a seedling.
func (f *farm) emergence(b *batch) float64 {
	key := fmt.Sprint(b.crop.name, b.variety, b.sown)
	if _, ok := f.days[key]; !ok {
		f.days[key] = f.luck.NormFloat64()
	}
	by := odd[b.variety] + skill[b.season] + .24*f.days[key] + .12*f.luck.NormFloat64() + f.trouble(b)
	if b.lot != nil {
		by += b.lot.vigour
	}
	seed := shift(b.crop.rate, by)
	return .975 * (1 - math.Pow(1-seed, float64(b.seeds)))
}

// skill is how well the house was run, on the logit scale: the mix of 2026 is finer.
var skill = map[int]float64{2024: -.08, 2025: .05, 2026: .3}

// slack is the share of batches that nobody counts.
var slack = map[int]float64{2023: .11, 2024: .11, 2025: .11, 2026: .05}

// trouble is what heat and cold take off, on the logit scale.
func (f *farm) trouble(b *batch) float64 {
	by := 0.0
	if b.sown >= hotFrom-2 && b.sown <= hotUntil {
		by -= b.crop.heat
	}
	if b.chamber == smallBox && b.sown >= cookedFrom-1 && b.sown < cookedUntil && b.crop.most < cooked {
		by -= 2.2
	}
	if b.chamber == "" && b.crop.chamber > 0 && b.season == 2024 && b.sown < on("2024-05-01") {
		by -= .5
	}
	return by
}

// count writes the germination counts of a batch, if anyone made them.
func (f *farm) count(b *batch) {
	b.living = b.up
	days, total := f.countDays(b), b.up
	lost, cause := f.losses(b)
	b.living -= lost
	if len(days) == 0 || f.luck.Float64() < slack[b.season] && !b.paired && !b.fail {
		return
	}
	if b.trays >= 2 && b.trays <= 4 && !b.part && b.trays == math.Floor(b.trays) && f.luck.Float64() < .16 {
		f.countTrays(b, days, lost, cause)
		return
	}
	if b.trays >= 3 && f.luck.Float64() < .4 {
		f.countOne(b, days, lost, cause)
		return
	}
	empty := f.luck.Float64() < .12
	for i, d := range days {
		c := count{on: d, emerged: f.stood(b.crop, total, int(d-b.sown))}
		if i == len(days)-1 {
			c.emerged = total
			if lost > 0 {
				c.emerged, c.lost, c.cause = total-lost, lost, cause
			}
		}
		c.empty = b.cells - c.emerged
		c.asEmpty = empty && c.empty < c.emerged // the fewer are quicker counted
		b.counts = append(b.counts, c)
	}
}

// countDays are the days on which a batch is counted, none after the book's last.
func (f *farm) countDays(b *batch) []day {
	habit := f.luck.pick(.3, .35, .25, .1)
	if b.season == 2026 {
		habit = max(habit, 1) // nobody waits to the end any more
	}
	at := [][]float64{{2.3}, {1.0, 2.2}, {.8, 1.2, 2.4}, {.9, 1.3, 1.8, 2.6}}[habit]
	var days []day
	for _, times := range at {
		d := b.sown + day(math.Ceil(times*b.crop.t50))
		if d <= f.last && d < b.end && (len(days) == 0 || d > days[len(days)-1]) {
			days = append(days, d)
		}
	}
	return days
}

// stood is how many of the seedlings to come stand after some days.
func (f *farm) stood(c *crop, total, days int) int {
	share := 1 / (1 + math.Exp(-(float64(days)-c.t50)/(.16*c.t50)))
	return int(math.Round(share * float64(total)))
}

// countOne counts one tray of a large batch and lets it speak for the rest.
func (f *farm) countOne(b *batch, days []day, lost int, cause string) {
	up := f.share(b.up, b.cells, b.tray.cells)
	lost = lost * b.tray.cells / b.cells
	for i, d := range days {
		c := count{on: d, cells: b.tray.cells, emerged: f.stood(b.crop, up, int(d-b.sown)), note: "one tray"}
		if i == len(days)-1 {
			c.emerged = up - lost
			if lost > 0 {
				c.lost, c.cause = lost, cause
			}
		}
		b.counts = append(b.counts, c)
	}
}

// countTrays counts tray by tray, once or twice.
func (f *farm) countTrays(b *batch, days []day, lost int, cause string) {
	n := int(b.trays)
	left, cells := b.up, b.cells
	for t := 1; t <= n; t++ {
		mine := b.tray.cells
		up := f.share(left, cells, mine)
		left, cells = left-up, cells-mine
		gone := 0
		if t == 1 {
			gone = min(lost, up)
		}
		for i, d := range days {
			c := count{on: d, tray: t, cells: mine, emerged: f.stood(b.crop, up, int(d-b.sown))}
			if i == len(days)-1 {
				c.emerged = up - gone
				if gone > 0 {
					c.lost, c.cause = gone, cause
				}
			}
			b.counts = append(b.counts, c)
		}
		lost -= gone
	}
}

// share draws how many of `left` among `cells` fall to a tray of `mine`.
func (f *farm) share(left, cells, mine int) int {
	k := 0
	for range mine {
		if f.luck.Float64()*float64(cells) < float64(left) {
			k, left = k+1, left-1
		}
		cells--
	}
	return k
}

// losses says how many seedlings went before the last count, and of what.
func (f *farm) losses(b *batch) (int, string) {
	switch {
	case b.fail:
		return int(float64(b.up) * .82), "damping-off"
	case b.crop.code == "SS" && b.season == 2024, b.crop.code == "CU" && b.season == 2024 && b.sown < on("2024-05-05"):
		return f.luck.of(b.up, .16), "rodents"
	case b.sown >= on("2023-06-01") && b.sown <= on("2023-06-20"), b.crop.code == "BA" && b.season == 2025:
		return f.luck.of(b.up, .08), "dried out"
	}
	cause := []string{"", "damping-off", "dried out", "slugs", "rodents"}[f.luck.pick(.74, .12, .07, .05, .02)]
	if cause == "" {
		return 0, ""
	}
	return min(b.up, 1+f.luck.of(b.up, .03)), cause
}
