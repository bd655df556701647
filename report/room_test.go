package report

import (
	"fmt"
	"math"
	"slices"
	"testing"

	"pgregory.net/rapid"

	"traybook/records"
)

// A season by hand: H takes two places a tray. a: 3 trays of H, in the chamber
// from 1 to 4 March, on the bench until the 20th; b: 2.5 trays of T, on the
// bench from the 10th to the 15th. Trays are washed 3 days after.
func TestRoomByHand(t *testing.T) {
	a := newBatch(t, "a", "2025-03-01", "2025-03-20", "H", 3, 100, 80)
	b := newBatch(t, "b", "2025-03-10", "2025-03-15", "T", 2.5, 100, 80)
	a.ChamberOut = day(t, "2025-03-04")
	book := &records.Book{Trays: []records.Purchase{
		{Tray: "H", Kind: "x", Cells: 100, Count: records.Known(2), Places: records.Known(2.0)},
		{Tray: "H", Kind: "x", Cells: 100, Count: records.Known(2), Bought: day(t, "2025-03-11")},
	}}
	book.Settings.BenchPlaces, book.Settings.TrayTurnaround = records.Known(8.0), 3
	r := moneyOf(book, a, b)
	r.room()
	want := []string{
		"bench 8 peak 8.5 on 2025-03-10, 5 days over, -0.059",
		"chamber ? peak 3 on 2025-03-01",
		"H 4 peak 3 on 2025-03-01, 10 days over, 0.333", // 3 of 2 owned until the 11th
		"T ? peak 2.5 on 2025-03-10",
	}
	for i, load := range r.Room {
		got := fmt.Sprintf("%s ? peak %v on %v", load.Place, load.Peak, load.PeakDate)
		if load.Capacity.Known {
			got = fmt.Sprintf("%s %v peak %v on %v, %d days over, %.3f", load.Place, load.Capacity.Value, load.Peak, load.PeakDate, load.DaysOver.Value, load.GrowthLeft.Value)
		}
		if i >= len(want) || got != want[i] || load.BindsFirst != (load.Place == "bench") {
			t.Errorf("%s, binds first %v", got, load.BindsFirst)
		}
	}
	var bench []string
	for _, u := range r.InUse {
		if u.Place == BenchName {
			bench = append(bench, fmt.Sprint(u.Date, " ", u.Trays))
		}
	}
	if got := fmt.Sprint(bench); got != "[2025-03-04 6 2025-03-10 8.5 2025-03-15 6 2025-03-20 0]" {
		t.Error(got)
	}
}

// "If" the farm grew by half and sowed T in place of H.
func TestGrowAndSwitch(t *testing.T) {
	pb := newPairBook(1, 2, 3, 1, 2, 3)
	r := pb.report(t)
	if r.If != nil {
		t.Fatal("an if that nobody asked for")
	}
	r.Options = Options{Grow: 1.5, Switch: []Switch{{From: "HEAVY", To: "THIN"}}}
	r.room()
	if len(r.If.Room) != 2 || r.If.Room[1].Place != "THIN" || r.If.Room[1].Peak != 3 || r.Room[1].Peak != 1 {
		t.Errorf("%+v", r.If.Room)
	}
	// 3 trays at once each date, 2 owned: the third is used on all 6 dates.
	if len(r.If.NextTray) != 1 || r.If.NextTray[0].Nth != 3 || r.If.NextTray[0].Uses != 6 {
		t.Errorf("%+v", r.If.NextTray)
	}
	finiteIf(t, r.If)
}

func finiteIf(t *testing.T, then *If) {
	t.Helper()
	for _, n := range then.NextTray {
		if math.IsNaN(n.WorthToday.Value) || math.IsInf(n.PaybackSeasons.Value, 0) {
			t.Errorf("%+v", n)
		}
	}
}

// anyBatches draws a few batches of two codes over two seasons.
func anyBatches(t *rapid.T, tb testing.TB) []*Batch {
	first := records.NewDate(2024, 11, 1)
	var batches []*Batch
	for i := range rapid.IntRange(0, 12).Draw(t, "batches") {
		sown := first + records.Date(rapid.IntRange(0, 90).Draw(t, "sown"))
		end := sown + records.Date(rapid.IntRange(0, 40).Draw(t, "days"))
		tray := rapid.SampledFrom([]string{"H", "T"}).Draw(t, "tray")
		trays := float64(rapid.IntRange(1, 12).Draw(t, "quarters")) / 4
		b := newBatch(tb, fmt.Sprint("b", i), sown.String(), end.String(), tray, trays, 100, float64(rapid.IntRange(0, 20).Draw(t, "usable")))
		if rapid.Bool().Draw(t, "chamber") {
			b.ChamberOut = sown + records.Date(rapid.IntRange(0, 5).Draw(t, "in"))
		}
		batches = append(batches, b)
	}
	return batches
}

