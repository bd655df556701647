package report

import (
	"cmp"
	"fmt"
	"reflect"
	"slices"
	"testing"
	"testing/fstest"

	"traybook/records"
	"traybook/report/internal/booktest"
)

// gapOf finds what is missing by its name.
func gapOf(t *testing.T, r *Report, what string) Missing {
	t.Helper()
	return booktest.Find(t, what, r.Missing, func(m Missing) bool { return m.What == what })
}

// A cell that is missing is told once, with the batches that it touches.
func TestGapsOfBatches(t *testing.T) {
	b := booktest.New(t)
	b.Lot("L", "orache", 0.9)
	alike(b, 2, 90)
	b.Sowings[0].Lot, b.Sowings[1].Lot = "L", "lost label"
	b.Leave(&b.Sowings[0], "2025-04-10", 80, 0)
	b.Leave(&b.Sowings[1], "2025-04-10", 80, 0)
	b.Sowings[1].Surplus = records.Maybe[int]{}
	b.Sow("c", "2025-03-05", "orache", "x", "GONE", 1)
	b.Look("a0", "2025-04-09", 20, 20)
	b.Costs = append(b.Costs, records.Cost{Date: booktest.Day(t, "2025-04-10"), Category: records.Labour, Hours: records.Known(3.0)})
	r := reportOf(b, "2025-07-10")
	for what, batches := range map[string][]string{
		"usable plants left over": {"a1"}, "row of the seed lot": {"a1"}, "seed lot": {"c"}, "tray code": {"c"}, "date set out": {"c"},
		"count": {"c"}, "planned date": {"a0"}, "look at quality": {"a1", "c"}, "wage": nil, "price of a seed lot: L": {"a0"},
	} {
		m := gapOf(t, r, what)
		if !reflect.DeepEqual(m.Batches, batches) || batches != nil && (m.Touched != len(batches) || m.Season != 2025) {
			t.Errorf("%s: %+v, want %v", what, m, batches)
		}
	}
	if m := gapOf(t, r, "wage"); m.Touched != 3 || m.Season != 0 || m.Minutes != 5 {
		t.Errorf("%+v", m)
	}
}

// What takes most from the batches comes first; a gap of batches is told season by season, and a
// page of a season asks for its own and for those of all.
func TestGapsBySeasonAndSize(t *testing.T) {
	b := booktest.New(t)
	for i, season := range []int{2023, 2024, 2024} {
		code := fmt.Sprint("b", i)
		b.Sow(code, fmt.Sprintf("%d-03-01", season), "orache", "x", "AIR", 1)
		b.Count(code, fmt.Sprintf("%d-03-20", season), 90)
	}
	r := reportOf(b, over)
	var got []string
	for _, m := range r.Missing {
		if m.What == "date set out" {
			got = append(got, fmt.Sprint(m.Season, m.Batches))
		}
	}
	if fmt.Sprint(got) != "[2024 [b1 b2] 2023 [b0]]" {
		t.Errorf("%v", got)
	}
	if !slices.IsSortedFunc(r.Missing, func(a, b Missing) int { return cmp.Compare(b.Weight, a.Weight) }) {
		t.Error("not the costliest first")
	}
	in := r.MissingIn(2023)
	if !slices.ContainsFunc(in, func(m Missing) bool { return m.Season == 2023 }) || !slices.ContainsFunc(in, func(m Missing) bool { return m.Season == 0 }) ||
		slices.ContainsFunc(in, func(m Missing) bool { return m.Season == 2024 }) {
		t.Errorf("%+v", in)
	}
}

// over ends every season: the day is later than all of them.
const over = "2031-01-01"

// Where to write it: file, line and cell of the rows that are there, a new row where none
// is; how many minutes that takes, and none for what nobody can look at any more.
func TestPlacesOfGaps(t *testing.T) {
	files := fstest.MapFS{}
	for name, text := range map[string]string{
		"sowings.csv": "batch,sown,crop,variety,tray,trays,set_out,plants_out,chamber\n" +
			"a,2025-03-01,orache,x,T,1,2025-04-10,80,box\nb,2025-03-01,orache,x,T,1,,,\nc,2025-03-01,orache,x,U,1,,,\nd,2025-07-20,orache,x,T,1,,,\n",
		"counts.csv": "batch,date,tray,emerged\na,2025-03-20,,70\na,2025-03-20,1,71\n",
		"out.csv":    "to,last,plants,batch,date\nfield,,20,b,2025-04-02\nfield,,30,b,2025-04-05\n",
		"trays.csv":  "tray,kind,cells,count\nT,k,100,4\nT,k,100,\n",
	} {
		files[name] = &fstest.MapFile{Data: []byte(text)}
	}
	book, problems := records.Load(files)
	r, err := New(book, problems, Options{Today: booktest.Day(t, "2025-08-01")})
	if err != nil || len(r.Records) != 4 {
		t.Fatal(err, problems)
	}
	for what, want := range map[string]struct {
		places  string
		minutes int
	}{
		"usable plants left over":   {"[{sowings.csv surplus 2  a}]", 1},
		"date set out":              {"[{sowings.csv set_out 3 G3 b} {sowings.csv set_out 4 G4 c}]", 2},
		"row that clears the batch": {"[{out.csv last 3 B3 b}]", 1},
		"day out of the chamber":    {"[{sowings.csv chamber_out 2  a}]", 1},
		"tray code":                 {"[{trays.csv tray 0  U}]", 3},
		"tray numbers":              {"[{counts.csv tray 2 C2 a}]", 1},
		"count":                     {"[{counts.csv emerged 0  d}]", 5},
		"number of trays bought: T": {"[{trays.csv count 3 D3 T}]", 3},
		"looks at quality":          {"[]", 0},
		"seed lots":                 {"[{lots.csv lot 0  orache x}]", 3},
		"places on the benches":     {"[{book.csv value 0  places on the benches}]", 5},
	} {
		if m := gapOf(t, r, what); fmt.Sprint(m.Places) != want.places || m.Minutes != want.minutes {
			t.Errorf("%s: %v, %d minutes; want %s, %d", what, m.Places, m.Minutes, want.places, want.minutes)
		}
	}
}

