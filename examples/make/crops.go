package main

// crop holds what the invented house knows of a crop. Days and rates lie
// within the ranges that handbooks of the trade give.
type crop struct {
	name    string
	code    string  // two letters that begin its batches' labels
	rate    float64 // emergence of one seed
	label   float64 // percent on the packet
	t50     float64 // days until half of what comes up stands
	stay    int     // days from sowing to the field
	chamber int     // days in the germination chamber; 0: none, started on the heated bench
	gram    float64 // seeds per gram; 0: bought by the count
	cents   float64 // price of a seed
	heat    float64 // what a hot July week takes off, on the logit scale
	most    float64 // Fahrenheit above which little comes up
	asked   float64 // plants the field is promised of a cell, beside what is usual
}

var crops = []*crop{
	{name: "lettuce", code: "LE", rate: .91, label: 95, t50: 3.4, stay: 34, chamber: 3, cents: 1.9, heat: 2.6, most: 85},
	{name: "tomato", code: "TO", rate: .92, label: 93, t50: 6.6, stay: 49, chamber: 4, cents: 9, most: 95},
	{name: "pepper", code: "PE", rate: .84, label: 88, t50: 9.5, stay: 58, chamber: 6, cents: 11, most: 95},
	{name: "eggplant", code: "EG", rate: .79, label: 85, t50: 9, stay: 56, chamber: 5, cents: 12, most: 95},
	{name: "onion", code: "ON", rate: .85, label: 90, t50: 6.5, stay: 62, gram: 260, cents: .55, most: 95},
	{name: "leek", code: "LK", rate: .83, label: 88, t50: 8, stay: 64, gram: 360, cents: .8, most: 95},
	{name: "bunching onion", code: "BO", rate: .78, label: 85, t50: 6.5, stay: 42, chamber: 3, gram: 400, cents: .25, most: 95},
	{name: "celery", code: "CY", rate: .68, label: 80, t50: 12, stay: 74, chamber: 7, cents: 1.1, heat: 1.5, most: 85},
	{name: "parsley", code: "PA", rate: .74, label: 80, t50: 13, stay: 52, chamber: 6, gram: 600, cents: .35, most: 95},
	{name: "basil", code: "BA", rate: .84, label: 88, t50: 5.5, stay: 35, chamber: 3, gram: 620, cents: .4, most: 95},
	{name: "broccoli", code: "BR", rate: .90, label: 94, t50: 4.3, stay: 36, chamber: 3, cents: 3.2, most: 100},
	{name: "cabbage", code: "CA", rate: .91, label: 94, t50: 4.4, stay: 37, chamber: 3, cents: 2.8, most: 100},
	{name: "cauliflower", code: "CF", rate: .86, label: 90, t50: 4.8, stay: 36, chamber: 3, cents: 5.5, most: 95},
	{name: "kale", code: "KA", rate: .91, label: 93, t50: 4.2, stay: 38, chamber: 3, cents: .8, most: 100},
	{name: "kohlrabi", code: "KO", rate: .91, label: 94, t50: 4.2, stay: 31, chamber: 3, cents: 2.1, most: 100},
	{name: "pak choi", code: "PC", rate: .92, label: 94, t50: 3.6, stay: 25, chamber: 2, cents: 1.4, most: 95},
	{name: "chard", code: "CH", rate: .80, label: 85, t50: 6, stay: 34, chamber: 3, most: 95},
	{name: "beet", code: "BE", rate: .72, label: 82, t50: 6, stay: 33, chamber: 3, gram: 52, cents: .6, most: 95},
	{name: "spinach", code: "SP", rate: .70, label: 80, t50: 6.5, stay: 30, chamber: 2, cents: .6, heat: 1.8, most: 85, asked: .1},
	{name: "fennel", code: "FE", rate: .79, label: 84, t50: 7, stay: 35, chamber: 4, cents: 2.6, most: 85},
	{name: "cucumber", code: "CU", rate: .91, label: 95, t50: 4.6, stay: 24, chamber: 2, cents: 11, most: 106},
	{name: "summer squash", code: "SS", rate: .88, label: 93, t50: 5.2, stay: 23, chamber: 2, cents: 7, most: 106},
	{name: "winter squash", code: "WS", rate: .87, label: 92, t50: 5.6, stay: 26, chamber: 2, cents: 9, most: 106},
	{name: "sunflower", code: "SF", rate: .90, label: 92, t50: 4.4, stay: 22, chamber: 1, most: 95},
	{name: "strawberry", code: "ST", stay: 40},
	{name: "sweet potato", code: "SW", stay: 36},
}

