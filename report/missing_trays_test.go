package report

import (
	"fmt"
	"testing"

	"traybook/records"
	"traybook/report/internal/booktest"
	"traybook/report/trays"
)

// gapsOfTrays lists what is said to be missing of tray codes.
func gapsOfTrays(r *Report) []string {
	var said []string
	for _, m := range trayGapsOf(r.Book, r.Batches, r.Money, r.Trays) {
		said = append(said, m.What)
	}
	return said
}

// What trays.csv leaves blank is said, once for each kind of gap, before the rest.
func TestTrayGapsAreSaid(t *testing.T) {
	r := reportOf(pair(t, 1, 2, 3, 1))
	// HEAVY is written to survive 30 uses and used three times a season or fewer.
	if said := fmt.Sprintf("%q", gapsOfTrays(r)); said != `["years a tray lasts: HEAVY" "minutes a use: HEAVY and THIN" "mix a use: HEAVY and THIN"]` {
		t.Error(said)
	}
	if m := gapOf(t, r, "minutes a use: HEAVY and THIN"); m.Touched != 8 || m.Minutes != 2 || len(m.Places) != 2 || m.Season != 0 {
		t.Errorf("%+v", m)
	}
	b := booktest.New(t)
	b.Trays = []records.Purchase{
		{Tray: "A", Kind: "k", Cells: 72, Count: records.Known(3), Lasts: records.Known(2.0)},
		{Tray: "B", Kind: "k", Cells: 72, Price: records.Known(2.0)},
		{Tray: "C", Kind: "k", Cells: 72, Price: records.Known(2.0), Count: records.Known(-3), Uses: records.Known(4.0)},
	}
	b.Leave(b.Sow("a", "2025-03-01", "leek", "Arvo", "A", 1), "2025-03-11", 50, 0)
	want := "[price of a tray: A life of a tray: B years a tray lasts: C number of trays bought: B trays bought: C]"
	if said := fmt.Sprint(gapsOfTrays(reportOf(b))); said != want {
		t.Error(said)
	}
}

// Batches never cleared, parts of trays and a code never used: figures that can be
// told are, none is NaN, and the money balances.
func TestOpenBatchesAndIdleCodes(t *testing.T) {
	b := pair(t, 1, 2, 3, 1)
	for i := range b.Sowings {
		s := &b.Sowings[i]
		s.Trays, s.SetOut, s.PlantsOut, s.Surplus = 0.25, 0, records.Maybe[int]{}, records.Maybe[int]{}
	}
	b.Cost("2025-01-20", records.Heat, 50)
	b.Cost("2025-01-20", records.Labour, 50).Task = records.OutTask
	idle := b.Tray("IDLE", "third", 100)
	idle.Count, idle.Price, idle.Lasts = records.Known(5), records.Known(1.0), records.Known(5.0)
	r := reportOf(b, "2025-02-09")
	booktest.Finite(t, r, "report")
	balanced(t, r)
	if len(r.Trays.Payback) != 1 || r.Trays.Payback[0].Why != trays.NoMatches || r.Trays.Payback[0].UsesPerSeason.Value != 0.5 {
		t.Errorf("%+v", r.Trays.Payback)
	}
	for _, l := range r.Money.Ledger {
		if l.Category == records.Labour && l.Unborne != 50 {
			t.Errorf("nothing was set out: %+v", l)
		}
	}
	for _, c := range r.Money.Cost {
		if c.PerTransplant.Known || c.Usable.Known || !c.Total.Known {
			t.Errorf("%+v", c)
		}
	}
	for _, load := range r.Room.Load {
		if load.Place == "IDLE" {
			t.Errorf("a code never used takes room: %+v", load)
		}
	}
}

// The rows that lack a cell, and no others.
func TestRowsOfTrayGaps(t *testing.T) {
	b := booktest.New(t)
	at := func(line uint32) records.At { return records.At{Line: line, Row: line} }
	b.Trays = []records.Purchase{
		{At: at(2), Tray: "A", Kind: "k", Cells: 72, Count: records.Known(3)},
		{At: at(3), Tray: "B", Kind: "k", Cells: 72, Count: records.Known(3), Price: records.Known(2.0)},
		{At: at(4), Tray: "C", Kind: "k", Cells: 72, Count: records.Known(3), Price: records.Known(2.0), Uses: records.Known(40.0)},
		{At: at(5), Tray: "D", Kind: "k", Cells: 72, Count: records.Known(3), Price: records.Known(2.0), Lasts: records.Known(9.0)},
		{At: at(6), Tray: "D", Kind: "k", Cells: 72, Price: records.Known(2.0), Lasts: records.Known(9.0)},
	}
	b.Leave(b.Sow("a", "2025-03-01", "leek", "Arvo", "A", 1), "2025-03-11", 50, 0)
	r := reportOf(b)
	for what, line := range map[string]int{"price of a tray: A": 2, "life of a tray: B": 3, "years a tray lasts: C": 4, "number of trays bought: D": 6} {
		if m := gapOf(t, r, what); len(m.Places) != 1 || m.Places[0].Line != line || m.Places[0].File != "trays.csv" {
			t.Errorf("%s: %+v, want line %d", what, m.Places, line)
		}
	}
}
