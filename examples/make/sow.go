package main

import (
	"fmt"
	"math"
	"slices"
)

const lastDay = "2026-05-16" // the last date in the book, a Saturday

// batch is a row of sowings.csv with all that became of it.
type batch struct {
	code, replaces, from string
	season               int
	sown, planned, end   day
	crop                 *crop
	variety              string
	lot                  *lot
	tray                 *tray
	trays                float64
	cells                int  // cells sown
	part                 bool // the last tray was not filled
	seeds                int
	start                string
	chamber              string
	chamberOut           day
	wanted               int
	note                 string
	paired               bool
	up                   int // cells that ever came up
	living               int // of those, still there at the last count
	counts               []count
	looks                []look
	how                  way
	leaves               []leave
	onto                 *plan
	wait                 int // days past planned until it is set out
	fail                 bool
}

// wish is a sowing that the plan asks for.
type wish struct {
	plan     *plan
	sown     day
	tray     string
	trays    float64
	from     *batch
	cells    int
	paired   bool
	planned  day
	wanted   int
	replaces string
	note     string
}

// farm is the house over four seasons.
type farm struct {
	luck    chance
	last    day
	batches []*batch
	lots    []*lot
	days    map[string]float64 // the luck of a day's sowing, shared by its batches
	places  map[string][]stay  // what stands where
	number  map[string]int     // batches so far by crop and season
	weather []weather
}

// stay holds a tray code or a chamber for some days.
type stay struct {
	from, to day
	trays    float64
}

// raise runs the farm from its first sowing to its last day.
func raise() *farm {
	f := &farm{luck: luckOf(""), last: on(lastDay), days: map[string]float64{},
		places: map[string][]stay{}, number: map[string]int{}}
	f.weather = readings(f.last)
	for season := 2023; season <= 2026; season++ {
		f.sowAll(season)
	}
	f.buySeed()
	return f
}

// sowAll works through a season's wishes by date; a pricking-out joins the
// queue when its seedlings are sown.
func (f *farm) sowAll(season int) {
	queue := wishes(season)
	for len(queue) > 0 {
		slices.SortStableFunc(queue, func(a, b wish) int { return int(a.sown - b.sown) })
		w := queue[0]
		queue = queue[1:]
		if w.sown > f.last {
			continue
		}
		for _, part := range f.fit(w) {
			b := f.sow(part)
			queue = append(queue, f.follow(b)...)
		}
	}
}

// wishes lays a season's plan out by date.
func wishes(season int) []wish {
	luck := newChance(uint64(season))
	var all []wish
	for i := range plans {
		p := &plans[i]
		if p.since > season || p.till != 0 && p.till < season {
			continue
		}
		for n := range p.times {
			d := (in(season, p.first) + day(n*p.every+luck.IntN(5)-2)).workday()
			all = append(all, turn(p, n, wish{plan: p, sown: d, tray: p.tray, trays: p.size(season)})...)
		}
	}
	return append(all, byHand(season)...)
}

// turn splits a wish where the plan has both kinds sown side by side.
func turn(p *plan, n int, w wish) []wish {
	if p.beside == "" || n%p.turn != 0 {
		return []wish{w}
	}
	w.paired = true
	w.trays = math.Max(1, math.Floor(w.trays)/2)
	other := w
	other.tray = p.beside
	return []wish{w, other}
}

// fit fills what air-pruning trays are free and takes solid-wall trays for the rest.
func (f *farm) fit(w wish) []wish {
	k := trayOf(w.tray)
	if k.kind != air {
		return []wish{w}
	}
	free := owned(w.tray, w.sown) - f.standing(w.tray, w.sown)
	if free >= w.trays {
		return []wish{w}
	}
	other := w
	other.tray = "S" + w.tray[1:]
	other.note = "no heavy trays free"
	if free < 1 || w.trays < 3 {
		return []wish{other}
	}
	w.trays = math.Floor(free)
	other.trays -= w.trays
	if w.cells > 0 {
		other.cells = w.cells - int(w.trays)*k.cells
		w.cells = int(w.trays) * k.cells
	}
	w.note = "rest in solid-wall trays"
	return []wish{w, other}
}

