package main

import (
	"fmt"
	"math"
)

// largest is what a large book is made of.
type largest struct{ seasons, sowings, counts int }

// firstOf is the year of the first season; the last is 2026.
func (l largest) firstOf() int { return 2027 - l.seasons }

// large writes a book of any size, for measuring: so many seasons of so many sowings,
// and so many counts in all. It has every log, and nothing in it to complain of.
func large(l largest) files {
	g := &raising{largest: l, luck: newChance(9)}
	g.tables()
	for year := l.firstOf(); year <= 2026; year++ {
		g.season(year)
	}
	all := files{"book.csv": settings().csv()}
	for name, t := range g.of {
		all[name+".csv"] = t.csv()
	}
	return all
}

// raising is a large book while it is written.
type raising struct {
	largest
	luck   chance
	of     map[string]*table
	sown   int // batches so far
	counts int // rows of counts so far
}

// tables starts the logs, with trays enough for all.
func (g *raising) tables() {
	g.of = map[string]*table{
		"trays":   columns("tray,kind,cells,cell_ml,bought,count,price,lasts,uses,minutes,note"),
		"lots":    columns("lot,crop,variety,supplier,bought,germ_label,seeds,price"),
		"sowings": columns("batch,sown,crop,variety,lot,tray,trays,chamber,chamber_out,planned,wanted,note"),
		"counts":  columns("batch,date,tray,emerged,lost,cause,note"),
		"scores":  columns("batch,date,looked,usable,note"),
		"out":     columns("batch,date,plants,to,last,note"),
		"costs":   columns("date,from,until,category,task,amount,hours,batch,note"),
		"chamber": columns("time,chamber,temp,humidity"),
		"house":   columns("date,low,high,out_low,out_high"),
	}
	for _, t := range trays[:8] {
		price, lasts, uses := 2.1, "", "4"
		if t.kind == air {
			price, lasts, uses = 13.2, "15", "60"
		}
		g.of["trays"].row(t.code, t.kind, t.cells, t.ml, fmt.Sprintf("%d-11-01", g.firstOf()-1), g.sowings, price, lasts, uses, 5, "")
	}
}

// season adds a year's rows.
func (g *raising) season(year int) {
	for _, c := range seedCrops() {
		for v := range varieties {
			g.of["lots"].row(lotName(year, c, v), c.name, nameOf(v), "Alderquay", in(year, "01-04"), c.label, 20_000, 60)
		}
	}
	for i := range g.sowings {
		g.batch(year, i)
	}
	for d := in(year, "01-05"); d < in(year, "11-20"); d++ {
		g.of["house"].row(d, 48+int(d)%9, 74+int(d)%13, 30+int(d)%17, 52+int(d)%23)
		for _, box := range []string{"big", "small"} {
			g.of["chamber"].row(d.String()+" 07:30", box, 72+int(d)%4, 92+int(d)%6)
		}
	}
	for month := 2; month <= 9; month++ {
		d := in(year, fmt.Sprintf("%02d-26", month))
		for i, category := range []string{"heat", "power", "water", "mix", "feed"} {
			g.of["costs"].row(d, d-25, d, category, "", 90+10*i+month, "", "", "")
		}
		g.of["costs"].row(d, d-25, d, "labour", "care", "", 20+month, "", "")
		g.of["costs"].row(d, d-25, d, "labour", "sowing", "", 11+month, "", "")
	}
}

const varieties = 6

// seedCrops are the crops raised from seed.
func seedCrops() []*crop { return crops[:24] }

func nameOf(variety int) string { return fmt.Sprintf("Farhill %d", variety+1) }

func lotName(year int, c *crop, variety int) string {
	return fmt.Sprintf("%02d-%s-%d", year%100, c.code, variety+1)
}

// batch adds the i-th sowing of a year and all that was written of it.
func (g *raising) batch(year, i int) {
	c := seedCrops()[i%24]
	t, variety := trays[i/24%8], i/192%varieties
	sown := in(year, "01-20") + day(i*230/g.sowings)
	code, out := fmt.Sprintf("%s%02d-%04d", c.code, year%100, i+1), sown+day(c.stay)
	note := ""
	if i%7 == 0 {
		note = "sown late, the mix was frozen"
	}
	g.sown++
	g.of["sowings"].row(code, sown, c.name, nameOf(variety), lotName(year, c, variety), t.code, 2, "big", sown+3, out, t.cells*3/2, note)
	up := g.emerged(code, sown, c, t)
	g.of["scores"].row(code, out-2, 20, 15+g.luck.IntN(6), "")
	g.of["out"].row(code, out, up*9/10, "field", "yes", "")
	if i%10 == 0 {
		g.of["costs"].row(sown, "", "", "other", "", fmt.Sprintf("%d.50", 2+i%9), "", code, "")
	}
}

// emerged adds a batch's counts, tray by tray, and returns what stands at the last.
func (g *raising) emerged(code string, sown day, c *crop, t *tray) (up int) {
	due := int(float64(g.largest.counts)*float64(g.sown)/float64(g.seasons*g.sowings)) - g.counts
	days := max(due/2, 1)
	for tray := range 2 {
		final := g.luck.of(t.cells, shift(c.rate, .25*g.luck.NormFloat64()))
		for k := 1; k <= days; k++ {
			stands := int(math.Round(float64(final) * (1 - math.Pow(.25, 3*float64(k)/float64(days)))))
			g.of["counts"].row(code, sown+day(3+k), tray+1, min(stands, final), "", "", "")
			g.counts++
		}
		up += final
	}
	return up
}
