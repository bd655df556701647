package chart

import (
	"slices"
	"strconv"
	"testing"

	"traybook/records"
	"traybook/report"
	"traybook/report/trays"
)

// pairs is a book of three codes of 100 cells: AIR at 12.00 for 4 uses, WALL and TIN
// at 2.00 for 2 uses: a use of AIR costs 2.00 more. A plant is worth 0.50.
func pairs(t *testing.T) book {
	b := newBook(t)
	b.Settings.TransplantValue = records.Known(0.5)
	b.Tray("TIN", "tin", 100)
	for i := range b.Trays {
		b.Trays[i].Price, b.Trays[i].Uses, b.Trays[i].Count = records.Known(2.0), records.Known(2.0), records.Known(2)
	}
	b.Trays[0].Price, b.Trays[0].Uses = records.Known(12.0), records.Known(4.0)
	return b
}

// ofPair draws the pair of AIR and another code.
func ofPair(r *report.Report, other string, draw func(*report.Report, *trays.Payback) []Spec) (specs []Spec) {
	for i, p := range r.Trays.Payback {
		if p.Tray == "AIR" && p.Other == other {
			specs = append(specs, draw(r, &r.Trays.Payback[i])...)
		}
	}
	return specs
}

// R 4.2.2: t.test(c(-5, 10, 15, 20))$conf.int is -7.188 to 27.188.
func TestMatchesWithTheirMean(t *testing.T) {
	b := pairs(t)
	for day, gain := range map[string]int{"2025-03-01": -5, "2025-03-21": 10, "2025-04-10": 15, "2025-04-30": 20} {
		b.matched(day, map[string]int{"AIR": 70 + gain, "WALL": 70})
	}
	b.matched("2025-06-01", map[string]int{"AIR": 80, "TIN": 70})
	r := b.report()
	s := only(t, ofPair(r, "WALL", matches))
	names, notes := rowsOf(s)
	same(t, "names", names, "mean and its range", "one matched sowing each")
	same(t, "notes", notes, "4 matches", "")
	if dots := items(t, s, "single"); len(dots) != 4 || dots[0][0] != -5.0 || dots[3][0] != 20.0 {
		t.Errorf("dots %v", dots)
	}
	if at := items(t, s, "pays from +4.0"); at[0][0] != 4.0 { // 2.00 of 0.50 each
		t.Errorf("break-even %v", at)
	}
	ends(t, s, ". In 3 of 4 matched sowings AIR gave more usable plants. On average +10.0 plants a tray, between −7.2 and +27.2; it pays from +4.0.")
	few := only(t, ofPair(r, "TIN", matches))
	names, notes = rowsOf(few)
	same(t, "names", names, "too few for a mean", "one matched sowing each")
	same(t, "notes", notes, "1 match", "")
	ends(t, few, ". In 1 of 1 matched sowings AIR gave more usable plants. They are too few for a mean.")
}

// next is a pair sown side by side on six dates, 4, 3, 2, 1, 1 and 1 trays of each:
// of the 8 wanted at most 2 are owned, trays 3 and 4 are used 3 times a season, 5 and
// 6 twice, 7 and 8 once. A use gains 1.20 (2 plants at 0.10 and 1.00 of WALL worn), at
// most 1.35; over 4.8 seasons of 3, 2 and 1 uses: 17.28, 11.52 (12.98 at most) and 5.76.
func next(t *testing.T, price float64) book {
	b := pairs(t)
	b.Settings.TransplantValue = records.Known(0.1)
	b.Trays[0].Price, b.Trays[0].Lasts, b.Trays[0].Uses = records.Known(price), records.Known(4.8), records.Maybe[float64]{}
	gains := []int{1, 2, 4, 0, 3, 2}
	for i, trays := range []int{4, 3, 2, 1, 1, 1} {
		sown := (b.Day("2025-01-01") + records.Date(20*i)).String()
		b.matched(sown, map[string]int{"AIR": trays * (80 + gains[i]), "WALL": trays * 80})
		for k := range b.Sowings[2*i:] {
			s := &b.Sowings[2*i+k]
			s.Trays, s.SetOut = float64(trays), s.Sown+9
		}
	}
	return b
}

func TestNextTraysStopWherePayingStops(t *testing.T) {
	s := only(t, ofPair(next(t, 12).report(), "WALL", nextTrays))
	names, notes := rowsOf(s)
	same(t, "names", names, "trays 3 to 4", "", "trays 5 to 6", "trays 7 to 8")
	same(t, "notes", notes, "3.0 uses", "", "2.0 uses", "1.0 uses")
	same(t, "legend", legend(s), payWords[pays], payWords[paysNot], payWords[paysPerhaps])
	if at := items(t, s, "2 more would pay; 2 at the low end, 4 at the high"); at[0][1] != 1.0 {
		t.Errorf("the stop stands at %v", at)
	}
	ends(t, s, ". 2 owned; 2 more would pay; 2 at the low end, 4 at the high.")
}

// Where no further tray pays, buying stops before the first row; without a value of a
// plant there is no verdict and no chart.
func TestNextTraysThatDoNotPay(t *testing.T) {
	s := only(t, ofPair(next(t, 100).report(), "WALL", nextTrays))
	names, _ := rowsOf(s)
	same(t, "names", names, "", "trays 3 to 4", "trays 5 to 6", "trays 7 to 8")
	ends(t, s, "2 owned; no further one would pay, not even at the high end.")
	b := next(t, 12)
	b.Settings.TransplantValue = records.Maybe[float64]{}
	if len(ofPair(b.report(), "WALL", nextTrays)) != 0 {
		t.Error("a pair without a verdict has a chart of next trays")
	}
}

func TestRoomsUntilToday(t *testing.T) {
	b := newBook(t)
	b.Settings.BenchPlaces = records.Known(40.0)
	b.Trays[0].Count, b.Trays[1].Count = records.Known(12), records.Known(40)
	for i, sown := range []string{"2024-12-20", "2025-01-20", "2025-01-20"} {
		b.Sow(strconv.Itoa(i), sown, "orache", "", []string{"WALL", "WALL", "AIR"}[i], []float64{5, 24.5, 1}[i])
	}
	specs := rooms(b.report("2025-02-10"), 2025)
	if len(specs) != 3 {
		t.Fatalf("%d charts", len(specs))
	}
	var levels []float64
	for _, p := range items(t, specs[0], "Bench places taken") {
		levels = append(levels, p[1].(float64))
	}
	if !slices.Equal(levels, []float64{5, 30.5, 30.5}) { // what stands today has not left
		t.Errorf("levels %v", levels)
	}
	ends(t, specs[0], "Bench places taken, 2025. At most 30.5 trays, on 20 January; room for 40 trays.")
	ends(t, specs[1], "AIR trays in use, 2025. At most 1 tray, on 20 January; 12 owned.")
}
