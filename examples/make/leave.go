package main

import (
	"fmt"
	"math"
)

// way is how something was written down.
type way int

const (
	inSowings  way = iota // set_out, plants_out and surplus in sowings.csv
	inOut                 // rows of out.csv, cleared
	noSurplus             // surplus left blank
	forgotten             // never written
	unfinished            // rows of out.csv, never cleared
)

// leave is a row of out.csv, or the set_out of a batch.
type leave struct {
	on     day
	plants int
	to     string
	last   bool
	money  float64
	note   string
}

// leaving decides when and how a batch goes.
func (f *farm) leaving(b *batch) {
	b.how = []way{inSowings, inOut, noSurplus, forgotten, unfinished}[f.luck.pick(.5, .33, .05, .08, .04)]
	if b.paired { // what is compared is set out in one go
		b.how = inSowings
	}
	b.wait = f.waits(b)
	if b.onto.pricks() {
		b.how, b.wait = inOut, 0
	}
	b.end = b.planned + day(b.wait)
	if b.how == inOut && !b.onto.pricks() && f.luck.Float64() < .45 {
		b.end = b.planned + day(9+f.luck.IntN(12)) // the rest is kept for gaps
	}
	if b.fail = b.code == "CY23-01"; b.fail {
		b.how, b.end = inOut, b.sown+26
	}
}

// waits says how many days after the planned date the field is ready; what
// was sown side by side is set out side by side.
func (f *farm) waits(b *batch) int {
	early := f.luck.IntN(3)
	late := [][2]int{{0, 1}, {1, 3}, {4, 4}, {8, 7}, {15, 5}}[f.luck.pick(.44, .27, .16, .09, .04)]
	wait := late[0] + f.luck.IntN(late[1])
	if b.season == 2026 {
		wait /= 3 // the beds were ready
	}
	if wait == 0 {
		wait = -early
	}
	if !b.paired {
		return wait
	}
	key := fmt.Sprint("wait ", b.crop.name, b.variety, b.sown)
	if was, ok := f.days[key]; ok {
		return int(was)
	}
	f.days[key] = float64(wait)
	return wait
}

// fit is the chance that a living plant is fit to set out so many days late:
// plants hold longer where air prunes their roots.
func fit(kind string, late int) float64 {
	good, fade := .915, .0135
	if kind == air {
		good, fade = .945, .005
	}
	return math.Max(.2, good-fade*math.Max(0, float64(late))-.00025*math.Max(0, float64(late*late)))
}

// leave writes what left the house by the book's last day.
func (f *farm) leave(b *batch) {
	switch {
	case b.fail:
		b.leaves = []leave{{on: b.end, to: "dead", last: true, note: "damped off, all thrown out"}}
	case b.onto.pricks():
		moved := f.luck.of(b.living, .93)
		b.leaves = []leave{{on: b.end, plants: moved, to: "potted-on", last: true}}
	case b.how == inOut || b.how == unfinished:
		f.leaveInParts(b)
	default:
		f.leaveAtOnce(b)
	}
	kept := b.leaves[:0]
	for _, l := range b.leaves {
		if l.on <= f.last {
			kept = append(kept, l)
		}
	}
	b.leaves = kept
}

// leaveAtOnce sets a batch out on one day.
func (f *farm) leaveAtOnce(b *batch) {
	good := f.luck.of(b.living, fit(b.tray.kind, int(b.end-b.planned)))
	field := f.wantedOf(b, good)
	b.leaves = []leave{{on: b.end, plants: field, to: "field"}, {on: b.end, plants: good - field, to: "surplus", last: true}}
}

// leaveInParts sets a batch out, then sells or gives or loses the rest.
func (f *farm) leaveInParts(b *batch) {
	first := min(b.end, b.planned+day(b.wait))
	good := f.luck.of(b.living, fit(b.tray.kind, int(first-b.planned)))
	field := f.wantedOf(b, good)
	b.leaves = []leave{{on: first, plants: field, to: "field"}}
	rest := b.living - field
	good = min(good-field, f.luck.of(rest, fit(b.tray.kind, int(b.end-b.planned))))
	to := []string{"surplus", "given", "sold"}[f.luck.pick(.5, .25, .25)]
	l := leave{on: b.end, plants: good, to: to, last: true}
	if to == "sold" {
		l.money = .4 * float64(good)
	}
	if l.plants == 0 {
		l.to, l.plants, l.money = "dead", rest, 0
	} else if dead := rest - good; dead > 8 && f.luck.Float64() < .5 {
		b.leaves = append(b.leaves, leave{on: b.end, plants: dead, to: "dead"})
	}
	b.leaves = append(b.leaves, l)
	if b.how == unfinished {
		b.leaves = b.leaves[:1]
	}
}

// wantedOf is how many of the good plants go to the field.
func (f *farm) wantedOf(b *batch, good int) int {
	if b.wanted > 0 {
		return min(good, b.wanted+f.luck.IntN(1+b.wanted/12))
	}
	return good - f.luck.of(good, .06)
}

// score writes the looks at a batch while it stands.
func (f *farm) score(b *batch) {
	if b.onto.pricks() || b.living < 25 || f.luck.Float64() < .42 {
		return
	}
	at := []int{-1, 2, 5, 10, 16, 19}
	form := []way{inSowings, inOut, noSurplus}[f.luck.pick(.55, .37, .08)]
	for i, late := range at {
		d := b.planned + day(late)
		if d >= b.end || d > f.last || b.left(d) < 20 || i > 0 && f.luck.Float64() < .25 {
			continue
		}
		b.looks = append(b.looks, f.look(b, d, form))
	}
}

// look scores 10 to 20 plugs.
func (f *farm) look(b *batch, d day, form way) look {
	l := look{on: d, form: form}
	n := 10 + 5*f.luck.IntN(3)
	good := f.luck.of(n, fit(b.tray.kind, int(d-b.planned)))
	for range good {
		l.shares[2+f.luck.pick(.3, .5, .2)]++
	}
	for range n - good {
		l.shares[f.luck.pick(.35, .65)]++
	}
	l.mark = 4
	if float64(good) < .8*float64(n) {
		l.mark = 3
	}
	return l
}

// left is how many plants still stand on a day.
func (b *batch) left(d day) int {
	n := b.living
	for _, l := range b.leaves {
		if l.on <= d {
			n -= l.plants
		}
	}
	return n
}