// A gap is told where it is one: of chambers only where a batch stood in one, of an
// unpriced tray not that it seems dear.
func TestGapsThatAreNone(t *testing.T) {
	b := booktest.New(t)
	b.Trays[0].Count = records.Known(3)
	alike(b, 3, 80)
	for _, m := range reportOf(b, over).Missing {
		switch m.What {
		case "chamber readings", "life of a tray: AIR", "life of a tray: AIR, WALL", "places in the chambers":
			t.Errorf("%+v", m)
		}
	}
	b.Sowings[0].Chamber = "box"
	r := reportOf(b, over)
	if m := gapOf(t, r, "chamber readings"); m.Touched != 1 || m.Minutes != 0 || m.Places != nil {
		t.Errorf("%+v", m)
	}
	gapOf(t, r, "plants wanted")
	gapOf(t, r, "number of trays bought: WALL")
}

// A gap without a place cannot be mended; every other says which column of which log.
func TestGapsAreMendedSomewhere(t *testing.T) {
	for seed := range uint64(4) {
		for _, m := range reportOf(booktest.Farm(t, seed, 2, 40)).Missing {
			if (m.Minutes > 0) != (len(m.Places) > 0) || m.Touched < len(m.Batches) {
				t.Errorf("%+v", m)
			}
			for _, at := range m.Places {
				if at.File == "" || at.Column == "" {
					t.Errorf("%s: %+v", m.What, at)
				}
			}
		}
	}
}

// A detail of many batches costs less than plants out of a few.
func TestDetailsComeLater(t *testing.T) {
	b := booktest.New(t)
	for i := range 6 {
		code := fmt.Sprint("b", i)
		s := b.Sow(code, "2025-03-01", "orache", "x", "AIR", 1)
		b.Leave(s, "2025-04-10", 80, 0)
		if i == 0 {
			s.Surplus = records.Maybe[int]{}
		}
		b.Count(code, "2025-03-08", 60)
		b.Count(code, "2025-03-20", 80)
	}
	b.Look("b0", "2025-04-09", 20, 20)
	r := reportOf(b, over)
	plants, count := gapOf(t, r, "usable plants left over"), gapOf(t, r, "early enough first count")
	if plants.Touched != 1 || count.Touched != 6 || !(plants.Weight > count.Weight) {
		t.Errorf("%+v\n%+v", plants, count)
	}
}

// The mix of a pair is left out for want of a volume, or of the bills: each has its place.
func TestPlaceOfThePairsGap(t *testing.T) {
	b := pair(t, 1, 2, 3, 1)
	for i := range b.Trays {
		b.Trays[i].CellML = records.Known(40.0 + float64(i))
	}
	m := gapOf(t, reportOf(b), "mix a use: HEAVY and THIN")
	if fmt.Sprint(m.Places) != "[{costs.csv amount 0  mix}]" || m.Minutes != 5 {
		t.Errorf("%+v", m)
	}
}

// Cells looked at are to be written in the counts that lack them. A batch is due for a count
// from the day after its crop takes to come up.
func TestGapsOfCounts(t *testing.T) {
	b := booktest.New(t)
	b.Sow("a", "2025-03-01", "orache", "x", "GONE", 1)
	b.Count("a", "2025-03-08", 20).At = records.At{Line: 2, Row: 2}
	none := b.Count("a", "2025-03-09", 0)
	none.At, none.Cells = records.At{Line: 3, Row: 3}, records.Known(int32(0))
	b.Sow("b", "2025-03-10", "orache", "x", "AIR", 1)
	if m := gapOf(t, reportOf(b, "2025-03-18"), "cells looked at"); len(m.Places) != 1 || m.Places[0].Line != 2 {
		t.Errorf("%+v", m)
	}
	// A count written late stands last in the sheet, whatever its day.
	b.Count("a", "2025-03-07", 12).At = records.At{Line: 9, Row: 9}
	b.Count("a", "2025-03-12", 24).At = records.At{Line: 4, Row: 4}
	slices.SortFunc(b.Counts, func(x, y records.Count) int { return int(x.Date - y.Date) }) // as a book that was read has them
	var lines []int
	for _, p := range gapOf(t, reportOf(b, "2025-03-18"), "cells looked at").Places {
		lines = append(lines, p.Line)
	}
	if !slices.Equal(lines, []int{2, 4, 9}) {
		t.Errorf("the cells to fill are in lines %v", lines)
	}
	for today, due := range map[string]bool{"2025-03-17": false, "2025-03-18": true} {
		if is := slices.ContainsFunc(reportOf(b, today).Missing, func(m Missing) bool { return m.What == "count" }); is != due {
			t.Errorf("%s: due for a count: %v", today, is)
		}
	}
}
