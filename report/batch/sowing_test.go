package batch

import (
	"reflect"
	"slices"
	"testing"

	"traybook/records"
	"traybook/report/internal/booktest"
)

// Rule "Cells sown": half a tray of 25 cells is 13, rounded half up; trays are filled
// in turn and the last holds what is left. A code that trays.csv lacks has no cells
// (rule "Missing").
func TestCellsSown(t *testing.T) {
	b := booktest.New(t)
	b.Tray("ODD", "solid-wall", 25)
	b.Sow("half", "2025-03-01", "orache", "x", "ODD", 0.5)
	b.Sow("left", "2025-03-01", "orache", "x", "ODD", 2.4)
	b.Sow("written", "2025-03-01", "orache", "x", "ODD", 3).Cells = records.Known(60)
	b.Sow("strange", "2025-03-01", "orache", "x", "NOWHERE", 2)
	b.Sow("known", "2025-03-01", "orache", "x", "NOWHERE", 2).Cells = records.Known(40)
	all := settled(b, "2025-04-01", nil)
	for code, want := range map[string]int{"half": 13, "left": 60, "written": 60, "known": 40} {
		if got := all.Of(code).CellsSown; got != records.Known(want) {
			t.Errorf("%s: got %v, want %d", code, got, want)
		}
	}
	s := all.Of("strange")
	if s.CellsSown.Known || s.TrayCells.Known || s.SeedsSown.Known || s.Kind != "" || s.CellsOfTray(1) != 0 {
		t.Errorf("unknown code: %+v", s)
	}
	for k, want := range []int{0, 25, 25, 10, 0} {
		if got := all.Of("left").CellsOfTray(k); got != want {
			t.Errorf("tray %d: got %d, want %d", k, got, want)
		}
	}
}

// Rule "From seed": only what was sown from seed and not potted on has seeds, and
// only where its cells are known is their number.
func TestFromSeed(t *testing.T) {
	b := booktest.New(t)
	b.Sow("seed", "2025-03-01", "orache", "x", "AIR", 1.5).SeedsPerCell = 3
	b.Sow("moved", "2025-03-20", "orache", "x", "AIR", 1).From = "seed"
	b.Sow("cutting", "2025-03-20", "orache", "x", "AIR", 1).Start = records.FromCutting
	all := settled(b, "2025-04-01", nil)
	for code, want := range map[string]float64{"seed": 450, "moved": 0, "cutting": 0} {
		booktest.Known(t, code, all.Of(code).SeedsSown, want, 0)
		if fromSeed := all.Of(code).FromSeed; fromSeed != (code == "seed") {
			t.Errorf("%s: from seed %v", code, fromSeed)
		}
	}
}

// Rule "Ties": batches stand by code in bytes, whatever the order of the log, and
// each knows its place; the volume of a cell may stand in any row of its code.
func TestSowingsStandByCode(t *testing.T) {
	b := booktest.New(t)
	b.Tray("AIR", "air-pruning", 100).CellML = records.Known(18.0)
	for _, code := range []string{"b", "C", "a", "10", "9"} {
		b.Sow(code, "2025-03-01", "orache", "x", "AIR", 1)
	}
	sown := Sowings(b.Book())
	for i, want := range []string{"10", "9", "C", "a", "b"} {
		if sown[i].Code != want || sown[i].Nth != i {
			t.Errorf("place %d: %s, %d; want %s", i, sown[i].Code, sown[i].Nth, want)
		}
	}
	booktest.Known(t, "cell volume", sown[0].CellML, 18, 0)
	b.Sowings = slices.Clone(b.Sowings)
	slices.Reverse(b.Sowings)
	if got := Sowings(b.Book()); !reflect.DeepEqual(got, sown) {
		t.Errorf("rows in reverse: %+v", got)
	}
}