// The season's peaks and days over are those of counting every day by itself.
func TestRoomIsWhatCountingDaysGives(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		book := &records.Book{Trays: []records.Purchase{{Tray: "H", Count: records.Known(3)}, {Tray: "H", Count: records.Known(-2), Bought: records.NewDate(2024, 12, 20)}}}
		book.Settings.BenchPlaces, book.Settings.TrayTurnaround = records.Known(4.0), 3
		r := moneyOf(book, anyBatches(rt, t)...)
		r.room()
		for _, load := range r.Room {
			peak, over := 0.0, 0
			first, after := book.Settings.SeasonDays(load.Season)
			for d := first; d < after; d++ {
				stood := standing(r, load.Place, d)
				peak = max(peak, stood)
				capacity := 4.0
				if load.Place == "H" {
					capacity = 3
					if d >= records.NewDate(2024, 12, 20) {
						capacity = 1
					}
				}
				if stood > capacity {
					over++
				}
			}
			if load.Peak != peak || load.DaysOver.Known && load.DaysOver.Value != over || standing(r, load.Place, load.PeakDate) != peak {
				rt.Fatalf("%+v: counted %v, %d days over", load, peak, over)
			}
		}
	})
}

func standing(r *Report, place string, d records.Date) float64 {
	trays := 0.0
	for _, b := range r.Batches {
		from, to := b.Sown, b.End
		switch {
		case place == ChamberName:
			to = b.ChamberOut
		case place == BenchName && b.ChamberOut.Known():
			from = b.ChamberOut
		case place != BenchName && place != b.Tray:
			continue
		case place == b.Tray:
			to += 3
		}
		if from <= d && d < to {
			trays += b.Trays
		}
	}
	return trays
}

// The uses of all trays in the replay add up to the needs: parts sown on one day in
// one code are one need (rule 33).
func TestUsesAddUpToNeeds(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		heavy, thin := newPairBook().heavy, newPairBook().thin
		heavy.Tray, thin.Tray = "H", "T"
		r := moneyOf(&records.Book{Trays: []records.Purchase{heavy, thin}}, anyBatches(rt, t)...)
		days := map[string]float64{}
		for _, b := range r.Batches {
			days[b.Tray+b.Sown.String()] += b.Trays
		}
		needs := 0.0
		for _, trays := range days {
			needs += math.Ceil(trays)
		}
		if uses := sum(r.Payback[0].Uses) * float64(len(r.Seasons)); math.Abs(uses-needs) > 1e-9 {
			rt.Fatalf("%v uses of %v needs", uses, needs)
		}
	})
}

// Order of rows changes no digit.
func TestOrderOfRowsChangesNothing(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		heavy, thin := newPairBook().heavy, newPairBook().thin
		heavy.Tray, thin.Tray = "H", "T"
		var costs []records.Cost
		for range rapid.IntRange(1, 15).Draw(rt, "costs") {
			date := records.NewDate(2024, 10, 1) + records.Date(rapid.IntRange(0, 200).Draw(rt, "date"))
			c := row(t, date.String(), rapid.SampledFrom(records.Categories).Draw(rt, "category"), rapid.Float64Range(-10, 100).Draw(rt, "amount"))
			if rapid.Bool().Draw(rt, "until") {
				c.Until = date + records.Date(rapid.IntRange(-40, 40).Draw(rt, "days"))
			}
			if c.Category == records.Labour {
				c.Task = rapid.SampledFrom([]records.Task{"", records.SowingTask, records.CareTask, records.OutTask}).Draw(rt, "task")
			}
			c.Tray = rapid.SampledFrom([]string{"", "", "", "H"}).Draw(rt, "tray")
			costs = append(costs, c)
		}
		batches := anyBatches(rt, t)
		show := func() string {
			r := moneyOf(&records.Book{Trays: []records.Purchase{heavy, thin}, Costs: costs}, batches...)
			r.room()
			balanced(t, r)
			return fmt.Sprintf("%+v %+v %+v %+v %+v", r.Cost, r.Ledger, r.Matches, r.NextTray, r.Room)
		}
		before := show()
		slices.Reverse(costs)
		slices.Reverse(batches)
		if after := show(); after != before {
			rt.Fatalf("before %s\nafter %s", before, after)
		}
	})
}
