package main

import (
	"fmt"
	"math"
)

// cost is a row of costs.csv.
type cost struct {
	on, from, until day
	category, task  string
	amount, hours   float64
	quantity        float64
	unit            string
	batch, crop     string
	tray, note      string
}

// costTable writes costs.csv.
func (f *farm) costTable() *table {
	return costRows(f.costs())
}

func costRows(costs []cost) *table {
	t := columns("date,from,until,category,task,amount,hours,quantity,unit,batch,crop,tray,note")
	for _, c := range costs {
		amount := ""
		if c.amount != 0 {
			amount = fmt.Sprintf("%.2f", c.amount)
		}
		t.row(c.on, c.from, c.until, c.category, c.task, amount, blank(c.hours), blank(c.quantity), c.unit,
			c.batch, c.crop, c.tray, c.note)
	}
	return t
}

// costs keeps the farm's money book, season by season.
func (f *farm) costs() []cost {
	luck := newChance(9)
	var all []cost
	for season := 2023; season <= 2026; season++ {
		all = append(all, bills(season, luck)...)
		all = append(all, f.propane(season, luck)...)
		all = append(all, f.hours(season, luck)...)
		all = append(all, f.direct(season)...)
	}
	kept := all[:0]
	for _, c := range all {
		if c.on <= f.last {
			kept = append(kept, c)
		}
	}
	return sortCosts(kept)
}

// bill is a bill that comes every season.
type bill struct {
	on, from, until string // month-day
	category        string
	amount          float64 // in 2023
	quantity        float64
	unit, note      string
}

var yearly = []bill{
	{on: "01-28", category: "mix", amount: 148, quantity: 40, unit: "cubic feet", note: "first pallet"},
	{on: "03-30", category: "mix", amount: 148, quantity: 40, unit: "cubic feet", note: "second pallet"},
	{on: "06-22", category: "mix", amount: 74, quantity: 20, unit: "cubic feet"},
	{on: "07-06", category: "mix", amount: -24, note: "pallets returned"},
	{on: "01-16", category: "seed", amount: 36, note: "chard, sunflower and odd packets without a lot"},
	{on: "03-02", from: "01-01", until: "02-28", category: "power", amount: 21.4},
	{on: "05-03", from: "03-01", until: "04-30", category: "power", amount: 58.75, note: "chambers and fans"},
	{on: "07-02", from: "05-01", until: "06-30", category: "power", amount: 34.1},
	{on: "09-03", from: "07-01", until: "08-31", category: "power", amount: 29.3},
	{on: "11-03", from: "09-01", until: "09-30", category: "power", amount: 12.6},
	{on: "12-03", from: "11-01", until: "11-30", category: "power", amount: 8.2, note: "house empty"},
	{on: "10-12", category: "water", amount: 46, note: "meter read once a year"},
	{on: "03-20", category: "feed", amount: 38, quantity: 5, unit: "gallons", note: "fish and seaweed"},
	{on: "06-14", category: "feed", amount: 27, quantity: 3, unit: "gallons"},
	{on: "02-11", category: "other", amount: 18.5, note: "labels, pencils, brushes"},
	{on: "03-08", category: "equipment", amount: 95, note: "bench cloth, hoses, a year's share"},
}

// bills writes the season's bills, dearer every year.
func bills(season int, luck chance) []cost {
	var all []cost
	rise := 1 + .05*float64(season-2023)
	for _, b := range yearly {
		c := cost{on: in(season, b.on), category: b.category, quantity: b.quantity, unit: b.unit, note: b.note}
		c.amount = cents(b.amount * rise)
		if b.from != "" {
			c.amount = cents(c.amount * (.93 + .14*luck.Float64()))
			c.from, c.until = in(season, b.from), in(season, b.until)
		}
		all = append(all, c)
	}
	return append(all, once[season]...)
}

