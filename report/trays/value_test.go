package trays

import (
	"testing"

	"traybook/records"
	"traybook/report/internal/booktest"
)

// Without transplant_value a plant is worth what a cell fewer to sow saves: seed,
// mix and sowing labour over usable plants, (16 + 32 + 16) / 640; other labour does
// not count.
func TestValueOfAPlant(t *testing.T) {
	b := booktest.New(t)
	sow(b, "a", "2025-03-01", "AIR", 8, 640)
	b.Cost("2025-03-01", records.Seed, 16)
	b.Cost("2025-03-01", records.Mix, 32)
	b.Cost("2025-03-01", records.Labour, 16, work(records.SowingTask))
	b.Cost("2025-03-01", records.Labour, 99)
	b.Cost("2025-03-01", records.Labour, 5, work(records.SowingTask), func(c *records.Cost) { c.Batch = "a" })
	b.Cost("2025-03-01", records.Labour, -5, work(records.SowingTask), func(c *records.Cost) { c.Crop = "leek" })
	booktest.Known(t, "value", tell(b.Book()).PlantValue["leek"], 0.1, 1e-12)
	b.Settings.TransplantValue = records.Known(0.3)
	booktest.Known(t, "value written", tell(b.Book()).PlantValue["leek"], 0.3, 0)
}

// Any of the three kinds of money gives a value by itself.
func TestValueOfOneKindOfMoney(t *testing.T) {
	for name, cost := range map[string]records.Cost{
		"seed":          booktest.Row(t, "2025-03-01", records.Seed, 16),
		"mix":           booktest.Row(t, "2025-03-01", records.Mix, 16),
		"sowing labour": booktest.Row(t, "2025-03-01", records.Labour, 16, work(records.SowingTask)),
	} {
		b := booktest.New(t)
		sow(b, "a", "2025-03-01", "AIR", 8, 640)
		b.Costs = []records.Cost{cost}
		booktest.Known(t, name, tell(b.Book()).PlantValue["leek"], 16.0/640, 1e-12)
	}
}

// Batches whose usable plants are a guess, or that were not sown from seed, give no
// value: neither their money nor their plants count.
func TestValueRestsOnMeasuredBatchesFromSeed(t *testing.T) {
	b := booktest.New(t)
	sow(b, "a", "2025-03-01", "AIR", 1, 80)
	sow(b, "guess", "2025-03-01", "AIR", 1, 10).PlantsOut = records.Maybe[int]{}
	sow(b, "cutting", "2025-03-01", "AIR", 1, 10).Start = records.FromCutting
	b.Cost("2025-03-01", records.Mix, 24) // 8 each
	booktest.Known(t, "value", tell(b.Book()).PlantValue["leek"], 0.1, 1e-12)
}

// work makes a bill for labour one of a task.
func work(task records.Task) func(*records.Cost) {
	return func(c *records.Cost) { c.Task = task }
}

// A book with no money for seed, mix or sowing gives no value: the difference stands,
// the gain does not.
func TestNoValueOfAPlant(t *testing.T) {
	pb := newPairBook(0, 0, 0, 0)
	pb.value = Num{}
	b := pb.book(t)
	b.Cost("2025-01-02", records.Heat, 50)
	back := tell(b.Book()).Payback[0]
	if back.Why != NoValue || back.Gain.Known || !back.Difference.Known || back.Verdict != "" {
		t.Errorf("no value: %+v", back)
	}
}

// Bought in, an extra plant is worth plug_price where it fills a gap. 5 more in 100 cells
// are to be had in THIN's batches of 100 cells: of two that lacked 3 and 12 plants they
// fill 3 and 5, of one with enough none: 8 of 15. Batches that stand still, were never
// asked for, or stood in HEAVY tell nothing of it.
func TestValueOfAPlantBoughtIn(t *testing.T) {
	pb := newPairBook(5, 5, 5, 5)
	pb.plug = records.Known(0.3)
	b := pb.book(t)
	wanted := map[string]int{"THIN0": 83, "THIN1": 92, "THIN2": 70, "HEAVY0": 999}
	for i := range b.Sowings {
		if n, asked := wanted[b.Sowings[i].Code]; asked {
			b.Sowings[i].Wanted = records.Known(n)
		}
	}
	b.Sow("open", "2025-01-20", "mibuna", "Wild", "THIN", 1).Wanted = records.Known(99)
	b.Count("open", "2025-02-09", 60)
	b.Look("open", "2025-02-09", 20, 15)
	f := tell(b.Book())
	if open := f.money.Borne[len(f.money.Borne)-1]; open.Code != "open" || open.Ended() || !open.EntersUsable() {
		t.Fatalf("%+v", open)
	}
	at := f.Payback[0].AtPlugPrice
	if at == nil || at.Batches != 3 {
		t.Fatalf("%+v", at)
	}
	booktest.Near(t, "gap", at.Gap, 8.0/15, 1e-12)
	booktest.Known(t, "value", at.Value, 0.3*8/15, 1e-12)
	booktest.Known(t, "gain 1 + 5 x 0.16", at.Gain, 1.8, 1e-9)
	booktest.Known(t, "ends of five plants each", at.GainLow, 1.8, 1e-9)
	booktest.Known(t, "payback", at.PaybackUses, 12/1.8, 1e-9)
	booktest.Known(t, "worth of 30 uses", at.WorthToday, 1.8*30-12, 1e-9)
	if at.Verdict != PaysLow {
		t.Errorf("%q", at.Verdict)
	}
}

// Where no plug_price is written, the tray gives no more plants, or no batch of the other
// says what was wanted, the answer for plants bought in is not shown; with enough of
// everything it is, at no value.
func TestBoughtInNotShown(t *testing.T) {
	for _, tt := range []struct {
		name         string
		plug         Num
		gain, wanted float64
		shown        bool
	}{
		{"no plug_price", Num{}, 5, 90, false},
		{"fewer plants", records.Known(0.3), -5, 90, false},
		{"no more plants", records.Known(0.3), 0, 90, false},
		{"nothing wanted", records.Known(0.3), 5, -1, false},
		{"shown", records.Known(0.3), 5, 90, true},
		{"enough of all", records.Known(0.3), 5, 80, true},
	} {
		pb := newPairBook(tt.gain, tt.gain, tt.gain, tt.gain)
		pb.plug = tt.plug
		b := pb.book(t)
		for i := range b.Sowings {
			b.Sowings[i].Wanted = records.Maybe[int]{Value: int(tt.wanted), Known: tt.wanted >= 0}
		}
		f := tell(b.Book())
		at := f.Payback[0].AtPlugPrice
		if (at != nil) != tt.shown {
			t.Errorf("%s: %+v", tt.name, at)
		}
		if tt.name == "enough of all" {
			booktest.Known(t, "value", at.Value, 0, 0)
			booktest.Known(t, "gain", at.Gain, 1, 1e-12)
		}
	}
}