// odd lists the varieties that come up unlike the rest of their crop, on the
// logit scale. The names are invented.
var odd = map[string]float64{
	"Stagshoot":  -1.0,
	"Vesper":     -.7,
	"Rustle Oak": 1.1,
	"Drumhouse":  -.35,
	"Oxpenny":    .2,
	"Marshcup":   -.1,
	"Longmire":   -.4,
}

// tray is a tray code as trays.csv knows it.
type tray struct {
	code  string
	kind  string
	cells int
	ml    float64
}

const (
	air   = "air-pruning"
	solid = "solid-wall"
)

var trays = []*tray{
	{"A50", air, 50, 98}, {"A72", air, 72, 46}, {"A128", air, 128, 25},
	{"S50", solid, 50, 90}, {"S72", solid, 72, 42}, {"S128", solid, 128, 22},
	{"S200", solid, 200, 12}, {"S288", solid, 288, 6.5},
	{"FLAT", "open flat", 200, 15},
}

// purchase is a row of trays.csv.
type purchase struct {
	code, bought               string
	count                      int
	price, lasts, uses, minute float64 // 0: not written
	note                       string
}

var purchases = []purchase{
	{"A50", "2022-11-18", 10, 13.5, 15, 60, 5.5, "first heavy trays, for potting on"},
	{"A72", "2022-11-18", 14, 9.9, 15, 60, 5.5, ""},
	{"A128", "2022-11-18", 12, 13.2, 15, 60, 5.3, ""},
	{"A128", "2024-01-19", 8, 13.6, 15, 60, 5.3, "after the shortage of spring 2023"},
	{"A128", "2025-08-30", -2, 0, 0, 0, 0, "run over by the barrow"},
	{"S50", "2022-02-01", 28, 2.1, 0, 4, 5, ""},
	{"S50", "2025-02-03", 12, 2.35, 0, 4, 5, ""},
	{"S72", "2022-02-01", 26, 1.95, 0, 4, 5, "four uses is a guess"},
	{"S72", "2024-12-02", -6, 0, 0, 0, 0, "cracked, to the recycler"},
	{"S72", "2025-02-03", 22, 2.15, 0, 4, 5, "four uses is still a guess"},
	{"S128", "2022-02-01", 46, 1.85, 0, 4, 5, ""},
	{"S128", "2023-12-04", -22, 0, 0, 0, 0, "cracked, to the recycler"},
	{"S128", "2024-02-05", 26, 1.95, 0, 4, 5, ""},
	{"S128", "2024-12-02", -24, 0, 0, 0, 0, "cracked, to the recycler"},
	{"S128", "2025-02-03", 26, 2, 0, 4, 5, ""},
	{"S128", "2025-12-01", -24, 0, 0, 0, 0, "cracked, to the recycler"},
	{"S128", "2026-02-02", 26, 2.1, 0, 4, 5, "they go after four sowings, at the corners"},
	{"S200", "2022-02-01", 16, 1.9, 0, 4, 5, ""},
	{"S200", "2026-01-20", 10, 2.1, 0, 4, 5, "for the celery"},
	{"S288", "2022-02-01", 18, 1.9, 0, 4, 5, ""},
	{"FLAT", "", 6, 0, 0, 0, 0, "made of old boards, untreated"},
}

// places lists the trays that do not take one place on a bench.
var places = map[string]float64{"FLAT": 1.5}

// trayTable writes trays.csv.
func trayTable() *table {
	t := columns("tray,kind,cells,cell_ml,bought,count,price,lasts,uses,minutes,places,note")
	for _, p := range purchases {
		k := trayOf(p.code)
		t.row(k.code, k.kind, k.cells, k.ml, p.bought, p.count, blank(p.price), blank(p.lasts), blank(p.uses), blank(p.minute), blank(places[p.code]), p.note)
	}
	return t
}

// blank writes nothing for 0.
func blank(v float64) string {
	if v == 0 {
		return ""
	}
	return text(v)
}

// money writes an amount to the cent.
func money(v float64) string {
	return trimmed("%.2f", v)
}

func trayOf(code string) *tray {
	for _, t := range trays {
		if t.code == code {
			return t
		}
	}
	return nil
}

func cropOf(name string) *crop {
	for _, c := range crops {
		if c.name == name {
			return c
		}
	}
	panic("no crop " + name)
}

// owned counts the trays of a code on a day.
func owned(code string, d day) float64 {
	n := 0
	for _, p := range purchases {
		if p.code == code && (p.bought == "" || on(p.bought) <= d) {
			n += p.count
		}
	}
	return float64(n)
}