// once lists what was bought but once.
var once = map[int][]cost{
	2023: {{on: on("2023-02-03"), category: "equipment", amount: 62, note: "thermostat for the small box, fitted by the electrician"}},
	2024: {
		{on: on("2024-01-19"), category: "equipment", amount: 108.8, note: "invoice, heavy trays"}, // repeats trays.csv
		{on: on("2024-02-14"), category: "equipment", amount: 48, tray: "A128", note: "rack to wash the heavy trays"},
		{on: on("2024-03-12"), category: "other", amount: 54, crop: "strawberry", note: "200 bare-root plugs"},
	},
	2025: {
		{on: on("2025-03-11"), category: "other", amount: 57, crop: "strawberry", note: "200 bare-root plugs"},
		{on: on("2025-04-28"), category: "equipment", amount: 35, note: "new sensor, small box"},
		{on: on("2025-07-10"), category: "equipment", amount: 110, note: "second shade cloth"},
	},
	2026: {{on: on("2026-03-10"), category: "other", amount: 60, crop: "strawberry", note: "200 bare-root plugs"}},
}

// gas is the price of a gallon of propane.
var gas = map[int]float64{2023: 2.35, 2024: 2.6, 2025: 2.45, 2026: 2.5}

// propane writes the month's fills. The bill of April 2025 lacks the day it begins.
func (f *farm) propane(season int, luck chance) []cost {
	var all []cost
	for _, m := range [][2]string{{"02-10", "02-28"}, {"03-01", "03-31"}, {"04-01", "04-30"}, {"05-01", "05-31"}} {
		from, until := in(season, m[0]), in(season, m[1])
		gallons := math.Round(f.degreeDays(from, until) * (.215 + .02*luck.Float64()))
		c := cost{on: until + 2, from: from, until: until, category: "heat", quantity: gallons, unit: "gallons",
			amount: cents(gallons * gas[season]), note: "propane"}
		if season == 2025 && m[0] == "04-01" {
			c.from = 0
		}
		all = append(all, c)
	}
	return all
}

// hours writes labour, a row a fortnight and task.
func (f *farm) hours(season int, luck chance) []cost {
	var all []cost
	for m := 2; m <= 9; m++ {
		first := in(season, fmt.Sprintf("%02d-01", m))
		next := in(season, fmt.Sprintf("%02d-01", m+1))
		for _, p := range [][2]day{{first, first + 14}, {first + 15, next - 1}} {
			all = append(all, f.fortnight(p[0], p[1], luck)...)
		}
	}
	return all
}

// fortnight writes the hours of a period: about 7 minutes a tray sown, a
// minute a tray and week of care, 3 minutes a tray set out.
func (f *farm) fortnight(from, until day, luck chance) []cost {
	sown, stood, out := f.load(from, until)
	var all []cost
	for _, t := range []struct {
		task    string
		minutes float64
	}{{"sowing", 7 * sown}, {"care", stood / 7 * 1.15}, {"out", 3 * out}} {
		hours := math.Round(t.minutes/60*(.85+.3*luck.Float64())*4) / 4
		if hours > 0 {
			all = append(all, cost{on: until, from: from, until: until, category: "labour", task: t.task, hours: hours})
		}
	}
	return all
}

// load gives the trays sown, the tray-days and the trays that left in a period.
func (f *farm) load(from, until day) (sown, stood, out float64) {
	for _, b := range f.batches {
		if b.sown >= from && b.sown <= until {
			sown += b.trays
		}
		if b.end >= from && b.end <= until {
			out += b.trays
		}
		stood += b.trays * math.Max(0, float64(min(b.end, until+1)-max(b.sown, from)))
	}
	return sown, stood, out
}

// direct writes the hours that were noted for a crop or a batch alone.
func (f *farm) direct(season int) []cost {
	var all []cost
	for _, b := range f.batches {
		if b.season != season || b.from == "" {
			continue
		}
		c := cost{on: b.sown, category: "labour", task: "sowing", batch: b.code, note: "pricking out"}
		c.hours = math.Max(.25, math.Round(float64(b.cells)/240*4)/4)
		all = append(all, c)
	}
	return all
}

func cents(v float64) float64 { return math.Round(v*100) / 100 }
