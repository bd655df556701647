package main

import "math"

// weather is one day's outdoor low and high and what the house made of it, in Fahrenheit.
type weather struct {
	on            day
	outLow        float64
	outHigh       float64
	low, high     float64
	hot, readByUs bool
}

// The hot week of 2025, the cold spring of 2024, and the days of 2025 on which the
// small box stood at cooked degrees.
var (
	hotFrom, hotUntil   = on("2025-07-06"), on("2025-07-14")
	coldFrom, coldUntil = on("2024-02-20"), on("2024-05-05")

	cookedFrom, cookedUntil = on("2025-04-08"), on("2025-04-23")
)

const cooked = 98.0

// readings makes the weather from February to September of each season.
func readings(last day) []weather {
	luck := newChance(7)
	var all []weather
	drift := 0.0
	for season := 2023; season <= 2026; season++ {
		for d := in(season, "02-01"); d <= min(last, in(season, "09-30")); d++ {
			drift = .7*drift + 3.6*luck.NormFloat64()
			all = append(all, weatherOf(d, drift, luck))
		}
	}
	return all
}

// weatherOf makes a day from the season's course and the drift of the week.
func weatherOf(d day, drift float64, luck chance) weather {
	w := weather{on: d, readByUs: luck.Float64() < .985 || d.time().Month() < 6}
	mean := 51.5 - 23*math.Cos(2*math.Pi*float64(d.time().YearDay()-22)/365) + drift
	switch {
	case d >= hotFrom && d <= hotUntil:
		mean, w.hot = 83+drift/4, true
	case d >= coldFrom && d <= coldUntil:
		mean -= 7.5
	}
	swing := 8.5 + 3*luck.Float64()
	w.outLow, w.outHigh = math.Round(mean-swing), math.Round(mean+swing)
	w.low = math.Round(w.outLow + 5 + 2*luck.Float64())
	w.high = math.Round(w.outHigh + 9 + 5*luck.Float64())
	if m := d.time().Month(); m <= 5 {
		w.low = math.Max(w.low, 52+math.Round(4*luck.Float64()))
		w.high = math.Max(w.high, w.low+8)
	}
	if open := 88.0; w.high > open && !w.hot { // doors and sides take the rest
		w.high = math.Round(open + (w.high-open)/2)
	}
	w.high = math.Min(w.high, 109)
	return w
}

// houseTable writes house.csv.
func (f *farm) houseTable() *table {
	t := columns("date,low,high,out_low,out_high,note")
	for _, w := range f.weather {
		note := ""
		switch {
		case w.on == hotFrom+2:
			note = "doors and sides open, shade on, still 100 by noon"
		case w.on == on("2024-03-21"):
			note = "burner ran all night"
		}
		if w.readByUs {
			t.row(w.on, w.low, w.high, w.outLow, w.outHigh, note)
		}
	}
	return t
}

// cold is a day's degrees Fahrenheit below 59, where the house needs heat.
func (w weather) cold() float64 { return math.Max(0, 59-(w.outLow+w.outHigh)/2) }

// degreeDays adds up the cold of a period.
func (f *farm) degreeDays(from, until day) float64 {
	sum := 0.0
	for _, w := range f.weather {
		if w.on >= from && w.on <= until {
			sum += w.cold()
		}
	}
	return sum
}

// chamberTable writes chamber.csv: both boxes, morning and evening, in the
// weeks when they are loaded.
func (f *farm) chamberTable() *table {
	t := columns("time,chamber,temp,humidity")
	luck := newChance(8)
	for season := 2023; season <= 2026; season++ {
		for d := in(season, "02-20"); d <= min(f.last, in(season, "06-10")); d++ {
			for _, box := range []string{bigBox, smallBox} {
				if f.standing(box, d) > 0 {
					chamberDay(t, luck, box, d)
				}
			}
		}
	}
	return t
}

// chamberDay writes a day's readings of one box.
func chamberDay(t *table, luck chance, box string, d day) {
	set := 72.0
	times := []string{"07:00", "18:30"}
	if box == smallBox {
		set = 80
		if d >= cookedFrom && d <= cookedUntil {
			set = cooked // the thermostat stuck
		}
	}
	for i, at := range times {
		if i == 1 && d%2 == 0 {
			continue
		}
		temp := set + 1.6*luck.NormFloat64() + float64(i)
		t.row(d.String()+"T"+at, box, trimmed("%.1f", temp), 84+luck.IntN(14))
	}
}
