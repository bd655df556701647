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