// standing counts the trays in a place on a day.
func (f *farm) standing(place string, d day) float64 {
	sum := 0.0
	for _, s := range f.places[place] {
		if s.from <= d && d < s.to {
			sum += s.trays
		}
	}
	return sum
}

// sow makes the batch of a wish and lives its life.
func (f *farm) sow(w wish) *batch {
	c := cropOf(w.plan.crop)
	season := w.sown.time().Year()
	b := &batch{season: season, sown: w.sown, crop: c, variety: w.plan.variety, tray: trayOf(w.tray), trays: w.trays,
		seeds: max(1, w.plan.seeds), start: w.plan.start, note: w.note, paired: w.paired, replaces: w.replaces}
	key := fmt.Sprint(c.code, season%100)
	f.number[key]++
	b.code = fmt.Sprintf("%s-%02d", key, f.number[key])
	f.luck = luckOf(b.code)
	b.cells = int(math.Round(b.trays * float64(b.tray.cells)))
	if w.cells > 0 {
		b.cells, b.part = w.cells, w.cells != b.cells
	}
	if w.from != nil {
		b.from = w.from.code
	} else if b.start == "" {
		b.onto = w.plan
		b.lot = f.lotFor(b)
		f.warm(b)
	}
	f.schedule(b, w)
	f.grow(b)
	f.batches = append(f.batches, b)
	return b
}

// schedule sets the planned date, what the field wants and how the batch leaves.
func (f *farm) schedule(b *batch, w wish) {
	days := b.crop.stay
	switch {
	case w.from != nil:
		days -= pricked(b.crop) - 4
	case b.onto.pricks():
		days = pricked(b.crop)
	}
	if m := b.sown.time().Month(); m >= 6 && m <= 8 && days > 30 {
		days -= 4 // summer light
	}
	b.planned = (b.sown + day(days)).workday()
	if w.planned != 0 {
		b.planned = w.planned
	}
	if !b.onto.pricks() && (f.luck.Float64() < .75 || b.crop.asked > 0) {
		b.wanted = int(float64(b.cells)*(.6+b.crop.asked+.12*f.luck.Float64())) / 10 * 10
	}
	if w.wanted > 0 {
		b.wanted = w.wanted
	}
	f.leaving(b)
	until := b.end
	if b.how == forgotten || b.how == unfinished {
		until += 24
	}
	f.hold(b.tray.code, stay{b.sown, until + 3, b.trays})
}

func (f *farm) hold(place string, s stay) { f.places[place] = append(f.places[place], s) }

// pricks says whether a plan's seedlings move on into another tray.
func (p *plan) pricks() bool { return p != nil && p.onto != "" }

// pricked is the age in days at which a crop's seedlings are pricked out.
func pricked(c *crop) int { return int(c.t50*1.4) + 11 }

// follow gives the pricking-out of a batch, where the plan has one.
func (f *farm) follow(b *batch) []wish {
	if !b.onto.pricks() {
		return nil
	}
	moved := 0
	for _, l := range b.leaves {
		if l.to == "potted-on" {
			moved = l.plants
		}
	}
	if moved == 0 || b.end > f.last {
		return nil
	}
	k := trayOf(b.onto.onto)
	trays := math.Ceil(float64(moved) / float64(k.cells))
	return []wish{{plan: b.onto, sown: b.end, tray: k.code, trays: trays, from: b, cells: moved}}
}

// The chambers: two, holding so many trays together.
const (
	bigBox, smallBox           = "big box", "small box"
	bigPlaces, smallPlaces     = 8.0, 6.0
	benchPlaces, chamberPlaces = 128, 14
)

// warm puts a batch into a chamber, or on the bench where both are full.
func (f *farm) warm(b *batch) {
	if b.crop.chamber == 0 {
		return
	}
	out := b.sown + day(b.crop.chamber)
	place, size := bigBox, bigPlaces
	if b.crop.chamber >= 4 || b.trays <= 1 {
		place, size = smallBox, smallPlaces
	}
	if f.standing(place, b.sown)+b.trays > size {
		place, size = bigBox, bigPlaces
	}
	if f.standing(place, b.sown)+b.trays > size {
		if b.note == "" {
			b.note = "chamber full"
		}
		return
	}
	b.chamber = place
	if out <= f.last {
		b.chamberOut = out
	}
	f.hold(place, stay{b.sown, out, b.trays})
}
