package main

import "math"

// plan is a line of the winter's sowing plan.
type plan struct {
	crop, variety string
	tray          string
	trays         float64
	first         string // month-day of the first sowing
	every, times  int    // days between sowings, number of sowings
	beside        string // sown half and half with this code ...
	turn          int    // ... every so many sowings
	seeds         int    // seeds a cell
	since, till   int    // seasons; 0: always
	onto          string // tray it is pricked out or potted on into
	start         string // plug or cutting, where not seed
}

var plans = []plan{
	{crop: "onion", variety: "Barnloft", tray: "S288", trays: 5, first: "02-08", every: 9, times: 2},
	{crop: "onion", variety: "Cinderskin", tray: "S288", trays: 3, first: "02-12", every: 1, times: 1},
	{crop: "leek", variety: "Stiltmere", tray: "S200", trays: 3, first: "02-22", every: 26, times: 2},
	{crop: "leek", variety: "Longmire", tray: "S200", trays: 2, first: "03-04", every: 20, times: 1, till: 2025},
	{crop: "celery", variety: "Brookrib", tray: "S200", trays: 1, first: "02-19", every: 34, times: 2},
	{crop: "parsley", variety: "Mossknot", tray: "S128", trays: 1, first: "02-25", every: 60, times: 2},
	{crop: "parsley", variety: "Broadwisp", tray: "S128", trays: 1, first: "02-25", every: 60, times: 1, till: 2024},
	{crop: "bunching onion", variety: "Greenquill", tray: "A128", trays: 2, first: "03-14", every: 27, times: 4, beside: "S128", turn: 2, seeds: 7},
	{crop: "bunching onion", variety: "Pipstem", tray: "A128", trays: 1, first: "04-08", every: 55, times: 2, seeds: 7},
	{crop: "tomato", variety: "Brassbutton", tray: "FLAT", trays: .5, first: "03-06", every: 22, times: 2, onto: "A50"},
	{crop: "tomato", variety: "Ember Parish", tray: "FLAT", trays: .5, first: "03-10", every: 21, times: 1, onto: "A50"},
	{crop: "pepper", variety: "Lanthorn", tray: "S200", trays: 1, first: "02-27", every: 18, times: 1, onto: "A72"},
	{crop: "pepper", variety: "Little Furnace", tray: "S200", trays: .5, first: "03-02", every: 20, times: 1, onto: "A72"},
	{crop: "eggplant", variety: "Inkhorn", tray: "S200", trays: .5, first: "03-08", every: 20, times: 1, onto: "A50"},
	{crop: "lettuce", variety: "Fenwimple", tray: "A128", trays: 3, first: "02-28", every: 19, times: 9, beside: "S128", turn: 2},
	{crop: "lettuce", variety: "Rustle Oak", tray: "A128", trays: 2, first: "03-15", every: 24, times: 6, beside: "S128", turn: 2},
	{crop: "lettuce", variety: "Candle Cos", tray: "S128", trays: 2, first: "03-12", every: 27, times: 4},
	{crop: "lettuce", variety: "Tarn Crisp", tray: "S72", trays: 2, first: "04-08", every: 40, times: 3},
	{crop: "kale", variety: "Tatterling", tray: "A128", trays: 3, first: "03-12", every: 33, times: 4, beside: "S128", turn: 2},
	{crop: "kale", variety: "Blackfrill", tray: "A128", trays: 2, first: "04-09", every: 70, times: 2},
	{crop: "cabbage", variety: "Conefield", tray: "A72", trays: 4, first: "03-08", every: 34, times: 5, beside: "S72", turn: 1, since: 2025},
	{crop: "cabbage", variety: "Conefield", tray: "A72", trays: 3, first: "03-08", every: 34, times: 4, till: 2024},
	{crop: "cabbage", variety: "Drumhouse", tray: "S72", trays: 3, first: "04-20", every: 28, times: 2},
	{crop: "broccoli", variety: "Hedgecrown", tray: "A72", trays: 4, first: "03-10", every: 30, times: 5, beside: "S72", turn: 2},
	{crop: "broccoli", variety: "Stagshoot", tray: "S72", trays: 3, first: "04-08", every: 50, times: 3},
	{crop: "cauliflower", variety: "Chalkwold", tray: "A72", trays: 3, first: "04-10", every: 90, times: 2},
	{crop: "kohlrabi", variety: "Tumblestone", tray: "A128", trays: 2, first: "03-09", every: 40, times: 4},
	{crop: "pak choi", variety: "Spoonmarsh", tray: "A128", trays: 1, first: "03-05", every: 35, times: 3},
	{crop: "chard", variety: "Stainstem", tray: "A128", trays: 1, first: "04-08", every: 75, times: 2},
	{crop: "beet", variety: "Oxpenny", tray: "A128", trays: 3, first: "03-10", every: 35, times: 3, beside: "S128", turn: 2, seeds: 3},
	{crop: "beet", variety: "Claret Clod", tray: "A128", trays: 2, first: "04-10", every: 60, times: 2, seeds: 3},
	{crop: "spinach", variety: "Slatemere", tray: "S128", trays: 2, first: "02-26", every: 13, times: 3},
	{crop: "spinach", variety: "Slatemere", tray: "A128", trays: 2, first: "08-10", every: 20, times: 2},
	{crop: "fennel", variety: "Fatwick", tray: "A128", trays: 1.5, first: "04-08", every: 40, times: 3},
	{crop: "basil", variety: "Noonspice", tray: "A128", trays: 1, first: "04-09", every: 24, times: 3},
	{crop: "basil", variety: "Vesper", tray: "S128", trays: .5, first: "04-10", every: 30, times: 2},
	{crop: "cucumber", variety: "Millrace", tray: "S50", trays: 3, first: "04-12", every: 28, times: 3},
	{crop: "cucumber", variety: "Longbarrow", tray: "A50", trays: 2, first: "04-22", every: 30, times: 1, beside: "S50", turn: 1, since: 2024, till: 2025},
	{crop: "summer squash", variety: "Giltgourd", tray: "S50", trays: 3, first: "04-18", every: 26, times: 3},
	{crop: "winter squash", variety: "Cobblehurst", tray: "S50", trays: 4, first: "04-30", every: 10, times: 2},
	{crop: "sunflower", variety: "Gantry Gold", tray: "S72", trays: 2, first: "04-10", every: 28, times: 3},
	{crop: "strawberry", variety: "Hullaby", tray: "S50", trays: 4, first: "03-14", every: 1, times: 1, start: "plug", since: 2024},
	{crop: "sweet potato", variety: "Clayfoot", tray: "S50", trays: 3, first: "04-25", every: 1, times: 1, start: "cutting", since: 2023},
	{crop: "spinach", variety: "Marshcup", tray: "S128", trays: 2, first: "03-01", every: 13, times: 3},
}

// growth is how much the farm sows, beside its plan.
var growth = map[int]float64{2023: .9, 2024: 1, 2025: 1.05, 2026: 1.05}

// more is how much of a crop is sown beside that, in 2023, 2024, 2025 and 2026: less of
// what is hard to raise in 2025, and far more of it for the kitchens of 2026.
var more = map[string][4]float64{
	"celery":         {1, 1.5, .5, 4},
	"parsley":        {1, 2, .5, 4},
	"spinach":        {.8, 1.2, .5, 1.6},
	"leek":           {1, 1, .7, 1.5},
	"basil":          {1, 1, .5, 1.5},
	"fennel":         {1, 1, .7, 1.5},
	"bunching onion": {1, .9, 2.2, 1},
	"beet":           {.9, .9, 1.7, .8},
	"lettuce":        {1, 1, 1.15, .85},
	"kale":           {1, 1, 1.2, .8},
}

// size is the trays of a sowing of the plan in a season, to half a tray.
func (p *plan) size(season int) float64 {
	trays := p.trays * growth[season]
	if m, ok := more[p.crop]; ok {
		trays *= m[season-2023]
	}
	return math.Max(.5, math.Round(2*trays)/2)
}
