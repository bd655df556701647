package main

import (
	"cmp"
	"slices"
)

// book writes the big book.
func (f *farm) book() files {
	all := files{
		"book.csv":    settings().csv(),
		"trays.csv":   trayTable().csv(),
		"lots.csv":    f.lotTable().csv(),
		"sowings.csv": sowings(f.batches).csv(),
		"counts.csv":  countTable(f.batches).csv(),
		"scores.csv":  scoreTable(f.batches).csv(),
		"out.csv":     outTable(f.batches).csv(),
		"costs.csv":   f.costTable().csv(),
		"chamber.csv": f.chamberTable().csv(),
		"house.csv":   f.houseTable().csv(),
		"wishes.csv":  wanting().csv(),
		"changes.csv": changed().csv(),
	}
	for name, text := range notes {
		all["notes/"+name] = []byte(text)
	}
	return all
}

// settings writes book.csv with every setting.
func settings() *table {
	t := columns("setting,value,note")
	for _, s := range [][3]string{
		{"farm", "Ottermoss Farm", "an invented farm"},
		{"currency", "USD", ""},
		{"season_starts", "1", "January"},
		{"dates", "ymd", ""},
		{"decimal", "point", ""},
		{"temperature", "F", "house, chambers and outdoors"},
		{"wage", "19", "what Tobit costs an hour, all told"},
		{"discount_rate", "4", "the operating loan, less inflation"},
		{"usable_from", "3", "we set out a 3 when the bed is waiting"},
		{"score_1", "compost", "would not take it as a gift"},
		{"score_2", "poor", "leggy, yellow or ball falls apart"},
		{"score_3", "will do", "plants out with care"},
		{"score_4", "good", "ball lifts whole"},
		{"score_5", "picture", ""},
		{"confidence", "95", ""},
		{"sure_of_target", "90", "nine sowings in ten should be enough"},
		{"plug_price", "0.32", "what Alderquay asks for a plug"},
		{"heating_months", "2-5", "burner lit early February, off by June"},
		{"bench_places", text(benchPlaces), "ten benches"},
		{"chamber_places", text(chamberPlaces), "8 in the big box, 6 in the small one"},
		{"tray_turnaround", "3", "soaked, scrubbed, dried"},
	} {
		t.row(s[0], s[1], s[2])
	}
	return t
}

const sowingColumns = "batch,sown,crop,variety,lot,tray,trays,cells,seeds_per_cell,start,from,chamber,chamber_out,planned,wanted,replaces,set_out,plants_out,surplus,note"

// sowings writes sowings.csv.
func sowings(batches []*batch) *table {
	t := columns(sowingColumns)
	for _, b := range batches {
		lot := ""
		if b.lot != nil {
			lot = b.lot.code
		}
		out, plants, surplus := b.setOut()
		t.row(b.code, b.sown, b.crop.name, b.variety, lot, b.tray.code, b.trays, known(b.cells, b.part),
			known(b.seeds, b.seeds > 1), b.start, b.from, b.chamber, b.chamberOut, b.planned,
			known(b.wanted, b.wanted > 0), b.replaces, out, plants, surplus, b.note)
	}
	return t
}

// setOut gives the cells set_out, plants_out and surplus of sowings.csv.
func (b *batch) setOut() (day, string, string) {
	if b.how != inSowings && b.how != noSurplus || len(b.leaves) == 0 {
		return 0, "", ""
	}
	l := b.leaves
	return l[0].on, known(l[0].plants, true), known(l[1].plants, b.how == inSowings)
}

// dated collects rows of a log that is kept by date.
type dated struct {
	on   day
	cell []any
}

// byDate writes the rows in order of date, as they were typed.
func byDate(header string, rows []dated) *table {
	slices.SortStableFunc(rows, func(a, b dated) int { return cmp.Compare(a.on, b.on) })
	t := columns(header)
	for _, r := range rows {
		t.row(r.cell...)
	}
	return t
}

// countTable writes counts.csv.
func countTable(batches []*batch) *table {
	var rows []dated
	for _, b := range batches {
		for _, c := range b.counts {
			rows = append(rows, dated{c.on, []any{b.code, c.on, known(c.tray, c.tray > 0), known(c.cells, c.cells > 0), known(c.emerged, !c.asEmpty),
				known(c.empty, c.asEmpty), known(c.lost, c.lost > 0), c.cause, c.note}})
		}
	}
	return byDate("batch,date,tray,cells,emerged,empty,lost,cause,note", rows)
}

// scoreTable writes scores.csv.
func scoreTable(batches []*batch) *table {
	var rows []dated
	for _, b := range batches {
		for _, l := range b.looks {
			rows = append(rows, dated{l.on, append([]any{b.code, l.on}, l.cells()...)})
		}
	}
	return byDate("batch,date,looked,usable,s1,s2,s3,s4,s5,score,note", rows)
}

// cells gives a look in the form it was written.
func (l look) cells() []any {
	s := l.shares
	switch l.form {
	case inSowings:
		return []any{"", "", s[0], s[1], s[2], s[3], s[4], "", l.note}
	case inOut:
		good := s[2] + s[3] + s[4]
		return []any{good + s[0] + s[1], good, "", "", "", "", "", "", l.note}
	}
	return []any{"", "", "", "", "", "", "", l.mark, l.note}
}

// outTable writes out.csv.
func outTable(batches []*batch) *table {
	var rows []dated
	for _, b := range batches {
		if b.how != inOut && b.how != unfinished {
			continue
		}
		for _, l := range b.leaves {
			last := ""
			if l.last {
				last = "yes"
			}
			paid := ""
			if l.money > 0 {
				paid = money(l.money)
			}
			rows = append(rows, dated{l.on, []any{b.code, l.on, l.plants, l.to, last, paid, l.note}})
		}
	}
	return byDate("batch,date,plants,to,last,money,note", rows)
}

// sortCosts orders the money book by date, bills before hours of the same day.
func sortCosts(costs []cost) []cost {
	slices.SortStableFunc(costs, func(a, b cost) int { return cmp.Compare(a.on, b.on) })
	return costs
}
